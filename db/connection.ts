import { closeSync, existsSync, mkdirSync, openSync, readFileSync, statSync } from "node:fs";
import { dirname } from "node:path";
import Database from "better-sqlite3";
import { type BetterSQLite3Database, drizzle } from "drizzle-orm/better-sqlite3";

/** One open file: drizzle for queries, SQLite itself for pragmas and copies. */
export interface Connection {
  db: BetterSQLite3Database;
  sqlite: Database.Database;
  path: string;
}

const BUSY_TIMEOUT_MS = 5000;
/** Of a new file; one that is there keeps its own. */
const PAGE_BYTES = 1024;
/** So long a -wal is moved into the file in the midst of a commit; the bot does it earlier, while nothing is to do. */
const WAL_PAGES_MAX = 16_000;

/** Opens a ledger file to write, made with mode 0600 if it is not there. SQLite gives -wal and -shm the same mode. */
export function openToWrite(path: string): Connection {
  createPrivateFile(path);
  const sqlite = new Database(path);
  const isNew = sqlite.pragma("page_count", { simple: true }) === 0;
  return prepared(sqlite, path, {
    // A note touches a dozen pages by a few bytes each, and each page is written whole: small ones are less to write.
    ...(isNew ? { page_size: PAGE_BYTES } : {}),
    journal_mode: "wal",
    synchronous: 2,
    // What is laid aside needs no file.
    temp_store: 2,
    foreign_keys: 1,
    wal_autocheckpoint: WAL_PAGES_MAX,
  });
}

/** Opens an existing ledger file to read; it may be in use by the one writer. */
export function openToRead(path: string): Connection {
  try {
    return preparedToRead(new Database(path, { readonly: true, fileMustExist: true }), path);
  } catch (error) {
    if (!isFolderReadOnly(error) || !isWalEmpty(path)) throw error;
    return preparedToRead(new Database(imageOf(path), { readonly: true }), path);
  }
}

function preparedToRead(sqlite: Database.Database, path: string): Connection {
  const connection = prepared(sqlite, path, { query_only: 1, foreign_keys: 1 });
  try {
    sqlite.pragma("schema_version");
    return connection;
  } catch (error) {
    sqlite.close();
    throw error;
  }
}

function isFolderReadOnly(error: unknown): boolean {
  const codes = ["SQLITE_READONLY_DIRECTORY", "SQLITE_READONLY_CANTINIT", "SQLITE_CANTOPEN"];
  return error instanceof Database.SqliteError && codes.includes(error.code);
}

function isWalEmpty(path: string): boolean {
  return !existsSync(`${path}-wal`) || statSync(`${path}-wal`).size === 0;
}

/**
 * The whole file in memory. SQLite cannot read a file in WAL mode from a folder where it may not make a -wal
 * beside it, so the image is marked as no WAL file: bytes 18 and 19 of the header (sqlite.org/fileformat2.html).
 */
function imageOf(path: string): Buffer {
  const image = readFileSync(path);
  image.fill(1, 18, 20);
  return image;
}

/**
 * Makes a folder that only its owner can read, with whatever is missing above it; one that is there stays as it
 * is. One level at a time: asked for all of them at once, Node 20 never returns where a file system such as
 * /proc takes no folders. Throws the system's error where it cannot be made.
 */
export function createPrivateFolder(path: string): void {
  if (!existsSync(dirname(path))) createPrivateFolder(dirname(path));
  try {
    mkdirSync(path, { mode: 0o700 });
  } catch (error) {
    if (!existsSync(path) || !statSync(path).isDirectory()) throw error;
  }
}

/** Makes an empty file that only its owner can read, unless there is one already. */
export function createPrivateFile(path: string): void {
  try {
    closeSync(openSync(path, "wx", 0o600));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
  }
}

/** Sets a pragma and reads it back: SQLite ignores what it cannot do without a word. */
export function setPragma(sqlite: Database.Database, name: string, value: string | number): void {
  sqlite.pragma(`${name} = ${value}`);
  const inForce = sqlite.pragma(name, { simple: true });
  if (inForce !== value) throw new Error(`pragma ${name} is ${inForce} where ${value} was asked for`);
}

/**
 * Runs one write whose commit need not wait for the disk: after a power cut it may not have been. Inside a
 * transaction it is written with the rest of it.
 */
export function withoutFlush(sqlite: Database.Database, write: () => void): void {
  if (sqlite.inTransaction) {
    write();
    return;
  }
  sqlite.exec("pragma synchronous = normal");
  try {
    write();
  } finally {
    sqlite.exec("pragma synchronous = full");
  }
}

function prepared(
  sqlite: Database.Database,
  path: string,
  pragmas: Record<string, string | number>,
): Connection {
  try {
    setPragma(sqlite, "busy_timeout", BUSY_TIMEOUT_MS);
    for (const [name, value] of Object.entries(pragmas)) setPragma(sqlite, name, value);
    return { db: drizzle(sqlite), sqlite, path };
  } catch (error) {
    sqlite.close();
    throw error;
  }
}
