import { Decimal } from "decimal.js";
import { medianOf } from "../answers/wording.ts";
import type { Piece } from "../books/books.ts";
import { costOf, pieceLabel } from "../books/piece.ts";
import { roundHalfUp } from "../money.ts";
import { boundOf } from "./bounds.ts";
import type { Desk, Subject } from "./desk.ts";
import { isLimit, isWithin, passes } from "./filters.ts";
import { groupings, isTime, labelsBetween, spanOf } from "./groupings.ts";
import { salePriceOf } from "./ledger-index.ts";
import type { Measure } from "./measure.ts";
import { measures } from "./measures.ts";
import type { Figure, Grouping, Query, Side } from "./query.ts";
import { meanOfRows, runPerMile, runRate, runShare } from "./quotients.ts";
import type { Result } from "./result.ts";
import { perOf, salePrices, sumOf } from "./subjects.ts";
import { quickTotal } from "./totals.ts";
import { UNKNOWN } from "./words/plain.ts";

/** Asks that take each piece as one: the rest goes by notes. */
function goesByPiece(query: Query): boolean {
  if (query.order?.of === "piece" || query.by === "piece" || query.list || query.salePrice) return true;
  // "Sales over 300" are sales, whatever was given back of them.
  const isSales = query.measure === "proceeds" && query.filters.some(({ dimension }) => isLimit(dimension));
  // The mean of price cuts is of each, however many a piece had.
  return (query.aggregate !== null && query.measure !== "price cuts") || isSales;
}

/** What the query is taken of, filtered. */
function subjectsOf(desk: Desk, query: Query): Subject[] {
  const measure = measures[query.measure];
  const single = goesByPiece(query) && query.measure === "proceeds";
  const all = single ? salePrices(desk, query) : measure.subjects(desk, query);
  const plain = query.filters.filter(({ dimension }) => !isLimit(dimension));
  const limits = query.filters.filter(({ dimension }) => isLimit(dimension));
  const kept = all.filter((subject) => passes(subject, plain, { desk, measure: query.measure, units: null }));
  const whole = goesByPiece(query) && !single ? byPiece(kept) : kept;
  return whole.filter((subject) =>
    limits.every((limit) =>
      passes(subject, [limit], { desk, measure: query.measure, units: boundOf(desk, query, subject, limit) }),
    ),
  );
}

/** The pieces that a query is taken of, by number. */
export function piecesIn(desk: Desk, query: Query): number[] {
  return [...new Set(subjectsOf(desk, query).flatMap(({ piece }) => piece?.number ?? []))];
}

/**
 * Several subjects of one piece as one: a dresser's three coats of paint are one dresser's spending. So are those of one
 * note of no piece: a payment is one, whatever of it is interest.
 */
function byPiece(subjects: readonly Subject[]): Subject[] {
  const whole = new Map<unknown, Subject>();
  for (const subject of subjects) {
    const { piece, fact, loan = "" } = subject;
    const key = piece?.number ?? (fact ? `${fact.id} ${loan}` : subject);
    const before = whole.get(key);
    if (!before) whole.set(key, { ...subject });
    else {
      before.units += subject.units;
      if (subject.miles) before.miles = new Decimal(before.miles ?? 0).plus(subject.miles).toString();
    }
  }
  return [...whole.values()].sort((a, b) => Number(a.piece === null) - Number(b.piece === null));
}

/** What a mean is of: single things, of lives only those of sold pieces. */
function meantBy(query: Query, subjects: readonly Subject[]): readonly Subject[] {
  const { overSold } = measures[query.measure];
  const isOfUnsold = query.filters.some(
    ({ dimension, values, not }) => dimension === "status" && values.includes("unsold") && !not,
  );
  const counted = overSold && !isOfUnsold ? subjects.filter(({ piece }) => piece?.gone === "sold") : subjects;
  const single = counted.filter(
    ({ piece }) => piece !== null || query.measure === "income" || query.measure === "paid",
  );
  return single.length > 0 ? single : counted;
}

function figureValue(query: Query, measure: Measure, subjects: readonly Subject[]): number | string | null {
  const { aggregate } = query;
  if (aggregate !== null) {
    const known = meantBy(query, subjects);
    if (known.length === 0) return null;
    // The mean of a quotient is that of the sums.
    if (known[0]!.per !== undefined && aggregate === "average") return measure.combine(known);
    const units = known.map((subject) => unitsOf(query, subject));
    if (aggregate === "median") return medianOf(units);
    return roundHalfUp(new Decimal(units.reduce((a, b) => a + b, 0)).div(units.length));
  }
  return measure.combine(subjects);
}

