import type { Cents } from "../../money.ts";
import type { Clause, Tok } from "../clause.ts";
import { claim, claimWords, freeTokens, isMark, placeAfter, placeBefore } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { centsOfExact, wholeOf } from "../quantities/amounts.ts";
import type { Mention } from "../reading.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { AND, BY, WHOSE } from "../words/links.ts";
import { AT_PRICE, COUNTED_THINGS, LESS, PARTS_OF_IT, PAYS, SAID_AGAIN } from "../words/money.ts";
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

/** Whole cents of an amount token; null where something is wrong with it. */
export function centsIn(token: Tok): Cents | null {
  const found = centsOfToken(token);
  return "cents" in found ? found.cents : null;
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
  // "knobs 2.50 each for the desk": how many knobs?
  if (clause.what) return trouble("eachOfUnknown");
  const pieces = clause.tokens.filter((token) => token.kind === "piece").map((token) => token.mention!);
  const named = pieces.length > 0 ? pieces : (clause.unlisted ?? unlisted(clause));
  // "listed them for 40 each": how many they are, the clause before says.
  if (named.length === 0) return { value: cents, each: true, pending: true };
  const count = pieceCount(named);
  // "table with 4 chairs 25 each", "lamp and 2 stools 15 each": each of the several, or of all?
  const isWith = () => clause.tokens.some(({ text }) => text === "with" || text === "w");
  const mixed = named.length > 1 && (isWith() || named.some((mention) => mention.count !== 1));
  // "bought stools 15 each": how many they are is asked, and the price waits for it.
  if (count === null && named.length === 1) return { value: cents, each: true, uncounted: true };
  if (count === null || mixed) return trouble("eachOfUnknown");
  const whole = centsOfExact({ digits: cents * count, scale: 2 });
  return "flaw" in whole ? trouble("large") : { value: whole.cents, each: true };
}

/** "on the 28" could be the day or the price. */
function couldBeDay({ tokens, head }: Clause, token: Tok, at: number): boolean {
  const last = tokens[at - 1]?.text;
  // "sold three chairs at 20 each and a stool at 8": told as the one before.
  if (last === "at" && tokens[at - 2]?.kind === "piece" && head && !tokens.includes(head)) return false;
  // "on the 28" could be a day, "at 5" an hour.
  const isDay = last === "the" && tokens[at - 2]?.text === "on";
  if (!(isDay || last === "at") || token.amount?.money || token.each || token.amount?.factors) return false;
  const whole = wholeOf(token.amount?.exact ?? null);
  return whole !== null && whole <= (isDay ? 31 : 12);
}

/** "at 412 elm": a number between "at" and a word that nobody knows is a house's. */
function couldBeAddress({ tokens }: Clause, token: Tok, at: number): boolean {
  const [last, next] = [tokens[at - 1]?.text, tokens[at + 1]];
  const isNamed = next?.unknown === true && !next.claimed;
  return (last === "at" || last === "on") && !token.amount?.money && isNamed;
}

/** "sold desk 190 hutch": nobody can say whether the price was for both. */
function standsBetweenPieces({ tokens, signs }: Clause, at: number): boolean {
  return !signs.has("supply") && tokens[at - 1]?.kind === "piece" && tokens[at + 1]?.kind === "piece";
}

/** The one amount of a clause. Two of them, or one that could be something else, settle nothing. */
export const money: Fill = (clause) => {
  const amounts = freeTokens(clause, "amount");
  const [first, second] = amounts;
  if (saysDay(clause) && isSharesOfThem(clause)) return trouble("twoNumbers");
  if (!first) return saysDay(clause) && isTwoForFifteen(clause) ? trouble("twoNumbers") : null;
  if (second) {
    const agreed = sumOfEach(clause, amounts) ?? sumOfWays(clause, amounts) ?? saidTwice(clause, amounts);
    if (agreed) return agreed;
    const flawed = amounts.map(centsOfToken).find((found) => "trouble" in found);
    return flawed && "trouble" in flawed ? flawed : trouble("twoNumbers");
  }
  return oneAmount(clause, first, clause.tokens.indexOf(first));
};

