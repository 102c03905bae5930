import type { Day } from "../../calendar.ts";
import { addDays, addMonths, daysBetween, isDay, lastDayOf, monthOf, weekdayOf } from "../../calendar.ts";
import { MONTHS, ORDINALS, WEEKDAYS } from "../words/calendar.ts";

/** A day as said, before it is known which way it counts; `weeks` more before the last such weekday. */
export type DaySaid =
  | { form: "ago"; days: number }
  | { form: "monthsAgo"; months: number }
  | { form: "weekday"; weekday: number; which?: "last" | "next" | "before last"; weeks?: number }
  | { form: "dayOfMonth"; day: number }
  | { form: "monthDay"; month: number; day: number }
  | { form: "full"; day: Day }
  | { form: "either"; days: readonly DaySaid[] }
  | { form: "wrong" };

const pad = (value: number): string => String(value).padStart(2, "0");

function fullDay(year: number, month: number, day: number): DaySaid {
  const text = `${year}-${pad(month)}-${pad(day)}`;
  return isDay(text) ? { form: "full", day: text } : { form: "wrong" };
}

function monthDay(month: number, day: number): DaySaid {
  // 2024 is a leap year: a day that exists in no year is refused here.
  return isDay(`2024-${pad(month)}-${pad(day)}`) ? { form: "monthDay", month, day } : { form: "wrong" };
}

/** "2026-03-14", "3/14", "3/14/26" as one word; null where the word is no such date. */
function dayOfDigits(text: string): DaySaid | null {
  const iso = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})$/.exec(text);
  if (iso) return fullDay(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const dotted = /^(\d{1,2})\.(\d{1,2})\.(\d{4})?$/.exec(text);
  if (dotted) return dayOfPoints(Number(dotted[1]), Number(dotted[2]), dotted[3]);
  // Month first, the US way; "14/3" is not turned around.
  const us =
    /^(\d{1,2})[/](\d{1,2})(?:[/](\d{2}|\d{4}))?$/.exec(text) ??
    /^(\d{1,2})-(\d{1,2})-(\d{2}|\d{4})$/.exec(text);
  if (!us) return null;
  const [, month, day, year] = us;
  if (!year) return monthDay(Number(month), Number(day));
  return fullDay(year.length === 2 ? 2000 + Number(year) : Number(year), Number(month), Number(day));
}

/** "13.10." is of october; of "3.5." nobody says which is the month. */
function dayOfPoints(first: number, second: number, year: string | undefined): DaySaid {
  const said = (month: number, day: number): DaySaid =>
    year ? fullDay(Number(year), month, day) : monthDay(month, day);
  if (second > 12) return said(first, second);
  if (first > 12 || first === second) return said(second, first);
  return { form: "either", days: [said(second, first), said(first, second)] };
}

function ordinalOf(word: string | undefined): number | null {
  if (!word) return null;
  const match = /^(\d{1,2})(?:st|nd|rd|th)$/.exec(word);
  return match ? dayNumber(match[1]!) : (ORDINALS[word] ?? null);
}

function dayNumberOf(word: string | undefined): number | null {
  return word && /^\d{1,2}$/.test(word) ? dayNumber(word) : ordinalOf(word);
}

/** "the 0th" is no day, and nor is the 32nd. */
function dayNumber(digits: string): number | null {
  const day = Number(digits);
  return day >= 1 && day <= 31 ? day : null;
}

type Found = { said: DaySaid; words: number };

function withYear(said: DaySaid, words: readonly string[], at: number): Found {
  const year = words[at];
  if (said.form === "monthDay" && year && /^(?:19|20)\d{2}$/.test(year))
    return { said: fullDay(Number(year), said.month, said.day), words: at + 1 };
  return { said, words: at };
}

const AGO_SLIP_MAX = 6;

const AGO_COUNTS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  couple: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
};

const AGO = /^(?:ago|back)$/;

