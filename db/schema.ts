import { type AnyColumn, type SQL, sql } from "drizzle-orm";
import {
  type AnySQLiteColumn,
  check,
  index,
  integer,
  primaryKey,
  sqliteTable,
  text,
  unique,
  uniqueIndex,
} from "drizzle-orm/sqlite-core";
import type { Account } from "../core/books/postings.ts";
import type { DaysInYear, RetireHow } from "../core/notes/reading.ts";

// SQLite stores any type in any column, so each column that carries money, a day or JSON checks its own type.
const isWhole = (column: AnyColumn): SQL => sql`typeof(${column}) = 'integer'`;
const isWholeOrNull = (column: AnyColumn): SQL => sql`typeof(${column}) in ('integer', 'null')`;
// The shape, and a date that exists: date('2026-02-30') is '2026-03-02'.
const isDay = (column: AnyColumn): SQL =>
  sql`${column} glob '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]' and date(${column}) = ${column}`;
const isDayOrNull = (column: AnyColumn): SQL => sql`${column} is null or (${isDay(column)})`;
const isRole = (column: AnyColumn): SQL => sql`${column} in ('owner', 'member')`;
const isJson = (column: AnyColumn): SQL => sql`typeof(${column}) = 'text' and json_valid(${column})`;

// ── People ────────────────────────────────────────────────────────────────────────────────────────────

/** Who may write. A removed member keeps the row, since facts name it. */
export const members = sqliteTable(
  "members",
  {
    id: integer("id").primaryKey(),
    /** The chat's own user id, as text. */
    user: text("user").notNull().unique(),
    name: text("name").notNull(),
    role: text("role", { enum: ["owner", "member"] }).notNull(),
    joined: integer("joined").notNull(),
    removed: integer("removed"),
  },
  (table) => [check("members_role", isRole(table.role))],
);

/** One-time codes, kept as hashes only. */
export const invitations = sqliteTable(
  "invitations",
  {
    hash: text("hash").primaryKey(),
    role: text("role", { enum: ["owner", "member"] }).notNull(),
    expires: integer("expires").notNull(),
    used: integer("used"),
    tries: integer("tries").notNull().default(0),
  },
  (table) => [check("invitations_role", isRole(table.role))],
);

/** The one row counts strangers turned away; nothing else of theirs is kept. */
export const strangers = sqliteTable(
  "strangers",
  { id: integer("id").primaryKey(), count: integer("count").notNull() },
  (table) => [check("strangers_one_row", sql`${table.id} = 1`)],
);

export const settings = sqliteTable(
  "settings",
  { key: text("key").primaryKey(), value: text("value").notNull() },
  (table) => [check("settings_value", isJson(table.value))],
);

// ── Notes and facts: the history ──────────────────────────────────────────────────────────────────────

/** Every message as typed. An edited one is a further row with the next revision. */
export const notes = sqliteTable(
  "notes",
  {
    id: integer("id").primaryKey(),
    chat: text("chat").notNull(),
    message: text("message").notNull(),
    revision: integer("revision").notNull(),
    /** The row of revision 0 of the same message: its own id there. */
    root: integer("root").notNull(),
    text: text("text").notNull(),
    author: integer("author")
      .notNull()
      .references(() => members.id),
    said: integer("said").notNull(),
    handled: integer("handled").notNull(),
    state: text("state", {
      enum: ["new", "recorded", "asked", "answered", "refused", "unclear", "failed"],
    }).notNull(),
    /** What came of it where the state needs a word more, such as why it failed. */
    outcome: text("outcome"),
    /** When an edited wording was made, by the chat's clock; null for a message as first sent. */
    revised: integer("revised"),
  },
  (table) => [
    unique("notes_message").on(table.chat, table.message, table.revision),
    index("notes_handled").on(table.handled),
    // The few that corrected earlier ones.
    index("notes_mended").on(table.author, table.id).where(sql`outcome = 'mended'`),
    check("notes_said", isWhole(table.said)),
    check("notes_handled", isWhole(table.handled)),
  ],
);

