import type { Clause, Tok } from "../clause.ts";
import { asMeant, asSaid, claim, freeTokens, isMark } from "../clause.ts";
import type { Exact } from "../quantities/amounts.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { smallNumberAt } from "../quantities/spelled.ts";
import type { Category } from "../reading.ts";
import { SPENT_ON } from "../words/links.ts";
import { SAYS_MONEY, UNCOUNTED } from "../words/money.ts";
import { CONTAINERS } from "../words/supplies.ts";
import { MEASURES, ONE_MEASURE } from "../words/units.ts";
import type { Fill, Filled } from "./filled.ts";
import { isContainer } from "./money.ts";
import { afterArticles } from "./names.ts";

function isWhatWord(token: Tok | undefined): boolean {
  if (token?.kind !== "word" || token.roles.heads?.some((head) => !head.light)) return false;
  if (token.roles.supply || token.roles.trait || token.roles.stream) return true;
  return (token.unknown === true || token.roles.person === true) && !token.claimed;
}

/** The supply's own words with those before it that belong to it: "orbital sander", "screws and hinges". */
export const what: Fill = (clause) => {
  const { tokens } = clause;
  let first = tokens.findIndex(
    (token) => token.kind === "word" && token.roles.supply !== undefined && !token.claimed,
  );
  if (first < 0) return whatAfterOn(clause);
  let last = first;
  tokens.forEach((token, at) => {
    if (at > first && token.kind === "word" && token.roles.supply && !token.claimed)
      last = joinsSupplies(tokens, last, at) ? at : last;
  });
  countedAfter(clause, last);
  while (
    first > 0 &&
    isWhatWord(tokens[first - 1]) &&
    !tokens[first - 1]!.roles.person &&
    !isContainer(tokens[first - 1])
  )
    first -= 1;
  countedSupply(clause, first, last);
  clause.what = tokens.slice(first, last + 1);
  claim(...clause.what);
  const named = clause.what.filter((token) => !isMeasured(token));
  return { value: asMeant(clause, named) };
};

function joinsSupplies(tokens: readonly Tok[], last: number, at: number): boolean {
  return tokens
    .slice(last + 1, at)
    .every(
      (token) =>
        /^(?:and|plus|&|[+,/]|some|the|a|more)$/.test(token.text) || isMeasured(token) || isWhatWord(token),
    );
}

/** "A quart of", "two sheets": how much of the next supply there was. */
const isMeasured = ({ kind }: Tok): boolean => kind === "grain";

/** "2 cans of primer 36", "8 knobs 20": a count of supplies is no amount where an amount stands beside it. */
function countedSupply(clause: Clause, first: number, last: number): void {
  let at = first - 1;
  if (at < 0) return;
  if (clause.tokens[at]!.text === "of") at -= 1;
  const contained = isContainer(clause.tokens[at]);
  if (contained) {
    claim(clause.tokens[at]!);
    at -= 1;
  }
  const token = clause.tokens[at];
  const measured = token?.kind === "grain" ? measuresIn(token) : null;
  if (measured?.isCounted) ofEachMeasure(clause, measured.count, last);
  if (token?.kind !== "amount" || token.amount?.money || token.each || token.claimed) return;
  const others = freeTokens(clause, "amount").filter((other) => other !== token);
  // "bought 3 cans of paint" counts them, and what they cost is asked.
  if (others.length === 0 && ((contained && clause.head) || isCountOfThem(clause, first))) claim(token);
  if (others.length !== 1) return;
  const other = others[0]!;
  const count = wholeOf(token.amount?.exact ?? null);
  if (count === null) return;
  // "two cans of lacquer at 8.99": of one, or of both?
  const link = clause.tokens[last + 1]?.text;
  if (contained && !other.each && link === "at") return;
  // "2 for 5 brushes": five of them for 2, or two for 5?
  if (clause.tokens[at - 1]?.text === "for" && isFewer(other, count)) return;
  claim(token);
  if ((other.each || link === "@") && other.amount?.exact) multiply(other, count);
}

/** "2 gallons paint @ 30", "3 quarts of stain 9 each": the price of one measure is paid for all of them. */
function ofEachMeasure(clause: Clause, count: number, last: number): void {
  const [price, ...others] = freeTokens(clause, "amount");
  const isOfOne = price?.each || clause.tokens[last + 1]?.text === "@";
  if (price?.amount?.exact && others.length === 0 && isOfOne) multiply(price, count);
}

