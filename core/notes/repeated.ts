import { addDays, addMonths, type Day, type Month, monthOf } from "../calendar.ts";
import { type Tok, textOf } from "./clause.ts";
import { clausesOf } from "./clauses-read.ts";
import { withoutReason } from "./mends/mends.ts";
import type { DaySaid } from "./quantities/days.ts";
import { comingDay, pastDay } from "./quantities/days.ts";
import type { Reading, ReadingFields } from "./reading.ts";
import { type RepeatEffect, repeats } from "./rows/repeats.ts";
import type { Fired } from "./rows/table.ts";
import type { Trace } from "./rows/trace.ts";
import { type Units, unitsOf } from "./rows/units.ts";
import { centsOfToken } from "./slots/money.ts";
import type { Told } from "./told.ts";
import { bears } from "./verbs.ts";
import { MONTHS } from "./words/calendar.ts";
import {
  BALANCE_SAID,
  BESIDE_STANDING,
  CHANGED,
  MONTH_DAYS,
  PAYMENTS,
  SETTING_UP,
} from "./words/repeating.ts";

/** When a line's note repeats, and the line without the words that say so. */
interface Repeated {
  every?: "week" | "month" | "year";
  /** Day of the month, name of a weekday, or "MM-DD". */
  day?: number | string;
  from?: Day;
  stop?: true;
  /** One that stands already is spoken of. */
  known?: true;
  rest: Tok[];
}

type Of = NonNullable<ReadingFields["repeat"]["of"]>;

/** Which standing note is stopped or changed: a supply, a stream or a loan, and nothing else; null where more is said. */
function standingOf(
  rest: readonly Tok[],
  stops: boolean,
  known: boolean,
): { of: Of; amount?: number } | null {
  const of: Of = {};
  let amount: number | undefined;
  let changes = stops || known;
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
    else if (BESIDE_STANDING.has(text)) continue;
    else if (token.unknown && kind === "word") of.loan = text;
    else if (kind !== "mark" && !roles.filler) return null;
  }
  if (of.kind === "pay" && !stops && rest.some(tellsBalance) && !rest.some(({ text }) => PAYMENTS.has(text)))
    return null;
  if (of.kind === undefined || (of.loan !== undefined && of.kind !== "pay") || !changes) return null;
  if (stops) return { of: amount === undefined ? of : { ...of, amount } };
  return amount === undefined ? null : { of, amount };
}

/** "the loan is 6800 now", "loan balance was 7000 as of the 3rd": what is owed, and no payment. */
const tellsBalance = ({ text }: Tok): boolean => BALANCE_SAID.has(text);

/** "from january", said in may: this year's; said in june, the next. */
const MONTHS_BACK_MAX = 4;

const WEEKDAYS = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];

/** What a line says of repeating; null where it says nothing of it. A goal is "a month" by its nature. */
export function repeatedIn(
  tokens: readonly Tok[],
  line: Units,
  today: Day,
  trace?: Trace[],
): Repeated | null {
  const fired = repeats.fired(tokens, line);
  if (fired.length === 0) return null;
  const known = fired.find(({ effect }) => effect === "known");
  const every = fired.find(({ effect }) => effect === "week" || effect === "month" || effect === "year");
  const from = fired.find(({ effect }) => effect === "from" || effect === "to come");
  const stop = fired.find(({ effect }) => effect === "stop");
  if (!every && !from && !stop && !known) return null;
  const used = [every, from, stop, known].filter((one): one is Fired<RepeatEffect> => one !== undefined);
  for (const one of used)
    trace?.push({
      table: "repeats",
      row: one.row,
      words: textOf(tokens.slice(one.from, one.to)),
    });
  const left = tokens.filter((_, at) => !used.some((one) => at >= one.from && at < one.to));
  const rest = every ? left.filter(({ text }) => !SETTING_UP.has(text)).map(once) : left;
  const marks = { ...(stop ? { stop: true as const } : {}), ...(known ? { known: true as const } : {}) };
  const said: Repeated = { rest: stop || known ? left.map(once) : rest, ...marks };
  if (every) {
    said.every = every.effect as "week" | "month" | "year";
    const words = tokens.slice(every.from, every.to);
    const day = words.find(({ kind }) => kind === "day")?.said;
    const named = day ? dayOf(day, said.every, today) : dayInWords(words);
    if (named !== undefined) said.day = named;
    else takeDayLater(said);
  }
  const back = from?.effect === "from" ? MONTHS_BACK_MAX : 0;
  const first = from ? fromDay(tokens.slice(from.from, from.to), today, back) : undefined;
  if (first !== undefined) said.from = first;
  return said;
}