/** Append-only. `place` orders a day; `root` is the note it is an amended part of. */
export const facts = sqliteTable(
  "facts",
  {
    id: integer("id").primaryKey(),
    kind: text("kind").notNull(),
    day: text("day").notNull(),
    place: integer("place").notNull(),
    author: integer("author")
      .notNull()
      .references(() => members.id),
    note: integer("note")
      .notNull()
      .references(() => notes.id),
    root: integer("root")
      .notNull()
      .references(() => notes.id),
    amount: integer("amount"),
    data: text("data").notNull(),
    /** Who of the household did it, where the note said so. */
    by: text("by"),
    /** The place of the standing note that this is an instance of. */
    repeat: integer("repeat").references((): AnySQLiteColumn => facts.id),
  },
  (table) => [
    index("facts_note").on(table.note),
    index("facts_root").on(table.root),
    check("facts_day", isDay(table.day)),
    check("facts_place", isWhole(table.place)),
    check("facts_amount", isWholeOrNull(table.amount)),
    check("facts_data", isJson(table.data)),
  ],
);

/** Append-only: a fact that no longer stands, and the message that said so. */
export const voids = sqliteTable(
  "voids",
  {
    fact: integer("fact")
      .primaryKey()
      .references(() => facts.id),
    note: integer("note")
      .notNull()
      .references(() => notes.id),
    author: integer("author")
      .notNull()
      .references(() => members.id),
    voided: integer("voided").notNull(),
  },
  (table) => [check("voids_voided", isWhole(table.voided))],
);

/** Append-only: the pieces a fact is about, in order; shares are derived. */
export const factPieces = sqliteTable(
  "fact_pieces",
  {
    fact: integer("fact")
      .notNull()
      .references(() => facts.id),
    position: integer("position").notNull(),
    piece: integer("piece").notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.fact, table.position] }),
    check("fact_pieces_piece_number", sql`typeof(${table.piece}) = 'integer' and ${table.piece} > 0`),
  ],
);

// ── Derived from the standing facts; can be thrown away and rebuilt ───────────────────────────────────

export const pieces = sqliteTable(
  "pieces",
  {
    number: integer("number").primaryKey(),
    name: text("name").notNull(),
    traits: text("traits").notNull(),
    lot: integer("lot"),
    set: integer("set", { mode: "boolean" }).notNull(),
    source: text("source"),
    bought: text("bought").notNull(),
    started: text("started"),
    finished: text("finished"),
    listed: text("listed"),
    listPrice: integer("list_price"),
    firstListPrice: integer("first_list_price"),
    firstListed: text("first_listed"),
    holdSince: text("hold_since"),
    holdBuyer: text("hold_buyer"),
    holdUntil: text("hold_until"),
    sold: text("sold"),
    gone: text("gone").$type<"sold" | RetireHow>(),
    goneOn: text("gone_on"),
    price: integer("price").notNull(),
    materials: integer("materials").notNull(),
    fees: integer("fees").notNull(),
    deposit: integer("deposit").notNull(),
    depositsKept: integer("deposits_kept").notNull(),
    sales: integer("sales").notNull(),
    refunds: integer("refunds").notNull(),
    minutes: integer("minutes").notNull(),
    miles: text("miles").notNull(),
    owed: integer("owed").notNull().default(0),
    holdAgreed: integer("hold_agreed"),
  },
  (table) => [
    check("pieces_traits", isJson(table.traits)),
    check("pieces_bought", isDay(table.bought)),
    check("pieces_sold", isDayOrNull(table.sold)),
    check("pieces_price", isWhole(table.price)),
    check("pieces_materials", isWhole(table.materials)),
    check("pieces_fees", isWhole(table.fees)),
    check("pieces_deposit", isWhole(table.deposit)),
    check("pieces_deposits_kept", isWhole(table.depositsKept)),
    check("pieces_sales", isWhole(table.sales)),
    check("pieces_refunds", isWhole(table.refunds)),
    check("pieces_list_price", isWholeOrNull(table.listPrice)),
  ],
);

/** The legs of each fact, in order; they sum to zero. Debit positive, credit negative. */
export const postings = sqliteTable(
  "postings",
  {
    fact: integer("fact")
      .notNull()
      .references(() => facts.id),
    leg: integer("leg").notNull(),
    day: text("day").notNull(),
    account: text("account").$type<Account>().notNull(),
    cents: integer("cents").notNull(),
    piece: integer("piece"),
    detail: text("detail"),
  },
  (table) => [
    primaryKey({ columns: [table.fact, table.leg] }),
    check("postings_day", isDay(table.day)),
    check("postings_cents", isWhole(table.cents)),
  ],
);

