import type { Tok } from "../clause.ts";
import { matchAt } from "./match.ts";
import { type Element, type Pattern, patternOf } from "./pattern.ts";
import { hasNeeds, type Units, unitsOf } from "./units.ts";
import { type RowWord, tableBit } from "./words.ts";

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

/** Rows that are looked up together, and what a line must hold for each: numbers side by side, since nearly all fail here. */
interface Shelf<Effect extends string> {
  rows: readonly Compiled<Effect>[];
  musts: Int32Array;
}

/** Rows by the place of the word that they are looked up by, and those without one. */
interface Lookup<Effect extends string> {
  /** The bit of the table. */
  bit: number;
  byWord: readonly (Shelf<Effect> | undefined)[];
  always: Shelf<Effect>;
}

const MUSTS = 5;

function shelfOf<Effect extends string>(rows: readonly Compiled<Effect>[]): Shelf<Effect> {
  const musts = rows.flatMap(({ pattern: { must } }) => {
    const { a, b, c, d } = must.bits;
    return [a, b, c, d, must.sieve];
  });
  return { rows, musts: Int32Array.from(musts) };
}

function lookupOf<Effect extends string>(rows: readonly Row<Effect>[]): Lookup<Effect> {
  const byWord = new Map<RowWord, Compiled<Effect>[]>();
  const always: Compiled<Effect>[] = [];
  rows.forEach((row, order) => {
    const compiled = { row, pattern: patternOf(row[0]), order };
    const words = rarestOf(compiled.pattern);
    if (!words) always.push(compiled);
    for (const word of words ?? []) byWord.set(word, [...(byWord.get(word) ?? []), compiled]);
  });
  const shelves: Shelf<Effect>[] = [];
  for (const [word, of] of byWord) shelves[word.id] = shelfOf(of);
  return { bit: tableBit(byWord.keys()), byWord: shelves, always: shelfOf(always) };
}

/** A table of rows ready to run. Nearly every row needs one of a few words: only those found in a line are tried. */
export function tableOf<Effect extends string>(rows: readonly Row<Effect>[]): Table<Effect> {
  const lookup = lookupOf(rows);
  return {
    rows,
    fired: (tokens, line = unitsOf(tokens)) => firedOf(line, candidatesOf(line, lookup)),
    every: (tokens, line = unitsOf(tokens)) =>
      candidatesOf(line, lookup).flatMap((row) => matchesOf(line, row)),
    mayFire: (line) => candidatesOf(line, lookup).length > 0,
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

const weightOf = ({ firsts }: Element): number =>
  firsts.reduce((sum, { text }) => sum + (COMMON.has(text) ? COMMON_WEIGHT : 1), 0);

/** The rarest words of which a line must hold one; null where only classes are needed. */
function rarestOf({ needs }: Pattern): readonly RowWord[] | null {
  const worded = needs.filter(({ classes }) => classes.length === 0);
  return worded.length === 0 ? null : worded.reduce((a, b) => (weightOf(b) < weightOf(a) ? b : a)).firsts;
}

function candidatesOf<Effect extends string>(
  line: Units,
  { bit, byWord, always }: Lookup<Effect>,
): readonly Compiled<Effect>[] {
  const found: Compiled<Effect>[] = [];
  if ((line.tables & bit) !== 0)
    for (let at = 0; at < line.units.length; at += 1) {
      const { word } = line.units[at]!;
      if ((word.tables & bit) !== 0) addStanding(found, byWord[word.id]!, line);
    }
  addStanding(found, always, line);
  return found.length > 1 ? found.sort(inOrder) : found;
}

const inOrder = (a: { order: number }, b: { order: number }): number => a.order - b.order;

function addStanding<Effect extends string>(
  found: Compiled<Effect>[],
  { rows, musts }: Shelf<Effect>,
  line: Units,
): void {
  const { sieve, bits } = line;
  const { a, b, c, d } = bits;
  for (let at = 0; at < rows.length; at += 1) {
    const must = at * MUSTS;
    const lacks =
      (musts[must]! & ~a) |
      (musts[must + 1]! & ~b) |
      (musts[must + 2]! & ~c) |
      (musts[must + 3]! & ~d) |
      (musts[must + 4]! & ~sieve);
    if (lacks === 0 && hasNeeds(rows[at]!.pattern, line) && !found.includes(rows[at]!)) found.push(rows[at]!);
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
