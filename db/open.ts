import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Day, Instant } from "../core/calendar.ts";
import { listBackups } from "./backups.ts";
import { type Connection, createPrivateFolder, openToRead, openToWrite } from "./connection.ts";
import type { Ledger, LedgerReader } from "./ledger.ts";
import { ImpossibleHistory, LedgerOnFile } from "./ledger-on-file.ts";
import { takeWriterLock, type WriterLock } from "./lock.ts";
import { migrateLedger, type SchemaState, schemaProblem, schemaState } from "./migrate.ts";
import { release as thisRelease } from "./release.ts";
import { openSettings } from "./settings.ts";

type Opened =
  /** `rederived`: derived rows that were not what the facts give, and were written anew: worth a line in the log. */
  | { kind: "open"; ledger: Ledger; rederived: number }
  /** Another process writes this ledger. */
  | { kind: "locked" }
  /** A copy holds more notes than the ledger, which was deleted or emptied or lost its latest writes. */
  | { kind: "lost"; notes: number; copy: { day: Day; path: string; notes: number } }
  | { kind: "unusable"; why: string };

type OpenedToRead =
  | { kind: "open"; reader: LedgerReader }
  /** No ledger has been begun here. */
  | { kind: "none" }
  | { kind: "unusable"; why: string };

/** Where a data directory keeps its ledger. */
export function ledgerPath(directory: string): string {
  return join(directory, "ledger.sqlite");
}

/**
 * Opens the ledger of a data directory for the one writer, making directory and file (0700, 0600) where they
 * are not there, and bringing the schema up to date. Closing the ledger frees the writer's place. Where this
 * release itself derived the books that are stored they are not gone through again; the nightly copy's check and
 * the doctor always do.
 */
export function openLedger({
  directory,
  now,
  release = thisRelease,
}: {
  directory: string;
  now: Instant;
  release?: string | null;
}): Opened {
  let lock: WriterLock | null = null;
  let connection: Connection | null = null;
  try {
    createPrivateFolder(directory);
    const held = takeWriterLock(directory);
    if (!held) return { kind: "locked" };
    lock = held;
    const lost = lostNotes(directory);
    if (lost) {
      held.release();
      return { kind: "lost", ...lost };
    }
    connection = openToWrite(ledgerPath(directory));
    const isMigrated = migrateLedger(connection, now);
    const isOwn = !isMigrated && release !== null && openSettings(connection).get("derivedBy") === release;
    const ledger = new LedgerOnFile(connection, {
      onClose: () => held.release(),
      isTrusted: isOwn,
      isWriter: true,
    });
    return { kind: "open", ledger, rederived: isOwn ? ledger.load() : ledger.rederive(release) };
  } catch (error) {
    connection?.sqlite.close();
    lock?.release();
    return { kind: "unusable", why: reasonOf(error, directory) };
  }
}

/**
 * Whether the newest copy that can be read holds more notes than the ledger: notes are never deleted, so something
 * happened to the file, and going on with it would bury the rest. Copies from before a restore do not count.
 */
function lostNotes(
  directory: string,
): { notes: number; copy: { day: Day; path: string; notes: number } } | null {
  const ledger = notesIn(ledgerPath(directory));
  // A ledger that cannot be read is told of when it is opened.
  if (ledger === null) return null;
  for (const { day, path } of listBackups(directory).reverse()) {
    if (ledger.restoredOn !== null && day <= ledger.restoredOn) return null;
    const copy = notesIn(path);
    if (copy) return copy.notes > ledger.notes ? { notes: ledger.notes, copy: { day, path, ...copy } } : null;
  }
  return null;
}

/** How many notes a file holds (none where it is missing or empty); null where it cannot be read. */
function notesIn(path: string): { notes: number; restoredOn: Day | null } | null {
  if (!existsSync(path)) return { notes: 0, restoredOn: null };
  let connection: Connection | null = null;
  try {
    connection = openToRead(path);
    const { sqlite } = connection;
    const tables = sqlite.prepare("select name from sqlite_master where type = 'table'").pluck().all();
    if (!tables.includes("notes")) return { notes: 0, restoredOn: null };
    const notes = sqlite.prepare("select count(*) from notes").pluck().get() as number;
    return { notes, restoredOn: openSettings(connection).get("restoredOn") };
  } catch {
    return null;
  } finally {
    connection?.sqlite.close();
  }
}

/** Opens the ledger of a data directory to read, beside the writer or on a copy. Creates nothing. */
export function openReader(directory: string): OpenedToRead {
  return existsSync(ledgerPath(directory)) ? openFileToRead(ledgerPath(directory)) : { kind: "none" };
}

/** Opens any ledger file to read, such as a backup. */
export function openFileToRead(path: string): OpenedToRead {
  let connection: Connection | null = null;
  try {
    connection = openToRead(path);
    const why = unreadable(schemaState(connection));
    if (why === null) return { kind: "open", reader: new LedgerOnFile(connection) };
    connection.sqlite.close();
    return { kind: "unusable", why };
  } catch (error) {
    connection?.sqlite.close();
    return { kind: "unusable", why: reasonOf(error, path) };
  }
}

function unreadable(state: SchemaState): string | null {
  if (state.kind !== "known") return schemaProblem(state);
  if (state.pending === 0) return null;
  return "the ledger was written by an older version: start the bot once to bring it up to date";
}

/** The cause in words, for errors that a person can do something about; else the error's own. */
export function reasonOf(error: unknown, place: string): string {
  if (error instanceof ImpossibleHistory) return `${error.message}; npm run doctor tells more`;
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const reasons: [RegExp, string][] = [
    [/^(EACCES|EPERM|SQLITE_PERM|SQLITE_AUTH)/, "may not be read or written by this user"],
    [/^(EROFS|SQLITE_READONLY)/, "is read-only"],
    [/^(ENOSPC|EDQUOT|SQLITE_FULL)/, "is on a disk that is full"],
    [/^(ENOENT|ENOTDIR|EEXIST|SQLITE_CANTOPEN)/, "cannot be opened"],
    [/^(SQLITE_NOTADB|SQLITE_CORRUPT)/, "is damaged: restore a backup with npm run restore"],
    [/^(EIO|SQLITE_IOERR)/, "is on a disk that reports errors"],
    [/^SQLITE_BUSY/, "is in use by another program"],
  ];
  const reason = reasons.find(([codes]) => codes.test(code))?.[1];
  if (reason) return `${place} ${reason}`;
  return error instanceof Error ? error.message : String(error);
}
