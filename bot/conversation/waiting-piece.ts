import { wholeLabel } from "../../core/decide/decide.ts";
import type { Ask, Matter } from "../../core/decide/decision.ts";
import { areAwaited, awaitedIn } from "../../core/decide/pieces/awaited.ts";
import { mentionsOf } from "../../core/decide/pieces/mentioned.ts";
import type { Reading } from "../../core/notes/reading.ts";
import { couldOf, tellsNoFact } from "../../core/notes/unclear.ts";
import type { Question } from "../../db/questions.ts";
import { askAgain, openQuestions } from "./questions.ts";
import { deskOf, type Turn } from "./turn.ts";

/*
 * A note of a piece that is not on the books, where it is asked already what that cost, waits behind that question: it
 * is recorded once that is answered, whatever answers it.
 */

/**
 * Keeps a note behind the question for its piece, which is asked once more. False where nobody was asked. `ask`: what
 * would be asked of it instead; none where it is only not understood.
 */
export function waitsForPiece(turn: Turn, note: { matter: Matter; root: number }, ask?: Ask): boolean {
  const [bought] = ask?.misfit ? (ask.first ?? []) : [];
  const { reading: said } = note.matter;
  // What an unclear note may be is judged once its piece is here.
  const told = bought ? [bought] : couldOf(said).filter(({ kind }) => kind !== "buy" && kind !== "mend");
  if (bought ? bought.kind !== "buy" : tellsNoFact(said)) return false;
  const isOf = (question: Question): boolean => {
    const awaited = awaitedIn(question);
    return told.some((each) => areAwaited(mentionsOf(each), awaited));
  };
  const question = openQuestions(turn).find(isOf);
  if (!question) return false;
  const { after = [], reading } = question.matter;
  const before = [reading, ...after.map(({ matter }) => matter.reading)];
  // What is gone with one of these goes no second time.
  const isGone = goes(note.matter.reading) && before.some(goes);
  if (isGone || before.length > BEHIND_MAX || turn.asked.length >= BEHIND_MAX) return false;
  askWithBehind(turn, question, [...after, note], note.matter.reading.text);
  return true;
}

const goes = ({ kind }: Reading): boolean => kind === "sell" || kind === "retire";

/** More than these are asked about by themselves. */
const BEHIND_MAX = 9;

function askWithBehind(turn: Turn, question: Question, after: Matter["after"] & object, text: string): void {
  const matter: Matter = { ...question.matter, after };
  turn.ledger.questions.setMatter(question.id, matter);
  if (turn.asked.every(({ id }) => id !== question.id)) askAgain(turn, { ...question, matter });
  const asked = turn.asked.find(({ id }) => id === question.id)!;
  asked.waits = [...(asked.waits ?? []), text];
}

/** The notes that wait behind a question. */
export const waitingBehind = ({ matter: { after = [] } }: Question): Reading[] =>
  after.map(({ matter }) => matter.reading);

/** Puts what a correction made of the note that came last behind a question in its place. */
export function changeBehind(turn: Turn, question: Question, changed: Reading): void {
  const after = [...(question.matter.after ?? [])];
  const last = after.pop()!;
  after.push({ ...last, matter: { ...last.matter, reading: changed } });
  askWithBehind(turn, question, after, wholeLabel(changed, deskOf(turn)));
}
