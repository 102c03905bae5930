import { promises as files } from "node:fs";
import { basename, dirname } from "node:path";
import * as z from "zod";
import { type Day, dayOfInstant, isDay } from "../../core/calendar.ts";
import { backUp } from "../../db/backup.ts";
import { listBackups } from "../../db/backups.ts";
import { examineFile } from "../../db/doctor.ts";
import type { LedgerReader } from "../../db/ledger.ts";
import { drawChart } from "../pictures/chart.ts";
import { monthFigures } from "../pictures/figures.ts";
import { drawMonth } from "../pictures/month.ts";
import { pngOf } from "../pictures/png.ts";
import { zoneInForce } from "../zone.ts";
import type { Make } from "./bodies.ts";
import { TABLE_NAMES } from "./bodies.ts";
import { RECEIPTS, receiptsKept } from "./receipts.ts";
import { type PictureKept, tablesOf } from "./tables.ts";
import { csvOf, workbookOf } from "./workbook.ts";

export interface MadeFile {
  name: string;
  bytes: Buffer;
}

const day = z.string().refine(isDay);
const exportArgs = z.object({ through: day, currency: z.string(), table: z.enum(TABLE_NAMES).nullable() });
const backupArgs = z.object({ today: day });
const pictureArgs = z.object({ month: z.string().regex(/^\d{4}-\d{2}$/), today: day, currency: z.string() });

const chartArgs = z.object({
  chart: z.discriminatedUnion("kind", [
    z.object({
      kind: z.literal("bars"),
      title: z.string(),
      bars: z.array(z.object({ label: z.string(), value: z.number(), told: z.string() })),
    }),
    z.object({
      kind: z.literal("lines"),
      title: z.string(),
      from: day,
      to: day,
      lines: z.array(
        z.object({ name: z.string(), points: z.array(z.object({ day, cents: z.int() })).min(1) }),
      ),
    }),
  ]),
});

/**
 * Makes the file of an outbox row from the books as they are now. Rejects where a backup fails, and
 * for a picture that a person sent: that one stays with the chat it came from.
 */
export async function makeFile(ledger: LedgerReader, make: Make): Promise<MadeFile> {
  const { name } = make;
  switch (make.what) {
    case "export":
      return { name, bytes: await exportFile(ledger, exportArgs.parse(make.args)) };
    case "month picture":
      return {
        name,
        bytes: await pngOf(drawMonth(monthFigures(ledger.books, pictureArgs.parse(make.args)))),
      };
    case "chart":
      return { name, bytes: await pngOf(drawChart(chartArgs.parse(make.args).chart)) };
    case "backup":
      return freshCopy(ledger, backupArgs.parse(make.args).today);
    case "picture":
      throw new Error("a picture that was sent is not made anew");
  }
}

async function exportFile(
  ledger: LedgerReader,
  { table, ...asked }: z.infer<typeof exportArgs>,
): Promise<Buffer> {
  const tables = tablesOf(ledger.books, {
    ...asked,
    mileageRates: ledger.settings.get("mileageRates") ?? {},
    pictures: picturesKept(ledger),
  });
  if (table === null) return workbookOf(tables);
  return Buffer.from(csvOf(tables.find(({ name }) => name === table)!));
}

function picturesKept(ledger: LedgerReader): PictureKept[] {
  const zone = zoneInForce(undefined, ledger.settings);
  const names = new Map(receiptsKept(ledger).map(({ picture, name }) => [picture.id, `${RECEIPTS}/${name}`]));
  return ledger.pictures.all().map(({ id, note, piece, file, taken }) => {
    const of = ledger.note(note);
    const words = of?.text ?? "";
    const receipt = names.get(id) ?? null;
    return { day: dayOfInstant(taken, zone), piece, root: of?.root ?? note, words, file, receipt };
  });
}

/** The books as they are now, since a copy is asked for to take them elsewhere; else the newest whole copy there is. */
async function freshCopy(ledger: LedgerReader, today: Day): Promise<MadeFile> {
  const directory = dirname(ledger.connection.path);
  const made = backUp(ledger.connection, directory, today);
  const isWhole = ({ path }: { path: string }) => examineFile(path).findings.length === 0;
  const backup = made.kind === "made" ? made.backup : listBackups(directory).reverse().find(isWhole);
  if (!backup) throw new Error(made.kind === "failed" ? made.why : "no copy");
  return { name: basename(backup.path), bytes: await files.readFile(backup.path) };
}
