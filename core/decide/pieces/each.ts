import type { Cents } from "../../money.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { mentionsOf } from "./mentioned.ts";

/**
 * The whole price of pieces that were not known when a price of each was said ("listed them 25 each"). Nothing where
 * there is no such price, or where the books are still to count them.
 */
export function pricedFor(reading: Reading, pieces: readonly Mention[]): { price?: Cents; cut?: Cents } {
  const isOpen = mentionsOf(reading).length === 0;
  if (!reading.each || !isOpen || pieces.some(({ plural }) => plural)) return {};
  const count = pieces.reduce((sum, { count = 1 }) => sum + count, 0);
  if ("cut" in reading && reading.cut !== undefined) return { cut: reading.cut * count };
  return "price" in reading && reading.price !== undefined ? { price: reading.price * count } : {};
}
