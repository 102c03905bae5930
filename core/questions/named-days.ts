import type { Day } from "../calendar.ts";
import {
  addDays,
  addMonths,
  firstDayOf,
  isDay,
  lastDayOf,
  monthOf,
  showDate,
  showMonth,
  weekdayOf,
} from "../calendar.ts";
import { ORDINALS, WEEKDAYS } from "./lexicon.ts";
import { HOLIDAYS, MONTH_NAMES, UNITS } from "./words/periods.ts";

/*
 * Days and months by their names and numbers. What is said by its unit stands in `spans.ts`, what turns it ("since",
 * "before", "to") in `periods.ts`.
 */

/** One stretch as said, before "since" or "to" turns it: `month` where a month was said without its year. */
export interface Span {
  from: Day;
  to: Day;
  name: string;
  words: number;
  loose?: { month: number };
  /** A day of a month, so that "june 5 to 20" can go on. */
  isDay?: true;
}

/** How many of the words at `at` are one of some phrases, the longest; 0 for none. */
export function phraseLength(words: readonly string[], at: number, phrases: readonly string[]): number {
  let most = 0;
  const first = words[at];
  if (first === undefined) return most;
  for (const phrase of phrases) {
    if (!phrase.startsWith(first)) continue;
    const parts = phrase.split(" ");
    if (parts.length > most && parts.every((part, index) => words[at + index] === part)) most = parts.length;
  }
  return most;
}

/** Two digits, as days and months have them. */
export const pad = (number: number): string => String(number).padStart(2, "0");

/** "2026", "'26". */
export function yearAt(words: readonly string[], at: number): number | null {
  const word = words[at] ?? "";
  // Round thousands and the like are amounts sooner than years.
  if (/^(?:199\d|20[1-9]\d)$/.test(word)) return Number(word);
  return /^'\d\d$/.test(word) ? 2000 + Number(word.slice(1)) : null;
}

/** A whole month. */
export function monthSpan(month: string, words: number): Span {
  return { from: firstDayOf(month), to: lastDayOf(month), name: showMonth(month), words };
}

/** "3rd", "third": the day of a month. */
export function ordinalOf(word: string | undefined): number | null {
  if (word === undefined) return null;
  const digits = /^(\d{1,2})(?:st|nd|rd|th)$/.exec(word);
  const day = digits ? Number(digits[1]) : (ORDINALS[word] ?? null);
  return day !== null && day >= 1 && day <= 31 ? day : null;
}

/** "3", "3rd". */
export function dayNumber(word: string | undefined): number | null {
  if (word !== undefined && /^\d{1,2}$/.test(word)) {
    const day = Number(word);
    return day >= 1 && day <= 31 ? day : null;
  }
  return ordinalOf(word);
}

/** One day; null where the calendar has none such. */
export function daySpan(day: Day, words: number): Span | null {
  if (!isDay(day)) return null;
  return { from: day, to: day, name: showDate(day), words, isDay: true };
}

/** The latest month of a name that has begun by `today`. */
function latestMonth(month: number, today: Day): string {
  const year = Number(today.slice(0, 4));
  const here = `${year}-${pad(month)}`;
  return here <= monthOf(today) ? here : `${year - 1}-${pad(month)}`;
}

/** "june", "june 2026", "june 5", "5 june", "the 3rd of june", "last june". */
export function monthAt(words: readonly string[], at: number, today: Day): Span | null {
  const month = MONTH_NAMES[words[at] ?? ""];
  if (month !== undefined) {
    const the = words[at + 1] === "the" ? 1 : 0;
    const day = dayNumber(words[at + 1 + the]);
    if (day !== null) return monthDay(month, day, words, at, 2 + the, today);
    const of = words[at + 1] === "of" ? 1 : 0;
    const year = yearAt(words, at + 1 + of);
    if (year !== null) return monthSpan(`${year}-${pad(month)}`, 2 + of);
    // "October last year"
    if (words[at + 1 + of] === "last" && words[at + 2 + of] === "year")
      return monthSpan(`${Number(today.slice(0, 4)) - 1}-${pad(month)}`, 3 + of);
    return { ...monthSpan(latestMonth(month, today), 1), loose: { month } };
  }
  const day = dayNumber(words[at]);
  const of = words[at + 1] === "of" ? 1 : 0;
  const after = MONTH_NAMES[words[at + 1 + of] ?? ""];
  if (day === null || after === undefined) return null;
  return monthDay(after, day, words, at, 2 + of, today);
}

function monthDay(
  month: number,
  day: number,
  words: readonly string[],
  at: number,
  taken: number,
  today: Day,
): Span | null {
  const year = yearAt(words, at + taken);
  if (year !== null) return daySpan(`${year}-${pad(month)}-${pad(day)}`, taken + 1);
  const here = `${today.slice(0, 4)}-${pad(month)}-${pad(day)}`;
  const before = `${Number(today.slice(0, 4)) - 1}-${pad(month)}-${pad(day)}`;
  return daySpan(here <= today ? here : before, taken);
}

