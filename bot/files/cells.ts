import type { Day } from "../../core/calendar.ts";
import { amountText } from "../../core/money.ts";
import type { ColumnKind, Value } from "./tables.ts";

/**
 * Text that a spreadsheet program would run as a formula (=, +, -, @ or their full-width forms, also behind
 * blanks; a leading tab or line break) gets an apostrophe before it. Source of the list: OWASP, "CSV Injection".
 */
export function harmless(text: string): string {
  return /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/u.test(text) ? `'${text}` : text;
}

/** A value as CSV has it: amounts with two decimals and no grouping, days as they are. */
export function textOf(value: Value, kind: ColumnKind): string {
  if (value === null) return "";
  if (kind === "cents") return amountText(Number(value));
  return kind === "text" ? harmless(String(value)) : String(value);
}

/** A local day as spreadsheets count days: the same date whatever the zone. */
export function dateOf(day: Day): Date {
  return new Date(`${day}T00:00:00Z`);
}
