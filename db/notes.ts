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
/** So many of the latest notes are remembered at the most, and all of the last hour, which a flood would read again and again. */
const LATELY_MAX = 500;
const LATELY_MS = 3_600_000;

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
  /** Notes handled at or after an instant that are meant, newest first. */
  recent(since: Instant, isMeant: (note: Note) => boolean): Note[];
  /** Whether there is any of these. */
  anyRecent(since: Instant, isMeant: (note: Note) => boolean): boolean;
}

/** The messages of a ledger as they were typed. */
export function openNotes(connection: Connection, isKept = false): Notes & { forget(): void } {
  const { db, sqlite } = connection;
  const write = rowWriter(connection, notes);
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
  const recent = db
    .select()
    .from(notes)
    .where(gte(notes.handled, sql.placeholder("since")))
    .orderBy(desc(notes.id))
    .prepare();
  const setState = sqlite.prepare("update notes set state = ?, outcome = ? where id = ?");
  // What the one writer need not ask: its next id, the note in hand, and whether there was one of that name.
  let next: number | null = null;
  let inHand: Note | null = null;
  let lately: { since: Instant; rows: Note[] } | null = null;
  let looked: { chat: string; message: string; found: Note | undefined } | null = null;
  const forget = () => {
    next = null;
    inHand = null;
    looked = null;
    lately = null;
  };
  const nextIdOf = (): number => (isKept ? next : null) ?? nextId.get()?.id ?? 1;
  const firstNamed = (chat: string, message: string): Note | undefined => {
    if (isKept && looked?.chat === chat && looked.message === message) return looked.found;
    looked = { chat, message, found: named.get({ chat, message }) };
    return looked.found;
  };
  const find = (chat: string, message: string): Note | null => {
    const first = firstNamed(chat, message);
    if (!first) return null;
    // A name taken by an earlier message of the chat goes on behind an "@", before a number; ":" sorts after it.
    return namedAgain.get({ chat, from: `${message}@`, to: `${message}@:` }) ?? first;
  };
  const rowsSince = (since: Instant): readonly Note[] => {
    if (!isKept || !lately || lately.since > since) lately = { since, rows: recent.all({ since }) };
    return lately.rows;
  };
  return {
    forget,
    add(note) {
      const before = firstNamed(note.chat, note.message);
      const id = nextIdOf();
      const revision = before ? before.revision + 1 : 0;
      const row: Note = {
        revised: null,
        ...note,
        id,
        revision,
        root: before?.root ?? id,
        state: "new",
        outcome: null,
      };
      write.run(row);
      looked = null;
      next = id + 1;
      inHand = row;
      if (lately && lately.rows.length >= LATELY_MAX && isLongAgo(lately.rows.at(-1)!, row)) lately = null;
      lately?.rows.unshift(row);
      return id;
    },
    setState(id, state, of) {
      const outcome = of ?? null;
      looked = null;
      if (inHand?.id === id) inHand = { ...inHand, state, outcome };
      const place = lately?.rows.findIndex((row) => row.id === id) ?? -1;
      if (lately && place >= 0) lately.rows[place] = { ...lately.rows[place]!, state, outcome };
      setState.run(state, outcome, id);
    },
    get(id) {
      if (!isKept) return byId.get({ id }) ?? null;
      const known = inHand?.id === id ? inHand : lately?.rows[(lately.rows[0]?.id ?? 0) - id];
      return known?.id === id ? { ...known } : (byId.get({ id }) ?? null);
    },
    find,
    mendedBy: (author) =>
      db
        .select({ id: notes.id })
        .from(notes)
        // Said in the statement itself: only so does the index of these few serve.
        .where(and(eq(notes.author, author), sql`outcome = ${sql.raw(`'${MENDED}'`)}`))
        .orderBy(desc(notes.id))
        .limit(MENDS_LOOKED_AT)
        .all()
        .map(({ id }) => id),
    recent: (since, isMeant) => rowsSince(since).filter((note) => note.handled >= since && isMeant(note)),
    anyRecent: (since, isMeant) => rowsSince(since).some((note) => note.handled >= since && isMeant(note)),
  };
}

const isLongAgo = (before: Note, now: Note): boolean => before.handled < now.handled - LATELY_MS;