/** "2026-06-03", "2026-06", "6/3", "6/3/26". */
export function digitsAt(words: readonly string[], at: number, today: Day): Span | null {
  const word = words[at] ?? "";
  if (/^\d{4}-\d{2}-\d{2}$/.test(word)) return daySpan(word, 1);
  if (/^\d{4}-(?:0[1-9]|1[0-2])$/.test(word)) return monthSpan(word, 1);
  const slashed = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{2}|\d{4}))?$/.exec(word);
  if (!slashed) return null;
  const [, month, day, year] = slashed as unknown as [string, string, string, string | undefined];
  if (year === undefined) return monthDay(Number(month), Number(day), [], 0, 1, today);
  const full = year.length === 2 ? `20${year}` : year;
  return daySpan(`${full}-${pad(Number(month))}-${pad(Number(day))}`, 1);
}

/** "the 3rd": the latest one not in the future. */
export function dayOfMonthAt(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  const word = words[at + the];
  const day = ordinalOf(word);
  if (day === null || (the === 0 && !/\d/.test(word!))) return null;
  // "The first chair i sold" is no day of a month.
  if (
    !/\d/.test(word!) &&
    !/^(?:|of|on|onwards?|to|till?|until|through|and|so|for|in|at|with)$/.test(words[at + the + 1] ?? "")
  )
    return null;
  if (the === 0 && UNITS[words[at + 1] ?? ""]) return null;
  if (!/\d/.test(word!) && (UNITS[words[at + the + 1] ?? ""] || words[at + the + 1] === "half")) return null;
  const inMonth = monthAt(words, at + the, today);
  if (inMonth) return { ...inMonth, words: inMonth.words + the };
  for (let back = 0; back < 4; back += 1) {
    const candidate = `${addMonths(monthOf(today), -back)}-${pad(day)}`;
    if (isDay(candidate) && candidate <= today) return daySpan(candidate, the + 1);
  }
  return null;
}

/** "tuesday", "last sat". */
export function weekdayAt(words: readonly string[], at: number, today: Day): Span | null {
  const which = words[at] === "last" || words[at] === "this" || words[at] === "past" ? 1 : 0;
  const word = words[at + which] ?? "";
  const weekday = WEEKDAYS[word];
  // "on tuesdays" are all of them: no period.
  if (weekday === undefined || /days$/.test(word)) return null;
  if (/^(?:an?|every|each)$/.test(words[at - 1] ?? "")) return null;
  // "sat" and "sun" are other words too: they need one before them that only a day takes.
  const leading = /^(?:on|since|last|this|past|until|till|before|after|from)$/.test(words[at - 1] ?? "");
  if ((word === "sat" || word === "sun") && which === 0 && !leading) return null;
  const back = (weekdayOf(today) - weekday + 7) % 7;
  return daySpan(addDays(today, -(back === 0 && words[at] === "last" ? 7 : back)), which + 1);
}

/** "Labor day", "since christmas": the latest one that is past; a word that may be one of a thing needs its "since". */
export function holidayAt(words: readonly string[], at: number, today: Day): Span | null {
  const the = words[at] === "the" ? 1 : 0;
  const taken = phraseLength(words, at + the, Object.keys(HOLIDAYS));
  const holiday = HOLIDAYS[words.slice(at + the, at + the + taken).join(" ")];
  if (!holiday) return null;
  if (
    taken === 1 &&
    !/^(?:since|before|until|till|by|on|after|from|to|through|around|and|of)$/.test(words[at - 1] ?? "")
  )
    return null;
  if (/^(?:eve|trees?|lights?|decor\w*|ornaments?|stuff|things?)$/.test(words[at + the + taken] ?? ""))
    return null;
  const said = yearAt(words, at + the + taken);
  const inYear = (year: number): Day => {
    if ("afterEaster" in holiday) return addDays(easterOf(year), holiday.afterEaster);
    const month = `${year}-${pad(holiday.month)}`;
    if ("day" in holiday) return `${month}-${pad(holiday.day)}`;
    const first = firstDayOf(month);
    const day = addDays(first, ((holiday.weekday - weekdayOf(first) + 7) % 7) + 7 * (holiday.nth - 1));
    return day > lastDayOf(month) ? addDays(day, -7) : day;
  };
  const year = Number(today.slice(0, 4));
  const day = said === null ? (inYear(year) <= today ? inYear(year) : inYear(year - 1)) : inYear(said);
  return daySpan(day, the + taken + (said === null ? 0 : 1));
}

/** Easter Sunday of a year, by the Gregorian reckoning. */
function easterOf(year: number): Day {
  const golden = year % 19;
  const century = Math.floor(year / 100);
  const epact =
    (century - Math.floor(century / 4) - Math.floor((8 * century + 13) / 25) + 19 * golden + 15) % 30;
  const moon =
    epact - Math.floor(epact / 28) * (1 - Math.floor(29 / (epact + 1)) * Math.floor((21 - golden) / 11));
  const weekday = (year + Math.floor(year / 4) + moon + 2 - century + Math.floor(century / 4)) % 7;
  return addDays(`${year}-03-28`, moon - weekday);
}

/** The first day of a week. */
export function mondayOf(day: Day): Day {
  return addDays(day, -((weekdayOf(day) + 6) % 7));
}
