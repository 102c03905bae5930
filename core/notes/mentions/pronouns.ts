import { placeBefore, type Tok, tokenBefore } from "../clause.ts";
import type { Mention } from "../reading.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { pieceToken } from "../tokens/token.ts";
import { bears } from "../verbs.ts";
import { ARTICLES } from "../words/filler.ts";
import { AND } from "../words/links.ts";
import {
  AS_BEFORE,
  AS_ONE,
  BE,
  EACH_ONE,
  FOR_ALL,
  GOES_TO,
  GROUPS,
  LEFT_OF,
  LIKE_IT,
  MORE,
  ONE,
  ONE_MORE,
  PAIRS,
  PIECES,
  PLACES,
  POINTS_OUT,
  SAME_PIECE,
  SEVERAL,
  STANDS_FOR_TRADED,
  THAT_ONE,
  WAS,
  WERE,
  WHEN,
  WORKED_ON,
} from "../words/pieces.ts";
import { countOf } from "./counts.ts";
import { inPlace, isDoneTo } from "./in-place.ts";
import { others, restOf } from "./pronouns-others.ts";
import { type Found, isHeadOf, isOfStanding, isPriced, isToldOf, verbAt } from "./pronouns-told.ts";

/*
 * Pieces told without their noun: "4 of them", "both", "the other one", "the white one". Which they are is for the
 * talk and the books to say.
 */

/** "all 12" may be pieces, "all 40" is rather money. */
const ALL_MAX = 12;
const TRAITS_MAX = 3;

/** Joins the words of each such mention into one token. */
export function withPronouns(tokens: Tok[]): Tok[] {
  if (!tokens.some(standsForPieces)) return tokens;
  const joined: Tok[] = [];
  for (let at = 0; at < tokens.length; ) {
    const found =
      traded(tokens, at) ??
      moreAlike(tokens, at) ??
      countedOf(tokens, at) ??
      both(tokens, at) ??
      allOf(tokens, at) ??
      restOf(tokens, at) ??
      others(tokens, at) ??
      placed(tokens, at) ??
      eachOf(tokens, at) ??
      theSame(tokens, at) ??
      described(tokens, at) ??
      inPlace(tokens, at);
    const last = found && tokens[found.to - 1]!;
    const before = found && ledBy(joined, tokens, at);
    if (found && before) {
      // "sold the desk to ana, the white one, 50"
      const { mention } = before;
      const traits = [...(mention!.traits ?? []), ...(found.mention.traits ?? [])];
      joined.splice(
        joined.indexOf(before),
        1,
        pieceToken(before.text, before.from, before.to, { ...mention!, traits }),
      );
      joined.pop();
    } else if (found && last) {
      const text = tokens.slice(at, found.to).map((token) => token.text);
      joined.push(pieceToken(text.join(" "), tokens[at]!.from, last.to, found.mention));
    } else joined.push(tokens[at]!);
    at = found?.to ?? at + 1;
  }
  return joined;
}

/** "it" and its like stand for what is traded, and are else left to the clause. */
function standsForPieces({ kind, text, hints }: Tok, at: number, tokens: readonly Tok[]): boolean {
  if (kind === "piece") {
    const blank = text.indexOf(" ");
    return blank > 0 && PLACES[text.slice(0, blank)] !== undefined;
  }
  if ((hints & HINTS.standsForPieces) === 0) return false;
  return !STANDS_FOR_TRADED.has(text) || isHeadOf(tokenBefore(tokens, at), isTrade);
}

const isTrade = (kind: string): boolean => kind === "trade";

/** "swapped it for a dresser": what is given in a trade. */
function traded(tokens: readonly Tok[], at: number): Found | null {
  if (!THAT_ONE.has(tokens[at]!.text) || !isHeadOf(tokenBefore(tokens, at), isTrade)) return null;
  return { mention: { it: true }, to: tokens[at + 1]?.text === "one" ? at + 2 : at + 1 };
}

/** "got another one just like it, 10", "bought 2 more 14". */
function moreAlike(tokens: readonly Tok[], at: number): Found | null {
  if (!isHeadOf(tokens[at - (ARTICLES.has(tokens[at - 1]?.text ?? "") ? 2 : 1)], (kind) => kind === "buy"))
    return null;
  const text = tokens[at]!.text;
  const [first, ...words] = text.split(" ");
  const isOne =
    text === "one more" || (ONE_MORE.has(first!) && (words.length === 0 || words.join(" ") === "one"));
  const count = isOne ? 1 : tokens[at + 1] && MORE.has(tokens[at + 1]!.text) ? countOf(tokens[at]) : null;
  if (count === null) return null;
  let to = at + (isOne ? 1 : 2);
  while (LIKE_IT.has(tokens[to]?.text ?? "")) to += 1;
  const isPlain = to === at + 1 && words.length === 0;
  return isPlain || !(isPriced(tokens, to) || isFrom(tokens, to))
    ? null
    : { mention: { alike: true, count }, to };
}

