import type { Cents } from "../../money.ts";
import { isAmount, type Tok, textOf } from "../clause.ts";
import { lexedOf } from "../lexed.ts";
import { centsIn } from "../slots/money.ts";
import { meantBy } from "../tokens/meant.ts";
import { wordsOf } from "../tokens/text.ts";
import { language } from "../verbs.ts";
import {
  AROUND_KNOWN,
  CHANGED_HANDS,
  COMES_OFF,
  GOT_FOR_IT,
  HAGGLED_OVER,
  JOINS_KNOWN,
  KNOWN_BY,
  type Known,
  PAID_AT_ONCE,
  PART_PAID,
  STILL_OWED,
  THEIR_DOING,
  TO_COME,
} from "../words/known-sums.ts";
import { ARTICLES_WIDE } from "../words/links.ts";

/*
 * A text with several sums, where all but one may be no price: beside words of what a piece is listed at, what it cost, what
 * was put down for it or is left to pay. Which of them it is only the books can tell; here is what each may be by its words,
 * and the text without those that are.
 */

/** A sum of a text, what it may be beside the price by the words around it, and where those stand. */
export interface SumSaid {
  cents: Cents;
  known: ReadonlySet<Known>;
  /** The words around it, itself as "num". */
  said: string;
  /** It has still to be paid; it has been paid now. */
  isOwed: boolean;
  isNow: boolean;
  /** It came off. */
  isLess: boolean;
  /** Its words tell of haggling: of a deal, and of no other price than that. */
  isHaggled: boolean;
  /** The tokens that go with it, by their places. */
  places: ReadonlySet<number>;
}

/** The sums of a text, and the text without some of them, in each way in which what is left may be joined. */
export interface Summed {
  sums: readonly SumSaid[];
  without(sums: readonly SumSaid[]): string[];
  /** The text without some of them as one of a sale, where it says that we were paid. */
  asSale(sums: readonly SumSaid[]): string[];
  /** The text without some of them as one of what came in. */
  asGot(sums: readonly SumSaid[]): string[];
  /** Nothing but their own words and joints stands between the first of them and the last. */
  isRow: boolean;
  /** The text with one number in the place of all of them, with the words of the first and without. */
  asOne(cents: Cents): string[];
}

/** Beyond, a text is a list of notes. */
const TOKENS_MAX = 40;
const SUMS_MAX = 5;

/** The sums of a text of several; null where it is no such text, or a number in it is no sum. */
export function summedIn(text: string): Summed | null {
  const meant = meantBy(text, wordsOf(text), language().lexer);
  const { tokens } = lexedOf(meant);
  const at = tokens.flatMap((token, place) => (isAmount(token) && !isAllOf(tokens, place) ? [place] : []));
  if (tokens.length > TOKENS_MAX || at.length < 2 || at.length > SUMS_MAX) return null;
  const sums = at.flatMap((place) => {
    const cents = centsIn(tokens[place]!);
    return cents === null ? [] : [sumAt(tokens, place, cents)];
  });
  if (sums.length < at.length) return null;
  const typed = (token: Tok | string): string =>
    typeof token === "string"
      ? token
      : text.slice(meant.words[token.from]!.start, meant.words[token.to - 1]!.end);
  const written = (part: readonly (Tok | string)[]): string =>
    part
      .map(typed)
      .join(" ")
      .replace(/ ([,.;!?])/g, "$1");
  const [first, last] = [at[0]!, at.at(-1)!];
  const taken = (place: number): boolean => sums.some(({ places }) => places.has(place));
  const isRow = tokens
    .slice(first, last)
    .every(({ text: said }, place) => taken(first + place) || JOINS_KNOWN.has(said));
  return {
    sums,
    isRow,
    without: (out) => withoutPlaces(tokens, out).map(written),
    asSale: (out) => dealtIn(withoutPlaces(tokens, out), GOT_FOR_IT, ["sold"]).map(written),
    asGot: (out) =>
      withoutPlaces(tokens, out).map((way) =>
        written([
          "collected",
          ...way.filter((token) => typeof token === "string" || !COLLECTS.test(token.text)),
        ]),
      ),
    asOne: (cents) => {
      const price = (cents / 100).toFixed(2);
      const behind = tokens.slice(last + 1);
      const [own, bare] = [false, true].map((isBare) =>
        written([
          ...tokens.slice(0, first).filter((_, place) => !isBare || !sums[0]!.places.has(place)),
          price,
          ...behind.filter((_, place) => !taken(last + 1 + place)),
        ]),
      );
      return [own!, bare!];
    },
  };
}

