import { Decimal } from "decimal.js";
import type { Books, Piece } from "./books/books.ts";
import type { Cents } from "./money.ts";
import { roundHalfUp } from "./money.ts";

/** What the owner's own sold pieces say about prices. Only pieces that are sold now count, at what they sold for. */
function soldPieces(books: Books): Readonly<Piece>[] {
  return [...books.pieces.values()].filter((piece) => piece.gone === "sold");
}

/** The middle value; of an even count the mean of the middle two. Null of nothing. */
export function medianOf(values: readonly Decimal.Value[]): Decimal | null {
  const sorted = values.map((value) => new Decimal(value)).sort((a, b) => a.comparedTo(b));
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle];
  if (!upper) return null;
  const lower = sorted[middle - 1];
  return sorted.length % 2 === 1 || !lower ? upper : lower.plus(upper).div(2);
}

/** The median price, in whole cents, that pieces of this name sold for; null where none was sold yet. */
export function medianSold(books: Books, name: string): Cents | null {
  const median = medianOf(
    soldPieces(books)
      .filter((piece) => piece.name === name)
      .map((piece) => piece.sales),
  );
  return median && roundHalfUp(median);
}

/** The median share of its first list price that a piece sold for (1 is the whole of it); null without history. */
export function medianShareOfList(books: Books): Decimal | null {
  const shares: Decimal[] = [];
  for (const piece of soldPieces(books)) {
    if (piece.firstListPrice) shares.push(new Decimal(piece.sales).div(piece.firstListPrice));
  }
  return medianOf(shares);
}

/** Asked prices end on 5 or 0: a suggestion is rounded down to whole fives of the currency, never to nothing. */
const PRICE_STEP_CENTS = 500;

/**
 * A lower asking price (whole cents) for a listed piece that does not sell: what its kind sold for, else the
 * share of the first list price that the owner's pieces usually fetch. Null where history asks for no cut, or
 * only for one at or under what the piece has cost.
 */
export function suggestPrice(books: Books, piece: Readonly<Piece>, cost: Cents): Cents | null {
  const asked = piece.listPrice;
  if (!asked) return null;
  const ofKind = medianSold(books, piece.name);
  const share = medianShareOfList(books);
  const fromShare = share && roundHalfUp(share.times(piece.firstListPrice ?? asked));
  for (const exact of [ofKind, fromShare]) {
    if (exact === null) continue;
    const price = exact - (exact % PRICE_STEP_CENTS);
    if (price > cost && price < asked) return price;
  }
  return null;
}
