import type { Fact } from "../../core/books/facts.ts";
import type { Day } from "../../core/calendar.ts";
import type { Matter } from "../../core/decide/decision.ts";
import { mattersOf } from "../../core/decide/matters.ts";
import { readBareMoney } from "../../core/notes/bare.ts";
import { readingMessage, readMessage } from "../../core/notes/read.ts";
import type { Reading } from "../../core/notes/reading.ts";
import { allAtOnce, type Steps } from "../../core/steps.ts";
import type { Note } from "../../db/notes.ts";
import { heard } from "./cautioning.ts";
import { fixFact } from "./fixing.ts";
import { impossibleText, keepOutcome, saidOf } from "./outcome.ts";
import { closeQuestionsOf, openQuestion } from "./questions.ts";
import { type Asked, isCovered, type Redone, redo } from "./redoing.ts";
import type { Turn } from "./turn.ts";

/** New words of a message, read and decided on books of some age. */
export interface WorkedEdit {
  readings: Reading[];
  /** Null where nothing of the message stands. */
  redone: Redone | null;
  today: Day;
  age: number;
}

/** Reads and decides the new words of a message, a little at each step; nothing is written. */
export function* workingEdit(turn: Turn, text: string): Steps<WorkedEdit> {
  const { ledger, root, today } = turn;
  const { age } = ledger;
  const readings = yield* readingMessage(text, today);
  const standing = ledger.standingFactsOf(root);
  const redone =
    standing.length > 0 ? yield* redo(turn, standing, mattersOf(readings, today, turn.ledger.books)) : null;
  return { readings, redone, today, age };
}

/**
 * An edited message is a correction: what it recorded is voided, and what it says now stands in its place.
 * False where nothing stands of it: then it is taken as if it had been sent now. `early`: worked out before, and good
 * where nothing has changed since.
 */
export function editNote(turn: Turn, text: string, before: Note, early: WorkedEdit | null): boolean {
  const isGood = early?.age === turn.ledger.age && early.today === turn.today;
  const { readings, redone } = isGood ? early : allAtOnce(workingEdit(turn, text));
  if (redone) {
    amendStanding(turn, turn.root, redone, mattersOf(readings, turn.today).length);
    heard(turn, text, readings);
    return true;
  }
  const answered = factsAnswered(turn);
  if (answered.length > 0) correctAnswer(turn, text, { before: before.text, answered });
  else closeQuestionsOf(turn, turn.root);
  return answered.length > 0;
}

/** What a message recorded that only answered a question about another one. */
function factsAnswered(turn: Turn): Fact[] {
  return turn.ledger.standingFactsAnswered(turn.root);
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

/**
 * Puts what was decided anew in the place of what a message recorded; what it leaves open is asked first. False
 * where nothing of the message stands: there is nothing to amend.
 */
export function amendNote(turn: Turn, root: number, matters: readonly Matter[]): boolean {
  const standing = turn.ledger.standingFactsOf(root);
  if (standing.length === 0) return false;
  amendStanding(turn, root, allAtOnce(redo(turn, standing, matters)), matters.length);
  return true;
}

/** `of`: so many matters were decided. */
function amendStanding(turn: Turn, root: number, redone: Redone, of: number): void {
  const standing = turn.ledger.standingFactsOf(root);
  if (redone.kind === "unusable") {
    nothingChanged(turn, redone.why);
    return;
  }
  const { facts, said, asked } = redone;
  const [first] = asked;
  if (first && !isCovered(standing, facts)) {
    if (of === 1) askBeforeEdit(turn, root, first);
    else nothingChanged(turn, `It leaves a question: ${first.ask.prompt}`);
    return;
  }
  const before = standing.map((fact) => saidOf(turn, fact));
  const result = turn.ledger.amend({
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
  keepOutcome(turn, result.facts, said, before);
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
