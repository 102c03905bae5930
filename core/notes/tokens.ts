import type { Amount, Exact } from "./amounts.ts";
import { amountOf, decimalText, exactOf, plus, times } from "./amounts.ts";
import type { DaySaid } from "./days.ts";
import { dayAt } from "./days.ts";
import type { Lexicon, Roles } from "./lexicon.ts";
import { rolesOf } from "./lexicon.ts";
import type { Mention } from "./reading.ts";
import type { Speller } from "./spelling.ts";
import type { Word } from "./text.ts";
import { MONTHS, ORDINALS, WEEKDAYS } from "./words/calendar.ts";
import { CENT_WORDS, CURRENCY_WORDS, EACH_WORDS, SCALES, TENS, UNITS } from "./words/numbers.ts";

export type TokenKind =
  | "word"
  | "mark"
  | "amount"
  | "count"
  | "number"
  | "duration"
  | "miles"
  | "percent"
  | "clock"
  | "day"
  | "span"
  | "piece";

/** Words of a line with one meaning. `text` is their normal form; `from` and `to` are word places. */
export interface Token<Head = unknown> {
  kind: TokenKind;
  text: string;
  from: number;
  to: number;
  roles: Roles<Head>;
  /** The word was corrected or is known to nobody. */
  unknown?: true;
  amount?: Amount;
  /** The amount was said of each. */
  each?: true;
  /** Of a "count" ("x4") or a piece number ("#12"). */
  value?: number;
  minutes?: number;
  miles?: string;
  percent?: string;
  /** "18:30", or null where morning and evening are both meant. */
  at?: string | null;
  said?: DaySaid;
  days?: number;
  mention?: Mention;
  claimed: boolean;
}

export const NO_ROLES: Roles<never> = rolesOf({});

/**
 * A token with every field there, absent ones undefined: tokens all of one shape are read several times faster
 * than tokens of as many shapes as there are kinds.
 */
export function tokenOf<Head>(
  kind: TokenKind,
  text: string,
  place: { from: number; to: number },
  roles: Roles<Head>,
  rest: TokenRest = NOTHING,
): Token<Head> {
  return {
    kind,
    text,
    from: place.from,
    to: place.to,
    roles,
    unknown: rest.unknown,
    amount: rest.amount,
    each: rest.each,
    value: rest.value,
    minutes: rest.minutes,
    miles: rest.miles,
    percent: rest.percent,
    at: rest.at,
    said: rest.said,
    days: rest.days,
    mention: rest.mention,
    claimed: false,
  };
}

type TokenRest = Partial<Omit<Token, "kind" | "text" | "from" | "to" | "roles" | "claimed">>;
const NOTHING: TokenRest = {};
const UNKNOWN: TokenRest = { unknown: true };

interface Cursor {
  norms: readonly string[];
  at: number;
}

/** "forty five", "two hundred and fifty", "a hundred": value and words used; flawed where it may mean two things. */
interface Spelled {
  value: number;
  words: number;
  vague?: true;
}

function smallNumberAt(norms: readonly string[], at: number): Spelled | null {
  const word = norms[at] ?? "";
  const ten = TENS[word];
  if (ten !== undefined) {
    const hyphen = norms[at + 1] === "-" ? 2 : 1;
    const unit = UNITS[norms[at + hyphen] ?? ""];
    return unit !== undefined && unit > 0 && unit < 10
      ? { value: ten + unit, words: hyphen + 1 }
      : { value: ten, words: 1 };
  }
  const unit = UNITS[word];
  return unit === undefined ? null : { value: unit, words: 1 };
}

function startsNumber(norms: readonly string[], at: number): boolean {
  return smallNumberAt(norms, at) !== null;
}

function spelledAt(norms: readonly string[], start: number): Spelled | null {
  let at = start;
  let value = 0;
  const article = /^an?$/.test(norms[at] ?? "");
  if (article || SCALES[norms[at] ?? ""] === 100) {
    if (!SCALES[norms[article ? at + 1 : at] ?? ""]) return null;
    value = 1;
    if (article) at += 1;
  } else {
    const small = smallNumberAt(norms, at);
    if (!small) return null;
    value = small.value;
    at += small.words;
    // "two forty", "twelve fifty", "twenty twenty": dollars and cents, hundreds, or two numbers.
    if (startsNumber(norms, at)) {
      let more = smallNumberAt(norms, at);
      while (more) {
        at += more.words;
        more = smallNumberAt(norms, at);
      }
      return { value: 0, words: at - start, vague: true };
    }
  }
  return scaledFrom(norms, start, at, value);
}

