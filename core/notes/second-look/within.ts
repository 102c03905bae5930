import { MEASURES_OR_RATE, type Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import type { Reading } from "../reading.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { couldOf, isFor, isRefused, isWholeNote, unclear } from "../unclear.ts";
import { bears } from "../verbs.ts";
import { US } from "../words/chatter.ts";

/*
 * A note told within other words, where the line as a whole is not read: "the twins are asleep, so 50 minutes on the toy
 * box". The longest stretch of it that is one whole note by itself is offered on a button, and never recorded unasked.
 */

/** A stretch of a line's tokens, `from` up to `to`. */
interface Stretch {
  from: number;
  to: number;
}

/**
 * The readings of a line, with what it may tell within other words offered first where they leave something open.
 * `lexed` gives its tokens, which nothing has claimed, and `read` the readings of some of them by themselves.
 */
export function withNoteWithin(
  readings: Reading[],
  lexed: () => readonly Tok[],
  place: { text: string; line: number },
  read: (tokens: Tok[]) => Reading[],
): Reading[] {
  if (!isOpen(readings)) return readings;
  const tokens = lexed();
  const note = tokens.length > TOKENS_MAX ? null : noteWithin(tokens, read);
  if (!note) return readings;
  const [first] = readings;
  const others = readings.length === 1 ? couldOf(first) : [];
  const why = first?.kind === "unclear" && others.length > 0 ? first.why : undefined;
  const made = unclear({ kind: "left" }, place);
  return [
    {
      ...made,
      ...(why ? { why } : {}),
      could: [note, ...others.filter((other) => !isSame(other, note))].slice(0, COULD_MAX),
    },
  ];
}

/** Beyond, a line is a tale. */
const TOKENS_MAX = 60;

/** So many readings fit on buttons, with one more for none of them. */
const COULD_MAX = 3;

const isWhole = (reading: Reading): boolean =>
  isWholeNote(reading) && reading.kind !== "ask" && !bears(reading.kind, "corrects");

/** Nothing can be tapped for what it says: nothing is offered, or what it says falls into parts of which some are open. */
function isOpen(readings: readonly Reading[]): boolean {
  const isRecorded = readings.some(isWhole);
  // "teo paid 40 to his dentist": no part of it is ours.
  const [first, ...others] = readings;
  if (first && isFor(first, "other") && others.length === 0) return false;
  return !isRecorded && (readings.some(isRefused) || readings.length > 1);
}

function noteWithin(tokens: readonly Tok[], read: (tokens: Tok[]) => Reading[]): Reading | null {
  // A note that left one of them out would leave out what it says.
  const measured = tokens.flatMap((token, at) => (MEASURES_OR_RATE.has(token.kind) ? [at] : []));
  const first = measured[0] ?? tokens.length;
  const last = measured.at(-1) ?? -1;
  const [starts, ends] = [startsOf(tokens), endsOf(tokens)];
  for (const { from, to } of stretchesOf(starts, ends)) {
    if (from > first || to <= last || (from === 0 && to === tokens.length)) continue;
    const [note, ...others] = read(tokens.slice(from, to).map((token) => ({ ...token })));
    if (note && others.length === 0 && isWhole(note))
      return ofNamed(note, [...tokens.slice(0, from), ...tokens.slice(to)]);
  }
  return null;
}

/** "swapped a leg on chair #4, 3.50 in hardware": of the one piece that the other words name. */
function ofNamed(note: Reading, beside: readonly Tok[]): Reading {
  const [mention, ...others] = beside.flatMap(({ mention: named }) => (named && !named.it ? [named] : []));
  const isOpen = bears(note.kind, "piece or none") && !("pieces" in note && note.pieces);
  return mention && others.length === 0 && isOpen ? ({ ...note, pieces: [mention] } as Reading) : note;
}

/** Every stretch between a start and an end, the longest first. */
function stretchesOf(starts: readonly number[], ends: readonly number[]): Stretch[] {
  const all = starts.flatMap((from) => ends.filter((to) => to > from + 1).map((to) => ({ from, to })));
  return all.sort((a, b) => b.to - b.from - (a.to - a.from)).slice(0, STRETCHES_MAX);
}

/** Each is read: some of a millisecond. */
const STRETCHES_MAX = 40;

const isJoint = ({ kind, hints }: Tok): boolean =>
  kind === "mark" ? (hints & HINTS.markByChat) !== 0 : kind === "word" && (hints & HINTS.wordByChat) !== 0;

/** Where a note may begin: the line, behind a joint, where one of us speaks, at a verb. */
function startsOf(tokens: readonly Tok[]): number[] {
  return tokens.flatMap((token, at) => {
    const isBehindJoint = at > 0 && isJoint(tokens[at - 1]!);
    const isVerb = headsOf(token).some(({ light }) => !light);
    return !isJoint(token) && (at === 0 || isBehindJoint || US.has(token.text) || isVerb) ? [at] : [];
  });
}

/** Where a note may end: with the line, or at a joint. */
function endsOf(tokens: readonly Tok[]): number[] {
  return [...tokens.flatMap((token, at) => (at > 0 && isJoint(token) ? [at] : [])), tokens.length];
}

/** Two readings that would record the same. */
const isSame = (one: Reading, other: Reading): boolean => said(one) === said(other);

const said = ({ text: _, line: __, ...fields }: Reading): string => JSON.stringify(fields);
