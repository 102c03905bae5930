import { existsSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { dayOfInstant } from "../../core/calendar.ts";
import { createPrivateFolder } from "../../db/connection.ts";
import type { LedgerReader } from "../../db/ledger.ts";
import { openReader } from "../../db/open.ts";
import { toolSettings } from "../environment.ts";
import { exportBodies, filesFolder } from "../files/bodies.ts";
import type { MadeFile } from "../files/make.ts";
import { makeFile } from "../files/make.ts";
import { zoneInForce } from "../zone.ts";

const USAGE = "usage: npm run export [-- FOLDER]";

function fail(why: string, exitCode: number): void {
  console.error(why);
  process.exitCode = exitCode;
}

async function filesOf(
  reader: LedgerReader,
  zone: string | undefined,
  currency: string,
): Promise<MadeFile[]> {
  const through = dayOfInstant(Date.now(), zoneInForce(zone, reader.settings));
  const files: MadeFile[] = [];
  for (const { make } of exportBodies({ through, currency })) files.push(await makeFile(reader, make));
  return files;
}

/** Writes the files, all or none where one is there already; gives what stood in the way. */
function writeFiles(folder: string, files: readonly MadeFile[]): string | null {
  createPrivateFolder(folder);
  const taken = files.find(({ name }) => existsSync(join(folder, name)));
  if (taken) return `${join(folder, taken.name)} is there already: move it away, or name another folder.`;
  for (const { name, bytes } of files) writeFileSync(join(folder, name), bytes, { flag: "wx", mode: 0o600 });
  return null;
}

/** Writes the books as a workbook and as CSV files. Exits with 2 for bad options, 1 where it cannot be done. */
async function exportBooks(args: string[]): Promise<void> {
  if (args.length > 1 || args[0]?.startsWith("-")) return fail(USAGE, 2);
  const read = toolSettings();
  if (read.kind === "refused") return fail(read.problems.join("\n"), 2);
  const { directory, zone, currency } = read.settings;
  const opened = openReader(directory);
  if (opened.kind === "none") return fail(`No ledger has been begun in ${directory}.`, 1);
  if (opened.kind === "unusable") return fail(opened.why, 1);
  const folder = args[0] === undefined ? filesFolder(directory, "export") : resolve(args[0]);
  try {
    const files = await filesOf(opened.reader, zone, currency);
    const problem = writeFiles(folder, files);
    if (problem) return fail(problem, 1);
    console.log(
      `Wrote ${files.length} files to ${folder}: the workbook ${files[0]!.name}, and the same as CSV.`,
    );
  } catch (error) {
    fail(error instanceof Error ? error.message : String(error), 1);
  } finally {
    opened.reader.close();
  }
}

await exportBooks(process.argv.slice(2));
