import { takeAnswer } from "../../core/decide/answering/answer.ts";
import { namedAnswer } from "../../core/decide/answering/named.ts";
import { paidTold } from "../../core/decide/answering/paid.ts";
import { answerWithin } from "../../core/decide/answering/part.ts";
import { decideWhole, wholeLabel } from "../../core/decide/decide.ts";
import { type Effect, newMatter, type Said } from "../../core/decide/decision.ts";
import { mattersOf } from "../../core/decide/matters.ts";
import { mentionsOf } from "../../core/decide/pieces/mentioned.ts";
import { acceptedOffer } from "../../core/decide/unclear/offers.ts";
import { NONE_OF_THESE } from "../../core/decide/unclear/whole.ts";
import { asIfRecorded, madeOfAsked, mayCorrectAsked, withChange } from "../../core/mending/of-asked.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { Reading } from "../../core/notes/reading.ts";
import { couldOf, isWholeNote, whyOf } from "../../core/notes/unclear.ts";
import { ASKS_FOR_NOTES, BETWEEN_ANSWERS } from "../../core/notes/words/replies.ts";
import type { Question } from "../../db/questions.ts";
import { goneOn, talkingDesk } from "./going-on.ts";
import { leaveHistory } from "./history.ts";
import { asksOldOrNew, isOlderThanNewest } from "./old-or-new.ts";
import { closeQuestion, openQuestion, releaseAfter, textsOf } from "./questions.ts";
import { applyFix, decideAll, settleQuestion } from "./recording.ts";
import { passOver } from "./talk.ts";
import { deskOf, type Turn } from "./turn.ts";
import { takeBack } from "./undoing.ts";
import { changeBehind } from "./waiting-piece.ts";

/** A message that may answer a question. */
export interface SaidNow extends Said {
  /** It replies to the message that asked. */
  isReply: boolean;
  /** Notes follow in the same message: of itself it corrects nothing. */
  isPart?: true;
}

/**
 * Takes a message as the answer to an open question, if it is one: a bare value of the kind that it wants, or words
 * that only complete it. A whole note, a question or a correction of a newer note is read as itself.
 */
function answerOpen(turn: Turn, said: SaidNow, question: Question): boolean {
  const { text, readings, isReply } = said;
  if (correctsBehind(turn, said, question)) return true;
  const isLatest = isReply || !isOlderThanNewest(turn, question);
  const effect =
    acceptedOffer(question.ask, said, isLatest) ??
    takeAnswer(question, said) ??
    namedAnswer(question, readings, turn.ledger.books);
  const corrected = effect ? null : correctionOf(turn, said, question);
  if (corrected) {
    applyEffect(turn, question, corrected);
    const [changed] = corrected.kind === "instead" ? corrected.readings : [];
    // A question that shows no more of the note is asked with what has become of it.
    if (changed && changed.kind !== "unclear" && turn.recorded.length === 0)
      turn.spoken.push(`${wholeLabel(changed, deskOf(turn))}:`);
    return true;
  }
  if (!effect || (!isReply && isRatherNote(turn, said, question, effect))) return false;
  if (!isLatest) {
    if (isCorrection(readings) && question.ask.wants !== "choice") return false;
    if (asksOldOrNew(turn, { text, readings, effect, question })) return true;
  }
  applyEffect(turn, question, effect);
  turn.tellsWaiting = true;
  return true;
}

/** "end tables are 60 for the pair", and as an answer the books refuse it: it may be a note of its own. */
function isRatherNote(turn: Turn, { readings }: SaidNow, question: Question, effect: Effect): boolean {
  if (effect.kind !== "settle" || !readings.some(namesWhole)) return false;
  const settled = { ...question.matter.reading, ...effect.change } as Reading;
  return decideWhole(settled, deskOf(turn)).kind === "refuse";
}

/** A piece and more than that, in whatever of its readings. */
const namesWhole = (reading: Reading): boolean =>
  couldOf(reading).some((each) => isWholeNote(each) && mentionsOf(each).some(({ name }) => name));