function scaledFrom(norms: readonly string[], start: number, from: number, first: number): Spelled {
  let at = from;
  let value = first;
  let scale = SCALES[norms[at] ?? ""];
  let scaled = false;
  while (scale !== undefined) {
    value *= scale;
    at += 1;
    scaled = true;
    const link = norms[at] === "and" && startsNumber(norms, at + 1) ? 1 : 0;
    const rest = smallNumberAt(norms, at + link);
    if (!rest) break;
    at += link + rest.words;
    // "one thousand two hundred fifty"
    if (scale === 1000 && SCALES[norms[at] ?? ""] === 100) {
      const tail: Spelled = scaledFrom(norms, at, at, rest.value);
      return {
        value: value + tail.value,
        words: at + tail.words - start,
        ...(tail.vague ? { vague: true } : {}),
      };
    }
    value += rest.value;
    if (startsNumber(norms, at)) return { value: 0, words: at - start, vague: true };
    scale = undefined;
  }
  return { value, words: at - start, ...(scaled || first < 100 ? {} : { vague: true }) };
}

const whole = (value: number): Exact => ({ digits: value, scale: 0 });

/** A number at a place, typed or spelled, before its unit. */
function numberAt({ norms, at }: Cursor): { amount: Amount; words: number } | null {
  const word = norms[at]!;
  if (word === "$" && norms[at + 1] !== undefined) {
    const amount = amountOf(norms[at + 1]!);
    return amount ? { amount: { ...amount, money: true }, words: 2 } : null;
  }
  const fraction = /^(\d{0,4})([½¼¾])$/.exec(word);
  if (fraction)
    return { amount: { exact: withFraction(fraction[1]!, fraction[2]!), money: false }, words: 1 };
  const typed = /[\d.]/.test(word) ? amountOf(word) : null;
  if (typed) return scaledDigits(typed, norms, at);
  const spelled = spelledAt(norms, at);
  if (!spelled) return null;
  if (spelled.vague) return { amount: { exact: null, flaw: "vague", money: false }, words: spelled.words };
  return withPoint(spelled, norms, at);
}

function withFraction(digits: string, sign: string): Exact {
  const part = sign === "½" ? 50 : sign === "¼" ? 25 : 75;
  return { digits: Number(digits || "0") * 100 + part, scale: 2 };
}

/** "2 hundred", "2 hundred 50", "3 grand". */
function scaledDigits(
  amount: Amount,
  norms: readonly string[],
  at: number,
): { amount: Amount; words: number } {
  const scale = SCALES[norms[at + 1] ?? ""];
  if (!scale || !amount.exact || amount.flaw || amount.factors) return { amount, words: 1 };
  const exact = times(amount.exact, whole(scale));
  return { amount: { exact: { digits: exact.digits, scale: exact.scale }, money: true }, words: 2 };
}

/** "twelve point five": dictated decimals. */
function withPoint(
  spelled: Spelled,
  norms: readonly string[],
  at: number,
): { amount: Amount; words: number } {
  let next = at + spelled.words;
  if (norms[next] !== "point")
    return { amount: { exact: whole(spelled.value), money: false }, words: spelled.words };
  let digits = "";
  next += 1;
  for (
    let small = smallNumberAt(norms, next);
    small && digits.length < 6;
    small = smallNumberAt(norms, next)
  ) {
    digits += String(small.value);
    next += small.words;
  }
  const exact = exactOf(`${spelled.value}.${digits}`);
  if (!digits || !exact) return { amount: { exact: null, flaw: "vague", money: false }, words: next - at };
  return {
    amount: { exact, money: false, ...(exact.scale > 2 ? { flaw: "decimals" } : {}) },
    words: next - at,
  };
}

const HOURS = new Set(["h", "hr", "hrs", "hour", "hours", "hrz", "hourss"]);
const MINUTES = new Set(["min", "mins", "minute", "minutes", "minuts", "mns"]);
const MILES = new Set(["mi", "mile", "miles", "mis", "milse", "mils", "myles"]);
const PERCENT = new Set(["%", "percent", "pct", "prcnt"]);
const QUARTERS: Readonly<Record<string, number>> = {
  half: 0.5,
  "½": 0.5,
  "1/2": 0.5,
  quarter: 0.25,
  "1/4": 0.25,
  "¼": 0.25,
  "3/4": 0.75,
  "¾": 0.75,
};

