import type { Piece } from "../books/books.ts";
import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Mention } from "../notes/reading.ts";

/** One past piece (or a few alike, or a set, bought and sold for one price), as a row of the file gives it. */
export interface HistoryRow {
  /** Its row in the file as a spreadsheet numbers it: the header is row 1. */
  row: number;
  name: string;
  traits: string[];
  count: number;
  set: boolean;
  bought: Day;
  price: Cents;
  materials: Cents;
  sold: { day: Day; price: Cents } | null;
}

/** What is wrong with a row, in plain words; row 0: with the file as a whole. */
export interface HistoryProblem {
  row: number;
  why: string;
}

export interface HistoryDesk {
  today: Day;
  /** The pieces on the books, to point out rows that look like one of them. */
  pieces?: Iterable<Readonly<Piece>>;
  /** Files that were recorded before: their rows do not come again, whatever became of them since. */
  before?: readonly string[];
  /** How the note reader names a piece; without it the words are taken as they stand. */
  mentionOf?(text: string): Mention | null;
}