/** "found another one on the curb"; "got the second one free" is told of the first one's price. */
const isFrom = (tokens: readonly Tok[], to: number): boolean =>
  tokens.slice(to, to + PLACE_REACH).some(({ roles }) => roles.place !== undefined);
const PLACE_REACH = 3;

const COUNTS: Readonly<Record<string, number>> = { one: 1, pair: 2 };

/** "4 of them", "one of those", "half of them", "one is done". */
function countedOf(tokens: readonly Tok[], at: number): Found | null {
  const { text } = tokens[at]!;
  if (text === "half of" && SEVERAL.has(tokens[at + 1]?.text ?? ""))
    return { mention: { it: true, half: true }, to: at + 2 };
  const dozen = text === "half" && tokens[at + 1]?.text === "a" && tokens[at + 2]?.text === "dozen";
  const end = dozen ? at + 3 : PIECES.has(tokens[at + 1]?.text ?? "") ? at + 2 : at + 1;
  const count = dozen ? 6 : (countOf(tokens[at]) ?? COUNTS[text] ?? null);
  const isOfThem =
    tokens[end]?.text === "of" && (SEVERAL.has(tokens[end + 1]?.text ?? "") || isWhole(tokens, at, end));
  if (count !== null && isOfThem) return { mention: { it: true, count }, to: end + 2 };
  const of = tokens[end]?.text === "of" && POINTS_OUT.has(tokens[end + 1]?.text ?? "");
  // "gave one of the others away"
  if (count !== null && of && tokens[end + 2]?.text === "others")
    return { mention: { other: true, count }, to: end + 3 };
  if (count !== null && of && isSeveral(tokens[end + 2]))
    return { mention: { it: true, count }, to: end + (LEFT_OF.has(tokens[end + 3]?.text ?? "") ? 4 : 3) };
  return text === "one" ? oneOfThem(tokens, at) : someOfThem(tokens, at, count);
}

/** "the two", "the pair", and no price: "one of the two left". */
const isSeveral = (token: Tok | undefined): boolean =>
  token !== undefined && (PAIRS.has(token.text) || GROUPS.has(token.text) || (countOf(token) ?? 0) > 1);

/** "two are cracked so i scrapped them": so many of those spoken of. */
function someOfThem(tokens: readonly Tok[], at: number, count: number | null): Found | null {
  const isSome = at === 0 && count !== null && count > 1 && count <= ALL_MAX;
  return isSome && WERE.has(tokens[1]?.text ?? "") ? { mention: { it: true, count }, to: 1 } : null;
}

/** "one piece of it": of a set. */
const isWhole = (tokens: readonly Tok[], at: number, end: number): boolean =>
  end === at + 2 && tokens[end + 1]?.text === "it";

/** "one is done", "one was broken": one of those spoken of, and nothing that it is one of. */
function oneOfThem(tokens: readonly Tok[], at: number): Found | null {
  const [before, next] = [tokens[at - 1], tokens[at + 1]];
  const isFirst = tokens.slice(0, at).every(({ kind, roles }) => kind === "mark" || roles.filler === true);
  // "one was broken, tossed it"
  const isLed = isFirst && next !== undefined && (isOfStanding(next) || WAS.has(next.text));
  // "this one went for 180": the one that is spoken of.
  if (isLed && THAT_ONE.has(before?.text ?? "")) return { mention: { it: true }, to: at + 1 };
  return isLed ? { mention: { it: true, count: 1 }, to: at + 1 } : null;
}

/** Two pieces joined by "and", right before. */
function isPairBefore(tokens: readonly Tok[], at: number): boolean {
  if (tokens[at - 1]?.kind !== "piece") return false;
  const joint = placeBefore(tokens, at - 2, ARTICLES);
  return AND.has(tokens[joint]?.text ?? "") && tokens[joint - 1]?.kind === "piece";
}

