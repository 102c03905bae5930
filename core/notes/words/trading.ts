/* What tells the sides of a trade apart. */

import { wordSet } from "./words.ts";

/** Words between what is given and what is got. */
export const PARTING = wordSet("for 4 into got took received in toward towards gave out");

/** Words behind which an amount is what the given piece is worth, and behind which it came to us or was paid by us. */
export const WORTH = wordSet(
  "worth valued value values call calling called counting count counted count_it figure figured figuring say saying price priced both",
);

export const RECEIVED = wordSet("got received back");

export const PAID = wordSet("paid pay threw threw_in kicked kicked_in tossed_in chipped_in");

/** Who gave it, or to whom it was given. */
export const FROM_US = wordSet("i we my him her them");

export const FROM_THEM = wordSet("he she they me us");
