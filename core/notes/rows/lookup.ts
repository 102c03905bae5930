import { BIT_PARTS, type Bits, bitsOf, NO_CLASSES, partOf, partsOf, placeIn } from "./bits.ts";
import { type Element, forgetWritten, type Needed, neededFor, type Pattern, rarestIn } from "./pattern.ts";
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
  /** What a line must hold for the rows of each word and class: `NUMBERS` for each row there. */
  told: Int32Array;
  /** Of what a row needs any, need by need, for all rows one behind the other. */
  needs: Int32Array;
  /** The classes that rows are looked up by, and where those of each begin and end. */
  classes: Bits;
  starts: readonly number[];
  ends: readonly number[];
  /** By the number of each word, the number of the last line that held it. */
  said: Int32Array;
}

/** The number of a row, where its needs begin and end, whether it needs two of a class, the classes and bits of its words. */
function numbersOf(
  { must }: Needed,
  { twice }: Pattern,
  place: number,
  needs: readonly [number, number],
): readonly number[] {
  const words = [sieveOf(must.words), secondOf(must.words)];
  return [place, ...needs, twice === NO_CLASSES ? 0 : 1, ...partsOf(must.bits), ...words];
}

/** How many numbers a row has. */
const NUMBERS = 10;

/** What a row needs any of, the rarest first. */
const numbersOfNeeds = ({ needs }: Needed): readonly number[] =>
  needs.toSorted((a, b) => a.often - b.often).flatMap(numbersOfNeed);

/** The classes and the bits of words of a need, how many numbers it has, and each of its words: how many, and which. */
function numbersOfNeed(need: Element): readonly number[] {
  const { bits, firsts, words } = need;
  const rarest = rarestIn(need);
  const said =
    words.length > 0
      ? words.flatMap((each) => [each.length, ...each.map(({ id }) => id)])
      : firsts.flatMap(({ id }) => [1, id]);
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
  const needed = all.map(({ pattern }) => neededFor(pattern));
  const byKey = rowsByKey(needed);
  const needs: number[] = [];
  const numbers = needed.map((each, place) => {
    const from = needs.length;
    needs.push(...numbersOfNeeds(each));
    return numbersOf(each, all[place]!.pattern, place, [from, needs.length]);
  });
  forgetWritten();
  let length = 0;
  for (const places of byKey.values()) length += places.size * NUMBERS;
  const told = new Int32Array(length);
  const starts: number[] = [];
  const ends: number[] = [];
  let at = 0;
  for (const [key, places] of byKey) {
    const start = at;
    for (const place of places) {
      told.set(numbers[place]!, at);
      at += NUMBERS;
    }
    if (typeof key === "number") {
      starts[key] = start;
      ends[key] = at;
    } else {
      key.rowsFrom = start;
      key.rowsTo = at;
    }
  }
  const classes = bitsOf([...byKey.keys()].filter((key) => typeof key === "number"));
  const said = new Int32Array(wordsInRows());
  return { rows: all, told, needs: Int32Array.from(needs), classes, starts, ends, said };
}

/** The numbers of the rows that each word and each class looks up. */
function rowsByKey(needed: readonly Needed[]): Map<RowWord | number, Set<number>> {
  const byKey = new Map<RowWord | number, Set<number>>();
  needed.forEach(({ key }, place) => {
    for (const each of [...rarestIn(key), ...key.classes]) {
      const others = byKey.get(each);
      if (others) others.add(place);
      else byKey.set(each, new Set([place]));
    }
  });
  return byKey;
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
  { rows: all, told, needs, said }: Lookup,
  line: Units,
  start: number,
  end: number,
): Candidate[][] | undefined {
  let rows = before;
  const { sieve, second } = line;
  const { a, b, c, d } = line.bits;
  for (let at = start; at < end; at += NUMBERS) {
    const lacks =
      (told[at + 4]! & ~a) |
      (told[at + 5]! & ~b) |
      (told[at + 6]! & ~c) |
      (told[at + 7]! & ~d) |
      (told[at + 8]! & ~sieve) |
      (told[at + 9]! & ~second);
    if (lacks !== 0 || !holdsNeeds(line, needs, said, told[at + 1]!, told[at + 2]!)) continue;
    const row = all[told[at]!]!;
    if (told[at + 3] === 1 && !hasTwo(row.pattern.twice, line)) continue;
    rows ??= none.slice();
    if (rows[row.table]!.length === 0) rows[row.table] = [row];
    else insert(rows[row.table]!, row);
  }
  return rows;
}

/** Whether a line holds any of each need of a row, which stand from one place to another. */
function holdsNeeds(
  { bits, sieve, second }: Units,
  needs: Int32Array,
  said: Int32Array,
  start: number,
  end: number,
): boolean {
  const { a, b, c, d } = bits;
  for (let need = start; need < end; need += needs[need + 6]!) {
    const isOfClass =
      (needs[need]! & a) | (needs[need + 1]! & b) | (needs[need + 2]! & c) | (needs[need + 3]! & d);
    if (isOfClass !== 0) continue;
    if ((needs[need + 4]! & sieve) === 0 || (needs[need + 5]! & second) === 0) return false;
    if (!holdsWords(needs, said, need)) return false;
  }
  return true;
}

/** Whether a line holds all words of any of a need. */
function holdsWords(needs: Int32Array, said: Int32Array, need: number): boolean {
  const end = need + needs[need + 6]!;
  let at = need + BEFORE_WORDS;
  while (at < end) {
    const behind = at + 1 + needs[at]!;
    at += 1;
    while (at < behind && said[needs[at]!] === lines) at += 1;
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
