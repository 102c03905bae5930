import { BIT_PARTS, type Bits, bitsOf, NO_CLASSES, partOf, partsOf, placeIn } from "./bits.ts";
import type { Candidate, Standing } from "./standing.ts";
import { hasAll, hasTwo, type Units } from "./units.ts";
import { makeLater, type RowWord, secondOf, sieveOf } from "./words.ts";

/**
 * The rows of all tables, by the words and classes that look them up. Nearly all are set aside by what a line must hold
 * for them, so that stands in numbers, those of the rows of one word or class side by side: an object for each would
 * cost more to fetch than to ask.
 */
interface Lookup {
  rows: readonly Candidate[];
  told: Int32Array;
  /** The classes that rows are looked up by, and where those of each begin and end. */
  classes: Bits;
  starts: readonly number[];
  ends: readonly number[];
}

/**
 * The number of a row, how many numbers its needs take, whether it needs two of a class, what it must hold, and of what
 * it needs any, need by need.
 */
function numbersOf({ pattern: { must, needs, twice } }: Candidate, place: number): readonly number[] {
  const any = needs
    .toSorted((a, b) => a.often - b.often)
    .flatMap(({ bits, rarest }) => [...partsOf(bits), sieveOf(rarest), secondOf(rarest)]);
  const words = [sieveOf(must.words), secondOf(must.words)];
  return [place, any.length, twice === NO_CLASSES ? 0 : 1, ...partsOf(must.bits), ...words, ...any];
}

/** How many numbers stand before what it must hold, how many a need has, and how many stand before its needs. */
const BEFORE_MUST = 3;
const PARTS = 6;
const BEFORE_NEEDS = BEFORE_MUST + PARTS;

const all: Candidate[] = [];
const none: Candidate[][] = [];
const NOTHING: Standing = { tables: 0, rows: none };
let made = 0;
let lookup: Lookup | undefined;

/** Hands in one more table, whose rows are made later, and gives its number: they are looked up with all others. */
export function handInRows(madeFor: (table: number) => readonly Candidate[]): number {
  const table = none.length;
  none.push([]);
  makeLater(() => {
    all.push(...madeFor(table));
    made += 1;
    // With the last of them, so that the first line does not wait for it.
    lookup = made === none.length ? lookupOf() : undefined;
  });
  return table;
}

function lookupOf(): Lookup {
  const byKey = new Map<RowWord | number, Set<number>>();
  all.forEach(({ pattern: { key } }, place) => {
    for (const each of [...key.rarest, ...key.classes]) {
      const others = byKey.get(each);
      if (others) others.add(place);
      else byKey.set(each, new Set([place]));
    }
  });
  const told: number[] = [];
  const starts: number[] = [];
  const ends: number[] = [];
  for (const [key, places] of byKey) {
    const start = told.length;
    for (const place of places) told.push(...numbersOf(all[place]!, place));
    if (typeof key === "number") {
      starts[key] = start;
      ends[key] = told.length;
    } else {
      key.rowsFrom = start;
      key.rowsTo = told.length;
    }
  }
  const classes = bitsOf([...byKey.keys()].filter((key) => typeof key === "number"));
  return { rows: all, told: Int32Array.from(told), classes, starts, ends };
}

/** The rows of all tables that may stand in a line, looked up once; those of each table in their order. */
export function standingIn(line: Units): Standing {
  line.standing ??= lookedUp(line);
  return line.standing;
}

function lookedUp(line: Units): Standing {
  lookup ??= lookupOf();
  let rows: Candidate[][] | undefined;
  const { units, bits } = line;
  for (let at = 0; at < units.length; at += 1) {
    const { rowsFrom, rowsTo } = units[at]!.word;
    if (rowsFrom < rowsTo) rows = withStanding(rows, lookup, line, rowsFrom, rowsTo);
  }
  const { classes, starts, ends } = lookup;
  for (let part = 0; part < BIT_PARTS; part += 1)
    for (let left = partOf(bits, part) & partOf(classes, part); left !== 0; left &= left - 1) {
      const place = placeIn(part, left);
      rows = withStanding(rows, lookup, line, starts[place]!, ends[place]!);
    }
  return rows ? { tables: tablesOf(rows), rows } : NOTHING;
}

const tablesOf = (rows: readonly (readonly Candidate[])[]): number =>
  rows.reduce((tables, { length }, table) => (length > 0 ? tables | (1 << table) : tables), 0);

/** With the rows from one place to another of which a line holds all that they need. */
function withStanding(
  before: Candidate[][] | undefined,
  { rows: all, told }: Lookup,
  line: Units,
  start: number,
  end: number,
): Candidate[][] | undefined {
  let rows = before;
  const { sieve, second } = line;
  const { a, b, c, d } = line.bits;
  for (let at = start; at < end; at += BEFORE_NEEDS + told[at + 1]!) {
    const must = at + BEFORE_MUST;
    const lacks =
      (told[must]! & ~a) |
      (told[must + 1]! & ~b) |
      (told[must + 2]! & ~c) |
      (told[must + 3]! & ~d) |
      (told[must + 4]! & ~sieve) |
      (told[must + 5]! & ~second);
    const held = lacks === 0 ? heldOf(line, told, at) : "not";
    if (held === "not") continue;
    const row = all[told[at]!]!;
    if (held === "maybe" && !mayStand(row, line)) continue;
    rows ??= none.slice();
    if (rows[row.table]!.length === 0) rows[row.table] = [row];
    else insert(rows[row.table]!, row);
  }
  return rows;
}

/** Whether a line holds any of each need of a row; maybe where it holds words that share their bits. */
function heldOf({ bits, sieve, second }: Units, told: Int32Array, place: number): "not" | "maybe" | "all" {
  const { a, b, c, d } = bits;
  let held: "maybe" | "all" = told[place + 2] === 0 ? "all" : "maybe";
  const first = place + BEFORE_NEEDS;
  const end = first + told[place + 1]!;
  for (let need = first; need < end; need += PARTS) {
    const isOfClass =
      (told[need]! & a) | (told[need + 1]! & b) | (told[need + 2]! & c) | (told[need + 3]! & d);
    if (isOfClass !== 0) continue;
    if ((told[need + 4]! & sieve) === 0 || (told[need + 5]! & second) === 0) return "not";
    held = "maybe";
  }
  return held;
}

const mayStand = ({ pattern }: Candidate, line: Units): boolean =>
  hasAll(pattern.needs, line) && (pattern.twice === NO_CLASSES || hasTwo(pattern.twice, line));

/** Adds a row in its order, once, by whichever of its words it was found. */
function insert(rows: Candidate[], row: Candidate): void {
  let at = rows.length;
  while (at > 0 && rows[at - 1]!.order > row.order) at -= 1;
  if (at === 0 || rows[at - 1] !== row) rows.splice(at, 0, row);
}
