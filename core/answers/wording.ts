import { Decimal } from "decimal.js";
import type { Books } from "../books/books.ts";
import type { Cents } from "../money.ts";
import { roundHalfUp, show } from "../money.ts";

/** A list of pieces is cut here: longer ones no longer help on a phone. */
export const LIST_LINES_MAX = 20;

/** Money that came or went, with its sign: "+43.00", "-20.00", "0.00". */
export function signed(cents: Cents): string {
  return cents > 0 ? `+${show(cents)}` : show(cents);
}

/** "1 piece", "3 pieces". */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** A title with what it is about: one on its line, several below it. */
export function titled(title: string, lines: readonly string[]): string {
  return [`${title}:`, ...lines].join(lines.length === 1 ? " " : "\n");
}

/** The middle of whole amounts; of an even count the mean of the two in the middle, half up. */
export function medianOf(amounts: readonly Cents[]): Cents {
  const sorted = [...amounts].sort((a, b) => a - b);
  const upper = Math.floor(sorted.length / 2);
  if (sorted.length % 2 === 1) return sorted[upper]!;
  return roundHalfUp(new Decimal(sorted[upper - 1]!).plus(sorted[upper]!).div(2));
}

/** A part of a whole in whole percent: "92%". */
export function showShare(part: Cents, whole: Cents): string {
  return `${new Decimal(part).times(100).div(whole).toDecimalPlaces(0, Decimal.ROUND_HALF_UP)}%`;
}

/** Lines that fit a screen: what is past `most` is told by `rest` in one line. */
export function fitted<T>(
  items: readonly T[],
  most: number,
  line: (item: T) => string,
  rest: (left: readonly T[]) => string,
): string[] {
  if (items.length <= most) return items.map(line);
  const shown = items.slice(0, most - 1);
  return [...shown.map(line), rest(items.slice(most - 1))];
}

/** Lines as a reply: what is null is left out. */
export function reply(lines: readonly (string | null)[]): { text: string } {
  return { text: lines.filter((line) => line !== null).join("\n") };
}

/** Of a span in which no money moved; on empty books with a note that would start them. */
export function noMoney(books: Books, span: string): { text: string } {
  if (books.facts.length > 0) return reply([`${span}: no money in or out.`]);
  return reply([`${span}: nothing on the books.`, 'A note starts them: "bought dresser 30"']);
}
