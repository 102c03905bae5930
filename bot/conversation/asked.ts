import { readMessage } from "../../core/notes/read.ts";
import type { Reading } from "../../core/notes/reading.ts";
import { askedApart } from "../../core/notes/second-look/cuts.ts";
import { isFor } from "../../core/notes/unclear.ts";
import type { Answered } from "../../core/questions/answered.ts";
import { answer, answersApart } from "../../core/questions/ask.ts";
import type { QuestionDesk } from "../../core/questions/desk.ts";
import { followUps, soundsFollowing } from "../../core/questions/follow-up.ts";
import {
  asksForIt,
  asksPlainly,
  asksTurned,
  asksYear,
  endsAsking,
  isYearAlone,
  opensAsking,
  opensWithAsking,
  soundsAsked,
  speaksOfIt,
} from "../../core/questions/sounds.ts";
import { ROWS_MAX } from "../../core/questions/words-of-answers.ts";
import { chartBody } from "../files/bodies.ts";
import { keepWhatWasAsked, showBeside } from "./asking.ts";
import { asksMore, keepQuestion, lastQuestion, moreButton } from "./last-question.ts";
import { lettered } from "./lettered.ts";
import { NOT_SHOWN, seesMoney } from "./sight.ts";
import { isPaidIt, spokenOf } from "./spoken.ts";
import { keepAsked } from "./talk.ts";
import type { Turn } from "./turn.ts";

/** What a question may look at in this turn. */
function questionDesk(turn: Turn, replyRoot?: number): QuestionDesk {
  const { ledger, today, currency, person } = turn;
  const people = ledger.members.list().map(({ id, name }) => ({ id, name }));
  const mileageRates = ledger.settings.get("mileageRates") ?? {};
  return {
    books: ledger.books,
    today,
    currency,
    people,
    me: person,
    mileageRates,
    spoken: spokenOf(turn, replyRoot),
  };
}

/** A whole note is never taken for a question; one that says too little may be, where its words ask. */
function mayAsk(reading: Reading): boolean {
  // "desk got picked up today" is for the books to settle.
  if (reading.kind === "unclear") return reading.byBooks !== true;
  if (reading.kind === "ask" || reading.kind === "share") return true;
  // "put the knob on, took 5 min": how long, of what was spoken of.
  if (reading.kind === "work" && reading.minutes !== undefined) return false;
  // "finished it" says all that there is to say.
  const missing = reading.missing?.filter((field) => !(reading.follows && field === "pieces")) ?? [];
  const isWord = !/\s/.test(reading.text.trim());
  return !isWord && (missing.length > 0 || isYearAlone(reading.text));
}

/** "How many of #2 and #3 are left" gives no piece another name. */
const renames = (reading: Reading): boolean =>
  reading.kind === "mend" && (reading.to?.traits ?? reading.to?.name) !== undefined;

/**
 * No words need ask here: there is no note that it may be. A share of a profit is only shown at first, and "earnings
 * to date" asks sooner than it shares.
 */
function asksByItself(reading: Reading): boolean {
  return reading.kind === "ask" || reading.kind === "share" || (reading.kind === "unclear" && !reading.could);
}

const isNumber = (text: string): boolean => /^\s*\d+\s*$/.test(text);

/** Whether the answer has something to show: a figure above nothing, or rows. */
function hasFigure({ value, rows = [] }: Answered): boolean {
  return rows.length > 0 || (value != null && Number(value) !== 0);
}

/** "Profit for the last 90 days", "notes from the 14th": no note by its own words and a figure by all of them, whatever was spoken of. */
export function asksFigure(
  turn: Turn,
  text: string,
  readings: readonly Reading[],
  settles: () => boolean,
): boolean {
  if (turn.lines !== 1 || readings.length === 0) return false;
  if (asksPlainly(text)) return readings.every(mayAsk);
  if (!readings.every((reading) => reading.kind === "unclear" && !reading.could)) return false;
  const answered = answer(text, questionDesk(turn));
  const opens = answered.understood && answered.opens === true;
  // "sold to june" of what is on hold for her, who has bought nothing yet
  const isOfNothing = answered.value === "no" || !hasFigure(answered);
  return opens && !(isOfNothing && settles());
}

