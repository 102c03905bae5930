import type { Pattern } from "./pattern.ts";

/** A row of a table as lines look it up. */
export interface Candidate {
  /** The number of its table, and its place there. */
  table: number;
  order: number;
  pattern: Pattern;
}

/** The rows that may stand in a line: those of each table by its number, and a bit for each table that has any. */
export interface Standing {
  tables: number;
  rows: readonly (readonly Candidate[])[];
}
