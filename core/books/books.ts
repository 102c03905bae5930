import type { Day, Month } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Category, DaysInYear, PaymentOrder, RetireHow } from "../notes/reading.ts";
import type { Fact } from "./facts.ts";
import type { Posting } from "./postings.ts";

/** The furthest that stands: gone (sold, kept, given, scrapped), else held, listed, finished, started, bought. */
export type Status = "bought" | "started" | "finished" | "listed" | "held" | "sold" | RetireHow;

export interface Hold {
  since: Day;
  buyer: string | null;
  until: Day | null;
  /** Its share of the price that was agreed on with the buyer. */
  agreed: Cents | null;
}

/** A physical piece as the facts leave it. Cents; days local; null: not (yet) so. */
export interface Piece {
  number: number;
  name: string;
  traits: readonly string[];
  /** The number of its lot's or set's first piece; null for a piece bought alone. */
  lot: number | null;
  /** Its lot is a set: kept and priced together unless sold apart. */
  set: boolean;
  source: string | null;
  bought: Day;
  started: Day | null;
  finished: Day | null;
  listed: Day | null;
  listPrice: Cents | null;
  /** Of the first listing ever, for "share of the first list price". */
  firstListPrice: Cents | null;
  firstListed: Day | null;
  hold: Hold | null;
  sold: Day | null;
  gone: "sold" | RetireHow | null;
  goneOn: Day | null;
  /** Its share of the price paid. */
  price: Cents;
  /** All other spending on it but selling fees. */
  materials: Cents;
  fees: Cents;
  /** Held on it now. */
  deposit: Cents;
  depositsKept: Cents;
  /** What its buyer still owes of the price. */
  owed: Cents;
  sales: Cents;
  refunds: Cents;
  minutes: number;
  /** A plain decimal; may be a fraction such as "6.1666666667" after a split. */
  miles: string;
}

/** A loan after its last posting. Interest since then is `accruedOn` of loan.ts. */
export interface Loan {
  name: string;
  opened: Day;
  /** Yearly percent in force, a plain decimal. */
  rate: string;
  rateUnknown: boolean;
  days: DaysInYear;
  principal: Cents;
  /** Interest due at the last posting and not paid: whole cents, does not itself earn interest. */
  accrued: Cents;
  /** The day of the last posting: interest runs from here. */
  since: Day;
  /** Stretches since the last posting, oldest first, each at its own rate (a change of terms starts one). */
  stretches: readonly { from: Day; rate: string; days: DaysInYear }[];
  paid: Cents;
  interestPaid: Cents;
}

/** A month's sums as posted. The rest of its row follows from them (month.ts). */
export interface MonthSums {
  flipped: number;
  proceeds: Cents;
  costOfSold: Cents;
  fees: Cents;
  overhead: Cents;
  writtenOff: Cents;
  otherIncome: Cents;
  paidToLoan: Cents;
  /** Profit declared as already sent to the loan. */
  declaredSent: Cents;
  /** How much more buyers owe at its end than at its start. */
  buyersOwe: Cents;
  cashIn: Cents;
  cashOut: Cents;
}

export interface Goal {
  day: Day;
  per: "month" | "year";
  pieces: number | null;
  amount: Cents | null;
}

/** A standing note: what is recorded by itself, on which days, at which amounts. */
export interface Standing {
  /** The place of the fact that set it up: what its instances point at. */
  place: number;
  every: "week" | "month" | "year";
  /** The day of the first instance; all others are counted from it. */
  first: Day;
  /** The day of the month that was meant, where a shorter month clipped the first one or may clip another. */
  day: number | null;
  note: RepeatedNote;
  by: string | null;
  /** Cents from a day on, in the order said: the last one said that has begun is in force. */
  amounts: readonly { from: Day; amount: Cents }[];
  /** The first day that is no more recorded. */
  stopped: Day | null;
}

/** What a standing note records each time, beside the amount. */
export type RepeatedNote =
  | { kind: "spend"; what: string; category: Category; method?: string | undefined }
  | { kind: "pay"; loan?: string | undefined }
  | { kind: "income"; stream: string; method?: string | undefined };

/** The state of the books: derived from the facts that stand and from nothing else. Read only outside `core/books`. */
export interface Books {
  /** Standing facts in fold order. */
  readonly facts: readonly Fact[];
  readonly pieces: ReadonlyMap<number, Readonly<Piece>>;
  readonly loans: ReadonlyMap<string, Readonly<Loan>>;
  /** Only months in which something was posted. */
  readonly months: ReadonlyMap<Month, Readonly<MonthSums>>;
  /** The postings of each fact that has any, by fact id. */
  readonly postings: ReadonlyMap<number, readonly Posting[]>;
  /** The ids of the facts that name a piece, by piece number, in fold order. */
  readonly story: ReadonlyMap<number, readonly number[]>;
  /** The buyers that standing facts name, each with how many do. */
  readonly buyers: ReadonlyMap<string, number>;
  readonly order: PaymentOrder;
  /** Oldest first; the latest on or before a day is in force on it. */
  readonly taxRates: readonly { day: Day; percent: string }[];
  readonly goals: readonly Goal[];
  /** Standing notes that were ever set up, by place. */
  readonly standing: ReadonlyMap<number, Readonly<Standing>>;
  /** Profit declared as already sent, by the facts of kind "sent". */
  readonly declaredSent: Cents;
}
