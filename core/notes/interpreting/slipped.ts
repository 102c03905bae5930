import { type Clause, claim, placeAfter, placeBefore, type Tok } from "../clause.ts";
import type { Missing } from "../reading.ts";
import { LETTER, slipsBetween } from "../tokens/spelling.ts";
import { BESIDE_SPELLED, NUMBER_WORDS } from "../words/numbers.ts";

/* An amount with a slip beside it is read whole or not at all: 12.00 is no part of "twelve and a haf". */

const LENGTH_MIN = 3;

/** A word that nobody knows, one slip away from that of a number. */
const isSlip = ({ unknown, text }: Tok): boolean =>
  unknown === true &&
  text.length >= LENGTH_MIN &&
  !NUMBER_WORDS.includes(text) &&
  NUMBER_WORDS.some((known) => known[0] === text[0] && slipsBetween(text, known) <= LETTER);

const isAmount = (token: Tok | undefined): boolean => token?.kind === "amount";

/** The words of an amount that is not read whole; none where every amount is. */
export function slippedIn({ tokens, signs }: Clause): Tok[] {
  if (!signs.has("unknown") || !signs.has("number")) return [];
  return tokens.flatMap((token, at) => {
    if (!isSlip(token)) return [];
    const before = tokens[placeBefore(tokens, at - 1, BESIDE_SPELLED)];
    const after = tokens[placeAfter(tokens, at + 1, BESIDE_SPELLED)];
    // "to sven 50" is somebody.
    const isSpelled = isAmount(after) && !/\d/.test(after!.text);
    return [...(isAmount(before) ? [before!, token] : []), ...(isSpelled ? [token, after!] : [])];
  });
}

const NEEDED: readonly Missing[] = ["price", "amount", "balance"];

/** Sets aside an amount that is not read whole; false where the kind can do without one, and would be recorded so. */
export function setSlippedAside(clause: Clause, needs: readonly string[]): boolean {
  const slipped = slippedIn(clause);
  claim(...slipped);
  return slipped.length === 0 || NEEDED.some((field) => needs.includes(field));
}
