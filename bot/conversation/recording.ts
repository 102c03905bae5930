import type { Fact } from "../../core/books/facts.ts";
import { toldBehind, toldNext } from "../../core/decide/answering/behind.ts";
import { decide, lastResort, meant, wholeLabel, withBeside } from "../../core/decide/decide.ts";
import { type Ask, type Effect, type Matter, newMatter } from "../../core/decide/decision.ts";
import { mainAmountOf } from "../../core/decide/main-amount.ts";
import { followUp } from "../../core/decide/matters.ts";
import { withAwaited } from "../../core/decide/pieces/awaited.ts";
import { boughtLater } from "../../core/decide/pieces/bought-later.ts";
import { settle } from "../../core/decide/settle.ts";
import { isGuessedCost } from "../../core/decide/talk/talk.ts";
import type { Fixing } from "../../core/mending/amounts.ts";
import { asTime, mendOfFix } from "../../core/mending/newest.ts";
import { show } from "../../core/money.ts";
import { pluralOf } from "../../core/notes/mentions/plural.ts";
import type { ReadingOf } from "../../core/notes/reading.ts";
import { TRIP_TOLD } from "../../core/notes/words/mending.ts";
import { saysAny } from "../../core/notes/words/words.ts";
import type { Question } from "../../db/questions.ts";
import { answerQuestion, setNudge } from "./asking.ts";
import { amendNote } from "./editing.ts";
import { fixFact, fixingOf } from "./fixing.ts";
import { type TalkingDesk, talkingDesk } from "./going-on.ts";
import { amendFacts } from "./mending.ts";
import { impossibleText, keepOutcome } from "./outcome.ts";
import { closeQuestion, openQuestion, openQuestions, releaseAfter } from "./questions.ts";
import { closeSettled } from "./settled.ts";
import { recordFirst } from "./standing.ts";
import { keepNamed, piecesOf } from "./talk.ts";
import type { Turn } from "./turn.ts";
import { undoNote } from "./undoing.ts";
import { asksOfDepositFirst } from "./waiting-deposit.ts";
import { waitsForPiece } from "./waiting-piece.ts";

/** Which message the facts belong to, and which one is answered by undo in a reply. */
interface Belonging {
  /** The first revision of the message that the facts are a part of. */
  root: number;
  replyRoot?: number | undefined;
}

/** Decides matters one by one, in order: the clear ones are recorded, the others asked or refused. */
export function decideAll(turn: Turn, matters: readonly Matter[], belonging: Belonging): void {
  const queue = [...matters];
  for (let matter = queue.shift(); matter; matter = queue.shift()) {
    const pieces = tellsOfAsked(turn, matter, belonging.root)
      ? null
      : decideOne(turn, matter, belonging, queue);
    if (pieces) queue.unshift(...followUp(matter, pieces));
  }
}

/** "got a pie safe, 46 miles, set me back 95": what a clause further back was just asked for. */
function tellsOfAsked(turn: Turn, { reading }: Matter, root: number): boolean {
  if (turn.asked.length === 0) return false;
  const asked = new Set(turn.asked.map(({ id }) => id));
  for (const question of openQuestions(turn)) {
    if (!asked.has(question.id) || question.note !== root) continue;
    const told = toldBehind(question.matter, question.ask, reading);
    if (!told?.isSure) continue;
    turn.asked = turn.asked.filter(({ id }) => id !== question.id);
    settleQuestion(turn, question, told.effect);
    return true;
  }
  return false;
}

/** Decides what waited for something that this turn settled. */
export function decideReleased(turn: Turn): void {
  for (let next = turn.released.shift(); next; next = turn.released.shift()) {
    const asked = turn.asked.length;
    decideAll(turn, [next.matter], { root: next.root });
    for (const each of turn.asked.slice(asked)) each.isReleased = true;
  }
}

/**
 * The pieces that were recorded, for what waits for "it"; null where nothing was. `next`: the clauses behind it, of
 * which the first may tell what this one leaves open.
 */
