import type { Reading, ReadingOf } from "../../notes/reading.ts";
import { whyOf } from "../../notes/unclear.ts";
import type { Desk } from "../decision.ts";
import { recordedPieces } from "../decision.ts";
import type { Deciding } from "./whole.ts";

/* Where a number fits only one of the things that it may be, by what its pieces are listed at and what they took. */

/** A deposit is no more than this part of what is asked for a piece. */
const DEPOSIT_MAX = 0.5;

/** Nobody takes more than this part off at once. */
const CUT_MAX = 0.6;

/** The pieces that a reading would be recorded of, what they are listed at, and its amount; null where it would not be recorded. */
function recordedOf(reading: Reading, desk: Omit<Desk, "confirmed">, { decide }: Deciding) {
  const decision = decide(reading, desk);
  if (decision.kind !== "record") return null;
  const pieces = recordedPieces(decision).map((number) => desk.books.pieces.get(number));
  const asked = pieces.reduce((sum, piece) => sum + (piece?.listPrice ?? 0), 0);
  return { pieces, asked, amount: decision.facts[0]?.amount ?? 0 };
}

/** "nell left 50 on the dresser", which is listed at far more: a deposit. */
export function isDeposit(reading: Reading, desk: Omit<Desk, "confirmed">, deciding: Deciding): boolean {
  if (reading.kind !== "hold" || !reading.deposit) return false;
  const of = recordedOf(reading, desk, deciding);
  if (!of || reading.deposit > of.asked * DEPOSIT_MAX) return false;
  return of.pieces.every((piece) => piece !== undefined && piece.listed !== null);
}

/** "price drop on the hutch 199" of one at 220: what it costs now, and no 199 off it. */
export function isNewPrice(reading: Reading, desk: Omit<Desk, "confirmed">, deciding: Deciding): boolean {
  if (reading.kind !== "reprice" || reading.price === undefined) return false;
  const of = recordedOf(reading, desk, deciding);
  return of !== null && of.amount < of.asked && of.amount > of.asked * CUT_MAX;
}

/** "an hour total on both nightstands" on which nothing was noted before: all of it is new. */
export function isNewWork(
  { why }: ReadingOf<"unclear">,
  first: Reading,
  desk: Omit<Desk, "confirmed">,
  deciding: Deciding,
): boolean {
  if (why !== whyOf({ kind: "so far" })) return true;
  return recordedOf(first, desk, deciding)?.pieces.every((piece) => !piece?.minutes) === true;
}
