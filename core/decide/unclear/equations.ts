import type { Cents } from "../../money.ts";
import type { SumSaid } from "../../notes/second-look/known-sums.ts";

/* What the sums of a message are to each other: parts and their total, what came off, the price of one of several. */

/** Whether some of these sums, one of them in any case and others beside it, come to a total. */
function isPartOf(sum: SumSaid, total: Cents, sums: readonly SumSaid[]): boolean {
  const others = sums.filter((other) => other !== sum && !other.isLess);
  const rest = total - sum.cents;
  return !sum.isLess && rest > 0 && rest !== total && waysTo(rest, others);
}

const waysTo = (rest: Cents, [first, ...others]: readonly SumSaid[]): boolean =>
  first !== undefined &&
  (first.cents === rest ||
    waysTo(rest, others) ||
    (first.cents < rest && waysTo(rest - first.cents, others)));

/** The sums that some of the others come to, and those that come to it. */
export function inTotals(sums: readonly SumSaid[]): ReadonlySet<SumSaid> {
  const found = new Set<SumSaid>();
  for (const total of sums) {
    const others = sums.filter((sum) => sum !== total);
    const parts = others.filter((part) => isPartOf(part, total.cents, others));
    for (const each of parts.length > 0 ? [total, ...parts] : []) found.add(each);
  }
  return found;
}

/** What a sum tells of a price beside it. */
export type Told = "part" | "total" | "before" | "between";

/** What a sum is beside the prices that are kept, by arithmetic alone and the words of what comes off; null where it is nothing of them. */
export function toldOf(sum: SumSaid, kept: readonly SumSaid[], out: readonly SumSaid[]): Told | null {
  const [price, ...others] = kept.map(({ cents }) => cents);
  if (price === undefined) return null;
  if (others.length > 0) {
    const all = kept.reduce((one, { cents }) => one + cents, 0);
    return all === sum.cents ? "total" : null;
  }
  const beside = out.filter((other) => other !== sum);
  // "15 over the 180", "160 less 15"
  if (sum.known.has("between") && beside.some(({ cents }) => Math.abs(price - cents) === sum.cents))
    return "between";
  if (beside.some(({ cents, known }) => known.has("between") && Math.abs(sum.cents - cents) === price))
    return "before";
  return isPartOf(sum, price, out) ? "part" : null;
}