function decideOne(turn: Turn, matter: Matter, belonging: Belonging, next: Matter[]): number[] | null {
  const { reading } = matter;
  switch (reading.kind) {
    case "ask":
      answerQuestion(turn, reading);
      return null;
    case "undo":
      undoNote(turn, belonging.replyRoot);
      return null;
    case "fix": {
      const fix = asTime(reading, talkingDesk(turn, belonging.replyRoot));
      if (fix.amount === undefined || fix.fact !== undefined)
        return decideOtherFix(turn, matter, fix, belonging, next);
      const fixing = fixingOf(turn, reading, belonging.replyRoot);
      if (fixing) applyFix(turn, fixing);
      return null;
    }
    case "nudge":
      setNudge(turn, reading);
      return null;
    default:
      return decideFact(turn, matter, belonging, next);
  }
}

/** A correction of time, miles, day or percent goes the way of any other change of an earlier note. */
function decideOtherFix(
  turn: Turn,
  matter: Matter,
  reading: ReadingOf<"fix">,
  belonging: Belonging,
  next: Matter[],
): number[] | null {
  const mend = mendOfFix(reading, talkingDesk(turn, belonging.replyRoot));
  if (mend) return decideFact(turn, { ...matter, reading: mend }, belonging, next);
  const { minutes, miles, isTold, text, line } = reading;
  // "*20 miles", or of the piece spoken of "it was 24 miles round trip", behind what was no drive yet.
  const isTrip = miles !== undefined && saysAny(text, TRIP_TOLD);
  if (miles !== undefined && (isTrip || isTold)) {
    const drive: ReadingOf<"drive"> = {
      kind: "drive",
      miles,
      ...(isTrip ? { follows: true } : {}),
      text,
      line,
    };
    return decideFact(turn, { ...matter, reading: drive }, belonging, next);
  }
  // "took me 2 hours" behind what was no work yet.
  if (isTold && minutes !== undefined) {
    const work: ReadingOf<"work"> = { kind: "work", minutes, missing: ["pieces"], text, line };
    return decideFact(turn, { ...matter, reading: work }, belonging, next);
  }
  refuse(turn, matter, "I see nothing of yours that this corrects.");
  return null;
}

function decideFact(turn: Turn, asSaid: Matter, belonging: Belonging, next: Matter[]): number[] | null {
  const { said } = asSaid;
  const desk = { ...talkingDesk(turn, belonging.replyRoot), today: said };
  const matter = meant(asSaid, desk);
  const { reading } = matter;
  const decided = decide(matter, desk);
  const decision = decided.kind === "refuse" ? (lastResort(reading, desk) ?? decided) : decided;
  switch (decision.kind) {
    case "refuse":
      if (!waitsForPiece(turn, { matter, root: belonging.root })) refuse(turn, matter, decision.why);
      return null;
    case "ask":
      askOrWait(turn, matter, decision.ask, { root: belonging.root, next, desk });
      return null;
    case "act":
      if (decision.effect.kind === "amend") amendFacts(turn, decision.effect, reading);
      return null;
    case "record": {
      if (asksOfDepositFirst(turn, { matter, root: belonging.root }, decision.facts)) return null;
      const { person: author, note } = turn;
      const result = turn.ledger.record({ note, author, facts: decision.facts, root: belonging.root });
      if (result.kind === "impossible") {
        const dayDesk = { books: turn.ledger.books, today: turn.today };
        const ask = boughtLater(reading, result.problem, dayDesk, (each) => wholeLabel(each, desk));
        if (ask) {
          openQuestion(turn, matter, ask, belonging.root);
          return null;
        }
        refuse(turn, matter, impossibleText(turn, result));
        return null;
      }
      keepOutcome(turn, result.facts, reading.text);
      if (isGuessedCost(asSaid.reading, reading)) offerOverhead(turn, result.facts);
      for (const fact of result.facts) recordFirst(turn, fact);
      releaseAfter(turn, matter, piecesOf(result.facts));
      closeSettled(turn, result.facts);
      if (decision.ask) {
        openQuestion(turn, newMatter(decision.ask.reading, said), decision.ask.ask, belonging.root);
      }
      return result.facts.flatMap((fact) => fact.pieces);
    }
  }
}

