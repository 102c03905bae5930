import ExcelJS from "exceljs";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { TABLE_NAMES } from "../../../bot/files/bodies.ts";
import { harmless } from "../../../bot/files/cells.ts";
import { tablesOf } from "../../../bot/files/tables.ts";
import { csvOf, workbookOf } from "../../../bot/files/workbook.ts";
import { Ledger } from "../../books/ledger.ts";
import { centsOf } from "../../core/cents.ts";

const THROUGH = "2026-05-31";
const ASKED = { through: THROUGH, currency: "USD", mileageRates: {}, pictures: [] };

/** A year and a half with everything that moves money in it, and names that try to be formulas. */
function workshop(): Ledger {
  const ledger = new Ledger();
  ledger.add("loan", "2025-06-01", { amount: 1425000, data: { loan: "loan", rate: "5.5" } });
  const [dresser, chair] = ledger.buy("2025-06-02", ["dresser", "chair"], 5001, { source: "=SUM(A1)" });
  ledger.add("spend", "2025-06-03", {
    pieces: [dresser!],
    amount: 1250,
    data: { what: "paint", category: "materials" },
  });
  ledger.add("spend", "2025-07-01", { amount: 5900, data: { what: "+sander", category: "tools" } });
  ledger.add("spend", "2025-07-02", { amount: 2000, data: { what: "gas", category: "vehicle" } });
  ledger.add("sell", "2025-08-01", {
    pieces: [dresser!],
    amount: 19000,
    data: { fee: 660, buyer: '@lady, in the "red" truck' },
  });
  ledger.add("income", "2025-08-02", { amount: 24000, data: { stream: "-ads" } });
  ledger.add("pay", "2025-09-01", { amount: 50000, data: {} });
  ledger.add("retire", "2026-01-10", { pieces: [chair!], data: { how: "kept" } });
  const [lamp] = ledger.buy("2026-02-01", ["lamp"], 900);
  ledger.add("retire", "2026-02-02", { pieces: [lamp!], data: { how: "scrapped" } });
  const [desk] = ledger.buy("2026-03-01", ["desk"], 3000);
  ledger.add("hold", "2026-03-02", { pieces: [desk!], amount: 4500, data: {} });
  ledger.add("sell", "2026-03-05", { pieces: [desk!], amount: 16500, data: {} });
  ledger.add("refund", "2026-03-20", { pieces: [desk!], amount: 2500, data: {} });
  ledger.add("spend", "2026-03-21", {
    pieces: [desk!],
    amount: 333,
    data: { what: "knobs", category: "materials" },
  });
  ledger.add("drive", "2026-03-22", { pieces: [desk!], data: { miles: "31.5" } });
  ledger.buy("2026-04-01", ["hutch"], 7777);
  return ledger;
}

async function readBack(ledger = workshop(), asked = ASKED) {
  const book = new ExcelJS.Workbook();
  const bytes = await workbookOf(tablesOf(ledger.books(), asked));
  await book.xlsx.load(bytes as unknown as ArrayBuffer);
  return book;
}

type Row = Record<string, ExcelJS.CellValue>;

