import type { Cents } from "./money.ts";
import { assertCents } from "./money.ts";

/**
 * Shares of `total` (whole cents, or any whole units) in proportion to `weights` (whole, not negative, of any size)
 * by the largest-remainder method; equal remainders go to the earlier share. Shares always sum to the
 * total. All weights zero: evenly. Source of the method: Hamilton / Hare–Niemeyer apportionment.
 */
export function splitByWeight(total: Cents, weights: readonly (number | bigint)[]): Cents[] {
  assertCents(total);
  if (weights.length === 0) throw new Error("nothing to split over");
  if (total < 0) return splitByWeight(-total, weights).map((share) => (share === 0 ? 0 : -share));
  // BigInt: sums of weights and their products with the total may pass 2^53.
  const whole = weights.map(BigInt);
  const sumWhole = whole.reduce((a, b) => a + b, 0n);
  if (sumWhole === 0n) return splitEvenly(total, weights.length);
  const exact = whole.map((weight) => BigInt(total) * weight);
  const shares = exact.map((value) => Number(value / sumWhole));
  const left = total - shares.reduce((a, b) => a + b, 0);
  const byRemainder = exact
    .map((value, index) => ({ remainder: value % sumWhole, index }))
    .sort((a, b) => (a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1));
  for (const { index } of byRemainder.slice(0, left)) shares[index] = (shares[index] ?? 0) + 1;
  return shares;
}

/** Even shares of `total` (whole units) over `count` places: the first ones take the odd units. */
export function splitEvenly(total: Cents, count: number): Cents[] {
  assertCents(total);
  if (count < 1) throw new Error("nothing to split over");
  if (total < 0) return splitEvenly(-total, count).map((share) => (share === 0 ? 0 : -share));
  const least = Math.floor(total / count);
  return Array.from({ length: count }, (_, index) => (index < total % count ? least + 1 : least));
}
