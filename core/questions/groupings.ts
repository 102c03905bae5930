import type { Day } from "../calendar.ts";
import { addDays, addMonths, daysBetween, monthOf, weekdayOf } from "../calendar.ts";
import type { Desk, Subject } from "./desk.ts";
import { buyerOf, dayName, methodOf, personOf, placeOf } from "./filters.ts";
import { kindOf } from "./lexicon.ts";
import type { Grouping, MeasureName, Period } from "./query.ts";

type LabelOf = (subject: Subject, desk: Desk, measure: MeasureName) => string | null;

/** The ISO 8601 week of a day: "2026-W18". Weeks begin on Monday, the first holds the year's first Thursday. */
export function weekOf(day: Day): string {
  const thursday = addDays(day, 3 - ((weekdayOf(day) + 6) % 7));
  const year = thursday.slice(0, 4);
  const week = 1 + Math.floor(daysBetween(`${year}-01-01`, thursday) / 7);
  return `${year}-W${String(week).padStart(2, "0")}`;
}

function quarterOf(day: Day): string {
  return `${day.slice(0, 4)}-Q${Math.ceil(Number(day.slice(5, 7)) / 3)}`;
}

/** Stretches of time, by any day in them. Their rows stand in their order; those in between show nothing as zero. */
export const TIMES = {
  day: (day: Day) => day,
  week: weekOf,
  month: monthOf,
  quarter: quarterOf,
  year: (day: Day) => day.slice(0, 4),
} as const;
export type Time = keyof typeof TIMES;

const timed =
  (time: Time): LabelOf =>
  ({ day }) =>
    TIMES[time](day);

/** A way to part an answer into rows. */
interface GroupRule {
  /** How a button asks for it. */
  asked: string;
  label: LabelOf;
  /** Only these can be parted by it. */
  of?: readonly MeasureName[];
  /** Only pieces have it: what is made goes by the piece there. */
  ofPieces?: true;
}

/** One entry for each way to part an answer into rows. */
export const groupings: Readonly<Record<Grouping, GroupRule>> = {
  day: { asked: "day", label: timed("day") },
  weekday: { asked: "weekday", label: ({ day }) => dayName(day) },
  week: { asked: "week", label: timed("week") },
  month: { asked: "month", label: timed("month") },
  quarter: { asked: "quarter", label: timed("quarter") },
  year: { asked: "year", label: timed("year") },
  kind: { asked: "kind", label: ({ piece }) => (piece ? kindOf(piece.name) : null), ofPieces: true },
  source: { asked: "source", label: ({ piece }) => piece?.source ?? null, ofPieces: true },
  person: { asked: "person", label: ({ fact }, desk) => personOf(desk, fact), ofPieces: true },
  buyer: { asked: "buyer", label: (subject, desk) => buyerOf(desk, subject), ofPieces: true },
  method: {
    asked: "payment method",
    label: (subject, desk, measure) => methodOf(desk, measure, subject),
    ofPieces: true,
  },
  stream: {
    asked: "stream",
    label: ({ fact }) => (fact?.kind === "income" ? fact.data.stream : null),
    of: ["income"],
  },
  category: {
    asked: "category",
    label: ({ fact }) => (fact?.kind === "spend" ? fact.data.category : null),
    of: ["spent"],
  },
  what: {
    asked: "item",
    label: ({ fact }) => (fact?.kind === "spend" ? fact.data.what : null),
    of: ["spent"],
  },
  place: {
    asked: "place listed",
    label: ({ piece }, desk) => (piece ? placeOf(desk, piece) : null),
    ofPieces: true,
  },
  loan: { asked: "loan", label: ({ loan }) => loan ?? null, of: ["paid", "interest", "principal"] },
  piece: { asked: "piece", label: ({ piece }) => (piece ? String(piece.number) : null), ofPieces: true },
};

export function isTime(grouping: Grouping): grouping is Time {
  return Object.hasOwn(TIMES, grouping);
}

/** Every label from the first to the last day, for months, quarters, weeks and years; days only where something was. */
export function labelsBetween(grouping: Time, from: Day, to: Day): string[] {
  const at = TIMES[grouping];
  const labels: string[] = [];
  if (grouping === "day" || from > to) return labels;
  if (grouping === "week") {
    for (let day = from; day < addDays(to, 7); day = addDays(day, 7)) labels.push(at(day < to ? day : to));
  } else {
    const last = monthOf(to);
    for (let month = monthOf(from); month <= last; month = addMonths(month, 1))
      labels.push(at(`${month}-01`));
  }
  return [...new Set(labels)];
}

/** Where rows of time begin and end: the period, as far as the books go. */
export function spanOf(period: Period | null, desk: Desk): { from: Day; to: Day } | null {
  const first = desk.books.facts[0]?.day;
  if (first === undefined) return null;
  const from = period?.from ?? first;
  const end = period?.to ?? desk.today;
  const isPast = end < desk.today;
  return { from, to: isPast ? end : desk.today };
}
