import type { Statement } from "better-sqlite3";
import { and, asc, desc, eq, inArray, isNull, like, sql } from "drizzle-orm";
import * as z from "zod";
import type { Instant } from "../core/calendar.ts";
import type { Reply } from "../core/reply.ts";
import { type Connection, withoutFlush } from "./connection.ts";
import { createMemory } from "./memory.ts";
import { notes, outbox } from "./schema.ts";
import { onceAsked, rowWriter } from "./statements.ts";

const reply: z.ZodType<Reply> = z.object({
  text: z.string(),
  buttons: z.array(z.array(z.object({ label: z.string(), press: z.string() }))).optional(),
});

const body = z.discriminatedUnion("kind", [
  z.object({
    kind: z.literal("text"),
    reply,
    /** Where it tells of recorded notes and nothing else: how many of each kind. */
    tally: z.object({ of: z.record(z.string(), z.number().int()) }).optional(),
    /** It tells of several rows; what this one itself said. */
    joined: z.string().optional(),
    /** Comes without a sound. */
    silent: z.literal(true).optional(),
  }),
  z.object({
    kind: z.literal("edit"),
    outbox: z.number().int(),
    reply,
    /** Where the chat will not change the message, these words are sent as one of their own. */
    orSend: z.literal(true).optional(),
  }),
  z.object({
    kind: z.literal("file"),
    make: z.object({
      what: z.enum(["export", "backup", "picture", "month picture", "chart"]),
      name: z.string(),
      args: z.record(z.string(), z.json()),
    }),
    caption: z.string(),
  }),
]);

/** What is to be sent: a message, new words for one already sent (by its outbox row), or a file by what makes it. */
export type OutboxBody = z.infer<typeof body>;

export interface OutboxRow {
  id: number;
  chat: string;
  body: OutboxBody;
  /** The note that it answers. */
  note: number | null;
  /** The chat's own id of the message that it is a reply to. */
  replyTo: string | null;
  queued: Instant;
  tries: number;
  notBefore: Instant | null;
  sent: Instant | null;
  /** The chat's own id of the sent message. */
  message: string | null;
  gaveUp: string | null;
}

/** Of a row what stays as it is, whatever becomes of the sending. */
export type Said = Pick<OutboxRow, "id" | "body" | "replyTo">;

/** `waiting`: how many of the chat's rows are unsent, itself included. */
export type Head = Pick<OutboxRow, "id" | "chat" | "notBefore"> & { waiting: number };

interface NewOutboxRow {
  chat: string;
  body: OutboxBody;
  /** The note that it answers. */
  about?: number;
  replyTo?: string;
  /** Queued at most once under this name, ever, such as "nudge:2026-05-09". */
  key?: string;
}

export interface Outbox {
  /** Gives the row's id, or null where its key was queued before. */
  queue(row: NewOutboxRow): number | null;
  get(id: number): OutboxRow | null;
  /** The oldest chat head that may go now (of one chat, or of any): a chat whose head waits holds back only itself. */
  nextUnsent(now: Instant, chat?: string): OutboxRow | null;
  /** `message`: the id the chat gave it; null where there is none, as for an edit. */
  markSent(id: number, message: string | null, now: Instant): void;
  putOff(id: number, notBefore: Instant, tries: number): void;
  /** `unreachable`: not for what it says, but because the chat takes nothing at all. */
  giveUp(id: number, why: string, unreachable?: boolean): void;
  /** Each chat's oldest unsent row, whether it may go yet or not. */
  heads(): Head[];
  headOf(chat: string): OutboxRow | null;
  /** A chat's oldest unsent rows, at most so many. */
  waiting(chat: string, limit: number): OutboxRow[];
  /** Puts new words in the place of several rows: the first says them, the others are never sent. */
  join(rows: readonly [OutboxRow, ...OutboxRow[]], body: OutboxBody & { kind: "text" }): void;
  /** What was given up because the chat took nothing, oldest first. */
  unreached(chat: string): OutboxRow[];
  /** To be sent after all, before whatever is queued from now on. */
  revive(id: number): void;
  /** What a chat's newest rows that were or will be sent say, newest first, at most `LATELY_MAX`. */
  lately(chat: string): readonly Said[];
  /** The first reply to any wording of a message (its root note): what a new wording of it may change. */
  answerOf(root: number): OutboxRow | null;
  /** The row that was sent as this message of a chat; one that tells of several answers no note. */
  messageOf(chat: string, message: string): OutboxRow | null;
}

/** How the reason begins where a chat took nothing at all. */
const UNREACHABLE = "unreachable: ";

/** How many of a chat's rows are looked at after a note. */
const LATELY_MAX = 40;

const unsent = and(isNull(outbox.sent), isNull(outbox.gaveUp));

