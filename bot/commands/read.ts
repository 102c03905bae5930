import "../../core/lists.ts";
import { dayOfInstant, isDay } from "../../core/calendar.ts";
import { printReading, readMessage } from "../../core/notes/read.ts";
import { whyRead } from "../../core/notes/why.ts";
import { readEnvironment } from "../environment.ts";
import { typedLines } from "../typed-lines.ts";
import { isZone, machineZone } from "../zone.ts";

/** The day that relative words count from: `--on YYYY-MM-DD`, else today in TIME_ZONE or the machine's zone. */
function dayOf(words: readonly string[]): string {
  const on = words[words.indexOf("--on") + 1];
  if (words.includes("--on") && on && isDay(on)) return on;
  // An unknown zone name: reading a note never fails for it.
  const zone = readEnvironment()["TIME_ZONE"] ?? "";
  return dayOfInstant(Date.now(), isZone(zone) ? zone : machineZone());
}

const today = dayOf(process.argv.slice(2));
/** `--why`: how each line came to its readings, in place of the JSON. */
const explains = process.argv.includes("--why");
// One note a line in, one JSON object a line out.
for await (const line of typedLines()) {
  const lines = explains
    ? [line, ...whyRead(line, today)]
    : [JSON.stringify({ line, readings: readMessage(line, today).map(printReading) })];
  process.stdout.write(`${lines.join("\n")}\n`);
}