type Part = Omit<Token, "text" | "from" | "to" | "roles" | "claimed"> & { words: number };

/** "h30" and the like glued to a number: "2.5h", "1h30", "1h30m", "45m", "90min". */
function gluedDuration(word: string): number | null {
  const hours =
    /^(\d{1,2}(?:\.\d{1,2})?|\.\d{1,2})(?:h|hr|hrs|hour|hours)(?:(\d{1,2})(?:m|min|mins)?)?$/.exec(word);
  if (hours) return Math.round(Number(hours[1]) * 60) + Number(hours[2] ?? 0);
  const minutes = /^(\d{1,3})(?:m|min|mins|minute|minutes)$/.exec(word);
  return minutes ? Number(minutes[1]) : null;
}

/** What follows "and" (or not) after some hours: half, a quarter, or minutes. */
function minutesAfterHours(norms: readonly string[], start: number): { minutes: number; words: number } {
  const link = norms[start] === "and" || norms[start] === "&" ? 1 : 0;
  const article = /^an?$/.test(norms[start + link] ?? "") ? 1 : 0;
  const at = start + link + article;
  const part = link ? QUARTERS[norms[at] ?? ""] : undefined;
  if (part !== undefined) return { minutes: part * 60, words: link + article + 1 };
  const glued = gluedDuration(norms[at] ?? "");
  if (glued !== null && glued < 60 && /m/.test(norms[at]!)) return { minutes: glued, words: at + 1 - start };
  const number = at < norms.length ? numberAt({ norms, at }) : null;
  if (number?.amount.exact && MINUTES.has(norms[at + number.words] ?? ""))
    return {
      minutes: number.amount.exact.digits / 10 ** number.amount.exact.scale,
      words: at + number.words + 1 - start,
    };
  return { minutes: 0, words: 0 };
}

