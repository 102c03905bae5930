import { constants, copyFileSync, existsSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { counted } from "../../core/answers/wording.ts";
import { dayOfInstant } from "../../core/calendar.ts";
import { createPrivateFolder } from "../../db/connection.ts";
import type { LedgerReader } from "../../db/ledger.ts";
import { openReader } from "../../db/open.ts";
import { toolSettings } from "../environment.ts";
import { exportBodies, filesFolder } from "../files/bodies.ts";
import type { MadeFile } from "../files/make.ts";
import { makeFile } from "../files/make.ts";
import { RECEIPTS, receiptsKept } from "../files/receipts.ts";
import { zoneInForce } from "../zone.ts";

const USAGE = "usage: npm run export [-- FOLDER]";

function fail(why: string, exitCode: number): void {
  console.error(why);
  process.exitCode = exitCode;
}

/** A file with its content, or with where it lies. */
type Exported = MadeFile | { name: string; path: string };

/** The tables, with the pictures of receipts that they name in a folder beside them. */
async function filesOf(
  reader: LedgerReader,
  zone: string | undefined,
  currency: string,
): Promise<Exported[]> {
  const through = dayOfInstant(Date.now(), zoneInForce(zone, reader.settings));
  const files: MadeFile[] = [];
  for (const { make } of exportBodies({ through, currency })) files.push(await makeFile(reader, make));
  const receipts = receiptsKept(reader).map(({ path, name }) => ({ name: join(RECEIPTS, name), path }));
  return [...files, ...receipts];
}

/** Writes the files, all or none where one is there already; gives what stood in the way. */
function writeFiles(folder: string, files: readonly Exported[]): string | null {
  for (const { name } of files) createPrivateFolder(dirname(join(folder, name)));
  const taken = files.find(({ name }) => existsSync(join(folder, name)));
  if (taken) return `${join(folder, taken.name)} is there already: move it away, or name another folder.`;
  for (const file of files) {
    const target = join(folder, file.name);
    if ("path" in file) copyFileSync(file.path, target, constants.COPYFILE_EXCL);
    else writeFileSync(target, file.bytes, { flag: "wx", mode: 0o600 });
  }
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
    const receipts = files.filter(({ name }) => name.startsWith(RECEIPTS)).length;
    const also = receipts > 0 ? `, and ${counted(receipts, "picture")} of receipts` : "";
    console.log(
      `Wrote ${files.length} files to ${folder}: the workbook ${files[0]!.name}, the same as CSV${also}.`,
    );
  } catch (error) {
    fail(error instanceof Error ? error.message : String(error), 1);
  } finally {
    opened.reader.close();
  }
}

await exportBooks(process.argv.slice(2));
