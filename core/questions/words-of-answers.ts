import { counted as countedWords } from "../answers/wording.ts";
import { showDate, showMonth } from "../calendar.ts";
import { showMinutes } from "../decide/echo.ts";
import { show } from "../money.ts";
import type { Desk } from "./desk.ts";
import { measures } from "./measures.ts";
import type { Figure, Filter, Query, Unit } from "./query.ts";
import type { Result } from "./result.ts";
import { filtersWords, nameOf, periodWords, titleOf } from "./titles.ts";

/** Rows that a phone shows before "and 7 more". */
export const ROWS_MAX = 10;

/** A value as people read it. */
export function showValue(value: Figure["value"], unit: Unit): string {
  if (value === null) return "nothing to go by";
  switch (unit) {
    case "money":
      return show(Number(value));
    case "minutes":
      return Number(value) < 0 ? `-${showMinutes(-Number(value))}` : showMinutes(Number(value));
    case "days":
      return countedWords(Number(value), "day");
    case "percent":
      return `${value}%`;
    default:
      return String(value);
  }
}

/** How much went into a figure: "4 notes", "2 pieces". */
function overWords(query: Query, { over, pieces }: Result): string {
  if (query.measure === "count" || over === 0) return "";
  const isMean = query.aggregate === "average" || query.aggregate === "median";
  const byNotes = measures[query.measure].byNotes === true && !(isMean && pieces > 0);
  if (!byNotes && pieces > 0) return ` (${countedWords(pieces, "piece")})`;
  return byNotes ? ` (${countedWords(over, "note")})` : "";
}

/** "Profit, ever: curb is 29% (2,345.00 of 8,123.00)". */
function shareWords(
  query: Query,
  { value, shareOf }: Result,
  { head, unit }: { head: string; unit: Unit },
): string {
  if (query.perMile)
    return `${head.replace(/(?=, [^,]*$)/, " a mile")}: ${showValue(value, unit)} (${showValue(shareOf!.part, unit)} over ${shareOf!.whole ?? 0} miles)`;
  // Each row is a share of all.
  if (query.share?.length === 0) return `${head}, shares of ${showValue(shareOf!.whole, unit)}:`;
  const { of } = measures[query.measure];
  if (of)
    return `${head}: ${value}% (profit ${show(Number(shareOf!.part))} of ${show(Number(shareOf!.whole))} ${of})`;
  const part = `${filtersWords(query.share ?? [])} `;
  if (value === null) return `${head}: ${part}${showValue(null, unit)}`;
  return `${head}: ${part}${value}% (${showValue(shareOf!.part, unit)} of ${showValue(shareOf!.whole, unit)})`;
}

/** "over 5,000.00", "at least 3". */
function limitWords({ dimension, values }: Filter, unit: Unit): string {
  const word = dimension === "least" || dimension === "most" ? `at ${dimension}` : dimension;
  const amount = Number(values[0]);
  return `${word} ${unit === "money" ? show(amount) : showValue(amount / 100, unit)}`;
}

function isEmpty(query: Query, result: Result): boolean {
  return (
    result.over === 0 && (result.value === null || Number(result.value) === 0) && query.beside.length === 0
  );
}

