import type { Day } from "../calendar.ts";
import { allAtOnce, type Steps } from "../steps.ts";
import { readLine } from "./line.ts";
import type { Reading } from "./reading.ts";
import {
  type Heading,
  headingOf,
  itemsOf,
  listedInLine,
  tellsNothing,
  underHeading,
} from "./under-heading.ts";

export { printReading } from "./print.ts";

/**
 * What a message says: the readings of its lines in order, each with the number of its line (from 0) and the
 * clause as typed. Blank lines give nothing; any text at all gives a value. `today` is the local day that
 * relative days count from.
 */
export function readMessage(text: string, today: Day): Reading[] {
  return isOneLine(text) && !text.includes("2)")
    ? readLine(text, today, 0)
    : allAtOnce(readingMessage(text, today));
}

/** Parts of late: several look at the same parts of one message. */
const known = new Map<string, readonly Reading[]>();
const KNOWN_MAX = 32;

/** What a part of a message says, for whoever looks at one part after another. */
export function readPart(part: string, today: Day): readonly Reading[] {
  const key = `${today} ${part}`;
  const before = known.get(key);
  if (before) return before;
  if (known.size >= KNOWN_MAX) known.clear();
  const readings = readMessage(part, today);
  known.set(key, readings);
  return readings;
}

const isOneLine = (text: string): boolean => !text.includes("\n") && !text.includes("\r");

/** The same, a line at each step. */
export function* readingMessage(said: string, today: Day): Steps<Reading[]> {
  const listed = isOneLine(said) ? listedInLine(said) : null;
  const text = listed ?? said;
  if (isOneLine(text)) return readLine(text, today, 0);
  const readings: Reading[] = [];
  const items = itemsOf(text.split(/\r\n|\r|\n/));
  let heading: Heading | null = null;
  for (const [at, item] of items.entries()) {
    const index = listed === null ? at : 0;
    const alone = readLine(item, today, index);
    const opened = headingOf(item, alone);
    const under: Reading[] | null =
      heading && !opened ? underHeading(heading, item, alone, today, index) : null;
    // What only opens a list is no note of its own.
    const isHeading = heading && readings.at(-1) === heading.reading && alone.length > 0;
    if (isHeading && (under || tellsNothing(heading!))) readings.pop();
    readings.push(...(under ?? alone));
    if (opened || (alone.length > 0 && !under && heading?.day === "")) heading = opened;
    yield;
  }
  return fromSamePlace(readings);
}

const SAME_PLACE = /\bsame (?:place|spot|sale|store|shop|stop|house|guy|lady|seller|person|folks|people)\b/i;

/** "lamp 6 same place": where the purchase before it was made. */
function fromSamePlace(readings: Reading[]): Reading[] {
  let source: string | undefined;
  return readings.map((one) => {
    if (one.kind !== "buy") return one;
    const isSame = one.source === undefined && source !== undefined && SAME_PLACE.test(one.text);
    if (!isSame) source = one.source ?? source;
    return isSame ? { ...one, source: source! } : one;
  });
}
