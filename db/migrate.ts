import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { migrate } from "drizzle-orm/better-sqlite3/migrator";
import { readMigrationFiles } from "drizzle-orm/migrator";
import type { Instant } from "../core/calendar.ts";
import { backupFolder } from "./backups.ts";
import { type Connection, createPrivateFolder, setPragma } from "./connection.ts";
import { writeCopy } from "./copy.ts";
import { onceAsked } from "./statements.ts";

const MIGRATIONS = fileURLToPath(new URL("./migrations", import.meta.url));

/** How far a file's schema is: `pending` counts the migrations still to run. */
export type SchemaState =
  | { kind: "known"; pending: number }
  | { kind: "no ledger" }
  | { kind: "newer"; unknown: number };

/** Compares the journal's migrations with those that the file says were applied, by hash and in order. */
export function schemaState({ sqlite }: Connection): SchemaState {
  const tables = sqlite.prepare("select name from sqlite_master where type = 'table'").pluck().all();
  if (!tables.includes("__drizzle_migrations")) {
    return tables.length > 0 ? { kind: "no ledger" } : { kind: "known", pending: journalHashes().length };
  }
  const applied = sqlite
    .prepare("select hash from __drizzle_migrations order by created_at")
    .pluck()
    .all() as string[];
  const journal = journalHashes();
  const unknown = applied.filter((hash, index) => journal[index] !== hash).length;
  return unknown > 0
    ? { kind: "newer", unknown }
    : { kind: "known", pending: journal.length - applied.length };
}

/**
 * Brings a file up to date, after a backup copy where it already holds something. Foreign keys are turned off
 * on the connection first: inside the migrator's transaction the pragma would be ignored, and rebuilding a
 * parent table would empty its children (drizzle-orm issues 5782 and 4938). The migrator also skips, without
 * a word, a migration stamped earlier than the newest applied one (5316, 5769), so the count is checked after.
 * Gives whether there was anything to do.
 */
export function migrateLedger(connection: Connection, now: Instant): boolean {
  const { sqlite } = connection;
  const state = schemaState(connection);
  if (state.kind !== "known") throw new Error(schemaProblem(state));
  if (state.pending === 0) return false;
  if (state.pending < journalHashes().length) copyBeforeMigration(connection, now);
  setPragma(sqlite, "foreign_keys", 0);
  try {
    migrate(connection.db, { migrationsFolder: MIGRATIONS });
  } finally {
    setPragma(sqlite, "foreign_keys", 1);
  }
  const after = schemaState(connection);
  if (after.kind !== "known" || after.pending !== 0) throw new Error("a migration was skipped");
  const broken = sqlite.pragma("foreign_key_check") as unknown[];
  if (broken.length > 0) throw new Error(`${broken.length} rows point at nothing after the migration`);
  return true;
}

/** What to tell a person whose file this version cannot use. */
export function schemaProblem(state: Exclude<SchemaState, { kind: "known" }>): string {
  return state.kind === "newer"
    ? "the ledger was written by another version of the program: use that version, or a newer one"
    : "the file is a database, but no ledger";
}

/** Read once: the files are those of this release. */
const journalHashes = onceAsked((): readonly string[] =>
  readMigrationFiles({ migrationsFolder: MIGRATIONS }).map((migration) => migration.hash),
);

function copyBeforeMigration(connection: Connection, now: Instant): void {
  const backups = backupFolder(dirname(connection.path));
  createPrivateFolder(backups);
  const stamp = new Date(now).toISOString().slice(0, 19).replaceAll(":", "-");
  writeCopy(connection, join(backups, `before-migration-${stamp}.sqlite`));
}
