import "../../core/lists.ts";
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
/** Rounds over the lines before any is timed: the engine has compiled by then what it is going to compile. */
const WARM_UP_ROUNDS = 4000;
const ROUNDS = 1000;
const TURNS = 5;

type Read = (line: string) => unknown;

/** Seconds that some rounds over the lines take. */
function secondsFor(rounds: number, read: Read): number {
  const start = performance.now();
  for (let round = 0; round < rounds; round += 1) for (const line of LINES) read(line);
  return (performance.now() - start) / 1000;
}

/** Notes read a second, beside the date library's parse alone over the same lines; above 1 the reader is faster. */
export interface ReadingFigures {
  linesPerSecond: number;
  chronoLinesPerSecond: number;
  ratio: number;
}

function measured(): ReadingFigures {
  const ours: Read = (line) => readMessage(line, TODAY);
  const theirs: Read = (line) => parse(line, REFERENCE);
  for (const read of [ours, theirs]) secondsFor(WARM_UP_ROUNDS, read);
  // Turn about, and the best of each: a busy machine slows down either.
  const best = { ours: Number.POSITIVE_INFINITY, theirs: Number.POSITIVE_INFINITY };
  for (let turn = 0; turn < TURNS; turn += 1) {
    best.ours = Math.min(best.ours, secondsFor(ROUNDS, ours));
    best.theirs = Math.min(best.theirs, secondsFor(ROUNDS, theirs));
  }
  const lines = ROUNDS * LINES.length;
  return {
    linesPerSecond: Math.round(lines / best.ours),
    chronoLinesPerSecond: Math.round(lines / best.theirs),
    ratio: best.theirs / best.ours,
  };
}

console.log(JSON.stringify(measured()));
