import type { Cursor, Part } from "../tokens/token.ts";
import { WORKING } from "../words/labors.ts";
import { PAYING } from "../words/money.ts";
import { NUMBER_STARTERS } from "../words/starters.ts";
import {
  BEFORE_HOUR,
  BEFORE_WORK,
  HOURS,
  MILES,
  MINUTES,
  MORE_OF,
  NO_MINUTES,
  PAID_UNDERWAY,
  QUARTERS,
} from "../words/units.ts";
import type { Amount, Exact } from "./amounts.ts";
import { decimalText, exactOf, plus, times } from "./amounts.ts";
import { numberAt, timesAfter, whole } from "./numbers.ts";

/** "h30" and the like glued to a number: "2.5h", "1h30", "1h30m", "45m", "90min". */
export function gluedDuration(word: string): number | null {
  const hours =
    /^(\d{1,2}(?:\.\d{1,2})?|\.\d{1,2})(?:h|hr|hrs|hour|hours)(?:(\d{1,2})(?:m|min|mins)?)?$/.exec(word);
  if (hours) return Math.round(Number(hours[1]) * 60) + Number(hours[2] ?? 0);
  const minutes = /^(\d{1,3})(?:m|min|mins|minute|minutes)$/.exec(word);
  if (minutes) return Number(minutes[1]);
  const part = /^(\d{0,2})([½¼¾])(?:h|hr|hrs|hour|hours)$/.exec(word);
  return part ? Math.round((Number(part[1] || "0") + QUARTERS[part[2]!]!) * 60) : null;
}

/** "an hour and 15", "1 hr 10 priming", "1h 40" at the end: minutes, where no word of money follows; else null. */
function bareMinutes(exact: Exact | null, next: string | undefined, endsAlone: boolean): number | null {
  if (exact?.scale !== 0 || exact.digits < 5 || exact.digits > 59) return null;
  if (next === undefined || next === ",") return endsAlone ? exact.digits : null;
  return (BEFORE_WORK.has(next) || /^[a-z]{3,}$/.test(next)) && !NO_MINUTES.has(next) ? exact.digits : null;
}

/** The work of "an hour and twenty of sanding"; else the word itself. */
const workBehind = (norms: readonly string[], at: number): string | undefined =>
  norms[at] === "of" && WORKING.has(norms[at + 1] ?? "") ? norms[at + 1] : norms[at];

/** What follows "and" (or not) after some hours: half, a quarter, or minutes. */
export function minutesAfterHours(
  norms: readonly string[],
  start: number,
): { minutes: number; words: number } {
  const link = norms[start] === "and" || norms[start] === "&" ? 1 : 0;
  const article = isArticle(norms[start + link]) ? 1 : 0;
  const at = start + link + article;
  const part = link ? QUARTERS[norms[at] ?? ""] : undefined;
  if (part !== undefined) return { minutes: part * 60, words: link + article + 1 };
  if (!mayBeNumber(norms[at])) return NO_MINUTES_MORE;
  const glued = gluedDuration(norms[at]!);
  if (glued !== null && glued < 60 && /m/.test(norms[at]!)) return { minutes: glued, words: at + 1 - start };
  const number = at < norms.length ? numberAt({ norms, at }) : null;
  // "parking 2 hours 6" is six dollars.
  const endsAlone =
    link > 0 || /^(?:[\d.]*hr?s?)$/.test(norms[start - 1] ?? "") || isOfOurWork(norms.slice(0, start));
  const bare =
    number && number.words <= 2
      ? bareMinutes(number.amount.exact, workBehind(norms, at + number.words), endsAlone)
      : null;
  if (bare !== null) return { minutes: bare, words: at + number!.words - start };
  const unit = number ? (norms[at + number.words] ?? "") : "";
  if (number?.amount.exact && (MINUTES.has(unit) || unit === "m"))
    return {
      minutes: number.amount.exact.digits / 10 ** number.amount.exact.scale,
      words: at + number.words + 1 - start,
    };
  return NO_MINUTES_MORE;
}

/** "gluing chairs 1 hour 10", but not "paid bob for gluing 1 hour 10". */
const isOfOurWork = (before: readonly string[]): boolean =>
  before.some((norm) => WORKING.has(norm)) && !before.some((norm) => PAYING.has(norm));

const NO_MINUTES_MORE = { minutes: 0, words: 0 };

const isArticle = (word: string | undefined): boolean => word === "a" || word === "an";

/** With any other word no number begins. */
const mayBeNumber = (word: string | undefined): boolean =>
  word !== undefined && (!isLetter(word.charCodeAt(0)) || NUMBER_STARTERS.has(word));

const isLetter = (code: number): boolean => code >= 97 && code <= 122;

/** Durations that begin with a word: "half an hour", "an hour and a half", "quarter hour", "couple hours". */
export function wordedDuration({ norms, at }: Cursor): Part | null {
  let next = at;
  if (isArticle(norms[next]) || norms[next] === "another") next += 1;
  // "a good hour", "another full hour"
  if (next > at && BEFORE_HOUR.has(norms[next] ?? "")) next += 1;
  const part = QUARTERS[norms[next] ?? ""];
  if (part !== undefined) {
    next += 1;
    if (norms[next] === "of") next += 1;
    if (isArticle(norms[next])) next += 1;
    return HOURS.has(norms[next] ?? "")
      ? { kind: "duration", minutes: part * 60, words: next + 1 - at }
      : null;
  }
  if (norms[next] === "three" && norms[next + 1] === "quarters" && norms[next + 2] === "of") {
    const end = isArticle(norms[next + 3]) ? next + 4 : next + 3;
    return HOURS.has(norms[end] ?? "") ? { kind: "duration", minutes: 45, words: end + 1 - at } : null;
  }
  let hours = 1;
  if (norms[next] === "couple") {
    hours = 2;
    next += norms[next + 1] === "of" ? 2 : 1;
    if (MINUTES.has(norms[next] ?? "")) return null;
  }
  if (!/^(?:hour|hr|hours|hrs)$/.test(norms[next] ?? "")) return null;
  const more = minutesAfterHours(norms, next + 1);
  return {
    kind: "duration",
    minutes: Math.round(hours * 60 + more.minutes),
    words: next + 1 + more.words - at,
  };
}

