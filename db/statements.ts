import type Database from "better-sqlite3";
import {
  getTableColumns,
  getTableName,
  type InferInsertModel,
  Placeholder,
  type SQL,
  sql,
} from "drizzle-orm";
import type { SQLiteColumn, SQLiteTable } from "drizzle-orm/sqlite-core";
import type { Connection } from "./connection.ts";

/** A row with every column given; null lets the database number an integer key. */
export type WholeRow<T extends SQLiteTable> = {
  [K in keyof Required<InferInsertModel<T>>]: Exclude<InferInsertModel<T>[K], undefined> | null;
};

interface RowWriter<T extends SQLiteTable> {
  /** Writes one row; gives its row id, or null where a unique key already had it and was to be left alone. */
  run(row: WholeRow<T>): number | null;
  /** Writes several rows, by one statement where they are few. For a writer that fails on a conflict. */
  runAll(rows: readonly WholeRow<T>[]): void;
  /** Lays rows aside in memory, to be written later: nothing of them is in the file yet. For rows that are new. */
  layAside(rows: readonly WholeRow<T>[]): void;
  /** Writes the rows laid aside, by one statement. */
  takeAside(): void;
  dropAside(): void;
}

/** One statement is kept for each count of rows; more than these are written one by one. */
const ROWS_TOGETHER_MAX = 8;

/**
 * An insert prepared once, since every note runs it: built by the typed queries, run by the database itself.
 * `onConflict` says what a row already there means.
 */
export function rowWriter<T extends SQLiteTable>(
  { db, sqlite }: Connection,
  table: T,
  onConflict: "fail" | "keep" | { replace: SQLiteColumn } = "fail",
): RowWriter<T> {
  const columns = getTableColumns(table) as Record<string, SQLiteColumn>;
  // Put together when the first row is written: a start does not wait for it.
  const built = onceAsked(() => {
    const { sql: text, params } = insertInto(db, table, columns, onConflict).toSQL();
    const names = params.map(placeName);
    return { text, names, group: `, (${names.map(() => "?").join(", ")})` };
  });
  const valuesOf = (row: WholeRow<T>): unknown[] =>
    built().names.map((name) => driverValue(columns[name]!, row[name as keyof WholeRow<T>]));
  const byCount: Database.Statement[] = [];
  const statementFor = (count: number): Database.Statement => {
    const { text, group } = built();
    byCount[count] ??= sqlite.prepare(`${text}${group.repeat(count - 1)}`);
    return byCount[count];
  };
  const name = getTableName(table);
  const aside = `temp.aside_${name}`;
  let layRow: Database.Statement | null = null;
  const openAside = (): Database.Statement => {
    const { names } = built();
    const own = names.map((each) => columns[each]!.name).map((each) => `"${each}"`);
    sqlite.exec(`create temp table if not exists aside_${name} as select ${own} from ${name} where 0`);
    return sqlite.prepare(`insert into ${aside} values (${names.map(() => "?").join(", ")})`);
  };
  return {
    layAside(rows) {
      layRow ??= openAside();
      for (const row of rows) layRow.run(valuesOf(row));
    },
    takeAside() {
      if (!layRow) return;
      const own = built()
        .names.map((each) => `"${columns[each]!.name}"`)
        .join(", ");
      sqlite.exec(`insert into main.${name} (${own}) select ${own} from ${aside}; delete from ${aside}`);
    },
    dropAside() {
      if (layRow) sqlite.exec(`delete from ${aside}`);
    },
    run(row) {
      const result = statementFor(1).run(valuesOf(row));
      return result.changes === 0 ? null : Number(result.lastInsertRowid);
    },
    runAll(rows) {
      if (rows.length === 0) return;
      if (rows.length <= ROWS_TOGETHER_MAX) statementFor(rows.length).run(rows.flatMap(valuesOf));
      else for (const row of rows) statementFor(1).run(valuesOf(row));
    },
  };
}

/** An insert of a row with a place for each column. */
function insertInto<T extends SQLiteTable>(
  db: Connection["db"],
  table: T,
  columns: Readonly<Record<string, SQLiteColumn>>,
  onConflict: "fail" | "keep" | { replace: SQLiteColumn },
) {
  const places = Object.fromEntries(Object.keys(columns).map((name) => [name, sql.placeholder(name)]));
  const insert = db.insert(table).values(places as never);
  if (onConflict === "keep") insert.onConflictDoNothing();
  else if (onConflict !== "fail") {
    const set: Record<string, SQL> = {};
    for (const [name, column] of Object.entries(columns))
      set[name] = sql`excluded.${sql.identifier(column.name)}`;
    insert.onConflictDoUpdate({ target: onConflict.replace, set: set as never });
  }
  return insert;
}

/** What is made when it is first asked for, and kept: a statement that not every start needs. */
export function onceAsked<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** The column that a place in a statement stands for; the typed queries wrap it where they would encode it. */
function placeName(param: unknown): string {
  const place = param instanceof Placeholder ? param : (param as { value: unknown }).value;
  if (!(place instanceof Placeholder)) throw new Error("a statement with a value of its own");
  return String(place.name);
}

function driverValue(column: SQLiteColumn, value: unknown): unknown {
  return value === null || value === undefined ? null : column.mapToDriverValue(value);
}
