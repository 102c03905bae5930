import type { Cursor, Part } from "../tokens/token.ts";
import { CURRENCY_WORDS, FOREIGN_WORDS } from "../words/numbers.ts";
import {
  AFTER_DIGITS,
  AFTER_NUMBER,
  BEHIND_AFTER_DIGITS,
  NUMBER_STARTERS,
  SPOKEN_SECOND,
} from "../words/starters.ts";
import {
  BETWEEN_HOURS,
  CLOCK_WORDS,
  GRAINS,
  PAST_HOUR,
  PERCENT,
  PRICE_MOVED,
  SPAN_DAYS,
  YEARS,
} from "../words/units.ts";
import type { Amount } from "./amounts.ts";
import { decimalText, exactOf, foreign, plus } from "./amounts.ts";
import { clockAt, clockRangeAt, isHoursOpen } from "./clocks.ts";
import {
  durationAfter,
  fractionAfter,
  gluedDuration,
  MILES_GLUED,
  milesAfter,
  milesOf,
  minutesAfterHours,
  repeatedMeasure,
  wordedDuration,
} from "./measures.ts";
import { joinedAmount, numberAt, plainAmount, scaledDigits, timesAfter } from "./numbers.ts";
import { moneyAfter, vagueAmount } from "./prices.ts";
import { spokenAt } from "./spoken.ts";

/** Plain digits that are an amount, by what stands behind them, or one of each; null where that takes a longer look. */
export function bareAmountAt(norms: readonly string[], at: number): Part | null {
  const amount = plainAmount(norms[at]!);
  if (!amount) return null;
  const next = norms[at + 1];
  if (next === undefined) return { kind: "amount", amount, words: 1 };
  const second = norms[at + 2];
  if (next.includes("-") || (second !== undefined && BEHIND_AFTER_DIGITS.has(second))) return null;
  if (!AFTER_DIGITS.has(next) || (next === "for" && second !== "each") || isBetweenThings(next, second))
    return { kind: "amount", amount, words: 1 };
  return next === "each" && second !== "way" && !timesAfter(norms, at + 2)
    ? { kind: "amount", amount, words: 2, each: true }
    : null;
}

/** "primer 16 and sandpaper": no half and no number follows. */
const isBetweenThings = (link: string, next: string | undefined): boolean =>
  (link === "and" || link === "&") && next !== undefined && /^[a-z]/.test(next) && !NUMBER_STARTERS.has(next);

function plainNumber(amount: Amount, cursor: Cursor): Part | null {
  const { norms, at } = cursor;
  const next = norms[at + 1];
  if (next === undefined || !AFTER_NUMBER.has(next)) return { kind: "amount", amount, words: 1 };
  if (CLOCK_WORDS.has(next)) {
    const clock = clockAt(cursor);
    if (clock) return clock;
  }
  return withUnit(scaledDigits(amount, norms, at), cursor);
}

/** Whatever begins with a number at this place. */
export function numericAt(cursor: Cursor): Part | null {
  const part = numberOrMeasureAt(cursor);
  return part?.kind === "duration" || part?.kind === "miles" ? repeatedMeasure(part, cursor) : part;
}

/** Whether a number may open "2-4pm", "2 to 4" or, behind "from", "nine thirty to eleven". */
function mayBeRange({ norms, at }: Cursor): boolean {
  const next = norms[at + 1] ?? "";
  const before = at > 0 ? norms[at - 1]! : "";
  const isOpen = BETWEEN_HOURS.has(next) || isHoursOpen(norms, at) || PAST_HOUR.has(next);
  if (!isOpen) return norms[at]!.includes("-") || next.includes("-");
  // "lowered it from 12 to 10"
  return before !== "from" || !norms.slice(0, at).some((word) => PRICE_MOVED.has(word));
}

