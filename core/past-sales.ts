import { Decimal } from "decimal.js";
import { medianPriceOf, soldFor } from "./answers/history.ts";
import { soldPieces } from "./answers/stock.ts";
import { medianOf } from "./answers/wording.ts";
import type { Books, Piece } from "./books/books.ts";
import type { Cents } from "./money.ts";
import { roundHalfUp } from "./money.ts";

/** The median share of its first list price that a piece sold for, in ten-thousandths; null without history. */
function medianShareOfList(books: Books): number | null {
  const shares: number[] = [];
  for (const piece of soldPieces(books)) {
    if (!piece.firstListPrice) continue;
    shares.push(roundHalfUp(new Decimal(soldFor(piece)).times(10_000).div(piece.firstListPrice)));
  }
  return shares.length === 0 ? null : medianOf(shares);
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
  const ofKind = medianPriceOf(books, piece.name);
  const share = medianShareOfList(books);
  const fromShare = share && roundHalfUp(new Decimal(share).times(piece.firstListPrice ?? asked).div(10_000));
  for (const exact of [ofKind, fromShare]) {
    if (exact === null) continue;
    const price = exact - (exact % PRICE_STEP_CENTS);
    if (price > cost && price < asked) return price;
  }
  return null;
}
