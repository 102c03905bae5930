import type { Unit } from "../rows/words.ts";

/** What a clause may hold, as far as it helps to tell which kind of note it is. */
export type Sign =
  | "piece"
  /** A piece, or words that may be the name of one. */
  | "named"
  | "number"
  | "supply"
  | "loan"
  | "stream"
  | "duration"
  | "miles"
  | "percent"
  | "tax"
  | "clock"
  | "span"
  | "labor"
  | "person"
  | "pronoun"
  /** A word that nobody listed. */
  | "unknown"
  | "helper"
  /** The first thing after the verb is an amount: "got 85 for the lamp". */
  | "moneyFirst"
  /** It is a piece: "took the desk off her hands". */
  | "pieceFirst"
  /** The first thing that the verb is about is a supply, not a piece. */
  | "supplyFirst"
  /** An amount right before "off": "20 off the desk". */
  | "off"
  /** "to", "toward" or "on" before the loan. */
  | "loanward"
  /** What a sale or all sales brought in: "the profit", "every cent". */
  | "proceeds"
  /** 365 or 365.25, as the days of a loan's year. */
  | "yearDays"
  | "day";

const SIGNS: readonly Sign[] = [
  "piece",
  "named",
  "number",
  "supply",
  "loan",
  "stream",
  "duration",
  "miles",
  "percent",
  "tax",
  "clock",
  "span",
  "labor",
  "person",
  "pronoun",
  "unknown",
  "helper",
  "moneyFirst",
  "pieceFirst",
  "supplyFirst",
  "off",
  "loanward",
  "proceeds",
  "yearDays",
  "day",
];
export const BITS = Object.fromEntries(SIGNS.map((sign, place) => [sign, 1 << place])) as Readonly<
  Record<Sign, number>
>;

/** The bits of some signs: a saying is held against a clause in two steps, however many signs it names. */
export function maskOf(signs: readonly Sign[] | undefined): number {
  return (signs ?? []).reduce((mask, sign) => mask | BITS[sign], 0);
}

/**
 * Words that a slot or a reader begins from: a clause without any of them spares it its search. Each token has those of
 * its own words, so that none is looked up in one list of words after another.
 */
export const HINTS = {
  preposition: 1 << 0,
  until: 1 << 1,
  fee: 1 << 2,
  method: 1 << 3,
  on: 1 << 4,
  day: 1 << 5,
  place: 1 << 6,
  /** Its first word opens a question, or stands before one. */
  asks: 1 << 7,
  beforeAsking: 1 << 8,
  /** A mark or a word that may stand between two clauses, or beside what is told of the day. */
  markBetween: 1 << 9,
  wordBetween: 1 << 10,
  markByChat: 1 << 11,
  wordByChat: 1 << 12,
  standsForPieces: 1 << 13,
  /** It takes back what was just said: its first word, or what is said right before the other amount. */
  takesBack: 1 << 14,
  doubted: 1 << 15,
  joke: 1 << 16,
  /** "not", before what it was. */
  old: 1 << 17,
  /** It corrects the note before by itself, or behind all that is said. */
  corrects: 1 << 18,
  behind: 1 << 19,
  questionMark: 1 << 20,
  /** A short form of two words. */
  clashing: 1 << 21,
  /** What a row found: who did it, and what is owed, paid in part or agreed on. */
  actor: 1 << 22,
  owed: 1 << 23,
  month: 1 << 24,
  /** "the rest", "in full": of a price. */
  rest: 1 << 25,
  each: 1 << 26,
  mark: 1 << 27,
  clock: 1 << 28,
  person: 1 << 29,
  /** It tells the note before anew. */
  redoes: 1 << 30,
  /** "the first one": it, or its first word, tells which of several. */
  rank: 1 << 31,
} as const;
/** What a word or phrase tells by itself, as bits. */
export interface OwnSigns {
  signs: number;
  hints: number;
  /** What it is to the rows, once one has asked. */
  units: readonly Unit[] | undefined;
}

/** What a clause holds, for telling its kind. */
export class Signs {
  mask = 0;
  hints = 0;

  constructor(mask = 0) {
    this.mask = mask;
  }

  has(sign: Sign): boolean {
    return (this.mask & BITS[sign]) !== 0;
  }

  add(sign: Sign): void {
    this.mask |= BITS[sign];
  }
}
