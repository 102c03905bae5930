import type { Books } from "../core/books/books.ts";
import type { Worked } from "../core/books/change.ts";
import type { Fact, NewFact } from "../core/books/facts.ts";
import type { Problem } from "../core/books/problem.ts";
import type { Steps } from "../core/steps.ts";
import type { Connection } from "./connection.ts";
import type { Invitations } from "./invitations.ts";
import type { Members } from "./members.ts";
import type { NewNote, Note, NoteState } from "./notes.ts";
import type { Outbox } from "./outbox.ts";
import type { Pictures } from "./pictures.ts";
import type { Questions } from "./questions.ts";
import type { Reminders } from "./reminders.ts";
import type { Settings, SettingsReader } from "./settings.ts";

/** What came of a wish to change the history: all of it was written, or nothing, for that fact's problem. */
export type Recorded =
  | { kind: "recorded"; facts: Fact[] }
  | { kind: "impossible"; fact: Fact; problem: Problem };

export interface Recording {
  /** The note that says so. */
  note: number;
  /** Member id. */
  author: number;
  facts: NewFact[];
  /** The message that the facts are a part of, where `note` only answered a question about it. */
  root?: number;
}

/** Facts to be recorded, with all that they change, as worked out on books of some age. */
export interface Prepared {
  facts: Fact[];
  worked: Worked;
  age: number;
}

export interface Amendment {
  note: number;
  author: number;
  /** Ids of standing facts that no longer stand. */
  voids: number[];
  /**
   * `replaces`: the voided fact whose place and root it keeps. Further ones take the last voided one's. `as`: whose
   * it stays; `restores`: the voided fact that it is once more, its place, message and author included.
   */
  facts: {
    fact: NewFact;
    replaces?: number;
    as?: Pick<Fact, "author" | "note">;
    restores?: Fact;
  }[];
}

/** What can be asked of a ledger without writing. */
export interface LedgerReader {
  /** The books of all standing facts. Changed in place as facts are recorded: read it, do not keep it. */
  readonly books: Books;
  /** Changes with each change of the books: what was worked out at an age is good as long as it is this. */
  readonly age: number;
  /** The pieces changed since an age by facts that fold behind all others; null where anything else may have changed. */
  touchedSince(age: number): readonly number[] | null;
  /** One more than the highest piece number ever given. */
  readonly nextPiece: number;
  note(id: number): Note | null;
  /** The latest revision of a message; its `root` is the id of the first. */
  findNote(chat: string, message: string): Note | null;
  /** Notes handled at or after an instant that are meant, newest first. */
  recentNotes(since: number, isMeant: (note: Note) => boolean): Note[];
  /** Whether there is any of these. */
  hasRecentNote(since: number, isMeant: (note: Note) => boolean): boolean;
  /** A fact, standing or voided. */
  factById(id: number): Fact | null;
  /** A fact that stands. */
  standingFact(id: number): Fact | null;
  /** The fact recorded last, of those that stand and fit. Looked for from the end: nearly always one of the last few. */
  newestFact(fits: (fact: Fact) => boolean): Fact | null;
  /** What stands of a message (by the id of its first revision), in fold order. */
  standingFactsOf(root: number): Fact[];
  /** Whether anything stands of a message. */
  hasStandingFacts(root: number): boolean;
  /** What stands that a message (by the id of its first revision) recorded only as an answer about another one. */
  standingFactsAnswered(root: number): Fact[];
  /** What stands that was recorded in a place (`place` of a fact) or after it; no order. */
  standingFactsSince(place: number): Fact[];
  /** The fact that stands in a place; null: none does. */
  factAt(place: number): Fact | null;
  /** The facts that a message made void. */
  voidedBy(note: number): Fact[];
  /** The last of a person's corrections of which something holds; null: none. */
  lastMended(author: number): number | null;
  /** For undo: the message that this person touched last and of which something stands; null: none. */
  lastStanding(author: number): number | null;
  readonly settings: SettingsReader;
  readonly members: Pick<Members, "byId" | "list" | "owner">;
  readonly pictures: Pick<Pictures, "ofPiece" | "ofMessage" | "all" | "receipts">;
  readonly connection: Connection;
  close(): void;
}

/** The one writer's ledger: facts in, derived books out. Everything that writes is called inside `transaction`. */
export interface Ledger extends LedgerReader {
  /** One immediate transaction. On a throw all is rolled back, the books in memory too, and it is thrown on. */
  transaction<T>(work: () => T): T;
  addNote(note: NewNote): number;
  setNoteState(id: number, state: NoteState, outcome?: string): void;
  record(recording: Recording): Recorded;
  amend(amendment: Amendment): Recorded;
  /**
   * Works out what recording many facts of new pieces changes, a little at each step, outside of a transaction; nothing
   * is written. One at a time.
   */
  prepare(recording: Recording): Steps<Prepared>;
  /** Records what was prepared; null where the books have changed since, so that it is to be prepared again. */
  recordPrepared(prepared: Prepared): Recorded | null;
  /** Marks a delivery as handled; false where it was before. */
  claimUpdate(key: string): boolean;
  /** Moves what is in the -wal into the file, as far as no reader is in the way: for a moment with nothing to do. */
  settle(): void;
  readonly settings: Settings;
  readonly members: Members;
  readonly pictures: Pictures;
  readonly outbox: Outbox;
  readonly questions: Questions;
  readonly invitations: Invitations;
  readonly reminders: Reminders;
}
