/* What tells a question from a note. */

import { wordSet } from "./words.ts";

/** Words that open a question. */
export const ASKING_CUES = wordSet(
  "how hows howd what whats whatd which when whens where wheres who whos why show any anything do does did should can could would will tell give_me gimme is are was were am list_all list_my see view check",
);

/** Behind a note and a joint, these begin a question of their own; so do the others before "i" and "we". */
export const ASKS_BEHIND = wordSet("what whats how hows which who whos when where");
export const DOES = wordSet("am did do");
export const OF_OURS = wordSet("i we");

/** Passed over before one. */
export const BEFORE_QUESTION = wordSet(
  "so ok okay hey hi um uh and please pls also well yo but oh the a an my me just lol hmm hm then there quick question alright",
);

/** Short forms of the periods that are asked about. */
export const SHORT_PERIODS: Readonly<Record<string, string>> = { yr: "year", mo: "month", mth: "month" };

/** Words that a question may hold beside its phrase. */
export const BESIDE_PHRASE = wordSet(
  "so far ok okay hey please pls plz my the a an me i now right for in of on is are it this thanks total totals just again all today yet still piece pieces flip flips ever one up to date whole give gimme send rn got get have do there and good",
);

/** What a question is about, whatever else it says: "how am i doing on my goal" asks for the pace. */
export const TOPICS = wordSet("goal goals pace track tax taxes loan loans miles mileage {piece}");

/** Question words that may stand beside a phrase. */
/** Between "did" and how long it took. */
export const ROUGHLY = wordSet("like about around maybe roughly almost nearly over another some");

export const ASKING = wordSet("whats what how hows show any");
