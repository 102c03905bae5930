import type { Fact, NewFact } from "../../core/books/facts.ts";
import type { Choice } from "../../core/decide/decision.ts";
import { NEVER_MIND } from "../../core/decide/decision.ts";
import { amountText, type Cents, show } from "../../core/money.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { ReadingOf } from "../../core/notes/reading.ts";
import { openQuestion, openQuestions } from "./questions.ts";
import { echoOf, impossibleText, keepOutcome } from "./recording.ts";
import type { Turn } from "./turn.ts";

/** A block of more facts than this is taken back only after a yes. */
const UNDO_FACTS_MAX = 5;

/** Takes back a message: the one replied to, or what this person recorded last. */
export function undoNote(turn: Turn, replyRoot?: number): void {
  if (replyRoot === undefined && dropUnrecorded(turn)) return;
  const root = replyRoot ?? turn.ledger.lastStanding(turn.person);
  const facts = root === null ? [] : turn.ledger.standingFactsOf(root);
  if (root === null || facts.length === 0) {
    if (replyRoot !== undefined && dropQuestionsOf(turn, replyRoot)) return;
    turn.spoken.push(
      replyRoot === undefined ? "There is nothing of yours to take back." : "Nothing of that stands.",
    );
    return;
  }
  if (facts.length <= UNDO_FACTS_MAX) undoRoot(turn, root);
  else askWhetherUndo(turn, root, facts.length);
}

/** Voids all that stands of a message. */
export function undoRoot(turn: Turn, root: number): void {
  const facts = turn.ledger.standingFactsOf(root);
  if (facts.length === 0) {
    turn.spoken.push("That was taken back already.");
    return;
  }
  const before = facts.map((fact) => echoOf(turn, fact)[0] ?? fact.kind);
  const voids = facts.map((fact) => fact.id);
  const result = turn.ledger.amend({ note: turn.note, author: turn.person, voids, facts: [] });
  if (result.kind === "impossible") {
    turn.spoken.push(`Not taken back. ${impossibleText(turn, result)}`);
    return;
  }
  turn.changed = true;
  turn.spoken.push(["Taken back:", ...before].join(before.length === 1 ? " " : "\n"));
}

/** When the last note only raised a question, undo drops that note and leaves the books alone. */
function dropUnrecorded(turn: Turn): boolean {
  const last = turn.ledger.lastStanding(turn.person);
  const newer = openQuestions(turn).filter((question) => question.note > (last ?? 0));
  const note = Math.max(...newer.map((question) => question.note));
  return newer.length > 0 && dropQuestionsOf(turn, note);
}

function dropQuestionsOf(turn: Turn, root: number): boolean {
  const open = openQuestions(turn).filter((question) => question.note === root);
  for (const question of open) turn.ledger.questions.close(question.id, turn.now());
  const texts = open.map((question) => question.matter.reading.text);
  if (open.length > 0) turn.spoken.push(`Dropped, nothing was recorded: ${texts.join(", ")}`);
  return open.length > 0;
}

function askWhetherUndo(turn: Turn, root: number, count: number): void {
  const matter = {
    reading: { kind: "undo", text: "undo", line: 0 } as const,
    said: turn.today,
    confirmed: [],
    waiting: [],
  };
  const yes: Choice = { label: `Take back all ${count}`, words: ["yes"], effect: { kind: "undo", root } };
  const choices = [yes, { ...NEVER_MIND, words: ["no"] }];
  const prompt = `That message recorded ${count} notes. Take all of them back?`;
  openQuestion(turn, matter, { prompt, wants: "choice", choices }, turn.note);
}

/** Corrects the one amount of a message: the one replied to, or what this person recorded last. */
export function fixNote(turn: Turn, reading: ReadingOf<"fix">, replyRoot?: number): void {
  const amount = reading.amount!;
  const root = replyRoot ?? turn.ledger.lastStanding(turn.person);
  const facts = root === null ? [] : turn.ledger.standingFactsOf(root).filter(isFixable);
  const [only] = facts;
  if (root === null || !only) {
    turn.refused.push({
      text: reading.text,
      line: reading.line,
      why: "I see no amount of yours to correct.",
    });
    return;
  }
  const each = eachCount(turn, root, only);
  if (facts.length === 1 && each === 1) fixFact(turn, only.id, amount);
  else
    askWhichFix(
      turn,
      reading,
      facts.length === 1
        ? eachChoices(only, amount, each)
        : facts.map((fact) => choiceOf(turn, fact, amount)),
    );
}

function isFixable(fact: Fact): boolean {
  return fact.amount !== undefined || fact.kind === "drive";
}

/** How many pieces an "each" price was for; 1 where the price was for the whole. */
function eachCount(turn: Turn, root: number, fact: Fact): number {
  const note = turn.ledger.note(fact.note) ?? turn.ledger.note(root);
  const readings = note ? readMessage(note.text, turn.today) : [];
  return readings.some((reading) => reading.each) ? Math.max(1, fact.pieces.length) : 1;
}

function eachChoices(fact: Fact, amount: Cents, count: number): Choice[] {
  return [
    {
      label: `${show(amount)} each, ${show(amount * count)} in all`,
      words: ["each"],
      effect: { kind: "fix", fact: fact.id, amount: amount * count },
    },
    {
      label: `${show(amount)} in all`,
      words: ["in all", "all"],
      effect: { kind: "fix", fact: fact.id, amount },
    },
  ];
}

function choiceOf(turn: Turn, fact: Fact, amount: Cents): Choice {
  const [said] = echoOf(turn, fact);
  return { label: said ?? fact.kind, effect: { kind: "fix", fact: fact.id, amount } };
}

function askWhichFix(turn: Turn, reading: ReadingOf<"fix">, choices: Choice[]): void {
  const matter = { reading, said: turn.today, confirmed: [], waiting: [] };
  const prompt = `Which amount is ${show(reading.amount!)}?`;
  openQuestion(turn, matter, { prompt, wants: "choice", choices: [...choices, NEVER_MIND] }, turn.note);
}

/** Replaces one fact by the same with another amount, and says before and after. */
export function fixFact(turn: Turn, id: number, amount: Cents): void {
  const fact = turn.ledger.books.facts.find((standing) => standing.id === id);
  if (!fact) {
    turn.spoken.push("That note does not stand any more. Nothing changed.");
    return;
  }
  const [before] = echoOf(turn, fact);
  const fixed = withAmount(fact, amount);
  const facts = [{ fact: fixed, replaces: fact.id }];
  const result = turn.ledger.amend({ note: turn.note, author: turn.person, voids: [fact.id], facts });
  if (result.kind === "impossible") {
    turn.spoken.push(`Nothing changed. ${impossibleText(turn, result)}`);
    return;
  }
  keepOutcome(turn, result.facts, { text: "" });
  turn.recorded.at(-1)?.lines.splice(1, 0, `Before: ${before}`);
}

/** The same fact with its main amount changed: of a drive, its miles. */
function withAmount(fact: Fact, amount: Cents): NewFact {
  const { kind, day, pieces, data } = fact;
  if (kind === "drive")
    return { kind, day, pieces, data: { miles: amountText(amount).replace(/\.0+$|0+$/, "") } };
  return { kind, day, pieces, amount, data } as NewFact;
}
