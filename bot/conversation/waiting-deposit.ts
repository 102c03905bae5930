import type { NewFact } from "../../core/books/facts.ts";
import type { Matter } from "../../core/decide/decision.ts";
import { held } from "../../core/decide/pieces/fits.ts";
import { matchMention } from "../../core/decide/pieces/match.ts";
import type { Question } from "../../db/questions.ts";
import { closeQuestion, openQuestion } from "./questions.ts";
import type { Turn } from "./turn.ts";

/**
 * A sale of a piece whose buyer backed out, where it is still open what became of the deposit: that is asked
 * first, of whoever sells, since the sale would use the deposit up. The sale goes on by itself after the answer.
 */
export function asksOfDepositFirst(
  turn: Turn,
  sale: { matter: Matter; root: number },
  facts: readonly NewFact[],
): boolean {
  const pieces = facts.flatMap((fact) => (fact.kind === "sell" ? fact.pieces : []));
  if (pieces.length === 0) return false;
  const open = turn.ledger.questions.everyOpen();
  const waiting = open.find((question) => mayMean(turn, question, pieces));
  if (!waiting) return false;
  closeQuestion(turn, waiting.id);
  const { matter, ask, note } = waiting;
  openQuestion(turn, { ...matter, after: [...(matter.after ?? []), sale] }, ask, note);
  return true;
}

function mayMean(turn: Turn, { matter }: Question, pieces: readonly number[]): boolean {
  const { reading } = matter;
  if (reading.kind !== "fallthrough") return false;
  return (reading.pieces ?? []).some((mention) => {
    const match = matchMention(mention, turn.ledger.books, held, new Set());
    if (match.kind === "several") return match.groups.flat().some((number) => pieces.includes(number));
    return match.kind === "found" && match.pieces.some((number) => pieces.includes(number));
  });
}
