import "../core/lists.ts";
import type { Books } from "../core/books/books.ts";
import { type Change, changeFacts, makeChange, working } from "../core/books/change.ts";
import { type Fact, inFoldOrder, recordedAs, recordedInPlaceOf } from "../core/books/facts.ts";
import { emptyBooks, foldFacts, foldsLast, recordFact } from "../core/books/fold.ts";
import type { BooksInHand } from "../core/books/hand.ts";
import { type Problem, problemText } from "../core/books/problem.ts";
import type { Steps } from "../core/steps.ts";
import type { Connection } from "./connection.ts";
import { type DerivedTables, openDerivedTables } from "./derived.ts";
import { type FactStore, openFactStore } from "./facts.ts";
import { type Invitations, openInvitations } from "./invitations.ts";
import type { Amendment, Ledger, Prepared, Recorded, Recording } from "./ledger.ts";
import { type Members, openMembers } from "./members.ts";
import { createMemory, type Memory } from "./memory.ts";
import { type NewNote, type Note, type NoteState, type Notes, openNotes } from "./notes.ts";
import { type Outbox, openOutbox } from "./outbox.ts";
import { openPictures, type Pictures } from "./pictures.ts";
import { openQuestions, type Questions } from "./questions.ts";
import { openReminders, type Reminders } from "./reminders.ts";
import { openSeenUpdates } from "./seen.ts";
import { openSettings, type Settings } from "./settings.ts";

/** The standing facts do not fold: the file was changed by hand, or by another version. */
export class ImpossibleHistory extends Error {
  constructor(
    readonly fact: Fact,
    problem: Problem,
  ) {
    super(`fact ${fact.id} (${fact.kind}, ${fact.day}) cannot stand: ${problemText(problem, emptyBooks())}`);
  }
}

/** Of so many of the latest facts it is remembered which pieces they changed. */
const TOUCHED_MAX = 100;

interface Ownership {
  onClose?: () => void;
  /** This release wrote the file itself, so its facts need no second look as they come out. */
  isTrusted?: boolean;
  /** Nobody else writes: what was read need not be read again. */
  isWriter?: boolean;
}

/** A ledger over an open, migrated file. Closing it closes the file. */
export class LedgerOnFile implements Ledger {
  readonly settings: Settings;
  readonly members: Members;
  readonly pictures: Pictures;
  readonly outbox: Outbox;
  readonly questions: Questions;
  readonly invitations: Invitations;
  readonly reminders: Reminders;
  readonly #notes: Notes;
  readonly #facts: FactStore;
  readonly #derived: DerivedTables;
  readonly #seen: { claim(key: string): boolean };
  readonly #onClose: () => void;
  readonly #isTrusted: boolean;
  /** The ids of the facts of a message: the buttons of the latest are looked at again after every note. */
  readonly #factsOf: Memory<number, number[]>;
  readonly #kept: { forget(): void }[];
  #books: BooksInHand | null = null;
  #next = { fact: 1, piece: 1 };
  /** Goes up with each change of the books, and where one is rolled back. */
  #age = 0;
  /** The pieces that each of the latest facts changed, of those that fold behind all others. */
  readonly #touched: { age: number; pieces: readonly number[] }[] = [];
  /** A write that threw half way: its transaction may not commit even where the error was caught. */
  #broken: unknown = null;

  constructor(
    readonly connection: Connection,
    { onClose = () => {}, isTrusted = false, isWriter = false }: Ownership = {},
  ) {
    const [settings, members, questions, notes, outbox] = [
      openSettings(connection, isWriter),
      openMembers(connection, isWriter),
      openQuestions(connection, isWriter),
      openNotes(connection, isWriter),
      openOutbox(connection, isWriter),
    ];
    this.#factsOf = createMemory((root: number) => this.#facts.ofRoot(root), isWriter);
    this.#kept = [settings, members, questions, notes, outbox, this.#factsOf];
    this.settings = settings;
    this.members = members;
    this.pictures = openPictures(connection);
    this.outbox = outbox;
    this.questions = questions;
    this.invitations = openInvitations(connection);
    this.reminders = openReminders(connection);
    this.#notes = notes;
    this.#facts = openFactStore(connection);
    this.#derived = openDerivedTables(connection);
    this.#seen = openSeenUpdates(connection);
    this.#onClose = onClose;
    this.#isTrusted = isTrusted;
  }

  get books(): Books {
    return this.#loaded();
  }

  get age(): number {
    return this.#age;
  }

  touchedSince(age: number): readonly number[] | null {
    // What is no fact behind all others makes the books older without an entry here.
    const since = this.#touched.slice(this.#touched.findLastIndex((each) => each.age <= age) + 1);
    return since.length === this.#age - age ? since.flatMap(({ pieces }) => pieces) : null;
  }

  get nextPiece(): number {
    this.#loaded();
    return this.#next.piece;
  }

