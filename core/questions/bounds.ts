import { Decimal } from "decimal.js";
import type { Piece } from "../books/books.ts";
import { costOf, profitOf } from "../books/piece.ts";
import { type Day, daysBetween } from "../calendar.ts";
import { anHour } from "../money.ts";
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
  hourly: (piece) =>
    piece.gone === "sold" && piece.minutes > 0 ? anHour(profitOf(piece) ?? 0, piece.minutes) : null,
  miles: ({ miles }) => new Decimal(miles).times(100).toNumber(),
};

/** What several went for together is the price of each as well: a set "sold for 240". */
function isWholePrice(
  desk: Desk,
  query: Query,
  { piece }: Subject,
  { dimension, values, of }: Filter,
): boolean {
  if (dimension !== "exactly" || !piece) return false;
  const { buy, sell } = desk.index.of(piece.number);
  const counted = query.measure === "count" ? query.counted : null;
  const isSale = of === "proceeds" || (!of && (counted === "sold" || query.measure === "proceeds"));
  const isBuy = of === "price" || (!of && (counted === "bought" || query.measure === "price"));
  const fact = isBuy ? buy : isSale && piece.gone === "sold" ? sell : null;
  return fact?.amount === Number(values[0]);
}

/** What an amount is held against: the measure; where there is none, what the piece was sold or bought for. */
export function boundOf(desk: Desk, query: Query, subject: Subject, limit: Filter): number | null {
  const { books, index, today } = desk;
  const { piece, units, miles = "0" } = subject;
  const { of } = limit;
  if (isWholePrice(desk, query, subject, limit)) return Number(limit.values[0]);
  if (of) {
    if (!piece) return null;
    if (of === "proceeds") return salePriceOf(books, index, piece);
    if (of === "reached") return inHundredths(reachedOf(piece, desk).units);
    if (of === "days listed") return inHundredths(daysListedOf(piece, desk).units);
    return BOUNDS[of](piece, today);
  }
  if (subject.per !== undefined) {
    const { combine, unit } = measures[query.measure];
    return Number(combine([subject])) * (unit === "money" ? 1 : 100);
  }
  if (query.measure === "miles") return new Decimal(miles).times(100).toNumber();
  if (query.measure !== "count") return measures[query.measure].whole ? units * 100 : units;
  if (!piece) return null;
  if (query.counted === "sold") return salePriceOf(books, index, piece);
  return query.counted === "on the market" || query.counted === "listed" ? piece.listPrice : piece.price;
}

const inHundredths = (units: number | null): number | null => (units === null ? null : units * 100);