/** A sheet's rows by heading. */
function rowsOf(book: ExcelJS.Workbook, name: string): Row[] {
  const sheet = book.getWorksheet(name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  const headings = (sheet.getRow(1).values as ExcelJS.CellValue[]).slice(1).map(String);
  const rows: Row[] = [];
  sheet.eachRow((row, number) => {
    if (number === 1) return;
    rows.push(Object.fromEntries(headings.map((heading, index) => [heading, row.getCell(index + 1).value])));
  });
  return rows;
}

function cents(value: ExcelJS.CellValue | undefined): number {
  if (typeof value !== "number") throw new Error(`not a number: ${String(value)}`);
  return Math.round(value * 100);
}

const sumOf = (rows: readonly Row[], heading: string) =>
  rows.reduce((sum, row) => sum + (row[heading] === null ? 0 : cents(row[heading])), 0);

test("another library opens it and finds a sheet for each table", async () => {
  const book = await readBack();
  expect(book.worksheets.map(({ name }) => name)).toEqual([...TABLE_NAMES]);
});

test("its totals are those of the statement", async () => {
  const [book, statement] = [await readBack(), workshop().statement(THROUGH)];
  const pieces = rowsOf(book, "pieces");
  const totals = (of: (line: (typeof statement.pieces)[number]) => string | null) =>
    statement.pieces.reduce((sum, line) => sum + centsOf(of(line) ?? "0.00")!, 0);
  expect(sumOf(pieces, "price paid")).toBe(totals((line) => line.price));
  expect(sumOf(pieces, "materials")).toBe(totals((line) => line.materials));
  expect(sumOf(pieces, "proceeds")).toBe(totals((line) => line.proceeds));
  expect(sumOf(pieces, "profit")).toBe(totals((line) => line.profit));
  const months = rowsOf(book, "months");
  expect(months.map((row) => row["month"])).toEqual(statement.months.map(({ month }) => month));
  for (const [index, line] of statement.months.entries()) {
    expect(cents(months[index]!["flip profit"])).toBe(centsOf(line.flipProfit));
    expect(cents(months[index]!["for the loan"])).toBe(centsOf(line.forLoan));
    expect(cents(months[index]!["cash in"])).toBe(centsOf(line.cashIn));
    expect(cents(months[index]!["cash out"])).toBe(centsOf(line.cashOut));
  }
  const [loan] = rowsOf(book, "loan");
  expect(cents(loan!["balance"])).toBe(centsOf(statement.loans[0]!.balance));
  expect(cents(loan!["accrued interest"])).toBe(centsOf(statement.loans[0]!.accruedInterest));
  const journal = rowsOf(book, "loan journal");
  expect(cents(journal.at(-1)!["principal left"])).toBe(centsOf(statement.loans[0]!.principal));
  expect(sumOf(journal, "interest paid")).toBe(centsOf(statement.loans[0]!.interestPaid));
});

test("every entry of the money journal balances, and its unsold pieces are the statement's", async () => {
  const rows = rowsOf(await readBack(), "money journal");
  const amount = "amount (debit +, credit -)";
  const entries = new Map<unknown, Row[]>();
  for (const row of rows) entries.set(row["entry"], [...(entries.get(row["entry"]) ?? []), row]);
  expect(entries.size).toBeGreaterThan(12);
  for (const legs of entries.values()) expect(sumOf(legs, amount)).toBe(0);
  const unsold = rows.filter((row) => row["account"] === "unsold pieces");
  expect(sumOf(unsold, amount)).toBe(centsOf(workshop().statement(THROUGH).unsoldCost));
});

test("amounts are numbers with two decimals, days are dates, in any zone the same", async () => {
  const sheet = (await readBack()).getWorksheet("money journal")!;
  const day = sheet.getRow(2).getCell(1);
  expect(day.value).toEqual(new Date("2025-06-01T00:00:00Z"));
  expect(day.numFmt).toBe("yyyy-mm-dd");
  const amount = sheet.getRow(2).getCell(7);
  expect(amount.type).toBe(ExcelJS.ValueType.Number);
  expect(amount.numFmt).toBe("#,##0.00");
});

test("no cell is a formula, and text that begins like one is made harmless", async () => {
  const book = await readBack();
  for (const sheet of book.worksheets) {
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        expect(cell.type).not.toBe(ExcelJS.ValueType.Formula);
        if (typeof cell.value === "string") expect(cell.value).not.toMatch(/^\s*[=+\-@\t\r]/);
      });
    });
  }
  expect(rowsOf(book, "pieces")[0]!["source"]).toBe("'=SUM(A1)");
  expect(rowsOf(book, "money journal").map((row) => row["what"])).toContain("'+sander");
});

test.each(["=1+1", "+1", "-1", "@x", "\tx", "\rx", "\nx", "  =1", "＝1", "\u00a0=1"])(
  "harmless: %j",
  (text) => {
    expect(harmless(text)).toBe(`'${text}`);
  },
);

test.each(["oak dresser", "#12", "1-2", "a=b", ""])("left as it is: %j", (text) => {
  expect(harmless(text)).toBe(text);
});

