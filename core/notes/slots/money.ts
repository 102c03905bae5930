import type { Cents } from "../../money.ts";
import type { Clause, Tok } from "../clause.ts";
import { claim, claimWords, freeTokens, isMark } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { centsOfExact, wholeOf } from "../quantities/amounts.ts";
import type { Mention } from "../reading.ts";
import { CONTAINERS } from "../words/supplies.ts";
import type { Fill, Filled } from "./filled.ts";
import { trouble } from "./filled.ts";
import { unlisted } from "./unlisted.ts";

/** Whole cents of an amount token, or what is wrong with it. */
export function centsOfToken(token: Tok): { cents: Cents } | { trouble: Trouble } {
  const amount = token.amount!;
  if (amount.flaw) {
    const kinds = {
      decimals: "decimals",
      negative: "negative",
      large: "large",
      range: "range",
      vague: "vagueAmount",
    } as const;
    return trouble(kinds[amount.flaw]);
  }
  const found = centsOfExact(amount.exact!);
  return "flaw" in found ? trouble(found.flaw === "large" ? "large" : "decimals") : found;
}

/** How many pieces the clause names in all; null where that is not said. */
export function pieceCount(pieces: readonly Mention[]): number | null {
  let sum = 0;
  for (const { count } of pieces) {
    if (count === undefined) return null;
    sum += count;
  }
  return sum > 0 ? sum : null;
}

function timesCount(cents: Cents, clause: Clause): Filled {
  const pieces = clause.tokens.filter((token) => token.kind === "piece").map((token) => token.mention!);
  const named = pieces.length > 0 ? pieces : unlisted(clause);
  // "listed them for 40 each": how many they are, the clause before says.
  if (named.length === 0) return { value: cents, each: true, pending: true };
  const count = pieceCount(named);
  // "table with 4 chairs 25 each", "lamp and 2 stools 15 each": each of the several, or of all?
  const isWith = clause.tokens.some((token) => /^(?:with|w)$/.test(token.text));
  const mixed = named.length > 1 && (isWith || named.some((mention) => mention.count !== 1));
  // "bought stools 15 each": how many they are is asked, and the price waits for it.
  if (count === null && named.length === 1) return { value: cents, each: true, uncounted: true };
  if (count === null || mixed) return trouble("eachOfUnknown");
  const whole = centsOfExact({ digits: cents * count, scale: 2 });
  return "flaw" in whole ? trouble("large") : { value: whole.cents, each: true };
}

/** "on the 28" could be the day or the price. */
function couldBeDay(clause: Clause, token: Tok): boolean {
  const at = clause.tokens.indexOf(token);
  const whole = wholeOf(token.amount?.exact ?? null);
  if (token.amount?.money || token.each || whole === null) return false;
  const [before, last] = [clause.tokens[at - 2]?.text, clause.tokens[at - 1]?.text];
  // "on the 28" could be a day, "at 5" an hour.
  return (whole <= 31 && last === "the" && before === "on") || (whole <= 12 && last === "at");
}

/** "at 412 elm": a number between "at" and a word that nobody knows is a house's. */
function couldBeAddress({ tokens }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  const next = tokens[at + 1];
  return !token.amount?.money && /^(?:at|on)$/.test(tokens[at - 1]?.text ?? "") && next?.unknown === true;
}

/** "sold desk 190 hutch": nobody can say whether the price was for both. */
function standsBetweenPieces({ tokens, signs }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  return !signs.has("supply") && tokens[at - 1]?.kind === "piece" && tokens[at + 1]?.kind === "piece";
}

/** The one amount of a clause. Two of them, or one that could be something else, settle nothing. */
export const money: Fill = (clause) => {
  const amounts = freeTokens(clause, "amount");
  const [first, second] = amounts;
  if (isSharesOfThem(clause)) return trouble("twoNumbers");
  if (!first) return isTwoForFifteen(clause) ? trouble("twoNumbers") : null;
  if (second) {
    const flawed = amounts.map(centsOfToken).find((found) => "trouble" in found);
    return flawed && "trouble" in flawed ? flawed : trouble("twoNumbers");
  }
  if (couldBeDay(clause, first) || couldBeAddress(clause, first)) return trouble("twoNumbers");
  if (standsBetweenPieces(clause, first)) return trouble("priceOfBoth");
  claim(first);
  const found = centsOfToken(first);
  if ("trouble" in found) return found;
  if (isPerContainer(clause, first)) return trouble("vagueAmount");
  if (couldBeCount(clause, first) || countsOtherThings(clause, first)) return trouble("twoNumbers");
  if (isProductOfOthers(clause, first)) return trouble("twoNumbers");
  if (first.each) return timesCount(found.cents, clause);
  if (isAtSign(clause, first) && countsMoreThanOne(clause)) return trouble("twoNumbers");
  return { value: found.cents };
};

