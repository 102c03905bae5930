import type { Tok } from "../clause.ts";
import { isQuestion } from "../questions.ts";
import type { Reading } from "../reading.ts";
import { SO, TOLD_BEHIND_SO } from "../words/again.ts";
import { cutsOf } from "./cuts.ts";

/*
 * Corrections, standing notes and questions are read from a line as a whole; where one of them and something else
 * stand in the same line, each part is a line of its own: "sold lamp 14, how much is left on the loan?".
 */

/** Beyond, a line is a list of notes. */
const TRIES_MAX = 8;

/**
 * The readings of the parts of a line, each as if it stood alone; null where it does not fall into whole ones of which
 * one at least is no plain note. `read` gives the readings of some tokens by themselves.
 */
export function inParts(tokens: readonly Tok[], read: (part: Tok[]) => Reading[]): Reading[] | null {
  for (const { end, next } of cutsOf(tokens).slice(0, TRIES_MAX)) {
    const [left, right] = [tokens.slice(0, end), tokens.slice(next)];
    if (left.length < 2 || right.length < 2) continue;
    // "desk is done, and so is the bench" asks nothing.
    if (SO.has(tokens[next - 1]!.text) && TOLD_BEHIND_SO.has(right[0]!.text)) continue;
    const said = partOf(left, read);
    const told = said && (inParts(right, read) ?? partOf(right, read));
    if (told && [...said, ...told].some(({ kind }) => WHOLE_LINES.has(kind))) return [...said, ...told];
  }
  return null;
}

const WHOLE_LINES: ReadonlySet<string> = new Set(["ask", "mend", "repeat"]);

/** The readings of a part; null where it says no whole thing by itself. */
function partOf(part: readonly Tok[], read: (part: Tok[]) => Reading[]): Reading[] | null {
  const readings = read(part.map((token) => ({ ...token })));
  return readings.length > 0 && readings.every((reading) => isWhole(reading, part)) ? readings : null;
}

/** "not 12", "in june", "it was 8" are no part by themselves. */
function isWhole(reading: Reading, part: readonly Tok[]): boolean {
  const { kind, missing, back } = reading;
  if (missing || back || kind === "unclear" || kind === "fix" || kind === "undo") return false;
  if (kind === "ask") return isQuestion(part);
  if (kind === "mend")
    return [reading.of?.what, reading.of?.pieces, reading.of?.number].some((of) => of !== undefined);
  return !part.some(({ mention }) => mention?.it);
}
