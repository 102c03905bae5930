import { placeBefore, type Tok } from "../clause.ts";
import type { Mention } from "../reading.ts";
import { bears } from "../verbs.ts";
import { AND, BEFORE_PRICE } from "../words/links.ts";
import {
  ANOTHER,
  AS_ONE,
  AS_WELL,
  BE,
  FOR_ALL,
  GOES_ON,
  GOES_TO,
  GROUPS,
  LESSENS,
  PAIRS,
  POINTS_OUT,
  WHEN,
} from "../words/pieces.ts";
import { OF_ASKING } from "../words/replies.ts";
import { SOMEBODY } from "../words/telling.ts";
import { type Found, isHeadOf, isOfStanding, isPriced, isToldOf, verbAt } from "./pronouns-told.ts";

/*
 * A count or a group with no noun, wherever a piece can stand: behind a verb of pieces that are here ("sold her one, 50",
 * "listed the set 90"), behind what money, time or a hold goes to ("25 down on one from amy"), before such a verb ("the pair
 * is gone").
 */

/** Behind "for" all of the money, or what of it is still to come. */
const GROUPS_OF_MONEY: ReadonlySet<string> = new Set(["lot", "rest"]);

/** What is told so, where a piece can stand. */
export function inPlace(tokens: readonly Tok[], at: number): Found | null {
  const told = groupAt(tokens, at);
  return told && (isObject(tokens, at, told.to) || isSubject(tokens, at, told.to)) ? told : null;
}

/** "one", "the one", "another one", "the pair", "the set", "both", "the last one". */
function groupAt(tokens: readonly Tok[], at: number): Found | null {
  const from = POINTS_OUT.has(tokens[at]!.text) ? at + 1 : at;
  const text = tokens[from]?.text ?? "";
  const found = (mention: Mention, to = from + 1): Found => ({ mention, to });
  // "sold that one 40" is of the very piece.
  if (text === "one") return tokens[at]!.text === "that" ? null : found({ it: true, count: 1 });
  if (from === at) {
    // "put another hundred on the loan"
    const isMoney = text === "another" && tokens[from + 1]?.kind === "amount";
    if (ANOTHER.has(text)) return isMoney ? null : found({ other: true, count: 1 });
    return text === "both" ? found({ it: true, count: 2 }) : null;
  }
  if (PAIRS.has(text)) return found({ it: true, count: 2 });
  if (GROUPS.has(text)) return found({ it: true, plural: true });
  // "2h on the rest", "40 down on the rest from ana"
  if (text === "rest" && tokens[at]!.text === "the") return found({ other: true, plural: true });
  // "25 down on the other from rosa"; "got the other 20" is money.
  const isOfSupply = FOR_ALL.has(tokens[at - 1]?.text ?? "") && tokens[at - 2]?.roles.supply !== undefined;
  const isOther = text === "other" && (isOfSupply || tokens[from + 1]?.kind !== "amount");
  if (isOther) return found({ other: true, count: 1 });
  if (tokens[from + 1]?.text !== "one") return null;
  if (text === "remaining") return found({ other: true, count: 1 }, from + 2);
  return text === "last" ? found({ other: true, count: 1, last: true }, from + 2) : null;
}

function isObject(tokens: readonly Tok[], at: number, to: number): boolean {
  const led = placeBefore(tokens, at - 1, LESSENS);
  const before = tokens[led];
  if (!before || !endsPiece(tokens, to)) return false;
  // "17.40 for the lot", "paid 40 for the rest"
  if (FOR_ALL.has(lastWordOf(before))) {
    const told = tokens.slice(0, led);
    if (isHeadOf(before, isAtWork)) return true;
    const isMoney = GROUPS_OF_MONEY.has(tokens[to - 1]!.text) && !told.some(isOfPieces) && !isHold(before);
    return !isMoney && isGoneTo(told);
  }
  // "he paid the rest, 50"
  if (tokens[to - 1]!.text === "rest") return before.roles.labor === true || isHold(before);
  const verb = SOMEBODY.has(before.text) || before.roles.person === true ? led - 1 : led;
  const next = tokens[to];
  const goes = next !== undefined && (GOES_TO.has(next.text) || isOfStanding(next));
  return isDoneTo(tokens, verb, verb < led || goes);
}

/**
 * A verb of what becomes of pieces here; one that may as well be of buying only where somebody else does it ("she took
 * one") or it goes somewhere ("gave her one", "dropped one to 50").
 */
export function isDoneTo(tokens: readonly Tok[], at: number, goes: boolean): boolean {
  const verb = tokens[at];
  if (!verb) return false;
  if (verb.roles.labor === true || isHold(verb)) return true;
  if (!isHeadOf(verb, isBuy)) return isToldOf(verb);
  const acts = tokens[placeBefore(tokens, at - 1, LESSENS)];
  // "amy bought one, 150", but "pete found another one"
  const isName = acts?.unknown === true && !ANOTHER.has(tokens[at + 1]!.text);
  return acts?.roles.person === true || isName || (goes && isOfStanding(verb));
}

const isBuy = (kind: string): boolean => kind === "buy";

/** "up" of "put one up for 70". */
const firstWordOf = (text: string): string => (text.includes(" ") ? text.slice(0, text.indexOf(" ")) : text);

/** "on" of "20 down on one". */
const lastWordOf = ({ text }: Tok): string => text.slice(text.lastIndexOf(" ") + 1);

/** "paint 9 for the pair", "got 150 for one"; "nightstands sold 75 for the pair" is what they brought together. */
const isGoneTo = (told: readonly Tok[]): boolean =>
  told.some(goesToPieces) && !told.some(({ kind, roles }) => kind === "piece" || roles.pronoun === true);

const goesToPieces = (token: Tok): boolean => token.kind === "amount" || isOfPieces(token);

/** What is done to pieces, bought or asked for them. */
const isOfPieces = (token: Tok): boolean =>
  token.kind === "duration" ||
  token.roles.labor === true ||
  token.roles.supply !== undefined ||
  OF_ASKING.has(token.text);

const isAtWork = (kind: string): boolean => kind === "work" || kind === "start";

/** "holding", "on hold"; "another deposit on the desk" is money. */
const isHold = (token: Tok): boolean =>
  isHeadOf(token, (kind) => kind === "hold") && !isHeadOf(token, (kind) => kind === "fallthrough");

/** What may come behind a piece, and is none of its own words. */
function endsPiece(tokens: readonly Tok[], to: number): boolean {
  const next = tokens[to];
  if (next === undefined) return true;
  const { kind, text, roles } = next;
  if (kind === "word")
    return (
      isOfStanding(next) ||
      WHEN.has(text) ||
      AS_WELL.has(text) ||
      AS_ONE.has(text) ||
      GOES_ON.has(firstWordOf(text)) ||
      roles.method !== undefined ||
      (BEFORE_PRICE.has(text) && isPriced(tokens, to))
    );
  return kind !== "piece";
}

function isSubject(tokens: readonly Tok[], at: number, to: number): boolean {
  const before = tokens[placeBefore(tokens, at - 1, LESSENS)];
  if (before && before.kind !== "mark" && !AND.has(before.text)) return false;
  // "the other 2h"
  if (tokens[to]?.kind === "duration" && tokens[at]!.text === "the") return true;
  const verb = verbAt(tokens, to);
  if (!verb) return false;
  // "the other is on hold"
  const isBe =
    BE.has(verb.text) && tokens[to + 1]?.roles.heads?.some(({ kind }) => bears(kind, "of pieces")) === true;
  return isOfStanding(verb) || isBe || isHold(verb);
}