/**
 * Answers a message that asks about the books, in whatever words. A question that is not understood is refused by
 * the word that stands in the way, and never answered wider. False where the message is no question. `isOther`: not
 * understood as one, it is rather a note.
 */
export function answerAsked(
  turn: Turn,
  text: string,
  readings: readonly Reading[],
  { replyRoot, isOther = false }: { replyRoot?: number | undefined; isOther?: boolean } = {},
): boolean {
  if (turn.lines !== 1 || isPaidIt(text)) return false;
  if (followsUp(turn, text, readings)) return true;
  if (readings.length === 0) return false;
  if (asksYear(text, readings) || endsAsking(text) || asksForIt(text) || asksTurned(text)) {
    tell(turn, answer(text, questionDesk(turn, replyRoot)), text);
    return true;
  }
  const told = opensAsking(text) ? answer(text, questionDesk(turn, replyRoot)) : null;
  if (told?.understood) {
    tell(turn, told, text);
    return true;
  }
  const sounds = soundsAsked(text);
  // Most messages are whole notes: they cost no look at the questions.
  const asksOfNames = opensWithAsking(text) && readings.some(renames);
  if (!readings.every((reading) => mayAsk(reading) || (asksOfNames && renames(reading)))) return false;
  const answered = told ?? answer(text, questionDesk(turn, replyRoot));
  // "22": what the number is for is asked as of any note, with the piece of that number beside it.
  if (!sounds && isNumber(text)) showBeside(turn, answered);
  // Words that ask by the way, and of which the books know nothing, are rather a note.
  const isOfNothing = answered.understood && answered.measure !== undefined && !hasFigure(answered);
  const asks = sounds || (answered.understood && answered.asks === true && !isOfNothing);
  if (!asks && !readings.every(asksByItself)) return false;
  // "Profit on glorbs" asks, and the word in the way is named.
  const opens =
    answered.opens === true &&
    !/\d/.test(text) &&
    answered.words?.length === 1 &&
    readings.every((reading) => reading.kind !== "share" && asksByItself(reading));
  const isAsked = sounds || opens || readings.every(({ kind }) => kind === "ask");
  // Words that make no note and have an answer in the books are a question, whatever mark is missing; where they name a
  // figure, nothing is an answer too.
  // "going to an auction saturday" is a plan.
  const isPlan = readings.some((reading) => isFor(reading, "intention")) && !hasFigure(answered);
  const isTold =
    answered.understood &&
    // "kids helped today": with a word put right, and no word that asks, it is rather talk.
    !answered.isPutRight &&
    !isPlan &&
    readings.every(({ kind }) => kind === "unclear") &&
    (hasFigure(answered) || answered.opens === true);
  if (!isAsked && !asks && !isTold) return false;
  if (!answered.understood && isOther) return false;
  // "Should i drop the price": what is asked is no deed that is still to come.
  const isOnlyAsked =
    (opensWithAsking(text) ||
      /^\W*(?:so |and )?(?:should|any(?:one|body)|is there|are there) /i.test(text)) &&
    readings.every(
      (reading) =>
        reading.kind === "unclear" &&
        !reading.could &&
        (isFor(reading, "intention") || isFor(reading, "appointment")),
    );
  const names = (isAsked && answered.words?.length) || isOnlyAsked;
  if (!answered.understood && !names && !asksOfNames) return false;
  tell(turn, answered, text);
  for (const reading of readings) keepWhatWasAsked(turn, reading);
  return true;
}

/**
 * Takes apart a message of several questions, or of a note with questions behind it, and answers each; `note` takes the
 * note. False where it is one, or where one of its questions is not understood.
 */
