import type { Day } from "../calendar.ts";
import { addDays } from "../calendar.ts";
import type { Desk } from "./desk.ts";
import { isTime, labelsBetween, spanOf, TIMES, type Time } from "./groupings.ts";
import { type Entry, type Journal, placesIn } from "./ledger-index.ts";
import type { Figure, MeasureName, Query } from "./query.ts";
import type { Result } from "./result.ts";

/** Measures that are plain sums of a journal. */
const JOURNALS: Partial<Record<MeasureName, Journal>> = {
  net: "net",
  proceeds: "proceeds",
  spent: "spent",
  fees: "fees",
  minutes: "minutes",
  income: "income",
  paid: "paid",
  interest: "interest",
};

/**
 * A sum that nothing narrows, at a glance: running sums are kept with the journals, so that ten years cost what one
 * does. Null where the query needs more than that.
 */
export function quickTotal(desk: Desk, query: Query): Result | null {
  const journal = query.measure === "count" && query.counted === "sold" ? "sold" : JOURNALS[query.measure];
  const isPlain = query.filters.length === 0 && !query.order && !query.list && query.beside.length === 0;
  if (!journal || !isPlain || query.withBuying || query.aggregate !== null || query.share || query.perMile)
    return null;
  if (query.by !== null && (!isTime(query.by) || query.by === "day")) return null;
  const journals: Journal[] = query.withIncome ? [journal, "income"] : [journal];
  const { from = null, to = null } = query.period ?? {};
  const whole = sumOf(desk, journals, from, to);
  const result = { value: whole.sum, over: whole.over, pieces: 0 };
  if (query.by === null) return { ...result, rows: null };
  const span = spanOf(query.period, desk);
  return { ...result, rows: span ? rowsOf(desk, query.by, journals, span) : [] };
}

/** Notes among some entries: the shares of one stand side by side. */
function notesBetween(entries: readonly Entry[], start: number, end: number): number {
  let count = 0;
  for (let at = start; at < end; at += 1)
    if (at === start || entries[at]!.fact !== entries[at - 1]!.fact) count += 1;
  return count;
}

function sumOf(
  { index }: Desk,
  journals: readonly Journal[],
  from: Day | null,
  to: Day | null,
): { sum: number; over: number } {
  let sum = 0;
  let over = 0;
  for (const journal of journals) {
    const { start, end } = placesIn(index.journals[journal], from, to);
    const sums = index.sumsOf(journal);
    sum += sums[end]! - sums[start]!;
    over += notesBetween(index.journals[journal], start, end);
  }
  return { sum, over };
}

/** A row for each month (week, year …) of the span, empty ones too. */
function rowsOf(desk: Desk, by: Time, journals: readonly Journal[], span: { from: Day; to: Day }): Figure[] {
  const labels = labelsBetween(by, span.from, span.to);
  const labelOf = TIMES[by];
  let from = span.from;
  return labels.map((name) => {
    const to = lastOf(name, from, span.to, labelOf);
    const { sum, over } = sumOf(desk, journals, from, to);
    from = addDays(to, 1);
    return { label: name, value: sum, over };
  });
}

/** The last day that has the label of `from`, found by halving: labels follow the order of days. */
function lastOf(name: string, from: Day, end: Day, labelOf: (day: Day) => string): Day {
  let low = 0;
  let high = 400;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    const day = addDays(from, middle);
    if (day <= end && labelOf(day) === name) low = middle;
    else high = middle - 1;
  }
  return addDays(from, low);
}
