import { rowsOf } from "./row.ts";

const PROFIT = "profit|profits|earnings|gains|made|earned";
const SPLIT =
  "split|splits|splitting|share|shared|sharing|divvy|divvied|divvying|divide|divided|dividing|halve|halved|halving";
const PART = "half|a_third|third|quarter|a_quarter|<percent>|50/50|fifty_fifty|halves|1/3|1/2|1/4";
const KEPT =
  "keeping|kept|keep|keeps|i_keep|i_kept|i_get|i_got|we_keep|we_kept|my_cut|our_cut|my_share|our_share|my_part|my_commission|commission|for_me|for_us|got_to_keep|my|our";

/**
 * Money of a sale that goes to somebody else. "share": of a profit; "commission": the amount in brackets is what was kept of
 * somebody else's piece.
 */
export const SHARES = rowsOf<"share" | "commission">({
  // A share of what it made.
  "share: splitting the lamp money with dad, half each": SPLIT + " … [" + PROFIT + "|proceeds|money]",
  "share: profit on both chairs split with mom":
    "[" + PROFIT + "] … " + SPLIT + "|goes_to|go_to|" + PART + "|is|to",
  "share: desk profit: half to dad": "[" + PROFIT + "] : " + PART,
  "share: half the profit on #4 goes to mom": PART + " … [" + PROFIT + "]",
  "share: went halves with my sister on the armoire":
    "[went|go|going halves|halfsies|50/50|fifty_fifty|half_and_half|in_half]",
  "share: dad's share of the desk is 25%":
    "[share|cut|part of|on|for|from] … <percent>|half|a_third|a_quarter",
  "share: 25% share of the desk for dad": "<percent>|half|third|quarter … [share|cut of|on|for|from]",
  // Somebody else's piece, sold for a cut.
  "commission: sold mom's lamp 40, keeping 10":
    "<sell>|consigned … <theirs> … [" + KEPT + " <percent>? of|is|was|:|share|cut? $]",
  "commission: sold her hutch 200, kept 30":
    "<sell>|consigned … his|her|their|<person>|<theirs> <piece> … [" +
    KEPT +
    " <percent>? of|is|was|:|share|cut? $]",
  "commission: sold a chair for my sister 30, i keep 5":
    "<sell>|consigned|sold <art>? <piece> … for <art>? <kin>|<person>|<theirs>|<new> … [" +
    KEPT +
    " <percent>? of|is|was|:|share|cut? $]",
  "commission: sold mom's lamp 40, 10 for me":
    "<sell>|consigned … <theirs>|his|her|their|<person> … [$ commission|for_me|for_us|is_mine|was_mine|was_my_cut|is_my_cut|my_cut]",
  "commission: commission 15 on aunt june's table":
    "[commission of|is|was? $] on|for|from … <theirs>|<person>|his|her|their",
  "commission: got 12 commission for selling his mirror":
    "[$ commission|cut|finders_fee] for|on|from selling|sold|<theirs>|<person>|his|her|their",
  "commission: got 15 for selling the neighbors desk": "[$] for selling … <theirs>|<person>|his|her|their",
  "commission: made 15 selling moms lamp":
    "[made|earned|got $] for|from? selling … <theirs>|<person>|his|her|their",
  "commission: sold the neighbors sofa 200 and got 20%":
    "<sell> … <theirs>|his|her|their … [got|kept|keep|keeping|i_keep|i_get|my_cut|my_share|for_me is|was|of? <percent>]",
  "commission: 10 commission, sold a friend's bench": "[$ commission] , sold … <theirs>|<person>",
});
