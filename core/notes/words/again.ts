/* Words of a message that is the note before once more: "got another lamp, same price". */

import { wordSet } from "./words.ts";

/** As it was. */
export const SAME = wordSet("same ditto same_thing same_one same_again identical");

/** "same for the bench", "desk likewise": what was told of another piece in the same line. */
export const SAME_TOLD = wordSet("same same_thing ditto likewise");

/** "an hour on the bench wednesday and another one today": what was told of another day. */
export const AGAIN = wordSet("another another_one one_more same same_again again more the_same");
export const BESIDE_AGAIN = wordSet("the a i we and then did put in got plus also about");

/** "same goes for the bench", "same story with the desk" */
export const SAME_OF = wordSet("goes went thing story deal");

/** "same for the bench", "same but 60" */
export const SAME_FOR = wordSet("for with on to");

/** "and so is the bench" */
export const SO = wordSet("so");
export const TOLD_BEHIND_SO = wordSet("is are was were did has");

/** One more of what there was. */
export const ANOTHER_ONE = wordSet("another another_one one_more more again too as_well also");

/** The piece that the note before was not about. */
export const THE_OTHER = wordSet("other second 2nd");

/** What is left of the pieces that the note before was about. */
export const LEFT = wordSet("other others rest last remaining");

/** "the last one" */
export const ONES = wordSet("one ones");

/** "same man again": whoever it was before. */
export const SAME_WHO = wordSet(
  "guy man lady woman gal fella fellow girl boy couple buyer person people customer dude bloke chap family folks",
);

export const SAME_ONE = new RegExp(`\\bsame (?:${[...SAME_WHO].join("|")})\\b`, "i");

/** "same lady came back for the rest" */
export const CAME_BACK = wordSet("came came_back back returned comes_back");

/** "85, so thats every chair gone" */
export const SUMS_IT_UP = wordSet("so which thats that_makes");

/** What else stands in such a message: what is the same of it, and small words. */
export const BESIDE_SAME = wordSet(
  "price money amount deal cost thing one of for at with on last time paid it was the a an and then oh plus just i we this that them there from place story just_like_it like",
);

/** Between what is the same and what it is measured by. */
export const COMPARES = wordSet("as than");

/** "another chair", "2 more chairs": pieces beside those that are here. */
export const saysOneMore = (text: string): boolean =>
  (text.includes("another ") || text.includes(" more ")) && ONE_MORE.test(text);

const ONE_MORE = /^(?:(?:and )?another|(?:one|\w+) more) /;

/** Who was told of before, as the one who acts: "and she took the mirror". */
export const SHE =
  /^(?:(?:and|oh|so|ok|okay|now|then|plus|also)[\s,]+)*(?:she|he|they)(?:['’]?(?:d|s|ll|re))?\b/i;

/** Besides what was told before. */
export const ALSO_SAID = wordSet("too also as_well again");
/** Somebody has another one, and none of ours. */
export const ONE_TOO =
  /\bone (?:(?:for|of|by) )?(?:too|also|as well|himself|herself|his own|her own|their own|elsewhere|online)\b/i;

/** More of what was bought before, or another in its place. */
export const MORE_OF_IT = wordSet(
  "more new another extra replacement other bigger smaller longer shorter right",
);

/** Done to us by who is told of: "same guy sold me another". */
export const GIVEN_US = /\b(?:me|us)\b/;
