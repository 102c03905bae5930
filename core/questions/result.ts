import type { Figure, Unit } from "./query.ts";

/** What a query comes to. */
export interface Result {
  /** The whole: the sum, the mean, the first of an order, or the difference of two sides. */
  value: number | string | null;
  rows: Figure[] | null;
  /** How many subjects, and of how many pieces. */
  over: number;
  pieces: number;
  /** Rows in another unit than the value: a list of pieces shows what each one is about. */
  rowUnit?: Unit;
  /** The value in another unit than the measure: a share, or how many rows. */
  valueUnit?: Unit;
  /** Of a share: what it is a share of, in the measure's unit. */
  shareOf?: { part: Figure["value"]; whole: Figure["value"] };
}
