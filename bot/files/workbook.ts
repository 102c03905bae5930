import Papa from "papaparse";
import type { Cell, Sheet } from "write-excel-file/node";
import { dateOf, harmless, textOf } from "./cells.ts";
import type { ColumnKind, Table, Value } from "./tables.ts";

/** One workbook with a sheet for each table: amounts as numbers, days as dates, headings that stay in sight. */
export async function workbookOf(tables: readonly Table[]): Promise<Buffer> {
  const { default: writeWorkbook } = await import("write-excel-file/node");
  return writeWorkbook(tables.map(sheetOf)).toBuffer();
}

/** The same table as CSV (RFC 4180: CRLF, quotes where needed), with a byte order mark for spreadsheet programs. */
export function csvOf(table: Table): string {
  const headings = table.columns.map(({ heading }) => heading);
  const rows = table.rows.map((row) => row.map((value, index) => textOf(value, table.columns[index]!.kind)));
  return `\u{FEFF}${Papa.unparse([headings, ...rows], { newline: "\r\n" })}\r\n`;
}

function sheetOf(table: Table): Sheet<Buffer> {
  const headings: Cell[] = table.columns.map(({ heading }) => ({ value: heading, fontWeight: "bold" }));
  const rows = table.rows.map((row) => row.map((value, index) => cellOf(value, table.columns[index]!.kind)));
  return {
    sheet: table.name,
    data: [headings, ...rows],
    columns: table.columns.map(({ heading, kind }) => ({ width: widthOf(heading, kind) })),
    stickyRowsCount: 1,
  };
}

function cellOf(value: Value, kind: ColumnKind): Cell {
  if (value === null || value === "") return null;
  switch (kind) {
    case "text":
      return { value: harmless(String(value)), type: String };
    case "day":
      return { value: dateOf(String(value)), type: Date, format: "yyyy-mm-dd" };
    case "cents":
      return { value: Number(value) / 100, type: Number, format: "#,##0.00" };
    case "whole":
    case "decimal":
      return { value: Number(value), type: Number };
  }
}

/** In characters. */
function widthOf(heading: string, kind: ColumnKind): number {
  return Math.max(heading.length + 2, kind === "text" ? 18 : 12);
}
