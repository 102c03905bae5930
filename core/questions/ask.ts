import { answerFact, answerNotes, answerYesNo } from "./answer-pieces.ts";
import { answerSuppose } from "./answer-suppose.ts";
import { type Answered, type PrintedRow, printedValue } from "./answered.ts";
import { type Desk, type QuestionDesk, withIndex } from "./desk.ts";
import { type Mark, marksOf } from "./marks.ts";
import { measures } from "./measures.ts";
import type { Refusal } from "./narrowing.ts";
import { type Parts, partsOf } from "./parts.ts";
import type { Query } from "./query.ts";
import { featuresOf, readQuery } from "./read.ts";
import { type NotesQuestion, readLists } from "./read-lists.ts";
import { type PieceQuestion, readPieces } from "./read-pieces.ts";
import { type LoanQuestion, readSuppose } from "./read-suppose.ts";
import { runQuery } from "./run.ts";
import { vocabularyFor } from "./vocabulary.ts";
import { wordsOf } from "./words-of-answers.ts";

/** What a question turned out to be. */
type Read = Query | PieceQuestion | NotesQuestion | LoanQuestion | Refusal;

/** Answers a question in plain words, or says which word stands in the way. Pure: same words, same books, same answer. */
export function answer(text: string, on: QuestionDesk): Answered {
  const desk = withIndex(on);
  const marks = marksOf(text, vocabularyFor(desk), desk.today);
  const parts = partsOf(marks);
  const read = readQuestion(parts, desk);
  if (read === null) return refused({ kind: "refused", words: parts.unknown.map(({ typed }) => typed) });
  if (!("kind" in read)) return answerQuery(desk, read, parts);
  switch (read.kind) {
    case "fact":
      return answerFact(desk, read);
    case "yes or no":
      return answerYesNo(desk, read);
    case "notes":
      return answerNotes(desk, read);
    case "refused":
      return refused(read);
    default:
      return answerSuppose(desk, read);
  }
}

/** Single pieces first, then lists, then what can be measured. */
function readQuestion(parts: Parts, desk: Desk): Read | null {
  const f = featuresOf(parts);
  return (
    readSuppose(parts, f, desk) ??
    readPieces(parts, f, desk) ??
    readLists(parts, f, desk) ??
    readQuery(parts, desk)
  );
}

function correctedWords(marks: readonly Mark[]): string[] {
  return marks
    .filter(({ corrected, senses }) => corrected && (senses.thing !== undefined || senses.own.length > 0))
    .map(({ typed, text }) => `${typed} read as ${text}`);
}

function answerQuery(desk: Desk, query: Query, parts: Parts): Answered {
  const result = runQuery(desk, query);
  const { unit } = measures[query.measure];
  const period =
    query.period && (query.period.from !== null || query.period.to !== null) ? query.period : null;
  const rows = result.rows?.map(
    ({ label, number, value }): PrintedRow => ({
      label,
      ...(number === undefined ? {} : { number }),
      value: printedValue(value, result.rowUnit ?? unit),
    }),
  );
  return {
    understood: true,
    measure: query.measure,
    value: printedValue(result.value, unit),
    ...(rows ? { rows } : {}),
    period: period ? { from: period.from, to: period.to } : null,
    text: wordsOf(desk, query, result, correctedWords(parts.marks)),
    query,
  };
}

function refused({ words, why }: Refusal): Answered {
  if (why) return { understood: false, text: why };
  const [first] = words;
  const text = first
    ? `I don't know "${first}" here, so I'd rather not guess.`
    : "I can't tell what you ask for.";
  return { understood: false, text };
}