/** "3 chairs 15 each 45 total": two amounts that say the same. */
function sumOfEach(clause: Clause, amounts: readonly Tok[]): Filled {
  const each = amounts.find((token) => token.each);
  const total = amounts.find((token) => !token.each);
  if (amounts.length !== 2 || !each || !total) return null;
  const count = pieceCount(clause.tokens.flatMap(({ mention }) => (mention ? [mention] : [])));
  const [one, all] = [centsOfToken(each), centsOfToken(total)];
  if (count === null || !("cents" in one) || !("cents" in all) || one.cents * count !== all.cents)
    return null;
  claim(each, total);
  return { value: all.cents, each: true };
}

/** "100 cash 40 check": one price paid in two ways, whether or not the sum stands before them. */
function sumOfWays({ tokens }: Clause, amounts: readonly Tok[]): Filled {
  const methodOf = (token: Tok) => tokens[placeAfter(tokens, tokens.indexOf(token) + 1, BY)]?.roles.method;
  const ways = amounts.filter((token) => methodOf(token) !== undefined && !token.each);
  if (ways.length !== 2 || methodOf(ways[0]!) === methodOf(ways[1]!)) return null;
  const parts = ways.map(centsIn);
  const sum = parts[0] === null || parts[1] === null ? null : parts[0]! + parts[1]!;
  const others = amounts.filter((token) => !ways.includes(token));
  if (sum === null || others.length > 1 || others.some((token) => centsIn(token) !== sum)) return null;
  claim(...amounts);
  return { value: sum };
}

/** "paid two hundred on the loan, two hundred even", "one forty even": the same once more, and of nothing else. */
function saidTwice(clause: Clause, [first, second, ...others]: readonly Tok[]): Filled {
  const { tokens } = clause;
  const [from, to] = [tokens.indexOf(first!), tokens.indexOf(second!)];
  const behind = placeAfter(tokens, to + 1, SAID_AGAIN);
  // "5 5" may be a slip: said out loud, or as what it comes to.
  const isSaidSo = behind > to + 1 || (second!.amount?.money === true && /^[a-z]/.test(second!.text));
  const isOfSeveral = tokens.filter(({ roles }) => roles.supply !== undefined).length > 1;
  const isEnd =
    behind === tokens.length || tokens[behind]!.kind === "mark" || tokens[behind]!.roles.method !== undefined;
  const between = tokens.slice(from + 1, to);
  const isOther = others.length > 0 || first!.each || second!.each || !isEnd || !isSaidSo || isOfSeveral;
  if (isOther || between.some(({ kind, text }) => kind !== "word" || AND.has(text))) return null;
  const cents = centsIn(first!);
  const isSame = centsIn(second!) === cents || (cents !== null && second!.amount?.either?.includes(cents));
  // "2 lamps 20 20": of each of them, as likely.
  if (cents === null || !isSame || countsMoreThanOne(clause)) return null;
  claim(first!, second!);
  return { value: cents };
}

/** The amount at a place, where nothing beside it makes it something else. */
function oneAmount(clause: Clause, token: Tok, at: number): Filled {
  if (couldBeDay(clause, token, at) || couldBeAddress(clause, token, at)) return trouble("twoNumbers");
  if (standsBetweenPieces(clause, at)) return trouble("priceOfBoth");
  if (isPartOf(clause, at)) return trouble("vagueAmount");
  if (isPriceOfGrain(clause, at)) return trouble("twoNumbers");
  claim(token);
  const found = centsOfToken(token);
  if ("trouble" in found) return found;
  // "a buck forty" of screws is 1.40, of a desk as likely 140.
  if (token.amount?.either && !clause.signs.has("supply")) return trouble("vagueAmount");
  if (isPerContainer(clause, at)) return trouble("vagueAmount");
  if (couldBeCount(clause, token, at) || countsOtherThings(clause, token, at)) return trouble("twoNumbers");
  if (isProductOfOthers(clause, token)) return trouble("twoNumbers");
  if (token.each) return timesCount(found.cents, clause);
  // "4 chairs @ 15": the price of one, or of all?
  if (isMark(clause.tokens[at - 1], "@") && countsMoreThanOne(clause)) return trouble("twoNumbers");
  return { value: found.cents };
}

/** "gas 12 gal at 3.20": what one of them costs. */
function isPriceOfGrain({ tokens }: Clause, at: number): boolean {
  if (at < 2 || tokens[at - 2]!.kind !== "grain") return false;
  return AT_PRICE.has(tokens[at - 1]!.text) && !tokens[at]!.amount?.factors;
}

/** "refunded part of the 90": how much of it? */
function isPartOf({ tokens }: Clause, at: number): boolean {
  const before = placeBefore(tokens, at - 1, WHOSE);
  const text = tokens[before]?.text ?? "";
  if (text === "half of") return true;
  return text === "of" && PARTS_OF_IT.has(tokens[before - 1]?.text ?? "");
}

