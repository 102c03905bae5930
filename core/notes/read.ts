import type { Day } from "../calendar.ts";
import { readLine } from "./line.ts";
import type { Reading } from "./reading.ts";

export { printReading } from "./print.ts";

/**
 * What a message says: the readings of its lines in order, each with the number of its line (from 0) and the
 * clause as typed. Blank lines give nothing; any text at all gives a value. `today` is the local day that
 * relative days count from.
 */
export function readMessage(text: string, today: Day): Reading[] {
  if (!text.includes("\n") && !text.includes("\r")) return readLine(text, today, 0);
  return text.split(/\r\n|\r|\n/).flatMap((line, index) => readLine(line, today, index));
}
