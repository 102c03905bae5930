import type { Books, Piece } from "../books/books.ts";
import type { MonthRow } from "../books/month.ts";
import { earmarked, monthRow } from "../books/month.ts";
import { costOf, pieceLabel, proceedsOf, profitOf } from "../books/piece.ts";
import type { Day, Month } from "../calendar.ts";
import { addMonths, firstDayOf, lastDayOf, monthName, monthOf, showDay, showMonth } from "../calendar.ts";
import { show } from "../money.ts";
import type { Earning } from "./earnings.ts";
import { earningsOf } from "./earnings.ts";
import { readyWords } from "./lines.ts";
import { monthThrough } from "./month.ts";

/** A month as sentences to read aloud: every piece, the totals, the loan, and what looks like a slip. */
export function tellMonth(books: Books, month: Month, today: Day): string[] {
  const through = monthThrough(month, today);
  const row = monthRow(books, month, today);
  const earnings = earningsOf(books, { from: firstDayOf(month), through });
  const slips = slipsOf(books, { row, earnings, today });
  const name = month === monthOf(today) ? `${showMonth(month)} so far` : showMonth(month);
  return [
    `${name}. ${flippedSentence(row.flipped)}${boughtSentence(books, month)}`,
    ...earnings.flatMap((earning) => ["", pieceSentence(earning)]),
    "",
    ...totalSentences(row, monthName(month)),
    ...loanSentences(books, row, through),
    ...(slips.length > 0 ? ["", "Worth a second look:", ...slips.map((slip) => `- ${slip}`)] : []),
  ];
}

function flippedSentence(flipped: number): string {
  if (flipped === 0) return "No piece was flipped.";
  return flipped === 1 ? "One piece was flipped." : `${flipped} pieces were flipped.`;
}

function boughtSentence(books: Books, month: Month): string {
  const buys = books.facts.filter((fact) => fact.kind === "buy" && monthOf(fact.day) === month);
  const count = buys.reduce((sum, { pieces }) => sum + pieces.length, 0);
  if (count === 0) return "";
  const paid = show(buys.reduce((sum, { amount = 0 }) => sum + amount, 0));
  return count === 1 ? ` One was bought for ${paid}.` : ` ${count} were bought for ${paid}.`;
}

function pieceSentence({ piece, profit, sold, because }: Earning): string {
  const label = spokenName(piece);
  if (!sold) return `${label} ${because ?? "moved"}: ${gainOf(profit)} this month.`;
  const bought = piece.price === 0 ? "came free" : `cost ${show(piece.price)}`;
  const materials =
    piece.materials === 0 ? "took no materials" : `took ${show(piece.materials)} in materials`;
  const fees = piece.fees === 0 ? "" : ` less ${show(piece.fees)} in fees`;
  const whole = profitOf(piece) ?? 0;
  const earlier = profit === whole ? "" : ` Of that, ${gainOf(profit)} falls in this month.`;
  return `${label} ${bought}, ${materials} and brought in ${show(proceedsOf(piece))}${fees}: ${gainOf(whole)}.${earlier}`;
}

/** "The tall white dresser, number 12,": a label that reads well aloud. */
function spokenName({ number, name, traits }: Readonly<Piece>): string {
  return `The ${[...traits, name].join(" ")}, number ${number},`;
}

/** "profit 12.00", "loss 3.00" or "no profit": words rather than signs, for the ear. */
function gainOf(cents: number): string {
  if (cents === 0) return "no profit";
  return cents > 0 ? `profit ${show(cents)}` : `loss ${show(-cents)}`;
}

function totalSentences(row: MonthRow, name: string): string[] {
  const parts = [
    ["the sold pieces cost", row.costOfSold],
    ["fees took", row.fees],
    ["overhead took", row.overhead],
    ["written off was", row.writtenOff],
  ] as const;
  const costs = parts.filter(([, cents]) => cents !== 0).map(([words, cents]) => `${words} ${show(cents)}`);
  return [
    `${name} brought in ${show(row.proceeds)}${costs.length > 0 ? `; ${costs.join(", ")}` : ""}.`,
    `That leaves ${row.flipProfit === 0 ? "no profit" : `a ${gainOf(row.flipProfit).replace(" ", " of ")}`} from flipping.`,
    ...(row.otherIncome === 0 ? [] : [`Other income was ${show(row.otherIncome)}.`]),
    ...(row.taxSetAside === 0 ? [] : [`${show(row.taxSetAside)} is set aside for tax.`]),
  ];
}

function loanSentences(books: Books, row: MonthRow, through: Day): string[] {
  if (books.loans.size === 0) return [];
  return [
    `For the loan: ${show(row.forLoan)}. Paid to it: ${show(row.paidToLoan)}.`,
    `${readyWords(books, through)}.`,
  ];
}

/** What does not add up or was forgotten, each a sentence that states both sides. */
export function slipsOf(
  books: Books,
  { row, earnings, today }: { row: MonthRow; earnings: readonly Earning[]; today: Day },
): string[] {
  const underCost = earnings.filter(({ piece, sold }) => sold && (profitOf(piece) ?? 0) < 0);
  const overdue = [...books.pieces.values()].filter(
    ({ gone, hold }) => !gone && hold?.until && hold.until < today,
  );
  const rateless = [...books.loans.values()].filter((loan) => loan.rateUnknown);
  return [
    ...paymentSlips(books, row),
    ...underCost.map(
      ({ piece }) =>
        `${pieceLabel(piece)} brought in ${show(proceedsOf(piece))}, under what it took: ${show(costOf(piece) + piece.fees)}.`,
    ),
    ...overdue.map((piece) => overdueSlip(piece, today)),
    ...rateless.map(({ name }) => `"${name}" has no rate yet, so its interest is counted as zero.`),
  ];
}

/**
 * A payment fits where it is this month's own money, what was ready when the month began, or both; anything
 * else is told with both sums.
 */
function paymentSlips(books: Books, row: MonthRow): string[] {
  if (books.loans.size === 0) return [];
  const ready = earmarked(books, lastDayOf(addMonths(row.month, -1)));
  const fitting = [row.forLoan, ready, row.forLoan + ready].map((cents) => Math.max(0, cents));
  if (fitting.includes(row.paidToLoan)) return [];
  return [
    `${show(row.paidToLoan)} was paid to the loan, ${show(row.forLoan)} was earned for it and ${readyBefore(ready)}.`,
  ];
}

function readyBefore(ready: number): string {
  return ready < 0 ? `${show(-ready)} had been sent ahead` : `${show(ready)} was ready before`;
}

function overdueSlip(piece: Readonly<Piece>, today: Day): string {
  const held = piece.deposit === 0 ? "is on hold" : `is held with a deposit of ${show(piece.deposit)}`;
  return `${pieceLabel(piece)} ${held}, and its day, ${showDay(piece.hold!.until!, today)}, is past.`;
}
