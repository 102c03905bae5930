import { BIT_PARTS, type Bits, bitsOf, NO_CLASSES, partOf, partsOf, placeIn } from "./bits.ts";
import type { Element, Pattern } from "./pattern.ts";
import { hasAll, hasTwo, type Units } from "./units.ts";
import { makeLater, type RowWord, sieveOf } from "./words.ts";

/** A row of a table as lines look it up. */
export interface Candidate {
  /** The number of its table, and its place there. */
  table: number;
  order: number;
  pattern: Pattern;
}

/**
 * The rows of all tables, those of a word or a class side by side. Nearly all are set aside by what a line must hold for
 * them, so that stands in numbers: an object for each would cost more to fetch than to ask.
 */
interface Lookup {
  rows: readonly Candidate[];
  musts: Int32Array;
  /** The classes that rows are looked up by, and where those of each begin and end. */
  classes: Bits;
  starts: readonly number[];
  ends: readonly number[];
}

const MUSTS = 10;

/** What a line must hold any of: the rarest of what is needed, where it needs more than one. */
function anyOf(needs: readonly Element[]): readonly number[] {
  if (needs.length === 0) return [-1, -1, -1, -1, -1];
  const { bits, rarest } = needs.reduce((a, b) => (b.often < a.often ? b : a));
  return [...partsOf(bits), sieveOf(rarest)];
}

/** The rows of each table, by its number. */
type Standing = readonly (readonly Candidate[])[];

const all: Candidate[] = [];
const none: Candidate[][] = [];
let lookup: Lookup | undefined;

/** Hands in one more table, whose rows are made later, and gives its number: they are looked up with all others. */
export function handInRows(madeFor: (table: number) => readonly Candidate[]): number {
  const table = none.length;
  none.push([]);
  makeLater(() => {
    all.push(...madeFor(table));
    lookup = undefined;
  });
  return table;
}

function lookupOf(): Lookup {
  const byKey = new Map<RowWord | number, Candidate[]>();
  for (const row of all)
    for (const key of new Set([...row.pattern.key.rarest, ...row.pattern.key.classes])) {
      const others = byKey.get(key);
      if (others) others.push(row);
      else byKey.set(key, [row]);
    }
  const rows: Candidate[] = [];
  const starts: number[] = [];
  const ends: number[] = [];
  for (const [key, of] of byKey) {
    const start = rows.length;
    rows.push(...of);
    if (typeof key === "number") {
      starts[key] = start;
      ends[key] = rows.length;
    } else {
      key.rowsFrom = start;
      key.rowsTo = rows.length;
    }
  }
  const musts = rows.flatMap(({ pattern: { must, needs } }) => [
    ...partsOf(must.bits),
    must.sieve,
    ...anyOf(needs),
  ]);
  const classes = bitsOf([...byKey.keys()].filter((key) => typeof key === "number"));
  return { rows, musts: Int32Array.from(musts), classes, starts, ends };
}

let last: { line: Units; standing: Standing } | undefined;

/** The rows of a table that may stand in a line, in their order. One table after another asks it of the same line. */
export function candidatesIn(line: Units, table: number): readonly Candidate[] {
  if (last?.line !== line) last = { line, standing: standingIn(line) };
  return last.standing[table]!;
}

function standingIn(line: Units): Standing {
  lookup ??= lookupOf();
  let standing: Candidate[][] | undefined;
  const { units, bits } = line;
  for (let at = 0; at < units.length; at += 1) {
    const { rowsFrom, rowsTo } = units[at]!.word;
    if (rowsFrom < rowsTo) standing = withStanding(standing, lookup, line, rowsFrom, rowsTo);
  }
  const { classes, starts, ends } = lookup;
  for (let part = 0; part < BIT_PARTS; part += 1)
    for (let left = partOf(bits, part) & partOf(classes, part); left !== 0; left &= left - 1) {
      const place = placeIn(part, left);
      standing = withStanding(standing, lookup, line, starts[place]!, ends[place]!);
    }
  return standing ?? none;
}

/** With the rows from one place to another of which a line holds all that they need. */
function withStanding(
  before: Candidate[][] | undefined,
  { rows, musts }: Lookup,
  line: Units,
  start: number,
  end: number,
): Candidate[][] | undefined {
  let standing = before;
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
    if (lacks !== 0) continue;
    const any =
      (musts[must + 5]! & a) |
      (musts[must + 6]! & b) |
      (musts[must + 7]! & c) |
      (musts[must + 8]! & d) |
      (musts[must + 9]! & sieve);
    if (any === 0 || !mayStand(rows[at]!, line)) continue;
    const row = rows[at]!;
    standing ??= none.slice();
    if (standing[row.table]!.length === 0) standing[row.table] = [row];
    else insert(standing[row.table]!, row);
  }
  return standing;
}

const mayStand = ({ pattern }: Candidate, line: Units): boolean =>
  hasAll(pattern.needs, line) && (pattern.twice === NO_CLASSES || hasTwo(pattern.twice, line));

/** Adds a row in its order, once, by whichever of its words it was found. */
function insert(rows: Candidate[], row: Candidate): void {
  let at = rows.length;
  while (at > 0 && rows[at - 1]!.order > row.order) at -= 1;
  if (at === 0 || rows[at - 1] !== row) rows.splice(at, 0, row);
}
