import type { Books } from "../books/books.ts";
import type { Day } from "../calendar.ts";
import type { QuestionGrammar } from "../notes/grammar.ts";
import type { ReadingOf } from "../notes/reading.ts";
import type { Reply } from "../reply.ts";

/** What an answer may look at. Pure data: the same question on the same books gives the same words. */
export interface Asked {
  question: ReadingOf<"ask">;
  books: Books;
  /** The day of the asking: interest, "so far" and ages run to it. */
  today: Day;
  /** ISO 4217 code; the US tax answers speak only for "USD". */
  currency: string;
  /** The pieces meant, where the question names any (already matched to the books), by number. */
  pieces: readonly number[];
  /** Cents a mile that the owner set for years the table does not know, by year, as plain decimals. */
  mileageRates: Readonly<Record<string, string>>;
}

/** An answer fits a phone screen; `pictures` asks the shell to send the pictures of these pieces along. */
export interface Answer extends Reply {
  pictures?: readonly number[];
  /** Asks the shell to send the month's picture along. */
  monthPicture?: string;
}

/** One file of this folder for each question. */
interface AnswerRule {
  about: ReadingOf<"ask">["about"];
  /** A note that asks it, for help and the tests. */
  example: string;
  /** The words that ask it. */
  asks: QuestionGrammar;
  answer(asked: Asked): Answer;
}

/** Keeps an answer's own name while checking its shape. */
export function defineAnswer(rule: AnswerRule): AnswerRule {
  return rule;
}
