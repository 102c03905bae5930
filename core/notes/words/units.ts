/* Units of time, distance and measure, and what stands around them. */

import { wordSet } from "./words.ts";

export const HOURS = wordSet("h hr hrs hour hours hrz hourss hrd hsr rhs hous horus");

export const MINUTES = wordSet("min mins minute minutes minuts mns mn mni mnis imn mintes minuets");

export const MILES = wordSet("mi mile miles mis milse mils myles");

/** Behind "an hour and twenty" these go on to what was done. */
export const BEFORE_WORK = wordSet("on to in");

/** After a number behind hours: it is no number of minutes. */
export const NO_MINUTES = wordSet(
  "for bucks dollars cash card check each min mins minute minutes minuts miles mile percent hundred",
);

/** "tolls 2.50 each way", "gas 12 round trip": before a number it is what was paid, and no miles. */
export const PAID_UNDERWAY = wordSet("toll tolls gas fuel diesel parking ferry bridge fare paid spent");

/** "2 more hours", "3 solid hours" */
export const MORE_OF = wordSet("more extra full solid whole additional good long hard straight decent");

/** Behind a time of day. */
export const CLOCK_WORDS = wordSet("am pm a p oclock");

/** Behind the first of two hours: "2 to 4", "9 am to noon". */
export const BETWEEN_HOURS = wordSet("to till til until thru am pm");

/** Before the first of two hours without am or pm: "from 2 to 4", "worked 6 to 8". */
export const BETWEEN_HOURS_OPEN = wordSet("from between worked");

/** Between them and the hour. */
export const ABOUT_HOUR = wordSet("about around roughly like bout approx say maybe");

/** Before "half two", which is half past it. */
export const BEFORE_HALF = wordSet("at from till til until by around");

/** Before "from 12 to 10" that is prices and no hours. */
export const PRICE_MOVED = wordSet(
  "lowered dropped cut reduced marked knocked raised bumped upped repriced price down went changed take took slashed",
);

/** "quarter past eight", "ten after two"; "quarter to nine" */
export const PAST_HOUR = wordSet("past after");
export const TO_HOUR = wordSet("to til till of before");

/** "1.1k per month" is the price of no piece. */
export const PERIODS = wordSet("day week wk month mo mth year yr");

/** A part of a hundred. */
export const PERCENT = wordSet("% percent pct prcnt");

/** Those of them that are bought by the number, and the ones that as often tell the size of one thing. */
export const ONE_MEASURE = wordSet("gallon quart pint pack yard ft foot");
const MEASURED = wordSet(
  "gallon gallons gal quart quarts qt pint pints pack pk yd yds yard yards lb lbs ft foot feet",
);
export const MEASURES = wordSet("packs", MEASURED);

/** After a number: how fine or how much of a supply, never what it cost. */
export const GRAINS = wordSet("grit grits oz ounce ounces inch inches coat coats ct", MEASURED);

/** After a number: a count of something that is neither money nor a day of the note. */
export const YEARS = wordSet("year years yr yrs");

/** Letters that belong to the number before them; any others are a word of their own ("3chairs", "40cash"). */
export const GLUED =
  /^(?:k|h|hr|hrs|hour|hours|m|min|mins|minute|minutes|mi|mile|miles|rt|am|pm|a|p|st|nd|rd|th|ft|in|inch|s|x|usd|bucks?|bux)$/i;

/** "no 5", "number 5". */
export const NUMBER_WORDS = wordSet("no number num nbr");

/** "2 days ago", "3 of may": digits before these may be a day. */
export const AFTER_DAYS = wordSet("of day days week weeks wk wks fortnight fortnights month months");

/** Days of a stretch of time. */
export const SPAN_DAYS: Readonly<Record<string, number>> = {
  day: 1,
  days: 1,
  week: 7,
  weeks: 7,
  wk: 7,
  wks: 7,
  fortnight: 14,
  fortnights: 14,
  month: 30,
  months: 30,
};

export const QUARTERS: Readonly<Record<string, number>> = {
  half: 0.5,
  "½": 0.5,
  "1/2": 0.5,
  quarter: 0.25,
  "1/4": 0.25,
  "¼": 0.25,
  "3/4": 0.75,
  "¾": 0.75,
};

/** How thick or how wide a supply is. */
export const FRACTIONS = wordSet("1/2 1/4 3/4 1/3 2/3 1/8 3/8 5/8 7/8 1/16 3/16 5/16");

/** Between an article and an hour. */
export const BEFORE_HOUR = wordSet("full solid good whole extra long quick last easy");

/** How long, wide or high a piece is, as its trait. */
export const SIZE = /^\d+(?:\.\d+)? ?(?:in|inch|inches|ft|foot|feet|cm)$/;