/** Each loan after its last posting; nothing here depends on today. */
export const loans = sqliteTable(
  "loans",
  {
    name: text("name").primaryKey(),
    opened: text("opened").notNull(),
    rate: text("rate").notNull(),
    rateUnknown: integer("rate_unknown", { mode: "boolean" }).notNull(),
    days: text("days").$type<DaysInYear>().notNull(),
    principal: integer("principal").notNull(),
    accrued: integer("accrued").notNull(),
    since: text("since").notNull(),
    stretches: text("stretches").notNull(),
    paid: integer("paid").notNull(),
    interestPaid: integer("interest_paid").notNull(),
  },
  (table) => [
    check("loans_opened", isDay(table.opened)),
    check("loans_since", isDay(table.since)),
    check("loans_principal", isWhole(table.principal)),
    check("loans_accrued", isWhole(table.accrued)),
    check("loans_paid", isWhole(table.paid)),
    check("loans_interest_paid", isWhole(table.interestPaid)),
    check("loans_stretches", isJson(table.stretches)),
  ],
);

// ── The conversation ──────────────────────────────────────────────────────────────────────────────────

/** Deliveries already handled: the same one again changes nothing. */
export const seenUpdates = sqliteTable("seen_updates", {
  key: text("key").primaryKey(),
});

/** What the bot owes its chats, in order. Sent after the commit that queued it and marked after the send. */
export const outbox = sqliteTable(
  "outbox",
  {
    id: integer("id").primaryKey(),
    chat: text("chat").notNull(),
    body: text("body").notNull(),
    /** The note that it answers. */
    note: integer("note").references(() => notes.id),
    replyTo: text("reply_to"),
    /** Queued at most once under this name. */
    key: text("key"),
    /** By the machine's clock: nothing goes by it, but it tells whoever looks into the file. */
    queued: integer("queued").notNull(),
    tries: integer("tries").notNull().default(0),
    notBefore: integer("not_before"),
    sent: integer("sent"),
    /** The id that the chat gave the sent message. */
    message: text("message"),
    /** Why it will not be sent any more. */
    gaveUp: text("gave_up"),
  },
  (table) => [
    index("outbox_unsent").on(table.chat, table.id).where(sql`sent is null and gave_up is null`),
    // Most rows have no key, and none its message before it is sent: an index need not hold them.
    uniqueIndex("outbox_key").on(table.key).where(sql`key is not null`),
    index("outbox_note").on(table.note),
    index("outbox_message").on(table.chat, table.message).where(sql`message is not null`),
    check("outbox_body", isJson(table.body)),
  ],
);

/** Questions that wait for an answer, one queue for each person. */
export const questions = sqliteTable(
  "questions",
  {
    id: integer("id").primaryKey(),
    person: integer("person")
      .notNull()
      .references(() => members.id),
    chat: text("chat").notNull(),
    note: integer("note")
      .notNull()
      .references(() => notes.id),
    matter: text("matter").notNull(),
    ask: text("ask").notNull(),
    asked: integer("asked").notNull(),
    closed: integer("closed"),
    /** The message that asked it. */
    prompt: integer("prompt").references(() => outbox.id),
    /** Names it in the data of its buttons. */
    token: text("token").notNull().unique(),
  },
  (table) => [
    index("questions_open").on(table.person, table.id).where(sql`closed is null`),
    check("questions_matter", isJson(table.matter)),
    check("questions_ask", isJson(table.ask)),
  ],
);

/** Pictures by the chat's own file id. Those without a piece belong to the pieces of their note's facts. */
export const pictures = sqliteTable(
  "pictures",
  {
    id: integer("id").primaryKey(),
    note: integer("note")
      .notNull()
      .references(() => notes.id),
    piece: integer("piece"),
    file: text("file").notNull(),
    uniqueFile: text("unique_file").notNull(),
    taken: integer("taken").notNull(),
  },
  (table) => [
    // The same picture once; NULLs would not count as the same in one key over both.
    uniqueIndex("pictures_of_note").on(table.note, table.uniqueFile).where(sql`piece is null`),
    uniqueIndex("pictures_of_piece").on(table.piece, table.uniqueFile).where(sql`piece is not null`),
  ],
);

/** What the bot has said of its own accord: one row a local day and kind, whatever restarts. */
export const reminders = sqliteTable(
  "reminders",
  {
    day: text("day").notNull(),
    kind: text("kind").notNull(),
    claimed: integer("claimed").notNull(),
  },
  (table) => [primaryKey({ columns: [table.day, table.kind] }), check("reminders_day", isDay(table.day))],
);
