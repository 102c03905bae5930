import "../../core/lists.ts";
import { dayOfInstant, isDay } from "../../core/calendar.ts";
import { printReading, readMessage } from "../../core/notes/read.ts";
import { whyRead } from "../../core/notes/why.ts";
import { readEnvironment } from "../environment.ts";
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
let rest = "";
process.stdin.setEncoding("utf8");
for await (const chunk of process.stdin) {
  const lines = (rest + chunk).split("\n");
  rest = lines.pop() ?? "";
  for (const line of lines) print(line);
}
if (rest !== "") print(rest);

/** One note a line in, one JSON object a line out. */
function print(typed: string): void {
  const line = typed.endsWith("\r") ? typed.slice(0, -1) : typed;
  if (explains) {
    process.stdout.write(`${[line, ...whyRead(line, today)].join("\n")}\n`);
    return;
  }
  process.stdout.write(`${JSON.stringify({ line, readings: readMessage(line, today).map(printReading) })}\n`);
}
