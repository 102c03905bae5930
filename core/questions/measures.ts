import { Decimal } from "decimal.js";
import type { Piece } from "../books/books.ts";
import type { Fact } from "../books/facts.ts";
import { costOf, profitOf, statusOf } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import { anHour, roundHalfUp, WideDecimal } from "../money.ts";
import { type Desk, deskOn, isIn, type Subject } from "./desk.ts";
import { entriesIn, type Journal, salePriceOf } from "./ledger-index.ts";
import type { Counted, MeasureName, Period, Query, Unit } from "./query.ts";

/** One measure: what it is taken of, and how single values make one. */
export interface Measure {
  unit: Unit;
  /** What it is in a first line: "Profit". */
  title: string;
  /** Every subject in the query's period, filters not yet applied. */
  subjects(desk: Desk, query: Query): Subject[];
  /** The one value of several subjects; null where none can be told. */
  combine(subjects: readonly Subject[]): number | string | null;
  /** As things stand on the last day of the period, not what happened in it. */
  stock?: true;
  /** Single values are days or shares: several make a mean. */
  mean?: true;
}

type Maker = (desk: Desk, query: Query) => Subject[];

export function sumOf(subjects: readonly Subject[]): number {
  let sum = 0;
  for (const { units } of subjects) sum += units;
  return sum;
}

function meanOf(subjects: readonly Subject[]): number | null {
  if (subjects.length === 0) return null;
  return roundHalfUp(new Decimal(sumOf(subjects)).div(subjects.length));
}

