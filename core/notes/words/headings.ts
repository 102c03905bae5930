/* What stands on a line of its own, above a list. */

import { wordSet } from "./words.ts";

/** What was done with all that is listed below, in the word that says so of one. */
export const HEADING_VERBS: Readonly<Record<string, "bought" | "sold" | "listed" | "finished">> = {
  ...{ haul: "bought", hauls: "bought", finds: "bought", pickups: "bought", purchases: "bought" },
  ...{ buys: "bought", got: "bought", scored: "bought", grabbed: "bought", snagged: "bought" },
  ...{ purchased: "bought", bought: "bought", scores: "bought", acquired: "bought", brought: "bought" },
  ...{ treasures: "bought", loot: "bought", score: "bought" },
  ...{ sold: "sold", sales: "sold", sells: "sold" },
  ...{ listed: "listed", listings: "listed", posted: "listed" },
  ...{ finished: "finished", done: "finished", completed: "finished" },
};

/** Where one buys: above a list, all of it was bought there. */
export const HEADING_PLACES = wordSet(
  "estate_sale yard_sale garage_sale flea_market thrift_store rummage_sale church_sale tag_sale moving_sale barn_sale swap_meet auction",
);

/** What opens a list and tells nothing of it. */
export const HEADING_BESIDE = wordSet(
  "today todays tonight this morning afternoon evening weekend week weekends my our the for at from so ok okay here is are heres what i we update updates notes note log recap list summary stuff things items new trip run all of it expenses supplies costs spending spent materials also and then more other in on quick day days home hours work worked time labor miles mileage driving drives progress done list tally totals",
);