/** Schedule C, Part III: line 42 is 35 + 36 + 38 less 41, and must be what the books say was sold and lost. */
test("a year's cost of goods sold follows from its lines and is what the books have", async () => {
  const rows = rowsOf(await readBack(), "spending by tax line");
  const lines = (year: number) =>
    Object.fromEntries(
      rows
        .filter((row) => row["year"] === year)
        .map((row) => [row["line of Schedule C"], cents(row["amount"])]),
    );
  expect(lines(2025)).toEqual({ 9: 2000, 10: 660, 22: 5900, 36: 5001, 38: 1250, 41: 2500, 42: 3751 });
  expect(lines(2026)).toEqual({ 35: 2500, 36: 900 + 3000 + 7777 - 2500, 38: 333, 41: 7777, 42: 4233 });
  const { months } = workshop().statement(THROUGH);
  const posted = months
    .filter(({ month }) => month.startsWith("2026"))
    .reduce((sum, line) => sum + centsOf(line.costOfSold)! + centsOf(line.writtenOff)!, 0);
  expect(lines(2026)["42"]).toBe(posted);
  expect(rows.at(-1)!["note"]).toMatch(/^Estimate, no tax advice/);
});

test("in another currency the tax form and the mileage rate say nothing", async () => {
  const book = await readBack(workshop(), { ...ASKED, currency: "EUR" });
  const rows = rowsOf(book, "spending by tax line");
  expect(rows.every((row) => row["line of Schedule C"] === null && row["note"] === null)).toBe(true);
  expect(Object.keys(rowsOf(book, "miles")[0]!)).toEqual(["day", "miles", "pieces"]);
});

test("miles are worth the rate of their day", async () => {
  const [drive] = rowsOf(await readBack(), "miles");
  expect(drive).toMatchObject({ miles: 31.5, pieces: "#4", "cents a mile": 72.5 });
  // 31.5 × 72.5 cents = 2,283.75, half up.
  expect(cents(drive!["worth (estimate)"])).toBe(2284);
});

test("the CSV has the same values as the workbook's sheet", async () => {
  const book = await readBack();
  for (const table of tablesOf(workshop().books(), ASKED)) {
    const { data } = Papa.parse<Record<string, string>>(csvOf(table).replace(/^\u{FEFF}/u, ""), {
      header: true,
      skipEmptyLines: true,
    });
    const rows = rowsOf(book, table.name);
    expect(data).toHaveLength(rows.length);
    for (const [index, row] of rows.entries()) {
      for (const { heading, kind } of table.columns) {
        const text = data[index]![heading]!;
        const value = row[heading] ?? null;
        if (value === null) expect(text).toBe("");
        else if (value instanceof Date) expect(text).toBe(value.toISOString().slice(0, 10));
        else if (kind === "cents") expect(centsOf(text)).toBe(cents(value));
        else expect(text).toBe(String(value));
      }
    }
  }
});

test("CSV: lines end with CRLF, a byte order mark leads, quotes are doubled, losses stay numbers", () => {
  const tables = tablesOf(workshop().books(), ASKED);
  const journal = csvOf(tables.find(({ name }) => name === "money journal")!);
  expect(journal.startsWith("\u{FEFF}day,entry,")).toBe(true);
  expect(journal).toContain(`"'@lady, in the ""red"" truck"`);
  expect(journal.split("\r\n").at(-1)).toBe("");
  expect(journal).toMatch(/,-12\.50,/);
});

test("empty books make an empty workbook that opens", async () => {
  const book = await readBack(new Ledger());
  expect(book.worksheets.map(({ rowCount }) => rowCount)).toEqual(TABLE_NAMES.map(() => 1));
});

test("what records itself has a sheet of its own, with what is next", async () => {
  const ledger = workshop();
  const note = { kind: "spend", what: "storage", category: "storage" } as const;
  const place = ledger.add("repeat", "2026-04-05", {
    amount: 6000,
    data: { every: "month", first: "2026-04-05", note },
  }).place;
  ledger.add("repeat", "2026-05-20", { amount: 6500, data: { of: place, from: "2026-05-20" } });
  const [row] = rowsOf(await readBack(ledger), "standing notes");
  expect(row).toMatchObject({ what: "storage", kind: "spend", amount: 65, every: "month" });
});
