import type { Day } from "../calendar.ts";
import { readLine } from "./line.ts";
import { printReading } from "./print.ts";
import type { Reading } from "./reading.ts";
import type { Trace } from "./rows/trace.ts";

/**
 * How a line came to its readings, for the eyes of whoever mends the tables: its clauses as tokens with their classes,
 * the rows that fired, each reading, what else an unclear one could be, and the words that nothing took.
 */
export function whyRead(line: string, today: Day): string[] {
  const trace: Trace[] = [];
  const readings = readLine(line, today, 0, trace);
  return [...trace.map(tracedLine), ...readings.flatMap(readingLines)];
}

function tracedLine({ table, row, words }: Trace): string {
  return row ? `  ${table}: ${row[0]} → ${row[1]} | ${words}` : `  ${table}: ${words}`;
}

function readingLines(reading: Reading): string[] {
  const { could, left, ...printed } = printReading(reading) as Record<string, unknown>;
  const alternatives = (could as object[] | undefined) ?? [];
  return [
    `  reads: ${JSON.stringify(printed)}`,
    ...alternatives.map((one) => `    could be: ${JSON.stringify(one)}`),
    ...(left ? [`    left over: ${(left as string[]).join(", ")}`] : []),
  ];
}
