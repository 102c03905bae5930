import type { Books } from "../books/books.ts";
import { pieceLabel, statusOf } from "../books/piece.ts";
import { bracketsUnder } from "../phone.ts";
import type { Button } from "../reply.ts";
import { answerView } from "./answer-views.ts";
import { type Answered, type PrintedRow, printedValue } from "./answered.ts";
import { nextButtons } from "./canonical.ts";
import { barsOf } from "./chart.ts";
import type { Desk } from "./desk.ts";
import { standsFirst } from "./is-first.ts";
import type { Mark } from "./marks.ts";
import { measures } from "./measures.ts";
import type { Parts } from "./parts.ts";
import type { Query } from "./query.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Result } from "./result.ts";
import { isHeld, piecesIn, runQuery } from "./run.ts";
import { isOwnersQuery } from "./sight.ts";
import { cut, linesOf, restOf, showValue, wordsOf } from "./words-of-answers.ts";

/*
 * A query's figures as an answer: its words, its value or yes and no, and what can be tapped behind it.
 */

/** What an answer is about: its first line up to the figure. */
export function headOf(text: string): string {
  const [line = ""] = text.split("\n");
  return line.slice(0, line.lastIndexOf(": ") > 0 ? line.lastIndexOf(": ") : 40);
}

function correctedWords(marks: readonly Mark[]): string[] {
  return marks
    .filter(({ corrected, senses }) => corrected && (senses.thing !== undefined || senses.own.length > 0))
    .map(({ typed, text }) => `${typed} read as ${text}`);
}

/** States that have a view of their own: where nothing narrows them, its words tell more than rows. */
const STATE_VIEWS = {
  unlisted: "unlisted",
  "on the market": "listed",
  held: "held",
  unsold: "unsold",
} as const;

function stateText(desk: Desk, { counted, list, filters, period }: Query, { rows }: Result): string | null {
  const isPlain = list && filters.length === 0 && !period && counted !== null;
  if (isPlain && counted === "not listed" && rows?.length) {
    const ready = [...desk.books.pieces.values()].filter((piece) => statusOf(piece) === "finished").length;
    const head = `${ready} finished, not listed; ${rows.length - ready} not finished or held`;
    return [head, ...cut(linesOf(rows, "money"))].join("\n");
  }
  const about = isPlain && counted in STATE_VIEWS ? STATE_VIEWS[counted as keyof typeof STATE_VIEWS] : null;
  return about ? answerView(desk, { kind: "view", about, pieces: [], loan: null }).text : null;
}

/** What a query comes to. */
export function answerQuery(desk: Desk, query: Query, parts: Parts): Answered {
  const result = runQuery(desk, query);
  const corrected = correctedWords(parts.marks);
  const words = wordsOf(desk, query, result, corrected);
  const { unit } = measures[query.measure];
  const state = stateText(desk, query, result);
  const period =
    query.period && (query.period.from !== null || query.period.to !== null) ? query.period : null;
  const rows = result.rows?.map(
    ({ label, number, value }): PrintedRow => ({
      label,
      ...(number === undefined ? {} : { number }),
      value: printedValue(value, result.rowUnit ?? unit),
    }),
  );
  const of = spokenIn(desk, query, rows);
  return {
    understood: true,
    // The rest of what was reached.
    measure: query.measure === "come down" ? "reached" : query.measure,
    value: query.yesNo ? yesOrNo(desk, query, result) : printedValue(result.value, result.valueUnit ?? unit),
    ...(rows ? { rows } : {}),
    period: period ? { from: period.from, to: period.to } : null,
    text: bracketsUnder(`${firstWordOf(desk, query, result)}${state ?? words}`),
    ...(state === null && corrected.length > 0 ? { isPutRight: true as const } : {}),
    ...(state === null ? restOf(linesOf(result.rows ?? [], result.rowUnit ?? unit)) : {}),
    ...(query.picture && result.rows ? { chart: barsOf(headOf(words), result.rows, unit, showValue) } : {}),
    query,
    of,
    isOwners: isOwnersQuery(query),
    ...buttonsOf(query, of, desk),
  };
}

/** The loan is spoken of. */
export const OF_LOAN = { pieces: [], loan: true } as const;

/** What a figure is of: the pieces it names, else those of its rows. */
function spokenIn(desk: Desk, query: Query, rows: readonly PrintedRow[] = []): NonNullable<Answered["of"]> {
  if (query.measure === "paid" || query.measure === "interest") return OF_LOAN;
  const isNamed = query.filters.some(
    ({ dimension, not }) => !not && (dimension === "piece" || dimension === "kind"),
  );
  if (isNamed && !query.order && query.beside.length === 0) {
    const counted = piecesIn(desk, query);
    return {
      pieces: counted.length > 0 ? counted : piecesOf(desk, query.filters).map(({ number }) => number),
    };
  }
  const numbers = rows.flatMap(({ number }) => number ?? []);
  // What stands first in an order is what was asked for.
  return { pieces: query.order ? numbers.slice(0, 1) : numbers, isList: true };
}

function buttonsOf(
  query: Query,
  of: NonNullable<Answered["of"]>,
  { books, today }: Desk,
): Pick<Answered, "buttons"> {
  const next = [...nextButtons(query, today), ...storyButton(query, of, books)];
  return next.length > 0 ? { buttons: [next] } : {};
}

/** The story of the one piece: by its name, where it was asked for by its kind and only one fits. */
function storyButton(
  { filters }: Query,
  { pieces, isList }: NonNullable<Answered["of"]>,
  books: Books,
): Button[] {
  const [only, ...more] = pieces;
  if (only === undefined || more.length > 0 || isList) return [];
  const isNumbered = filters.some(({ dimension, not }) => dimension === "piece" && !not);
  const label = isNumbered ? "Its story" : pieceLabel(books.pieces.get(only)!);
  return [{ label, press: `ask:show #${only}` }];
}

/** "Yes." and "no.", "up." and "down.", where that was asked. */
function firstWordOf(desk: Desk, query: Query, result: Result): string {
  const value = Number(result.value ?? 0);
  if (query.asksWay) return value > 0 ? "Up. " : value < 0 ? "Down. " : "Level. ";
  if (!query.yesNo) return "";
  return yesOrNo(desk, query, result) === "yes" ? "Yes. " : "No. ";
}

/** Whether there is anything: more than nothing is a yes, or less where a loss is asked for. */
function yesOrNo(desk: Desk, query: Query, result: Result): "yes" | "no" {
  const { asksLess, against } = query;
  const { value, rows } = result;
  if (query.isFirst) return standsFirst(desk, query, result) ? "yes" : "no";
  if (against) return (query.order ? (rows ?? []).length > 0 : isHeld(query, value ?? 0)) ? "yes" : "no";
  if (query.every)
    return (rows ?? []).every((row) => Number(row.value ?? 0) * (asksLess ? -1 : 1) > 0) ? "yes" : "no";
  if (query.list) return (rows ?? []).length > 0 ? "yes" : "no";
  return Number(value ?? 0) * (asksLess ? -1 : 1) > 0 ? "yes" : "no";
}