  transaction<T>(work: () => T): T {
    const { db, sqlite } = this.connection;
    if (sqlite.inTransaction) throw new Error("a transaction is open already");
    this.#broken = null;
    try {
      return db.transaction(
        () => {
          const result = work();
          if (this.#broken !== null) throw this.#broken;
          return result;
        },
        { behavior: "immediate" },
      );
    } catch (error) {
      // Read again from what was committed, when next asked for.
      this.#books = null;
      this.#age += 1;
      for (const each of this.#kept) each.forget();
      throw error;
    }
  }

  addNote(note: NewNote): number {
    const id = this.#writing(() => this.#notes.add(note));
    // No fact comes of a new message before it is stored.
    if (this.#notes.get(id)?.root === id) this.#factsOf.put(id, []);
    return id;
  }

  setNoteState(id: number, state: NoteState, outcome?: string): void {
    this.#writing(() => this.#notes.setState(id, state, outcome));
  }

  claimUpdate(key: string): boolean {
    return this.#writing(() => this.#seen.claim(key));
  }

  record(recording: Recording): Recorded {
    return this.#writing(() => {
      const books = this.#loaded();
      const added = this.#asRecorded(recording);
      const [only] = added;
      const isAppend = only && added.length === 1 && foldsLast(books, only);
      return isAppend ? this.#append(only) : this.#change({ removed: [], added });
    });
  }

  *prepare(recording: Recording): Steps<Prepared> {
    const books = this.#loaded();
    const age = this.#age;
    const facts = this.#asRecorded(recording);
    const worked = yield* working(books, { removed: [], added: facts });
    if (worked.kind === "worked") {
      if (worked.isLedgerWide || worked.part.facts.length > facts.length)
        throw new Error("only facts of new pieces are prepared");
      yield* this.#facts.layAside(facts);
      yield* this.#derived.layAside(worked.part);
    }
    return { facts, worked, age };
  }

  recordPrepared({ facts, worked, age }: Prepared): Recorded | null {
    return this.#writing(() => {
      if (this.#age !== age) return null;
      const changed = makeChange(this.#loaded(), worked);
      if (changed.kind === "impossible") return changed;
      this.#facts.takeAside();
      this.#derived.takeAside();
      this.#count(facts);
      return { kind: "recorded", facts };
    });
  }

  amend({ note, author, voids, facts }: Amendment): Recorded {
    return this.#writing(() => {
      const { root, handled } = this.#noteOf(note);
      const books = this.#loaded();
      const voided = [...new Set(voids)].flatMap((id) => books.byId.get(id) ?? []).sort(inFoldOrder);
      if (voided.length !== new Set(voids).size) throw new Error("a fact to be voided does not stand");
      const added = facts.map(({ fact, replaces, as, restores }, index): Fact => {
        const by = { id: this.#next.fact + index, author, note, ...as };
        if (restores)
          return recordedInPlaceOf(restores, fact, { ...by, author: restores.author, note: restores.note });
        const before = replaces === undefined ? voided.at(-1) : voided.find((old) => old.id === replaces);
        if (replaces !== undefined && !before) throw new Error(`fact ${replaces} is replaced but not voided`);
        return before ? recordedInPlaceOf(before, fact, by) : recordedAs(fact, by, root);
      });
      const result = this.#change({ removed: voided, added });
      if (result.kind === "recorded") this.#facts.void(voids, { note, author, voided: handled });
      return result;
    });
  }

  note(id: number): Note | null {
    return this.#notes.get(id);
  }

  findNote(chat: string, message: string): Note | null {
    return this.#notes.find(chat, message);
  }

  recentNotes(since: number, isMeant: (note: Note) => boolean): Note[] {
    return this.#notes.recent(since, isMeant);
  }

  hasRecentNote(since: number, isMeant: (note: Note) => boolean): boolean {
    return this.#notes.anyRecent(since, isMeant);
  }

  factById(id: number): Fact | null {
    return this.#facts.get(id);
  }

  standingFact(id: number): Fact | null {
    return this.#loaded().byId.get(id) ?? null;
  }

  newestFact(fits: (fact: Fact) => boolean): Fact | null {
    const { byId } = this.#loaded();
    for (let id = this.#next.fact - 1; id > 0; id -= 1) {
      const fact = byId.get(id);
      if (fact && fits(fact)) return fact;
    }
    return null;
  }

  standingFactsOf(root: number): Fact[] {
    return this.#standing(this.#factsOf.get(root));
  }

