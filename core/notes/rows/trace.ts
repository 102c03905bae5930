import type { Row } from "./row.ts";

/** One step of a reading, for `read --why`: a row that fired, or a clause as its tokens stand. */
export interface Trace {
  table: string;
  row?: Row<string>;
  words: string;
}
