import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import { afterEach, expect, test } from "vitest";
import { backupBody, exportBodies, monthPictureBody, TABLE_NAMES } from "../../../bot/files/bodies.ts";
import { makeFile } from "../../../bot/files/make.ts";
import { backUp } from "../../../db/backup.ts";
import { openFileToRead } from "../../../db/open.ts";
import {
  buy,
  clearLedgers,
  dataDirectory,
  ended,
  ledgerWithOwner,
  record,
  runsProgram,
  sell,
} from "../../db/ledgers.ts";
import { decodePng } from "../pictures/pixels.ts";

const folders: string[] = [];

afterEach(() => {
  clearLedgers();
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

function shop() {
  const made = ledgerWithOwner();
  record(made.ledger, buy(made.ledger, 3000), sell(1, 19000));
  return made;
}

const ASKED = { through: "2026-05-31", currency: "USD" };

test("an export is the workbook and then a CSV file for each of its sheets, each made from its row", async () => {
  const { ledger } = shop();
  const bodies = exportBodies(ASKED);
  const files = await Promise.all(bodies.map(({ make }) => makeFile(ledger, make)));
  expect(files.map(({ name }) => name)).toEqual([
    "tailgate-2026-05-31.xlsx",
    ...TABLE_NAMES.map((name) => `tailgate-2026-05-31-${name.replaceAll(" ", "-")}.csv`),
  ]);
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(files[0]!.bytes as unknown as ArrayBuffer);
  expect(book.worksheets.map(({ name }) => name)).toEqual([...TABLE_NAMES]);
  expect(files[1]!.bytes.toString()).toContain("1,dresser,,sold,,,2026-05-03,");
});

test("the rows survive being stored and read again", async () => {
  const { ledger } = shop();
  ledger.transaction(() => {
    for (const body of exportBodies(ASKED)) ledger.outbox.queue({ chat: "1001", body });
  });
  const row = ledger.outbox.nextUnsent(0);
  if (row?.body.kind !== "file") throw new Error("no file");
  expect((await makeFile(ledger, row.body.make)).name).toBe("tailgate-2026-05-31.xlsx");
});

test("a month's picture is made from its row; of an empty ledger there is none", async () => {
  const { ledger } = shop();
  const asked = { month: "2026-05", today: "2026-06-01", currency: "USD" };
  const body = monthPictureBody(ledger.books, asked);
  expect(body?.caption).toContain("flip profit 160.00 USD");
  expect(decodePng((await makeFile(ledger, body!.make)).bytes).height).toBe(1350);
  expect(monthPictureBody(ledgerWithOwner().ledger.books, asked)).toBeNull();
});

test("a backup that is asked for holds the books as they are now, and opens", async () => {
  const { ledger, directory } = shop();
  expect((await makeFile(ledger, backupBody("2026-05-29").make)).name).toBe("ledger-2026-05-29.sqlite");
  for (const day of ["2026-05-30", "2026-05-31"]) {
    expect(backUp(ledger.connection, directory, day).kind).toBe("made");
  }
  const { name, bytes } = await makeFile(ledger, backupBody("2026-05-31").make);
  expect(name).toBe("ledger-2026-05-31.sqlite");
  const copy = join(dataDirectory(), "..", name);
  writeFileSync(copy, bytes);
  const opened = openFileToRead(copy);
  if (opened.kind !== "open") throw new Error(opened.kind);
  expect(opened.reader.books.pieces.get(1)?.sales).toBe(19000);
  opened.reader.close();
});

test("a picture that a person sent is not made anew", async () => {
  const make = { what: "picture" as const, name: "photo", args: { file: "abc" } };
  await expect(makeFile(shop().ledger, make)).rejects.toThrow("not made anew");
});

/** A folder that the command is to write to. */
function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "export-"));
  folders.push(made);
  return made;
}

test("the export command writes its files beside a running bot, and overwrites nothing", async () => {
  const { directory } = shop();
  const to = join(folder(), "out");
  const environment = { DATA_DIR: directory, TIME_ZONE: "America/Chicago" };
  const first = await ended(runsProgram("export", [to], environment));
  expect(first).toMatchObject({ code: 0, err: "" });
  expect(first.out).toMatch(/^Wrote 10 files to /);
  const names = readdirSync(to);
  expect(names).toHaveLength(10);
  expect(statSync(join(to, names[0]!)).mode & 0o777).toBe(0o600);

  const csv = names.find((name) => name.endsWith("-pieces.csv"))!;
  for (const name of names) if (name !== csv) rmSync(join(to, name));
  writeFileSync(join(to, csv), "mine");
  const second = await ended(runsProgram("export", [to], environment));
  expect(second.code).toBe(1);
  expect(second.err).toMatch(/-pieces\.csv is there already: move it away, or name another folder\./);
  expect(readdirSync(to)).toEqual([csv]);
  expect(readFileSync(join(to, csv), "utf8")).toBe("mine");
});

test("the export command says what is wrong", async () => {
  const none = dataDirectory();
  const noLedger = await ended(runsProgram("export", [folder()], { DATA_DIR: none }));
  expect(noLedger.code).toBe(1);
  expect(noLedger.err).toMatch(/^No ledger has been begun in /);
  expect(existsSync(none)).toBe(false);
  const badOption = await ended(runsProgram("export", ["--all"], { DATA_DIR: none }));
  expect(badOption).toMatchObject({ code: 2, err: "usage: npm run export [-- FOLDER]\n" });
});
