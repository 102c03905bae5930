import type { Books, Piece } from "../../books/books.ts";
import { owedOn } from "../../books/loan.ts";
import { earmarked } from "../../books/month.ts";
import { pieceLabel, proceedsOf, profitOf } from "../../books/piece.ts";
import { type Cents, show } from "../../money.ts";
import type { Reading } from "../../notes/reading.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Ask, Choice, Looking } from "../decision.ts";

/* "sent the profit to the loan", "throw it on the loan": how much that is, the books know. */

const ALL: readonly string[] = ["all", "all of it", "everything", "it all", "what is due", "whats due"];
const SAYS_ALL: ReadonlySet<string> = new Set(ALL);
const SAYS_THAT: ReadonlySet<string> = new Set(["that", "it", "this"]);
const PROFIT: readonly string[] = ["profit", "the profit", "its profit", "just the profit"];

/** The question for what was sent to a loan, with the profit of the newest sale and what is due to the loan on buttons. */
export function withProceeds(ask: Ask, reading: Reading, { books, today }: Looking): Ask {
  if (reading.kind !== "pay" || ask.wants !== "amount" || books.loans.size === 0) return ask;
  const owed = owedOn(books, today);
  const sold = newestSold(books);
  const profit = sold.reduce((sum, piece) => sum + (profitOf(piece) ?? 0), 0);
  const due = earmarked(books, today);
  const missing = reading.missing?.filter((field) => field !== "amount") ?? [];
  const settle = (label: string, amount: Cents, words: readonly string[]): Choice[] =>
    amount > 0 && amount <= owed
      ? [{ label, words: [...words], effect: { kind: "settle", change: { amount, missing } } }]
      : [];
  const of = sold.length === 1 ? pieceLabel(sold[0]!) : "the last sale";
  const all = settle(`${show(due)}, all that is due`, due, profit === due ? [...ALL, ...PROFIT] : ALL);
  const its = profit === due ? [] : settle(`${show(profit)}, profit of ${of}`, profit, PROFIT);
  // "put that on the loan" right behind a sale: what came in may be meant.
  const price = sold.reduce((sum, piece) => sum + proceedsOf(piece), 0);
  const cameIn =
    saysAny(reading.text, SAYS_THAT) && price !== profit && price !== due
      ? settle(`${show(price)}, what ${of} brought`, price, [])
      : [];
  const choices = saysAny(reading.text, SAYS_ALL) ? [...all, ...its] : [...its, ...all, ...cameIn];
  return { ...ask, choices: [...choices, ...ask.choices] };
}

/** The pieces of the newest sale that stands. */
function newestSold({ facts, pieces }: Books): readonly Readonly<Piece>[] {
  const newest = facts.reduce<(typeof facts)[number] | null>(
    (found, fact) => (fact.kind === "sell" && fact.place > (found?.place ?? -1) ? fact : found),
    null,
  );
  const sold = (newest?.pieces ?? []).map((number) => pieces.get(number)!);
  return sold.every(({ gone, owed }) => gone === "sold" && owed === 0) ? sold : [];
}