export function answerApart(turn: Turn, text: string, note: (text: string) => void): boolean {
  const parts = turn.lines === 1 ? askedApart(text) : null;
  if (!parts) return false;
  const desk = questionDesk(turn);
  const [first = "", ...questions] = parts;
  const isNote = readMessage(first, turn.today).every(({ kind }) => kind !== "ask" && kind !== "unclear");
  if (!isNote) {
    const answers = answersApart(text, desk);
    for (const { answered, question } of answers ?? []) tell(turn, answered, question);
    return answers !== null;
  }
  const mayTell = (question: string): boolean => speaksOfIt(question) || answer(question, desk).understood;
  if (OPEN.test(first) || !questions.every(mayTell)) return false;
  note(first);
  // What was recorded just now counts.
  for (const question of questions) tell(turn, answer(question, questionDesk(turn)), question);
  return true;
}

/** "should i sell the desk for 60": no note, whatever it reads like. */
const OPEN = /^(?:should|if|suppose|say)\b/i;

/** Takes "more" and "and in june?", right behind a question; false where the words are anything else. */
function followsUp(turn: Turn, text: string, readings: readonly Reading[]): boolean {
  const last = lastQuestion(turn);
  if (!last || !readings.every(mayAsk)) return false;
  if (asksMore(text)) return tellMore(turn, last.question, last.shown);
  const desk = questionDesk(turn);
  const questions = followUps(last.question, text, desk);
  // "may" alone asks for that month, "and may" for the same of it.
  if (
    questions.length === 0 ||
    (!soundsFollowing(text, last.question, desk) && answer(text, desk).understood)
  )
    return false;
  for (const question of questions) {
    const answered = answer(question, desk);
    if (!answered.understood) continue;
    tell(turn, answered, question);
    return true;
  }
  return false;
}

/** The next rows of an answer that did not show all of them; false where it did. */
function tellMore(turn: Turn, question: string, shown: number): boolean {
  const answered = answer(question, questionDesk(turn));
  const { rest = [], noted = [] } = answered;
  const left = rest.slice(shown - ROWS_MAX);
  if (answered.isOwners && !seesMoney(turn.ledger, turn.person)) turn.spoken.push(NOT_SHOWN);
  else if (left.length === 0) turn.spoken.push("That was all of it.");
  else {
    const [head = ""] = answered.text.split("\n");
    const lines = left.slice(0, ROWS_MAX);
    const places = `${shown + 1} to ${shown + lines.length} of ${rest.length + ROWS_MAX}`;
    const told = [`${head.replace(/:.*$/, "")}, ${places}:`, ...lines].join("\n");
    const facts = noted.slice(shown, shown + lines.length);
    turn.spoken.push(facts.length > 0 ? lettered(turn, told, facts) : told);
    keepQuestion(turn, question, shown + lines.length);
    if (left.length > lines.length) turn.buttons.push([moreButton(question, shown + lines.length)]);
  }
  return true;
}

/** Shows more rows: of the question that the button holds, else of the last one. */
export function pressMore(turn: Turn, shown: number, held: string): void {
  const question = held === "" ? (lastQuestion(turn)?.question ?? "") : held;
  tellMore(turn, question, Math.max(ROWS_MAX, shown || 0));
}

/** Asks a question that a button holds. */
export function answerPressed(turn: Turn, question: string): void {
  tell(turn, answer(question, questionDesk(turn)), question);
}

function tell(turn: Turn, answered: Answered, question: string): void {
  if (answered.understood) {
    keepQuestion(turn, answered.asked ?? question, ROWS_MAX, answered.of);
    const { pieces, isList } = answered.of ?? { pieces: [] };
    // A note's "it" may be what was asked about by name; of a list it is nothing.
    if (pieces.length > 0 && !isList) keepAsked(turn, [...pieces]);
  }
  if (answered.isOwners && !seesMoney(turn.ledger, turn.person)) {
    turn.spoken.push(NOT_SHOWN);
    return;
  }
  if (answered.chart) {
    // The words are the picture's caption: said once.
    turn.files.push(chartBody(answered.chart, answered.text));
    return;
  }
  const { noted = [], rest = [] } = answered;
  turn.spoken.push(noted.length > 0 ? lettered(turn, answered.text, noted) : answered.text);
  if (rest.length > 0) turn.buttons.push([moreButton(question, ROWS_MAX)]);
  showBeside(turn, answered);
}
