import { amountText } from "../money.ts";
import type { Button } from "../reply.ts";
import type { Chart } from "./charted.ts";
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
  /** The words ask by themselves, whatever mark is behind them. */
  asks?: boolean;
  /** Its words name a figure: where one of them is not known, it is worth naming. */
  opens?: boolean;
  /** A word of it was taken for another one, and the text says which. */
  isPutRight?: true;
  /** Of a question that is not understood: the words that stand in the way, as typed. */
  words?: readonly string[];
  /** It tells of the month or the loan, which members may not be meant to see. */
  isOwners?: boolean;
  /** The question with what its "it" or "those" means, where it had such a word. */
  asked?: string;
  /** The pieces it tells of, or the loan: what is spoken of right behind it. */
  of?: { pieces: readonly number[]; loan?: true; isList?: true };
  measure?: string;
  value?: string | null;
  rows?: readonly PrintedRow[];
  /** Both days counted; null for all of it. */
  period?: { from: string | null; to: string | null } | null;
  /** The lines beyond those shown: "more" shows them. */
  rest?: readonly string[];
  buttons?: Button[][];
  /** The facts that a list of notes shows, in its order: they can be spoken of by letter. */
  noted?: readonly number[];
  /** Asks the shell to send the pictures of these pieces, or a month's picture, along. */
  pictures?: readonly number[];
  monthPicture?: string;
  /** A picture of the rows, where one was asked for; the text is its caption. */
  chart?: Chart;
  /** The query behind the figures, for a picture of them. */
  query?: Query;
}

/** A figure as the machine reads it: money with two decimals, all else whole or as recorded. */
export function printedValue(value: Figure["value"], unit: Unit): string | null {
  if (value === null) return null;
  return unit === "money" ? amountText(Number(value)) : String(value);
}
