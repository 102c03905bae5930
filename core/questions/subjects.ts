import { Decimal } from "decimal.js";
import type { Piece } from "../books/books.ts";
import type { Fact } from "../books/facts.ts";
import { profitOf, statusOf } from "../books/piece.ts";
import { type Day, daysBetween } from "../calendar.ts";
import { roundHalfUp, WideDecimal } from "../money.ts";
import { type Desk, deskOn, isIn, type Subject } from "./desk.ts";
import { entriesIn, type Journal, salePriceOf } from "./ledger-index.ts";
import type { Counted, Figure, Period, Query } from "./query.ts";

/*
 * What measures are taken of, filters not yet applied, and how single values make one.
 */

type Maker = (desk: Desk, query: Query) => Subject[];

export function sumOf(subjects: readonly Subject[]): number {
  let sum = 0;
  for (const { units } of subjects) sum += units;
  return sum;
}

/** What they are measured by, all of it: "an hour", "in percent of sales". */
export function perOf(subjects: readonly Subject[]): number {
  return subjects.reduce((sum, { per = 0 }) => sum + per, 0);
}

/** A part in whole percent; null where there is nothing that it is a part of. */
export function percentOf(part: Figure["value"], whole: Figure["value"]): number | null {
  const of = Number(whole ?? 0);
  return of > 0 ? roundHalfUp(new Decimal(Number(part ?? 0)).times(100).div(of)) : null;
}

export function meanOf(subjects: readonly Subject[]): number | null {
  if (subjects.length === 0) return null;
  return roundHalfUp(new Decimal(sumOf(subjects)).div(subjects.length));
}

export function fromJournal(journal: Journal): Maker {
  return ({ books, index }, { period }) =>
    entriesIn(index.journals[journal], period?.from ?? null, period?.to ?? null).map(
      ({ fact, day, piece, units, miles, loan, payer }) => ({
        fact,
        day,
        piece: piece === null ? null : (books.pieces.get(piece) ?? null),
        units,
        ...(miles === undefined ? {} : { miles }),
        ...(loan === undefined ? {} : { loan }),
        ...(payer === undefined ? {} : { payer }),
      }),
    );
}

/** The pieces that may be meant: where they are named by number, only those are looked at. */
function piecesFor({ books }: Desk, { filters }: Query): Iterable<Readonly<Piece>> {
  const named = filters.find(({ dimension, not }) => dimension === "piece" && !not);
  if (!named) return books.pieces.values();
  return named.values.flatMap((value) => books.pieces.get(Number(value)) ?? []);
}

/** Subjects of single pieces, where `of` gives a day and a value. */
export function ofPieces(
  of: (
    piece: Readonly<Piece>,
    desk: Desk,
  ) => { day: string | null; units: number | null; fact?: Fact | null; per?: number },
): Maker {
  return (desk, query) => {
    const { period } = query;
    const subjects: Subject[] = [];
    for (const piece of piecesFor(desk, query)) {
      const { day, units, fact = null, per } = of(piece, desk);
      if (day === null || units === null || !isIn(period, day)) continue;
      subjects.push({ day, piece, fact, units, ...(per === undefined ? {} : { per }) });
    }
    return subjects;
  };
}

/** What each piece was bought for. */
export const pricesPaid: Maker = ofPieces(({ number, bought, price }, { index }) => ({
  day: bought,
  units: price,
  fact: index.of(number).buy,
}));

/** The fact by which a piece went. */
export function goneBy(piece: Readonly<Piece>, desk: Desk): Fact | null {
  if (piece.gone === "sold") return desk.index.of(piece.number).sell;
  return null;
}

export function profitSubject(piece: Readonly<Piece>, desk: Desk) {
  return { day: piece.goneOn, units: profitOf(piece), fact: goneBy(piece, desk) };
}

/** All pieces as they stand on the last day of the period, each under the day since when it is so: of its buying where that is not said. */
export function inStock(
  of: (piece: Readonly<Piece>, desk: Desk) => number | null,
  since: (piece: Readonly<Piece>) => Day = ({ bought }) => bought,
): Maker {
  return (desk, query) => {
    const then = deskOn(desk, query.period?.to ?? null);
    const subjects: Subject[] = [];
    for (const piece of piecesFor(then, query)) {
      const units = of(piece, then);
      if (units === null) continue;
      subjects.push({ day: since(piece), piece, fact: then.index.of(piece.number).buy, units });
    }
    return subjects;
  };
}