/** What the bot owes its chats. */
export function openOutbox(connection: Connection, isKept = false): Outbox & { forget(): void } {
  const { db, sqlite } = connection;
  const write = rowWriter(connection, outbox, "keep");
  // Of the columns beside a minimum SQLite gives those of its row (sqlite.org/lang_select.html#bareagg).
  const heads = sqlite.prepare(
    "select min(id) as id, chat, not_before as notBefore, count(*) as waiting from outbox where sent is null and gave_up is null group by chat order by id",
  ) as Statement<[], Head>;
  const headIdOf = sqlite
    .prepare("select min(id) from outbox where chat = ? and sent is null and gave_up is null")
    .pluck() as Statement<[string], number | null>;
  const byId = db
    .select()
    .from(outbox)
    .where(eq(outbox.id, sql.placeholder("id")))
    .prepare();
  const unsentOf = db
    .select()
    .from(outbox)
    .where(and(unsent, eq(outbox.chat, sql.placeholder("chat"))))
    .orderBy(asc(outbox.id))
    .limit(sql.placeholder("limit"))
    .prepare();
  // The row queued last, nearly always the next one to be sent.
  let fresh: OutboxRow | null = null;
  const markSent = sqlite.prepare("update outbox set sent = ?, message = ? where id = ?");
  const latest = onceAsked(() =>
    db
      .select()
      .from(outbox)
      .where(and(eq(outbox.chat, sql.placeholder("chat")), isNull(outbox.gaveUp)))
      .orderBy(desc(outbox.id))
      .limit(LATELY_MAX)
      .prepare(),
  );
  const sentAs = onceAsked(() =>
    db
      .select()
      .from(outbox)
      .where(and(eq(outbox.chat, sql.placeholder("chat")), eq(outbox.message, sql.placeholder("message"))))
      .orderBy(desc(outbox.id))
      .prepare(),
  );
  const lately = createMemory(
    (chat: string) =>
      decodedAll(latest().all({ chat })).map(({ id, body, replyTo }): Said => ({ id, body, replyTo })),
    isKept,
  );
  const change = (id: number, values: Partial<typeof outbox.$inferInsert>): void => {
    lately.forget();
    fresh = null;
    db.update(outbox).set(values).where(eq(outbox.id, id)).run();
  };
  const get = (id: number): OutboxRow | null => (fresh?.id === id ? fresh : rowOf(byId.get({ id })));
  return {
    forget() {
      lately.forget();
      fresh = null;
    },
    queue({ chat, body: content, about, replyTo, key }) {
      const parsed = body.parse(content);
      const rest = { queued: Date.now(), tries: 0, notBefore: null, sent: null, message: null, gaveUp: null };
      const links = { note: about ?? null, replyTo: replyTo ?? null, key: key ?? null };
      const id = write.run({ id: null, chat, body: JSON.stringify(parsed), ...links, ...rest });
      fresh = isKept && id !== null ? { id, chat, body: parsed, ...links, ...rest } : null;
      if (id !== null)
        lately.change(chat, (before) => [
          { id, body: parsed, replyTo: links.replyTo },
          ...before.slice(0, LATELY_MAX - 1),
        ]);
      return id;
    },
    get,
    nextUnsent(now, chat) {
      const isNext = (head: Head) =>
        (head.notBefore ?? 0) <= now && (chat === undefined || head.chat === chat);
      const head = heads.all().find(isNext);
      return head ? get(head.id) : null;
    },
    // Lost in a power cut it is sent twice, which is allowed; a flush of the disk for each would cost more than it.
    markSent(id, message, now) {
      fresh = null;
      withoutFlush(sqlite, () => markSent.run(now, message, id));
    },
    putOff: (id, notBefore, tries) => change(id, { notBefore, tries }),
    giveUp: (id, why, unreachable = false) =>
      change(id, { gaveUp: unreachable ? `${UNREACHABLE}${why}` : why }),
    heads: () => heads.all(),
    headOf(chat) {
      const id = headIdOf.get(chat);
      return typeof id === "number" ? get(id) : null;
    },
    waiting: (chat, limit) => decodedAll(unsentOf.all({ chat, limit })),
    join([first, ...others], content) {
      const said = first.body.kind === "text" ? (first.body.joined ?? first.body.reply.text) : "";
      change(first.id, { body: JSON.stringify(body.parse({ ...content, joined: said })), replyTo: null });
      for (const { id } of others) change(id, { gaveUp: `told in row ${first.id}` });
    },
    unreached: (chat) =>
      decodedAll(
        db
          .select()
          .from(outbox)
          .where(and(eq(outbox.chat, chat), like(outbox.gaveUp, `${UNREACHABLE}%`)))
          .orderBy(asc(outbox.id))
          .all(),
      ),
    revive: (id) => change(id, { gaveUp: null, tries: 0, notBefore: null }),
    lately: lately.get,
    answerOf(root) {
      const [{ chat, message } = { chat: "", message: "" }] = db
        .select()
        .from(notes)
        .where(eq(notes.id, root))
        .all();
      const isNamed = and(eq(notes.chat, chat), eq(notes.message, message));
      const wordings = db.select({ id: notes.id }).from(notes).where(isNamed);
      const isReply = and(inArray(outbox.note, wordings), isNull(outbox.gaveUp));
      const rows = db.select().from(outbox).where(isReply).orderBy(asc(outbox.id)).all();
      return decodedAll(rows).find(({ body }) => body.kind === "text" && body.joined === undefined) ?? null;
    },
    messageOf(chat, message) {
      const row = rowOf(sentAs().get({ chat, message }));
      return row?.body.kind === "text" && row.body.joined !== undefined ? { ...row, note: null } : row;
    },
  };
}

function rowOf(row: typeof outbox.$inferSelect | undefined): OutboxRow | null {
  return row ? decoded(row) : null;
}

function decodedAll(rows: (typeof outbox.$inferSelect)[]): OutboxRow[] {
  return rows.map(decoded);
}

function decoded({ key: _, ...row }: typeof outbox.$inferSelect): OutboxRow {
  return { ...row, body: body.parse(JSON.parse(row.body)) };
}