/** "make that 65" of the note that waits behind a question: what was told last. False where it corrects none. */
function correctsBehind(turn: Turn, { text, readings }: SaidNow, question: Question): boolean {
  const last = question.matter.after?.at(-1);
  // "it was 35" answers what is asked.
  if (!last || !isCorrection(readings) || paidTold(text)) return false;
  const waiting = { matter: last.matter, ask: question.ask, note: last.root };
  const asked = asIfRecorded(waiting, talkingDesk(turn, undefined));
  const to = asked && madeOfAsked(goneOn(text, readings, asked.desk), asked);
  const changed = to && to !== "removed" ? withChange(last.matter.reading, to) : null;
  if (!changed) return false;
  changeBehind(turn, question, changed);
  return true;
}

/** What a message that corrects the note that is asked about does to it; null where it corrects anything else. */
function correctionOf(turn: Turn, said: SaidNow, question: Question): Effect | null {
  const { text, readings, isReply } = said;
  const { reading } = question.matter;
  if (said.isPart || !mayCorrectAsked(text, readings, question)) return null;
  const asked = asIfRecorded(question, talkingDesk(turn, isReply ? question.note : undefined));
  const to = asked && madeOfAsked(goneOn(text, readings, asked.desk), asked);
  if (!to) return null;
  if (to === "removed") return { kind: "drop" };
  const changed = withChange(reading, to);
  return changed && { kind: "instead", readings: [changed] };
}

/** Takes a message as the answer to what is asked: to several questions, to one, or to one with notes behind it. */
export function answersAny(turn: Turn, said: SaidNow, open: readonly Question[]): boolean {
  return [answersEach, answersOne, answersInTurn, answersFirst].some((answers) => answers(turn, said, open));
}

/** The newest question that a message fits, else none. */
function answersOne(turn: Turn, said: SaidNow, questions: readonly Question[]): boolean {
  if (!said.isReply && asksForNotes(said.text)) return false;
  return (
    questions.some((question) => answerOpen(turn, said, question)) ||
    questions.some((question) => asksWithLeft(turn, said, question))
  );
}

/** "40, and paint 12 for it": a value that answers, and notes of their own behind it. */
function answersFirst(turn: Turn, said: SaidNow, questions: readonly Question[]): boolean {
  const [first, ...rest] = said.readings;
  if (first?.kind !== "unclear" || first.could || rest.length === 0) return false;
  if (rest.some(({ kind }) => kind === "unclear" || kind === "ask")) return false;
  if (!answersOne(turn, { ...said, text: first.text, readings: [first], isPart: true }, questions))
    return false;
  decideAll(turn, mattersOf(rest, turn.today), { root: turn.root });
  return true;
}

/** "last 3 notes" is no answer, whatever was asked. */
const asksForNotes = (text: string): boolean => ASKS_FOR_NOTES.test(text);

/** Plain amounts, one behind the other. */
const AMOUNTS = /^\$?\d+(?:\.\d{1,2})?(?:(?:, ?| ?& ?|,? and | then )\$?\d+(?:\.\d{1,2})?)+$/;

/** "8 and 6" where as many amounts are asked for, and nothing else: each in the order in which they were asked. */
function answersInTurn(turn: Turn, said: SaidNow, open: readonly Question[]): boolean {
  const text = said.text.trim();
  if (open.length < 2 || !AMOUNTS.test(text)) return false;
  const values = text.match(/[\d.]+/g)!;
  if (
    values.length !== open.length ||
    open.some(({ ask }) => ask.wants !== "amount" && ask.wants !== "price")
  )
    return false;
  const asked = [...open].sort((one, other) => one.id - other.id);
  return asked.every((question, at) => {
    const value = values[at]!;
    const readings = readMessage(value, turn.today);
    return answerOpen(turn, { ...said, text: value, readings, isReply: true }, question);
  });
}

