import { costOf, profitOf } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import { anHour } from "../money.ts";
import { type Measure, money } from "./measure.ts";
import type { MeasureName } from "./query.ts";
import {
  countSubjects,
  daysListedOf,
  fromJournal,
  goneBy,
  inStock,
  meanOf,
  netSubjects,
  ofPieces,
  profitSubject,
  reachedOf,
  sumOf,
} from "./subjects.ts";

/** What is taken of pieces: what came of them, what they cost, how long they take, how they stand. */
export const PIECE_MEASURES = {
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
    adds: true,
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
    subjects: inStock(
      (piece) => (piece.deposit > 0 ? piece.deposit : null),
      ({ hold, bought }) => hold?.since ?? bought,
    ),
  },
  owed: {
    ...money,
    title: "Owed by buyers",
    asked: "owed to me",
    implies: ["sold", "unsold"],
    stock: true,
    subjects: inStock(
      (piece) => {
        const owed = piece.owed;
        return owed > 0 ? owed : null;
      },
      ({ sold, bought }) => sold ?? bought,
    ),
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
    overSold: true,
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
} satisfies Partial<Record<MeasureName, Measure>>;
