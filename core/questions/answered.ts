import { amountText } from "../money.ts";
import type { Button } from "../reply.ts";
import type { Figure, Query, Unit } from "./query.ts";

/** A row as it is printed: `value` is text, null where there is none. */
export interface PrintedRow {
  label?: string;
  number?: number;
  numbers?: readonly number[];
  date?: string;
  value?: string | null;
}

/** An answer: whether the whole question was understood, what was asked, and the figures as text. */
export interface Answered {
  understood: boolean;
  text: string;
  measure?: string;
  value?: string | null;
  rows?: readonly PrintedRow[];
  /** Both days counted; null for all of it. */
  period?: { from: string | null; to: string | null } | null;
  buttons?: Button[][];
  /** The query behind the figures, for a picture of them. */
  query?: Query;
}

/** A figure as the machine reads it: money with two decimals, all else whole or as recorded. */
export function printedValue(value: Figure["value"], unit: Unit): string | null {
  if (value === null) return null;
  return unit === "money" ? amountText(Number(value)) : String(value);
}
