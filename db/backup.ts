import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { addMonths, type Day, monthOf } from "../core/calendar.ts";
import { type Backup, backupFolder, listBackups } from "./backups.ts";
import { type Connection, createPrivateFolder } from "./connection.ts";
import { writeCopy } from "./copy.ts";
import { examineFile } from "./doctor.ts";

const DAYS_KEPT = 14;
const MONTHS_KEPT = 12;

export type BackupResult = { kind: "made"; backup: Backup } | { kind: "failed"; why: string };

/**
 * Makes the day's copy while the ledger is in use, checks it by opening and examining it, and clears away
 * what is older than the last 14 days and 12 months. A second one on the same day takes the first one's
 * place. `today` is the local day. A kill half way leaves the earlier copies as they were.
 */
export function backUp(connection: Connection, directory: string, today: Day): BackupResult {
  const backup = { day: today, path: join(backupFolder(directory), `ledger-${today}.sqlite`) };
  try {
    createPrivateFolder(backupFolder(directory));
    clearUnfinished(directory);
    writeCopy(connection, backup.path, (path) => {
      const [finding] = examineFile(path).findings;
      if (finding) throw new Error(`the copy is no good: ${finding.check}, ${finding.detail}`);
    });
    clearAway(directory);
    return { kind: "made", backup };
  } catch (error) {
    return { kind: "failed", why: error instanceof Error ? error.message : String(error) };
  }
}

/** Which of these days' copies stay: the latest 14, and the last one of each of the latest 12 months. */
export function daysKept(days: readonly Day[]): Day[] {
  const ordered = [...days].sort();
  const latest = ordered.at(-1);
  if (!latest) return [];
  const oldestMonth = addMonths(monthOf(latest), 1 - MONTHS_KEPT);
  const lastOfMonth = new Map(ordered.map((day) => [monthOf(day), day]));
  const recent = new Set(ordered.slice(-DAYS_KEPT));
  return ordered.filter((day) => {
    const month = monthOf(day);
    return recent.has(day) || (month >= oldestMonth && lastOfMonth.get(month) === day);
  });
}

function clearAway(directory: string): void {
  const backups = listBackups(directory);
  const kept = new Set(daysKept(backups.map(({ day }) => day)));
  for (const { day, path } of backups) if (!kept.has(day)) rmSync(path);
}

/** What a kill half way through an earlier copy left behind, on whatever day. */
function clearUnfinished(directory: string): void {
  const folder = backupFolder(directory);
  for (const name of readdirSync(folder)) if (name.includes(".unfinished")) rmSync(join(folder, name));
}
