import { lastDayOf, monthOf } from "../calendar.ts";
import type { Desk } from "./desk.ts";
import type { Mark } from "./marks.ts";
import { measures } from "./measures.ts";
import { type Narrowing, type Refusal, refusal } from "./narrowing.ts";
import { cutsOf, type Parts } from "./parts.ts";
import { yearBefore } from "./periods.ts";
import type { Filter, Period, Side } from "./query.ts";
import { apartIn } from "./read-period.ts";
import type { Reading } from "./reading.ts";
import { wholeUnit } from "./units.ts";
import { isRate } from "./wanted.ts";

/** What is put beside each other, and the filters that all sides share. */
export interface Sides {
  beside: Side[];
  shared: Filter[];
  isPeriods: boolean;
  /** They are one question's, and nothing is compared. */
  summed?: true;
}

/** Both sides of a comparison: the one thing that stands on each side, all else held by both. */
export function sidesOf(reading: Reading): Sides | Refusal | null {
  const { parts, found, desk } = reading;
  const joint = cutsOf(parts);
  if (joint.length === 0) return periodsApart(reading);
  const periods = parts.periods.filter(({ period }) => period.from !== null || period.to !== null);
  const sideOf = (at: number): number => joint.filter((cut) => cut < at).length;
  const [first] = periods;
  const isBefore = found.every(({ item }) => item.at < joint[0]!);
  const running = periods.length === 1 && isBefore ? runningBeside(parts, first!, desk) : null;
  if (running) return { beside: running, shared: found.map(({ filter }) => filter), isPeriods: true };
  // "Tips this year vs lessons this year": the days are the same on both sides.
  const areSame =
    found.length > 1 &&
    periods.every(({ period, at }) => isSamePeriod(period, first!.period) && !saysLast(parts.marks[at]!));
  if (
    !areSame &&
    periods.length === joint.length + 1 &&
    new Set(periods.map(({ at }) => sideOf(at))).size > 1
  ) {
    const apart = splitsOf(found, sideOf, true);
    const { beside: own, shared } =
      apart.length > 0 ? sidesBy(found, apart, sideOf) : { beside: [], shared: [] };
    const beside = periods.map(({ period, at }): Side => {
      // "This november and last november": the same name, a year apart.
      const isSame = periods.some((other) => other.at !== at && isSamePeriod(other.period, period));
      const meant = isSame && saysLast(parts.marks[at]!) ? yearBefore(period) : period;
      // "Dressers in may versus desks in june"
      const { filters, label } = own[sideOf(at)] ?? { filters: [], label: "" };
      return { filters, period: meant, label: `${label} ${labelOfPeriod(meant)}`.trim() };
    });
    return { beside, shared: own.length > 0 ? shared : uniqueOf(found), isPeriods: true };
  }
  const rest = besideRest(parts, found, sideOf);
  if (rest) return { ...rest, isPeriods: false };
  const splits = splitsOf(found, sideOf);
  const ownSides = new Set(found.map(({ item }) => sideOf(item.at)));
  // "Oak pieces versus tables": each side is narrowed in its own way.
  if (splits.length === 0 && ownSides.size === joint.length + 1 && ownSides.size > 1)
    return { ...mixedSides(found, sideOf), isPeriods: false };
  if (splits.length === 0)
    return joint.length > 0 && parts.besideAt.length > 0 ? refusal(parts.marks[joint[0]!]!) : null;
  return { ...sidesBy(found, splits, sideOf), isPeriods: false };
}

/** "In may and august": stretches of time with "and" between them that do not touch, each its own figure. */
function periodsApart(reading: Reading): Sides | null {
  const { parts, found, f, measure, list, tally } = reading;
  const { periods, orders, limits } = parts;
  // "A month on average in may and august" goes by the month and parts nothing.
  const groups = isRate(reading) ? [] : parts.groups;
  const { adds, mean, stock, unit } = measures[measure];
  if (!(adds || (f.average && mean)) || stock || unit === "miles" || list || tally || parts.yesNo)
    return null;
  if (f.has("share", "chart") || groups.length + orders.length + limits.length > 0) return null;
  if (!apartIn(parts)) return null;
  return {
    beside: periods.map(({ period }) => ({ filters: [], period, label: labelOfPeriod(period) })),
    shared: found.map(({ filter }) => filter),
    isPeriods: true,
    summed: true,
  };
}

/** "Yard sales versus everything else": what is named, and all that is not of it. */
function besideRest(
  { cues }: Parts,
  found: readonly Narrowing[],
  sideOf: (at: number) => number,
): { beside: Side[]; shared: Filter[] } | null {
  const at = cues.get("rest")?.[0];
  if (at === undefined) return null;
  const [named, more] = found.filter(({ item }) => sideOf(item.at) !== sideOf(at));
  if (!named || more) return null;
  const { filter } = named;
  const other: Filter = { ...filter, not: true };
  const beside = [filter, other].map(
    (one): Side => ({ filters: [one], period: null, label: labelOfFilters([one]) }),
  );
  return { beside, shared: found.filter((each) => each !== named).map((each) => each.filter) };
}