const saysDay = ({ signs }: Clause): boolean => (signs.hints & HINTS.day) !== 0;

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
  const factors = token.amount?.factors?.map(wholeOf);
  if (!factors || factors[0] === null || signs.has("supply")) return false;
  const count = pieceCount(tokens.flatMap(({ mention }) => (mention ? [mention] : [])));
  return count !== null && !factors.includes(count);
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
function couldBeCount(clause: Clause, token: Tok, at: number): boolean {
  const { tokens, signs, head } = clause;
  const next = tokens[at + 1];
  if (!next || token.amount?.money) return false;
  // "bought 10 for 40 chairs"
  const several = next.text === "for" && (tokens[at + 2]?.mention?.count ?? 1) > 1 && tokens[at - 1] === head;
  if (several && !PAYS.has(head?.text ?? "")) return true;
  // "paint 12 desk": what it cost, behind what was paid for.
  if (tokens[at - 1] === clause.what?.at(-1) && next.mention?.count === 1) return false;
  const isThing =
    (next.kind === "piece" && !next.text.startsWith("#")) || (next.unknown === true && !signs.has("piece"));
  const whole = isThing ? wholeOf(token.amount?.exact ?? null) : null;
  return whole !== null && whole <= 12;
}

/** "sold desk 2 times": a number that counts something else. "40 in cash" is money. */
function countsOtherThings({ tokens, signs }: Clause, token: Tok, at: number): boolean {
  const next = tokens[at + 1]?.text;
  if (next === undefined) return false;
  if (isDifference(tokens, at)) return true;
  if (token.amount?.money || next === "in" || (next === "left" && signs.has("loan"))) return false;
  return COUNTED_THINGS.has(next);
}

/** "sold bench for 5 less", "10 off": how far from another price. */
function isDifference(tokens: readonly Tok[], at: number): boolean {
  const next = tokens[at + 1];
  if (!next || next.claimed) return false;
  if (LESS.has(next.text)) return tokens[at + 2]?.kind !== "percent";
  return (next.text === "off" || next.text === "more") && (tokens[at + 2]?.kind ?? "mark") === "mark";
}

/** "20 a can": how many cans? */
function isPerContainer({ tokens }: Clause, at: number): boolean {
  const next = tokens[at + 1]?.text;
  return (next === "a" || next === "per") && isContainer(tokens[at + 2]);
}

function countsMoreThanOne(clause: Clause): boolean {
  return clause.tokens.some((token) => token.kind === "piece" && (token.mention?.count ?? 2) > 1);
}

const FEE = /(?:^|\s)fees?$|^commission$/;

/** "fee 6.60", "minus 5.25 fee": an amount beside the word. */
export const fee: Fill = (clause) => {
  const at = clause.tokens.findIndex(
    (token) => token.kind === "word" && FEE.test(token.text) && !token.claimed && !token.roles.hedge,
  );
  if (at < 0) return null;
  let nextAt = at + 1;
  while (/^(?:of|was|were|is|are|:|-|=|came to|total)$/.test(clause.tokens[nextAt]?.text ?? "")) nextAt += 1;
  const after = clause.tokens[nextAt];
  const before = clause.tokens[at - 1];
  // "sold hutch 220 fee 6.60" names the fee after the word; "220 minus 6.60 fee" before it.
  // "145 with 9.50 in fees"
  const linked = before?.text === "in" || before?.text === "of" ? clause.tokens[at - 2] : before;
  // "10% fee": of a price that is not known yet.
  if (after?.kind === "percent" || linked?.kind === "percent") return null;
  const token = after?.kind === "amount" ? after : linked?.kind === "amount" ? linked : undefined;
  claim(clause.tokens[at]!);
  if (!token || (freeTokens(clause, "amount").length < 2 && linked === token)) return trouble("unclaimed");
  claim(token);
  // "150 after 10 fee": before the fee or after it?
  if (clause.tokens[clause.tokens.indexOf(token) - 1]?.text === "after") return trouble("vagueAmount");
  claimWords(clause, /^(?:minus|less)$/);
  const found = centsOfToken(token);
  return "trouble" in found ? found : { value: found.cents };
};

export const isContainer = (token: Tok | undefined): boolean =>
  token !== undefined && CONTAINERS.has(token.text);
