import type { Piece } from "../../books/books.ts";
import { proceedsOf } from "../../books/piece.ts";
import type { Fit } from "./match.ts";

/** Pieces that are still here. */
export const here: Fit = { allows: (piece) => piece.gone === null };

/** Still here, first those that are not in that state yet; likeliest those that are in the one `before` it. */
export function hereBut(
  done: (piece: Readonly<Piece>) => boolean,
  before: (piece: Readonly<Piece>) => boolean = () => false,
): Fit {
  return { allows: here.allows, prefers: (piece) => (done(piece) ? 0 : before(piece) ? 2 : 1) };
}

/** What can be sold, likeliest what is offered. */
export const forSale: Fit = { allows: here.allows, prefers: (piece) => (piece.listed !== null ? 2 : 1) };

/** Any piece that ever was, first those still here: late spending follows a piece that is gone. */
export const ever: Fit = { allows: () => true, prefers: (piece) => piece.gone === null };

export const listed: Fit = { allows: (piece) => piece.gone === null && piece.listed !== null };

export const held: Fit = { allows: (piece) => piece.hold !== null };

/** Pieces that brought money in, which can be given back; first those that were sold. */
export const paidFor: Fit = {
  allows: (piece) => proceedsOf(piece) > 0,
  prefers: (piece) => piece.gone === "sold",
};
