import type { Cents } from "../money.ts";
import type { Books, Piece } from "./books.ts";
import { agreedPriceOf, listPriceOf } from "./shares.ts";

type Pieces = readonly Readonly<Piece>[];

/** The pieces for which one price was agreed on together with this one's, itself included; none where none was. */
export function agreedTogether(books: Books, { number, hold }: Readonly<Piece>): readonly number[] {
  if (hold === null || hold.agreed === null) return [];
  const story = new Set(books.story.get(number) ?? []);
  const agreement = books.facts.findLast(
    (fact) => fact.kind === "hold" && fact.data.agreed !== undefined && story.has(fact.id),
  );
  return agreement?.pieces ?? [];
}

/**
 * What pieces are to bring together, in cents: the price agreed on for them, else what they are listed at. Null where
 * neither was said, and for some of the pieces of one agreed price: nobody said what these come to.
 */
export function goingPrice(books: Books, pieces: Pieces): Cents | null {
  const isPart = pieces.some((piece) =>
    agreedTogether(books, piece).some((each) => pieces.every(({ number }) => number !== each)),
  );
  if (isPart) return null;
  return pieces.some(({ hold }) => hold !== null && hold.agreed !== null)
    ? agreedPriceOf(pieces)
    : listPriceOf(pieces);
}

/** What is left to pay of the price agreed on for held pieces, in cents; null where none was, or where nothing is. */
export function dueAtPickup(pieces: Pieces): Cents | null {
  const agreed = agreedPriceOf(pieces);
  const due = (agreed ?? 0) - pieces.reduce((sum, piece) => sum + piece.deposit, 0);
  return due > 0 ? due : null;
}
