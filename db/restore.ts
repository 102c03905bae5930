import { copyFileSync, existsSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import { earmarked } from "../core/books/month.ts";
import type { Day, Instant } from "../core/calendar.ts";
import type { Cents } from "../core/money.ts";
import { type Connection, createPrivateFolder, openToRead, openToWrite } from "./connection.ts";
import { removeLedgerFile, syncFile, writeCopy } from "./copy.ts";
import { examineFile, type Finding } from "./doctor.ts";
import { LedgerOnFile } from "./ledger-on-file.ts";
import { takeWriterLock } from "./lock.ts";
import { migrateLedger } from "./migrate.ts";
import { ledgerPath, openFileToRead } from "./open.ts";
import { openSettings } from "./settings.ts";

export interface Summary {
  notes: number;
  standing: number;
  pieces: number;
  /** Cents, as of the day asked for. */
  earmarked: Cents;
}

export type Restored =
  /** `before`: null where there was no ledger, or none that could be read. `kept`: the replaced file's new place. */
  | { kind: "restored"; before: Summary | null; after: Summary; kept: string | null }
  | { kind: "no such file" }
  | { kind: "locked" }
  | { kind: "refused"; findings: Finding[] };

/**
 * Puts a copy in the ledger's place. The copy is copied beside the ledger, brought up to date and examined
 * there before anything is touched; the replaced ledger stays beside it under another name; the exchange
 * itself is one rename. Needs the writer's place. `today` is the local day that the summaries count to.
 */
export function restore(wish: { directory: string; file: string; now: Instant; today: Day }): Restored {
  const { directory, file, now, today } = wish;
  if (!existsSync(file)) return { kind: "no such file" };
  createPrivateFolder(directory);
  const lock = takeWriterLock(directory);
  if (!lock) return { kind: "locked" };
  const candidate = join(directory, "restoring.sqlite");
  try {
    const findings = bringIn({ file, candidate, now });
    if (findings.length > 0) return { kind: "refused", findings };
    const after = summaryOf(candidate, today);
    if (!after) throw new Error("the copy was examined and yet cannot be read");
    const before = summaryOf(ledgerPath(directory), today);
    const kept = setAside(directory, now);
    renameSync(candidate, ledgerPath(directory));
    syncFile(directory);
    return { kind: "restored", before, after, kept };
  } finally {
    removeLedgerFile(candidate);
    lock.release();
  }
}

/** Copies the candidate here and brings it up to date; what is wrong with it comes back. */
function bringIn({ file, candidate, now }: { file: string; candidate: string; now: Instant }): Finding[] {
  removeLedgerFile(candidate);
  let from: Connection | null = null;
  let to: Connection | null = null;
  try {
    from = openToRead(file);
    writeCopy(from, candidate);
    to = openToWrite(candidate);
    migrateLedger(to, now);
    // Whoever opens it next goes through all of it again.
    openSettings(to).unset("derivedBy");
    let { findings } = examineFile(candidate);
    if (findings.length > 0 && findings.every(isOfDerivedRows)) {
      new LedgerOnFile(to).rederive();
      findings = examineFile(candidate).findings;
    }
    to.sqlite.pragma("wal_checkpoint(truncate)");
    return findings;
  } catch (error) {
    return [{ check: "file", detail: error instanceof Error ? error.message : String(error) }];
  } finally {
    from?.sqlite.close();
    to?.sqlite.close();
  }
}

/** What the facts give can be written anew, as a copy made by an earlier release may need. */
function isOfDerivedRows({ check }: Finding): boolean {
  return check === "rebuild" || check === "balance";
}

function summaryOf(path: string, today: Day): Summary | null {
  if (!existsSync(path)) return null;
  const { findings, counts } = examineFile(path);
  const opened = openFileToRead(path);
  if (findings.length > 0 || opened.kind !== "open") return null;
  const { reader } = opened;
  const { notes, standing, pieces } = counts;
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
  for (const suffix of ["", "-wal"]) {
    if (!existsSync(path + suffix)) continue;
    copyFileSync(path + suffix, kept + suffix);
    syncFile(kept + suffix);
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
