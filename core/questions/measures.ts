import { costOf, profitOf } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import { anHour } from "../money.ts";
import type { Desk, Subject } from "./desk.ts";
import type { Narrower } from "./phrases.ts";
import type { MeasureName, Query, Unit } from "./query.ts";
import {
  countSubjects,
  daysListedOf,
  fromJournal,
  goneBy,
  inStock,
  meanOf,
  milesOf,
  netSubjects,
  ofPieces,
  proceedsOf,
  profitSubject,
  reachedOf,
  sumOf,
} from "./subjects.ts";

/** One measure: what it is taken of, how single values make one, and what its words bear. */
export interface Measure {
  unit: Unit;
  /** What it is in a first line: "Profit". */
  title: string;
  /** How a button asks for it. */
  asked: string;
  /** Every subject in the query's period, filters not yet applied. */
  subjects(desk: Desk, query: Query): Subject[];
  /** The one value of several subjects; null where none can be told. */
  combine(subjects: readonly Subject[]): number | string | null;
  /** What can narrow it, likeliest first; the rest by pieces. */
  narrowedBy?: readonly Narrower[];
  /** The states that it says of its pieces by itself. */
  implies?: readonly string[];
  /** As things stand on the last day of the period, not what happened in it. */
  stock?: true;
  /** Single values are days or shares: several make a mean. */
  mean?: true;
  /** It adds up over time: so much a month. */
  adds?: true;
  /** It is of what came of a piece: a day of its life may narrow it. */
  ofLives?: true;
  /** It is taken of notes, and told of so many of them. */
  byNotes?: true;
  /** Its units are whole things: an amount is held against them in hundredths, as it was read. */
  whole?: true;
  /** Its method of payment is the sale's, for all others the note's own. */
  bySale?: true;
  /** The best is the least of it. */
  lessIsBetter?: true;
  /** Its averages are over sold pieces. */
  overSold?: true;
}

const money = { unit: "money", combine: sumOf } as const;

