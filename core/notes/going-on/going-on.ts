import type { Tok } from "../clause.ts";
import { lexedAnew } from "../lexed.ts";
import { corrects } from "../mends/left-out.ts";
import { newestMended } from "../mends/newest.ts";
import { readAgain } from "../notes-read.ts";
import type { Reading, ReadingOf } from "../reading.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import type { Told } from "../told.ts";
import { couldOf, isRefused, isWholeNote, tellsNoFact, unclear } from "../unclear.ts";
import { ONE_MORE_NOTE, REDOES, REST_TO_COME } from "../words/mending.ts";
import { backOf, ofNumbers } from "./back.ts";
import { inOrder } from "./in-order.ts";

/** Words that only go on from others are few. */
const BACK_WORDS_MAX = 16;

/** What says little by itself may go on from what was said before, or correct it. */
export function withBack(readings: Reading[], said: readonly Tok[], told: Told): Reading[] {
  const [reading, ...others] = readings;
  if (!reading || told.spans.length > BACK_WORDS_MAX) return readings;
  const isUnclear = readings.some(({ kind }) => kind === "unclear");
  // "200 and its gone" falls into parts of which none is read.
  const isNoneRead = readings.every(isRefused);
  const isOpen =
    isNoneRead ||
    (others.length === 0 && reading.missing !== undefined && SAYS_SAME.test(told.typed)) ||
    (others.length === 0 && (isUnclear || reading.missing?.includes("pieces") === true));
  // "wrong one, it was the vanity i sold" falls into parts.
  const saysMore = readings.some(isWholeNote) && !said.some(isWrongPiece);
  // "125, he threw in a five", "paid 35, she took 5 off" too.
  const isAmountFirst =
    said[said[0]?.text === "paid" ? 1 : 0]?.kind === "amount" &&
    readings.every((one) => couldOf(one).length === 0);
  const isCut =
    others.length > 0 && (corrects(said[0]!.text) || isWrongPiece(said[0]!) || isAmountFirst) && !saysMore;
  const mayCorrect =
    isCut || (others.length === 0 && (isOpenToCorrection(reading) || said.some(correctsByItself)));
  // "no wait we kept it": the note before, told anew.
  if (
    others.length === 0 &&
    !isUnclear &&
    REDOES.has(said[0]!.text) &&
    !said.some(({ text }) => ONE_MORE_NOTE.has(text))
  )
    return [{ ...reading, back: { restated: true } }];
  if (!isUnclear && !isOpen && !mayCorrect) return readings;
  const { text, line, today } = told;
  const tokens = lexedAnew(told.typed);
  const by = { text, line, today, read: (other: Tok[]) => readAgain(other, told) };
  const isNoFact = readings.some(tellsNoFact);
  const priced = isUnclear && !isNoFact ? inOrder(tokens, (one) => saidOfThem(one, by)) : null;
  if (priced) return [{ ...reading, back: priced }];
  const numbers = isUnclear && !isNoFact ? ofNumbers(tokens, by) : null;
  const on = numbers ?? (isOpen && !isNoFact ? backOf(tokens, by) : null);
  // "he only had 70 on him, said he'd bring the rest": what he owes, and no other price.
  const isOfRest = said.some(({ text: word }) => REST_TO_COME.has(word));
  const newest = on || !mayCorrect ? null : newestMended(tokens, today);
  const isOwed = newest?.kind === "mend" && newest.to?.owed !== undefined;
  const mend = isOfRest && !isOwed ? null : newest;
  const back = on ?? (mend && { mend: { ...mend, text, line } as ReadingOf<"mend" | "fix"> });
  if (back && others.length > 0) return [{ ...unclear({ kind: "unknown" }, told), back }];
  return back ? [{ ...reading, back }] : readings;
}

/** What a line says of those spoken of, by itself or as it goes on from what was said before. */
function saidOfThem(tokens: Tok[], by: Parameters<typeof backOf>[1]): readonly Reading[] {
  const read = by.read(tokens);
  if (read.every(({ kind }) => kind !== "unclear")) return read;
  const back = backOf(tokens, by);
  return back && "could" in back ? back.could : read.flatMap(couldOf);
}

/** "other two sold, same money": what is told beside a note may say that it is as before. */
const SAYS_SAME = /\b(?:same|ditto|identical)\b/i;

/** "oops wrong desk, i finished the pine one": no note beside the correction. */
const isWrongPiece = ({ kind, text }: Tok): boolean => kind === "piece" && text.startsWith("wrong ");

/** "only 90 min", "45 min, sorry": no measure of its own. */
const correctsByItself = ({ hints }: Tok, at: number, { length }: { length: number }): boolean =>
  (hints & HINTS.corrects) !== 0 || (at === length - 1 && (hints & HINTS.behind) !== 0);

/** It says no fact by itself: nothing clear, a fee of nothing named, or only who did something ("mom bought it"). */
function isOpenToCorrection(reading: Reading): boolean {
  const { kind, by, missing = [] } = reading;
  return (
    kind === "unclear" ||
    isFeeOfNothing(reading) ||
    // "sale fell through" behind the sale
    (kind === "fallthrough" && missing.includes("pieces")) ||
    (by !== undefined && missing.includes("pieces") && missing.length > 1)
  );
}

export const isFeeOfNothing = (reading: Reading): boolean =>
  reading.kind === "spend" &&
  reading.category === "fees" &&
  (!reading.pieces?.some(({ it }) => !it) || /\bsale\b/i.test(reading.text));
