import type { Books, Status } from "../books/books.ts";
import type { FactKind, FactOf } from "../books/facts.ts";
import type { OfPiece } from "../books/posted.ts";
import type { FactRules } from "../books/rules.ts";
import type { Day } from "../calendar.ts";
import type { Decision, Desk } from "../decide/decision.ts";
import type { Grammar } from "../notes/grammar.ts";
import type { Kind, ReadingOf } from "../notes/reading.ts";

/** A recorded fact and the books after it, for the words that echo it. */
interface Echo<K extends FactKind> {
  fact: FactOf<K>;
  books: Books;
  /** The message's own day: another fact day is named in the echo. */
  today: Day;
}

/** The pages of the help, by what stands on them. */
export type Page = "notes" | "costs" | "deals" | "slips";

/** How a note goes on in the next: "same again", "another one 30", "same for the bench". */
export interface GoesOn<K extends FactKind & Kind = FactKind & Kind> {
  /** Without a piece named it is about the very pieces, or about one like them. */
  pieces: "same" | "alike";
  /** What the next note has of it where it says nothing else; the way of paying goes with its amount. */
  carries(fact: FactOf<K>): { [F in keyof ReadingOf<K>]?: ReadingOf<K>[F] | undefined };
}

/** Everything about one kind of note: how it is read, what is decided, what it does to the books, what is said. */
export interface Verb<K extends Kind = Kind> {
  kind: K;
  /** A note of this kind; the help line, and it must read as itself. */
  example: string;
  /** Its words and slots. */
  reads: Grammar<K>;
  /** What its facts do to the books, for the kinds that record one. */
  books?: K extends FactKind ? FactRules<K> : never;
  /** From a reading with nothing missing to facts, a question or a refusal; for the kinds that record a fact. */
  decide?(reading: ReadingOf<K>, desk: Desk): Decision;
  /** A whole reading on a button, `names` being its pieces as the books call them: "Sold #2 desk 140.00". */
  offered?(reading: ReadingOf<K>, names: string): string;
  /** How it goes on in the next note; absent: it does not. */
  goesOn?: K extends FactKind & Kind ? GoesOn<K> : never;
  /** A late note of this kind is tested against the pieces as they stood on its own day. */
  byItsDay?: true;
  /** How a piece stands of which it usually comes next. */
  upon?: Status;
  /** What became of one of its pieces, in a few words of that piece's story; its sums are the piece's share. */
  story?: K extends FactKind ? (told: OfPiece<FactOf<K>>) => string : never;
  /** One note of this kind in a list, without its day and its amount, `pieces` by label: "sold #5 black bench". */
  listed?: K extends FactKind ? (fact: FactOf<K>, pieces: string, books: Books) => string : never;
  /** What the note said beside its pieces and its amount, for lists and sheets; null for nothing. */
  said?: K extends FactKind ? (fact: FactOf<K>) => string | null : never;
  /** The page of the help that its example stands on. */
  page: Page;
  /** First line: what was understood, with the piece's number; more lines only where money says more. */
  echo?: K extends FactKind ? (echo: Echo<K>) => string[] : never;
}

/** Keeps each verb's own kind while checking its shape. */
export function defineVerb<K extends Kind>(verb: Verb<K>): Verb<K> {
  return verb;
}