/** Asks about a note, unless the next clause tells what it leaves open, or it waits for what is asked of its piece already. */
function askOrWait(
  turn: Turn,
  matter: Matter,
  ask: Ask,
  { root, next, desk }: { root: number; next: Matter[]; desk: TalkingDesk },
): void {
  const told = toldNext(matter, ask, next);
  if (told?.isSure) next.unshift(...told.matters);
  else if (!waitsForPiece(turn, { matter, root }, ask)) {
    const reading = withAwaited(matter.reading, [], desk.books);
    // What it was to wait for is on the books by now.
    if (reading !== matter.reading) next.unshift({ ...matter, reading });
    else openQuestion(turn, matter, withBeside(told?.ask ?? ask, reading, desk), root);
  }
}

/** A cost that went to the piece spoken of can be taken off it again. */
function offerOverhead(turn: Turn, facts: readonly Fact[]): void {
  for (const fact of facts) {
    const piece = turn.ledger.books.pieces.get(fact.pieces[0]!);
    const name = fact.pieces.length === 1 ? piece?.name : pluralOf(piece?.name ?? "piece");
    turn.buttons.push([{ label: `Not for the ${name}`, press: `no:${fact.id}` }]);
  }
  const offers = turn.buttons.flat().filter(({ press }) => press.startsWith("no:"));
  if (offers.length < 2) return;
  // Of several costs each button says which.
  for (const offer of offers) {
    const outcome = turn.recorded.find(({ fact }) => offer.press === `no:${fact.id}`);
    const of = outcome?.fact.kind === "spend" ? outcome.fact.data.what : undefined;
    if (of !== undefined && offer.label.startsWith("Not"))
      offer.label = `${of[0]!.toUpperCase()}${of.slice(1)} n${offer.label.slice(1)}`;
  }
}

function refuse(turn: Turn, matter: Matter, why: string): void {
  const { kind, text, line } = matter.reading;
  releaseAfter(turn, matter);
  turn.refused.push({ text, line, why, ...(kind === "unclear" ? {} : { isRead: true }) });
  if (kind === "unclear") keepNamed(turn, text);
  for (const waiting of matter.waiting) {
    turn.refused.push({
      text: waiting.text,
      line: waiting.line,
      why: "It belongs to the note before: send both.",
    });
  }
}

/** Closes a question and decides what it was about anew, as its answer changed it. */
export function settleQuestion(
  turn: Turn,
  { id, matter, note: root }: Question,
  effect: Extract<Effect, { kind: "settle" | "instead" }>,
): void {
  closeQuestion(turn, id);
  const matters = settle(matter, effect);
  const isAmended = matter.amends !== undefined && amendNote(turn, matter.amends, matters);
  if (!isAmended) decideAll(turn, matters, { root: matter.amends ?? root });
  turn.ledger.setNoteState(root, "answered");
}

/** Corrects an amount: that of a fact, or that of a note still asked about, which goes on as if it had said so. */
export function applyFix(turn: Turn, fixing: Fixing): void {
  if (fixing.kind === "fix") {
    fixFact(turn, fixing.fact, fixing.amount);
    return;
  }
  const { question: id, change } = fixing;
  const question = openQuestions(turn).find((open) => open.id === id);
  if (!question) {
    turn.spoken.push("That was answered already. Nothing changed.");
    return;
  }
  const { reading } = question.matter;
  settleQuestion(turn, question, { kind: "settle", change });
  const amount = Object.entries(change).find(([field]) => field === mainAmountOf(reading))?.[1];
  if (turn.recorded.length === 0 && typeof amount === "number")
    turn.spoken.push(`"${reading.text}" now with ${show(amount)}.`);
}
