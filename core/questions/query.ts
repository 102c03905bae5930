import type { Day } from "../calendar.ts";

/** A stretch of days, both counted; null at an end that is open. */
export interface Period {
  from: Day | null;
  to: Day | null;
  /** As a person says it: "August", "last 30 days". */
  name: string;
  /** Its last day is meant: "at the end of june". */
  moment?: true;
}

/** What a filter looks at. */
export type Dimension =
  | "piece"
  | "kind"
  | "trait"
  | "lot"
  | "source"
  | "buyer"
  | "method"
  | "place"
  | "person"
  | "what"
  | "category"
  | "stream"
  | "loan"
  | "status"
  | "shop"
  | "bought on"
  | "started on"
  | "sold on"
  | "finished on"
  | "listed on"
  | "bought by"
  | "weekday"
  | "over"
  | "under"
  | "least"
  | "most"
  | "exactly";

/** What an amount may be held against beside the measure: the piece's prices, what came of it, hours, days, miles, the share of the first list price. */
export type LimitOf =
  | "price"
  | "cost"
  | "proceeds"
  | "asking"
  | "profit"
  | "minutes"
  | "days"
  | "days listed"
  | "miles"
  | "hourly"
  | "reached";

/** A narrowing of the question: one of `values` must hold, or none of them where `not`. */
export interface Filter {
  dimension: Dimension;
  values: readonly string[];
  not?: true;
  /** Of a limit: what the amount is held against, where it is not the measure asked for. */
  of?: LimitOf;
  /** Of the days of something done: the period as said. */
  name?: string;
}

export type Grouping =
  | "day"
  | "weekday"
  | "week"
  | "month"
  | "quarter"
  | "year"
  | "kind"
  | "source"
  | "person"
  | "buyer"
  | "method"
  | "stream"
  | "category"
  | "what"
  | "place"
  | "loan"
  | "piece";

export type MeasureName =
  | "profit"
  | "net"
  | "proceeds"
  | "price"
  | "cost"
  | "spent"
  | "fees"
  | "miles"
  | "minutes"
  | "income"
  | "paid"
  | "interest"
  | "principal"
  | "count"
  | "tied up"
  | "asking"
  | "deposits"
  | "owed"
  | "days to sell"
  | "days listed"
  | "days here"
  | "days between"
  | "refunds"
  | "price cuts"
  | "deposits kept"
  | "received"
  | "hourly"
  | "margin"
  | "return on cost"
  | "reached"
  | "come down";

/** Something done to a piece that has a day. */
export type LapseEnd = "bought" | "started" | "finished" | "listed" | "sold";

/** Two of them, between which days are counted. */
export interface Lapse {
  from: LapseEnd;
  to: LapseEnd;
}

/** What `count` counts. */
export type Counted =
  | "bought"
  | "sold"
  | "finished"
  | "listed"
  | "unsold"
  | "started"
  | "held"
  | "unlisted"
  | "not listed"
  | "unfinished"
  | "unstarted"
  | "in progress"
  | "done"
  | "on the market"
  | "owing"
  | "kept"
  | "given"
  | "scrapped"
  | "returned"
  | "gone"
  | "notes";

/** `rate`: what comes on average in each of the months, weeks … that rows go by. */
export type Aggregate = "average" | "median" | "rate";

/** What is put in order, and which end comes first; `top`: only so many. */
export interface Order {
  of: Grouping;
  first: "most" | "least";
  top: number | null;
  /** "Second best": so many stand before it, and it alone is meant. */
  skip?: number;
  /** Only what is known: "who spent the most". */
  known?: true;
}

/** One side of a comparison: what it alone has. */
export interface Side {
  filters: readonly Filter[];
  period: Period | null;
  label: string;
}

/** A question as data: everything that its words said, and nothing that they did not. */
export interface Query {
  measure: MeasureName;
  counted: Counted | null;
  aggregate: Aggregate | null;
  filters: readonly Filter[];
  period: Period | null;
  by: Grouping | null;
  order: Order | null;
  /** Two or more sides, answered one by one with the difference of the first two. */
  beside: readonly Side[];
  /** "In may and august": the sides are summed, and not held against each other. */
  summed?: true;
  /** Net with other income taken in. */
  withIncome: boolean;
  /** What pieces were bought for is taken in: "spent in july, furniture included". */
  withBuying?: true;
  /** Between which deeds the days are. */
  lapse?: Lapse;
  /** What each of the pieces sold for, whatever was given back: "what did #4 sell for". */
  salePrice?: true;
  /** Narrowed to one piece by its name: "profit on the hutch". */
  ofOne?: true;
  /** Answered with yes or no before the figure. */
  yesNo: boolean;
  /** "Am i up or down": of two sides, whether the first is more. */
  asksWay?: true;
  /** Whether it was lost, or less than another, is asked: yes where the figure is below nothing. */
  asksLess: boolean;
  /** Rows of pieces rather than one figure ("what's on hold"). */
  list: boolean;
  /** A picture of the rows was asked for. */
  picture: boolean;
  /** An amount that the whole is held against, or each row: "did i make over 5000", "which months made over 800". */
  against?: Filter;
  /** Whether it is so in all of the rows: "did i make money every month". */
  every?: true;
  /** How many rows there are is asked: "how many months did i lose money". */
  tally?: true;
  /** Whether this one stands first is asked: "is storage my biggest cost". */
  isFirst?: Filter | Period;
  /** So much for each mile driven meanwhile. */
  perMile?: true;
  /** The share of the whole that these make is asked for, in percent. */
  share?: readonly Filter[];
}

/** Which pieces are in a state, or how many: a query that asks nothing else of them. */
export const piecesCounted = (
  of: Pick<Query, "counted" | "filters" | "period" | "yesNo" | "list">,
): Query => ({
  measure: "count",
  aggregate: null,
  by: null,
  order: null,
  beside: [],
  withIncome: false,
  asksLess: false,
  picture: false,
  ...of,
});

/** How the units of a measure are told. */
export type Unit = "money" | "count" | "miles" | "minutes" | "days" | "percent";

/** One row of an answer. `value` in the measure's unit; miles as text. */
export interface Figure {
  label: string;
  number?: number;
  value: number | string | null;
  /** How many things went into it. */
  over?: number;
}
