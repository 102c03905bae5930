import type { Cents } from "../money.ts";
import type { Mark } from "./marks.ts";
import type { Limit, Link, OrderWord } from "./phrases.ts";
import type { Grouping, Period } from "./query.ts";
import type { Cue } from "./words/cues.ts";

/** A thing that may narrow the question: a piece, a supply, a person, a place … Which one it is, the measure decides. */
export interface Item {
  mark: Mark;
  /** Its place among the marks. */
  at: number;
  link: Link | null;
  not: boolean;
  /** One who buys and does it: "what did the student pay". */
  acting?: true;
}

/** An amount with what it is held against: `unit` where it is no money; hours are in minutes, weeks in days. */
export interface Limited {
  limit: Limit;
  cents: Cents;
  /** Its first place, and how many it takes up. */
  at: number;
  words: number;
  unit?: "count" | "minutes" | "days" | "miles" | "hourly";
}

/** A question sorted by what its marks are for. */
export interface Parts {
  marks: readonly Mark[];
  /** Each cue said, with the places where. */
  cues: ReadonlyMap<Cue, readonly number[]>;
  items: readonly Item[];
  periods: readonly { period: Period; at: number }[];
  /** `parted`: "by month"; else the group was only named ("best month"). */
  groups: readonly { group: Grouping; parted: boolean; at: number }[];
  /** `skip`: so many stand before what is meant, "second best". */
  orders: readonly { order: OrderWord; top: number | null; at: number; skip?: number }[];
  limits: readonly Limited[];
  /** Numbers that nothing has taken up. */
  amounts: readonly { cents: Cents; money: boolean; at: number }[];
  /** Where "versus" or "than" stands, and where "or" and "and" do. */
  besideAt: readonly number[];
  orAt: readonly number[];
  andAt: readonly number[];
  /** Something asks for a comparison ("which … or …"). */
  comparing: boolean;
  mine: number | null;
  /** "each chair": rows of single pieces. */
  eachItem: boolean;
  /** Where "per mile" stands: a quotient is asked for. */
  perMile: number | null;
  /** Words that only lead to a period: "over the summer". */
  leads: readonly number[];
  /** States turned round: "that werent free". */
  notCues: readonly Cue[];
  /** Words that nobody knows, and a negation that turns nothing that can be turned. */
  unknown: readonly Mark[];
  adrift: Mark | null;
  /** It opens like a question that is answered with yes or no. */
  yesNo: boolean;
  /** The first word that says something. */
  first: string;
  /** All of it, as meant. */
  said: string;
}

/** The same, while it is being filled. */
export type Building = {
  -readonly [K in keyof Parts]: Parts[K] extends readonly (infer T)[] ? T[] : Parts[K];
};

/** Whether "list" at a place is the order to do it ("list expenses", "gas list") and speaks of no listings. */
export function isOrderToList({ marks }: Parts, at: number): boolean {
  return marks[at]?.text === "list" && (at === 0 || (at === marks.length - 1 && marks.length > 1));
}

/** "do you know how much": no yes or no is wanted. */
export function asksFigure({ marks, first }: Parts): boolean {
  // "Did i list anything": what was done, where "can you list" orders it.
  const isDeed = /^(?:did|have|has|had|is|are|was|were|do|does|any|anything|anyone|anybody)$/.test(first);
  const asking =
    isDeed && !/\byou\b/.test(marks[0]?.text ?? "") && !marks.some(({ text }) => text === "know")
      ? /\b(?:how|what|whats|which)\b/
      : /\b(?:how|what|whats|which|show|list|tell|give|check|find|pull|look)\b/;
  // "Did i get many tips? total"
  return marks.some(({ text }) => asking.test(text)) || (isDeed && marks.at(-1)?.text === "total");
}

/** Where "versus" or "than" parts two things; else "or" or "and", where something asks to compare them. */
export function cutsOf({ items, periods, besideAt, orAt, andAt, comparing }: Parts): readonly number[] {
  const places = [...items, ...periods].map(({ at }) => at);
  const parting = (cuts: readonly number[]): number[] =>
    cuts.filter((cut) => places.some((at) => at < cut) && places.some((at) => at > cut));
  const beside = parting(besideAt);
  if (beside.length > 0) return beside;
  const or = comparing || besideAt.length > 0 ? parting(orAt) : [];
  if (or.length > 0) return or;
  const and = besideAt.length > 0 ? parting(andAt) : [];
  return and.length > 0 ? and : besideAt;
}
