import type { Decimal } from "decimal.js";
import { type Cents, WideDecimal } from "../money.ts";
import { splitByWeight, splitEvenly } from "../split.ts";
import type { Piece } from "./books.ts";

/**
 * Shares of one price (or its fee) over the pieces sold together, in cents: in proportion to their list prices
 * where each has its own above zero, evenly otherwise.
 */
export function sharesOfSale(pieces: readonly Readonly<Piece>[], amount: Cents): Cents[] {
  const prices = pieces.map((piece) => piece.listPrice ?? 0);
  return prices.every((price) => price > 0)
    ? splitByWeight(amount, prices)
    : splitEvenly(amount, pieces.length);
}

/** Shares of a part of the deposits held on pieces, in cents, by what is held on each: never more than that. */
export function sharesOfDeposit(pieces: readonly Readonly<Piece>[], amount: Cents): Cents[] {
  return splitByWeight(
    amount,
    pieces.map((piece) => piece.deposit),
  );
}

/** What is held on the pieces together, in cents. */
export function depositOf(pieces: readonly Readonly<Piece>[]): Cents {
  return pieces.reduce((sum, piece) => sum + piece.deposit, 0);
}

/** One piece's share of a drive in miles: exact as far as 60 digits go. */
export function shareOfMiles(miles: string, count: number): Decimal {
  return new WideDecimal(miles).div(count);
}