/** "sandpaper too, 4.50, same piece", "glue 6 for that same one": the one spoken of. */
function theSame(tokens: readonly Tok[], at: number): Found | null {
  const from = POINTS_OUT.has(tokens[at]!.text) ? at + 1 : at;
  const before = tokens[at - 1];
  if (tokens[from]?.text !== "same" || !SAME_PIECE.has(tokens[from + 1]?.text ?? "")) return null;
  const next = tokens[from + 2];
  const isEnd = next === undefined || next.kind === "mark" || AS_BEFORE.has(next.text);
  const isOf = before !== undefined && (before.kind === "mark" || FOR_ALL.has(before.text)) && isEnd;
  const isTold = before === undefined && next !== undefined && (isOfStanding(next) || BE.has(next.text));
  return isOf || isTold ? { mention: { it: true }, to: from + 2 } : null;
}

/** "sold both 110", "wax 8 for both", "they both sold 58": nothing that they are behind it. */
function both(tokens: readonly Tok[], at: number): Found | null {
  const mention: Mention = { it: true, count: 2 };
  if (tokens[at]!.text === "both of them") return { mention, to: at + 1 };
  // "sold them both for 170"
  if (tokens[at]!.text === "them" && tokens[at + 1]?.text === "both") return { mention, to: at + 2 };
  const isThey = tokens[at]!.text === "they" || SEVERAL.has(tokens[at]!.text);
  const word = isThey && tokens[at + 1]?.text === "both" ? at + 1 : at;
  // "did both pieces"
  const from = tokens[word]!.text === "both" && PIECES.has(tokens[word + 1]?.text ?? "") ? word + 1 : word;
  const next = tokens[from + 1];
  const isVerb =
    verbAt(tokens, from + 1)?.roles.heads?.some(({ kind }) => bears(kind, "standing pieces")) === true;
  // "dresser and desk both done": of those two.
  if (tokens[at]!.text === "both" && isPairBefore(tokens, at)) return null;
  const isTold = (token: Tok | undefined): boolean => token !== undefined && isOfStanding(token);
  const isAmount =
    next?.kind === "amount" ||
    next?.kind === "duration" ||
    (isTold(tokens[from - 1]) && isPriced(tokens, from + 1));
  const isTime = next !== undefined && (next.kind === "day" || WHEN.has(next.text));
  // "listed both, desk 90 hutch 160" goes on to name them.
  const isMarked = next?.kind === "mark" || (isTime && tokens[from + 2]?.kind === "mark");
  const isNamed =
    isListing(tokens[at - 1]) && tokens.slice(from + 1).filter(({ kind }) => kind === "piece").length > 1;
  const isAlone = next === undefined || next.kind === "mark" || isVerb || isAmount || isTime;
  return tokens[word]!.text === "both" && isAlone && !(isMarked && isNamed)
    ? { mention, to: from + 1 }
    : null;
}

const isListing = (token: Tok | undefined): boolean =>
  isHeadOf(token, (kind) => kind === "list" || kind === "sell");

/** "sold all three 75", "fabric 9 for all 3", "all four of them are done". */
function allOf(tokens: readonly Tok[], at: number): Found | null {
  const before = tokens[at - 1];
  const isTold =
    !before ||
    before.kind === "mark" ||
    FOR_ALL.has(before.text) ||
    isToldOf(before) ||
    before.roles.labor !== undefined;
  // "those two are up": in letters, a number at the beginning is no price.
  const isSpelled = /^[a-z]+$/.test(tokens[at + 1]?.text ?? "");
  // "paint for them 9" ends with its price.
  const isPrice = before !== undefined && FOR_ALL.has(before.text) && tokens[at + 2] === undefined;
  const isFew = SEVERAL.has(tokens[at]!.text) && (isSpelled || (before !== undefined && !isPrice));
  const isAll = tokens[at]!.text === "all" || isFew;
  const count = isAll && isTold ? countOf(tokens[at + 1]) : null;
  if (count === null || count < 2 || count > ALL_MAX) return null;
  const of = tokens[at + 2]?.text === "of" && SEVERAL.has(tokens[at + 3]?.text ?? "");
  const to = at + (of ? 4 : 2);
  const next = tokens[to];
  const isAlone =
    next === undefined ||
    next.kind === "mark" ||
    next.kind === "duration" ||
    next.kind === "day" ||
    WHEN.has(next.text) ||
    AS_ONE.has(next.text) ||
    isOfStanding(next) ||
    next.roles.method !== undefined ||
    isPriced(tokens, to);
  return isAlone ? { mention: { it: true, count }, to } : null;
}

