import type { Bits } from "./bits.ts";

/** A word that rows name: one object for each, so that words are told apart at a glance. */
export interface RowWord {
  text: string;
  /** Its place among all of them. */
  id: number;
  /** One of 32 bits, shared with others: what has not that bit has not the word. */
  sieve: number;
  /** The tables that look rows up by it, as bits. */
  tables: number;
}

/** One word of a line as patterns see it: tokens of several words are several units, each a place of its own. */
export interface Unit {
  word: RowWord;
  /** The classes of its token, and how many units of it are still to come, itself included; 0 within one. */
  bits: Bits;
  span: number;
}

const WORDS = new Map<string, RowWord>();

/** What stands for every word that no row names. */
export const NO_WORD: RowWord = { text: "", id: -1, sieve: 0, tables: 0 };

/** A word as a row names it. */
export function rowWord(text: string): RowWord {
  let word = WORDS.get(text);
  if (!word) {
    word = { text, id: WORDS.size, sieve: 1 << (WORDS.size & 31), tables: 0 };
    WORDS.set(text, word);
  }
  return word;
}

/** A word of a line, as rows know it. */
export const wordInRows = (text: string): RowWord => WORDS.get(text) ?? NO_WORD;

/** The bits of several words together. */
export const sieveOf = (words: readonly RowWord[]): number =>
  words.reduce((bits, { sieve }) => bits | sieve, 0);

/** Every word that a row names: taken as typed, never for a slip of another. */
export function wordsOfRows(): Iterable<string> {
  while (makeNextTable());
  return WORDS.keys();
}

const toMake: (() => void)[] = [];

/** Has a table made before the first line is looked at: a start does not wait for it. */
export function makeLater(make: () => void): void {
  toMake.push(make);
}

/** Makes one of the tables that are still to be made; false where there was none. */
export function makeNextTable(): boolean {
  if (toMake.length === 0) return false;
  toMake.shift()!();
  return true;
}

let tables = 0;

/** A bit for one more table, set for each word that it looks rows up by. */
export function tableBit(words: Iterable<RowWord>): number {
  const bit = 1 << tables;
  tables += 1;
  for (const word of words) word.tables |= bit;
  return bit;
}
