import type { Desk } from "./desk.ts";
import type { Narrowing } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Counted, MeasureName } from "./query.ts";
import type { Features } from "./rule.ts";
import type { Cue } from "./words/cues.ts";

/** A question whose measure is known, on its way to a query. */
export interface Reading {
  parts: Parts;
  f: Features;
  desk: Desk;
  measure: MeasureName;
  counted: Counted | null;
  /** The cues that the measure takes up. */
  taken: readonly Cue[];
  /** What its items narrow it by. */
  found: readonly Narrowing[];
  /** Its pieces are wanted one by one. */
  list: boolean;
  /** How many rows there are is asked. */
  tally: boolean;
}
