import type { Books } from "../books/books.ts";
import type { NewFact } from "../books/facts.ts";
import type { Day } from "../calendar.ts";
import type { Missing, Reading } from "../notes/reading.ts";

/** What deciding may look at: the books as they stand, and the message's own day. */
export interface Desk {
  books: Books;
  today: Day;
  /** The next piece number that was never given. */
  nextPiece: number;
  /** Names of the odd things that the person has already said yes to for this reading. */
  confirmed: readonly string[];
}

/** A reading on its way to the books: what was said, and what answers have settled since. */
export interface Matter {
  reading: Reading;
  /** Odd things said yes to. */
  confirmed: string[];
  /** Clauses of the same message whose "it" waits for this one. */
  then: Reading[];
}

/** One way to answer: what the button says and what it does to the matter. */
export interface Choice {
  label: string;
  /** Words that pick it when typed ("yes", "2"). */
  words?: string[];
  effect:
    | { kind: "settle"; reading: Reading; confirm?: string }
    | { kind: "instead"; readings: Reading[] }
    | { kind: "drop" };
}

/** What the bot asks, and what it will make of the answer. */
export interface Ask {
  /** The question in one or two short lines. */
  prompt: string;
  /** The field that a bare answer fills, or "choice" where only a choice settles it. */
  wants: Missing | "day" | "rate" | "choice";
  choices: Choice[];
}

export type Decision =
  | { kind: "record"; facts: NewFact[]; cautions?: string[] }
  | { kind: "ask"; ask: Ask }
  | { kind: "refuse"; why: string };
