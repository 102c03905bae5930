import type { Books, Piece } from "../books/books.ts";
import type { FactCommon } from "../books/facts.ts";
import { labelOf } from "../books/label.ts";
import { costOf, profitOf } from "../books/piece.ts";
import { type Day, showDay } from "../calendar.ts";
import { anHour, type Cents, show } from "../money.ts";
import { PHONE_COLUMNS } from "../phone.ts";

/** " on Sat May 9", or nothing where the fact is of the message's own day. */
export function dayWords(fact: Pick<FactCommon, "day">, today: Day): string {
  return fact.day === today ? "" : ` on ${showDay(fact.day, today)}`;
}

/** " cash", " by wire": how it was paid, as said. */
export function methodWords(method: string | undefined): string {
  if (!method) return "";
  return method === "cash" ? " cash" : ` by ${method}`;
}

/** The fact's pieces in few words, with their numbers. */
export function namesOf(books: Books, fact: Pick<FactCommon, "pieces">): string {
  return labelOf(books, fact.pieces);
}

/** The fact's pieces as they stand. */
export function piecesOf(books: Books, fact: Pick<FactCommon, "pieces">): Readonly<Piece>[] {
  return fact.pieces.map((number) => books.pieces.get(number)!);
}

/** "#4 desk is", "2 chairs (#5, #6) are"; a set is one. */
export function subjectOf(books: Books, fact: Pick<FactCommon, "pieces">): string {
  const names = namesOf(books, fact);
  return `${names} ${isSeveral(names) ? "are" : "is"}`;
}

/** Whether pieces as `namesOf` names them take a plural verb. */
export function isSeveral(names: string): boolean {
  return /^\d|,/.test(names.replace(/\(.*?\)/g, ""));
}

/** Minutes as a person says them: "45 min", "2 h", "1 h 15". */
export function showMinutes(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  if (hours === 0) return `${minutes} min`;
  return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${String(minutes % 60).padStart(2, "0")}`;
}

/** What one price came to for each piece: "10.00 each", "33.34, 33.33, 33.33". */
export function sharesWords(shares: readonly Cents[]): string {
  if (shares.length < 2) return "";
  const [first] = shares as [Cents];
  if (shares.every((share) => share === first)) return `${show(first)} each`;
  if (shares.length <= 4) return shares.map(show).join(", ");
  return `${show(Math.min(...shares))} to ${show(Math.max(...shares))} each`;
}

/**
 * "Profit 48.00 (cost 20.00, fee 6.60) · 32.00 an hour": summed over the pieces, with all that makes it differ from
 * the price just told (cents), so that the lines add up; then the profit of each where they are several. Nothing
 * where no profit is known.
 */
export function profitLines(books: Books, fact: Pick<FactCommon, "pieces">, told?: Cents): string[] {
  const pieces = piecesOf(books, fact);
  const profits = pieces.map(profitOf);
  if (profits.every((profit) => profit === null)) return [];
  const profit = profits.reduce<Cents>((sum, each) => sum + (each ?? 0), 0);
  const minutes = pieces.reduce((sum, piece) => sum + piece.minutes, 0);
  const pay = anHour(profit, minutes);
  const hourly = pay === null ? "" : ` · ${show(pay)} an hour`;
  const each = eachProfit(pieces);
  const parts = `(${profitParts(pieces, told).join(", ")})`;
  // What lies between is told beside the profit where that fits, else in a line of its own.
  const short = `Profit ${show(profit)} ${parts}${hourly}`;
  const lines = short.length <= PHONE_COLUMNS ? [short] : [`Profit ${show(profit)}${hourly}`, parts];
  return [...lines, ...(each ? [each] : [])];
}

/** What lies between the price told and the profit. */
function profitParts(pieces: readonly Readonly<Piece>[], told: Cents | undefined): string[] {
  const sum = (of: (piece: Readonly<Piece>) => Cents) =>
    pieces.reduce((total, piece) => total + of(piece), 0);
  const part = (name: string, cents: Cents, sign = "") =>
    cents === 0 ? [] : [`${name} ${sign}${show(cents)}`];
  return [
    `cost ${show(sum(costOf))}`,
    ...part(
      "fee",
      sum((piece) => piece.fees),
    ),
    ...part(
      "deposit kept",
      sum((piece) => piece.depositsKept),
      "+",
    ),
    ...part(
      "refunded",
      sum((piece) => piece.refunds),
    ),
    ...part("sold before", told === undefined ? 0 : sum((piece) => piece.sales) - told, "+"),
  ];
}

/** "Each: #4 11.50, #5 9.00"; alike ones once. */
function eachProfit(pieces: readonly Readonly<Piece>[]): string | null {
  if (pieces.length < 2) return null;
  const profits = pieces.map((piece) => profitOf(piece) ?? 0);
  const least = Math.min(...profits);
  const most = Math.max(...profits);
  if (least === most) return `Each: ${show(least)}`;
  if (pieces.length > EACH_TOLD_MAX) return `Each: ${show(least)} to ${show(most)}`;
  return `Each: ${pieces.map(({ number }, index) => `#${number} ${show(profits[index]!)}`).join(", ")}`;
}

/** More profits than this do not fit a line. */
const EACH_TOLD_MAX = 4;

/** "47.50 in it so far", with the hours where any are logged. */
export function costLine(books: Books, fact: Pick<FactCommon, "pieces">): string {
  const pieces = piecesOf(books, fact);
  const cost = pieces.reduce((sum, piece) => sum + costOf(piece), 0);
  const minutes = pieces.reduce((sum, piece) => sum + piece.minutes, 0);
  const it = pieces.length === 1 ? "it" : "them";
  return `${show(cost)} in ${it} so far${minutes > 0 ? `, ${showMinutes(minutes)}` : ""}`;
}
