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
import { SOMEBODY } from "../words/telling.ts";
import { type Found, isHeadOf, isOfStanding, isPriced, isToldOf, verbAt } from "./pronouns-told.ts";

/*
 * A count or a group with no noun, wherever a piece can stand: behind a verb of pieces that are here ("sold her one, 50",
 * "listed the set 90"), behind what money, time or a hold goes to ("25 down on one from amy"), before such a verb ("the pair
 * is gone").
 */

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
  // "25 down on the other from rosa"; "got the other 20" is money.
  const isOther = text === "other" && tokens[from + 1]?.kind !== "amount";
  if (isOther) return found({ other: true, count: 1 });
  if (tokens[from + 1]?.text !== "one") return null;
  if (text === "remaining") return found({ other: true, count: 1 }, from + 2);
  return text === "last" ? found({ other: true, count: 1, last: true }, from + 2) : null;
}

function isObject(tokens: readonly Tok[], at: number, to: number): boolean {
  const led = placeBefore(tokens, at - 1, LESSENS);
  const before = tokens[led];
  if (!before || !endsPiece(tokens, to)) return false;
  // "17.40 for the lot"
  if (FOR_ALL.has(lastWordOf(before)))
    return tokens[to - 1]!.text !== "lot" && isGoneTo(tokens.slice(0, led));
  const verb = SOMEBODY.has(before.text) || before.roles.person === true ? led - 1 : led;
  return isDoneTo(tokens, verb, verb < led || GOES_TO.has(tokens[to]?.text ?? ""));
}

/**
 * A verb of what becomes of pieces here; one that may as well be of buying only where somebody else does it ("she took
 * one") or it goes somewhere ("gave her one", "dropped one to 50").
 */
function isDoneTo(tokens: readonly Tok[], at: number, goes: boolean): boolean {
  const verb = tokens[at];
  if (!verb) return false;
  if (!isHeadOf(verb, isBuy)) return isToldOf(verb);
  const acts = tokens[placeBefore(tokens, at - 1, LESSENS)];
  return acts?.roles.person === true || (goes && isOfStanding(verb));
}

const isBuy = (kind: string): boolean => kind === "buy";

/** "on" of "20 down on one". */
const lastWordOf = ({ text }: Tok): string => text.slice(text.lastIndexOf(" ") + 1);

/** "paint 9 for the pair"; "nightstands sold 75 for the pair" is what they brought together. */
const isGoneTo = (told: readonly Tok[]): boolean =>
  told.some(goesToPieces) && !told.some((token) => token.kind === "piece" || isOfStanding(token));

const goesToPieces = ({ kind, roles }: Tok): boolean =>
  kind === "amount" || kind === "duration" || roles.labor === true;

/** What may come behind a piece, and is none of its own words. */
function endsPiece(tokens: readonly Tok[], to: number): boolean {
  const next = tokens[to];
  if (next === undefined) return true;
  const { kind, text, roles } = next;
  if (kind === "word")
    return (
      WHEN.has(text) ||
      AS_WELL.has(text) ||
      AS_ONE.has(text) ||
      GOES_ON.has(text) ||
      roles.method !== undefined ||
      (BEFORE_PRICE.has(text) && isPriced(tokens, to))
    );
  return kind !== "piece";
}

function isSubject(tokens: readonly Tok[], at: number, to: number): boolean {
  const before = tokens[placeBefore(tokens, at - 1, LESSENS)];
  if (before && before.kind !== "mark" && !AND.has(before.text)) return false;
  const verb = verbAt(tokens, to);
  if (!verb) return false;
  // "the other is on hold"
  const isBe =
    BE.has(verb.text) && tokens[to + 1]?.roles.heads?.some(({ kind }) => bears(kind, "of pieces")) === true;
  return isOfStanding(verb) || isBe;
}
