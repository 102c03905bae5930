import {
  addDays,
  addMonths,
  type Day,
  firstDayOf,
  lastDayOf,
  monthName,
  monthOf,
  showMonth,
} from "../calendar.ts";
import { amountText } from "../money.ts";
import { pluralOf } from "../notes/mentions/plural.ts";
import type { Button } from "../reply.ts";
import { isLimit } from "./filters.ts";
import { groupings } from "./groupings.ts";
import { lapseWords } from "./lapses.ts";
import { measures } from "./measures.ts";
import type { Counted, Filter, MeasureName, Period, Query } from "./query.ts";
import { isState } from "./subjects.ts";

/*
 * A query as a question that reads as itself: what a button asks when it is pressed. Short, since a press holds
 * sixty bytes.
 */

const COUNTED_WORDS: Readonly<Record<Counted, string>> = {
  bought: "bought",
  sold: "sold",
  finished: "finished",
  listed: "did i list",
  unsold: "unsold",
  started: "started",
  held: "on hold",
  unlisted: "unlisted",
  "not listed": "not listed",
  unfinished: "unfinished",
  unstarted: "not started",
  "in progress": "in progress",
  done: "finished now",
  "on the market": "are listed now",
  owing: "owe me",
  kept: "kept",
  given: "given away",
  scrapped: "scrapped",
  returned: "came back",
  gone: "gone",
  notes: "notes",
};

const CATEGORIES: Readonly<Record<string, string>> = { materials: "supplies", other: "misc" };

function filterWords({ dimension, values, not }: Filter): string {
  const spoken = values.map((value) => {
    if (dimension === "piece") return `#${value}`;
    if (dimension === "kind") return pluralOf(value);
    if (dimension === "category") return CATEGORIES[value] ?? value;
    if (dimension === "weekday") return value === "workday" ? "weekdays" : `${value}s`;
    if (dimension === "person" || dimension === "bought by") return value.startsWith("#") ? "myself" : value;
    return value;
  });
  const joined = spoken.join(" or ");
  const before: Partial<Record<Filter["dimension"], string>> = {
    source: "from ",
    buyer: "to ",
    method: "via ",
    place: "on ",
    person: "by ",
    "bought by": "bought by ",
    weekday: "on ",
    over: "over ",
    under: "under ",
    least: "at least ",
    most: "at most ",
  };
  if (isLimit(dimension)) return `${before[dimension]}${amountText(Number(values[0]))}`;
  if (dimension === "person" && values.length === 1 && values[0]?.startsWith("#")) return "by me";
  if (dimension === "loan") return `${not ? "not " : ""}${joined} loan`;
  return `${not ? "not " : ""}${before[dimension] ?? ""}${joined}`;
}

function periodWords(period: Period | null): string {
  if (!period || (period.from === null && period.to === null)) return "";
  const { from, to, name } = period;
  if (name === "this year") return name;
  if (from !== null && to !== null) {
    const month = monthOf(from);
    if (from === firstDayOf(month) && to === lastDayOf(month)) return showMonth(month).toLowerCase();
    if (from.endsWith("-01-01") && to === `${from.slice(0, 4)}-12-31`) return `in ${from.slice(0, 4)}`;
    return `from ${from} to ${to}`;
  }
  return from === null ? `before ${addDays(to!, 1)}` : `since ${from}`;
}

/** The question that a query answers, in few plain words; null where it has no short form (orders, comparisons). */
export function questionOf(query: Query): string | null {
  if (query.order || query.beside.length > 0 || query.list || query.withIncome || query.withBuying)
    return null;
  if (query.aggregate === "rate" || query.against || query.tally || query.share || query.perMile) return null;
  if (query.filters.some(({ of, name, dimension }) => of || name || dimension === "shop")) return null;
  const isCount = query.measure === "count";
  const words = [
    query.aggregate ?? "",
    query.lapse ? `days ${lapseWords(query.lapse)}` : measures[query.measure].asked,
    ...(query.measure === "profit" && query.filters.length === 0 ? ["on pieces"] : []),
    ...(isCount ? [COUNTED_WORDS[query.counted ?? "bought"]] : []),
    ...query.filters.map(filterWords),
    periodWords(query.period),
    query.by ? `by ${groupings[query.by].asked}` : "",
    query.period || query.by || query.filters.length > 0 ? "" : "ever",
  ];
  return words.filter((word) => word !== "").join(" ");
}

/** The most bytes of a question that a button can hold beside its own mark. */
const QUESTION_LENGTH_MAX = 55;

/** A button that asks a question; null where it is too long for one, or has letters that a press cannot hold. */
export function askingButton(label: string, question: string | null): Button | null {
  const isPlain =
    question !== null && /^[\x20-\x7e]+$/.test(question) && question.length <= QUESTION_LENGTH_MAX;
  return isPlain ? { label, press: `ask:${question}` } : null;
}

/** The same by another period, one tap away: the one before, this year, ever, month by month. Three at most. */
export function nextButtons(query: Query, today: Day): Button[] {
  const asked = (label: string, change: Partial<Query>): Button | null =>
    askingButton(label, questionOf({ ...query, yesNo: false, ...change }));
  const before = periodBefore(query.period);
  const isSum = !query.by && query.aggregate === null && SUMS.has(query.measure);
  const year = { from: `${today.slice(0, 4)}-01-01`, to: today, name: "this year" };
  const isStock = measures[query.measure].stock || isState(query.counted);
  const buttons = [
    before ? asked(before.name, { period: before }) : null,
    isSum ? asked("By month", { by: "month" }) : null,
    isStock || isSamePeriod(query.period, year) ? null : asked("This year", { period: year }),
    query.period && !isStock ? asked("Ever", { period: null }) : null,
  ];
  return buttons.filter((button) => button !== null).slice(0, 3);
}

function isSamePeriod(a: Period | null, b: Period): boolean {
  return a?.from === b.from;
}

/** The month or the year before one of these; null for other stretches. */
function periodBefore(period: Period | null): Period | null {
  if (!period?.from || !period.to) return null;
  const { from, to } = period;
  if (monthOf(from) === monthOf(to) && from.endsWith("-01")) {
    const month = addMonths(monthOf(from), -1);
    return { from: firstDayOf(month), to: lastDayOf(month), name: monthName(month) };
  }
  if (!from.endsWith("-01-01") || from.slice(0, 4) !== to.slice(0, 4) || monthOf(to).endsWith("-01"))
    return null;
  const year = String(Number(from.slice(0, 4)) - 1);
  return { from: `${year}-01-01`, to: `${year}-12-31`, name: year };
}

/** Measures that months can be told of one by one. */
const SUMS: ReadonlySet<MeasureName> = new Set([
  "profit",
  "net",
  "proceeds",
  "price",
  "spent",
  "fees",
  "miles",
  "minutes",
  "income",
  "paid",
  "interest",
]);
