import type { Kind } from "./reading.ts";

/** The reading half of a verb: its words and slots. Shape owned by the reader. */
export interface Grammar<K extends Kind> {
  kind?: K;
}
