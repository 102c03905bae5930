import "../core/lists.ts";
import { and, asc, desc, eq, isNull, ne, notExists, or, sql } from "drizzle-orm";
import type { Fact, FactKind } from "../core/books/facts.ts";
import { rulesOf } from "../core/books/fold.ts";
import { assertCents } from "../core/money.ts";
import type { Steps } from "../core/steps.ts";
import type { Connection } from "./connection.ts";
import type { Note } from "./notes.ts";
import { factPieces, facts, notes, voids } from "./schema.ts";
import { onceAsked, rowWriter } from "./statements.ts";

export interface FactStore {
  /** Writes facts as they are, ids and places included. */
  append(facts: readonly Fact[]): void;
  /** The same in two parts: new facts are laid aside, one at each step, and written together later. */
  layAside(facts: readonly Fact[]): Steps<void>;
  takeAside(): void;
  void(facts: readonly number[], by: { note: number; author: number; voided: number }): void;
  /** Every standing fact, in no order; checked by its kind unless what is stored is trusted. */
  standing(isTrusted: boolean): Fact[];
  /** Every fact by id, each to be read by itself: a broken one throws only where it is read. */
  each(): { id: number; isStanding: boolean; read(): Fact }[];
  /** Standing or voided. */
  get(id: number): Fact | null;
  /** Ids of the facts that are a part of a message, standing or voided. */
  ofRoot(root: number): number[];
  /** Ids of the facts, standing or voided, that a message recorded and that are a part of another one. */
  answeredBy(message: Pick<Note, "chat" | "message" | "root">): number[];
  /** The root of the standing fact that this person's latest note recorded; null where none stands. */
  lastRootOf(author: number): number | null;
  /** The facts that a message made void. */
  voidedBy(note: number): Fact[];
  /** The next ids that were never given. */
  next(): { fact: number; piece: number };
}

