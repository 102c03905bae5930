import type { Tok } from "../clause.ts";
import { handInRows, standingIn } from "./lookup.ts";
import { type Match, matchAt } from "./match.ts";
import { type Pattern, patternOf } from "./pattern.ts";
import type { Row } from "./row.ts";
import type { Candidate } from "./standing.ts";
import { type Units, unitsOf } from "./units.ts";
import type { Unit } from "./words.ts";

export interface Fired<Effect extends string = string> {
  effect: Effect;
  /** The tokens of the part in brackets: `from` up to `to`. */
  from: number;
  to: number;
  row: Row<Effect>;
}

interface Compiled<Effect extends string> extends Candidate {
  row: Row<Effect>;
}

export interface Table<Effect extends string> {
  rows: readonly Row<Effect>[];
  /** Its bit among the tables of which a row may stand in a line. */
  bit: number;
  /** The rows that fire, in the order of where they stand; of several for the same words the first of the table. */
  fired(tokens: readonly Tok[], line?: Units): readonly Fired<Effect>[];
  /** Whether any row holds all that it needs; far cheaper than to see what fires. */
  mayFire(line: Units): boolean;
  /** Every match of every row, in the order of the table, whether or not they overlap. */
  every(tokens: readonly Tok[], line?: Units): Fired<Effect>[];
}

/** A table of rows ready to run. Nearly every row needs one of a few words: only those found in a line are tried. */
export function tableOf<Effect extends string>(rows: readonly Row<Effect>[]): Table<Effect> {
  const table = handInRows((number) =>
    rows.map((row, order) => ({ row, order, table: number, pattern: patternOf(row[0]) })),
  );
  const bit = 1 << table;
  const candidates = (line: Units) => standingIn(line).rows[table] as readonly Compiled<Effect>[];
  return {
    rows,
    bit,
    fired: (tokens, line = unitsOf(tokens)) => firedOf(line, candidates(line)),
    every: (tokens, line = unitsOf(tokens)) => candidates(line).flatMap((row) => matchesOf(line, row)),
    mayFire: (line) => (standingIn(line).tables & bit) !== 0,
  };
}

/** Whether a match may begin with a word. */
const mayOpen = ({ opens }: Pattern, { word, span }: Unit): boolean =>
  opens ? (opens.sieve & word.sieve) !== 0 && opens.words.includes(word) : span !== 0;

/** Every place where a row stands in a line. */
function matchesOf<Effect extends string>(line: Units, { row, pattern }: Compiled<Effect>): Fired<Effect>[] {
  const found: Fired<Effect>[] = [];
  for (let at = 0; at < line.units.length; at += 1) {
    if (!mayOpen(pattern, line.units[at]!)) continue;
    const match = matchAt(pattern, line, at);
    if (match) found.push({ effect: row[1], row, ...match });
  }
  return found;
}

const NOTHING: readonly never[] = [];

const overlaps = (found: readonly Fired[], { from, to }: Match): boolean =>
  found.length > 0 && found.some((one) => one.from < to && one.to > from);

function firedOf<Effect extends string>(
  line: Units,
  rows: readonly Compiled<Effect>[],
): readonly Fired<Effect>[] {
  if (rows.length === 0) return NOTHING;
  const found: Fired<Effect>[] = [];
  for (let at = 0; at < line.units.length; at += 1) {
    const unit = line.units[at]!;
    for (let place = 0; place < rows.length; place += 1) {
      const { row, pattern } = rows[place]!;
      if (!mayOpen(pattern, unit)) continue;
      const match = matchAt(pattern, line, at);
      if (!match || overlaps(found, match)) continue;
      found.push({ effect: row[1], row, from: match.from, to: match.to });
    }
  }
  return found.length > 1 ? found.sort((a, b) => a.from - b.from) : found;
}