/** "Am i doing better than last month": the running one stands on the other side. */
function runningBeside(
  { marks, besideAt }: Parts,
  { period, at }: Parts["periods"][number],
  { today }: Desk,
): Side[] | null {
  const unit =
    /(?:^| )(?:last|previous|prior) (week|month|quarter|year)$/.exec(marks[at]!.text)?.[1] ?? unitOf(period);
  if (!unit || (period.to ?? today) >= today || besideAt.length !== 1 || besideAt[0]! > at) return null;
  const { from, to, name } = wholeUnit("this", unit, 0, today);
  return [{ from, to, name }, period].map((each) => ({
    filters: [],
    period: each,
    label: labelOfPeriod(each),
  }));
}

/** A whole month or year: "worse than october" is this month beside it. */
function unitOf({ from, to }: Period): string | null {
  if (!from || !to) return null;
  if (from.endsWith("-01") && to === lastDayOf(monthOf(from))) return "month";
  return from.endsWith("-01-01") && to === `${from.slice(0, 4)}-12-31` ? "year" : null;
}

function isSamePeriod(a: Period, b: Period): boolean {
  return a.from === b.from && a.to === b.to;
}

function saysLast({ text }: Mark): boolean {
  return /^(?:last|previous|prior) /.test(text);
}

/** What is said on more than one side, and not the same on each: "yard sale chairs versus thrift store lamps" by both. */
function splitsOf(
  found: readonly Narrowing[],
  sideOf: (at: number) => number,
  mustDiffer = false,
): Filter["dimension"][] {
  const dimensions = [...new Set(found.map(({ filter }) => sideSort(filter)))];
  const on = (dimension: Filter["dimension"]): Map<number, string> => {
    const said = new Map<number, string>();
    for (const { filter, item } of found)
      if (sideSort(filter) === dimension)
        said.set(
          sideOf(item.at),
          `${said.get(sideOf(item.at)) ?? ""} ${filter.not ? "not " : ""}${filter.values}`,
        );
    return said;
  };
  const apart = dimensions.filter((dimension) => on(dimension).size > 1);
  const differing = apart.filter((dimension) => new Set(on(dimension).values()).size > 1);
  return mustDiffer || differing.length > 0 ? differing : apart;
}

const uniqueOf = (found: readonly Narrowing[]): Filter[] =>
  found
    .map(({ filter }) => filter)
    .filter((filter, at, all) => all.findIndex((other) => isSameFilter(other, filter)) === at);

const isSameFilter = (a: Filter, b: Filter): boolean =>
  a.dimension === b.dimension && a.not === b.not && a.values.join() === b.values.join();

function sidesBy(
  found: readonly Narrowing[],
  splits: readonly Filter["dimension"][],
  sideOf: (at: number) => number,
): { beside: Side[]; shared: Filter[] } {
  const sides = new Map<number, Filter[]>();
  const shared: Filter[] = [];
  const isSplit = (filter: Filter): boolean => splits.includes(sideSort(filter));
  const sideFilters = found.filter(({ filter }) => isSplit(filter));
  for (const { filter, item } of found) {
    const near = sideFilters.some(
      (other) => sideOf(other.item.at) === sideOf(item.at) && Math.abs(other.item.at - item.at) <= 1,
    );
    if (isSplit(filter) || (filter.dimension === "trait" && near)) {
      const side = sideOf(item.at);
      sides.set(side, [...(sides.get(side) ?? []), filter]);
    } else if (!shared.some((other) => isSameFilter(other, filter))) shared.push(filter);
  }
  const beside = [...sides].map(
    ([, filters]): Side => ({ filters, period: null, label: labelOfFilters(filters) }),
  );
  return { beside, shared };
}

/** What is said on each side, all of it that side's own. */
function mixedSides(
  found: readonly Narrowing[],
  sideOf: (at: number) => number,
): { beside: Side[]; shared: Filter[] } {
  const sides = new Map<number, Filter[]>();
  for (const { filter, item } of found)
    sides.set(sideOf(item.at), [...(sides.get(sideOf(item.at)) ?? []), filter]);
  const beside = [...sides.values()].map(
    (filters): Side => ({ filters, period: null, label: labelOfFilters(filters) }),
  );
  return { beside, shared: [] };
}

/** "gas or storage": a thing bought stands beside a category as beside another thing. */
function sideSort({ dimension }: Filter): Filter["dimension"] {
  return dimension === "category" ? "what" : dimension;
}

function labelOfPeriod({ from, to, name }: Period): string {
  if (
    from !== null &&
    to !== null &&
    from.slice(0, 7) === to.slice(0, 7) &&
    from.endsWith("-01") &&
    (to >= `${from.slice(0, 7)}-28` || name.endsWith("so far"))
  )
    return from.slice(0, 7);
  // A quarter is labeled as its row is.
  const [, quarter, year] = /^(Q[1-4]) (\d{4})$/.exec(name) ?? [];
  return quarter === undefined ? name : `${year}-${quarter}`;
}

function labelOfFilters(filters: readonly Filter[]): string {
  return [...filters]
    .sort((a) => (a.dimension === "trait" ? -1 : 0))
    .map(
      ({ dimension, values, not }) =>
        `${not ? "not " : ""}${dimension === "piece" ? values.map((value) => `#${value}`).join(", ") : values.map((value) => (value.startsWith("#") ? "you" : value)).join(" and ")}`,
    )
    .join(" ");
}