/** One entry for each thing that can be measured. */
export const measures: Readonly<Record<MeasureName, Measure>> = {
  profit: {
    ...money,
    title: "Profit",
    asked: "profit",
    ofLives: true,
    adds: true,
    bySale: true,
    overSold: true,
    subjects: ofPieces(profitSubject),
  },
  net: {
    ...money,
    title: "Made",
    asked: "net profit",
    implies: ["sold", "finished", "listed"],
    ofLives: true,
    adds: true,
    subjects: netSubjects,
  },
  proceeds: {
    ...money,
    title: "Brought in",
    asked: "revenue",
    implies: ["sold", "listed"],
    ofLives: true,
    bySale: true,
    overSold: true,
    subjects: fromJournal("proceeds"),
  },
  price: {
    ...money,
    title: "Paid for pieces",
    asked: "purchase price",
    lessIsBetter: true,
    narrowedBy: ["kind", "trait", "source", "method", "person", "place", "buyer"],
    implies: ["listed", "finished"],
    subjects: ofPieces((piece, { index }) => ({
      day: piece.bought,
      units: piece.price,
      fact: index.of(piece.number).buy,
    })),
  },
  cost: {
    ...money,
    title: "Cost",
    asked: "total cost",
    lessIsBetter: true,
    subjects: ofPieces((piece, { index }) => ({
      day: piece.bought,
      units: costOf(piece),
      fact: index.of(piece.number).buy,
    })),
  },
  spent: {
    ...money,
    title: "Spent",
    asked: "spent",
    lessIsBetter: true,
    narrowedBy: ["category", "what", "kind", "trait", "method", "source", "person", "place", "buyer"],
    adds: true,
    byNotes: true,
    subjects: fromJournal("spent"),
  },
  fees: {
    ...money,
    title: "Fees",
    asked: "fees",
    lessIsBetter: true,
    narrowedBy: ["kind", "trait", "source", "method", "buyer", "person", "place"],
    implies: ["sold", "listed"],
    ofLives: true,
    adds: true,
    byNotes: true,
    subjects: fromJournal("fees"),
  },
  miles: {
    unit: "miles",
    title: "Miles",
    asked: "miles",
    narrowedBy: ["kind", "trait", "source", "person", "buyer", "place"],
    adds: true,
    byNotes: true,
    subjects: fromJournal("miles"),
    combine: milesOf,
  },
  minutes: {
    unit: "minutes",
    title: "Time",
    asked: "hours",
    narrowedBy: ["kind", "trait", "source", "person", "buyer", "place"],
    ofLives: true,
    adds: true,
    byNotes: true,
    whole: true,
    subjects: fromJournal("minutes"),
    combine: sumOf,
  },
  income: {
    ...money,
    title: "Other income",
    asked: "other income",
    narrowedBy: ["stream", "method", "person"],
    implies: ["sold"],
    adds: true,
    byNotes: true,
    subjects: fromJournal("income"),
  },
  paid: {
    ...money,
    title: "Paid to loans",
    asked: "loan payments",
    narrowedBy: ["loan", "person"],
    adds: true,
    byNotes: true,
    subjects: fromJournal("paid"),
  },
  interest: {
    ...money,
    title: "Interest paid",
    asked: "interest",
    lessIsBetter: true,
    narrowedBy: ["loan"],
    adds: true,
    byNotes: true,
    subjects: fromJournal("interest"),
  },
  count: {
    unit: "count",
    title: "Pieces",
    asked: "how many",
    ofLives: true,
    adds: true,
    subjects: countSubjects,
    combine: sumOf,
  },
  "tied up": {
    ...money,
    title: "Tied up",
    asked: "tied up",
    narrowedBy: ["kind", "trait", "source", "person", "place"],
    implies: ["unsold", "listed"],
    stock: true,
    subjects: inStock((piece) => (piece.gone ? null : costOf(piece))),
  },
  asking: {
    ...money,
    title: "Asking",
    asked: "asking price",
    narrowedBy: ["kind", "trait", "source", "person", "place"],
    implies: ["unsold", "listed"],
    stock: true,
    subjects: inStock((piece) => (piece.gone || piece.listed === null ? null : piece.listPrice)),
  },
  deposits: {
    ...money,
    title: "Deposits held",
    asked: "deposits",
    implies: ["held", "unsold"],
    stock: true,
    subjects: inStock((piece) => (piece.deposit > 0 ? piece.deposit : null)),
  },
  owed: {
    ...money,
    title: "Owed by buyers",
    asked: "owed to me",
    implies: ["sold", "unsold"],
    stock: true,
    subjects: inStock((piece) => {
      const owed = piece.owed;
      return owed > 0 ? owed : null;
    }),
  },
  "days to sell": {
    unit: "days",
    title: "Days to sell",
    asked: "days to sell",
    lessIsBetter: true,
    implies: ["sold", "held", "unsold", "finished", "listed"],
    ofLives: true,
    whole: true,
    bySale: true,
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
    asked: "days listed",
    lessIsBetter: true,
    implies: ["listed"],
    whole: true,
    mean: true,
    combine: meanOf,
    subjects: ofPieces(daysListedOf),
  },
  "days here": {
    unit: "days",
    title: "Days here",
    asked: "days here",
    lessIsBetter: true,
    implies: ["unsold", "listed", "finished"],
    stock: true,
    mean: true,
    whole: true,
    combine: meanOf,
    subjects: ofPieces((piece, { index, today }) => ({
      day: piece.gone ? null : piece.bought,
      units: daysBetween(piece.bought, today),
      fact: index.of(piece.number).buy,
    })),
  },
  refunds: {
    ...money,
    title: "Refunded",
    asked: "refunds",
    lessIsBetter: true,
    byNotes: true,
    bySale: true,
    adds: true,
    subjects: (desk, query) => proceedsOf(desk, query, "refund"),
  },
  "deposits kept": {
    ...money,
    title: "Deposits kept",
    asked: "kept deposits",
    byNotes: true,
    adds: true,
    subjects: (desk, query) => proceedsOf(desk, query, "fallthrough"),
  },
  hourly: {
    unit: "money",
    title: "An hour",
    asked: "hourly",
    implies: ["sold"],
    ofLives: true,
    bySale: true,
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
    asked: "percent of asking",
    implies: ["sold", "listed"],
    ofLives: true,
    whole: true,
    bySale: true,
    mean: true,
    combine: meanOf,
    subjects: ofPieces(reachedOf),
  },
  "come down": {
    unit: "percent",
    title: "Come down from the first list price",
    asked: "come down",
    lessIsBetter: true,
    implies: ["sold", "listed"],
    ofLives: true,
    whole: true,
    bySale: true,
    mean: true,
    combine: (subjects) => {
      const reached = meanOf(subjects);
      return reached === null ? null : 100 - reached;
    },
    subjects: ofPieces(reachedOf),
  },
};