/** One subject's own value: a rate is its own quotient. */
function unitsOf(query: Query, subject: Subject): number {
  if (subject.per !== undefined) return Number(measures[query.measure].combine([subject]) ?? 0);
  if (query.measure === "miles") return Number(subject.miles ?? 0);
  if (query.measure === "come down") return 100 - Math.round(subject.units);
  return query.measure === "reached" ? Math.round(subject.units) : subject.units;
}

/** Runs a query on the books. What was asked before of the same books on the same day is not worked out again. */
export function runQuery(desk: Desk, query: Query): Result {
  const key = `${desk.today} ${desk.books.facts.length} ${JSON.stringify({ ...query, picture: false, yesNo: false })}`;
  const { results } = desk.index;
  const kept = results.get(key) as Result | undefined;
  if (kept) return kept;
  if (results.size >= RESULTS_KEPT) results.clear();
  const result = quickTotal(desk, query) ?? workOut(desk, query);
  results.set(key, result);
  return result;
}

/** Answers kept for each ledger: more are not asked between two notes. */
const RESULTS_KEPT = 200;

function workOut(desk: Desk, query: Query): Result {
  if (query.aggregate === "rate") return runRate(query, desk.today, (plain) => workOut(desk, plain));
  if (query.share) return runShare(query, query.share, (part) => runQuery(desk, part));
  if (query.perMile) return runPerMile(query, (part) => runQuery(desk, part));
  if (query.beside.length > 0) return runBeside(desk, query);
  const measure = measures[query.measure];
  const subjects = subjectsOf(desk, query);
  if (subjects.length === 0 && isOfOne(query)) return { value: null, rows: null, over: 0, pieces: 0 };
  const meant = query.aggregate === null ? subjects : meantBy(query, subjects);
  const pieces = new Set(meant.flatMap(({ piece }) => (piece ? [piece.number] : []))).size;
  const over = { over: measure.byNotes ? notesOf(subjects) : meant.length, pieces };
  if (query.order) {
    const rows = ordered(rowsOf(desk, query, subjects, query.order.of), query).filter(
      ({ value }) => !query.against || isHeld(query, value),
    );
    if (query.tally) return tallyOf(query, rows, over);
    return { value: rows[0]?.value ?? null, rows, ...over };
  }
  const value = figureValue(query, measure, subjects);
  if (query.list && query.measure === "count")
    return { value, rows: pieceRows(desk, subjects, query.counted), rowUnit: "money", ...over };
  const by = query.by ?? (query.list ? "piece" : null);
  const shareOf =
    measure.of && value !== null && query.aggregate !== "median"
      ? { part: sumOf(subjects), whole: perOf(subjects) }
      : undefined;
  if (!by) return { value, rows: null, ...over, ...(shareOf ? { shareOf } : {}) };
  const rows = arranged(rowsOf(desk, query, subjects, by), by);
  // What lost most stands first where losses are asked for.
  return { value, rows: query.asksLess && !isTime(by) ? rows.reverse() : rows, ...over };
}

/** How many notes these are of: one may stand for several pieces or loans. */
function notesOf(subjects: readonly Subject[]): number {
  return new Set(subjects.map(({ fact }) => fact?.id)).size;
}

/** How many rows there are; those with nothing count only where the amount says so. */
function tallyOf(query: Query, all: Figure[], over: { over: number; pieces: number }): Result {
  const rows = all.filter(({ value, label }) => label !== UNKNOWN && (query.against || Number(value) !== 0));
  return { value: rows.length, rows, ...over, valueUnit: "count" };
}

/** Whether a figure holds against the amount of the question. */
export function isHeld({ against, measure }: Query, value: Figure["value"]): boolean {
  if (!against || value === null) return false;
  const isMoney = measures[measure].unit === "money";
  return isWithin(against.dimension, Number(value) * (isMoney ? 1 : 100), Number(against.values[0]));
}

/** Pieces one by one, the longest here first, with what matters of their state: deposit, list price or cost. */
function pieceRows(desk: Desk, subjects: readonly Subject[], counted: Query["counted"]): Figure[] {
  return (
    subjects
      // What came back in the same days was not sold after all.
      .flatMap(({ piece, units }) => (piece && units > 0 ? [piece] : []))
      .sort((a, b) => a.number - b.number)
      .map((piece) => ({
        label: pieceLabel(piece),
        number: piece.number,
        value: counted === "sold" ? salePriceOf(desk.books, desk.index, piece) : stateValue(piece, counted),
      }))
  );
}

function stateValue(piece: Readonly<Piece>, counted: Query["counted"]): number | null {
  if (counted === "held") return piece.deposit;
  if (counted === "on the market") return piece.listPrice;
  if (counted === "owing") return piece.owed;
  return costOf(piece);
}

/** A figure of single pieces that none of them has (yet) is not zero: it is none. */
function isOfOne({ measure, filters, order, by, ofOne }: Query): boolean {
  const named = ofOne || filters.some(({ dimension, not }) => dimension === "piece" && !not);
  return named && !order && !by && /^(?:profit|hourly|asking|margin|return on cost)$/.test(measure);
}