  hasStandingFacts(root: number): boolean {
    const { byId } = this.#loaded();
    for (const id of this.#factsOf.get(root)) if (byId.has(id)) return true;
    return false;
  }

  standingFactsAnswered(root: number): Fact[] {
    return this.#standing(this.#facts.answeredBy(this.#noteOf(root)));
  }

  standingFactsSince(place: number): Fact[] {
    const { byId } = this.#loaded();
    const facts: Fact[] = [];
    // A fact that replaced another has a later id than its place.
    for (let id = place; id < this.#next.fact; id += 1) {
      const fact = byId.get(id);
      if (fact && fact.place >= place) facts.push(fact);
    }
    return facts;
  }

  factAt(place: number): Fact | null {
    return this.#loaded().facts.find((fact) => fact.place === place) ?? null;
  }

  voidedBy(note: number): Fact[] {
    return this.#facts.voidedBy(note);
  }

  lastMended(author: number): number | null {
    const { facts } = this.#loaded();
    const holds = (note: number) =>
      facts.some((fact) => fact.note === note) ||
      this.voidedBy(note).some(({ place }) => !facts.some((fact) => fact.place === place));
    return this.#notes.mendedBy(author).find(holds) ?? null;
  }

  lastStanding(author: number): number | null {
    return this.#facts.lastRootOf(author);
  }

  /**
   * Brings the derived tables in line with the facts, as after a release that folds them otherwise, and notes the
   * release that did. Gives the number of rows that were not what the facts give.
   */
  rederive(release: string | null = null): number {
    const books = this.#loaded();
    return this.transaction(() => {
      const rows = this.#derived.replace(this.#derived.stored(), books);
      if (release === null) this.settings.unset("derivedBy");
      else this.settings.set("derivedBy", release);
      return rows;
    });
  }

  /** Reads the books now rather than when they are first asked for; no derived row is written anew. */
  load(): 0 {
    this.#loaded();
    return 0;
  }

  settle(): void {
    this.connection.sqlite.pragma("wal_checkpoint(passive)");
  }

  close(): void {
    this.connection.sqlite.close();
    this.#onClose();
  }

  /** Those of some facts that stand, in fold order. */
  #standing(ids: readonly number[]): Fact[] {
    const { byId } = this.#loaded();
    // Mostly one or none.
    const facts: Fact[] = [];
    for (const id of ids) {
      const fact = byId.get(id);
      if (fact) facts.push(fact);
    }
    return facts.length > 1 ? facts.sort(inFoldOrder) : facts;
  }

  #noteOf(id: number): Note {
    const note = this.#notes.get(id);
    if (!note) throw new Error(`no note ${id}`);
    return note;
  }

  #writing<T>(write: () => T): T {
    if (!this.connection.sqlite.inTransaction) throw new Error("the ledger is written in a transaction only");
    try {
      return write();
    } catch (error) {
      this.#broken = error;
      throw error;
    }
  }

  #loaded(): BooksInHand {
    if (this.#books) return this.#books;
    const { sqlite, db } = this.connection;
    const read = () => ({ standing: this.#facts.standing(this.#isTrusted), next: this.#facts.next() });
    // One read transaction, since the writer may be at work beside a reader.
    const { standing, next } = sqlite.inTransaction ? read() : db.transaction(read);
    const folded = foldFacts(standing);
    if (folded.kind === "impossible") throw new ImpossibleHistory(folded.fact, folded.problem);
    folded.books.takeChanges();
    this.#next = next;
    this.#books = folded.books;
    return folded.books;
  }

  /** The usual case: one fact that folds after all others. */
  #append(fact: Fact): Recorded {
    const books = this.#loaded();
    const problem = recordFact(books, fact);
    if (problem) return { kind: "impossible", fact, problem };
    this.#store([fact]);
    const changes = books.takeChanges();
    this.#derived.write(books, changes);
    this.#touched.push({ age: this.#age, pieces: changes.pieces });
    if (this.#touched.length > TOUCHED_MAX) this.#touched.shift();
    return { kind: "recorded", facts: [fact] };
  }

  #change(change: Change): Recorded {
    const books = this.#loaded();
    const changed = changeFacts(books, change);
    if (changed.kind === "impossible") return changed;
    const added = [...change.added];
    this.#store(added);
    this.#derived.write(books, changed.changes);
    return { kind: "recorded", facts: added };
  }

  #asRecorded({ note, author, facts, root: of }: Recording): Fact[] {
    const { root } = this.#noteOf(of ?? note);
    const { fact: first } = this.#next;
    return facts.map((fact, index) => recordedAs(fact, { id: first + index, author, note }, root));
  }

  #store(added: Fact[]): void {
    this.#facts.append(added);
    this.#count(added);
  }

  /** Keeps in mind what was written. */
  #count(added: readonly Fact[]): void {
    this.#age += 1;
    for (const root of new Set(added.map((fact) => fact.root))) {
      const ids = added.filter((fact) => fact.root === root).map(({ id }) => id);
      this.#factsOf.change(root, (before) => [...before, ...ids]);
    }
    this.#next.fact += added.length;
    for (const { pieces } of added)
      this.#next.piece = Math.max(this.#next.piece, ...pieces.map((n) => n + 1));
  }
}