/** The facts of a ledger, each checked by its kind going in and coming out. */
export function openFactStore(connection: Connection): FactStore {
  const { db, sqlite } = connection;
  const writeFact = rowWriter(connection, facts);
  const writePiece = rowWriter(connection, factPieces);
  const writeVoid = rowWriter(connection, voids);
  const lastFact = db
    .select({ id: sql<number>`coalesce(max(${facts.id}), 0)` })
    .from(facts)
    .prepare();
  const lastPiece = db
    .select({ number: sql<number>`coalesce(max(${factPieces.piece}), 0)` })
    .from(factPieces)
    .prepare();
  const ofRoot = db
    .select({ id: facts.id })
    .from(facts)
    .where(eq(facts.root, sql.placeholder("root")))
    .prepare();
  const answeredBy = db
    .select({ id: facts.id })
    .from(notes)
    .innerJoin(facts, eq(facts.note, notes.id))
    .where(
      and(
        eq(notes.chat, sql.placeholder("chat")),
        eq(notes.message, sql.placeholder("message")),
        ne(facts.root, sql.placeholder("root")),
      ),
    )
    .prepare();
  const lastRoot = db
    .select({ root: facts.root })
    .from(facts)
    .where(
      and(
        eq(facts.author, sql.placeholder("author")),
        // What a standing note recorded is nothing that the person did last.
        or(isNull(facts.repeat), ne(facts.id, facts.place)),
        notExists(db.select().from(voids).where(eq(voids.fact, facts.id))),
      ),
    )
    .orderBy(desc(facts.note), asc(facts.day), asc(facts.place))
    .limit(1)
    .prepare();
  // As plain rows: at the start of a ledger of many years, all of them are read before the first note is heard.
  const standing = sqlite.prepare(
    "select * from facts where not exists (select 1 from voids where voids.fact = facts.id)",
  );
  const links = sqlite.prepare("select fact, piece from fact_pieces order by fact, position");
  const each: FactStore["each"] = () => {
    const numbers = piecesByFact(db.select().from(factPieces).orderBy(asc(factPieces.position)).all());
    const joined = db.select({ fact: facts, voided: voids.fact }).from(facts);
    const rows = joined.leftJoin(voids, eq(voids.fact, facts.id)).orderBy(asc(facts.id)).all();
    return rows.map(({ fact, voided }) => ({
      id: fact.id,
      isStanding: voided === null,
      read: () => factOf(fact, numbers.get(fact.id) ?? []),
    }));
  };
  const byId = onceAsked(() => ({
    fact: db
      .select()
      .from(facts)
      .where(eq(facts.id, sql.placeholder("id")))
      .prepare(),
    links: db
      .select()
      .from(factPieces)
      .where(eq(factPieces.fact, sql.placeholder("id")))
      .orderBy(asc(factPieces.position))
      .prepare(),
  }));
  const get: FactStore["get"] = (id) => {
    const row = byId().fact.get({ id });
    if (!row) return null;
    const links = byId().links.all({ id });
    return factOf(
      row,
      links.map((link) => link.piece),
    );
  };
  return {
    append(added) {
      for (const fact of added) {
        writeFact.run(rowOf(fact));
        writePiece.runAll(linksOf(fact));
      }
    },
    *layAside(added) {
      for (const each of [writeFact, writePiece]) each.dropAside();
      for (const fact of added) {
        writeFact.layAside([rowOf(fact)]);
        writePiece.layAside(linksOf(fact));
        yield;
      }
    },
    takeAside() {
      for (const each of [writeFact, writePiece]) each.takeAside();
    },
    void(ids, by) {
      for (const fact of ids) writeVoid.run({ fact, ...by });
    },
    standing(isTrusted) {
      const numbers = piecesByFact(links.all() as { fact: number; piece: number }[]);
      const rows = standing.all() as FactRow[];
      return rows.map((row) => factOf(row, numbers.get(row.id) ?? [], isTrusted));
    },
    each,
    get,
    voidedBy: (note) =>
      db
        .select()
        .from(voids)
        .where(eq(voids.note, note))
        .all()
        .map(({ fact }) => get(fact)!),
    ofRoot: (root) => ofRoot.all({ root }).map(({ id }) => id),
    answeredBy: ({ chat, message, root }) => answeredBy.all({ chat, message, root }).map(({ id }) => id),
    lastRootOf: (author) => lastRoot.get({ author })?.root ?? null,
    next: () => ({ fact: (lastFact.get()?.id ?? 0) + 1, piece: (lastPiece.get()?.number ?? 0) + 1 }),
  };
}

function linksOf({ id, pieces }: Fact) {
  return pieces.map((piece, position) => ({ fact: id, position, piece }));
}

function piecesByFact(links: { fact: number; piece: number }[]): Map<number, number[]> {
  const numbers = new Map<number, number[]>();
  for (const { fact, piece } of links) {
    const of = numbers.get(fact);
    if (of) of.push(piece);
    else numbers.set(fact, [piece]);
  }
  return numbers;
}

function rowOf({ kind, data, amount, by, repeat, pieces: _, ...rest }: Fact) {
  if (amount !== undefined) assertCents(amount);
  const optional = { amount: amount ?? null, by: by ?? null, repeat: repeat ?? null };
  return { ...rest, ...optional, kind, data: JSON.stringify(rulesOf(kind).data.parse(data)) };
}

type FactRow = typeof facts.$inferSelect;

/** Written out field by field: the facts of many years are all read at a start, and are to be alike inside. */
function factOf(row: FactRow, pieces: number[], isTrusted = false): Fact {
  const { id, kind, day, place, author, note, root, amount, by, repeat } = row;
  if (amount !== null) assertCents(amount);
  const stored: unknown = JSON.parse(row.data);
  const data = isTrusted ? stored : rulesOf(kind as FactKind).data.parse(stored);
  const fact: Record<string, unknown> = { id, kind, day, place, author, note, root, pieces, data };
  if (amount !== null) fact["amount"] = amount;
  if (by !== null) fact["by"] = by;
  if (repeat !== null) fact["repeat"] = repeat;
  return fact as unknown as Fact;
}