/** "all three at the flea" */
const isAllOf = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at - 1]?.text === "all" && !tokens[at]!.amount?.money && /^[a-z]+$/.test(tokens[at]!.text);

function sumAt(tokens: readonly Tok[], at: number, cents: Cents): SumSaid {
  // "the 80 buffet": nothing goes with it but itself.
  const isOfPiece = tokens[at + 1]?.kind === "piece" && (at === 0 || ARTICLES_WIDE.has(tokens[at - 1]!.text));
  const from = isOfPiece ? Math.max(0, at - 1) : firstAround(tokens, at);
  const behind = lastAround(tokens, at);
  // What runs on to the next sum goes with that, and tells at most what lies between the two.
  const isRunOn = tokens[behind + 1] !== undefined && isAmount(tokens[behind + 1]!);
  const to = !isRunOn ? behind : OF_TAG.test(tokens[at + 1]!.text) ? at + 1 : at;
  const said = isOfPiece ? "num piece" : saidIn(tokens, from, to, at);
  const isTheirs = THEIR_DOING.test(said) || isSomebody(tokens[from - 1]);
  const known = new Set<Known>(tokens[at]!.each ? ["share"] : []);
  for (const [name, words] of Object.entries(KNOWN_BY) as [keyof typeof KNOWN_BY, RegExp][])
    if (words.test(name === "between" ? saidIn(tokens, from, behind, at) : said)) known.add(name);
  if (/^num(?: (?:tag|sticker|sign|price))?$/.test(said) && tokens[at - 1]?.kind === "piece")
    known.add("named");
  if (isTheirs || PART_PAID.test(said)) known.delete("cost");
  if (isOfAnother(tokens, from)) known.delete("was");
  const isHaggled = HAGGLED_OVER.test(said);
  const when = textOf(tokens.slice(at + 1, nextMark(tokens, at + 1)));
  const isOwed = STILL_OWED.test(said) || TO_COME.test(when);
  const isNow = PAID_AT_ONCE.test(when);
  const isTold = isHaggled || isOwed || known.has("thought") || known.has("tried");
  const places = new Set<number>();
  const end = isHaggled || isRunOn ? (isHaggled ? behind : to) : endOf(tokens, at, to, known, isOwed);
  for (let place = isOfPiece ? at : withSubject(tokens, from, isTold); place <= end; place += 1)
    if (tokens[place]!.kind !== "piece") places.add(place);
  return { cents, known, said, isOwed, isNow, isLess: COMES_OFF.test(said), isHaggled, places };
}

/** The next mark or sum from a place on, or the end. */
function nextMark(tokens: readonly Tok[], from: number): number {
  let at = from;
  while (at < tokens.length && tokens[at]!.kind !== "mark" && !isAmount(tokens[at]!)) at += 1;
  return at;
}

/** Where what is said of a sum ends: with how long it was, why it came off, and when it comes. */
function endOf(
  tokens: readonly Tok[],
  at: number,
  to: number,
  known: ReadonlySet<Known>,
  isOwed: boolean,
): number {
  const next = tokens[to + 1];
  if (next === undefined) return to;
  // "had it up at 240 for three weeks"
  if ((next.kind === "span" && to > at) || (next.kind === "day" && isOwed)) return to + 1;
  const isReason = tokens.slice(at + 1, to + 1).some(({ text }) => text === "for");
  if (!known.has("between") || !isReason || next.kind === "mark") return to;
  // "15 less for the sticky drawer"
  let end = to;
  while (end + 1 < tokens.length && tokens[end + 1]!.kind !== "mark" && !isKept(tokens[end + 1]!)) end += 1;
  const isWhole = end + 1 === tokens.length || tokens[end + 1]!.kind === "mark";
  return isWhole ? end : to;
}

/** A number, who bought it and how it was paid are no reason. */
const isKept = ({ kind, roles }: Tok): boolean =>
  kind === "amount" || kind === "piece" || roles.person === true || roles.method !== undefined;

