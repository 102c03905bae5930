import { readFileSync } from "node:fs";
import type { Answered, PrintedRow } from "../../core/questions/answered.ts";

/** Labels that a row may have (a piece's number counts as one), and its value. */
type WantedRow = readonly [labels: readonly string[], value: string | null];

/** What an answer must come to; which fields there are says how it is held against it. */
interface Wanted {
  value?: readonly (string | null)[];
  number?: boolean;
  rows?: readonly (readonly WantedRow[])[];
  ordered?: boolean;
  top?: number;
  rank?: readonly (readonly WantedRow[])[];
  numbers?: readonly (readonly number[])[];
  when?: readonly [string, string];
  months?: readonly [number, number];
  refuse?: boolean;
  zero_ok?: boolean;
}

export interface QuestionCase {
  id: string;
  question: string;
  on: string;
  expect: Wanted;
}

/** The lines of a file of this folder. */
export function linesOf(name: string): string[] {
  const text = readFileSync(new URL(`./${name}`, import.meta.url), "utf8");
  return text.split("\n").filter((line) => line.trim() !== "");
}

export function questionCases(name: string): QuestionCase[] {
  return linesOf(name).map((line) => JSON.parse(line) as QuestionCase);
}

const isZero = (value: string | null | undefined): boolean => value !== null && Number(value) === 0;

function isSame(got: string | null | undefined, wanted: string | null): boolean {
  if (got === wanted) return true;
  return got != null && wanted !== null && got !== "" && Number(got) === Number(wanted);
}

function isRow({ label, number, value }: PrintedRow, [labels, wanted]: WantedRow): boolean {
  const names = [label?.toLowerCase(), number === undefined ? undefined : String(number)];
  return labels.some((each) => names.includes(each)) && isSame(value, wanted);
}

function hasRows(answered: Answered, wanted: readonly WantedRow[], ordered: boolean): boolean {
  const rows = (answered.rows ?? []).filter(({ value }) => !isZero(value));
  const all = wanted.filter(([, value]) => !isZero(value));
  if (rows.length !== all.length) return false;
  if (ordered) return all.every((row, index) => isRow(rows[index]!, row));
  return all.every((row) => rows.some((each) => isRow(each, row)));
}

/** The first `top` rows, those of equal value in any order. */
function isRanked({ rows, value }: Answered, wanted: readonly WantedRow[], top: number): boolean {
  if (!rows?.length) return top === 1 && isSame(value, wanted[0]![1]);
  const first = rows.slice(0, top);
  return (
    first.length === top &&
    first.every(
      (row, index) => isSame(row.value, wanted[index]![1]) && wanted.some((each) => isRow(row, each)),
    )
  );
}

function isNothing({ understood, value, rows = [] }: Answered, zeroOk: boolean): boolean {
  if (!understood || (value == null && rows.length === 0)) return true;
  return zeroOk && isZero(value) && rows.every((row) => isZero(row.value));
}

/** Whether an answer passes its case. */
export function passesCase({ expect }: QuestionCase, answered: Answered): boolean {
  if (expect.refuse) return isNothing(answered, expect.zero_ok === true);
  if (!answered.understood) return false;
  const { value } = answered;
  const isValue =
    expect.value === undefined ||
    expect.value.some((wanted) => wanted === value || (expect.number === true && isSame(value, wanted)));
  if (expect.rows)
    return isValue && expect.rows.some((rows) => hasRows(answered, rows, expect.ordered === true));
  if (expect.rank) return expect.rank.some((rows) => isRanked(answered, rows, expect.top ?? 1));
  if (expect.numbers) return expect.numbers.some((numbers) => hasNumbers(answered, numbers));
  if (expect.when) return isWithin(value, expect);
  return isValue;
}

function hasNumbers({ rows = [] }: Answered, wanted: readonly number[]): boolean {
  const got = rows.flatMap(({ number, numbers }) => numbers ?? (number === undefined ? [] : [number]));
  return [...got].sort((a, b) => a - b).join() === [...wanted].sort((a, b) => a - b).join();
}

function isWithin(value: string | null | undefined, { when, months }: Wanted): boolean {
  if (value == null) return false;
  if (/^\d+$/.test(value) && months) return Number(value) >= months[0] && Number(value) <= months[1];
  return value >= when![0] && value <= when![1];
}
