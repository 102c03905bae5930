import { and, between, desc, eq, gte, type SQL, sql } from "drizzle-orm";
import type { Instant } from "../core/calendar.ts";
import type { Connection } from "./connection.ts";
import { notes } from "./schema.ts";
import { rowWriter } from "./statements.ts";

/** A message as stored. `root` is the id of its first revision: its own id unless the message was edited. */
export type Note = typeof notes.$inferSelect;
export type NoteState = Note["state"];

/** The outcome of a message that corrected earlier ones. */
export const MENDED = "mended";
/** How many corrections an undo looks back over. */
const MENDS_LOOKED_AT = 50;

export interface NewNote {
  chat: string;
  message: string;
  text: string;
  /** Member id. */
  author: number;
  said: Instant;
  handled: Instant;
  /** When an edited wording was made, by the chat's clock. */
  revised?: Instant;
}

export interface Notes {
  /** Stores a message; one that is already there gets a further row with the next revision. Gives its id. */
  add(note: NewNote): number;
  setState(id: number, state: NoteState, outcome?: string): void;
  get(id: number): Note | null;
  /** The latest revision of a message; of several of that name in the chat, of the latest. */
  find(chat: string, message: string): Note | null;
  /** A person's latest messages that corrected earlier ones, newest first. */
  mendedBy(author: number): number[];
  /** Notes handled at or after an instant, newest first: a person's, or everybody's. */
  recent(author: number | null, since: Instant): Note[];
}

/** The messages of a ledger as they were typed. */
export function openNotes({ db }: Connection): Notes {
  const write = rowWriter(db, notes);
  const nextId = db
    .select({ id: sql<number>`coalesce(max(${notes.id}), 0) + 1` })
    .from(notes)
    .prepare();
  const byId = db
    .select()
    .from(notes)
    .where(eq(notes.id, sql.placeholder("id")))
    .prepare();
  const newest = (isNamed: SQL | undefined) =>
    db
      .select()
      .from(notes)
      .where(and(eq(notes.chat, sql.placeholder("chat")), isNamed))
      .orderBy(desc(notes.id))
      .limit(1)
      .prepare();
  const named = newest(eq(notes.message, sql.placeholder("message")));
  const namedAgain = newest(between(notes.message, sql.placeholder("from"), sql.placeholder("to")));
  const find = (chat: string, message: string): Note | null => {
    const first = named.get({ chat, message });
    if (!first) return null;
    // A name taken by an earlier message of the chat goes on behind an "@", before a number; ":" sorts after it.
    return namedAgain.get({ chat, from: `${message}@`, to: `${message}@:` }) ?? first;
  };
  return {
    add(note) {
      const before = named.get({ chat: note.chat, message: note.message });
      const id = nextId.get()?.id ?? 1;
      const revision = before ? before.revision + 1 : 0;
      write.run({
        revised: null,
        ...note,
        id,
        revision,
        root: before?.root ?? id,
        state: "new",
        outcome: null,
      });
      return id;
    },
    setState(id, state, outcome) {
      db.update(notes)
        .set({ state, outcome: outcome ?? null })
        .where(eq(notes.id, id))
        .run();
    },
    get: (id) => byId.get({ id }) ?? null,
    find,
    mendedBy: (author) =>
      db
        .select({ id: notes.id })
        .from(notes)
        .where(and(eq(notes.author, author), eq(notes.outcome, MENDED)))
        .orderBy(desc(notes.id))
        .limit(MENDS_LOOKED_AT)
        .all()
        .map(({ id }) => id),
    recent: (author, since) =>
      db
        .select()
        .from(notes)
        .where(and(author === null ? undefined : eq(notes.author, author), gte(notes.handled, since)))
        .orderBy(desc(notes.id))
        .all(),
  };
}
