import { wholeLabel } from "../../core/decide/decide.ts";
import type { Ask, Matter } from "../../core/decide/decision.ts";
import { areAwaited, awaitedIn } from "../../core/decide/pieces/awaited.ts";
import { mentionsOf } from "../../core/decide/pieces/mentioned.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Question } from "../../db/questions.ts";
import { askAgain, openQuestions } from "./questions.ts";
import { deskOf, type Turn } from "./turn.ts";

/*
 * A note of a piece that is not on the books, where it is asked already what that cost, waits behind that question: it
 * is recorded once that is answered, whatever answers it.
 */

/** Keeps a note behind the question for its piece, which is asked once more. False where nobody was asked. */
export function waitsForPiece(turn: Turn, note: { matter: Matter; root: number }, ask: Ask): boolean {
  const [bought] = ask.misfit ? (ask.first ?? []) : [];
  if (bought?.kind !== "buy") return false;
  const pieces = mentionsOf(bought);
  const question = openQuestions(turn).find((each) => areAwaited(pieces, awaitedIn(each)));
  if (!question) return false;
  const { after = [] } = question.matter;
  askWithBehind(turn, question, [...after, note], note.matter.reading.text);
  return true;
}

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