/** What a sold piece's sale price is of what it was first listed at, in percent. */
export function reachedOf(piece: Readonly<Piece>, desk: Desk) {
  const sold = salePriceOf(desk.books, desk.index, piece);
  const asked = piece.firstListPrice;
  const units = sold === null || !asked ? null : new Decimal(sold).times(100).div(asked).toNumber();
  return { day: piece.sold, units, fact: goneBy(piece, desk) };
}

export function daysListedOf(piece: Readonly<Piece>, desk: Desk) {
  const since = desk.index.of(piece.number).listedSince;
  if (since === null || (piece.gone !== null && piece.gone !== "sold")) return { day: null, units: null };
  if (piece.sold === null && piece.listed === null) return { day: null, units: null };
  const end = piece.sold ?? desk.today;
  return { day: end, units: daysBetween(since, end), fact: desk.index.of(piece.number).list };
}

export function netSubjects(desk: Desk, query: Query): Subject[] {
  const net = fromJournal("net")(desk, query);
  return query.withIncome ? [...net, ...fromJournal("income")(desk, query)] : net;
}

export function milesOf(subjects: readonly Subject[]): string {
  const sum = subjects.reduce((total, { miles = "0" }) => total.plus(miles), new WideDecimal(0));
  return sum.toDecimalPlaces(6).toFixed();
}

/** What came in, or went back, by one kind of note, as an amount above nothing. */
export function proceedsOf(desk: Desk, query: Query, kind: "refund" | "fallthrough"): Subject[] {
  return fromJournal("proceeds")(desk, query)
    .filter(({ fact }) => fact?.kind === kind)
    .map((subject) => ({ ...subject, units: Math.abs(subject.units) }));
}

/** What each sold piece sold for: the subjects of an average, a median or the highest sale. */
export const salePrices: Maker = ofPieces((piece, desk) => ({
  day: piece.sold,
  units: salePriceOf(desk.books, desk.index, piece),
  fact: goneBy(piece, desk),
}));

/** Pieces in a state on the last day of the period. */
const STATES: Partial<Record<Counted, (piece: Readonly<Piece>) => boolean>> = {
  unsold: (piece) => !piece.gone,
  held: (piece) => !piece.gone && piece.hold !== null,
  unlisted: (piece) => statusOf(piece) === "finished",
  "not listed": (piece) => !piece.gone && piece.listed === null,
  "on the market": (piece) => !piece.gone && piece.listed !== null,
  unfinished: (piece) => !piece.gone && piece.finished === null,
  "in progress": (piece) => !piece.gone && piece.started !== null && piece.finished === null,
  done: (piece) => !piece.gone && piece.finished !== null,
  unstarted: (piece) => statusOf(piece) === "bought",
  owing: (piece) => piece.owed > 0,
};

/** Whether what is counted is a state and not something that happened. */
export function isState(counted: Counted | null): boolean {
  return counted !== null && STATES[counted] !== undefined;
}

export function countSubjects(desk: Desk, query: Query): Subject[] {
  const counted = query.counted ?? "bought";
  const state = STATES[counted];
  if (state) return inStock((piece) => (state(piece) ? 1 : null))(desk, query);
  switch (counted) {
    case "sold":
      return fromJournal("sold")(desk, query);
    case "bought":
      return ofPieces((piece, { index }) => ({
        day: piece.bought,
        units: 1,
        fact: index.of(piece.number).buy,
      }))(desk, query);
    case "finished":
      return ofPieces((piece) => ({ day: piece.finished, units: 1 }))(desk, query);
    case "started":
      return ofPieces((piece) => ({ day: piece.started, units: 1 }))(desk, query);
    case "listed":
      return listedIn(desk, query.period);
    case "returned":
      return fromJournal("sold")(desk, query)
        .filter(({ units }) => units < 0)
        .map((subject) => ({ ...subject, units: 1 }));
    case "notes":
      return desk.books.facts
        .filter((fact) => isIn(query.period, fact.day))
        .map((fact) => ({ day: fact.day, piece: null, fact, units: 1 }));
    case "gone":
      return ofPieces((piece, desk) => ({ day: piece.goneOn, units: 1, fact: goneBy(piece, desk) }))(
        desk,
        query,
      );
    default:
      return ofPieces((piece) => ({ day: piece.gone === counted ? piece.goneOn : null, units: 1 }))(
        desk,
        query,
      );
  }
}

/** Every piece that was listed in the period, once, at its first listing there. */
function listedIn(desk: Desk, period: Period | null): Subject[] {
  const subjects: Subject[] = [];
  for (const piece of desk.books.pieces.values()) {
    const listing = desk.index
      .of(piece.number)
      .prices.find(({ day, fact }) => fact.kind === "list" && isIn(period, day));
    if (listing) subjects.push({ day: listing.day, fact: listing.fact, piece, units: 1 });
  }
  return subjects;
}
