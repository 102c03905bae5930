import type { Clause, Tok } from "../clause.ts";
import { claim, freeTokens, says } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { centsIn, centsOfToken, pieceCount } from "../slots/money.ts";
import { SEVERAL } from "../words/pieces.ts";
import { RAISES, SETS_PRICE, WENT_UP } from "../words/verbs.ts";

function before(clause: Clause, token: Tok, back = 1): string {
  let at = clause.tokens.indexOf(token) - 1;
  for (let left = back; at >= 0; at -= 1) {
    const text = clause.tokens[at]!.text;
    if (/^(?:the|a|an|only|just|about|another|like|it|that|is)$/.test(text)) continue;
    left -= 1;
    if (left === 0) return text;
  }
  return "";
}

function after(clause: Clause, token: Tok): string {
  return clause.tokens[clause.tokens.indexOf(token) + 1]?.text ?? "";
}

/** "from 150 to 120", "150 to 120": the old price is no amount to record. */
function claimOldPrice(clause: Clause, amounts: readonly Tok[]): Tok | undefined {
  const [first, second] = amounts;
  // "to 200 from 240", "price cut, 240 from 275"
  if (
    amounts.length === 2 &&
    before(clause, second!) === "from" &&
    (/^(?:down )?to$/.test(before(clause, first!)) || isNearly(first!, second!))
  ) {
    claim(second!);
    return first;
  }
  if (amounts.length !== 2 || !/^(?:to|down to|up to|now)$/.test(before(clause, second!))) return undefined;
  if (
    before(clause, first!) !== "from" &&
    after(clause, first!) !== "to" &&
    after(clause, first!) !== "down to" &&
    after(clause, first!) !== "up to" &&
    before(clause, first!) !== "was"
  )
    return undefined;
  claim(first!);
  return second;
}

/** "240 from 275": the one became of the other; "20 from 240" may be taken off. */
function isNearly(now: Tok, old: Tok): boolean {
  const [price, was] = [centsIn(now), centsIn(old)];
  return price !== null && was !== null && price < was && price * 2 >= was;
}

/** The new price ("to 160", "now 140") or a cut ("by 20", "20 off"); a bare number could be either. */
export function judgePrice(
  fields: ReadingFields["reprice"] & { each?: true; follows?: true },
  clause: Clause,
): Trouble | null {
  // "made 60 off the bookcase" is no cut: a price, or what was left of it.
  const isPriced = says(clause, /^price/) && says(clause, /^(?:made|put)/);
  if (says(clause, /^(?:made|earned|cleared|profited|pulled in)$/) && !isPriced) return { kind: "noVerb" };
  const amounts = freeTokens(clause, "amount");
  const token = amounts.length === 1 ? amounts[0] : claimOldPrice(clause, amounts);
  if (!token) return amounts.length === 0 ? noAmount(clause) : { kind: "twoNumbers" };
  claim(token);
  const found = centsOfToken(token);
  if ("trouble" in found) return found.trouble;
  const head = clause.head?.text ?? "";
  const preposition = before(clause, token);
  // "40, change from 50": what came back, or what it was.
  if (preposition === "from") return { kind: "cutOrPrice" };
  const isFromOld = amounts.length === 2 && after(clause, token) === "from";
  // "price on the chest went up 10"
  const raises =
    RAISES.test(head) || WENT_UP.test(clause.tokens[clause.tokens.indexOf(token) - 1]?.text ?? "");
  const cut =
    preposition === "by" ||
    /^(?:off|less|cheaper)(?: each|$)/.test(after(clause, token)) ||
    // "dropped the hutch another 20"
    (!raises && clause.tokens[clause.tokens.indexOf(token) - 1]?.text === "another") ||
    (/^(?:took|take|knocked|knock|shaved)/.test(head) &&
      clause.tokens.some((word) => word.text === "off" || word.text === "knocked off"));
  if (cut) {
    if (raises) return { kind: "raiseBy" };
    fields.cut = found.cents;
    const each = clause.tokens.filter(({ text }) => /(?:^| )each$|^apiece$/.test(text));
    return token.each || each.length > 0 ? cutOfEach(fields, clause, each) : null;
  }
  const sets =
    isFromOld ||
    /^(?:(?:price )?(?:back )?(?:to|down to|up to|at|now)|is back (?:up |down )?to|is now|are now|price is|now at|=)$/.test(
      preposition,
    ) ||
    (SETS_PRICE.has(head) && !raises) ||
    isPriced;
  if (!sets) return { kind: raises ? "raiseBy" : "cutOrPrice" };
  return setPrice(fields, clause, token, found.cents);
}

/** "knocked 10 off each", "5 off each of the chairs": how many they are is for the books to count where no count is said. */
function cutOfEach(
  fields: ReadingFields["reprice"] & { each?: true; follows?: true },
  clause: Clause,
  each: readonly Tok[],
): Trouble | null {
  claim(...each);
  fields.each = true;
  const mentions = clause.tokens.flatMap(({ mention }) => (mention ? [mention] : []));
  if (mentions.length === 0) fields.follows = true;
  else if (mentions.length > 1 || !mentions[0]!.plural) {
    const count = pieceCount(mentions);
    if (count === null) return { kind: "eachOfUnknown" };
    fields.cut = (fields.cut ?? 0) * count;
  }
  return null;
}

function setPrice(
  fields: ReadingFields["reprice"] & { each?: true },
  clause: Clause,
  token: Tok,
  cents: number,
): Trouble | null {
  if (!token.each) {
    fields.price = cents;
    return null;
  }
  const mentions = clause.tokens.flatMap((piece) => (piece.mention ? [piece.mention] : []));
  const count = pieceCount(mentions);
  const isThem = mentions.length === 0 && clause.tokens.some(({ text }) => SEVERAL.has(text));
  // How many they are is for the books to count.
  const isCountedLater = isThem || (mentions.length === 1 && mentions[0]!.plural === true);
  if (count === null && !isCountedLater) return { kind: "eachOfUnknown" };
  fields.price = cents * (count ?? 1);
  fields.each = true;
  return null;
}

/** "dropped the price on the desk" says what, but not to what: the price is asked for. */
function noAmount(clause: Clause): Trouble | null {
  if (clause.signs.has("percent")) return { kind: "unclaimed" };
  // "dropped the dresser to", and the number was left off.
  if (/^(?:down )?to$/.test(clause.tokens.at(-1)!.text) && isOfPiece(clause)) return null;
  // "dropped off the desk" and "dropped the mirror on my foot" drop no price.
  const isPrice =
    /^(?:lower|reduc|mark|repric|discount)|price/.test(clause.head?.text ?? "") || says(clause, /price/);
  if (!isPrice || says(clause, /^off$/)) return { kind: "cutOrPrice" };
  return isOfPiece(clause) ? null : { kind: "cutOrPrice" };
}

const isOfPiece = ({ signs }: Clause): boolean => signs.has("piece") || signs.has("pronoun");
