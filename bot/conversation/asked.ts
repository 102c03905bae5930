import type { Reading } from "../../core/notes/reading.ts";
import type { Answered } from "../../core/questions/answered.ts";
import { answer } from "../../core/questions/ask.ts";
import type { QuestionDesk } from "../../core/questions/desk.ts";
import { soundsAsked } from "../../core/questions/sounds.ts";
import { chartBody } from "../files/bodies.ts";
import { keepWhatWasAsked, showBeside } from "./asking.ts";
import { lettered } from "./lettered.ts";
import { NOT_SHOWN, seesMoney } from "./sight.ts";
import type { Turn } from "./turn.ts";

/** What a question may look at in this turn. */
function questionDesk(turn: Turn, replyRoot?: number): QuestionDesk {
  const { ledger, today, currency, person } = turn;
  const people = ledger.members.list().map(({ id, name }) => ({ id, name }));
  const mileageRates = ledger.settings.get("mileageRates") ?? {};
  const it = spokenOf(turn, replyRoot);
  return {
    books: ledger.books,
    today,
    currency,
    people,
    me: person,
    mileageRates,
    ...(it === null ? {} : { it }),
  };
}

/** The one piece of the message replied to, else of this person's last note today; null where there is none. */
function spokenOf({ ledger, person, today }: Turn, replyRoot: number | undefined): number | null {
  const said =
    replyRoot === undefined
      ? ledger.books.facts.findLast(
          (fact) => fact.day === today && fact.author === person && fact.pieces.length > 0,
        )?.pieces
      : ledger.standingFactsOf(replyRoot).flatMap((fact) => fact.pieces);
  const pieces = new Set(said);
  return pieces.size === 1 ? [...pieces][0]! : null;
}

/** A whole note is never taken for a question; one that says too little may be, where its words ask. */
function mayAsk(reading: Reading): boolean {
  if (reading.kind === "ask" || reading.kind === "share" || reading.kind === "unclear") return true;
  // "finished it" says all that there is to say.
  const missing = reading.missing?.filter((field) => !(reading.follows && field === "pieces")) ?? [];
  const isWord = !/\s/.test(reading.text.trim());
  return !isWord && (missing.length > 0 || isYearAlone(reading.text));
}

/**
 * No words need ask here: there is no note that it may be. A share of a profit is only shown at first, and "earnings
 * to date" asks sooner than it shares.
 */
function asksByItself(reading: Reading): boolean {
  return reading.kind === "ask" || reading.kind === "share" || (reading.kind === "unclear" && !reading.could);
}

/** "fees in 2026": the one number is a year, and no amount. */
function isYearAlone(text: string): boolean {
  return (
    /\b(?:in|for|of|during) 20\d\d\b/.test(text.toLowerCase()) &&
    text.replace(/\b20\d\d\b/, "").search(/\d/) < 0
  );
}

/** Whether the answer has something to show: a figure above nothing, or rows. */
function hasFigure({ value, rows = [] }: Answered): boolean {
  return rows.length > 0 || (value != null && Number(value) !== 0);
}

/**
 * Answers a message that asks about the books, in whatever words. A question that is not understood is refused by
 * the word that stands in the way, and never answered wider. False where the message is no question.
 */
export function answerAsked(
  turn: Turn,
  text: string,
  readings: readonly Reading[],
  replyRoot?: number,
): boolean {
  if (turn.lines !== 1 || readings.length === 0) return false;
  const sounds = soundsAsked(text);
  // Most messages are whole notes: they cost no look at the questions.
  if (!readings.every(mayAsk)) return false;
  const answered = answer(text, questionDesk(turn, replyRoot));
  // Words that ask by the way, and of which the books know nothing, are rather a note.
  const isOfNothing = answered.understood && answered.measure !== undefined && !hasFigure(answered);
  const asks = sounds || (answered.understood && answered.asks === true && !isOfNothing);
  if (!asks && !readings.every(asksByItself)) return false;
  const isAsked = sounds || readings.every(({ kind }) => kind === "ask");
  // Words that make no note and have an answer in the books are a question, whatever mark is missing.
  const isTold =
    answered.understood && readings.every(({ kind }) => kind === "unclear") && hasFigure(answered);
  if (!isAsked && !asks && !isTold) return false;
  if (!answered.understood && !(isAsked && answered.words?.length)) return false;
  tell(turn, answered);
  for (const reading of readings) keepWhatWasAsked(turn, reading);
  return true;
}

/** Asks a question that a button holds. */
export function answerPressed(turn: Turn, question: string): void {
  tell(turn, answer(question, questionDesk(turn)));
}

function tell(turn: Turn, answered: Answered): void {
  if (answered.isOwners && !seesMoney(turn.ledger, turn.person)) {
    turn.spoken.push(NOT_SHOWN);
    return;
  }
  if (answered.chart) {
    // The words are the picture's caption: said once.
    turn.files.push(chartBody(answered.chart, answered.text));
    return;
  }
  const { noted = [] } = answered;
  turn.spoken.push(noted.length > 0 ? lettered(turn, answered.text, noted) : answered.text);
  showBeside(turn, answered);
}
