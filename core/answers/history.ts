import type { Books, Piece } from "../books/books.ts";
import { proceedsOf } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { anHour } from "../money.ts";
import type { Mention } from "../notes/reading.ts";
import { soldPieces } from "./stock.ts";
import { medianOf } from "./wording.ts";

type Pieces = readonly Readonly<Piece>[];

/** With fewer sales of a kind than this its figures say little, and the answers say so: common practice, no source. */
export const TELLING_SALES_MIN = 3;

/** Sold pieces of the kind that a mention names: its name, and every trait said; no name: all sold pieces. */
export function soldOfKind(books: Books, mention: Mention | undefined): Pieces {
  const name =
    mention?.name ?? (mention?.number === undefined ? undefined : books.pieces.get(mention.number)?.name);
  return soldPieces(books).filter(
    (piece) =>
      (name === undefined || piece.name === name) &&
      (mention?.traits ?? []).every((trait) => piece.traits.includes(trait)),
  );
}

/** What a sold piece sold for in the end, in cents: its sales less what was given back. */
export function soldFor(piece: Readonly<Piece>): Cents {
  return piece.sales - piece.refunds;
}

/** What pieces of a kind sold for. Cents. */
interface PriceHistory {
  count: number;
  median: Cents;
  lowest: Cents;
  highest: Cents;
  /** Of those listed before the sale: what they sold for and what they were first listed at, added up. */
  listed: { soldFor: Cents; firstListPrice: Cents } | null;
  /** The median of days from the first listing to the sale; null where none was listed. */
  daysToSell: number | null;
}

/** The price history of sold pieces; null where there are none. */
export function priceHistoryOf(sold: Pieces): PriceHistory | null {
  if (sold.length === 0) return null;
  const prices = sold.map(soldFor);
  const wasListed = sold.filter((piece) => piece.firstListed !== null && (piece.firstListPrice ?? 0) > 0);
  const sum = (of: (piece: Readonly<Piece>) => Cents): Cents =>
    wasListed.reduce((total, piece) => total + of(piece), 0);
  return {
    count: sold.length,
    median: medianOf(prices),
    lowest: Math.min(...prices),
    highest: Math.max(...prices),
    listed:
      wasListed.length === 0
        ? null
        : { soldFor: sum(soldFor), firstListPrice: sum((piece) => piece.firstListPrice!) },
    daysToSell:
      wasListed.length === 0
        ? null
        : medianOf(wasListed.map((piece) => daysBetween(piece.firstListed!, piece.sold!))),
  };
}

/** The median price that pieces of a name sold for, in cents; null where none was sold yet. */
export function medianPriceOf(books: Books, name: string): Cents | null {
  return priceHistoryOf(soldOfKind(books, { name }))?.median ?? null;
}

/** What sold pieces would have brought had each been bought at one price. Cents. */
interface WorthAtPrice {
  count: number;
  medianProfit: Cents;
  /** How many would have lost money. */
  losses: number;
  /** Over those with time logged, all profit by all time; null where none has. */
  anHour: Cents | null;
}

/** Profit without the price paid: what a piece brought in less what was spent on it and its fees. */
function marginOf(piece: Readonly<Piece>): Cents {
  return proceedsOf(piece) - piece.materials - piece.fees;
}

/** What sold pieces would have brought at `price` cents each; null where there are none. */
export function worthAt(sold: Pieces, price: Cents): WorthAtPrice | null {
  if (sold.length === 0) return null;
  const profits = sold.map((piece) => marginOf(piece) - price);
  const timed = sold.filter((piece) => piece.minutes > 0);
  const minutes = timed.reduce((sum, piece) => sum + piece.minutes, 0);
  const earned = timed.reduce((sum, piece) => sum + marginOf(piece) - price, 0);
  return {
    count: sold.length,
    medianProfit: medianOf(profits),
    losses: profits.filter((profit) => profit < 0).length,
    anHour: anHour(earned, minutes),
  };
}
