import { wordSet } from "./words.ts";

/** Words by which a number is put right in the same breath: "24, no wait 26". */
export const PUTS_RIGHT = wordSet(
  "no nope nah wait sorry oops actually mean meant scratch correction rather er uh erm bad typo whoops ope",
);

/** Of these two that stand together one puts right: "make it 26", "more like 90 min". */
export const PUTS_RIGHT_BY_TWO = wordSet("make_it make_that more_like lets_do lets_say");

/** Each of them, and the first of two: a line without any puts nothing right. */
export const MAY_PUT_RIGHT = wordSet("make more lets", PUTS_RIGHT);

/** What stands beside those words, and says nothing more. */
export const BESIDE_PUTS_RIGHT = wordSet(
  "i it that thats its was is be should have been make lets do say more like well or hm hmm oh ok my im about closer to and but",
  PUTS_RIGHT,
);

/** "2 hours, wait 30 minutes": to wait takes time, and puts none right. */
export const TAKES_TIME = wordSet("wait well");

/** Behind the number put right, its own note goes on; what is counted, or taken from it, is no number put right. */
export const GOES_ON = wordSet(
  "for on at to from in with by and but because cause since cash card check transfer lol haha ha today they he she it its i we thats that bucks dollars total all via",
);
