import type { Piece } from "../../books/books.ts";
import type { Cents } from "../../money.ts";
import type { Offer } from "../decision.ts";

/** The newest price that was offered for just these pieces and neither taken nor turned down yet, in cents; null: none. */
export function offeredFor(offers: readonly Offer[] = [], numbers: readonly number[]): Cents | null {
  const wanted = [...numbers].sort().join();
  return offers.find(({ pieces }) => [...pieces].sort().join() === wanted)?.price ?? null;
}

/**
 * What was offered for held pieces for which no price was agreed on, where that is another than `going`, which they
 * would bring otherwise; in cents, null where there is no doubt.
 */
export function offeredOther(
  offers: readonly Offer[] | undefined,
  pieces: readonly Readonly<Piece>[],
  going: Cents | null,
): Cents | null {
  if (pieces.some(({ hold }) => hold === null || hold.agreed !== null)) return null;
  const numbers = pieces.map(({ number }) => number);
  const offered = offeredFor(offers, numbers);
  return offered === going ? null : offered;
}
