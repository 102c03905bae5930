import type { Fact, NewFact } from "../../core/books/facts.ts";
import { foldFacts } from "../../core/books/fold.ts";
import { decide, followUp, mattersOf, verbOf } from "../../core/decide/decide.ts";
import type { Ask, Effect, Matter } from "../../core/decide/decision.ts";
import { settle } from "../../core/decide/settle.ts";
import { readBareMoney } from "../../core/notes/bare.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { Mention, Reading } from "../../core/notes/reading.ts";
import type { Note } from "../../db/notes.ts";
import { fixFact } from "./amending.ts";
import { closeQuestionsOf, openQuestion } from "./questions.ts";
import { decideAll, echoOf, impossibleText, keepOutcome, problemWords } from "./recording.ts";
import type { Turn } from "./turn.ts";

/**
 * An edited message is a correction: what it recorded is voided, and what it says now stands in its place.
 * False where nothing stands of it: then it is taken as if it had been sent now.
 */
export function editNote(turn: Turn, text: string, before: Note): boolean {
  if (turn.ledger.standingFactsOf(turn.root).length > 0) {
    amendNote(turn, turn.root, mattersOf(readMessage(text, turn.today), turn.today), text);
    return true;
  }
  const answered = factsAnswered(turn);
  if (answered.length > 0) correctAnswer(turn, text, { before: before.text, answered });
  else closeQuestionsOf(turn, turn.root);
  return answered.length > 0;
}

/** What a message recorded that only answered a question about another one. */
function factsAnswered(turn: Turn): Fact[] {
  const { ledger, root } = turn;
  return ledger.books.facts.filter(
    (fact) => fact.note >= root && fact.root !== root && ledger.note(fact.note)?.root === root,
  );
}

/** "35" edited to "45": the fact that has the first amount gets the other. */
function correctAnswer(
  turn: Turn,
  text: string,
  { before, answered }: { before: string; answered: Fact[] },
): void {
  const [old, amount] = [amountIn(before, turn), amountIn(text, turn)];
  const facts = answered.filter((fact) => fact.amount !== undefined && fact.amount === old);
  const [only] = facts;
  if (only && facts.length === 1 && amount !== null) fixFact(turn, only.id, amount);
  else nothingChanged(turn, "Undo the note that it answered, and send that again.");
}

/** The amount of a bare answer or of a fix. */
function amountIn(text: string, turn: Turn): number | null {
  const [reading] = readMessage(text, turn.today);
  return readBareMoney(text) ?? (reading?.kind === "fix" ? (reading.amount ?? null) : null);
}

function nothingChanged(turn: Turn, why: string): void {
  turn.spoken.push(`Your edit changed nothing in the books. ${why}`);
}

/** Puts what was decided anew in the place of what a message recorded; what it leaves open is asked first. */
export function amendNote(turn: Turn, root: number, matters: readonly Matter[], text: string): void {
  const { ledger } = turn;
  const standing = ledger.standingFactsOf(root);
  if (standing.length === 0) {
    decideAll(turn, matters, { root });
    return;
  }
  const redone = redo(turn, standing, matters);
  if (redone.kind === "unusable") {
    nothingChanged(turn, redone.why);
    return;
  }
  const { facts, asked } = redone;
  const [first] = asked;
  if (first && facts.length < standing.length) {
    if (matters.length === 1) askBeforeEdit(turn, root, first);
    else nothingChanged(turn, `It leaves a question: ${first.ask.prompt}`);
    return;
  }
  const before = standing.map((fact) => echoOf(turn, fact)[0] ?? fact.kind);
  const result = ledger.amend({
    note: turn.note,
    author: turn.person,
    voids: standing.map((fact) => fact.id),
    facts: facts.map((fact, index) => ({ fact, ...replaced(standing[index]) })),
  });
  if (result.kind === "impossible") {
    nothingChanged(turn, impossibleText(turn, result));
    return;
  }
  closeQuestionsOf(turn, root);
  keepOutcome(turn, result.facts, { text }, before);
  for (const { matter, ask } of asked) openQuestion(turn, matter, ask, root);
}

function replaced(fact: Fact | undefined): { replaces?: number } {
  return fact ? { replaces: fact.id } : {};
}

/** Until it is answered the books stay as they are; the answer then amends. */
function askBeforeEdit(turn: Turn, root: number, { matter, ask }: Asked): void {
  closeQuestionsOf(turn, root);
  turn.spoken.push("Your edit changed nothing yet.");
  openQuestion(turn, { ...matter, amends: root }, ask, root);
}

interface Asked {
  matter: Matter;
  ask: Ask;
}

type Redone = { kind: "redone"; facts: NewFact[]; asked: Asked[] } | { kind: "unusable"; why: string };

/** A message being decided anew, on the books as they stood before it first recorded anything. */
interface Redoing {
  turn: Turn;
  standing: readonly Fact[];
  earlier: Fact[];
  done: Fact[];
  /** Numbers of the pieces that the message made before, one list for each buy: given again, in order. */
  numbers: number[][];
  nextPiece: number;
  /** What it leaves open. */
  asked: Asked[];
}

