import { wordSet } from "./words.ts";

/* Where a sentence begins in what was spoken. */

/** What joins a sentence of its own. */
export const BREAKS = wordSet(
  "oh_and oh_also oh_and_also and_also also and_then so_then then and_then_also plus oh_yeah_and oh_yeah",
);

/** "im keeping it", "were keeping it" */
export const WE_ARE = wordSet("im were we_are i_am");
export const KEEPING = wordSet("keeping holding saving");

/** Between who did it and what was done. */
export const BEFORE_DONE = wordSet("just also finally then even already actually had_to");

/** Before the piece that a sentence begins with. */
export const BEFORE_PIECE = wordSet("the my our that this");
export const IS_OR_DID = wordSet("is was went got finally has is_now is_finally sold fell just also");

/** Before a number that goes on: "the 7 i spent", "the other two im keeping". */
export const OF_WHICH = wordSet("the that those these other all both");

/** What joins a sentence to the one before, and may join less. */
export const JOINS_SENTENCE = wordSet("so but then also or though");
