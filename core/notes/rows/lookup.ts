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
  /** Of what a row needs any: `OF_NEED` numbers for each need, for all rows one behind the other. */
  needs: Int32Array;
  /** The numbers of the words of needs, and of each phrase how many it has and which: all others are single. */
  words: Uint16Array;
  /** The classes that rows are looked up by, and where those of each begin and end. */
  classes: Bits;
  starts: readonly number[];
  ends: readonly number[];
  /** A bit for each word, by its number; set while a line that holds it is looked up. */
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
const numbersOfNeeds = ({ needs }: Needed, words: number[]): readonly number[] =>
  needs.toSorted((a, b) => a.often - b.often).flatMap((need) => numbersOfNeed(need, words));

/** The classes and the bits of words of a need, where its words begin, where its phrases do, and where both end. */
function numbersOfNeed(need: Element, into: number[]): readonly number[] {
  const { bits, firsts, words } = need;
  const rarest = rarestIn(need);
  const from = into.length;
  const single = words.length > 0 ? words.filter(({ length }) => length === 1).flat() : firsts;
  into.push(...single.map(({ id }) => id));
  const phrases = into.length;
  for (const each of words) if (each.length > 1) into.push(each.length, ...each.map(({ id }) => id));
  return [...partsOf(bits), sieveOf(rarest), secondOf(rarest), from, phrases, into.length];
}

/** How many numbers a need has. */
const OF_NEED = 9;

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
  const needed = all.map(({ pattern }) => neededFor(pattern));
  const byKey = rowsByKey(needed);
  const needs: number[] = [];
  const words: number[] = [];
  const numbers = needed.map((each, place) => {
    const from = needs.length;
    needs.push(...numbersOfNeeds(each, words));
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
  const said = new Int32Array((wordsInRows() >> 5) + 1);
  const numbersOfAll = { told, needs: Int32Array.from(needs), words: Uint16Array.from(words) };
  return { rows: all, ...numbersOfAll, classes, starts, ends, said };
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
  const { units, bits } = line;
  const { classes, starts, ends, said } = lookup;
  for (let at = 0; at < units.length; at += 1) say(said, units[at]!.word.id);
  let rows: Candidate[][] | undefined;
  for (let at = 0; at < units.length; at += 1) {
    const { rowsFrom, rowsTo } = units[at]!.word;
    if (rowsFrom < rowsTo) rows = withStanding(rows, lookup, line, rowsFrom, rowsTo);
  }
  for (let part = 0; part < BIT_PARTS; part += 1)
    for (let left = partOf(bits, part) & partOf(classes, part); left !== 0; left &= left - 1) {
      const place = placeIn(part, left);
      rows = withStanding(rows, lookup, line, starts[place]!, ends[place]!);
    }
  for (let at = 0; at < units.length; at += 1) said[units[at]!.word.id >> 5] = 0;
  return rows ? { tables: tablesOf(rows), rows } : NOTHING;
}

function say(said: Int32Array, id: number): void {
  said[id >> 5]! |= 1 << (id & 31);
}

const isSaid = (said: Int32Array, id: number): boolean => (said[id >> 5]! & (1 << (id & 31))) !== 0;

const tablesOf = (rows: readonly (readonly Candidate[])[]): number =>
  rows.reduce((tables, { length }, table) => (length > 0 ? tables | (1 << table) : tables), 0);

/** With the rows from one place to another of which a line holds all that they need. */
function withStanding(
  before: Candidate[][] | undefined,
  lookup: Lookup,
  line: Units,
  start: number,
  end: number,
): Candidate[][] | undefined {
  let rows = before;
  const { rows: all, told } = lookup;
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
    if (lacks !== 0 || !holdsNeeds(line, lookup, told[at + 1]!, told[at + 2]!)) continue;
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
  { needs, words, said }: Lookup,
  start: number,
  end: number,
): boolean {
  const { a, b, c, d } = bits;
  for (let need = start; need < end; need += OF_NEED) {
    const isOfClass =
      (needs[need]! & a) | (needs[need + 1]! & b) | (needs[need + 2]! & c) | (needs[need + 3]! & d);
    if (isOfClass !== 0) continue;
    if ((needs[need + 4]! & sieve) === 0 || (needs[need + 5]! & second) === 0) return false;
    if (!holdsWords(words, said, needs[need + 6]!, needs[need + 7]!, needs[need + 8]!)) return false;
  }
  return true;
}

/** Whether a line holds any of some words, or all words of any of the phrases behind them. */
function holdsWords(
  words: Uint16Array,
  said: Int32Array,
  from: number,
  phrases: number,
  end: number,
): boolean {
  let at = from;
  for (; at < phrases; at += 1) if (isSaid(said, words[at]!)) return true;
  while (at < end) {
    const behind = at + 1 + words[at]!;
    at += 1;
    while (at < behind && isSaid(said, words[at]!)) at += 1;
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
  rows.push(row);
  for (let to = rows.length - 1; to > at; to -= 1) rows[to] = rows[to - 1]!;
  rows[at] = row;
}
