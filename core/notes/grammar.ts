import type { Kind } from "./reading.ts";

/** The reading half of a verb: its words and slots. Shape owned by the reader. */
export interface Grammar<K extends Kind> {
  kind?: K;
}

/** The words that ask a question; part of the answer's own file. Shape owned by the reader. */
export interface QuestionGrammar {
  phrases?: readonly string[];
}
