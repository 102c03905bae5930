import type { Reading, ReadingOf } from "../../notes/reading.ts";
import { whyOf } from "../../notes/unclear.ts";
import type { Looking } from "../decision.ts";
import { recordedPieces } from "../decision.ts";
import { talkedOf } from "../talk/talk.ts";
import type { Deciding } from "./whole.ts";

/* Where a number fits only one of the things that it may be, by what its pieces are listed at and what they took. */

/** A deposit is no more than this part of what is asked for a piece. */
const DEPOSIT_MAX = 0.5;

/** Nobody takes more than this part off at once. */
const CUT_MAX = 0.6;

/** The pieces that a reading would be recorded of, what they are listed at, and its amount; null where it would not be recorded. */
function recordedOf(reading: Reading, desk: Looking, { decide }: Deciding) {
  const decision = decide(reading, desk);
  if (decision.kind !== "record") return null;
  const pieces = recordedPieces(decision).map((number) => desk.books.pieces.get(number));
  const asked = pieces.reduce((sum, piece) => sum + (piece?.listPrice ?? 0), 0);
  return { pieces, asked, amount: decision.facts[0]?.amount ?? 0 };
}

/** "nell left 50 on the dresser", which is listed at far more: a deposit. */
export function isDeposit(reading: Reading, desk: Looking, deciding: Deciding): boolean {
  if (reading.kind !== "hold" || !reading.deposit) return false;
  const of = recordedOf(reading, desk, deciding);
  if (!of || reading.deposit > of.asked * DEPOSIT_MAX) return false;
  return of.pieces.every((piece) => piece !== undefined && piece.listed !== null);
}

/** What is this part of a price at the most is taken off it: nobody asks so little all at once. */
const CUT_ONLY = 0.1;

/** "price drop on the hutch 199" of one at 220: what it costs now, and no 199 off it; "desk down 10 too" of one at 140: so much off. */
export function isNewPrice(reading: Reading, desk: Looking, deciding: Deciding): boolean {
  if (reading.kind !== "reprice") return false;
  const of = recordedOf(reading, desk, deciding);
  if (reading.cut !== undefined) return of !== null && reading.cut <= of.asked * CUT_ONLY;
  return of !== null && of.amount < of.asked && of.amount > of.asked * CUT_MAX;
}

/** "an hour total on both nightstands" on which nothing was noted before: all of it is new. */
export function isNewWork(
  { why }: ReadingOf<"unclear">,
  first: Reading,
  desk: Looking,
  deciding: Deciding,
): boolean {
  if (why !== whyOf({ kind: "so far" })) return true;
  return recordedOf(first, desk, deciding)?.pieces.every((piece) => !piece?.minutes) === true;
}

/** "2 hrs altogether" of what an hour was noted on: an hour more, or two. */
export function withNewPart(
  could: readonly Reading[],
  desk: Looking,
  deciding: Deciding,
): readonly Reading[] {
  return could.flatMap((reading) => {
    const pieces =
      reading.kind === "work" ? recordedOf(talkedOf(reading, desk, deciding), desk, deciding)?.pieces : null;
    const before = pieces?.reduce((sum, piece) => sum + (piece?.minutes ?? 0), 0) ?? 0;
    const all = reading.kind === "work" ? (reading.minutes ?? 0) : 0;
    return before > 0 && all > before
      ? [{ ...reading, minutes: all - before } as Reading, reading]
      : [reading];
  });
}