/** A message of several parts, each of which answers a question or is a whole note. */
function answersEach(turn: Turn, said: SaidNow, open: readonly Question[]): boolean {
  const parts = said.text.trim().split(BETWEEN_ANSWERS);
  // Bare amounts go in the order in which they were asked for.
  if (open.length < 2 || parts.length < 2 || parts.length > open.length || AMOUNTS.test(said.text.trim()))
    return false;
  const left = [...open];
  const answers = parts.map((text) => {
    const part = { ...said, text, readings: readMessage(text, turn.today), isReply: true };
    const at = left.findIndex(
      (question) => takeAnswer(question, part) ?? namedAnswer(question, part.readings, turn.ledger.books),
    );
    const [question] = at < 0 ? [] : left.splice(at, 1);
    return { part, question };
  });
  // What is no answer is the note that the whole message holds: cut off from the rest it may read as another.
  const isWhole = ({ readings }: SaidNow) =>
    readings.length > 0 &&
    readings.every(
      (reading) =>
        reading.kind !== "unclear" &&
        !reading.missing &&
        !reading.follows &&
        said.readings.some((each) => isSameNote(each, reading)),
    );
  if (answers.every(({ question }) => !question)) return false;
  if (answers.some(({ part, question }) => !question && !isWhole(part))) return false;
  for (const { part, question } of answers)
    if (question) answerOpen(turn, part, question);
    else decideAll(turn, mattersOf(part.readings, turn.today), { root: turn.root });
  return true;
}

/** Whether two readings say the same, wherever they stand. */
function isSameNote(one: Reading, other: Reading): boolean {
  const fieldsOf = ({ text: _, line: __, ...fields }: Reading) => Object.entries(fields).sort();
  return JSON.stringify(fieldsOf(one)) === JSON.stringify(fieldsOf(other));
}

function isCorrection(readings: readonly Reading[]): boolean {
  return readings.length > 0 && readings.every(({ kind }) => kind === "fix" || kind === "mend");
}

/**
 * Asks whether a value with words that nobody knows beside it is the answer; false where the message holds no such
 * value, or reads as something of its own.
 */
function asksWithLeft(turn: Turn, said: SaidNow, question: Question): boolean {
  const { text, readings, isReply } = said;
  if (text.trim().endsWith("?") || (!isReply && !readings.every(isOpenToAnswer))) return false;
  const part = answerWithin(question, said);
  if (!part) return false;
  const { change } = part.effect;
  const label = wholeLabel({ ...question.matter.reading, ...change } as Reading, deskOf(turn));
  const effect: Effect = { kind: "change", question: question.id, change };
  const ask = {
    prompt: `Leaving out "${part.left}": is it this?`,
    wants: "choice" as const,
    choices: [{ label, words: ["yes"], effect }, NONE_OF_THESE],
  };
  openQuestion(turn, newMatter({ kind: "unclear", text, line: 0 }, turn.today), ask, turn.root);
  return true;
}

/** It says nothing by itself, or a piece and a number without a verb. */
function isOpenToAnswer(reading: Reading): boolean {
  if (reading.kind !== "unclear") return false;
  const { could = [], why } = reading;
  // "hour and a half i think": of nothing that it names.
  const isOfNothing = could.every(({ missing }) => missing?.includes("pieces"));
  return isOfNothing || why === whyOf({ kind: "noVerb" });
}

/** Closes a question with what its answer does. */
export function applyEffect(turn: Turn, question: Question, effect: Effect): void {
  if (effect.kind === "settle" || effect.kind === "instead") {
    if (effect.kind === "instead" && effect.passed) passOver(turn, effect.readings[0]!.kind, effect.passed);
    settleQuestion(turn, question, effect);
    return;
  }
  const { matter, note: root } = question;
  closeQuestion(turn, question.id);
  switch (effect.kind) {
    case "ask":
      openQuestion(
        turn,
        { ...matter, reading: { ...matter.reading, ...effect.change } as Reading },
        effect.ask,
        root,
      );
      return;
    case "drop":
      releaseAfter(turn, matter);
      turn.spoken.push(`Dropped: ${textsOf([matter.reading, ...matter.waiting])}`);
      break;
    case "undo":
      takeBack(turn, effect.root, effect.own);
      break;
    case "fix":
    case "change":
      applyFix(turn, effect);
      break;
    case "history":
      leaveHistory(turn, { file: effect.note, sent: effect.sent });
      break;
  }
  turn.ledger.setNoteState(root, effect.kind === "drop" ? "refused" : "answered");
}
