import type { Piece } from "../../books/books.ts";
import type { Cents } from "../../money.ts";
import type { Offer } from "../decision.ts";

/** The newest that was offered for just these pieces and neither taken nor turned down yet; undefined: none. */
export function offerFor(offers: readonly Offer[] = [], numbers: readonly number[]): Offer | undefined {
  const wanted = [...numbers].sort().join();
  return offers.find(({ pieces }) => [...pieces].sort().join() === wanted);
}

/**
 * What was offered for held pieces for which no price was agreed on, or told of any in a note that waits, where that is
 * another than `going`, which they would bring otherwise; in cents, null where there is no doubt.
 */
export function offeredOther(
  offers: readonly Offer[] | undefined,
  pieces: readonly Readonly<Piece>[],
  going: Cents | null,
): Cents | null {
  if (pieces.some(({ hold }) => hold === null)) return null;
  const numbers = pieces.map(({ number }) => number);
  const offer = offerFor(offers, numbers);
  if (!offer || (!offer.isTold && pieces.some(({ hold }) => hold!.agreed !== null))) return null;
  return offer.price === going ? null : offer.price;
}