function numberOrMeasureAt(cursor: Cursor): Part | null {
  const { norms, at } = cursor;
  const word = norms[at]!;
  if (mayBeRange(cursor)) {
    const range = clockRangeAt(cursor);
    if (range) return range;
  }
  const spoken =
    SPOKEN_SECOND.has(norms[at + 1] ?? "") || BEHIND_AFTER_DIGITS.has(norms[at + 2] ?? "")
      ? spokenAt(norms, at)
      : null;
  if (spoken) return spoken;
  const code = word.charCodeAt(0);
  // Most numbers are digits and nothing else: no glued unit, no clock, no percent.
  const plain = code >= 48 && code <= 57 ? plainAmount(word) : null;
  if (plain) return plainNumber(plain, cursor);
  if (CURRENCY_WORDS.has(word)) return vagueAmount(cursor);
  if (TYPED_MONEY.test(word)) return withUnitOf(numberAt(cursor), cursor);
  const glued = gluedDuration(word);
  if (glued !== null) {
    const more = /m/.test(word) ? { minutes: 0, words: 0 } : minutesAfterHours(norms, at + 1);
    return { kind: "duration", minutes: Math.round(glued + more.minutes), words: 1 + more.words };
  }
  const cents = /^(\d{1,2})[c¢]$/.exec(word);
  if (cents)
    return {
      kind: "amount",
      amount: { exact: { digits: Number(cents[1]), scale: 2 }, money: true },
      words: 1,
    };
  const miles = MILES_GLUED.exec(word);
  if (miles) {
    const exact = exactOf(miles[1]!);
    return exact ? milesOf(exact, cursor, 1) : null;
  }
  if (
    /^(?:an?|one)$/.test(word) &&
    SPAN_DAYS[norms[at + 1] ?? ""] !== undefined &&
    !/s$/.test(norms[at + 1]!)
  )
    return { kind: "span", days: SPAN_DAYS[norms[at + 1]!]!, words: 2 };
  const worded = wordedDuration(cursor);
  if (worded) return worded;
  const clock = clockAt(cursor);
  if (clock) return clock;
  const percent = /^(\d{1,4}(?:\.\d{1,4})?|\.\d{1,4})%$/.exec(word);
  if (percent) return { kind: "percent", percent: decimalText(exactOf(percent[1]!)!), words: 1 };
  const count = /^x(\d{1,3})$|^(\d{1,3})x$/.exec(word);
  if (count && !startsJoined(norms, at))
    return { kind: "count", value: Number(count[1] ?? count[2]), words: 1 };
  return withUnitOf(numberAt(cursor), cursor);
}

/** "$30", "1.2k", "1,250": nothing but an amount has such a sign. */
const TYPED_MONEY = /^(?:[$€£][\d,.]+|[\d,.]+[k$€£]|\d{1,3},[\d,.]+)$/;

const withUnitOf = (number: Counted | null, cursor: Cursor): Part | null =>
  number && withUnit(number, cursor);

/** "4x 2.50" is a product with a blank in it. */
function startsJoined(norms: readonly string[], at: number): boolean {
  return /x$/.test(norms[at]!) && /^[$€£]?[\d.]/.test(norms[at + 1] ?? "");
}

/** "100 year old trunk" */
const isAge = (norms: readonly string[], at: number): boolean =>
  YEARS.has(norms[at] ?? "") && norms[at + 1] === "old";

/** An amount before its unit, and the words that say it. */
interface Counted {
  amount: Amount;
  words: number;
}

/** "5%", "four and a half percent". */
function percentAfter(
  { amount: { exact }, words }: Counted,
  norms: readonly string[],
  at: number,
): Part | null {
  const fraction = fractionAfter(norms, at + words);
  const all = words + fraction.words;
  if (!exact || !PERCENT.has(norms[at + all] ?? "")) return null;
  const value = fraction.part > 0 ? plus(exact, { digits: fraction.part * 100, scale: 2 }) : exact;
  return { kind: "percent", percent: decimalText(value), words: all + 1 };
}

function withUnit(number: Counted, cursor: Cursor): Part {
  const { norms, at } = cursor;
  const following = norms[at + number.words];
  if (following === undefined || !AFTER_NUMBER.has(following))
    return { kind: "amount", amount: number.amount, words: number.words };
  const measured = durationAfter(number, cursor) ?? milesAfter(number, cursor);
  if (measured) return measured;
  const unit = norms[at + number.words] ?? "";
  const { exact } = number.amount;
  if (FOREIGN_WORDS.has(unit)) return { kind: "amount", amount: foreign(exact), words: number.words + 1 };
  const isYardSale = unit === "yard" && /^sales?$/.test(norms[at + number.words + 1] ?? "");
  if (!number.amount.money && GRAINS.has(unit) && !isYardSale)
    return { kind: "grain", words: number.words + 1 };
  if (!number.amount.money && isAge(norms, at + number.words))
    return { kind: "grain", words: number.words + 2 };
  if (!number.amount.money && YEARS.has(unit)) return { kind: "span", days: 0, words: number.words + 1 };
  const percent = number.amount.factors ? null : percentAfter(number, norms, at);
  if (percent) return percent;
  const days = SPAN_DAYS[unit];
  // "40 day before yesterday" is no span: more than one takes the plural.
  const counted = exact?.digits === 1 || /s$/.test(unit);
  if (days !== undefined && counted && exact && exact.scale === 0 && exact.digits < 1000)
    return { kind: "span", days: days * exact.digits, words: number.words + 1 };
  const joined = joinedAmount(number, cursor);
  const repeated = joined === number ? null : (durationAfter(joined, cursor) ?? milesAfter(joined, cursor));
  return repeated ?? moneyAfter(joined, cursor);
}
