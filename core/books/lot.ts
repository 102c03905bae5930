import { type Cents, WideDecimal } from "../money.ts";
import type { Books, Piece } from "./books.ts";
import { costOf, proceedsOf, profitOf } from "./piece.ts";

/** The sums of the pieces of a lot or set. Cents; `profit` null while no piece has one; miles plain decimal. */
interface LotTotals {
  pieces: number;
  cost: Cents;
  fees: Cents;
  proceeds: Cents;
  profit: Cents | null;
  minutes: number;
  miles: string;
}

/** The pieces of the lot or set that a piece belongs to, by number; the piece itself where it was bought alone. */
export function lotOf(books: Books, number: number): Readonly<Piece>[] {
  const piece = books.pieces.get(number);
  if (!piece) return [];
  if (piece.lot === null) return [piece];
  return [...books.pieces.values()]
    .filter((each) => each.lot === piece.lot)
    .sort((a, b) => a.number - b.number);
}

/** Adds up the pieces of a lot or set, or of any choice of pieces. */
export function lotTotals(pieces: readonly Readonly<Piece>[]): LotTotals {
  const sum = (amount: (piece: Readonly<Piece>) => number): number =>
    pieces.reduce((total, piece) => total + amount(piece), 0);
  const someProfit = pieces.some((piece) => profitOf(piece) !== null);
  return {
    pieces: pieces.length,
    cost: sum(costOf),
    fees: sum((piece) => piece.fees),
    proceeds: sum(proceedsOf),
    profit: someProfit ? sum((piece) => profitOf(piece) ?? 0) : null,
    minutes: sum((piece) => piece.minutes),
    miles: pieces.reduce((total, { miles }) => total.plus(miles), new WideDecimal(0)).toFixed(),
  };
}