/** One row a label, unordered. */
function rowsOf(desk: Desk, query: Query, subjects: readonly Subject[], by: Grouping): Figure[] {
  const measure = measures[query.measure];
  const { label } = groupings[by];
  const parts = new Map<string, Subject[]>();
  for (const subject of subjects) {
    const name = label(subject, desk, query.measure) ?? UNKNOWN;
    const part = parts.get(name);
    if (part) part.push(subject);
    else parts.set(name, [subject]);
  }
  const span = measure.mean || measure.of ? null : spanOf(query.period, desk);
  for (const name of span && isTime(by) ? labelsBetween(by, span.from, span.to) : [])
    if (!parts.has(name)) parts.set(name, []);
  if (by === "piece") parts.delete(UNKNOWN);
  const rows = [...parts].map(([name, part]) => figureOf(desk, query, by, name, part));
  // A kind of which none has sold has no mean.
  return query.aggregate === null || isTime(by) ? rows : rows.filter(({ value }) => value !== null);
}

function figureOf(desk: Desk, query: Query, by: Grouping, name: string, part: readonly Subject[]): Figure {
  const value =
    part.length === 0 && query.aggregate === null
      ? zeroOf(query)
      : figureValue(query, measures[query.measure], part);
  const piece = by === "piece" ? desk.books.pieces.get(Number(name)) : undefined;
  if (piece) return { label: pieceLabel(piece), number: piece.number, value, over: part.length };
  return { label: name, value, over: part.length };
}

function zeroOf(query: Query): number | string {
  return query.measure === "miles" ? "0" : 0;
}

const numeric = (value: Figure["value"]): number =>
  value === null ? Number.NEGATIVE_INFINITY : Number(value);

/** Rows in the order of time, or the largest first. */
function arranged(rows: Figure[], by: Grouping): Figure[] {
  if (isTime(by)) return rows.sort((a, b) => (a.label < b.label ? -1 : 1));
  return rows.sort((a, b) => numeric(b.value) - numeric(a.value) || compareLabels(a, b));
}

function compareLabels(a: Figure, b: Figure): number {
  if (a.number !== undefined && b.number !== undefined) return a.number - b.number;
  return a.label < b.label ? -1 : a.label > b.label ? 1 : 0;
}

function ordered(rows: readonly Figure[], { order }: Query): Figure[] {
  const known = rows.filter(({ value, label }) => value !== null && !(order!.known && label === UNKNOWN));
  const turn = order!.first === "most" ? 1 : -1;
  known.sort((a, b) => turn * (numeric(b.value) - numeric(a.value)) || compareLabels(a, b));
  const { top, skip } = order!;
  if (skip !== undefined) return known.slice(skip, skip + 1);
  return top === null ? known : known.slice(0, top);
}

/** Both sides one by one, and the first less the second. */
function runBeside(desk: Desk, query: Query): Result {
  const sides = query.beside.map((side) => ({ side, result: runQuery(desk, sideQuery(query, side)) }));
  const rows = sides.map(({ side, result }) => ({
    label: side.label,
    value: result.value,
    over: result.over,
  }));
  const [first, second] = rows;
  const pieces = sides.reduce((sum, { result }) => sum + result.pieces, 0);
  const over = sides.reduce((sum, { result }) => sum + result.over, 0);
  if (query.summed) return { ...joinedOf(desk, query, rows), over, pieces };
  const isTwo = rows.length === 2 && first?.value !== null && second?.value !== null;
  if (!isTwo) return { value: null, rows, over, pieces };
  const value =
    query.measure === "miles"
      ? new Decimal(first!.value!).minus(second!.value!).toString()
      : Number(first!.value) - Number(second!.value);
  return { value, rows, over, pieces };
}

/** Stretches of time taken together: their sum, or the mean of all that is in them. */
function joinedOf(desk: Desk, query: Query, rows: readonly Figure[]): Pick<Result, "value" | "rows"> {
  if (query.aggregate === null)
    return { value: rows.reduce((sum, { value }) => sum + numeric(value), 0), rows: [...rows] };
  const sides = query.beside.map((side) => sideQuery(query, side));
  if (query.aggregate === "rate") {
    const each = sides.flatMap((side) => runQuery(desk, side).rows ?? []);
    return meanOfRows(query, each);
  }
  const all = sides.flatMap((side) => subjectsOf(desk, side));
  return { value: figureValue(query, measures[query.measure], all), rows: [...rows] };
}

function sideQuery(query: Query, side: Side): Query {
  return {
    ...query,
    beside: [],
    filters: [...query.filters, ...side.filters],
    period: side.period ?? query.period,
    order: null,
  };
}
