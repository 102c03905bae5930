import { copyFileSync, existsSync, renameSync, rmSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { earmarked } from "../core/books/month.ts";
import type { Day, Instant } from "../core/calendar.ts";
import type { Cents } from "../core/money.ts";
import { type Carried, carryOver } from "./carrying.ts";
import { type Connection, createPrivateFolder, openToRead, openToWrite } from "./connection.ts";
import { removeLedgerFile, syncFile, writeCopy } from "./copy.ts";
import { type Examination, examine, examineFile, type Finding, NO_COUNTS } from "./doctor.ts";
import { LedgerOnFile } from "./ledger-on-file.ts";
import { takeWriterLock, type WriterLock } from "./lock.ts";
import { migrateLedger, schemaProblem, schemaState } from "./migrate.ts";
import { ledgerPath, openFileToRead, reasonOf } from "./open.ts";
import { openSettings } from "./settings.ts";

export interface Summary {
  notes: number;
  standing: number;
  pieces: number;
  /** Cents, as of the day asked for. */
  earmarked: Cents;
}

export type Restored =
  /**
   * `before`: null where there was no ledger, or none that could be read. `kept`: the replaced file's new place.
   * `carried`: null where the replaced ledger could not be asked. `members`: who is in now.
   */
  | {
      kind: "restored";
      before: Summary | null;
      after: Summary;
      kept: string | null;
      carried: Carried | null;
      members: string[];
    }
  | { kind: "no such file" }
  | { kind: "locked" }
  | { kind: "refused"; findings: Finding[] }
  /** The folder takes no files: it is read-only, or the disk is full. */
  | { kind: "failed"; why: string };

interface Wish {
  directory: string;
  file: string;
  now: Instant;
  /** The local day that the summaries count to. */
  today: Day;
}

/**
 * Puts a copy in the ledger's place. The copy is copied beside the ledger, brought up to date, told what must not
 * be forgotten (who is out, what is used up) and examined there before anything is touched; the replaced ledger
 * stays beside it under another name; the exchange itself is one rename. Needs the writer's place.
 */
export function restore(wish: Wish): Restored {
  const { directory, file } = wish;
  if (!existsSync(file)) return { kind: "no such file" };
  const unfit = unfitFile(file);
  if (unfit) return { kind: "refused", findings: [unfit] };
  let lock: WriterLock | null = null;
  try {
    createPrivateFolder(directory);
    lock = takeWriterLock(directory);
    return lock ? putInPlace(wish) : { kind: "locked" };
  } catch (error) {
    return { kind: "failed", why: reasonOf(error, directory) };
  } finally {
    lock?.release();
  }
}

/** A pipe would be waited on for ever, and an empty file is a database to SQLite. */
function unfitFile(file: string): Finding | null {
  const of = (detail: string): Finding => ({ check: "file", detail });
  const { size } = statSync(file);
  if (!statSync(file).isFile()) return of("it is no file but a folder, a pipe or a device");
  return size === 0 ? of("it is empty") : null;
}

function putInPlace({ directory, file, now, today }: Wish): Restored {
  const candidate = join(directory, "restoring.sqlite");
  try {
    const brought = bringIn({ directory, file, candidate, now, today });
    if (brought.findings.length > 0) return { kind: "refused", findings: brought.findings };
    const after = summaryOf(candidate, brought, today);
    if (!after) throw new Error("the copy was examined and yet cannot be read");
    const before = summaryOf(ledgerPath(directory), examine(directory), today);
    const kept = setAside(directory, now);
    renameSync(candidate, ledgerPath(directory));
    syncFile(directory);
    const { carried, members } = brought;
    return { kind: "restored", before, after, kept, carried, members };
  } finally {
    removeLedgerFile(candidate);
  }
}

interface Brought extends Examination {
  carried: Carried | null;
  members: string[];
}

/** Copies the candidate here and brings it up to date; what is wrong with it comes back. */
function bringIn({ directory, file, candidate, now, today }: Wish & { candidate: string }): Brought {
  removeLedgerFile(candidate);
  const refused = (finding: Finding): Brought => ({
    findings: [finding],
    counts: NO_COUNTS,
    carried: null,
    members: [],
  });
  let from: Connection | null = null;
  let to: Connection | null = null;
  try {
    from = openToRead(file);
    const problem = notRestorable(from);
    if (problem !== null) return refused({ check: "schema", detail: problem });
    writeCopy(from, candidate);
    to = openToWrite(candidate);
    migrateLedger(to, now);
    // Whoever opens it next goes through all of it again.
    openSettings(to).unset("derivedBy");
    const carried = whatReplacedKnew(to, directory, { now, today });
    let examined = examineFile(candidate);
    if (examined.findings.length > 0 && examined.findings.every(isOfDerivedRows)) {
      new LedgerOnFile(to).rederive();
      examined = examineFile(candidate);
    }
    to.sqlite.pragma("wal_checkpoint(truncate)");
    const members = new LedgerOnFile(to).members.list().map(({ name }) => name);
    return { ...examined, carried, members };
  } catch (error) {
    if (isOfPlace(error)) throw error;
    return refused({ check: "file", detail: error instanceof Error ? error.message : String(error) });
  } finally {
    from?.sqlite.close();
    to?.sqlite.close();
  }
}

/** A file that SQLite reads is no ledger yet: why it is none that this version can use; null where it is. */
function notRestorable(from: Connection): string | null {
  const state = schemaState(from);
  if (state.kind !== "known") return schemaProblem(state);
  const tables = from.sqlite.prepare("select count(*) from sqlite_master").pluck().get();
  return tables === 0 ? "the file is a database with nothing in it" : null;
}

/** The folder's or the disk's fault, not the copy's. */
function isOfPlace(error: unknown): boolean {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  return /^(?:EROFS|EACCES|EPERM|ENOSPC|EDQUOT|EIO|SQLITE_FULL|SQLITE_READONLY|SQLITE_IOERR)/.test(code);
}

/** What the ledger that is to be replaced knows; null where there is none that can be read. */
function whatReplacedKnew(
  copy: Connection,
  directory: string,
  of: { now: Instant; today: Day },
): Carried | null {
  const replaced = openedIfReadable(ledgerPath(directory));
  try {
    return carryOver(copy, replaced, of);
  } catch (error) {
    // Damaged further in than its first page, or of an earlier version.
    if (replaced === null || isOfPlace(error)) throw error;
    return carryOver(copy, null, of);
  } finally {
    replaced?.sqlite.close();
  }
}

function openedIfReadable(path: string): Connection | null {
  if (!existsSync(path)) return null;
  try {
    return openToRead(path);
  } catch {
    return null;
  }
}

/** What the facts give can be written anew, as a copy made by an earlier release may need. */
function isOfDerivedRows({ check }: Finding): boolean {
  return check === "rebuild" || check === "balance";
}

function summaryOf(path: string, examined: Examination | null, today: Day): Summary | null {
  if (!examined || examined.findings.length > 0) return null;
  const opened = openFileToRead(path);
  if (opened.kind !== "open") return null;
  const { reader } = opened;
  const { notes, standing, pieces } = examined.counts;
  const summary = { notes, standing, pieces, earmarked: earmarked(reader.books, today) };
  reader.close();
  return summary;
}

/** Copies the present ledger beside itself, with what its -wal still holds, and leaves no -wal to be misread. */
function setAside(directory: string, now: Instant): string | null {
  const path = ledgerPath(directory);
  if (!existsSync(path)) return null;
  const stamp = new Date(now).toISOString().slice(0, 19).replaceAll(":", "-");
  const kept = join(dirname(path), `ledger-replaced-${stamp}.sqlite`);
  emptyWal(path);
  try {
    for (const suffix of ["", "-wal"]) {
      if (!existsSync(path + suffix)) continue;
      copyFileSync(path + suffix, kept + suffix);
      syncFile(kept + suffix);
    }
  } catch (error) {
    // A disk that fills up half way: no half file stays.
    removeLedgerFile(kept);
    throw error;
  }
  for (const suffix of ["-wal", "-shm"]) rmSync(path + suffix, { force: true });
  return kept;
}

/** Moves what is in the -wal into the file. A ledger too damaged for that is set aside with its -wal. */
function emptyWal(path: string): void {
  try {
    const { sqlite } = openToWrite(path);
    sqlite.pragma("wal_checkpoint(truncate)");
    sqlite.close();
  } catch (error) {
    if (!(error instanceof Error && "code" in error && String(error.code).startsWith("SQLITE_"))) throw error;
  }
}