/** "monthly booth 95 due on the 5th": the day of the month stands further on, and is none of the note's own. */
function takeDayLater(said: Repeated): void {
  const day =
    said.every === "month" ? said.rest.find((token) => token.said?.form === "dayOfMonth") : undefined;
  if (day?.said?.form !== "dayOfMonth") return;
  said.day = day.said.day;
  said.rest = said.rest.filter((token) => token !== day);
}

/** "25 each month" is no price of each. */
const once = (token: Tok): Tok => (token.each ? { ...token, each: undefined } : token);

/** "the last day of the month". */
const dayInWords = (tokens: readonly Tok[]): number | undefined =>
  tokens
    .flatMap(({ text }) => text.split(" "))
    .map((word) => MONTH_DAYS[word])
    .find((day) => day !== undefined);

function dayOf(said: DaySaid, every: "week" | "month" | "year", today: Day): number | string | undefined {
  if (said.form === "weekday") return every === "week" ? WEEKDAYS[said.weekday] : undefined;
  if (said.form === "dayOfMonth") return said.day;
  if (said.form !== "monthDay") return undefined;
  const found = pastDay(said, today);
  return every === "year" && "day" in found ? found.day.slice(5) : said.day;
}

/** "june" is June 1, of the nearest june; a day is the next such day. */
function fromDay(tokens: readonly Tok[], today: Day, back: number): Day | undefined {
  const day = tokens.find(({ kind }) => kind === "day")?.said;
  if (day) return comingDay(day, today) ?? undefined;
  const month = tokens.map(({ text }) => MONTHS[text]).find((number) => number !== undefined);
  if (month !== undefined) return firstOf(month, today, back);
  const words = textOf(tokens);
  if (words.includes("year")) return `${Number(today.slice(0, 4)) + 1}-01-01`;
  if (words.includes("month")) return `${addMonths(monthOf(today), 1)}-01`;
  return words.includes("week") ? addDays(today, 7) : undefined;
}

/** The first of a month that is at most `back` months past, else to come. */
function firstOf(month: number, today: Day, back: number): Day {
  const year = Number(today.slice(0, 4));
  const earliest = addMonths(monthOf(today), -back);
  const months = [year - 1, year, year + 1].map((of): Month => `${of}-${String(month).padStart(2, "0")}`);
  return `${months.find((name) => name >= earliest)!}-01`;
}

/** "storage 60 every month", "storage is 65 from june", "stop the storage"; null where a line says none of it. */
export function standingReading(said: Repeated, tokens: Tok[], units: Units, told: Told): Reading | null {
  const { rest, every, day, from, stop, known } = said;
  const at = { text: told.text, line: told.line };
  const since = from === undefined ? {} : { from };
  if (stop || known || every === undefined) {
    // "cancel the sandpaper, returned it" takes back what was noted.
    const isStopped = stop === true && tokens[0]!.text !== "cancel";
    const meant = standingOf(isStopped ? withoutReason(rest) : rest, stop === true, known === true);
    if (!meant) return null;
    repeatedIn(tokens, units, told.today, told.trace);
    return { kind: "repeat", ...meant, ...(stop ? { stop } : {}), ...since, ...at } as Reading;
  }
  const copies = rest.map((token) => ({ ...token }));
  const [note, ...others] = clausesOf(copies, unitsOf(copies), told);
  if (!note || others.length > 0 || !bears(note.kind, "repeats") || note.missing) return null;
  repeatedIn(tokens, units, told.today, told.trace);
  const { text: _, line: __, ...plain } = note;
  const which = day === undefined ? {} : { day };
  return { kind: "repeat", every, ...which, ...since, note: { ...plain, ...at }, ...at } as Reading;
}
