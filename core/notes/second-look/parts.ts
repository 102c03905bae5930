import type { Tok } from "../clause.ts";
import { isQuestion } from "../questions.ts";
import type { Reading } from "../reading.ts";
import { AND, BEFORE_BUYER, PARTED, RELATIVES } from "../words/links.ts";

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
  let tries = 0;
  for (let at = 1; at < tokens.length - 1 && tries < TRIES_MAX; at += 1) {
    if (!isJoint(tokens[at]!)) continue;
    let next = at + 1;
    while (next < tokens.length && isJoint(tokens[next]!)) next += 1;
    if (isRelative(tokens, at, next)) continue;
    const [left, right] = [tokens.slice(0, at), tokens.slice(next)];
    at = next - 1;
    if (left.length < 2 || right.length < 2) continue;
    tries += 1;
    const said = partOf(left, read);
    const told = said && (inParts(right, read) ?? partOf(right, read));
    if (told && [...said, ...told].some(({ kind }) => WHOLE_LINES.has(kind))) return [...said, ...told];
  }
  return null;
}

/** "sold for 140 to imani, who paid by transfer" asks nothing. */
function isRelative(tokens: readonly Tok[], joint: number, next: number): boolean {
  if (!RELATIVES.has(tokens[next]?.text ?? "") || tokens[joint]!.text !== "," || isMarked(tokens.at(-1)!))
    return false;
  return tokens[joint - 1]!.kind === "word" && BEFORE_BUYER.has(tokens[joint - 2]?.text ?? "");
}

const isMarked = ({ kind, text }: Tok): boolean => kind === "mark" && text === "?";

const WHOLE_LINES: ReadonlySet<string> = new Set(["ask", "mend", "repeat"]);

function isJoint({ kind, text }: Tok): boolean {
  return kind === "mark" ? PARTED.has(text) : AND.has(text);
}

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
