import { describe, expect, it } from "vitest";
import { lexed } from "../../../core/notes/lexed.ts";
import { readLine } from "../../../core/notes/line.ts";
import { TABLES } from "../../../core/notes/rows/apply.ts";
import { chatter } from "../../../core/notes/rows/chatter.ts";
import { corrections } from "../../../core/notes/rows/corrections.ts";
import { deals } from "../../../core/notes/rows/deals.ts";
import { goingOn } from "../../../core/notes/rows/going-on.ts";
import { misnoted } from "../../../core/notes/rows/misnoted.ts";
import { newest } from "../../../core/notes/rows/newest.ts";
import { patternOf } from "../../../core/notes/rows/pattern.ts";
import { repeats } from "../../../core/notes/rows/repeats.ts";
import { settlings } from "../../../core/notes/rows/settling.ts";
import { telling } from "../../../core/notes/rows/telling.ts";
import type { Trace } from "../../../core/notes/rows/trace.ts";
import { apart } from "../../../core/notes/tokens/apart.ts";

const all = {
  ...TABLES,
  chatter,
  corrections,
  deals,
  goingOn,
  misnoted,
  newest,
  repeats,
  settlings,
  telling,
};

type Fires = (tokens: ReturnType<typeof apart>) => readonly { row: readonly [string, string, string] }[];

/** The patterns of all rows that turned a note, or stood ready to. */
function turnedIn(note: string, fired: Fires): readonly string[] {
  const trace: Trace[] = [];
  readLine(note, "2026-05-14", 0, trace);
  const traced = trace.flatMap((step) => (step.row ? [step.row] : []));
  // What only keeps other rows away leaves no trace.
  const stood = [lexed(note), apart(lexed(note))].flatMap((tokens) => fired(tokens).map((one) => one.row));
  return [...traced, ...stood].map(([pattern]) => pattern);
}

describe.each(Object.entries(all))("the rows of %s", (_table, { rows, fired }) => {
  // One test for all of a table: one for each takes as long as reading the note.
  it("turn the notes that show them", () => {
    const idle = rows.filter(([pattern, , note]) => !turnedIn(note, fired).includes(pattern));
    expect(idle.map(([pattern, , note]) => `${note}: ${pattern}`)).toEqual([]);
  });
});

describe("a pattern", () => {
  it("without its part in brackets is a mistake of the table", () => {
    expect(() => patternOf("sold <piece>")).toThrow("brackets");
  });
});
