import { Decimal } from "decimal.js";
import type { Piece } from "../books/books.ts";
import { costOf, profitOf } from "../books/piece.ts";
import { type Day, daysBetween } from "../calendar.ts";
import type { Desk, Subject } from "./desk.ts";
import { salePriceOf } from "./ledger-index.ts";
import { measures } from "./measures.ts";
import type { Filter, Query } from "./query.ts";
import { daysListedOf, reachedOf } from "./subjects.ts";

/*
 * What the amount of a question is held against: "sold over 100", "with more than 3 hours in them".
 */

/** What an amount is held against where that is said; hours, days and miles in hundredths, as it was read. */
const BOUNDS: Readonly<
  Record<
    Exclude<NonNullable<Filter["of"]>, "proceeds" | "reached" | "days listed">,
    (piece: Readonly<Piece>, today: Day) => number | null
  >
> = {
  price: ({ price }) => price,
  cost: costOf,
  asking: ({ listPrice }) => listPrice,
  profit: (piece) => (piece.gone ? profitOf(piece) : null),
  minutes: ({ minutes }) => minutes * 100,
  days: ({ bought, sold, gone }, today) => (gone && !sold ? null : daysBetween(bought, sold ?? today) * 100),
  miles: ({ miles }) => new Decimal(miles).times(100).toNumber(),
};

/** What an amount is held against: the measure; where there is none, what the piece was sold or bought for. */
export function boundOf(
  desk: Desk,
  query: Query,
  { piece, units, miles = "0" }: Subject,
  { of }: Filter,
): number | null {
  const { books, index, today } = desk;
  if (of) {
    if (!piece) return null;
    if (of === "proceeds") return salePriceOf(books, index, piece);
    if (of === "reached") return inHundredths(reachedOf(piece, desk).units);
    if (of === "days listed") return inHundredths(daysListedOf(piece, desk).units);
    return BOUNDS[of](piece, today);
  }
  if (query.measure === "miles") return new Decimal(miles).times(100).toNumber();
  if (query.measure !== "count") return measures[query.measure].whole ? units * 100 : units;
  if (!piece) return null;
  if (query.counted === "sold") return salePriceOf(books, index, piece);
  return query.counted === "on the market" || query.counted === "listed" ? piece.listPrice : piece.price;
}

const inHundredths = (units: number | null): number | null => (units === null ? null : units * 100);
