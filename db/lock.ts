import { join } from "node:path";
import Database from "better-sqlite3";
import { createPrivateFile } from "./connection.ts";

/** Held by the one process that may write. */
export interface WriterLock {
  release(): void;
}

/**
 * Takes the writer's place of a data directory, or gives null where another process (or another part of this
 * one) holds it. The lock is an open exclusive transaction on a small database of its own beside the ledger:
 * the system drops it when the process dies, however it dies, so nothing is ever left to clean up.
 */
export function takeWriterLock(directory: string): WriterLock | null {
  const path = join(directory, "writer-lock.sqlite");
  createPrivateFile(path);
  const lock = new Database(path, { timeout: 0 });
  try {
    lock.exec("BEGIN EXCLUSIVE");
    return { release: () => void lock.close() };
  } catch (error) {
    lock.close();
    if (error instanceof Database.SqliteError && error.code.startsWith("SQLITE_BUSY")) return null;
    throw error;
  }
}