/** The answer in words: what was understood and the figure first, rows at phone width after it. */
export function wordsOf(desk: Desk, query: Query, result: Result, corrected: readonly string[]): string {
  const unit = measures[query.measure].unit;
  const said = corrected.length > 0 ? [`(${corrected.join(", ")})`] : [];
  const head = `${titleOf(query)}, ${query.beside.some(({ period }) => period) ? "side by side" : periodWords(query, desk.today)}`;
  if (query.beside.length > 0) {
    const rows = (result.rows ?? []).map((row) => `  ${row.label}: ${showValue(row.value, unit)}`);
    if (query.summed)
      return [
        `${titleOf(query)}, ${query.beside.map(({ period }) => nameOf(period!, desk.today)).join(" and ")}: ${showValue(result.value, unit)}`,
        ...rows,
        ...said,
      ].join("\n");
    // Of three and more no one difference can be told.
    const all = head.endsWith("side by side") ? head : `${head}, side by side`;
    if (rows.length > 2) return [`${all}:`, ...rows, ...said].join("\n");
    const difference =
      result.value === null ? "no difference to tell" : `difference ${showValue(result.value, unit)}`;
    return [`${head}: ${difference}`, ...rows, ...said].join("\n");
  }
  if (result.shareOf)
    return [
      shareWords(query, result, { head, unit }),
      ...rowLines(result.rows ?? [], result.rowUnit ?? unit),
      ...said,
    ].join("\n");
  if (isEmpty(query, result) && !result.rows?.length)
    return [`${head}: ${emptyWords(query)}`, ...said].join("\n");
  const bound = query.against ? limitWords(query.against, unit) : null;
  if (query.tally)
    return [
      `${head}${bound ? `, ${bound}` : ""}: ${countedWords(Number(result.value), query.order!.of)}`,
      ...rowLines(result.rows ?? [], unit),
      ...said,
    ].join("\n");
  if (query.order && result.rows?.length === 0)
    return [`${head}: none ${bound ?? ""}`.trim(), ...said].join("\n");
  if (query.order)
    return [
      `${head}${bound ? `, ${bound}` : ""}${orderWords(query)}: ${showValue(result.rows?.[0]?.value ?? null, unit)}`,
      ...rowLines(result.rows ?? [], unit),
      ...said,
    ].join("\n");
  const figure = `${showValue(result.value, unit)}${bound ? ` (${bound})` : ""}`;
  return [
    `${head}: ${figure}${overWords(query, result)}`,
    ...rowLines(result.rows ?? [], result.rowUnit ?? unit),
    ...said,
  ].join("\n");
}

const NTH = ["", "second", "third", "fourth"] as const;

function orderWords({ order, measure }: Query): string {
  if (!order) return "";
  const ends = measures[measure].unit === "days" ? ["most", "fewest"] : ["highest", "lowest"];
  const end = ends[order.first === "most" ? 0 : 1];
  return order.skip === undefined ? `, ${end} first` : `, ${NTH[order.skip]} ${end}`;
}

function emptyWords(query: Query): string {
  const unit = measures[query.measure].unit;
  if (
    query.aggregate ||
    measures[query.measure].mean ||
    query.measure === "hourly" ||
    measures[query.measure].of
  )
    return "nothing to go by";
  if (query.measure === "count") return "none";
  if (query.measure === "asking") return "none listed (0.00)";
  return unit === "money" ? "nothing (0.00)" : "none";
}

/** A line a row. */
export function linesOf(rows: readonly Figure[], unit: Unit): string[] {
  return rows.map(({ label, value }) => `  ${rowLabel(label)}: ${showValue(value, unit)}`);
}

function rowLines(rows: readonly Figure[], unit: Unit): string[] {
  return cut(linesOf(rows, unit));
}

/** Lines for the first few, and how many more there are. */
export function cut(lines: readonly string[]): string[] {
  return lines.length > ROWS_MAX
    ? [...lines.slice(0, ROWS_MAX), `and ${lines.length - ROWS_MAX} more`]
    : [...lines];
}

/** The lines that `cut` leaves out, for an answer to keep. */
export function restOf(lines: readonly string[]): { rest?: readonly string[] } {
  return lines.length > ROWS_MAX ? { rest: lines.slice(ROWS_MAX) } : {};
}

/** "2026-05" is read as May 2026; other labels as they are. */
function rowLabel(label: string): string {
  if (/^\d{4}-\d{2}-\d{2}$/.test(label)) return showDate(label);
  return /^\d{4}-\d{2}$/.test(label) ? showMonth(label) : label;
}
