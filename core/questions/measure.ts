import type { Desk, Subject } from "./desk.ts";
import type { Narrower } from "./phrases.ts";
import type { Query, Unit } from "./query.ts";
import { sumOf } from "./subjects.ts";

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
  /** Of a quotient in percent: what its subjects' `per` is, in words. */
  of?: string;
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

/** What is told in money and adds up. */
export const money = { unit: "money", combine: sumOf } as const;
