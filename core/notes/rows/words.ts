import type { Bits } from "./bits.ts";

/** A word that rows name: one object for each, so that words are told apart at a glance. */
export interface RowWord {
  text: string;
  /** Its number, from 1. */
  id: number;
  /** One of 32 bits, shared with others unless it is common: what has not that bit has not the word. */
  sieve: number;
  /** One of 32 others, shared with other words. */
  second: number;
  /** Where the rows that it looks up begin and end (`lookup.ts`). */
  rowsFrom: number;
  rowsTo: number;
}

/** One word of a line as patterns see it: tokens of several words are several units, each a place of its own. */
export interface Unit {
  word: RowWord;
  /** The classes of its token, and how many units of it are still to come, itself included; 0 within one. */
  bits: Bits;
  span: number;
}

/** How many of a hundred notes hold the commonest words, about. */
export const OFTEN_SAID: Readonly<Record<string, number>> = {
  ...{ the: 38, for: 19, sold: 17, ",": 13, on: 12, bought: 9, to: 8, a: 8, and: 6, it: 5 },
  ...{ paid: 4, at: 4, got: 4, up: 3, from: 3, is: 3 },
};

/** The same of those that are said now and then: they have no bits of their own. */
export const SAID_AT_TIMES: Readonly<Record<string, number>> = {
  ...{ listed: 4.5, loan: 4, cash: 3.5, paint: 3, i: 3, finished: 2, sale: 2, my: 2, yesterday: 2 },
  ...{ drove: 2, of: 2, was: 2, gave: 1.6, hold: 1.5, off: 1.4, with: 1.4, me: 1.4, back: 1.4, not: 1.3 },
  ...{ down: 1.2, deposit: 1.2, in: 1.2, that: 1.2, gas: 1.1, picked: 1, done: 1, lady: 1, no: 1, all: 1 },
  ...{ how: 1, card: 1, spent: 1, this: 1, fee: 1, now: 1, what: 1, by: 1, out: 1, guy: 1, took: 1, put: 1 },
};

const WORDS = new Map<string, RowWord>();

/** What stands for every word that no row names. */
export const NO_WORD: RowWord = { text: "", id: 0, sieve: 0, second: 0, rowsFrom: 0, rowsTo: 0 };

/** A word as a row names it. */
export function rowWord(text: string): RowWord {
  let word = WORDS.get(text);
  if (!word) {
    const place = WORDS.size;
    word = { text, id: place + 1, sieve: sieveAt(place), second: secondAt(place), rowsFrom: 0, rowsTo: 0 };
    WORDS.set(text, word);
  }
  return word;
}

/** The commonest have a bit each, or they would stand for all others that share it. */
const OWN_BITS = Object.keys(OFTEN_SAID).length;
const sieveAt = (place: number): number =>
  1 << (place < OWN_BITS ? place : OWN_BITS + (place % (32 - OWN_BITS)));

/** Whether a word is the only one of its first bit. */
export const isCommon = ({ id }: RowWord): boolean => id > 0 && id <= OWN_BITS;

/** All common words share one, and those that share the first have another. */
const secondAt = (place: number): number => 1 << (place < OWN_BITS ? 0 : 1 + (Math.floor(place / 16) % 31));

for (const text in OFTEN_SAID) rowWord(text);

/** A word of a line, as rows know it. */
export const wordInRows = (text: string): RowWord => WORDS.get(text) ?? NO_WORD;

/** How many numbers they have, that of no word included. */
export const wordsInRows = (): number => WORDS.size + 1;

/** The bits of several words together. */
export const sieveOf = (words: readonly RowWord[]): number =>
  words.reduce((bits, { sieve }) => bits | sieve, 0);

/** Their second bits. */
export const secondOf = (words: readonly RowWord[]): number =>
  words.reduce((bits, { second }) => bits | second, 0);

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