function fromJournal(journal: Journal): Maker {
  return ({ books, index }, { period }) =>
    entriesIn(index.journals[journal], period?.from ?? null, period?.to ?? null).map(
      ({ fact, day, piece, units, miles, loan }) => ({
        fact,
        day,
        piece: piece === null ? null : (books.pieces.get(piece) ?? null),
        units,
        ...(miles === undefined ? {} : { miles }),
        ...(loan === undefined ? {} : { loan }),
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
function ofPieces(
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

/** The fact by which a piece went. */
function goneBy(piece: Readonly<Piece>, desk: Desk): Fact | null {
  if (piece.gone === "sold") return desk.index.of(piece.number).sell;
  return null;
}

function profitSubject(piece: Readonly<Piece>, desk: Desk) {
  return { day: piece.goneOn, units: profitOf(piece), fact: goneBy(piece, desk) };
}

/** All pieces as they stand on the last day of the period. */
function inStock(of: (piece: Readonly<Piece>, desk: Desk) => number | null): Maker {
  return (desk, query) => {
    const then = deskOn(desk, query.period?.to ?? null);
    const subjects: Subject[] = [];
    for (const piece of piecesFor(then, query)) {
      const units = of(piece, then);
      if (units === null) continue;
      subjects.push({ day: piece.bought, piece, fact: then.index.of(piece.number).buy, units });
    }
    return subjects;
  };
}

const money = { unit: "money", combine: sumOf } as const;

/** What a sold piece's sale price is of what it was first listed at, in percent. */
function reachedOf(piece: Readonly<Piece>, desk: Desk) {
  const sold = salePriceOf(desk.books, desk.index, piece);
  const asked = piece.firstListPrice;
  const units = sold === null || !asked ? null : new Decimal(sold).times(100).div(asked).toNumber();
  return { day: piece.sold, units, fact: goneBy(piece, desk) };
}

function daysListedOf(piece: Readonly<Piece>, desk: Desk) {
  const since = desk.index.of(piece.number).listedSince;
  if (since === null || (piece.gone !== null && piece.gone !== "sold")) return { day: null, units: null };
  if (piece.sold === null && piece.listed === null) return { day: null, units: null };
  const end = piece.sold ?? desk.today;
  return { day: end, units: daysBetween(since, end), fact: desk.index.of(piece.number).list };
}

/** One entry for each thing that can be measured. */
export const measures: Readonly<Record<MeasureName, Measure>> = {
  profit: { ...money, title: "Profit", subjects: ofPieces(profitSubject) },
  net: { ...money, title: "Made", subjects: netSubjects },
  proceeds: { ...money, title: "Brought in", subjects: fromJournal("proceeds") },
  price: {
    ...money,
    title: "Paid for pieces",
    subjects: ofPieces((piece, { index }) => ({
      day: piece.bought,
      units: piece.price,
      fact: index.of(piece.number).buy,
    })),
  },
  cost: {
    ...money,
    title: "Cost",
    subjects: ofPieces((piece, { index }) => ({
      day: piece.bought,
      units: costOf(piece),
      fact: index.of(piece.number).buy,
    })),
  },
  spent: { ...money, title: "Spent", subjects: fromJournal("spent") },
  fees: { ...money, title: "Fees", subjects: fromJournal("fees") },
  miles: { unit: "miles", title: "Miles", subjects: fromJournal("miles"), combine: milesOf },
  minutes: { unit: "minutes", title: "Time", subjects: fromJournal("minutes"), combine: sumOf },
  income: { ...money, title: "Other income", subjects: fromJournal("income") },
  paid: { ...money, title: "Paid to loans", subjects: fromJournal("paid") },
  interest: { ...money, title: "Interest paid", subjects: fromJournal("interest") },
  count: { unit: "count", title: "Pieces", subjects: countSubjects, combine: sumOf },
  "tied up": {
    ...money,
    title: "Tied up",
    stock: true,
    subjects: inStock((piece) => (piece.gone ? null : costOf(piece))),
  },
  asking: {
    ...money,
    title: "Asking",
    stock: true,
    subjects: inStock((piece) => (piece.gone || piece.listed === null ? null : piece.listPrice)),
  },
  deposits: {
    ...money,
    title: "Deposits held",
    stock: true,
    subjects: inStock((piece) => (piece.deposit > 0 ? piece.deposit : null)),
  },
  owed: {
    ...money,
    title: "Owed by buyers",
    stock: true,
    subjects: inStock((piece) => {
      const owed = piece.owed;
      return owed > 0 ? owed : null;
    }),
  },
  "days to sell": {
    unit: "days",
    title: "Days to sell",
    mean: true,
    combine: meanOf,
    subjects: ofPieces((piece, desk) => ({
      day: piece.sold,
      units: piece.sold === null ? null : daysBetween(piece.bought, piece.sold),
      fact: goneBy(piece, desk),
    })),
  },
  "days listed": {
    unit: "days",
    title: "Days listed",
    mean: true,
    combine: meanOf,
    subjects: ofPieces(daysListedOf),
  },
  hourly: {
    unit: "money",
    title: "An hour",
    subjects: ofPieces((piece, desk) => ({
      ...profitSubject(piece, desk),
      units: piece.gone && piece.minutes > 0 ? profitOf(piece) : null,
      per: piece.minutes,
    })),
    combine: (subjects) => {
      const minutes = subjects.reduce((sum, { per = 0 }) => sum + per, 0);
      return anHour(sumOf(subjects), minutes);
    },
  },
  reached: {
    unit: "percent",
    title: "Reached of the first list price",
    mean: true,
    combine: meanOf,
    subjects: ofPieces(reachedOf),
  },
  "come down": {
    unit: "percent",
    title: "Come down from the first list price",
    mean: true,
    combine: (subjects) => {
      const reached = meanOf(subjects);
      return reached === null ? null : 100 - reached;
    },
    subjects: ofPieces(reachedOf),
  },
};

function netSubjects(desk: Desk, query: Query): Subject[] {
  const net = fromJournal("net")(desk, query);
  return query.withIncome ? [...net, ...fromJournal("income")(desk, query)] : net;
}

function milesOf(subjects: readonly Subject[]): string {
  const sum = subjects.reduce((total, { miles = "0" }) => total.plus(miles), new WideDecimal(0));
  return sum.toDecimalPlaces(6).toFixed();
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
  "on the market": (piece) => !piece.gone && piece.listed !== null,
  unfinished: (piece) => !piece.gone && piece.finished === null,
  owing: (piece) => piece.owed > 0,
};

/** Whether what is counted is a state and not something that happened. */
export function isState(counted: Counted | null): boolean {
  return counted !== null && STATES[counted] !== undefined;
}

function countSubjects(desk: Desk, query: Query): Subject[] {
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
    const listing = desk.index.of(piece.number).listings.find(({ day }) => isIn(period, day));
    if (listing) subjects.push({ ...listing, piece, units: 1 });
  }
  return subjects;
}
