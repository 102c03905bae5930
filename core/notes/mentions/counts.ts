import type { Tok } from "../clause.ts";
import { placeBefore, tokenBefore } from "../clause.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { BETWEEN_SET_AND_PIECE, GROUPS, PAIRS, PIECES, THESE } from "../words/pieces.ts";

/* How many pieces are meant, however it is said. */

/** So many pieces of a kind may be counted by a product of count and price. */
const FACTOR_MAX = 1000;

/** How many pieces a product tells: the count stands first, but "45 x 2" may be either way round. */
export function countInProduct(token: Tok | undefined): number | null {
  const [first, second] = token?.amount?.factors ?? [];
  const count = first ? wholeOf(first) : null;
  if (count === null || count >= FACTOR_MAX) return null;
  return second!.scale === 0 && second!.digits < count ? null : count;
}

export const COUNT_WORDS: ReadonlyMap<string, number> = new Map([
  ["both", 2],
  ["pair", 2],
  ["pr", 2],
  ["couple", 2],
  ["dozen", 12],
  ["trio", 3],
]);
/** The most a bare number before a singular noun counts: "2 chair" is a slip, "60 nightstand" a price. */
const SLIP_COUNT_MAX = 4;

interface Counted {
  /** Where the mention begins: the place of its first token. */
  from: number;
  count?: number;
  set?: true;
}

/** A plain whole number that may count pieces. */
export function countOf(token: Tok | undefined): number | null {
  if (!token) return null;
  if (token.kind === "count") return token.value ?? null;
  if (token.kind !== "amount" || token.each || token.amount?.money || token.amount?.flaw) return null;
  const whole = wholeOf(token.amount?.exact ?? null);
  return whole !== null && whole >= 1 && whole < 1000 ? whole : null;
}

/** The count before the words at `end`, whichever way it is said; `from` stays where there is none. */
export function countBefore(tokens: readonly Tok[], end: number, plural: boolean): Counted {
  const at = placeBefore(tokens, end - 1, BETWEEN_SET_AND_PIECE);
  const token = at < 0 ? undefined : tokens[at];
  if (!token) return { from: end };
  const word = COUNT_WORDS.get(token.text);
  // "both the couch and loveseat" are two pieces, not two couches.
  if (token.text === "both" && !plural) return { from: at };
  if (word !== undefined) {
    const place = token.text === "dozen" ? halfBefore(tokens, at) : at;
    const half = place < at;
    return {
      from: place,
      count: half ? 6 : word,
      ...(PAIRS.has(token.text) ? { set: true as const } : {}),
    };
  }
  // "set the crib aside": a verb, and no set of cribs.
  if (token.text === "set" && at < end - 1 && tokens[at + 1]!.text !== "of") return { from: end };
  if (GROUPS.has(token.text)) return { from: at, ...(token.text === "set" ? { set: true as const } : {}) };
  const count = countOf(token);
  if (count === null || (!plural && count > SLIP_COUNT_MAX)) return { from: end };
  // "stain 12.50 + brush 4 hutch": what the brush cost.
  if (!plural && tokens[at - 1]?.roles.supply !== undefined) return { from: end };
  // "one dresser" said with links between needs "of": "15 the dresser" is a price.
  if (at < end - 1 && !tokens.slice(at + 1, end).some((link) => link.text === "of")) return { from: end };
  const some = someOf(tokens, at, count);
  if (some) return some;
  const set = setBefore(tokens, at);
  return { from: set.from, count, ...(set.set ? { set: true as const } : {}) };
}

/** The place of "half" before a dozen, "half a dozen" too; the dozen's own where it is whole. */
function halfBefore(tokens: readonly Tok[], dozen: number): number {
  if (tokens[dozen - 1]?.text === "half") return dozen - 1;
  const isHalf = tokens[dozen - 1]?.text === "a" && tokens[dozen - 2]?.text === "half";
  return isHalf || tokens[dozen - 1]?.text === "half a" ? dozen - (isHalf ? 2 : 1) : dozen;
}

/** "2 of the 4 chairs" are two. */
function someOf(tokens: readonly Tok[], all: number, most: number): Counted | null {
  const at = placeBefore(tokens, all - 1, THESE);
  if (tokens[at]?.text !== "of") return null;
  const count = countOf(tokens[at - 1]);
  return count !== null && count <= most ? { from: at - 1, count } : null;
}

/** "set of 4", "lot of 3", "all 3" before a count. */
export function setBefore(tokens: readonly Tok[], at: number): { from: number; set: boolean } {
  const of = tokenBefore(tokens, at)?.text === "of" ? 2 : 1;
  const word = tokenBefore(tokens, at + 1 - of)?.text ?? "";
  if (GROUPS.has(word) || word === "all") return { from: at - of, set: word === "set" };
  return { from: at, set: false };
}

/** "5 piece dining set" counts the pieces of the set. */
export function setCountBefore(tokens: readonly Tok[], from: number): Counted {
  const unit = tokens[from - 1];
  const count = unit && PIECES.has(unit.text) ? countOf(tokens[from - 2]) : null;
  return count === null ? { from } : { from: from - 2, count, set: true };
}