function agoAt(words: readonly string[]): Found | null {
  let at = 0;
  if (words[0] === "a" && words[1] === "couple") at = 1;
  const first = words[at]!;
  const count = /^\d{1,3}$/.test(first) ? Number(first) : AGO_COUNTS[first];
  at += words[at + 1] === "of" ? 2 : 1;
  const unit = words[at];
  if (count === undefined || !unit || !AGO.test(words[at + 1] ?? "")) return null;
  // "2 day ago" is a slip; the 200 of "sold hutch 200 week ago" is a price.
  if (count > AGO_SLIP_MAX && !unit.endsWith("s")) return null;
  if (/^(?:days?|nights?)$/.test(unit)) return { said: { form: "ago", days: count }, words: at + 2 };
  if (/^(?:weeks?|wks?)$/.test(unit)) return { said: { form: "ago", days: count * 7 }, words: at + 2 };
  if (/^fortnights?$/.test(unit)) return { said: { form: "ago", days: count * 14 }, words: at + 2 };
  if (/^months?$/.test(unit)) return { said: { form: "monthsAgo", months: count }, words: at + 2 };
  return null;
}

/** "a week ago friday", "2 weeks ago sat": so many weeks before the latest such day. */
function weekAgoAt(words: readonly string[]): Found | null {
  const ago = agoAt(words);
  if (ago?.said.form !== "ago" || ago.said.days % 7 !== 0) return null;
  const at = ago.words + (words[ago.words] === "on" || words[ago.words] === "this" ? 1 : 0);
  const weekday = WEEKDAYS[words[at] ?? ""];
  if (weekday === undefined) return null;
  return { said: { form: "weekday", weekday, weeks: ago.said.days / 7 }, words: at + 1 };
}

/** "two saturdays ago" */
function weekdaysAgoAt([first = "", second = "", third]: readonly string[]): Found | null {
  const count = /^\d$/.test(first) ? Number(first) : AGO_COUNTS[first];
  const weekday = WEEKDAYS[second];
  if (third !== "ago" || !count || weekday === undefined) return null;
  return { said: { form: "weekday", weekday, which: "last", weeks: count - 1 }, words: 3 };
}

function weekdayAt(words: readonly string[]): Found | null {
  const which = words[0] === "last" || words[0] === "next" ? words[0] : undefined;
  const at = which || words[0] === "this" || words[0] === "past" ? 1 : 0;
  const weekday = WEEKDAYS[words[at] ?? ""];
  if (weekday === undefined) return null;
  if (!which && at === 0 && words[1] === "before" && words[2] === "last")
    return { said: { form: "weekday", weekday, which: "before last" }, words: 3 };
  return { said: { form: "weekday", weekday, ...(which ? { which } : {}) }, words: at + 1 };
}

function monthAt(words: readonly string[]): Found | null {
  const month = MONTHS[words[0] ?? ""];
  if (month !== undefined) {
    const skip = words[1] === "the" ? 2 : 1;
    const day = dayNumberOf(words[skip]);
    if (day === null) return null;
    return withYear(monthDay(month, day), words, skip + 1);
  }
  // "the 3rd of may", "14th march", "on 9 april"
  const day = dayNumberOf(words[0]);
  const at = words[1] === "of" ? 2 : 1;
  const named = MONTHS[words[at] ?? ""];
  if (day === null || named === undefined) return null;
  return withYear(monthDay(named, day), words, at + 1);
}

const NAMED: Readonly<Record<string, number>> = {
  yesterday: 1,
  yday: 1,
  yest: 1,
  yesterdy: 1,
  yesturday: 1,
  yesterdays: 1,
  tomorrow: -1,
  tmrw: -1,
  tomorow: -1,
  tmw: -1,
};

const BEHIND_THE: ReadonlySet<string> = new Set(["day", "night", "nite", ...Object.keys(ORDINALS)]);

/** Whether "the" may open a day before a word: "the 5th", "the day before yesterday". */
export const isDayBehindThe = (next: string | undefined): boolean =>
  next !== undefined && (next < ":" || BEHIND_THE.has(next));

