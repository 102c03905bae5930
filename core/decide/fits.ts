import type { Piece } from "../books/books.ts";
import { proceedsOf } from "../books/piece.ts";
import type { Fit } from "./match.ts";

/** Pieces that are still here. */
export const here: Fit = { allows: (piece) => piece.gone === null };

/** Still here, first those that are not in that state yet. */
export function hereBut(done: (piece: Readonly<Piece>) => boolean): Fit {
  return { allows: here.allows, prefers: (piece) => !done(piece) };
}

/** Any piece that ever was, first those still here: late spending follows a piece that is gone. */
export const ever: Fit = { allows: () => true, prefers: (piece) => piece.gone === null };

export const listed: Fit = { allows: (piece) => piece.gone === null && piece.listed !== null };

export const held: Fit = { allows: (piece) => piece.hold !== null };

/** Pieces that brought money in, which can be given back; first those that were sold. */
export const paidFor: Fit = {
  allows: (piece) => proceedsOf(piece) > 0,
  prefers: (piece) => piece.gone === "sold",
};
