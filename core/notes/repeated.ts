import { addDays, addMonths, type Day, type Month, monthOf } from "../calendar.ts";
import type { Tok } from "./clause.ts";
import type { DaySaid } from "./quantities/days.ts";
import { comingDay, pastDay } from "./quantities/days.ts";
import type { ReadingFields } from "./reading.ts";
import type { Trace } from "./rows/apply.ts";
import type { Units } from "./rows/pattern.ts";
import { type RepeatEffect, repeats } from "./rows/repeats.ts";
import type { Fired } from "./rows/table.ts";
import { centsOfToken } from "./slots/money.ts";
import { MONTHS } from "./words/calendar.ts";

/** When a line's note repeats, and the line without the words that say so. */
export interface Repeated {
  every?: "week" | "month" | "year";
  /** Day of the month, name of a weekday, or "MM-DD". */
  day?: number | string;
  from?: Day;
  stop?: true;
  rest: Tok[];
}

type Of = NonNullable<ReadingFields["repeat"]["of"]>;

const CHANGED = new Set([
  "is",
  "is now",
  "now",
  "goes up to",
  "went up to",
  "up to",
  "goes to",
  "goes",
  "went",
  "up",
  "down",
  "to",
  "was",
]);
const SKIPPED = new Set([
  "the",
  "my",
  "a",
  "payment",
  "payments",
  "note",
  "rent",
  "fee",
  "bill",
  "thing",
  "cost",
  "price",
  "will be",
]);

/** Which standing note is stopped or changed: a supply, a stream or a loan, and nothing else; null where more is said. */
export function standingOf(rest: readonly Tok[], stops: boolean): { of: Of; amount?: number } | null {
  const of: Of = {};
  let amount: number | undefined;
  let changes = stops;
  for (const token of rest) {
    const { text, roles, kind } = token;
    if (kind === "amount") {
      const found = centsOfToken(token);
      if (!("cents" in found)) return null;
      amount = found.cents;
    } else if (roles.supply !== undefined) Object.assign(of, { kind: "spend", what: text });
    else if (roles.stream !== undefined) Object.assign(of, { kind: "income", stream: roles.stream });
    else if (/(?:^| )loans?(?: |$)/.test(text)) of.kind = "pay";
    else if (CHANGED.has(text)) changes = true;
    else if (token.unknown && kind === "word") of.loan = text;
    else if (kind !== "mark" && !SKIPPED.has(text) && !roles.filler) return null;
  }
  if (of.kind === undefined || (of.loan !== undefined && of.kind !== "pay") || !changes) return null;
  if (stops) return { of: amount === undefined ? of : { ...of, amount } };
  return amount === undefined ? null : { of, amount };
}

const WEEKDAYS = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];

/** What a line says of repeating; null where it says nothing of it. A goal is "a month" by its nature. */
export function repeatedIn(
  tokens: readonly Tok[],
  line: Units,
  today: Day,
  trace?: Trace[],
): Repeated | null {
  if (!repeats.mayFire(line)) return null;
  const fired = repeats.fired(tokens, line);
  const every = fired.find(({ effect }) => effect !== "from" && effect !== "stop");
  const from = fired.find(({ effect }) => effect === "from");
  const stop = fired.find(({ effect }) => effect === "stop");
  if (!every && !from && !stop) return null;
  const used = [every, from, stop].filter((one): one is Fired<RepeatEffect> => one !== undefined);
  for (const one of used)
    trace?.push({
      table: "repeats",
      row: one.row,
      words: tokens
        .slice(one.from, one.to)
        .map(({ text }) => text)
        .join(" "),
    });
  const rest = tokens.filter((_, at) => !used.some((one) => at >= one.from && at < one.to));
  const said: Repeated = { rest, ...(stop ? { stop: true } : {}) };
  if (every) {
    said.every = every.effect as "week" | "month" | "year";
    const day = tokens.slice(every.from, every.to).find(({ kind }) => kind === "day")?.said;
    const named = day ? dayOf(day, said.every, today) : undefined;
    if (named !== undefined) said.day = named;
  }
  const first = from ? fromDay(tokens.slice(from.from, from.to), today) : undefined;
  if (first !== undefined) said.from = first;
  return said;
}

function dayOf(said: DaySaid, every: "week" | "month" | "year", today: Day): number | string | undefined {
  if (said.form === "weekday") return every === "week" ? WEEKDAYS[said.weekday] : undefined;
  if (said.form === "dayOfMonth") return said.day;
  if (said.form !== "monthDay") return undefined;
  const found = pastDay(said, today);
  return every === "year" && "day" in found ? found.day.slice(5) : said.day;
}

/** "june" is June 1, the next one unless it is running; a day is the next such day. */
function fromDay(tokens: readonly Tok[], today: Day): Day | undefined {
  const day = tokens.find(({ kind }) => kind === "day")?.said;
  if (day) return comingDay(day, today) ?? undefined;
  const month = tokens.map(({ text }) => MONTHS[text]).find((number) => number !== undefined);
  if (month !== undefined) return firstOf(month, today);
  const words = tokens.map(({ text }) => text).join(" ");
  if (words.includes("month")) return `${addMonths(monthOf(today), 1)}-01`;
  return words.includes("week") ? addDays(today, 7) : undefined;
}

function firstOf(month: number, today: Day): Day {
  const year = Number(today.slice(0, 4));
  const name = (of: number): Month => `${of}-${String(month).padStart(2, "0")}`;
  const isRunning = name(year) >= monthOf(today);
  return `${isRunning ? name(year) : name(year + 1)}-01`;
}
