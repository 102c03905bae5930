import { takeBare } from "../../core/decide/answer.ts";
import { completeReading } from "../../core/decide/completion.ts";
import type { Effect } from "../../core/decide/decision.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Question } from "../../db/questions.ts";
import { recordHistory } from "./history.ts";
import { asksOldOrNew, isOlderThanNewest } from "./old-or-new.ts";
import { closeQuestion, openQuestion, releaseAfter, textsOf } from "./questions.ts";
import { applyFix, settleQuestion } from "./recording.ts";
import { passOver } from "./talk.ts";
import type { Turn } from "./turn.ts";
import { takeBack } from "./undoing.ts";

/** A message that may answer a question. */
interface Said {
  text: string;
  readings: readonly Reading[];
  /** It replies to the message that asked. */
  isReply: boolean;
}

/**
 * Takes a message as the answer to an open question, if it is one: a bare value of the kind that it wants, or words
 * that only complete it. A whole note, a question or a correction of a newer note is read as itself.
 */
export function answerOpen(turn: Turn, { text, readings, isReply }: Said, question: Question): boolean {
  const bare = takeBare(question, text, turn.today);
  const effect = bare ?? (readings.every(isWhole) ? null : completeReading(question, text, turn.today));
  if (!effect) return false;
  if (!isReply && isOlderThanNewest(turn, question)) {
    if (isCorrection(readings) && question.ask.wants !== "choice") return false;
    if (asksOldOrNew(turn, { text, readings, effect, question })) return true;
  }
  applyEffect(turn, question, effect);
  turn.tellsWaiting = true;
  return true;
}

function isWhole({ kind, missing = [] }: Reading): boolean {
  return kind !== "unclear" && missing.length === 0;
}

function isCorrection(readings: readonly Reading[]): boolean {
  return readings.length > 0 && readings.every(({ kind }) => kind === "fix" || kind === "mend");
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
      recordHistory(turn, effect.note, effect.sent);
      break;
  }
  turn.ledger.setNoteState(root, effect.kind === "drop" ? "refused" : "answered");
}
