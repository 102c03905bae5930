import type { Decimal } from "decimal.js";
import { type Cents, WideDecimal } from "../money.ts";
import { splitByWeight, splitEvenly } from "../split.ts";
import type { Piece } from "./books.ts";
import { costOf } from "./piece.ts";

/**
 * Shares of one price (or its fee) over the pieces sold together, in cents: in proportion to their list prices. A
 * piece without one (or listed at zero) counts at its cost so far, times the others' list prices over their costs;
 * where none is listed, or the listed ones cost nothing, all share evenly.
 */
export function sharesOfSale(pieces: readonly Readonly<Piece>[], amount: Cents): Cents[] {
  const weights = weightsOfSale(pieces);
  return weights ? splitByWeight(amount, weights) : splitEvenly(amount, pieces.length);
}

/** Multiplied through by the listed ones' cost, so that the weights stay whole. */
function weightsOfSale(pieces: readonly Readonly<Piece>[]): bigint[] | null {
  const listed = pieces.filter((piece) => isPriced(piece));
  const sum = (of: (piece: Readonly<Piece>) => Cents) =>
    listed.reduce((total, piece) => total + of(piece), 0);
  const prices = sum((piece) => piece.listPrice ?? 0);
  if (listed.length === pieces.length) return pieces.map((piece) => BigInt(piece.listPrice!));
  const costs = sum(costOf);
  if (listed.length === 0 || costs === 0) return null;
  return pieces.map((piece) =>
    isPriced(piece) ? BigInt(piece.listPrice!) * BigInt(costs) : BigInt(costOf(piece)) * BigInt(prices),
  );
}

function isPriced({ listPrice }: Readonly<Piece>): boolean {
  return listPrice !== null && listPrice > 0;
}

/** What of each piece's share of a price is left to pay after its own deposit, in cents; never below zero. */
export function dueOf(prices: readonly Cents[], deposits: readonly Cents[]): Cents[] {
  return prices.map((price, index) => Math.max(0, price - deposits[index]!));
}

/** Shares of an amount that comes in, or never comes, on sold pieces, in cents: by what is owed on each. */
export function sharesOfOwed(pieces: readonly Readonly<Piece>[], amount: Cents): Cents[] {
  return splitByWeight(
    amount,
    pieces.map((piece) => piece.owed),
  );
}

/** What buyers still owe on the pieces together, in cents. */
export function owedByBuyers(pieces: Iterable<Readonly<Piece>>): Cents {
  let owed = 0;
  for (const piece of pieces) owed += piece.owed;
  return owed;
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

/** What was agreed on for held pieces together, in cents; null unless for each. */
export function agreedPriceOf(pieces: readonly Readonly<Piece>[]): Cents | null {
  let sum = 0;
  for (const { hold } of pieces) {
    if (hold === null || hold.agreed === null) return null;
    sum += hold.agreed;
  }
  return sum;
}

/** What pieces are listed at together, in cents; null unless each has a price. */
export function listPriceOf(pieces: readonly Readonly<Piece>[]): Cents | null {
  if (pieces.some((piece) => piece.listPrice === null)) return null;
  return pieces.reduce((sum, piece) => sum + piece.listPrice!, 0);
}
