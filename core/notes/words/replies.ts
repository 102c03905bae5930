/* What a bare answer to a question of the bot may be. */

import { wordSet } from "./words.ts";

/** A yes in its own words. */
export const YES = wordSet(
  "yes yep yeah yup ya yea ok okay sure y correct right yes_please sure_thing sounds_good do_it go_ahead thats_right ok_yes yes_it_is yes_it_was",
);

/** A no. */
export const NO = wordSet("no nope nah n no_thanks no_thank_you not_that");

/** What goes with a price that is asked for a piece: "110 firm now" tells of no cost. */
export const OF_ASKING = wordSet("firm now obo negotiable asking");

/** The question is dropped. */
export const NEVER_MIND = wordSet(
  "never_mind nevermind nvm nevermind forget_it forget_that cancel cancel_it cancel_that skip skip_it drop_it nm dont_bother leave_it",
);
