import { and, asc, eq, exists, inArray, isNull, notExists, or, sql } from "drizzle-orm";
import type { Instant } from "../core/calendar.ts";
import type { Connection } from "./connection.ts";
import { factPieces, facts, notes, pictures, voids } from "./schema.ts";

export type Picture = typeof pictures.$inferSelect;

export interface Pictures {
  /** Keeps a picture by the chat's file id. Without a piece it belongs to the pieces of its note's facts. */
  add(picture: { note: number; piece?: number; file: string; uniqueFile: string; taken: Instant }): void;
  /** Every picture of a piece, oldest first. */
  ofPiece(piece: number): Picture[];
  /** Gives the pictures of a note to a piece; null: to none. */
  fileUnder(note: number, piece: number | null): void;
  /** The pictures of a message in any wording (its root note), oldest first. */
  ofMessage(root: number): Picture[];
  /** Every picture, oldest first. */
  all(): Picture[];
  /** Those that came with a spending that stands, oldest first. */
  receipts(): Picture[];
}

/** The pictures of a ledger, by the chat's own file ids. */
export function openPictures({ db }: Connection): Pictures {
  const standing = notExists(db.select().from(voids).where(eq(voids.fact, facts.id)));
  return {
    add({ note, piece, file, uniqueFile, taken }) {
      db.insert(pictures)
        .values({ note, piece: piece ?? null, file, uniqueFile, taken })
        .onConflictDoNothing()
        .run();
    },
    fileUnder: (note, piece) => void db.update(pictures).set({ piece }).where(eq(pictures.note, note)).run(),
    ofMessage(root) {
      const wordings = db.select({ id: notes.id }).from(notes).where(eq(notes.root, root));
      return db
        .select()
        .from(pictures)
        .where(inArray(pictures.note, wordings))
        .orderBy(asc(pictures.taken), asc(pictures.id))
        .all();
    },
    all: () => db.select().from(pictures).orderBy(asc(pictures.taken), asc(pictures.id)).all(),
    receipts() {
      const spent = db
        .select({ one: sql`1` })
        .from(notes)
        .innerJoin(facts, and(eq(facts.root, notes.root), eq(facts.kind, "spend")))
        .where(and(eq(notes.id, pictures.note), standing));
      return db
        .select()
        .from(pictures)
        .where(exists(spent))
        .orderBy(asc(pictures.taken), asc(pictures.id))
        .all();
    },
    ofPiece(piece) {
      const ofItsNote = db
        .select({ one: sql`1` })
        .from(facts)
        .innerJoin(factPieces, and(eq(factPieces.fact, facts.id), eq(factPieces.piece, piece)))
        .innerJoin(notes, eq(notes.root, facts.root))
        .where(and(eq(notes.id, pictures.note), standing));
      const belongs = or(eq(pictures.piece, piece), and(isNull(pictures.piece), exists(ofItsNote)));
      return db.select().from(pictures).where(belongs).orderBy(asc(pictures.taken), asc(pictures.id)).all();
    },
  };
}