/** "gas 30, lunch was 45": what such a sum is of was not spoken of before. */
function isOfAnother(tokens: readonly Tok[], from: number): boolean {
  const of = tokens[from - 1];
  if (of === undefined || JOINS_KNOWN.has(of.text)) return false;
  return !isThing(of) || tokens.slice(0, from - 1).some(isThing);
}

const isThing = ({ kind, roles }: Tok): boolean => kind === "piece" || roles.supply !== undefined;

/** The words around a sum, which stands in them as "num". */
function saidIn(tokens: readonly Tok[], from: number, to: number, at: number): string {
  return tokens
    .slice(from, to + 1)
    .flatMap(({ kind, text }, place) => (from + place === at ? "num" : kind === "piece" ? [] : text))
    .join(" ");
}

const isSomebody = (token: Tok | undefined): boolean =>
  token?.kind === "word" && (token.roles.person === true || token.unknown === true);

const isAround = ({ kind, text, roles }: Tok): boolean =>
  kind === "word" &&
  !JOINS_KNOWN.has(text) &&
  (roles.method !== undefined || text.split(" ").every((word) => AROUND_KNOWN.has(word)));

/** The first token that goes with the sum at a place; over a piece as well, where what stands before it is of the price. */
function firstAround(tokens: readonly Tok[], at: number): number {
  const from = backFrom(tokens, at);
  if (tokens[from - 1]?.kind !== "piece" || from === at) return from;
  const before = backFrom(tokens, from - 1);
  const isOfPrice = tokens.slice(before, from - 1).some(({ text }) => OF_PRICE.test(text));
  return isOfPrice ? before : from;
}

function backFrom(tokens: readonly Tok[], at: number): number {
  let from = at;
  while (from > 0 && isAround(tokens[from - 1]!)) from -= 1;
  return from;
}

/** Said in another word. */
const COLLECTS = /^(?:i|we|got|received|took|collected)$/;

/** "trunk's 75 sign came down to 65" */
const OF_TAG = /^(?:tag|sticker|sign|price)$/;

const OF_PRICE = new RegExp(`${HAGGLED_OVER.source}|\\b(?:tag|sticker|sign|price|ask)\\b`);

/** With who says or does it, where that opens what is said: "my sister thought". */
function withSubject(tokens: readonly Tok[], from: number, isTold: boolean): number {
  if (!isTold || !isSomebody(tokens[from - 1])) return from;
  const of = tokens[from - 2]?.text ?? "";
  const first = of === "my" || ARTICLES_WIDE.has(of) ? from - 2 : from - 1;
  const opener = tokens[first - 1];
  return opener === undefined || opener.kind === "piece" || JOINS_KNOWN.has(opener.text) ? first : from;
}

function lastAround(tokens: readonly Tok[], at: number): number {
  let to = at;
  while (to + 1 < tokens.length && isAround(tokens[to + 1]!)) to += 1;
  return to;
}

/** These stand where it was haggled over, and it changed hands: ours was sold, or another's bought. */
const DEALS = ["sold", "bought"];

/** The tokens that are left without some sums, in each way in which their joints may stand. */
function withoutPlaces(tokens: readonly Tok[], sums: readonly SumSaid[]): (Tok | string)[][] {
  const isOut = tokens.map((_, at) => sums.some(({ places }) => places.has(at)));
  const kept = (isJointLeft: boolean): Tok[] => {
    const left = tokens.filter((token, at) => {
      const isBeside = isOut[at - 1] === true || isOut[at + 1] === true;
      return !isOut[at] && (isJointLeft || !isBeside || !JOINS_KNOWN.has(token.text));
    });
    while (left.length > 0 && JOINS_KNOWN.has(left.at(-1)!.text)) left.pop();
    while (left.length > 0 && JOINS_KNOWN.has(left[0]!.text)) left.shift();
    return left;
  };
  const ways = [kept(false), kept(true)].filter(({ length }) => length > 0);
  return sums.some(({ isHaggled }) => isHaggled) ? dealtIn(ways, CHANGED_HANDS, DEALS) : ways;
}

/** Those that say one of these words, as told of a deal. */
function dealtIn(
  ways: readonly (readonly (Tok | string)[])[],
  says: RegExp,
  deals: readonly string[],
): (Tok | string)[][] {
  const done = ways.filter((way) => way.some((token) => typeof token !== "string" && says.test(token.text)));
  return deals.flatMap((deal) => done.map((way) => [deal, ...way]));
}
