import type { Books } from "../books/books.ts";
import { owedOn } from "../books/loan.ts";
import { earmarked, monthRow } from "../books/month.ts";
import type { Day } from "../calendar.ts";
import { monthName, monthOf } from "../calendar.ts";
import { show } from "../money.ts";
import { signed } from "./wording.ts";

/** The running month under a recorded note: "May so far: +128.00 · 3 flipped". */
export function monthSoFarLine(books: Books, today: Day): string {
  const row = monthRow(books, monthOf(today), today);
  const other = row.otherIncome === 0 ? "" : ` · ${signed(row.otherIncome)} other`;
  return `${monthName(row.month)} so far: ${signed(row.flipProfit)} · ${row.flipped} flipped${other}`;
}

/** What is left of the loan, or of all loans together; null where there is none. */
export function loanLine(books: Books, today: Day): string | null {
  if (books.loans.size === 0) return null;
  return `${books.loans.size === 1 ? "Loan" : "Loans"}: ${show(owedOn(books, today))} left`;
}

/** What is earmarked for the loan and not sent yet; null where there is no loan to send it to. */
export function readyLine(books: Books, today: Day): string | null {
  if (books.loans.size === 0) return null;
  return readyWords(books, today);
}

/**
 * What is earmarked on a day. Below zero it was sent ahead; where nothing was ever sent, costs came before
 * earnings and are to be earned back first.
 */
export function readyWords(books: Books, day: Day): string {
  const ready = earmarked(books, day);
  if (ready >= 0) return `Due to the loan: ${show(ready)}`;
  const sent = [...books.months].some(([month, { paidToLoan }]) => month <= monthOf(day) && paidToLoan > 0);
  if (sent || books.declaredSent > 0) return `Sent ahead: ${show(-ready)}`;
  return `Nothing to send yet: ${show(-ready)} to earn back`;
}

/** The closing lines of a reply to a recorded note: the month so far, the loan left, what is due to it. */
export function closingLines(books: Books, today: Day): string[] {
  return [monthSoFarLine(books, today), loanLine(books, today), readyLine(books, today)].filter(
    (line) => line !== null,
  );
}
