import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { type Day, isDay } from "../core/calendar.ts";

export interface Backup {
  day: Day;
  path: string;
}

/** The day's copies, oldest first. Copies made before migrations are not among them, and never cleared away. */
export function listBackups(directory: string): Backup[] {
  const folder = backupFolder(directory);
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .map((name) => ({ day: /^ledger-(.{10})\.sqlite$/.exec(name)?.[1] ?? "", path: join(folder, name) }))
    .filter(({ day }) => isDay(day))
    .sort((a, b) => (a.day < b.day ? -1 : 1));
}

/** Where a data directory keeps its copies. */
export function backupFolder(directory: string): string {
  return join(directory, "backups");
}
