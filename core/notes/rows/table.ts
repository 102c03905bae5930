import type { Tok } from "../clause.ts";
import { NO_CLASSES, partsOf } from "./bits.ts";
import { matchAt } from "./match.ts";
import { type Element, type Pattern, patternOf } from "./pattern.ts";
import { hasAll, hasTwo, type Units, unitsOf } from "./units.ts";
import { makeLater, type RowWord, tableBit } from "./words.ts";

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
  /** What it needs beside the words that it is looked up by and the classes that are told by numbers. */
  needs: readonly Element[];
}

export interface Table<Effect extends string> {
  rows: readonly Row<Effect>[];
  /** The rows that fire, in the order of where they stand; of several for the same words the first of the table. */
  fired(tokens: readonly Tok[], line?: Units): readonly Fired<Effect>[];
  /** Whether any row holds all that it needs; far cheaper than to see what fires. */
  mayFire(line: Units): boolean;
  /** Every match of every row, in the order of the table, whether or not they overlap. */
  every(tokens: readonly Tok[], line?: Units): Fired<Effect>[];
}

/**
 * Rows by the words that they are looked up by. Nearly all are set aside by what a line must hold for them, so that
 * stands in numbers side by side: an object for each would cost more to fetch than to ask.
 */
interface Lookup<Effect extends string> {
  /** The bit of the table. */
  bit: number;
  /** Where the rows of a word begin and end, by the place of the word. */
  starts: Int32Array;
  ends: Int32Array;
  /** The rows; behind so many of them, those that no word looks up. */
  rows: readonly Compiled<Effect>[];
  worded: number;
  musts: Int32Array;
}

const MUSTS = 5;

function lookupOf<Effect extends string>(table: readonly Row<Effect>[]): Lookup<Effect> {
  const byWord = new Map<RowWord, Compiled<Effect>[]>();
  const always: Compiled<Effect>[] = [];
  table.forEach((row, order) => {
    const pattern = patternOf(row[0]);
    const key = rarestOf(pattern);
    const compiled = { row, pattern, order, needs: pattern.needs.filter((need) => need !== key) };
    if (!key) always.push(compiled);
    for (const word of new Set(key?.firsts)) {
      const others = byWord.get(word);
      if (others) others.push(compiled);
      else byWord.set(word, [compiled]);
    }
  });
  const bit = tableBit(byWord.keys());
  const rows: Compiled<Effect>[] = [];
  const starts: number[] = [];
  const ends: number[] = [];
  for (const [{ id }, of] of byWord) {
    starts[id] = rows.length;
    rows.push(...of);
    ends[id] = rows.length;
  }
  const musts = [...rows, ...always].flatMap(({ pattern: { must } }) => [...partsOf(must.bits), must.sieve]);
  return {
    bit,
    starts: Int32Array.from(starts),
    ends: Int32Array.from(ends),
    worded: rows.length,
    rows: [...rows, ...always],
    musts: Int32Array.from(musts),
  };
}

/** A table of rows ready to run. Nearly every row needs one of a few words: only those found in a line are tried. */
export function tableOf<Effect extends string>(rows: readonly Row<Effect>[]): Table<Effect> {
  let lookup: Lookup<Effect>;
  makeLater(() => {
    lookup = lookupOf(rows);
  });
  let last: { line: Units; candidates: readonly Compiled<Effect>[] } | undefined;
  /** A table is often asked twice of the same line: whether it may fire, and what does. */
  const candidates = (line: Units): readonly Compiled<Effect>[] => {
    if (last?.line !== line) last = { line, candidates: candidatesOf(line, lookup) };
    return last.candidates;
  };
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

const weightOf = ({ firsts }: Element): number =>
  firsts.reduce((sum, { text }) => sum + (COMMON.has(text) ? COMMON_WEIGHT : 1), 0);

/** The rarest words of which a line must hold one; null where only classes are needed. */
function rarestOf({ needs }: Pattern): Element | null {
  const worded = needs.filter(({ classes }) => classes.length === 0);
  return worded.length === 0 ? null : worded.reduce((a, b) => (weightOf(b) < weightOf(a) ? b : a));
}

function candidatesOf<Effect extends string>(
  line: Units,
  lookup: Lookup<Effect>,
): readonly Compiled<Effect>[] {
  const { bit, starts, ends, worded, rows } = lookup;
  if ((line.tables & bit) === 0 && worded === rows.length) return NO_CANDIDATES;
  const found: Compiled<Effect>[] = [];
  if ((line.tables & bit) !== 0)
    for (let at = 0; at < line.units.length; at += 1) {
      const { tables, id } = line.units[at]!.word;
      if ((tables & bit) !== 0) addStanding(found, lookup, line, starts[id]!, ends[id]!);
    }
  if (worded < rows.length) addStanding(found, lookup, line, worded, rows.length);
  return found.length > 1 ? found.sort(inOrder) : found;
}

const NO_CANDIDATES: readonly never[] = [];

const inOrder = (a: { order: number }, b: { order: number }): number => a.order - b.order;

/** Adds the rows from one place to another of which a line holds all that they need. */
function addStanding<Effect extends string>(
  found: Compiled<Effect>[],
  { rows, musts }: Lookup<Effect>,
  line: Units,
  start: number,
  end: number,
): void {
  const { sieve, bits } = line;
  const { a, b, c, d } = bits;
  for (let at = start; at < end; at += 1) {
    const must = at * MUSTS;
    const lacks =
      (musts[must]! & ~a) |
      (musts[must + 1]! & ~b) |
      (musts[must + 2]! & ~c) |
      (musts[must + 3]! & ~d) |
      (musts[must + 4]! & ~sieve);
    if (lacks === 0 && mayStand(rows[at]!, line) && !found.includes(rows[at]!)) found.push(rows[at]!);
  }
}

const mayStand = <Effect extends string>({ needs, pattern }: Compiled<Effect>, line: Units): boolean =>
  hasAll(needs, line) && (pattern.twice === NO_CLASSES || hasTwo(pattern.twice, line));

function firedOf<Effect extends string>(
  line: Units,
  rows: readonly Compiled<Effect>[],
): readonly Fired<Effect>[] {
  if (rows.length === 0) return NO_CANDIDATES;
  const found: Fired<Effect>[] = [];
  for (let at = 0; at < line.units.length; at += 1) {
    const { word, span } = line.units[at]!;
    for (const { row, pattern } of rows) {
      if (pattern.opens ? !pattern.opens.has(word) : span === 0) continue;
      const match = matchAt(pattern, line, at);
      if (!match || found.some((one) => one.from < match.to && one.to > match.from)) continue;
      found.push({ effect: row[1], row, from: match.from, to: match.to });
    }
  }
  return found.length > 1 ? found.sort((a, b) => a.from - b.from) : found;
}
