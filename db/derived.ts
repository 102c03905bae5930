import { asc, getTableColumns } from "drizzle-orm";
import type { SQLiteTable } from "drizzle-orm/sqlite-core";
import type { Books, Loan, Piece } from "../core/books/books.ts";
import type { Changes } from "../core/books/hand.ts";
import type { Posting } from "../core/books/postings.ts";
import type { Steps } from "../core/steps.ts";
import type { Connection } from "./connection.ts";
import { loans, pieces, postings } from "./schema.ts";
import { rowWriter, type WholeRow } from "./statements.ts";

type PieceRow = WholeRow<typeof pieces>;
type LoanRow = WholeRow<typeof loans>;
type PostingRow = WholeRow<typeof postings>;

/** The rows of the derived tables, columns in the schema's order, by their keys: pieces by number, loans by name, postings by fact. */
export interface DerivedRows {
  pieces: Map<number, PieceRow>;
  loans: Map<string, LoanRow>;
  postings: Map<number, PostingRow[]>;
}

export interface DerivedTables {
  /** After the history changed: writes what is not the same any more. */
  write(books: Books, changes: Changes): void;
  /** Lays aside the rows of books whose pieces and facts are all new, one at each step; written together later. */
  layAside(books: Books): Steps<void>;
  takeAside(): void;
  /** After a refold: writes what differs between the rows stored so far and those of `books`; gives how many. */
  replace(stored: DerivedRows, books: Books): number;
  stored(): DerivedRows;
}

/** The tables that hold what the facts give. */
export function openDerivedTables(connection: Connection): DerivedTables {
  const { db, sqlite } = connection;
  const writePiece = rowWriter(connection, pieces, { replace: pieces.number });
  const writeLoan = rowWriter(connection, loans, { replace: loans.name });
  const writePosting = rowWriter(connection, postings);
  // By a list of keys: an import or its undo drops thousands.
  const dropping = (table: string, key: string) => {
    const drop = sqlite.prepare(`delete from ${table} where ${key} in (select value from json_each(?))`);
    return (keys: readonly unknown[]) => keys.length > 0 && drop.run(JSON.stringify(keys));
  };
  const [dropPieces, dropLoans, dropPostings] = [
    dropping("pieces", "number"),
    dropping("loans", "name"),
    dropping("postings", "fact"),
  ];
  return {
    write(books, changes) {
      for (const number of changes.pieces) {
        const piece = books.pieces.get(number);
        if (piece) writePiece.run(pieceRow(piece));
      }
      dropPieces(changes.pieces.filter((number) => !books.pieces.has(number)));
      for (const name of changes.loans) {
        const loan = books.loans.get(name);
        if (loan) writeLoan.run(loanRow(loan));
      }
      dropLoans(changes.loans.filter((name) => !books.loans.has(name)));
      if (changes.mayReplace) dropPostings(changes.facts);
      for (const fact of changes.facts) writePosting.runAll(books.postings.get(fact)?.map(postingRow) ?? []);
    },
    *layAside(books) {
      for (const each of [writePiece, writePosting]) each.dropAside();
      for (const piece of books.pieces.values()) {
        writePiece.layAside([pieceRow(piece)]);
        yield;
      }
      for (const legs of books.postings.values()) {
        writePosting.layAside(legs.map(postingRow));
        yield;
      }
    },
    takeAside() {
      for (const each of [writePiece, writePosting]) each.takeAside();
    },
    replace(stored, books) {
      const rows = rowsOf(books);
      const changed = differences(stored, rows);
      dropPieces(changed.pieces);
      dropLoans(changed.loans);
      dropPostings(changed.postings);
      for (const number of changed.pieces)
        if (rows.pieces.has(number)) writePiece.run(rows.pieces.get(number)!);
      for (const name of changed.loans) if (rows.loans.has(name)) writeLoan.run(rows.loans.get(name)!);
      for (const fact of changed.postings) writePosting.runAll(rows.postings.get(fact) ?? []);
      return changed.pieces.length + changed.loans.length + changed.postings.length;
    },
    stored: () => storedRows(db),
  };
}

function storedRows(db: Connection["db"]): DerivedRows {
  const pieceRows = db.select().from(pieces).all();
  const loanRows = db.select().from(loans).all();
  const legs = db.select().from(postings).orderBy(asc(postings.fact), asc(postings.leg)).all();
  return {
    pieces: new Map(pieceRows.map((row) => [row.number, row])),
    loans: new Map(loanRows.map((row) => [row.name, row])),
    postings: groupedByFact(legs),
  };
}

/** What the derived tables should hold for these books. */
export function rowsOf(books: Books): DerivedRows {
  return {
    pieces: new Map([...books.pieces].map(([number, piece]) => [number, pieceRow(piece)])),
    loans: new Map([...books.loans].map(([name, loan]) => [name, loanRow(loan)])),
    postings: new Map([...books.postings].map(([fact, legs]) => [fact, legs.map(postingRow)])),
  };
}

/** The keys whose rows are not the same in both, those on one side only included. */
export function differences(one: DerivedRows, other: DerivedRows) {
  return {
    pieces: differing(one.pieces, other.pieces),
    loans: differing(one.loans, other.loans),
    postings: differing(one.postings, other.postings),
  };
}

function differing<K, V>(one: Map<K, V>, other: Map<K, V>): K[] {
  const keys = new Set([...one.keys(), ...other.keys()]);
  return [...keys].filter((key) => JSON.stringify(one.get(key)) !== JSON.stringify(other.get(key)));
}

function groupedByFact(legs: PostingRow[]): Map<number, PostingRow[]> {
  const grouped = new Map<number, PostingRow[]>();
  for (const leg of legs) {
    const ofFact = grouped.get(leg.fact as number);
    if (ofFact) ofFact.push(leg);
    else grouped.set(leg.fact as number, [leg]);
  }
  return grouped;
}

function pieceRow(piece: Readonly<Piece>): PieceRow {
  const row = columnsOf(PIECE_COLUMNS, piece as unknown as PieceRow);
  row.traits = JSON.stringify(piece.traits);
  row.holdSince = piece.hold?.since ?? null;
  row.holdBuyer = piece.hold?.buyer ?? null;
  row.holdUntil = piece.hold?.until ?? null;
  row.holdAgreed = piece.hold?.agreed ?? null;
  return row;
}

function loanRow({ stretches, ...rest }: Readonly<Loan>): LoanRow {
  return columnsOf(LOAN_COLUMNS, { ...rest, stretches: JSON.stringify(stretches) });
}

function postingRow(posting: Posting, leg: number): PostingRow {
  return columnsOf(POSTING_COLUMNS, { ...posting, leg });
}

const PIECE_COLUMNS = columnNames(pieces);
const LOAN_COLUMNS = columnNames(loans);
const POSTING_COLUMNS = columnNames(postings);

function columnNames<T extends SQLiteTable>(table: T): (keyof WholeRow<T>)[] {
  return Object.keys(getTableColumns(table)) as (keyof WholeRow<T>)[];
}

/** Keeps the columns alone and in the schema's order, as a row that is read comes: rows are compared as text. */
function columnsOf<R extends object>(names: (keyof R)[], values: R): R {
  const row: Partial<R> = {};
  for (const name of names) row[name] = values[name];
  return row as R;
}
