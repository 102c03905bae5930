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

/**
 * What stands between a note and its day where a clause of its own tells it: "that was", "i did this on", "should be dated".
 * The second needs a mark before it: without a subject, it may go on with the note.
 */
const BEFORE_TOLD =
  "(?:(?:and|but|so|though|oh|oops|sorry|actually|i think|i believe|pretty sure|btw|forgot to (?:say|mention|tell you)|i forgot to (?:say|mention|tell you)) ){0,3}";
const SO = "(?: (?:really|actually|all|just|already|back|dated|done|from|on))*";
export const DAY_TOLD = new RegExp(
  `^${BEFORE_TOLD}(?:(?:all (?:of )?)?(?:that|this|these|those)(?: one| stuff| all)? (?:was|were|is from|happened|took place)|(?:i |we )?did (?:(?:all (?:of )?)?(?:that|this|these|those)|all that)(?: one| stuff)?)${SO}$`,
);
export const DAY_TOLD_BEHIND_MARK = new RegExp(
  `^${BEFORE_TOLD}(?:(?:it|they|both|everything|all of it) (?:was|were|happened)|(?:its|thats|it is|this is) from|was|(?:i |we )?did (?:it|them|both|everything)|(?:(?:it |that |this )?should(?:ve| have)? be(?:en)? )?(?:dated|date it|date that)|(?:put|log|date|mark) (?:it|that|this|them)(?: (?:down|under|in|for))?)${SO}$`,
);
/** Behind the day, with the verb left to it: "friday that was". */
export const BEHIND_TOLD_DAY = /^(?:that|this|it) (?:was|is)$/;

/** Before a day that stands ahead of its note: "this was monday, …", "one from monday: …". */
export const OPENS_TOLD_DAY =
  /^(?:oh |and |ok |so )*(?:this|these|that)(?: one| stuff)? (?:is|was|are|were)(?: from| for| on)*$/;
export const OPENS_LIST_OF_DAY =
  /^(?:oh |and |ok |so )*(?:for|(?:(?:one|stuff|some|more|notes|a few) )+(?:from|for))$/;

/** Before a day that all of a message has: "both on sunday". */
export const ALL_ON_DAY =
  /^(?:and )?(?:both|all)(?: of (?:it|them|that|this))?(?: (?:was|were|from|on|done|this|that))*$/;

/** Behind a day told so: its part, and what says nothing more. */
export const BEHIND_DAY = wordSet(
  "morning night evening afternoon noon midday lunch lunchtime am pm early late after_work before_work after_lunch before_lunch after_dinner after_church actually btw by_the_way already sorry lol haha though tho " +
    "not_today i_think i_believe i_guess my_bad oops i_forgot forgot i_forgot_to_log i_forgot_to_log_it i_forgot_to_say i_forgot_to_tell_you forgot_to_log_it forgot_to_say forgot_to_tell_you i_mean not_that_it_matters",
);