/** "sanded the first one", "finished the second chair", "first one sold": which of several, and no purchase. */
function placed(tokens: readonly Tok[], at: number): Found | null {
  const isPointedOut = POINTS_OUT.has(tokens[at]!.text);
  const isNamed = tokens[at]!.mention?.name !== undefined;
  if (!isPointedOut && (at === 0 ? isNamedBehind(tokens) : !isNamed)) return null;
  const from = isPointedOut ? at + 1 : at;
  const [word = ""] = tokens[from]?.text.split(" ") ?? [];
  const place = PLACES[word];
  const isBought = isNewTold(tokens, at, from);
  if (place === undefined || isBought) return null;
  const { mention } = tokens[from]!;
  if (mention?.name !== undefined) {
    const { traits = [], ...rest } = mention;
    const others = traits.filter((trait) => trait !== word);
    const isOne = mention.count === 1 && mention.number === undefined;
    const named = { ...rest, ...(others.length > 0 ? { traits: others } : {}), place };
    return isOne ? { mention: named, to: from + 1 } : null;
  }
  return tokens[from + 1]?.text === "one" ? { mention: { it: true, count: 1, place }, to: from + 2 } : null;
}

/** "bought a second chair", "second chair bought"; "got the second chair done" is of ours. */
function isNewTold(tokens: readonly Tok[], at: number, from: number): boolean {
  const [before, next] = [tokens[placeBefore(tokens, at - 1, ARTICLES)], tokens[from + 1]];
  const goes = next !== undefined && (isOfStanding(next) || GOES_TO.has(next.text));
  const isBuy = (token: Tok | undefined): boolean => isHeadOf(token, (kind) => kind === "buy");
  if (isBuy(before) && !isToldOf(before!)) return !isDoneTo(tokens, tokens.indexOf(before!), goes);
  return isBuy(next) && !isToldOf(next!);
}

/** "first one out the door, the clock, 35": it is named behind its mark. */
const isNamedBehind = (tokens: readonly Tok[]): boolean =>
  tokens.some(({ kind, mention }, at) => {
    const before = tokens[placeBefore(tokens, at - 1, ARTICLES)];
    return kind === "piece" && mention?.name !== undefined && before?.kind === "mark";
  });

/** "1h on each", "30 min on each of them": time that each of those spoken of took. */
function eachOf(tokens: readonly Tok[], at: number): Found | null {
  const [time, on] = [tokens[at - 2], tokens[at - 1]];
  const isOnEach =
    EACH_ONE.has(tokens[at]!.text) && WORKED_ON.has(on?.text ?? "") && time?.kind === "duration";
  if (!isOnEach) return null;
  const isOf = tokens[at + 1]?.text === "of" && SEVERAL.has(tokens[at + 2]?.text ?? "");
  const to = isOf ? at + 3 : at + 1;
  return tokens[to] === undefined || tokens[to]!.kind === "mark"
    ? { mention: { it: true, plural: true, each: true }, to }
    : null;
}

/** The piece that "the white one" behind a comma describes. */
function ledBy(joined: readonly Tok[], tokens: readonly Tok[], at: number): Tok | null {
  if (joined.at(-1)?.text !== "," || described(tokens, at)?.mention.count !== 1) return null;
  const from = joined.findLastIndex(({ kind }) => kind === "piece");
  const { name, number, count } = joined[from]?.mention ?? {};
  const isOne = name !== undefined && number === undefined && count === 1;
  const isNext = joined
    .slice(from + 1, -1)
    .every(({ kind, text, roles }) => kind === "word" && !AND.has(text) && !roles.heads);
  return isOne && isNext ? joined[from]! : null;
}

/** "the white one", "that small oak one", "listed tall one 70". */
function described(tokens: readonly Tok[], at: number): Found | null {
  const isPointedOut = POINTS_OUT.has(tokens[at]!.text);
  const before = tokens[at - 1];
  if (!isPointedOut && before && !isToldOf(before)) return null;
  const start = isPointedOut ? at + 1 : at;
  let to = start;
  while (tokens[to]?.kind === "word" && tokens[to]!.roles.trait) to += 1;
  const traits = tokens.slice(start, to).flatMap(({ text }) => text.split(" "));
  if (traits.length === 0 || traits.length > TRAITS_MAX || !ONE.has(tokens[to]?.text ?? "")) return null;
  const mention: Mention = tokens[to]!.text === "ones" ? { traits, plural: true } : { traits, count: 1 };
  return { mention, to: to + 1 };
}