/** How many measures it says: "2 gallons"; a "5 gallon" pail is one, or five are counted. */
export function measuresIn({ text }: Tok): { count: number; isCounted: boolean } | null {
  const words = text.split(" ");
  const unit = words.at(-1)!;
  const count = Number(words[0]) || smallNumberAt(words, 0)?.value;
  return count !== undefined && (MEASURES.has(unit) || CONTAINERS.has(unit))
    ? { count, isCounted: !ONE_MEASURE.has(unit) }
    : null;
}

/** "4 casters", "got 2 brushes": so many of them; "20 supplies" and "18 tolls" are amounts. */
function isCountOfThem({ tokens, head }: Clause, first: number): boolean {
  const { text, roles } = tokens[first]!;
  const isMoney = head !== undefined && SAYS_MONEY.test(head.text);
  return !isMoney && /[^s]s$/.test(text) && COUNTABLE.has(roles.supply ?? "") && !UNCOUNTED.has(text);
}

const COUNTABLE: ReadonlySet<string> = new Set(["materials", "tools"]);

/** "drawer pulls 6 at 3.50", "spray paint 3 cans 5.97 each" are so many of them; "knobs 6 for 15" is fifteen for all. */
function countedAfter(clause: Clause, last: number): void {
  const comma = isMark(clause.tokens[last + 1], ",") ? 1 : 0;
  const [count, ...rest] = clause.tokens.slice(last + 1 + comma, last + 5 + comma);
  if (count?.kind === "count") claim(count);
  const container = isContainer(rest[0]) ? rest.shift() : undefined;
  const link = /^(?:at|@|for)$/.test(rest[0]?.text ?? "") ? rest.shift() : undefined;
  const [price] = rest;
  if (!count || price?.kind !== "amount" || (!link && !price.each)) return;
  // "sandpaper 4 packs at 3.99": of one, or of all four?
  if (container && link?.text === "at" && !price.each) return;
  const whole = countIn(count, price, link?.text);
  if (whole === null || !price.amount?.exact || (link?.text === "for" && isFewer(price, whole))) return;
  claim(count, ...(container ? [container] : []));
  if (link?.text !== "for" || price.each) multiply(price, whole);
}

/** How many it says; "2 gal" counts where the price is that of each. */
function countIn(token: Tok, price: Tok, link: string | undefined): number | null {
  const { kind, amount } = token;
  if (kind === "amount") return amount!.money ? null : wholeOf(amount!.exact);
  const measured = kind === "grain" ? measuresIn(token) : null;
  return measured && (price.each || (link === "@" && measured.isCounted)) ? measured.count : null;
}

/** "paint 36 for 2": two of them for 36, or 36 for two dollars? */
const isFewer = ({ amount }: Tok, count: number): boolean =>
  !amount!.money && amount!.exact!.digits < count * 10 ** amount!.exact!.scale;

/** Makes the price of one into that of all. */
function multiply(token: Tok, count: number): void {
  const { digits, scale } = token.amount!.exact!;
  const factors: [Exact, Exact] = [
    { digits: count, scale: 0 },
    { digits, scale },
  ];
  token.amount = { ...token.amount!, exact: { digits: digits * count, scale }, factors };
  delete token.each;
}

const isPlain = (token: Tok | undefined): boolean =>
  token?.kind === "word" && token.roles.plain === true && !token.roles.filler && !token.roles.heads;

/** "spent 15 on lunch": what is said after "on" or "for". */
function whatAfterOn(clause: Clause): Filled {
  const { tokens } = clause;
  for (let at = 0; at < tokens.length - 1; at += 1) {
    if (!SPENT_ON.has(tokens[at]!.text)) continue;
    const start = afterArticles(tokens, at + 1);
    let end = start;
    while ((isWhatWord(tokens[end]) || isPlain(tokens[end])) && !tokens[end]!.claimed) end += 1;
    if (end === start) continue;
    claim(tokens[at]!, ...tokens.slice(start, end));
    return { value: asSaid(clause, tokens.slice(start, end)) };
  }
  return null;
}

/** The category of the last supply named; `help` where hands are paid; else other. */
export const category: Fill = (clause) => {
  const supplies = (clause.what ?? clause.tokens).filter(
    (token) => token.kind === "word" && token.roles.supply !== undefined,
  );
  const joined = supplies.some((token) =>
    /^(?:and|&|,)$/.test(clause.tokens[clause.tokens.indexOf(token) + 1]?.text ?? ""),
  );
  const last = joined ? supplies[0] : supplies.at(-1);
  const found: Category = clause.signs.has("helper") ? "help" : (last?.roles.supply ?? "other");
  return { value: found };
};
