import { Decimal } from "decimal.js";
import { type Day, daysBetween } from "../calendar.ts";
import { roundHalfUp } from "../money.ts";
import type { Figure, Filter, Grouping, Query } from "./query.ts";
import type { Result } from "./result.ts";
import { percentOf } from "./subjects.ts";

/*
 * One figure by another: a share of a whole, so much a mile, so much a month.
 */

type Run = (query: Query) => Result;

/** What the part comes to in percent of the whole. */
export function runShare(query: Query, part: readonly Filter[], run: Run): Result {
  const { share: _, ...plain } = query;
  const whole = run(plain);
  const some = run({ ...plain, filters: [...query.filters, ...part] });
  const value = percentOf(some.value, whole.value);
  // Rows are shares of all, or of their own where a part of each is asked for.
  const rows = whole.rows?.map(({ label, value: of }): Figure => {
    const own = some.rows?.find((row) => row.label === label)?.value ?? 0;
    return { label, value: part.length > 0 ? percentOf(own, of) : percentOf(of, whole.value) };
  });
  return {
    value,
    valueUnit: "percent",
    rows: rows ?? null,
    ...(rows ? { rowUnit: "percent" as const } : {}),
    over: some.over,
    pieces: some.pieces,
    shareOf: { part: some.value, whole: whole.value },
  };
}

/** What can be said of drives as well: which pieces they were for. */
const OF_DRIVES: ReadonlySet<Filter["dimension"]> = new Set([
  "piece",
  "kind",
  "trait",
  "source",
  "person",
  "place",
]);

/** So much for each mile driven in the same time, for the same pieces. */
export function runPerMile(query: Query, run: Run): Result {
  const { perMile: _, ...plain } = query;
  const sum = run(plain);
  const filters = query.filters.filter(({ dimension }) => OF_DRIVES.has(dimension));
  const { value: miles } = run({ ...plain, measure: "miles", filters, counted: null });
  const isDriven = Number(miles ?? 0) > 0;
  const value = isDriven ? roundHalfUp(new Decimal(Number(sum.value ?? 0)).div(miles!)) : null;
  return { ...sum, value, rows: null, shareOf: { part: sum.value, whole: miles } };
}

/** Days that a stretch of time has at least. */
const LEAST_DAYS: Partial<Record<Grouping, number>> = { week: 7, month: 28, quarter: 90, year: 365 };

/** "A week on average, the last 3 days": they tell of no week. */
function isLessThanOne({ by, period }: Query, today: Day): boolean {
  if (!by || !period?.from || period.from > today) return false;
  const to = period.to && period.to < today ? period.to : today;
  return daysBetween(period.from, to) + 1 < (LEAST_DAYS[by] ?? 0);
}

/** The rows of what adds up, and their mean: those with nothing count as well. */
export function runRate(query: Query, today: Day, run: Run): Result {
  const sums = run({ ...query, aggregate: null });
  if (isLessThanOne(query, today)) return { ...sums, value: null, rows: null };
  return { ...sums, ...meanOfRows(query, sums.rows ?? []) };
}

/** Rows with their mean; none where there are no rows. */
export function meanOfRows(query: Query, rows: Figure[]): Pick<Result, "value" | "rows"> {
  const all = rows.reduce((sum, { value }) => sum.plus(value ?? 0), new Decimal(0));
  if (rows.length === 0) return { value: null, rows };
  const mean = all.div(rows.length);
  const value = query.measure === "miles" ? mean.toDecimalPlaces(1).toString() : roundHalfUp(mean);
  return { value, rows };
}