/** "sold 3/4 chairs 45": three of four, or the fourth of March? */
function isSharesOfThem({ tokens }: Clause): boolean {
  return tokens.some(
    (token, at) =>
      token.kind === "day" &&
      /^\d{1,2}\/\d{1,2}$/.test(token.text) &&
      tokens[at + 1]?.mention?.plural === true,
  );
}

/** "sold dresser 2x75": two of what? */
function isProductOfOthers({ tokens, signs }: Clause, token: Tok): boolean {
  const factor = wholeOf(token.amount?.factors?.[0] ?? null);
  if (factor === null || signs.has("supply")) return false;
  const count = pieceCount(tokens.flatMap(({ mention }) => (mention ? [mention] : [])));
  return count !== null && count !== factor;
}

/** "chairs 2/15" could be two of them for fifteen. */
function isTwoForFifteen(clause: Clause): boolean {
  const day = clause.tokens.find((token) => token.kind === "day" && /^\d{1,2}\/\d{1,2}$/.test(token.text));
  if (!day) return false;
  const count = Number(day.text.split("/")[0]);
  return clause.tokens.some(
    ({ mention }) =>
      mention !== undefined && (mention.plural === true || (count > 1 && mention.count === count)),
  );
}

/** "sold 8 lamp": eight lamps, or one for eight? */
function couldBeCount({ tokens, signs, head }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  const next = tokens[at + 1];
  // "bought 10 for 40 chairs"
  const several =
    (tokens[at + 2]?.mention?.count ?? 1) > 1 && next?.text === "for" && tokens[at - 1] === head;
  if (several && !token.amount?.money && !/^(?:paid|pd|got|gave|took|spent)$/.test(head?.text ?? ""))
    return true;
  const whole = wholeOf(token.amount?.exact ?? null);
  const isThing = next?.kind === "piece" || (next?.unknown === true && !signs.has("piece"));
  return isThing && !token.amount?.money && whole !== null && whole <= 12;
}

const OTHER_THINGS =
  /^(?:times|people|guys|buyers|offers|messages|kids|years?|yrs?|old|in|inches|inch|feet|ft|foot|drawers?|doors?|shelves|legs|percent|degrees|pounds|lbs|blocks|min away|away|am|pm|oclock|left|change)$/;

/** "sold desk 2 times": a number that counts something else. "40 in cash" is money. */
function countsOtherThings({ tokens, signs }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  const next = tokens[at + 1]?.text ?? "";
  if (isDifference(tokens, at)) return true;
  if (token.amount?.money || next === "in" || (next === "left" && signs.has("loan"))) return false;
  return OTHER_THINGS.test(next);
}

/** "sold bench for 5 less", "10 off": how far from another price. */
function isDifference(tokens: readonly Tok[], at: number): boolean {
  const next = tokens[at + 1];
  if (!next || next.claimed) return false;
  if (/^(?:less|under|over|below|above|cheaper)$/.test(next.text)) return true;
  return /^(?:off|more)$/.test(next.text) && (tokens[at + 2]?.kind ?? "mark") === "mark";
}

/** "20 a can": how many cans? */
function isPerContainer({ tokens }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  return /^(?:a|per)$/.test(tokens[at + 1]?.text ?? "") && isContainer(tokens[at + 2]);
}

/** "4 chairs @ 15": the price of one, or of all? */
function isAtSign(clause: Clause, token: Tok): boolean {
  return isMark(clause.tokens[clause.tokens.indexOf(token) - 1], "@");
}

function countsMoreThanOne(clause: Clause): boolean {
  return clause.tokens.some((token) => token.kind === "piece" && (token.mention?.count ?? 2) > 1);
}

const FEE = /(?:^|\s)fees?$|^commission$/;

/** "fee 6.60", "minus 5.25 fee": an amount beside the word. */
export const fee: Fill = (clause) => {
  const at = clause.tokens.findIndex(
    (token) => token.kind === "word" && FEE.test(token.text) && !token.claimed,
  );
  if (at < 0) return null;
  let nextAt = at + 1;
  while (/^(?:of|was|were|is|are|:|-|=|came to|total)$/.test(clause.tokens[nextAt]?.text ?? "")) nextAt += 1;
  const after = clause.tokens[nextAt];
  const before = clause.tokens[at - 1];
  // "sold hutch 220 fee 6.60" names the fee after the word; "220 minus 6.60 fee" before it.
  const token = after?.kind === "amount" ? after : before?.kind === "amount" ? before : undefined;
  claim(clause.tokens[at]!);
  if (!token || (freeTokens(clause, "amount").length < 2 && before === token)) return trouble("unclaimed");
  claim(token);
  // "150 after 10 fee": before the fee or after it?
  if (clause.tokens[clause.tokens.indexOf(token) - 1]?.text === "after") return trouble("vagueAmount");
  claimWords(clause, /^(?:minus|less)$/);
  const found = centsOfToken(token);
  return "trouble" in found ? found : { value: found.cents };
};

export const isContainer = (token: Tok | undefined): boolean =>
  token !== undefined && CONTAINERS.has(token.text);
