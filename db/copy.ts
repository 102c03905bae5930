import { closeSync, fsyncSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import { type Connection, createPrivateFile } from "./connection.ts";

/**
 * Writes a consistent copy of a ledger that may be in use, whole or not at all: under another name first, then
 * checked by `check` (which throws where it is no good), made durable and renamed. A file already at `to` is
 * replaced. `from` must not be in a transaction.
 */
export function writeCopy(from: Connection, to: string, check: (path: string) => void = () => {}): void {
  const unfinished = `${to}.unfinished`;
  removeLedgerFile(unfinished);
  createPrivateFile(unfinished);
  try {
    withWrites(from, () => from.sqlite.prepare("vacuum into ?").run(unfinished));
    check(unfinished);
    syncFile(unfinished);
    renameSync(unfinished, to);
    syncFile(dirname(to));
  } finally {
    removeLedgerFile(unfinished);
  }
}

/** A reader may not run `vacuum into` while it is told to query only, although that writes only the copy. */
function withWrites({ sqlite }: Connection, work: () => void): void {
  const isQueryOnly = sqlite.pragma("query_only", { simple: true }) === 1;
  if (isQueryOnly) sqlite.pragma("query_only = 0");
  try {
    work();
  } finally {
    if (isQueryOnly) sqlite.pragma("query_only = 1");
  }
}

/** Makes what was written to a file, or to a folder's list of names, last through a power cut. */
export function syncFile(path: string): void {
  const file = openSync(path, "r");
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Removes a database file and what SQLite keeps beside it; nothing where it is not there. */
export function removeLedgerFile(path: string): void {
  for (const suffix of ["", "-wal", "-shm", "-journal"]) rmSync(`${path}${suffix}`, { force: true });
}