function redo(turn: Turn, standing: readonly Fact[], matters: readonly Matter[]): Redone {
  const { books, nextPiece } = turn.ledger;
  const place = Math.min(...standing.map((fact) => fact.place));
  const earlier = books.facts.filter((fact) => fact.place < place);
  const numbers = standing.filter((fact) => fact.kind === "buy").map((fact) => [...fact.pieces]);
  const redoing: Redoing = { turn, standing, earlier, done: [], numbers, nextPiece, asked: [] };
  const queue = [...matters];
  if (queue.length === 0)
    return { kind: "unusable", why: 'It says nothing now. To take the note back, send "undo".' };
  for (let matter = queue.shift(); matter; matter = queue.shift()) {
    const step = redoOne(redoing, matter);
    if (step.kind === "unusable") return step;
    if (step.kind === "ask") redoing.asked.push({ matter, ask: step.ask });
    else queue.unshift(...step.next);
  }
  return { kind: "redone", facts: redoing.done.map(asNew), asked: redoing.asked };
}

type Step = { kind: "unusable"; why: string } | { kind: "ask"; ask: Ask } | { kind: "on"; next: Matter[] };

function redoOne(redoing: Redoing, matter: Matter): Step {
  const { turn, earlier, done, nextPiece } = redoing;
  const folded = foldFacts([...earlier, ...done]);
  if (folded.kind === "impossible") return { kind: "unusable", why: problemWords(turn, folded.problem) };
  const { reading } = matter;
  if (reading.kind !== "unclear" && !verbOf(reading.kind)?.decide)
    return { kind: "unusable", why: `"${reading.text}" is no note to put in its place.` };
  const decision = decide(matter, { books: folded.books, today: matter.said, nextPiece });
  if (decision.kind === "refuse") return { kind: "unusable", why: decision.why };
  if (decision.kind === "ask") {
    if (reading.kind === "unclear") return { kind: "unusable", why: decision.ask.prompt };
    const effect = answeredBefore(redoing, matter.reading, decision.ask);
    return effect ? { kind: "on", next: settle(matter, effect) } : { kind: "ask", ask: decision.ask };
  }
  const facts = decision.facts.map((fact) => keep(redoing, fact));
  if (decision.ask) answerAgain(redoing, decision.ask);
  return {
    kind: "on",
    next: followUp(
      matter,
      facts.flatMap((fact) => fact.pieces),
    ),
  };
}

/** The rate of a loan that was told in an answer holds for the loan as it is now; else it is asked again. */
function answerAgain(redoing: Redoing, { reading, ask }: { reading: Reading; ask: Ask }): void {
  const told = redoing.standing.find((fact) => fact.kind === "terms" && cameOfAnswer(redoing.turn, fact));
  if (told?.kind === "terms" && reading.kind === "terms" && reading.loan && reading.date) {
    const data = { ...told.data, loan: reading.loan };
    keep(redoing, { kind: "terms", day: reading.date, pieces: [], data });
  } else
    redoing.asked.push({ matter: { reading, said: redoing.turn.today, confirmed: [], waiting: [] }, ask });
}

/** The fact as it would be recorded after the others, a buy with the numbers that its pieces had. */
function keep(redoing: Redoing, fact: NewFact): Fact {
  const { turn, done, standing } = redoing;
  const kept = fact.kind === "buy" ? (redoing.numbers.shift() ?? []) : [];
  const pieces =
    fact.kind === "buy" ? fact.pieces.map((_, index) => kept[index] ?? redoing.nextPiece++) : fact.pieces;
  const id = Number.MAX_SAFE_INTEGER - 1000 + done.length;
  const of = { author: turn.person, note: turn.note, root: standing[0]!.root };
  const whole = { ...fact, pieces, id, place: id, ...of } as Fact;
  done.push(whole);
  return whole;
}

function asNew({ kind, day, pieces, amount, data }: Fact): NewFact {
  return { kind, day, pieces, data, ...(amount === undefined ? {} : { amount }) } as NewFact;
}

type Settling = Extract<Effect, { kind: "settle" | "instead" }>;

/** What was answered when the message first came holds: which piece was meant, and what one added for it cost. */
function answeredBefore({ turn, standing, numbers }: Redoing, reading: Reading, ask: Ask): Settling | null {
  const [first, ...rest] = ask.first ?? [];
  const [added] = numbers;
  const bought = standing.find((fact) => fact.kind === "buy" && fact.pieces[0] === added?.[0]);
  if (first?.kind === "buy" && bought && cameOfAnswer(turn, bought)) {
    const pieces = first.pieces?.map((mention) => ({
      ...mention,
      count: mention.count ?? bought.pieces.length,
    }));
    const price = bought.amount ?? 0;
    return {
      kind: "instead",
      readings: [{ ...first, ...(pieces ? { pieces } : {}), price, missing: [] }, ...rest],
    };
  }
  const meant = new Set(standing.filter((fact) => fact.kind === reading.kind).flatMap((fact) => fact.pieces));
  for (const { effect } of ask.choices) {
    if (effect.kind !== "settle" || !effect.change || !("pieces" in effect.change)) continue;
    const mentions = (effect.change as { pieces?: Mention[] }).pieces ?? [];
    if (mentions.every(({ number }) => number === undefined || meant.has(number))) return effect;
  }
  return null;
}

/** Whether a fact was first recorded by an answer to its message, not by the message itself. */
function cameOfAnswer({ ledger }: Turn, fact: Fact): boolean {
  const first = ledger.factById(fact.place) ?? fact;
  return ledger.note(first.note)?.root !== fact.root;
}
