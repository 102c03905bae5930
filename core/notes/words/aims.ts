/* What a goal is set for. */

import { wordSet } from "./words.ts";

/** A goal counts pieces. */
export const AIM_PIECES = wordSet(
  "pieces piece flips flip items item sales things furniture pieces_of_furniture pcs projects sold",
);

/** For each month. */
export const AIM_MONTH = wordSet(
  "month monthly mo months this_month per_month a_month each_month every_month mth",
);

/** For each year. */
export const AIM_YEAR = wordSet(
  "year yearly yr annual annually this_year per_year a_year each_year the_year every_year years",
);
