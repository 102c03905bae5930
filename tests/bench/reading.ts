import { performance } from "node:perf_hooks";
import { parse } from "chrono-node";
import { readMessage } from "../../core/notes/read.ts";

/** Ten lines without a date in words to one with: what a day of notes looks like. */
const LINES: readonly string[] = [
  "bought tall white dresser 35 cash",
  "sold both nightstands 60 each",
  "paint 12.50 for dresser",
  "2.5h sanding the hutch",
  "drove 24 miles to get desk",
  "listed #14 at 1.2k",
  "deposit 45 on desk transfer",
  "finished desk and listed it 165",
  "primer 16 and sandpaper 7.50",
  "how much is left on the loan",
  "picked up 2 end tables 20 yard sale yesterday",
];

const TODAY = "2026-05-12";
const REFERENCE = new Date(2026, 4, 12, 12);
const ROUNDS = 400;

/** Lines a second of one way of reading, after a warm-up. */
function linesPerSecond(read: (line: string) => unknown): number {
  for (let round = 0; round < 50; round += 1) for (const line of LINES) read(line);
  const start = performance.now();
  for (let round = 0; round < ROUNDS; round += 1) for (const line of LINES) read(line);
  return (ROUNDS * LINES.length * 1000) / (performance.now() - start);
}

/** Notes read a second, beside the date library's parse alone over the same lines; above 1 the reader is faster. */
export function benchReading(): { linesPerSecond: number; chronoLinesPerSecond: number; ratio: number } {
  // The better of three: a busy machine slows either one down.
  const best = (read: (line: string) => unknown): number =>
    Math.max(...Array.from({ length: 3 }, () => linesPerSecond(read)));
  const ours = best((line) => readMessage(line, TODAY));
  const theirs = best((line) => parse(line, REFERENCE));
  return { linesPerSecond: Math.round(ours), chronoLinesPerSecond: Math.round(theirs), ratio: ours / theirs };
}