/** A day in words at the start of `words` (normal words of a line from some place on), longest form first. */
export function dayAt(words: readonly string[]): Found | null {
  const [first = "", second = ""] = words;
  const digits = first < ":" ? dayOfDigits(first) : null;
  if (digits) return { said: digits, words: 1 };
  if (NAMED[first] !== undefined) return { said: { form: "ago", days: NAMED[first] }, words: 1 };
  const the = first === "the" ? 1 : 0;
  const unit = words[the] ?? "";
  if (/^(?:day|night|nite)$/.test(unit) && words[the + 1] === "before") {
    const named = words[the + 2] ?? "";
    if (NAMED[named] === 1 || (named === "last" && unit !== "day"))
      return { said: { form: "ago", days: 2 }, words: the + 3 };
  }
  if (first === "last" && /^(?:night|nite|nght|evening|eve)$/.test(second))
    return { said: { form: "ago", days: 1 }, words: 2 };
  const found =
    weekAgoAt(words) ?? agoAt(words) ?? weekdaysAgoAt(words) ?? weekdayAt(words) ?? monthAt(words);
  if (found) return found;
  const skip = first === "the" ? 1 : 0;
  // An ordinal in words needs "the": "second dresser" is no date.
  const day = skip === 1 || /\d/.test(first) ? ordinalOf(words[skip]) : null;
  if (day === null) return null;
  const month = skip === 1 ? monthAt(words.slice(1, 5)) : null;
  if (month) return { said: month.said, words: month.words + 1 };
  if (skip === 1 && !/\d/.test(words[1]!) && MONTHS[words[2] ?? ""] === undefined && words[2] !== undefined)
    return null;
  return { said: { form: "dayOfMonth", day }, words: skip + 1 };
}

/** A resolved day, or why it is none. */
type DayFound = { day: Day; longAgo?: true } | { wrong: "future" | "unreal" | "either" };

const LONG_AGO_MONTHS = 9;

function sameDayMonthsBefore(today: Day, months: number): Day {
  const month = addMonths(monthOf(today), -months);
  const day = `${month}-${today.slice(8)}`;
  return isDay(day) ? day : lastDayOf(month);
}

/** The latest day not after today; a day without its year may lie years back ("feb 29"). */
export function pastDay(said: DaySaid, today: Day): DayFound {
  switch (said.form) {
    case "wrong":
      return { wrong: "unreal" };
    case "either":
      return { wrong: "either" };
    case "full":
      return said.day > today ? { wrong: "future" } : { day: said.day };
    case "ago":
      return said.days < 0 ? { wrong: "future" } : { day: addDays(today, -said.days) };
    case "monthsAgo":
      return { day: sameDayMonthsBefore(today, said.months) };
    case "weekday": {
      if (said.which === "next") return { wrong: "future" };
      const back = (weekdayOf(today) - said.weekday + 7) % 7;
      const last = back === 0 && said.which ? 7 : back;
      return { day: addDays(today, -(last + 7 * (said.weeks ?? (said.which === "before last" ? 1 : 0)))) };
    }
    case "dayOfMonth":
      return { day: nearestDayOfMonth(said.day, today, -1) };
    case "monthDay": {
      const day = nearestMonthDay(said, today, -1);
      return day < sameDayMonthsBefore(today, LONG_AGO_MONTHS) ? { day, longAgo: true } : { day };
    }
  }
}

/** The next day from today on, for "until". Null where the words name no such day. */
export function comingDay(said: DaySaid, today: Day): Day | null {
  switch (said.form) {
    case "wrong":
    case "either":
    case "monthsAgo":
      return null;
    case "full":
      return said.day < today ? null : said.day;
    case "ago":
      return said.days <= 0 ? addDays(today, -said.days) : null;
    case "weekday": {
      if (said.which === "last" || said.which === "before last" || said.weeks) return null;
      const ahead = (said.weekday - weekdayOf(today) + 7) % 7;
      return addDays(today, ahead === 0 && said.which === "next" ? 7 : ahead);
    }
    case "dayOfMonth":
      return nearestDayOfMonth(said.day, today, 1);
    case "monthDay":
      return nearestMonthDay(said, today, 1);
  }
}

function nearestDayOfMonth(day: number, today: Day, step: 1 | -1): Day {
  for (let months = 0; months <= 3; months += 1) {
    const candidate = `${addMonths(monthOf(today), step * months)}-${pad(day)}`;
    if (isDay(candidate) && (step < 0 ? candidate <= today : candidate >= today)) return candidate;
  }
  throw new Error(`no month near ${today} has a day ${day}`);
}

function nearestMonthDay(said: { month: number; day: number }, today: Day, step: 1 | -1): Day {
  const year = Number(today.slice(0, 4));
  for (let years = 0; years <= 9; years += 1) {
    const candidate = `${year + step * years}-${pad(said.month)}-${pad(said.day)}`;
    if (isDay(candidate) && (step < 0 ? candidate <= today : candidate >= today)) return candidate;
  }
  throw new Error(`no year near ${today} has ${said.month}/${said.day}`);
}

/** Days from today to a coming day; for "snooze till monday". */
export function daysUntil(day: Day, today: Day): number {
  return daysBetween(today, day);
}