/** Durations that begin with a word: "half an hour", "an hour and a half", "quarter hour", "couple hours". */
function wordedDuration({ norms, at }: Cursor): Part | null {
  let next = at;
  if (/^an?$/.test(norms[next]!)) next += 1;
  const part = QUARTERS[norms[next] ?? ""];
  if (part !== undefined) {
    next += 1;
    if (norms[next] === "of") next += 1;
    if (/^an?$/.test(norms[next] ?? "")) next += 1;
    return HOURS.has(norms[next] ?? "")
      ? { kind: "duration", minutes: part * 60, words: next + 1 - at }
      : null;
  }
  if (norms[next] === "three" && norms[next + 1] === "quarters" && norms[next + 2] === "of") {
    const end = /^an?$/.test(norms[next + 3] ?? "") ? next + 4 : next + 3;
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
function fractionAfter(norms: readonly string[], at: number): { part: number; words: number } {
  const link = norms[at] === "and" || norms[at] === "&" ? 1 : 0;
  const article = /^an?$/.test(norms[at + link] ?? "") ? 1 : 0;
  const part = QUARTERS[norms[at + link + article] ?? ""];
  return part === undefined ? { part: 0, words: 0 } : { part, words: link + article + 1 };
}

function durationAfter(number: { amount: Amount; words: number }, { norms, at }: Cursor): Part | null {
  const { exact } = number.amount;
  if (!exact || number.amount.factors) return null;
  const value = exact.digits / 10 ** exact.scale;
  let next = at + number.words;
  const fraction = fractionAfter(norms, next);
  if (fraction.part > 0 && HOURS.has(norms[next + fraction.words] ?? "")) {
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

const MILES_GLUED = /^(\d[\d,]{0,6}(?:\.\d{1,2})?|\.\d{1,2})(?:mi|mile|miles|rt)$/;

function milesOf(exact: Exact, { norms, at }: Cursor, words: number): Part {
  const next = at + words;
  if (norms[next] === "each" && norms[next + 1] === "way")
    return { kind: "miles", miles: decimalText(times(exact, whole(2))), words: words + 2 };
  if (
    (norms[next] === "one" && norms[next + 1] === "way") ||
    (norms[next] === "both" && norms[next + 1] === "ways")
  )
    // Half of the drive or all of it: the reader asks.
    return { kind: "miles", words: words + 2 };
  return { kind: "miles", miles: decimalText(exact), words: words + wholeTripWords(norms, next) };
}

/** "round trip", "there and back": the miles said are those of the whole drive. */
function wholeTripWords(norms: readonly string[], at: number): number {
  const first = norms[at] ?? "";
  if (/^(?:roundtrip|rt|total)$/.test(first)) return 1;
  if (first === "round" && norms[at + 1] === "trip") return 2;
  return first === "there" && norms[at + 1] === "and" && norms[at + 2] === "back" ? 3 : 0;
}

function milesAfter(number: { amount: Amount; words: number }, { norms, at }: Cursor): Part | null {
  const { exact, factors, money } = number.amount;
  if (!exact || factors || (money && exact.scale !== 2)) return null;
  const unit = norms[at + number.words] ?? "";
  const after = norms[at + number.words + 1] ?? "";
  if (MILES.has(unit)) return milesOf(exact, { norms, at }, number.words + 1);
  if (unit === "rt" || (unit === "round" && after === "trip"))
    return { kind: "miles", miles: decimalText(exact), words: number.words + (unit === "rt" ? 1 : 2) };
  if (unit === "each" && after === "way") return milesOf(exact, { norms, at }, number.words);
  return null;
}

function clockText(hour: number, minute: number, half: string | undefined): string | null | undefined {
  if (minute > 59 || hour > 24) return undefined;
  if (half) {
    if (hour < 1 || hour > 12) return undefined;
    const turned = (hour % 12) + (half[0] === "p" ? 12 : 0);
    return `${String(turned).padStart(2, "0")}:${String(minute).padStart(2, "0")}`;
  }
  if (hour === 24) return undefined;
  // Without am or pm only 13:00 on, 0:00 and "08:15" say which half of the day.
  return hour > 12 || hour === 0
    ? `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}`
    : null;
}

function clockAt({ norms, at }: Cursor): Part | null {
  const word = norms[at]!;
  if (word === "noon") return { kind: "clock", at: "12:00", words: 1 };
  if (word === "midnight") return { kind: "clock", at: "00:00", words: 1 };
  const typed = /^(\d{1,2})(?::(\d{2}))?(am|pm|a|p)?$/.exec(word);
  if (!typed) return null;
  let words = 1;
  let half: string | undefined = typed[3];
  const next = norms[at + 1] ?? "";
  if (!half && /^(?:am|pm)$/.test(next)) {
    half = next;
    words = 2;
  } else if (!half && /^[ap]$/.test(next) && norms[at + 2] === "." && norms[at + 3] === "m") {
    half = next;
    words = norms[at + 4] === "." ? 5 : 4;
  }
  if (!half && !typed[2]) return next === "oclock" ? { kind: "clock", at: null, words: 2 } : null;
  const text = clockText(Number(typed[1]), Number(typed[2] ?? 0), half);
  if (text === undefined) return null;
  const leading = !half && word.startsWith("0") ? word.padStart(5, "0") : text;
  return { kind: "clock", at: leading, words };
}

/** The money words after a number: "bucks", "dollars and fifty cents", "each". */
function moneyAfter(number: { amount: Amount; words: number }, { norms, at }: Cursor): Part {
  let { amount } = number;
  let words = number.words;
  const unit = norms[at + words] ?? "";
  if (CENT_WORDS.has(unit) && amount.exact) {
    amount = {
      ...amount,
      exact: { digits: amount.exact.digits, scale: amount.exact.scale + 2 },
      money: true,
    };
    words += 1;
  } else if (CURRENCY_WORDS.has(unit) || unit === "$" || (unit === "k" && amount.exact)) {
    if (unit === "k" && amount.exact)
      amount = { ...amount, exact: times(amount.exact, whole(1000)), flaw: undefined };
    amount = { ...amount, money: true };
    words += 1;
    const link = norms[at + words] === "and" ? 1 : 0;
    const cents = at + words + link < norms.length ? numberAt({ norms, at: at + words + link }) : null;
    if (cents?.amount.exact && amount.exact && CENT_WORDS.has(norms[at + words + link + cents.words] ?? "")) {
      const part = { digits: cents.amount.exact.digits, scale: cents.amount.exact.scale + 2 };
      amount = { ...amount, exact: plus(amount.exact, part) };
      words += link + cents.words + 1;
    }
  }
  const each = eachAfter(norms, at + words);
  return {
    kind: "amount",
    amount: withoutEmptyFlaw(amount),
    words: words + each,
    ...(each ? { each: true } : {}),
  };
}

function withoutEmptyFlaw(amount: Amount): Amount {
  const { flaw, ...rest } = amount;
  return flaw ? amount : rest;
}

function eachAfter(norms: readonly string[], at: number): number {
  const word = norms[at] ?? "";
  if (EACH_WORDS.has(word)) return norms[at + 1] === "way" ? 0 : 1;
  if (word === "a" && /^(?:piece|pop)$/.test(norms[at + 1] ?? "")) return 2;
  // "15/each", "15 / ea"
  if (word === "/")
    return EACH_WORDS.has(norms[at + 1] ?? "") || isSaidBefore(norms, at, norms[at + 1]) ? 2 : 0;
  if (word === "per") return norms[at + 1] === undefined || !/^[a-z]/.test(norms[at + 1]!) ? 1 : 2;
  if (/^an?$/.test(word) && isSaidBefore(norms, at, norms[at + 1])) return 2;
  return word === "for" && norms[at + 1] === "each" ? 2 : 0;
}

/** "4 chairs 15 a chair": the same noun again is the price of one. */
function isSaidBefore(norms: readonly string[], at: number, noun: string | undefined): boolean {
  if (noun === undefined) return false;
  for (let back = Math.max(0, at - 8); back < at; back += 1)
    if (norms[back] === `${noun}s` || norms[back] === noun) return true;
  return false;
}

/** "20 + 15" and "6 x 2.50" with blanks between. */
function joinedAmount(
  first: { amount: Amount; words: number },
  { norms, at }: Cursor,
): { amount: Amount; words: number } {
  const sign = norms[at + first.words] ?? "";
  if (!/^[+x×*@]$/.test(sign) || !first.amount.exact || first.amount.factors) return first;
  const next = at + first.words + 1;
  const second = next < norms.length ? numberAt({ norms, at: next }) : null;
  if (!second?.amount.exact || second.amount.flaw || second.amount.factors) return first;
  const words = first.words + 1 + second.words;
  const pair: [Exact, Exact] = [first.amount.exact, second.amount.exact];
  if (sign === "+") {
    // "40 + 5 tip" is two things.
    const next = norms[at + words];
    const ends =
      next === undefined ||
      !/^[a-z]/.test(next) ||
      /^(?:for|at|from|to|on|cash|card|check|transfer|bucks|dollars|each|ea|total|in)$/.test(next);
    return ends ? { amount: { exact: plus(...pair), money: true, sum: true }, words } : first;
  }
  return { amount: { exact: times(...pair), money: true, factors: pair }, words };
}

const PLAIN_DIGITS = /^\d{1,9}(?:\.\d{1,2})?$/;

function plainNumber(cursor: Cursor): Part | null {
  const next = cursor.norms[cursor.at + 1];
  if (next !== undefined && CLOCK_WORDS.has(next)) {
    const clock = clockAt(cursor);
    if (clock) return clock;
  }
  const number = scaledDigits(plainAmount(cursor.norms[cursor.at]!), cursor.norms, cursor.at);
  return withUnit(number, cursor);
}

/** Digits with at most two decimals, as PLAIN_DIGITS has checked. */
function plainAmount(word: string): Amount {
  const point = word.indexOf(".");
  if (point < 0) return { exact: { digits: Number(word), scale: 0 }, money: false };
  const scale = word.length - point - 1;
  return {
    exact: { digits: Number(word.slice(0, point) + word.slice(point + 1)), scale },
    money: scale === 2,
  };
}

const CLOCK_WORDS = new Set(["am", "pm", "a", "p", "oclock"]);

/** Whatever begins with a number at this place. */
function numericAt(cursor: Cursor): Part | null {
  const { norms, at } = cursor;
  const word = norms[at]!;
  const code = word.charCodeAt(0);
  // Most numbers are digits and nothing else: no glued unit, no clock, no percent.
  if (code >= 48 && code <= 57 && PLAIN_DIGITS.test(word)) return plainNumber(cursor);
  if (CURRENCY_WORDS.has(word)) return vagueAmount(cursor);
  const glued = gluedDuration(word);
  if (glued !== null) {
    const more = /m/.test(word) ? { minutes: 0, words: 0 } : minutesAfterHours(norms, at + 1);
    return { kind: "duration", minutes: Math.round(glued + more.minutes), words: 1 + more.words };
  }
  const miles = MILES_GLUED.exec(word);
  if (miles) {
    const exact = exactOf(miles[1]!);
    return exact ? milesOf(exact, cursor, 1) : null;
  }
  const worded = wordedDuration(cursor);
  if (worded) return worded;
  const clock = clockAt(cursor);
  if (clock) return clock;
  const percent = /^(\d{1,4}(?:\.\d{1,4})?|\.\d{1,4})%$/.exec(word);
  if (percent) return { kind: "percent", percent: decimalText(exactOf(percent[1]!)!), words: 1 };
  const count = /^x(\d{1,3})$|^(\d{1,3})x$/.exec(word);
  if (count && !startsJoined(norms, at))
    return { kind: "count", value: Number(count[1] ?? count[2]), words: 1 };
  const number = numberAt(cursor);
  return number ? withUnit(number, cursor) : null;
}

/** "a buck fifty" and "screws.75": money, but how much? */
function vagueAmount({ norms, at }: Cursor): Part | null {
  const next = at + 1 < norms.length ? numberAt({ norms, at: at + 1 }) : null;
  return next
    ? { kind: "amount", amount: { exact: null, flaw: "vague", money: true }, words: 1 + next.words }
    : null;
}

/** "4x 2.50" is a product with a blank in it. */
function startsJoined(norms: readonly string[], at: number): boolean {
  return /x$/.test(norms[at]!) && /^[$€£]?[\d.]/.test(norms[at + 1] ?? "");
}

const SPAN_DAYS: Readonly<Record<string, number>> = {
  day: 1,
  days: 1,
  week: 7,
  weeks: 7,
  wk: 7,
  wks: 7,
  month: 30,
  months: 30,
};

/** The words that may come right after a number and belong to it. */
const AFTER_NUMBER: ReadonlySet<string> = new Set([
  ...HOURS,
  ...MINUTES,
  ...MILES,
  ...PERCENT,
  ...Object.keys(QUARTERS),
  ...Object.keys(SPAN_DAYS),
  ...CURRENCY_WORDS,
  ...CENT_WORDS,
  ...EACH_WORDS,
  "and",
  "&",
  "a",
  "an",
  "rt",
  "round",
  "$",
  "k",
  "+",
  "x",
  "×",
  "*",
  "@",
  "/",
  "per",
  "for",
]);

function withUnit(number: { amount: Amount; words: number }, cursor: Cursor): Part {
  const { norms, at } = cursor;
  const following = norms[at + number.words];
  if (following === undefined || !AFTER_NUMBER.has(following))
    return { kind: "amount", amount: number.amount, words: number.words };
  const measured = durationAfter(number, cursor) ?? milesAfter(number, cursor);
  if (measured) return measured;
  const unit = norms[at + number.words] ?? "";
  const { exact } = number.amount;
  if (PERCENT.has(unit) && exact && !number.amount.factors)
    return { kind: "percent", percent: decimalText(exact), words: number.words + 1 };
  const days = SPAN_DAYS[unit];
  // "40 day before yesterday" is no span: more than one takes the plural.
  const counted = exact?.digits === 1 || /s$/.test(unit);
  if (days !== undefined && counted && exact && exact.scale === 0 && exact.digits < 1000)
    return { kind: "span", days: days * exact.digits, words: number.words + 1 };
  return moneyAfter(joinedAmount(number, cursor), cursor);
}

const DAY_STARTERS = new Set([
  ...Object.keys(WEEKDAYS),
  ...Object.keys(MONTHS),
  "yesterday",
  "yday",
  "yest",
  "yesterdy",
  "yesturday",
  "tomorrow",
  "tmrw",
  "tomorow",
  "tmw",
  "last",
  "next",
  "this",
  "past",
  "the",
  "day",
  "a",
  "couple",
  "two",
  "three",
  "one",
  "four",
  "five",
  "six",
  "seven",
]);
const NUMBER_STARTERS = new Set([
  ...Object.keys(UNITS),
  ...Object.keys(TENS),
  "hundred",
  "a",
  "an",
  "half",
  "buck",
  "quarter",
  "hour",
  "hr",
  "couple",
  "noon",
  "midnight",
  "$",
  "½",
  "¼",
  "¾",
]);

const STARTERS: ReadonlySet<string> = new Set([...DAY_STARTERS, ...NUMBER_STARTERS]);

/** Words that the tables of numbers, days and units know: never taken for a slip of another word. */
export const KEYWORDS: ReadonlySet<string> = new Set([
  ...DAY_STARTERS,
  ...NUMBER_STARTERS,
  ...Object.keys(SCALES),
  ...Object.keys(ORDINALS),
  ...CURRENCY_WORDS,
  ...CENT_WORDS,
  ...EACH_WORDS,
  ...Object.keys(SPAN_DAYS),
  "hours",
  "hrs",
  "mins",
  "minutes",
  "minute",
  "miles",
  "mile",
  "percent",
  "quarters",
  "point",
  "dozen",
  "pair",
  "both",
  "loan",
  "loans",
  "year",
  "years",
  "taxes",
  "until",
  "till",
  "night",
  "nite",
  "trio",
  "ones",
]);

/** Words of days and measures long enough that a slip in them is plain. */
export const TIME_WORDS: readonly string[] = [
  "yesterday",
  "tomorrow",
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
  "sunday",
  "january",
  "february",
  "april",
  "august",
  "september",
  "october",
  "november",
  "december",
  "hours",
  "minutes",
  "miles",
  "percent",
  "dollars",
  "bucks",
  "taxes",
];

export interface Lexer<Head> {
  lexicon: Lexicon<Head>;
  speller: Speller;
  /** Shorthand to the word it stands for. */
  shorthands: ReadonlyMap<string, string>;
}

/** The words of the line as read: corrected where one known word is meant. */
export function correctedNorms<Head>(
  line: string,
  words: readonly Word[],
  { speller, shorthands }: Lexer<Head>,
): string[] {
  const norms: string[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const { kind, norm } = words[at]!;
    if (kind !== "letters" || speller.isSettled(norm)) norms.push(norm);
    else norms.push(shorthands.get(norm) ?? (isName(line, words, at) ? norm : (speller.meant(norm) ?? norm)));
  }
  return norms;
}

/** A capital inside a line that is not all capitals is a name: "Stan" is no stain. */
function isName(line: string, words: readonly Word[], at: number): boolean {
  const initial = line[words[at]!.start]!;
  if (at === 0 || initial === initial.toLowerCase() || words[at - 1]!.kind !== "letters") return false;
  return line !== line.toUpperCase();
}

/** Words to typed tokens, left to right, the longest meaning first. Linear: every look ahead is bounded. */
export function tokensOf<Head>(
  words: readonly Word[],
  norms: readonly string[],
  lexer: Lexer<Head>,
): Token<Head>[] {
  const tokens: Token<Head>[] = [];
  let at = 0;
  while (at < words.length) {
    const token = tokenAt(words, norms, at, lexer);
    tokens.push(token);
    at = token.to;
  }
  return tokens;
}

/** A token of one kind from its part of the line. */
function made<Head>(part: Part, norms: readonly string[], at: number): Token<Head> {
  const { words } = part;
  const text = words === 1 ? norms[at]! : norms.slice(at, at + words).join(" ");
  return tokenOf(part.kind, text, { from: at, to: at + words }, NO_ROLES as Roles<Head>, part);
}

const DOUBTFUL: Part = { kind: "amount", amount: { exact: null, flaw: "vague", money: false }, words: 1 };

function tokenAt<Head>(
  words: readonly Word[],
  norms: readonly string[],
  at: number,
  lexer: Lexer<Head>,
): Token<Head> {
  const word = words[at]!;
  const norm = norms[at]!;
  if (norm === "#" && /^\d{1,9}$/.test(norms[at + 1] ?? ""))
    return made({ kind: "number", value: Number(norms[at + 1]), words: 2 }, norms, at);
  if (word.doubtful) return made(DOUBTFUL, norms, at);
  if (norm === "x" && /^\d{1,3}$/.test(norms[at + 1] ?? ""))
    return made({ kind: "count", value: Number(norms[at + 1]), words: 2 }, norms, at);
  const named = NUMBER_WORDS.has(norm) ? pieceNumberAt(norms, at) : null;
  if (named) return made(named, norms, at);
  const found = word.kind === "letters" ? lexer.lexicon.longest(norms, at) : null;
  const nounPhrase = found !== null && found.words > 1 && found.roles.noun !== undefined;
  if (!nounPhrase && (word.kind === "digits" || STARTERS.has(norm))) {
    const timed = timedAt(word, norms, at, lexer);
    const least = found?.roles.vagueTime || found?.roles.hedge ? found.words : 0;
    if (timed && timed.words >= least) return made(timed, norms, at);
  }
  return plainToken(word, norms, at, found);
}

function plainToken<Head>(
  word: Word,
  norms: readonly string[],
  at: number,
  found: { roles: Roles<Head>; words: number } | null,
): Token<Head> {
  if (found) {
    const text = found.words === 1 ? norms[at]! : norms.slice(at, at + found.words).join(" ");
    return tokenOf("word", text, { from: at, to: at + found.words }, found.roles);
  }
  const mark = word.kind === "mark";
  return tokenOf(
    mark ? "mark" : "word",
    norms[at]!,
    { from: at, to: at + 1 },
    NO_ROLES as Roles<Head>,
    mark ? NOTHING : UNKNOWN,
  );
}

const NUMBER_WORDS = new Set(["no", "number", "num", "nbr"]);

/** "no. 12", "number 12", "num 12": the bot's own numbers in words. */
function pieceNumberAt(norms: readonly string[], at: number): Part | null {
  const word = norms[at]!;
  const dotted = word === "no" && norms[at + 1] === "." ? 2 : 0;
  const skip = dotted || (/^(?:number|num|nbr)$/.test(word) ? 1 : 0);
  if (skip === 0) return null;
  const sharp = norms[at + skip] === "#" ? 1 : 0;
  const typed = norms[at + skip + sharp] ?? "";
  if (/^\d{1,6}$/.test(typed)) return { kind: "number", value: Number(typed), words: skip + sharp + 1 };
  if (word !== "number") return null;
  const spelled = smallNumberAt(norms, at + skip);
  return spelled ? { kind: "number", value: spelled.value, words: skip + spelled.words } : null;
}

/** A day or a number at this place, whichever the words are. */
function timedAt<Head>(word: Word, norms: readonly string[], at: number, lexer: Lexer<Head>): Part | null {
  const norm = norms[at]!;
  const digits = word.kind === "digits";
  if (digits ? couldBeDay(norms, at) : DAY_STARTERS.has(norm)) {
    const ahead = norms.slice(at, at + 6);
    const found = slashIsFraction(norms, at) ? null : dayAt(ahead);
    if (found && !isRankOfNoun(found, norms, at, lexer))
      return { kind: "day", said: found.said, words: found.words };
  }
  if (!digits && !NUMBER_STARTERS.has(norm)) return null;
  const part = numericAt({ norms, at });
  return part && norm === "one" && part.words === 1 && !countsSomething(norms, at, lexer) ? null : part;
}

const AFTER_DAYS = /^(?:of|days?|weeks?|wks?|months?)$/;

/** Digits are a day only with a slash, a dash or an ordinal's letters in them, or before "days ago". */
function couldBeDay(norms: readonly string[], at: number): boolean {
  const word = norms[at]!;
  for (let place = 1; place < word.length; place += 1) {
    const code = word.charCodeAt(place);
    if (code === 47 || code === 45 || code > 57) return true;
  }
  return AFTER_DAYS.test(norms[at + 1] ?? "");
}

/** "one dresser", "one of the chairs"; "the last one" counts nothing. */
function countsSomething<Head>(norms: readonly string[], at: number, lexer: Lexer<Head>): boolean {
  if (norms[at + 1] === "of") return true;
  const roles = lexer.lexicon.longest(norms, at + 1)?.roles;
  return roles?.noun !== undefined || roles?.trait === true || roles?.supply !== undefined;
}

/** "1/2 hour" and "1/2 inch" are no first of February. */
function slashIsFraction(norms: readonly string[], at: number): boolean {
  if (!/^(?:1\/2|1\/4|3\/4|1\/3|2\/3)$/.test(norms[at]!)) return false;
  const next = norms[at + 1] ?? "";
  return HOURS.has(next) || /^(?:an?|of|inch|off|in|gallon|quart|price|pint|yard)$/.test(next);
}

/** "the 3rd dresser" counts dressers, not days. */
function isRankOfNoun<Head>(
  found: { said: DaySaid; words: number },
  norms: readonly string[],
  at: number,
  lexer: Lexer<Head>,
): boolean {
  if (found.said.form !== "dayOfMonth") return false;
  if (
    /^(?:street|st|ave|avenue|road|rd|grade|floor|time|one|place|owner)$/.test(norms[at + found.words] ?? "")
  )
    return true;
  return lexer.lexicon.longest(norms, at + found.words)?.roles.noun !== undefined;
}