/** "2 and a half hours", "1 1/2 hrs". */
export function fractionAfter(norms: readonly string[], at: number): { part: number; words: number } {
  const link = norms[at] === "and" || norms[at] === "&" ? 1 : 0;
  const article = isArticle(norms[at + link]) ? 1 : 0;
  const part = QUARTERS[norms[at + link + article] ?? ""];
  return part === undefined ? { part: 0, words: 0 } : { part, words: link + article + 1 };
}

export function durationAfter(number: { amount: Amount; words: number }, { norms, at }: Cursor): Part | null {
  const { exact } = number.amount;
  if (!exact) return null;
  // "3x20 min": as often as the first factor says.
  const value = exact.digits / 10 ** exact.scale;
  let next = at + number.words;
  const unit = norms[next + 1] ?? "";
  if (MORE_OF.has(norms[next] ?? "") && (HOURS.has(unit) || MINUTES.has(unit))) next += 1;
  const fraction = fractionAfter(norms, next);
  // "parts 6.10 and half hr" are two things.
  if (fraction.part > 0 && exact.scale === 0 && HOURS.has(norms[next + fraction.words] ?? "")) {
    next += fraction.words;
    return { kind: "duration", minutes: Math.round((value + fraction.part) * 60), words: next + 1 - at };
  }
  if (MINUTES.has(norms[next] ?? ""))
    return { kind: "duration", minutes: Math.round(value), words: next + 1 - at };
  if (!HOURS.has(norms[next] ?? "")) return null;
  const more = minutesAfterHours(norms, next + 1);
  return {
    kind: "duration",
    minutes: Math.round(value * 60 + more.minutes),
    words: next + 1 + more.words - at,
  };
}

/** "20 min x 3", "24 miles twice": a measure as often as it was done. */
export function repeatedMeasure(part: Part, { norms, at }: Cursor): Part {
  const often = timesAfter(norms, at + part.words);
  if (!often || often.times < 2) return part;
  // "drove 10 miles twice": both times together, or each of them?
  if (part.miles !== undefined && /^(?:twice|thrice)$|times/.test(norms[at + part.words] ?? "")) return part;
  const words = part.words + often.words;
  if (part.minutes !== undefined) return { ...part, minutes: part.minutes * often.times, words };
  const exact = part.miles === undefined ? null : exactOf(part.miles);
  return exact ? { ...part, miles: decimalText(times(exact, whole(often.times))), words } : part;
}

export const MILES_GLUED = /^(\d[\d,]{0,6}(?:\.\d{1,2})?|\.\d{1,2})(?:mi|mile|miles|rt)$/;

export function milesOf(exact: Exact, { norms, at }: Cursor, words: number): Part {
  const next = at + words;
  if (norms[next] === "each" && norms[next + 1] === "way")
    return { kind: "miles", miles: decimalText(times(exact, whole(2))), words: words + 2 };
  if (
    (norms[next] === "one" && norms[next + 1] === "way") ||
    (norms[next] === "both" && norms[next + 1] === "ways")
  )
    // Half of the drive or all of it: the reader asks.
    return { kind: "miles", words: words + 2 };
  // How far away something is says nothing of a drive.
  if (norms[next] === "away") return { kind: "miles", words: words + 1 };
  return { kind: "miles", miles: decimalText(exact), words: words + wholeTripWords(norms, next) };
}

/** "round trip", "there and back": the miles said are those of the whole drive. */
function wholeTripWords(norms: readonly string[], at: number): number {
  const first = norms[at] ?? "";
  if (first === "roundtrip" || first === "rt" || first === "total") return 1;
  if (first === "round" && norms[at + 1] === "trip") return 2;
  return first === "there" && norms[at + 1] === "and" && norms[at + 2] === "back" ? 3 : 0;
}

export function milesAfter(number: { amount: Amount; words: number }, { norms, at }: Cursor): Part | null {
  const { exact, factors, sum, money } = number.amount;
  if (!exact || (money && exact.scale !== 2 && !sum && !factors)) return null;
  const fraction = fractionAfter(norms, at + number.words);
  if (fraction.part > 0 && MILES.has(norms[at + number.words + fraction.words] ?? ""))
    return milesOf(
      plus(exact, { digits: fraction.part * 100, scale: 2 }),
      { norms, at },
      number.words + fraction.words + 1,
    );
  const unit = norms[at + number.words] ?? "";
  const after = norms[at + number.words + 1] ?? "";
  if (MILES.has(unit)) return milesOf(exact, { norms, at }, number.words + 1);
  if (unit !== "rt" && unit !== "round" && unit !== "each") return null;
  // "tolls 2.50 each way", "gas 12 round trip": what it cost.
  if (money || norms.slice(0, at).some((word) => PAID_UNDERWAY.has(word))) return null;
  if (unit === "rt" || (unit === "round" && after === "trip"))
    return { kind: "miles", miles: decimalText(exact), words: number.words + (unit === "rt" ? 1 : 2) };
  if (unit === "each" && after === "way") return milesOf(exact, { norms, at }, number.words);
  return null;
}
