import { BIT_PARTS, type Bits, bitsOf, NO_CLASSES, partOf, partsOf, placeIn } from "./bits.ts";
import { type Element, forgetWritten, type Needed, neededFor, type Pattern, rarestIn } from "./pattern.ts";
import type { Candidate, Standing } from "./standing.ts";
import { hasTwo, type Units } from "./units.ts";
import { isCommon, makeLater, type RowWord, secondOf, sieveOf, wordsInRows } from "./words.ts";

/**
 * The rows of all tables, by the words and classes that look them up. Nearly all are set aside by what a line must hold
 * for them, so that all of it stands in numbers, those of the rows of one word or class side by side: an object for each
 * would cost more to fetch than to ask.
 */
interface Lookup {
  rows: readonly Candidate[];
  /** What a line must hold for the rows of each word and class: `NUMBERS` for each row there. */
  told: Int32Array;
  /** The numbers of the needs of each row, for all rows one behind the other. */
  needed: Uint16Array;
  /** What each need is any of: `OF_NEED` numbers. Many rows share one. */
  needs: Int32Array;
  /** Of each phrase of a need how many words it has, and their numbers. */
  phrases: Uint16Array;
  /** The needs that each word meets by itself, where those of a word begin by its number, and the line that met each last. */
  metBy: Uint16Array;
  metFrom: Uint16Array;
  met: Int32Array;
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

/** The needs of all rows while they are told apart, and of each word those that it meets. */
interface Needs {
  numbers: Map<Element, number>;
  told: number[];
  phrases: number[];
  metBy: number[][];
}

/** The numbers of what a row needs any of, the rarest first. */
const numbersOfNeeds = ({ needs }: Needed, into: Needs): readonly number[] =>
  needs.toSorted((a, b) => a.often - b.often).map((need) => numberOfNeed(need, into));

/** Tells of a need its classes, the bits of its common words, where its phrases begin and end, and the bits of their words. */
function numberOfNeed(need: Element, { numbers, told, phrases, metBy }: Needs): number {
  const known = numbers.get(need);
  if (known !== undefined) return known;
  const number = numbers.size;
  numbers.set(need, number);
  const { bits, firsts, words } = need;
  const single = words.length > 0 ? words.filter(({ length }) => length === 1).flat() : firsts;
  for (const { id } of single.filter((word) => !isCommon(word))) metBy[id]!.push(number);
  const from = phrases.length;
  for (const each of words) if (each.length > 1) phrases.push(each.length, ...each.map(({ id }) => id));
  const ofPhrases = secondOf(rarestIn(need));
  told.push(...partsOf(bits), sieveOf(single.filter(isCommon)), from, phrases.length, ofPhrases);
  return number;
}

/** How many numbers a need has. */
const OF_NEED = 8;

const all: Candidate[] = [];
const none: Candidate[][] = [];
const NOTHING: Standing = { tables: 0, rows: none };
let made = 0;
let lookup: Lookup | undefined;
/** How many lines were looked up. */
let lines = 0;

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
  const neededByRow = all.map(({ pattern }) => neededFor(pattern));
  const byKey = rowsByKey(neededByRow);
  const needed: number[] = [];
  const metBy: number[][] = Array.from({ length: wordsInRows() }, () => []);
  const needs: Needs = { numbers: new Map(), told: [], phrases: [], metBy };
  const numbers = all.map(({ pattern }, place) => {
    const from = needed.length;
    needed.push(...numbersOfNeeds(neededByRow[place]!, needs));
    return numbersOf(neededByRow[place]!, pattern, place, [from, needed.length]);
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
  let met = 0;
  return {
    ...{ rows: all, told, classes, starts, ends, said },
    needed: Uint16Array.from(needed),
    needs: Int32Array.from(needs.told),
    phrases: Uint16Array.from(needs.phrases),
    metBy: Uint16Array.from(metBy.flat()),
    metFrom: Uint16Array.from([0, ...metBy.map(({ length }) => (met += length))]),
    met: new Int32Array(needs.numbers.size),
  };
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
  lines += 1;
  for (let at = 0; at < units.length; at += 1) say(lookup, units[at]!.word.id);
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

function say({ said, met, metBy, metFrom }: Lookup, id: number): void {
  said[id >> 5]! |= 1 << (id & 31);
  for (let at = metFrom[id]!; at < metFrom[id + 1]!; at += 1) met[metBy[at]!] = lines;
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

/** Whether a line holds any of each need of a row, whose numbers stand from one place to another. */
function holdsNeeds({ bits, sieve, second }: Units, lookup: Lookup, start: number, end: number): boolean {
  const { needed, needs, met, phrases, said } = lookup;
  const { a, b, c, d } = bits;
  for (let place = start; place < end; place += 1) {
    const need = needed[place]!;
    if (met[need] === lines) continue;
    const at = need * OF_NEED;
    const holds =
      (needs[at]! & a) |
      (needs[at + 1]! & b) |
      (needs[at + 2]! & c) |
      (needs[at + 3]! & d) |
      (needs[at + 4]! & sieve);
    if (holds !== 0) continue;
    if ((needs[at + 7]! & second) === 0) return false;
    if (!holdsPhrase(phrases, said, needs[at + 5]!, needs[at + 6]!)) return false;
  }
  return true;
}

/** Whether a line holds all words of any of the phrases from one place to another. */
function holdsPhrase(phrases: Uint16Array, said: Int32Array, from: number, end: number): boolean {
  let at = from;
  while (at < end) {
    const behind = at + 1 + phrases[at]!;
    at += 1;
    while (at < behind && isSaid(said, phrases[at]!)) at += 1;
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
