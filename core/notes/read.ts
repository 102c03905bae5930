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
  return allAtOnce(readingMessage(text, today));
}

/** The same, a line at each step. */
export function* readingMessage(text: string, today: Day): Steps<Reading[]> {
  if (!text.includes("\n") && !text.includes("\r")) return readLine(text, today, 0);
  const readings: Reading[] = [];
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    readings.push(...readLine(line, today, index));
    yield;
  }
  return readings;
}
