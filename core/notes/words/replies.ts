/* What a bare answer to a question of the bot may be. */

import { wordSet } from "./words.ts";

/** A yes in its own words. */
export const YES = wordSet(
  "yes yep yeah yup ya yea ok okay sure y correct right yes_please sure_thing sounds_good do_it go_ahead thats_right ok_yes yes_it_is yes_it_was",
);

/** What an answer opens with and says nothing by. */
export const OPENS_ANSWER = wordSet(
  "oh right sorry yeah yes yep ok okay um uh uhh umm hmm hm well so ah ahh oops whoops duh haha lol shoot sry forgot i it that was were they " +
    "them he she paid for got just only thats its",
);

/** Who made it less: "she talked me down to 120". */
export const HAGGLED = wordSet(
  "talked haggled beat knocked bargained negotiated wore got down price came settled agreed landed ended up at on to for us her him guy buyer lady",
);

/** "about an hour": near enough, where nobody counts the minutes. */
export const NEARLY = wordSet(
  "about around like roughly maybe approx approximately probably near nearly close to some",
);

/** Words beside a choice that name nobody else: "gave him all of it back". */
export const AROUND_CHOICE = wordSet(
  "thats its what i we him her them they his their the my me just already money deposit guy lady buyer to of it that this in is was for so back",
);

/** A no. */
export const NO = wordSet("no nope nah n no_thanks no_thank_you not_that");

/** What goes with a price that is asked for a piece: "110 firm now" tells of no cost. */
export const OF_ASKING = wordSet("firm now obo negotiable asking");

/** The question is dropped. */
export const NEVER_MIND = wordSet(
  "never_mind nevermind nvm nevermind forget_it forget_that cancel cancel_it cancel_that skip skip_it drop_it nm dont_bother leave_it",
);
