/* Words by which a number, a day or a time may begin, and those that may follow one. */

import { MONTHS, ORDINALS, WEEKDAYS } from "./calendar.ts";
import {
  CENT_WORDS,
  CURRENCY_WORDS,
  EACH_WORDS,
  FOREIGN_WORDS,
  NOTE_WORDS,
  SCALES,
  SLANG_SUMS,
  TENS,
  UNITS,
} from "./numbers.ts";
import {
  AFTER_DAYS,
  BETWEEN_HOURS,
  CLOCK_WORDS,
  GRAINS,
  HOURS,
  MILES,
  MINUTES,
  MORE_OF,
  PAST_HOUR,
  PERCENT,
  QUARTERS,
  SPAN_DAYS,
  YEARS,
} from "./units.ts";
import { wordSet } from "./words.ts";

export const DAY_STARTERS = new Set([
  ...Object.keys(WEEKDAYS),
  ...Object.keys(MONTHS),
  ...wordSet(
    "yesterday yesterdays yday yest yesterdy yesturday tomorrow tmrw tomorow tmw last next this past the day a couple two three one four five six seven",
  ),
]);

export const NUMBER_STARTERS = new Set([
  ...Object.keys(UNITS),
  ...Object.keys(TENS),
  ...wordSet("hundred a an another half buck quarter hour hr couple noon midnight $ ½ ¼ ¾"),
]);

export const STARTERS: ReadonlySet<string> = new Set([...DAY_STARTERS, ...NUMBER_STARTERS]);

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
  ...wordSet(
    "hours hrs mins minutes minute miles mile percent quarters point dozen pair both loan loans year years taxes until till night nite trio ones",
  ),
]);

/** Words of days and measures long enough that a slip in them is plain. */
export const TIME_WORDS: readonly string[] = [
  ...wordSet(
    "yesterday tomorrow monday tuesday wednesday thursday friday saturday sunday january february april august september october november december hours minutes miles percent dollars bucks taxes",
  ),
];

/** The words that may come right after a number and belong to it. */
export const AFTER_NUMBER: ReadonlySet<string> = new Set([
  ...CLOCK_WORDS,
  ...Object.keys(SCALES),
  ...HOURS,
  ...MINUTES,
  ...MILES,
  ...PERCENT,
  ...Object.keys(QUARTERS),
  ...Object.keys(SPAN_DAYS),
  ...CURRENCY_WORDS,
  ...CENT_WORDS,
  ...EACH_WORDS,
  ...FOREIGN_WORDS,
  ...GRAINS,
  ...YEARS,
  ...MORE_OF,
  ...wordSet("x2 x3 x4 x5 x6 x7 x8 x9 x10 x12 x15 x16 x18 x20 x24"),
  ...wordSet("and & a an rt round $ k + x × * @ / per for times"),
]);

/** Words that may stand second in an amount as it is spoken: without one of them nothing is looked for. */
export const SPOKEN_SECOND: ReadonlySet<string> = new Set([
  ...["and", "a", "of", "oh", "couple", "hundred", "thousand", "grand", "buck", "bucks", "dollar", "dollars"],
  ...["1s", "2s", "5s", "10s", "20s", "50s", "100s"],
  ...Object.keys(NOTE_WORDS),
  ...Object.keys(SLANG_SUMS),
  ...Object.keys(TENS),
  ...Object.keys(UNITS).filter((word) => UNITS[word]! > 9),
]);

/** The words that make plain digits right before them anything else than an amount of that many, or may. */
export const AFTER_DIGITS: ReadonlySet<string> = new Set([
  ...AFTER_NUMBER,
  ...SPOKEN_SECOND,
  ...BETWEEN_HOURS,
  ...PAST_HOUR,
  ...AFTER_DAYS,
]);

/** The same, with one word between. */
export const BEHIND_AFTER_DIGITS: ReadonlySet<string> = new Set([...Object.keys(TENS), "and", "ago"]);
