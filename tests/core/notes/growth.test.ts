import { describe, expect, it } from "vitest";
import { readMessage } from "../../../core/notes/read.ts";

/** Made to trap a reader that looks back or ahead without bound. */
const HOSTILE: readonly (readonly [string, string])[] = [
  ["digits", "9"],
  ["a sum without an end", "1+"],
  ["products", "2x"],
  ["grouped digits", "1,000,"],
  ["number words", "hundred thousand "],
  ["tens", "twenty "],
  ["letters", "a"],
  ["blanks", " "],
  ["pieces", "dresser "],
  ["traits", "white "],
  ["pieces and prices", "sold desk 20 "],
  ["verbs", "sold bought listed "],
  ["light verbs", "got put took gave made "],
  ["question words", "how much did i make "],
  ["fillers", "the a so just "],
  ["prepositions", "from the lady in the "],
  ["days", "last sat mar 14 "],
  ["hours", "1 hour and "],
  ["marks", "?!.,;-"],
  ["slips", "dreser nitestnd "],
  ["emoji", "🎉"],
  ["loans", "loan to the loan "],
  ["supplies", "paint and primer 12, "],
  ["apostrophes", "it's'"],
  ["points", "desk.90."],
];

const REPEATS = 12;
/** So fast is fast enough, whatever half of it takes. */
const FAST_MS = 60;

/** What a text and half of it take at the fastest, one after the other: a busy machine is busy for both. */
function fastest(text: string, half: string): { whole: number; half: number } {
  const best = { whole: Number.POSITIVE_INFINITY, half: Number.POSITIVE_INFINITY };
  for (let turn = 0; turn < REPEATS && best.whole >= FAST_MS; turn += 1) {
    best.whole = Math.min(best.whole, timeOf(text));
    best.half = Math.min(best.half, timeOf(half));
  }
  return best;
}

/** In milliseconds of the processor's own time: a busy machine makes none of these longer. */
function timeOf(text: string): number {
  const start = process.cpuUsage();
  readMessage(text, "2026-05-12");
  return process.cpuUsage(start).user / 1000;
}

const upTo = (unit: string, length: number): string =>
  unit.repeat(Math.ceil(length / unit.length)).slice(0, length);

describe("time to read grows no faster than the note", () => {
  it.each(HOSTILE)("%s", (_name, unit) => {
    const { whole, half } = fastest(upTo(unit, 4096), upTo(unit, 2048));
    // Twice the length may take twice the time; room for a busy machine. A square would be four times, and slow.
    expect(whole).toBeLessThan(Math.max(half * 3.2, FAST_MS));
    expect(whole).toBeLessThan(400);
  });

  it("a message far beyond the limit of any chat is read too", () => {
    expect(readMessage("sold desk 20, ".repeat(3000), "2026-05-12").length).toBeGreaterThan(0);
  });
});
