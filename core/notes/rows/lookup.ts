import { BIT_PARTS, type Bits, bitsOf, NO_CLASSES, partOf, partsOf, placeIn } from "./bits.ts";
import type { Element } from "./pattern.ts";
import type { Candidate, Standing } from "./standing.ts";
import { hasTwo, type Units } from "./units.ts";
import { makeLater, type RowWord, secondOf, sieveOf, wordsInRows } from "./words.ts";

/**
 * The rows of all tables, by the words and classes that look them up. Nearly all are set aside by what a line must hold
 * for them, so that all of it stands in numbers, those of the rows of one word or class side by side: an object for each
 * would cost more to fetch than to ask.
 */
interface Lookup {
  rows: readonly Candidate[];
  told: Int32Array;
  /** The classes that rows are looked up by, and where those of each begin and end. */
  classes: Bits;
  starts: readonly number[];
  ends: readonly number[];
  /** By the number of each word, the number of the last line that held it. */
  said: Int32Array;
}

/**
 * The number of a row, how many numbers stand behind it in all, whether it needs two of a class, the classes that it must
 * hold and the bits of its words, and then of what it needs any, need by need, the rarest first.
 */
function numbersOf({ pattern: { must, needs, twice } }: Candidate, place: number): readonly number[] {
  const any = needs.toSorted((a, b) => a.often - b.often).flatMap(numbersOfNeed);
  const isTwice = twice === NO_CLASSES ? 0 : 1;
  const words = [sieveOf(must.words), secondOf(must.words)];
  return [place, BEFORE_NEEDS + any.length, isTwice, ...partsOf(must.bits), ...words, ...any];
}

/** How many numbers stand before the needs of a row. */
const BEFORE_NEEDS = 9;

/** The classes and the bits of words of a need, how many numbers it has, and each of its words: how many, and which. */
function numbersOfNeed({ bits, rarest, words }: Element): readonly number[] {
  const said = words.flatMap((each) => [each.length, ...each.map(({ id }) => id)]);
  return [...partsOf(bits), sieveOf(rarest), secondOf(rarest), BEFORE_WORDS + said.length, ...said];
}

/** How many stand before the words of a need. */
const BEFORE_WORDS = 7;

const all: Candidate[] = [];
const none: Candidate[][] = [];
const NOTHING: Standing = { tables: 0, rows: none };
let made = 0;
/** How many lines have been looked up. */
let lines = 0;
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
  const said = new Int32Array(wordsInRows());
  return { rows: all, told: Int32Array.from(told), classes, starts, ends, said };
}

/** The rows of all tables that may stand in a line, looked up once; those of each table in their order. */
export function standingIn(line: Units): Standing {
  line.standing ??= lookedUp(line);
  return line.standing;
}

function lookedUp(line: Units): Standing {
  lookup ??= lookupOf();
  lines += 1;
  const { units, bits } = line;
  for (let at = 0; at < units.length; at += 1) lookup.said[units[at]!.word.id] = lines;
  let rows: Candidate[][] | undefined;
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
  { rows: all, told, said }: Lookup,
  line: Units,
  start: number,
  end: number,
): Candidate[][] | undefined {
  let rows = before;
  const { sieve, second } = line;
  const { a, b, c, d } = line.bits;
  for (let at = start; at < end; at += told[at + 1]!) {
    const lacks =
      (told[at + 3]! & ~a) |
      (told[at + 4]! & ~b) |
      (told[at + 5]! & ~c) |
      (told[at + 6]! & ~d) |
      (told[at + 7]! & ~sieve) |
      (told[at + 8]! & ~second);
    if (lacks !== 0 || !holdsNeeds(line, told, said, at)) continue;
    const row = all[told[at]!]!;
    if (told[at + 2] === 1 && !hasTwo(row.pattern.twice, line)) continue;
    rows ??= none.slice();
    if (rows[row.table]!.length === 0) rows[row.table] = [row];
    else insert(rows[row.table]!, row);
  }
  return rows;
}

/** Whether a line holds any of each need of a row. */
function holdsNeeds(
  { bits, sieve, second }: Units,
  told: Int32Array,
  said: Int32Array,
  row: number,
): boolean {
  const { a, b, c, d } = bits;
  const end = row + told[row + 1]!;
  for (let need = row + BEFORE_NEEDS; need < end; need += told[need + 6]!) {
    const isOfClass =
      (told[need]! & a) | (told[need + 1]! & b) | (told[need + 2]! & c) | (told[need + 3]! & d);
    if (isOfClass !== 0) continue;
    if ((told[need + 4]! & sieve) === 0 || (told[need + 5]! & second) === 0) return false;
    if (!holdsWords(told, said, need)) return false;
  }
  return true;
}

/** Whether a line holds all words of any of a need. */
function holdsWords(told: Int32Array, said: Int32Array, need: number): boolean {
  const end = need + told[need + 6]!;
  let at = need + BEFORE_WORDS;
  while (at < end) {
    const behind = at + 1 + told[at]!;
    at += 1;
    while (at < behind && said[told[at]!] === lines) at += 1;
    if (at === behind) return true;
    at = behind;
  }
  return false;
}

/** Adds a row in its order, once, by whichever of its words it was found. */
function insert(rows: Candidate[], row: Candidate): void {
  let at = rows.length;
  while (at > 0 && rows[at - 1]!.order > row.order) at -= 1;
  if (at > 0 && rows[at - 1] === row) return;
  if (at === rows.length) rows.push(row);
  else rows.splice(at, 0, row);
}
