import type { Tok } from "../clause.ts";
import { matchAt } from "./match.ts";
import { type Pattern, patternOf } from "./pattern.ts";
import { bitOf, couldStand, type Units, unitsOf } from "./units.ts";

/** A row: the pattern, what it makes of the part in brackets, and the note that shows it. */
export type Row<Effect extends string> = readonly [pattern: string, effect: Effect, note: string];

export interface Fired<Effect extends string = string> {
  effect: Effect;
  /** The tokens of the part in brackets: `from` up to `to`. */
  from: number;
  to: number;
  row: Row<Effect>;
}

interface Compiled<Effect extends string> {
  row: Row<Effect>;
  pattern: Pattern;
  order: number;
}

export interface Table<Effect extends string> {
  rows: readonly Row<Effect>[];
  /** The rows that fire, in the order of where they stand; of several for the same words the first of the table. */
  fired(tokens: readonly Tok[], line?: Units): Fired<Effect>[];
  /** Whether any row holds all that it needs; far cheaper than to see what fires. */
  mayFire(line: Units): boolean;
  /** Every match of every row, in the order of the table, whether or not they overlap. */
  every(tokens: readonly Tok[], line?: Units): Fired<Effect>[];
}

/** A table of rows ready to run. Nearly every row needs one of a few words: only those found in a line are tried. */
export function tableOf<Effect extends string>(rows: readonly Row<Effect>[]): Table<Effect> {
  const byWord = new Map<string, Compiled<Effect>[]>();
  const always: Compiled<Effect>[] = [];
  rows.forEach((row, order) => {
    const compiled = { row, pattern: patternOf(row[0]), order };
    const words = rarestOf(compiled.pattern);
    if (!words) always.push(compiled);
    else for (const word of words) byWord.set(word, [...(byWord.get(word) ?? []), compiled]);
  });
  const bit = bitOf(byWord.keys());
  const candidates = (line: Units) =>
    (line.tables & bit) === 0 && always.length === 0 ? NONE : candidatesOf(line, bit, byWord, always);
  return {
    rows,
    fired: (tokens, line = unitsOf(tokens)) => firedOf(line, candidates(line)),
    every: (tokens, line = unitsOf(tokens)) => candidates(line).flatMap((row) => matchesOf(line, row)),
    mayFire: (line) => candidates(line).length > 0,
  };
}

/** Every place where a row stands in a line. */
function matchesOf<Effect extends string>(line: Units, { row, pattern }: Compiled<Effect>): Fired<Effect>[] {
  const found: Fired<Effect>[] = [];
  for (let at = 0; at < line.units.length; at += 1) {
    const { word, span } = line.units[at]!;
    if (pattern.opens ? !pattern.opens.has(word) : span === 0) continue;
    const match = matchAt(pattern, line, at);
    if (match) found.push({ effect: row[1], row, ...match });
  }
  return found;
}

/** Words that stand in every other note: a row is looked up by others where it can. */
const COMMON = new Set(
  "the a an of for to from at on in by with and it is was are were got paid sold bought my i had has now no not".split(
    " ",
  ),
);
const COMMON_WEIGHT = 30;

const weightOf = (words: readonly string[]): number =>
  words.reduce((sum, word) => sum + (COMMON.has(word) ? COMMON_WEIGHT : 1), 0);

/** The rarest words of which a line must hold one; null where only classes are needed. */
function rarestOf({ needs }: Pattern): readonly string[] | null {
  const worded = needs.filter(({ tests }) => tests.length === 0).map(({ words }) => words);
  return worded.length === 0 ? null : worded.reduce((a, b) => (weightOf(b) < weightOf(a) ? b : a));
}

const NONE: readonly never[] = [];

function candidatesOf<Effect extends string>(
  line: Units,
  bit: number,
  byWord: ReadonlyMap<string, readonly Compiled<Effect>[]>,
  always: readonly Compiled<Effect>[],
): readonly Compiled<Effect>[] {
  const found: Compiled<Effect>[] = [];
  if ((line.tables & bit) !== 0)
    for (let at = 0; at < line.units.length; at += 1) {
      const { word, tables } = line.units[at]!;
      if ((tables & bit) !== 0) addStanding(found, byWord.get(word), line);
    }
  addStanding(found, always, line);
  return found.length > 1 ? found.sort(inOrder) : found;
}

const inOrder = (a: { order: number }, b: { order: number }): number => a.order - b.order;

function addStanding<Effect extends string>(
  found: Compiled<Effect>[],
  rows: readonly Compiled<Effect>[] | undefined,
  line: Units,
): void {
  if (!rows) return;
  for (let at = 0; at < rows.length; at += 1) {
    const row = rows[at]!;
    if (couldStand(row.pattern, line) && !found.includes(row)) found.push(row);
  }
}

function firedOf<Effect extends string>(line: Units, rows: readonly Compiled<Effect>[]): Fired<Effect>[] {
  if (rows.length === 0) return [];
  const found: Fired<Effect>[] = [];
  const taken = new Set<number>();
  for (let at = 0; at < line.units.length; at += 1) {
    const { word, span } = line.units[at]!;
    for (const { row, pattern } of rows) {
      if (pattern.opens ? !pattern.opens.has(word) : span === 0) continue;
      const match = matchAt(pattern, line, at);
      if (!match || isTaken(taken, match)) continue;
      for (let place = match.from; place < match.to; place += 1) taken.add(place);
      found.push({ effect: row[1], row, ...match });
    }
  }
  return found.sort((a, b) => a.from - b.from);
}

function isTaken(taken: ReadonlySet<number>, { from, to }: { from: number; to: number }): boolean {
  for (let place = from; place < to; place += 1) if (taken.has(place)) return true;
  return false;
}
