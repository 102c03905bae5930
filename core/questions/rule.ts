import type { Limited } from "./parts.ts";
import type { Grouping, MeasureName } from "./query.ts";
import { type Cue, cues } from "./words/cues.ts";

/** What the question has, as far as it helps to tell its measure. */
export interface Features {
  has(...cues: readonly Cue[]): boolean;
  /** A piece is named: by number, kind or trait. */
  piece: boolean;
  number: boolean;
  /** A supply or a category of spending is named. */
  supply: boolean;
  stream: boolean;
  /** A place where pieces come from. */
  source: boolean;
  loan: boolean;
  /** "Paid off", "repaid": said of loans alone, where "put" and "sent" need one named. */
  repays: boolean;
  /** "How did the nurse pay": in which way. */
  asksWay: boolean;
  /** "Is the loan paid off", "am i debt free". */
  asksOver: boolean;
  person: boolean;
  /** Something is put in order, or rows are wanted. */
  order: boolean;
  fast: boolean;
  by: boolean;
  period: boolean;
  average: boolean;
  /** "Paid for by check": what was given for it. */
  paidFor: boolean;
  /** Nothing is asked for but a mean, and nothing narrows it. */
  onlyAverage: boolean;
  /** "on pieces", "in furniture": pieces in general are what the money is about. */
  onPieces: boolean;
  /** "in the hutch". */
  inPiece: boolean;
  generic: boolean;
  /** "over 100". */
  limit: boolean;
  /** "for over 100". */
  priced: boolean;
  /** "from the student", who only ever bought. */
  fromBuyer: boolean;
  /** "Off the estate sale stuff". */
  fromSource: boolean;
  /** The verb behind "who": "sold" in "who sold the hutch". */
  whoDid: string;
  /** "where is it", "where did it go". */
  whereabouts: boolean;
  /** It opens with the order to show something. */
  commands: boolean;
  /** Where pieces are listed is named. */
  place: boolean;
  /** How it was paid is named: "cash". */
  method: boolean;
  /** Whom we sold to, or whom or where we bought from, is asked: what rows go by. */
  whom: "buyer" | "source" | "place" | null;
  /** Nothing is said but a stretch of time, and perhaps what rows go by. */
  wordless: boolean;
  /** "Best" and "worst", by what came of it. */
  ranks: boolean;
  /** "How much is the hutch". */
  isPriced: boolean;
  /** "How much was the hutch": what was paid for it. */
  wasPriced: boolean;
  /** Nothing is asked but how much. */
  plain: boolean;
  /** Nothing is asked but all that was made, other income in it. */
  plainNet: boolean;
  /** "Pieces sold per month on average": so many. */
  countsRate: boolean;
  /** "How many have i had": ever. */
  everHad: boolean;
  /** "More pieces from yard sales": how many. */
  morePieces: boolean;
  /** "Everyone". */
  everyone: boolean;
  /** "Moneywise" is all that is asked. */
  moneyWise: boolean;
  /** No word asks anything but "how many". */
  plainCues: boolean;
  /** Nothing is asked but how many of a kind. */
  plainCount: boolean;
  /** Nothing is asked but which things there are. */
  bare: boolean;
  /** The amount is of one of these: "over 5 hours". */
  unit(...units: readonly NonNullable<Limited["unit"]>[]): boolean;
  /** One who buys does it: "what did the student pay". */
  acting: boolean;
  /** Things are wanted one by one: "which pieces", "what sold". */
  lists: boolean;
  /** "How many months", "how many different buyers": the rows are counted. */
  tally: boolean;
  /** It opens with what was done: "sold to the teacher". */
  opens: boolean;
  /** "The most expensive", "the cheapest". */
  pricey: boolean;
  /** "Has the nurse paid", "did the doctor pay in full". */
  settles: boolean;
  /** "Fixing", "refinishing": what was spent on it, and not for it. */
  fixes: boolean;
  /** "What did i pay for it": money of ours. */
  payingOut: boolean;
  /** "The cheapest buy". */
  isBuy: boolean;
  /** "The highest" or "lowest" of things, and no stretch of time. */
  topped: boolean;
  /** As it stands: "now", "currently". */
  now: boolean;
  /** "Finished #46": a note, and no question. */
  told: boolean;
  /** "The oldest". */
  oldest: boolean;
  /** "The longest". */
  longest: boolean;
  /** "whats the hutch at". */
  endsAt: boolean;
  /** Someone who buys is named with no word before: "what has the coworker spent". */
  buyer: boolean;
  /** One period, or one sort of piece, beside another. */
  beside: boolean;
  /** "The most pieces": how many is put in order. */
  mostOf: boolean;
  /** "How long does a chair sit": of chairs in general. */
  habit: boolean;
  /** It opens like a question that is answered with yes or no. */
  yesNo: boolean;
  /** Rows or an order by one of these. */
  groups(...groups: readonly Grouping[]): boolean;
}

/** One way to ask for a measure: when it is that, and the cues that it takes up. */
export interface Rule {
  measure: MeasureName;
  when(f: Features): boolean;
  takes: readonly Cue[];
  /** A row for each piece. */
  list?: true;
  /** How many rows there are. */
  tally?: true;
}

/** Words for any figure. */
export const MUCH: readonly Cue[] = ["money", "total", "average", "median", "have", "which", "list"];
/** Words for a sale. */
export const SALES: readonly Cue[] = ["sold", "sale", "soldFor", "gone"];
/** What is counted where nothing else is asked of it: "pieces sold in july". */
export const HAPPENED: readonly Cue[] = cues(
  "sold bought finished started listed returned unsold held kept given scrapped",
);
