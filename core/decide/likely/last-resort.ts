import { noteOf } from "../../mending/as-note.ts";
import { meansAny } from "../../mending/mend.ts";
import type { Reading } from "../../notes/reading.ts";
import { couldOf, unclear, whyOf } from "../../notes/unclear.ts";
import type { Ask, Decision, Looking } from "../decision.ts";
import { askWhich, type Deciding, OFFERED_MAX, type Standing, standingOf } from "../unclear/whole.ts";
import { likelyOf } from "./likely.ts";
import type { Likely } from "./of-pieces.ts";
import { inParts } from "./parts.ts";

/* Where likely readings stand beside what was read, or in the place of a refusal. */

/** With this much that speaks for it, one that was only guessed comes before those that were read. */
const SURE_LEAST = 5;

const BESIDE_LEAST = 4;

/** The same, with nothing more to ask, or with who did it as well. */
const isFuller = (one: Standing, other: Standing): boolean =>
  one.label === other.label &&
  ((other.asks === true && !one.asks) || (one.reading.by !== undefined && other.reading.by === undefined));

/** What was read, with what was only guessed beside it: one of those at least, where there is any. */
export function withLikely(
  said: readonly Standing[],
  likely: readonly (Standing & { weight: number })[],
): Standing[] {
  const read = said.map((each) => likely.find((other) => isFuller(other, each)) ?? each);
  const others = likely.filter(({ label, weight }) =>
    read.length === 0 ? true : weight >= BESIDE_LEAST && read.every((each) => each.label !== label),
  );
  const sure = others.filter(({ weight }) => weight >= SURE_LEAST).slice(0, 1);
  const labels = new Set<string>();
  // What tells all of it comes before what tells a part.
  const whole = sure.filter(({ more }) => more !== undefined);
  return [...whole, ...read.slice(0, OFFERED_MAX - sure.length), ...sure, ...others, ...read]
    .filter(({ label }) => !labels.has(label) && labels.add(label))
    .slice(0, OFFERED_MAX);
}

/** What nobody could read may still be, by what is recognised in it. */
export function likelyStanding(
  { text, line }: Reading,
  desk: Looking,
  deciding: Deciding,
): (Standing & Likely)[] {
  const likely = likelyOf(text, line, desk).flatMap((each) =>
    standingOf([each.reading], desk, deciding).map((one) => ({ ...each, ...one })),
  );
  return [...inParts(text, line, desk, deciding), ...likely];
}

/** The question that is asked in the place of a refusal; null where nothing speaks for any reading. */
export function resortOf(reading: Reading, desk: Looking, deciding: Deciding): Decision | null {
  const found = likelyStanding(reading, desk, deciding);
  // What would correct a note is no note of its own.
  const isOfNote = reading.kind === "mend" || reading.kind === "fix";
  const note = reading.kind === "mend" && !meansAny(reading, desk) ? noteOf(reading) : null;
  // "actually paint was 14" where no paint was noted: that paint.
  const told = note ? standingOf([note], desk, deciding) : [];
  if (told.length > 0) return { kind: "ask", ask: askWhich("I find no note like that. A new one?", told) };
  const likely = withLikely([], isOfNote ? found.filter((each) => each.reading.kind === "mend") : found);
  return likely.length > 0 ? { kind: "ask", ask: askWhich(whyOf({ kind: "eitherOf" }), likely) } : null;
}

/**
 * A question for what is missing, or about a piece that the verb does not fit, with what the words may tell instead where
 * much speaks for it: "carried the bench to the dump" is hardly work.
 */
export function besideAsked(ask: Ask, reading: Reading, desk: Looking, deciding: Deciding): Ask {
  if (reading.kind === "unclear" || !(ask.misfit || reading.missing?.length)) return ask;
  const likely = likelyStanding(reading, desk, deciding).filter(
    ({ weight, asks, reading: { kind } }) => weight >= SURE_LEAST && !asks && kind !== reading.kind,
  );
  const offered = askWhich("", likely.slice(0, BESIDE_MAX)).choices.slice(0, -1);
  const labels = new Set(ask.choices.map(({ label }) => label));
  const others = offered.filter(({ label }) => !labels.has(label));
  return others.length === 0 ? ask : { ...ask, choices: [...others, ...ask.choices].slice(0, CHOICES_MAX) };
}

const BESIDE_MAX = 1;
const CHOICES_MAX = 5;

/** A message of which no part can be read, as one; the readings as they are where a part can. */
export function wholeOr(
  text: string,
  readings: readonly Reading[],
  desk: Looking,
  deciding: Deciding,
): readonly Reading[] {
  const isLost = (reading: Reading): boolean =>
    reading.kind === "unclear" && standingOf(couldOf(reading), desk, deciding).length === 0;
  const whole = unclear({ kind: "eitherOf" }, { text, line: 0 });
  return readings.every(isLost) && resortOf(whole, desk, deciding) ? [whole] : readings;
}
