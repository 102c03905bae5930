import Papa from "papaparse";
import type { Piece } from "../books/books.ts";
import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { allAtOnce, type Steps } from "../steps.ts";
import { readRow, wrong } from "./cells.ts";
import type { Column } from "./columns.ts";
import { columnsOf, missingColumns } from "./columns.ts";
import type { HistoryDesk, HistoryProblem, HistoryRow } from "./row.ts";

export type { HistoryDesk, HistoryProblem, HistoryRow };

/** What would be recorded: plain data, so that a pending import can be stored as JSON. Cents; local days. */
export interface HistoryPlan {
  rows: HistoryRow[];
  problems: HistoryProblem[];
  /** Odd but possible, such as a row that looks like a piece already on the books. */
  cautions: HistoryProblem[];
  /** Columns that no meaning was found for: left out. */
  ignored: string[];
  /** Rows that were recorded from a file before: left out. */
  again: number;
  pieces: number;
  soldPieces: number;
  from: Day | null;
  to: Day | null;
  lastSale: Day | null;
  spent: Cents;
  proceeds: Cents;
  /** Of the sold pieces: what they sold for less what they cost. */
  profit: Cents;
}

/** More than a person types in a lifetime of flips; beyond it the file is something else. */
const ROWS_MAX = 5000;

/**
 * Reads a CSV of past pieces: name, bought on, price, materials, sold on, sold for, in any order, parted by
 * commas, semicolons or tabs. The sold columns of a row may be empty: still unsold. Nothing is recorded from a
 * plan with problems.
 */
export function planHistory(csvText: string, desk: HistoryDesk): HistoryPlan {
  return allAtOnce(planning(csvText, desk));
}

/** The same, a row at each step. */
export function* planning(csvText: string, desk: HistoryDesk): Steps<HistoryPlan> {
  const text = csvText.replace(/^\u{FEFF}/u, "");
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: delimiterOf(text) });
  const quotes = errors.find((error) => error.type === "Quotes");
  if (quotes) {
    const why = 'a quotation mark (") is opened and not closed, or stands inside a cell';
    return planOf([], [{ row: (quotes.row ?? 0) + 1, why }], { cautions: [], ignored: [] });
  }
  return yield* planLines(data, desk);
}

function* planLines(data: readonly string[][], desk: HistoryDesk): Steps<HistoryPlan> {
  const lines = data
    .map((cells, index) => ({ row: index + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
  const header = lines.shift();
  if (!header) return planOf([], [{ row: 0, why: "The file is empty." }], { cautions: [], ignored: [] });
  if (lines.length > ROWS_MAX) {
    const why = `More than ${ROWS_MAX} rows: send it in parts.`;
    return planOf([], [{ row: 0, why }], { cautions: [], ignored: [] });
  }
  const columns = columnsOf(
    header.cells,
    lines.map(({ cells }) => cells),
  );
  const missing = missingColumns(columns.found);
  if (missing) return planOf([], [missing], { cautions: [], ignored: columns.ignored });
  const rows: HistoryRow[] = [];
  const problems: HistoryProblem[] = [];
  for (const line of lines) {
    const cell = (column: Column) => line.cells[columns.found.get(column) ?? -1] ?? "";
    const tooLong = line.cells.slice(header.cells.length).some((extra) => extra !== "");
    const read = tooLong ? wrong("more cells than the heading has") : readRow(cell, desk);
    if (read.kind === "wrong") problems.push({ row: line.row, why: read.why });
    else rows.push({ row: line.row, ...read.value });
    yield;
  }
  if (lines.length === 0) problems.push({ row: 0, why: "There are no rows under the heading." });
  const fresh = withoutThose(rows, yield* recordedBefore(desk));
  const again = rows.length - fresh.length;
  if (again > 0 && fresh.length === 0 && problems.length === 0)
    problems.push({ row: 0, why: "All of its rows were recorded from a file before." });
  const cautions = cautionsOf(fresh, desk.pieces ?? []);
  return { ...planOf(fresh, problems, { cautions, ignored: columns.ignored }), again };
}

/** Every row of the files before, as often as it stood there. */
function* recordedBefore({ before = [], ...desk }: HistoryDesk): Steps<string[]> {
  const keys: string[] = [];
  for (const text of before) for (const row of (yield* planning(text, desk)).rows) keys.push(rowKey(row));
  return keys;
}

function withoutThose(rows: readonly HistoryRow[], known: readonly string[]): HistoryRow[] {
  const left = new Map<string, number>();
  for (const key of known) left.set(key, (left.get(key) ?? 0) + 1);
  return rows.filter((row) => {
    const count = left.get(rowKey(row)) ?? 0;
    left.set(rowKey(row), count - 1);
    return count <= 0;
  });
}

function rowKey(row: HistoryRow): string {
  return `${likeness(row)} ${row.materials} ${row.count}`;
}

/** The one that parts the heading: what stands in the rows, such as "1,250", must not mislead. */
function delimiterOf(text: string): string {
  const heading = /^\s*(.*)/.exec(text)?.[1] ?? "";
  const counts = [",", ";", "\t"].map((delimiter) => ({
    delimiter,
    count: heading.split(delimiter).length,
  }));
  return counts.sort((a, b) => b.count - a.count)[0]!.delimiter;
}

/** Two rows alike may be two alike pieces, so they are pointed out and not refused. */
function cautionsOf(rows: readonly HistoryRow[], pieces: Iterable<Readonly<Piece>>): HistoryProblem[] {
  const onBooks = new Map<string, number>();
  for (const piece of pieces) {
    const sold = piece.sold === null ? null : { day: piece.sold, price: piece.sales };
    onBooks.set(likeness({ ...piece, sold }), piece.number);
  }
  const seen = new Map<string, number>();
  const cautions: HistoryProblem[] = [];
  for (const row of rows) {
    const key = likeness(row);
    const number = onBooks.get(key);
    const before = seen.get(`${key} ${row.materials}`);
    if (number !== undefined) cautions.push({ row: row.row, why: `looks like #${number} on the books` });
    else if (before !== undefined) cautions.push({ row: row.row, why: `is the same as row ${before}` });
    seen.set(`${key} ${row.materials}`, row.row);
  }
  return cautions;
}

type Likeness = Pick<HistoryRow, "name" | "bought" | "price" | "sold"> & { traits: readonly string[] };

function likeness({ name, traits, bought, price, sold }: Likeness): string {
  return [...traits, name, bought, price, sold?.day ?? "", sold?.price ?? ""].join(" ");
}

function planOf(
  rows: HistoryRow[],
  problems: HistoryProblem[],
  notes: Pick<HistoryPlan, "cautions" | "ignored">,
): HistoryPlan {
  const sold = rows.filter((row) => row.sold !== null);
  const days = rows.flatMap((row) => [row.bought, ...(row.sold ? [row.sold.day] : [])]).sort();
  const costOf = (row: HistoryRow) => row.price + row.materials;
  const proceeds = sum(sold.map((row) => row.sold!.price));
  return {
    rows,
    problems,
    ...notes,
    again: 0,
    pieces: sum(rows.map((row) => row.count)),
    soldPieces: sum(sold.map((row) => row.count)),
    from: days[0] ?? null,
    to: days.at(-1) ?? null,
    lastSale:
      sold
        .map((row) => row.sold!.day)
        .sort()
        .at(-1) ?? null,
    spent: sum(rows.map(costOf)),
    proceeds,
    profit: proceeds - sum(sold.map(costOf)),
  };
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((a, b) => a + b, 0);
}
