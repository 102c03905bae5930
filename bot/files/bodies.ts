import { join } from "node:path";
import type { Books } from "../../core/books/books.ts";
import type { Day } from "../../core/calendar.ts";
import type { Chart } from "../../core/questions/charted.ts";
import type { OutboxBody } from "../../db/outbox.ts";
import type { FiguresAsked } from "../pictures/figures.ts";
import { altText, isWorthDrawing, monthFigures } from "../pictures/figures.ts";

export type FileBody = Extract<OutboxBody, { kind: "file" }>;
export type Make = FileBody["make"];

/** The tables of an export, in the order of the workbook's sheets. */
export const TABLE_NAMES = [
  "pieces",
  "money journal",
  "months",
  "loan",
  "loan journal",
  "standing notes",
  "miles",
  "spending by tax line",
  "pictures",
] as const;

/** Where files that are asked for at the machine itself lie: in the data directory, a folder for each sort. */
export function filesFolder(directory: string, what: Make["what"]): string {
  return join(
    directory,
    {
      export: "exports",
      backup: "backups",
      picture: "pictures",
      "month picture": "pictures",
      chart: "pictures",
    }[what],
  );
}

/** "export": the workbook, then the same as one CSV file for each of its sheets; each an outbox row. */
export function exportBodies(asked: { through: Day; currency: string }): FileBody[] {
  const workbook: FileBody = {
    kind: "file",
    make: { what: "export", name: `tailgate-${asked.through}.xlsx`, args: { ...asked, table: null } },
    caption: `Your books through ${asked.through}: one sheet each for ${TABLE_NAMES.join(", ")}.`,
  };
  const files = TABLE_NAMES.map((table): FileBody => {
    const name = csvName(table, asked.through);
    return { kind: "file", make: { what: "export", name, args: { ...asked, table } }, caption: "" };
  });
  return [workbook, ...files];
}

function csvName(table: string, through: Day): string {
  return `tailgate-${through}-${table.replaceAll(" ", "-")}.csv`;
}

/** The month's picture with its words for those who cannot see it; null where there is nothing to draw. */
export function monthPictureBody(books: Books, asked: FiguresAsked): FileBody | null {
  const figures = monthFigures(books, asked);
  if (!isWorthDrawing(figures)) return null;
  const name = `month-${asked.month}.png`;
  return {
    kind: "file",
    make: { what: "month picture", name, args: { ...asked } },
    caption: altText(figures),
  };
}

/** The picture of an answer's rows, or of the loans; what it shows goes along, so that words and picture agree. */
export function chartBody(chart: Chart, caption: string): FileBody {
  return { kind: "file", make: { what: "chart", name: "chart.png", args: { chart } }, caption };
}

/** "backup": a copy of the books as they are when it is sent. */
export function backupBody(today: Day): FileBody {
  const make: Make = { what: "backup", name: "ledger.sqlite", args: { today } };
  return { kind: "file", make, caption: "Your books as they are now. Keep it where the bot is not." };
}
