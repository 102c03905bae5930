import { type Tok, textOf } from "../clause.ts";
import { decimalText } from "../quantities/amounts.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { BEFORE_RIGHT_VALUE, CORRECTING, TAKEN_BACK, UNSURE_WHICH } from "../words/doubts.ts";
import { ARTICLES_WIDE } from "../words/links.ts";

/** "bought desk 40 scratch that 45", "2h no 3h on the desk", "sold the hutch i mean the bench 90". */
export const takesItselfBack = (tokens: readonly Tok[]): boolean => placeOfTakingBack(tokens) >= 0;

/** Where the words that take something back begin; -1 where none do. */
function placeOfTakingBack(tokens: readonly Tok[]): number {
  let isNoted = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (isNoted && (token.hints & HINTS.doubted) !== 0 && tokens[at + 1]?.kind === "amount") return at;
    if (isNoted && token.kind === "word" && (token.hints & HINTS.takesBack) !== 0) {
      const ahead = textOf(tokens.slice(at, at + 3));
      if (TAKEN_BACK.test(ahead)) return at;
      if (CORRECTING.has(token.text) && (isBetweenValues(tokens, at) || isBeforeRightValue(tokens, at)))
        return at;
    }
    isNoted ||= token.kind !== "word" && token.kind !== "mark";
  }
  return -1;
}

/** "30 no 40 dollars", "2h no 3h", "thirty no thirty two miles", "2 no 3 chairs", "the crib no sorry the cradle". */
function isBetweenValues(tokens: readonly Tok[], at: number): boolean {
  const [before, next] = [tokens[at - 1], tokens[at + 1]];
  if (!before || !next || before.kind === "word" || before.kind === "mark") return false;
  if (before.kind === "piece" && ARTICLES_WIDE.has(tokens[behindCorrecting(tokens, at) - 1]!.text))
    return tokens[behindCorrecting(tokens, at)]?.kind === "piece";
  if (before.kind === next.kind) return tokens[at]!.text === "no" || isValue(next);
  return before.kind === "amount" && (isMeasure(next) || next.mention?.count !== undefined);
}

/** So many words stand between what was said and what is meant, at the most. */
const BETWEEN_MAX = 5;

/** "an hour on the desk while the baby napped no actually it was an hour and a half": said again, of a value before it. */
function isBeforeRightValue(tokens: readonly Tok[], at: number): boolean {
  if (!tokens[at]!.text.split(" ").includes("no")) return false;
  let behind = at + 1;
  const isBetween = (text: string) => CORRECTING.has(text) || BEFORE_RIGHT_VALUE.has(text);
  while (behind < tokens.length && behind - at <= BETWEEN_MAX && isBetween(tokens[behind]!.text)) behind += 1;
  const value = tokens[behind];
  if (value === undefined || behind === at + 1 || !isValue(value)) return false;
  return tokens.findIndex(({ kind }) => kind === value.kind) < at;
}

/** Where what is meant begins, behind the words that put it right and its article. */
function behindCorrecting(tokens: readonly Tok[], at: number): number {
  const behind = tokens.findIndex(
    ({ text }, place) => place > at && !CORRECTING.has(text) && !ARTICLES_WIDE.has(text),
  );
  return behind < 0 ? tokens.length : behind;
}

const isMeasure = ({ kind }: Tok): boolean => kind === "duration" || kind === "miles";
const isValue = (token: Tok): boolean => token.kind === "amount" || isMeasure(token);

/** A line with a value put right, and the place of what was said at first up to where it is put right. */
export interface PutRight {
  tokens: Tok[];
  from: number;
  to: number;
  /** The words between the two values say that the last one holds. */
  isSure: boolean;
}

/**
 * "hutch sold 1800 lol i mean 180", "an hour and a half no wait two hours on the desk": the line with the other value in
 * the place of the one before; null where it says more, or no value is put right.
 */
export function withoutSlip(tokens: readonly Tok[]): PutRight | null {
  const back = placeOfTakingBack(tokens);
  const piece = withOtherPiece(tokens, back);
  if (piece) return piece;
  const slip = tokens.slice(0, back).findLastIndex(isValue);
  if (slip < 0) return null;
  const behind = tokens.findIndex((token, at) => at > back && (isValue(token) || token.kind === "piece"));
  const meant = behind < 0 ? null : putRight(tokens[slip]!, tokens[behind]!);
  const passed = tokens.slice(slip + 1, behind);
  // "on the desk while the baby napped no actually it was …": a value again, and none but that.
  const isOne =
    tokens[behind]?.kind === "piece"
      ? passed.every(({ kind }) => kind === "word" || kind === "mark")
      : !passed.some(isValue);
  if (!meant || !isOne) return null;
  const between = tokens.slice(slip + 1, back).filter(({ kind }) => kind !== "mark");
  return {
    tokens: [...tokens.slice(0, slip), meant, ...between, ...tokens.slice(behind + 1)],
    from: slip,
    to: behind + 1,
    isSure: tokens[slip]!.kind === tokens[behind]!.kind && !tokens.slice(back, behind).some(isUnsure),
  };
}

const isUnsure = ({ text, hints }: Tok): boolean =>
  (hints & HINTS.doubted) !== 0 || text.split(" ").some((word) => UNSURE_WHICH.has(word));

/** "an hour on the crib no wait not the crib the cradle", "sold the desk i mean the dresser 90": of the other piece. */
function withOtherPiece(tokens: readonly Tok[], back: number): PutRight | null {
  const slip = tokens.slice(0, back).findLastIndex(({ kind }) => kind !== "mark");
  if (tokens[slip]?.kind !== "piece") return null;
  const isOther = ({ kind, text }: Tok) => kind === "piece" && text !== tokens[slip]!.text;
  const behind = tokens.findIndex((token, at) => at > back && isOther(token));
  if (behind < 0 || tokens.slice(slip + 1, behind).some(isValue)) return null;
  // "not the crib the cradle", and no other one that is denied.
  const denied = tokens.slice(back, behind).findLastIndex(({ text }) => text === "not");
  if (denied >= 0 && !tokens.slice(back + denied, behind).some(({ kind }) => kind === "piece")) return null;
  const kept = [...tokens.slice(0, slip), ...tokens.slice(behind)];
  return { tokens: kept, from: slip, to: behind + 1, isSure: false };
}

/** The other value, in the unit of the first where it has none of its own; null where it is no other one of that. */
function putRight(slip: Tok, other: Tok): Tok | null {
  if (slip.kind === other.kind || (slip.kind === "amount" && isMeasure(other))) return other;
  if (other.kind === "piece")
    return slip.kind === "amount" && other.mention!.count !== undefined ? other : null;
  const exact = other.amount?.money ? null : other.amount?.exact;
  if (!exact) return null;
  if (slip.kind === "miles") return { ...other, kind: "miles", miles: decimalText(exact), amount: undefined };
  const minutes = (exact.digits / 10 ** exact.scale) * (slip.text.includes("h") ? 60 : 1);
  return { ...other, kind: "duration", minutes: Math.round(minutes), amount: undefined };
}

/** "sold desk 90, just kidding": nothing of it happened. */
export function isJoke(tokens: readonly Tok[]): boolean {
  return tokens.some(({ hints }) => (hints & HINTS.joke) !== 0);
}
