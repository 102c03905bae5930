import type { Day } from "../calendar.ts";
import { allAtOnce, type Steps } from "../steps.ts";
import { readLine } from "./line.ts";
import type { Reading } from "./reading.ts";

export { printReading } from "./print.ts";

/**
 * What a message says: the readings of its lines in order, each with the number of its line (from 0) and the
 * clause as typed. Blank lines give nothing; any text at all gives a value. `today` is the local day that
 * relative days count from.
 */
export function readMessage(text: string, today: Day): Reading[] {
  return isOneLine(text) ? readLine(text, today, 0) : allAtOnce(readingMessage(text, today));
}

const isOneLine = (text: string): boolean => !text.includes("\n") && !text.includes("\r");

/** The same, a line at each step. */
export function* readingMessage(text: string, today: Day): Steps<Reading[]> {
  if (isOneLine(text)) return readLine(text, today, 0);
  const readings: Reading[] = [];
  let heading: Heading | null = null;
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    const alone = readLine(line, today, index);
    const listed: Reading[] | null = heading && listedUnder(heading, line, alone, today, index);
    // What only opens a list is no note of its own.
    if (listed && readings.at(-1) === heading!.reading) readings.pop();
    readings.push(...(listed ?? alone));
    if (!listed && alone.length > 0) heading = headingOf(line, alone);
    yield;
  }
  return readings;
}

/** "bought" or "sold today" on a line of its own: the verb of the lines below that have none. */
interface Heading {
  line: string;
  reading: Reading;
}

function headingOf(line: string, [reading, ...others]: readonly Reading[]): Heading | null {
  const { missing = [] } = reading!;
  const isOpen = others.length === 0 && missing.includes("pieces") && missing.includes("price");
  return isOpen ? { line, reading: reading! } : null;
}

const BULLET = /^\s{0,20}[-*•–]\s{0,5}/;

/** A line that names a piece and a price as the heading's verb has it; null where it says anything else. */
function listedUnder(
  { line: heading, reading: { kind } }: Heading,
  line: string,
  alone: readonly Reading[],
  today: Day,
  index: number,
): Reading[] | null {
  const isOpen = (one: Reading): boolean =>
    one.kind === "unclear" && one.could?.some((other) => other.kind === kind) === true;
  if (alone.length === 0 || !alone.every(isOpen)) return null;
  const readings = readLine(`${heading} ${line.replace(BULLET, "")}`, today, index);
  const isWhole = readings.every((one) => one.kind === kind && !one.missing);
  return isWhole ? readings.map((one) => ({ ...one, text: line.trim() })) : null;
}
