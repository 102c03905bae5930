import type { Tok } from "../clause.ts";
import { addBits, type Bits, meet, noBits } from "./bits.ts";
import { bitsOfToken } from "./classes.ts";
import type { Element, Pattern } from "./pattern.ts";
import { NO_WORD, type RowWord, type SeenByRows, wordInRows } from "./words.ts";

/** One word of a line as patterns see it: tokens of several words are several units, each a place of its own. */
export interface Unit {
  word: RowWord;
  /** The place of its token, the token's classes, and how many units of it are still to come, itself included; 0 within one. */
  token: number;
  bits: Bits;
  span: number;
}

/** The words of a line's tokens, made once for all the rows of a table. */
export interface Units {
  tokens: readonly Tok[];
  units: readonly Unit[];
  /** The classes that any of its tokens is in. */
  bits: Bits;
  /** The bits of its words, and of the tables that look rows up by any of them. */
  sieve: number;
  tables: number;
}

const PIECE_WORDS: readonly RowWord[] = [NO_WORD];

function seen(token: Tok): SeenByRows {
  const { kind, text } = token;
  const words =
    kind === "piece"
      ? PIECE_WORDS
      : kind === "word" && text.includes(" ")
        ? text.split(" ").map(wordInRows)
        : [wordInRows(text)];
  return { words, bits: bitsOfToken(token) };
}

/** A phrase of the lexicon is looked at once, and any other token each time. */
function seenOf(token: Tok): SeenByRows {
  const { own } = token.roles;
  if (!own || token.kind !== "word" || token.unknown) return seen(token);
  own.byRows ??= seen(token);
  return own.byRows;
}

export function unitsOf(tokens: readonly Tok[]): Units {
  const line = { tokens, units: [] as Unit[], bits: noBits(), sieve: 0, tables: 0 };
  for (let at = 0; at < tokens.length; at += 1) {
    const { words, bits } = seenOf(tokens[at]!);
    addBits(line.bits, bits);
    for (let place = 0; place < words.length; place += 1) {
      const word = words[place]!;
      line.sieve |= word.sieve;
      line.tables |= word.tables;
      line.units.push({ word, token: at, bits, span: place === 0 ? words.length : 0 });
    }
  }
  return line;
}

/** Whether a line holds a word or a class of each element that a pattern needs. */
export function hasNeeds({ needs }: Pattern, line: Units): boolean {
  for (let at = 0; at < needs.length; at += 1) if (!isThere(needs[at]!, line)) return false;
  return true;
}

function isThere({ bits, firsts, sieve }: Element, line: Units): boolean {
  if (meet(bits, line.bits)) return true;
  if ((sieve & line.sieve) === 0) return false;
  for (let at = 0; at < line.units.length; at += 1) if (firsts.includes(line.units[at]!.word)) return true;
  return false;
}
