import type { Tok } from "../clause.ts";
import { type Class, classCount } from "./classes.ts";
import type { Pattern } from "./pattern.ts";

/** One word of a line as patterns see it: tokens of several words are several units, each a place of its own. */
export interface Unit {
  word: string;
  /** The tables that know it, as bits. */
  tables: number;
  /** The place of its token, and how many units of that token are still to come, itself included; 0 within one. */
  token: number;
  span: number;
}

/** The words of a line's tokens, made once for all the rows of a table. */
export interface Units {
  tokens: readonly Tok[];
  units: readonly Unit[];
  /** The tables that know any of its words, as bits. */
  tables: number;
  /** Which classes the line holds at all, by their place: 1 yes, 2 no, found when first asked. */
  holds: Uint8Array;
}

/** Words to the tables that look rows up by them, as bits. */
const TABLES_OF = new Map<string, number>();
let tables = 0;

/** A bit for one more table, set for each word that it looks rows up by. */
export function bitOf(words: Iterable<string>): number {
  const bit = 1 << tables;
  tables += 1;
  for (const word of words) TABLES_OF.set(word, (TABLES_OF.get(word) ?? 0) | bit);
  return bit;
}

export function unitsOf(tokens: readonly Tok[]): Units {
  const units: Unit[] = [];
  let known = 0;
  for (let at = 0; at < tokens.length; at += 1) {
    const { kind, text } = tokens[at]!;
    if (kind !== "word" || !text.includes(" ")) {
      const word = kind === "piece" ? "" : text;
      const bits = TABLES_OF.get(word) ?? 0;
      units.push({ word, tables: bits, token: at, span: 1 });
      known |= bits;
      continue;
    }
    const words = text.split(" ");
    words.forEach((word, place) => {
      const bits = TABLES_OF.get(word) ?? 0;
      units.push({ word, tables: bits, token: at, span: place === 0 ? words.length : 0 });
      known |= bits;
    });
  }
  return { tokens, units, tables: known, holds: new Uint8Array(classCount()) };
}

/** Whether a line holds all that a pattern needs; most rows are set aside here. */
export function couldStand({ needs }: Pattern, line: Units): boolean {
  for (let need = 0; need < needs.length; need += 1) {
    const { words, tests } = needs[need]!;
    let is = false;
    for (let at = 0; at < tests.length && !is; at += 1) is = holds(line, tests[at]!);
    for (let at = 0; at < words.length && !is; at += 1) is = hasWord(line, words[at]!);
    if (!is) return false;
  }
  return true;
}

function hasWord({ units }: Units, word: string): boolean {
  for (let at = 0; at < units.length; at += 1) if (units[at]!.word === word) return true;
  return false;
}

const YES = 1;
const NO = 2;

function holds({ tokens, holds: known }: Units, { test, place }: Class): boolean {
  if (known[place] === 0) {
    let is = false;
    for (let at = 0; at < tokens.length && !is; at += 1) is = test(tokens[at]!);
    known[place] = is ? YES : NO;
  }
  return known[place] === YES;
}
