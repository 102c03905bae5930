/* Times and days that are not the day of the note. */

import { wordSet } from "./words.ts";

/** Words between what was noted and a weekday that make it the day of something else, mostly still to come. */
export const ANOTHER_TIME = wordSet(
  "pays pay paying deliver delivery delivering gets get get_it gets_it getting getting_it money closes closing ends end starts start starting started goes going leaves leaving moves rest half balance remainder fetching ships ship shipping for to need needs listed bought",
);

/** Up to a day. */
export const UNTIL = wordSet("until till til thru through by before");

/** Behind these a number and a month are a day: "until 30 june". */
export const BEFORE_DAY = wordSet("on until till til thru through by before since after from dated");

/** Somebody fetches it. */
export const PICKUP = wordSet(
  "pickup pick_up picking_up picking_it_up picks_up picks_it_up coming comes come coming_back comes_back collecting fetching getting_it gets_it returning returns " +
    "picks picking gets getting takes taking grabs grabbing fetches collects",
);

/** Between a weekday and its date: "friday, the 4th". */
export const BETWEEN_DAYS = wordSet(", the on");

/** Between that and its day. */
export const BEFORE_PICKUP_DAY = wordSet("back on for it them up this again");

/** Before how long something went on. */
export const TAKES_TIME = wordSet("took took_me it_took took_us took_about");

/** Before how far it went: "took the desk to the buyer, 17 miles". */
export const CARRIED = wordSet(
  "took brought ran carried hauled lugged schlepped trucked dragged delivered dropped_off drove delivery deliver returned",
);

/** Before a time of day that is one, whatever was worked: "its 2:30". */
export const SAYS_HOUR = wordSet("its it_is at around by until till til since after before");

/** Months that a number behind them makes no day of: "mar 40". */
export const MONTHS_ALONE = wordSet(
  "jan feb mar apr jun jul aug sep sept oct nov dec january february april june july august september october november december",
);

/** A day of the week, however it is written. */
export const A_WEEKDAY = /\b(?:mon|tue|wed|thu|fri|sat|sun)/i;

/** What is done several times over, each in so much time. */
export const ROUNDS = wordSet(
  "coats rounds sessions passes evenings mornings afternoons nights goes layers stints",
);
