import type { Mention, Reading } from "../../notes/reading.ts";

/** The pieces that a reading names. */
export function mentionsOf(reading: Reading): Mention[] {
  return "pieces" in reading && Array.isArray(reading.pieces) ? reading.pieces : [];
}

/** Pieces by their numbers, as a reading names them. */
export const byNumbers = (numbers: readonly number[]): Mention[] =>
  numbers.map((number) => ({ number, count: 1 }));
