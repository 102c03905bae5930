import { MONTHS, NUMBERS } from "../lexicon.ts";

/** Months by name and short form, 1 to 12, with the slips that only questions were seen to make. */
export const MONTH_NAMES: Readonly<Record<string, number>> = {
  ...MONTHS,
  feburary: 2,
  aprl: 4,
  agust: 8,
  setember: 9,
  septmber: 9,
  octobr: 10,
  jly: 7,
  juli: 7,
  augst: 8,
  ocotber: 10,
  novmber: 11,
};

/** First month of a season and how many it has; winter is the one that ends in the year said. */
export const SEASONS: Readonly<Record<string, number>> = {
  spring: 3,
  summer: 6,
  fall: 9,
  autumn: 9,
  winter: 12,
};

const SMALL_MAX = 12;

export const SMALL_NUMBERS: Readonly<Record<string, number>> = Object.fromEntries(
  Object.entries(NUMBERS).filter(([, value]) => value <= SMALL_MAX),
);

/** Words for the unit of a stretch of days. */
export const UNITS: Readonly<Record<string, "day" | "week" | "month" | "quarter" | "year">> = {
  day: "day",
  days: "day",
  week: "week",
  weeks: "week",
  wk: "week",
  wks: "week",
  month: "month",
  months: "month",
  mo: "month",
  mos: "month",
  mth: "month",
  mths: "month",
  quarter: "quarter",
  quarters: "quarter",
  year: "year",
  years: "year",
  yr: "year",
  yrs: "year",
};
/** Before a unit: the running one, and the one before it. */
export const THIS: readonly string[] = ["this", "current", "the current", "the running"];
export const LAST: readonly string[] = [
  "last",
  "past",
  "previous",
  "prior",
  "the last",
  "the past",
  "the previous",
  "lst",
  "last full",
  "the last full",
  "last whole",
  "the last whole",
  "last complete",
  "the last complete",
];
/** Before a period: from its first day on, up to its last, before its first, after its last. */
export const SINCE: readonly string[] = ["since", "starting", "starting in", "beginning", "from"];
export const UNTIL: readonly string[] = [
  "until",
  "till",
  "til",
  "through",
  "thru",
  "up to",
  "up until",
  "up till",
  "to",
  "-",
  "–",
  "and",
  "ending",
  "by the end of",
  "through the end of",
];
export const BEFORE: readonly string[] = ["before", "prior to", "earlier than", "ahead of"];
export const AFTER: readonly string[] = ["after", "later than"];
/** After a period: from there to today. */
export const ONWARD: readonly string[] = [
  "on",
  "onward",
  "onwards",
  "forward",
  "till now",
  "til now",
  "until now",
  "to now",
  "till today",
  "until today",
  "to today",
  "to date",
  "up to now",
  "through today",
  "through now",
  "thru today",
  "up to today",
  "and on",
  "on out",
  "till date",
  "up till now",
  "and since",
  "to the present",
  "to present",
];
/** All of it. */
export const EVER: readonly string[] = [
  "ever",
  "all time",
  "of all time",
  "lifetime",
  "overall",
  "so far ever",
  "in all time",
  "since the start",
  "since the beginning",
  "since day one",
  "from the start",
  "from the beginning",
  "altogether so far",
  "since i started",
  "since we started",
  "in total so far",
  "over all time",
  "all in all",
  "historically",
  "the whole time",
  "for all time",
  "all years",
  "since forever",
  "since i began",
  "from day one",
  "all along",
  "over the years",
  "career",
  "to date",
  "in all the time",
  "since the first day",
  "since i opened",
  "the entire time",
  "since we began",
  "since it all started",
];
