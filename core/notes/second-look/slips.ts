import type { Reading } from "../reading.ts";
import { isSettled } from "../tokens/lexicon.ts";
import type { Roles } from "../tokens/roles.ts";
import { LETTER, WRONG } from "../tokens/spelling.ts";
import { wordsOf } from "../tokens/text.ts";
import { NO_ROLES } from "../tokens/token.ts";
import { couldOf, eitherOf } from "../unclear.ts";
import { language } from "../verbs.ts";
import { ORDINARY } from "../words/never-corrected.ts";

/*
 * A word or a number that may be a slip of another, where nothing settles it: "sold desk 60 chek" has a word left over,
 * "bought char 12" names a piece that nobody listed, "gas 18..50" has a point too many. The line is read again as it may
 * have been meant, and that is offered.
 */

/** So many readings fit on buttons, with one more for none of them. */
const COULD_MAX = 3;

/** In so many ways a line is read again for each note in it, where those are few. */
const TRIED_MAX = 3;
const NOTES_MAX = 6;

type Read = (line: string) => Reading[];

/** The readings of a line, with what it says if a word or a number of it is a slip offered where that leaves something open. */
export function withSlipsMeant(readings: Reading[], line: string, read: Read): Reading[] {
  if (readings.length > NOTES_MAX) return readings;
  let told = readings;
  for (let at = 0; at < readings.length; at += 1) {
    const reading = readings[at]!;
    const slipped = slippedWords(reading);
    if (slipped.length === 0 && reading.kind !== "unclear") continue;
    const meant = [...numbersMeant(reading, line), ...wordsMeant(slipped, line)].slice(0, TRIED_MAX);
    const offers = meant.flatMap((typed) => wholeAt(at, readings, read(typed)));
    if (offers.length > 0) told = told.with(at, offered(reading, offers));
  }
  return told;
}

/** How a number is mistyped, and what it may have been meant for. */
const NUMBER_SLIPS: readonly (readonly [RegExp, string])[] = [
  // "18..50", "12. 50", "12 .50", "18,50"
  [/(\d)(?:[.,]{2,3}|[.,] | [.,]|,)(\d\d)(?![\d.,]|\p{L})/u, "$1.$2"],
  // "1.250"
  [/(?<![\d.,])(\d)\.(\d{3})(?!\d)/u, "$1,$2"],
  // "dresser30"
  [/(\p{L}{3})(\d)/u, "$1 $2"],
  // "12o", "1O"
  [/(\d)[oO](?!\p{L})/u, "$10"],
];

/** A line with a number of an unclear reading typed as it may be meant, in each way. */
function numbersMeant({ kind, text }: Reading, line: string): string[] {
  if (kind !== "unclear" || !/\d/.test(text)) return [];
  return NUMBER_SLIPS.flatMap(([slip, meant]) =>
    slip.test(text) && line.includes(text) ? [line.replace(text, text.replace(slip, meant))] : [],
  );
}

/** A reading with what it may mean instead offered first. */
export function offered(reading: Reading, offers: readonly Reading[]): Reading {
  if (reading.kind === "unclear") return { ...reading, could: distinct([...offers, ...couldOf(reading)]) };
  const others = reading.missing ? [] : [reading];
  return eitherOf(distinct([...offers, ...others]), reading);
}

/** The first of them that differ. */
function distinct(readings: readonly Reading[]): Reading[] {
  const said = readings.map((reading) => JSON.stringify({ ...reading, text: "" }));
  return readings.filter((_, at) => said.indexOf(said[at]!) === at).slice(0, COULD_MAX);
}

const NO_WORDS: readonly Slipped[] = [];

interface Slipped {
  word: string;
  /** What is meant: a piece, a supply, what stands beside those, or whatever is near. */
  role: "noun" | "supply" | "beside" | "any";
  slips: number;
}

/** The words of a reading that may be slips: left over, the name of a piece or of what was bought, or in a piece's place. */
function slippedWords(reading: Reading): readonly Slipped[] {
  const { kind, missing, text } = reading;
  if (kind === "unclear") {
    const { left = [], could } = reading;
    if (left.length === 1) return [{ word: left[0]!, role: "beside", slips: WRONG }];
    return left.length > 0 || could
      ? []
      : wordsIn(text, isUnknown).map((word) => ({ word, role: "any", slips: LETTER }));
  }
  if (kind === "spend" && !missing && reading.category === "other" && ORDINARY.has(reading.what ?? ""))
    return [{ word: reading.what!, role: "supply", slips: LETTER }];
  if (kind === "buy" && !missing)
    return (reading.pieces ?? [])
      .filter(({ name }) => name !== undefined && isUnlisted(name))
      .map(({ name }) => ({ word: name!, role: "noun", slips: LETTER }));
  // Of "this one" the piece is told by what was said before.
  const isOpen =
    missing?.includes("pieces") && missing.length === 1 && "price" in reading && !reading.follows;
  if (!isOpen) return NO_WORDS;
  return wordsIn(text, saysNothing).map((word) => ({ word, role: "noun", slips: WRONG }));
}

const wordsIn = (text: string, is: (word: string) => boolean): string[] =>
  wordsOf(text).flatMap(({ kind, norm }) => (kind === "letters" && is(norm) ? [norm] : []));

const rolesIn = (word: string): Roles | undefined => language().lexer.lexicon.entry(word)?.said;

const isUnknown = (word: string): boolean => !isSettled(language().lexer.lexicon.entry(word));

/** Of several words none is mistyped alone. */
const isUnlisted = (name: string): boolean => !name.includes(" ") && !rolesIn(name)?.noun;

function saysNothing(word: string): boolean {
  const roles = rolesIn(word);
  return ORDINARY.has(word) || (roles?.plain === true && !roles.heads && !roles.filler);
}

/** The line with a word near the one typed in its place, each in turn; no more of them than are tried. */
function wordsMeant(slipped: readonly Slipped[], line: string): string[] {
  const lines: string[] = [];
  const words = slipped.length > 0 ? wordsOf(line) : [];
  for (const { word, role, slips } of slipped) {
    const typed = words.find(({ norm }) => norm === word);
    const isMeant = ({ noun, supply, heads }: Roles): boolean =>
      role === "any" ||
      (role === "beside" ? !(noun || supply || heads) : Boolean(role === "noun" ? noun : supply));
    const near = typed ? language().lexer.speller.near(word, slips) : [];
    for (const known of near)
      if (isMeant(rolesIn(known) ?? NO_ROLES))
        lines.push(line.slice(0, typed!.start) + known + line.slice(typed!.end));
    if (lines.length >= TRIED_MAX) break;
  }
  return lines;
}

/** The reading in place of one of them, where a line read again says a whole one there and as many as before. */
function wholeAt(at: number, readings: readonly Reading[], meant: readonly Reading[]): Reading[] {
  const one = meant[at];
  const isOther = meant.length !== readings.length || !one || one.kind === "unclear" || one.missing;
  return isOther ? [] : [{ ...one, text: readings[at]!.text }];
}
