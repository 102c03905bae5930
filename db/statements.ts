import { getTableColumns, type InferInsertModel, type SQL, sql } from "drizzle-orm";
import type { BetterSQLite3Database } from "drizzle-orm/better-sqlite3";
import type { SQLiteColumn, SQLiteTable } from "drizzle-orm/sqlite-core";

/** A row with every column given; null lets the database number an integer key. */
export type WholeRow<T extends SQLiteTable> = {
  [K in keyof Required<InferInsertModel<T>>]: Exclude<InferInsertModel<T>[K], undefined> | null;
};

interface RowWriter<T extends SQLiteTable> {
  /** Writes one row; gives its row id, or null where a unique key already had it and was to be left alone. */
  run(row: WholeRow<T>): number | null;
}

/** An insert prepared once, since every note runs it. `onConflict` says what a row already there means. */
export function rowWriter<T extends SQLiteTable>(
  db: BetterSQLite3Database,
  table: T,
  onConflict: "fail" | "keep" | { replace: SQLiteColumn | SQLiteColumn[] } = "fail",
): RowWriter<T> {
  const columns = getTableColumns(table) as Record<string, SQLiteColumn>;
  const places = Object.fromEntries(Object.keys(columns).map((name) => [name, sql.placeholder(name)]));
  const insert = db.insert(table).values(places as never);
  if (onConflict === "keep") insert.onConflictDoNothing();
  else if (onConflict !== "fail") {
    const set: Record<string, SQL> = {};
    for (const [name, column] of Object.entries(columns))
      set[name] = sql`excluded.${sql.identifier(column.name)}`;
    insert.onConflictDoUpdate({ target: onConflict.replace as SQLiteColumn[], set: set as never });
  }
  const statement = insert.prepare();
  return {
    run(row) {
      const result = statement.run(row as Record<string, unknown>);
      return result.changes === 0 ? null : Number(result.lastInsertRowid);
    },
  };
}
