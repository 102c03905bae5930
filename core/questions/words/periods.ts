import { MONTHS, NUMBERS, standFor } from "../lexicon.ts";
import { phrases } from "./ways.ts";

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

/** Days that come every year: on a day of a month, on so many a weekday of it (the last where that is 5), or by Easter. */
export const HOLIDAYS: Readonly<
  Record<
    string,
    { month: number; day: number } | { month: number; weekday: number; nth: number } | { afterEaster: number }
  >
> = {
  easter: { afterEaster: 0 },
  "easter sunday": { afterEaster: 0 },
  "good friday": { afterEaster: -2 },
  "new years": { month: 1, day: 1 },
  "new years day": { month: 1, day: 1 },
  "valentines day": { month: 2, day: 14 },
  valentines: { month: 2, day: 14 },
  "st patricks day": { month: 3, day: 17 },
  "mothers day": { month: 5, weekday: 0, nth: 2 },
  "memorial day": { month: 5, weekday: 1, nth: 5 },
  "fathers day": { month: 6, weekday: 0, nth: 3 },
  juneteenth: { month: 6, day: 19 },
  "fourth of july": { month: 7, day: 4 },
  "the fourth of july": { month: 7, day: 4 },
  "the 4th of july": { month: 7, day: 4 },
  "4th of july": { month: 7, day: 4 },
  "independence day": { month: 7, day: 4 },
  "labor day": { month: 9, weekday: 1, nth: 1 },
  "labour day": { month: 9, weekday: 1, nth: 1 },
  halloween: { month: 10, day: 31 },
  "veterans day": { month: 11, day: 11 },
  thanksgiving: { month: 11, weekday: 4, nth: 4 },
  "thanksgiving day": { month: 11, weekday: 4, nth: 4 },
  "christmas eve": { month: 12, day: 24 },
  christmas: { month: 12, day: 25 },
  "christmas day": { month: 12, day: 25 },
  xmas: { month: 12, day: 25 },
  "new years eve": { month: 12, day: 31 },
};
const SMALL_MAX = 12;

export const SMALL_NUMBERS: Readonly<Record<string, number>> = Object.fromEntries(
  Object.entries(NUMBERS).filter(([, value]) => value <= SMALL_MAX),
);

/** Words for the unit of a stretch of days. */
export const UNITS = standFor({
  day: "day days",
  week: "week weeks wk wks",
  month: "month months mo mos mth mths",
  quarter: "quarter quarters",
  year: "year years yr yrs",
});
/** Before a unit: the running one, and the one before it. */
export const THIS: readonly string[] = ["this", "current", "the current", "the running"];
export const LAST: readonly string[] = phrases(`
  last, past, previous, prior, the last, the past, the previous, lst, last full, the last full, last whole,
  the last whole, last complete, the last complete
`);
/** Before a period: from its first day on, up to its last, before its first, after its last. */
export const SINCE: readonly string[] = ["since", "starting", "starting in", "beginning", "from"];
export const UNTIL: readonly string[] = phrases(`
  until, till, til, through, thru, up to, up until, up till, to, -, –, and, ending, by the end of,
  through the end of
`);
export const BEFORE: readonly string[] = ["before", "prior to", "earlier than", "ahead of"];
export const AFTER: readonly string[] = ["after", "later than"];
/** After a period: from there to today. */
export const ONWARD: readonly string[] = phrases(`
  on, onward, onwards, forward, till now, til now, until now, to now, till today, until today, to today,
  to date, up to now, through today, through now, thru today, up to today, and on, on out, till date,
  up till now, and since, to the present, to present
`);
/** All of it. */
export const EVER: readonly string[] = phrases(`
  ever, all time, of all time, lifetime, overall, so far ever, in all time, since the start,
  since the beginning, since day one, from the start, from the beginning, altogether so far, since i started,
  since we started, in total so far, over all time, all in all, historically, the whole time, for all time,
  all years, since forever, since i began, from day one, all along, over the years, career, to date,
  in all the time, since the first day, since i opened, the entire time, since we began, since it all started
`);
