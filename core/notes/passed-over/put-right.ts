import { isMark, isPiece, MEASURES, type Tok } from "../clause.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { AND } from "../words/links.ts";
import { BESIDE_PUTS_RIGHT, GOES_ON, PUTS_RIGHT, PUTS_RIGHT_BY_TWO, TAKES_TIME } from "../words/put-right.ts";
import { inUnitOf } from "./other-day.ts";

/*
 * "paint 24, no wait 26, for the desk", "two hours on it, well more like 90 min": a number put right in the same breath.
 * The note is read with the second as if the first had never been said.
 */

/** A line's tokens with the numbers that are meant; the same ones where none is put right. */
export function withPutRight<Some extends readonly Tok[]>(tokens: Some): Some | Tok[] {
  let counted = 0;
  for (let at = 0; at < tokens.length; at += 1) if (isCounted(tokens[at]!)) counted += 1;
  if (counted < 2) return tokens;
  for (let at = 2; at < tokens.length; at += 1) {
    const put = putRightAt(tokens, at);
    if (put) return withPutRight(put);
  }
  return tokens;
}

/** With the number at a place in that of the one it puts right; null where it puts none right. */
function putRightAt(tokens: readonly Tok[], at: number): Tok[] | null {
  const said = tokens[at]!;
  if (!isCounted(said) || !isAlone(tokens, at)) return null;
  const from = openingOf(tokens, at);
  const opening = tokens
    .slice(from, at)
    .flatMap(({ kind, text }) => (kind === "mark" ? [] : text.split(" ")));
  if (!putsRight(opening, said) || isOfEarlier(tokens.slice(0, from), opening)) return null;
  const old = tokens.findLastIndex((token, place) => place < from && isLike(token, said));
  const meant = old < 0 ? null : inItsPlace(tokens[old]!, said);
  if (!meant || isTorn(tokens, old, from) || isOfAnother(tokens, old, at)) return null;
  // "24, no 26, for the desk": the marks were those of the second.
  const isGoingOn = isSeparator(tokens[at + 1]) && GOES_ON.has(tokens[at + 2]?.text ?? "");
  const end = isGoingOn && isSeparator(tokens[from]) && from === old + 1 ? at + 2 : at + 1;
  return [...tokens.slice(0, old), meant, ...tokens.slice(old + 1, from), ...tokens.slice(end)];
}

const isMeasure = ({ kind }: Tok): boolean => MEASURES.has(kind);

const isCounted = (token: Tok): boolean =>
  isMeasure(token) || (isPiece(token) && token.mention!.count !== undefined);

/** Numbers of one sort, the bare one of whichever ("24 miles, no 26"), or the same piece in another count. */
function isLike(old: Tok, said: Tok): boolean {
  if (isPiece(said)) return isPiece(old) && old.mention!.name === said.mention!.name;
  return isMeasure(old) && (old.kind === said.kind || (said.kind === "amount" && !said.amount!.money));
}

function inItsPlace(old: Tok, said: Tok): Tok | null {
  if (isPiece(said) || old.kind === said.kind) return old.each === said.each ? said : null;
  return wholeOf(said.amount!.exact) === null ? null : inUnitOf(old, said);
}

/** Nothing stands behind it that it counts, or is taken from: "no 2 drawers", "actually 20 of it". */
function isAlone(tokens: readonly Tok[], at: number): boolean {
  const next = tokens[at + 1];
  if (!next || next.kind === "mark" || next.kind === "day" || GOES_ON.has(next.text)) return true;
  return isPiece(tokens[at]!) && next.kind === "amount";
}

/** Where the words begin that stand between what was said and the number, with the mark before them. */
function openingOf(tokens: readonly Tok[], at: number): number {
  let from = at;
  while (from > 0 && (isSeparator(tokens[from - 1]) || isOpening(tokens[from - 1]!))) from -= 1;
  return from;
}

const isSeparator = (token: Tok | undefined): boolean =>
  token?.kind === "mark" && !isMark(token, "?") && !isMark(token, "~") && !isMark(token, "+");

const isOpening = ({ kind, text }: Tok): boolean =>
  kind === "word" && text.split(" ").every((word) => BESIDE_PUTS_RIGHT.has(word));

function putsRight(words: readonly string[], { kind }: Tok): boolean {
  // "oh wait, 3 hours" is none that one waits.
  const isTime = kind === "duration" && !words.includes("oh");
  const isKey = (word: string, at: number): boolean =>
    (PUTS_RIGHT.has(word) && !(isTime && TAKES_TIME.has(word))) ||
    PUTS_RIGHT_BY_TWO.has(`${word} ${words[at + 1] ?? ""}`);
  return words.some(isKey) && !/\b(?:was|is) it\b/.test(words.join(" "));
}

/** "knobs 15, make it 12": of a note that stands already, and told without a verb. */
const isOfEarlier = (before: readonly Tok[], opening: readonly string[]): boolean =>
  opening[0] === "make" && !before.some(({ roles }) => roles.heads?.some(({ light }) => !light));

/** Two numbers of one sort in one breath: which of them is put right? */
function isTorn(tokens: readonly Tok[], old: number, from: number): boolean {
  const joint = tokens.findLastIndex((token, at) => at < old && (isSeparator(token) || AND.has(token.text)));
  const same = tokens.slice(joint + 1, from).filter(({ kind }) => kind === tokens[old]!.kind);
  return isMeasure(tokens[old]!) && same.length > 1;
}

/** "sold the desk 140, actually 26 for the lamp": a number of its own. */
function isOfAnother(tokens: readonly Tok[], old: number, at: number): boolean {
  const ofOld = tokens.slice(0, at).findLast(isPiece);
  const behind = tokens.slice(at + 1).findIndex((token) => isSeparator(token) || AND.has(token.text));
  const rest = tokens.slice(at + 1, behind < 0 ? tokens.length : at + 1 + behind);
  const isTold = ofOld !== undefined && !isPiece(tokens[old]!);
  return isTold && rest.some((token) => isPiece(token) && token.mention!.it !== true);
}
