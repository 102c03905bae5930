import { takeAnswer } from "../../core/decide/answer.ts";
import type { Effect } from "../../core/decide/decision.ts";
import type { Question } from "../../db/questions.ts";
import { recordHistory } from "./history.ts";
import { closeQuestion, releaseAfter, textsOf } from "./questions.ts";
import { applyFix, settleQuestion } from "./recording.ts";
import type { Turn } from "./turn.ts";
import { takeBack } from "./undoing.ts";

/** Takes a message as the answer to an open question, if it is one. */
export function answerOpen(turn: Turn, text: string, question: Question | undefined): boolean {
  const effect = question ? takeAnswer(question, text, turn.today) : null;
  if (question && effect) applyEffect(turn, question, effect);
  return effect !== null;
}

/** Closes a question with what its answer does. */
export function applyEffect(turn: Turn, question: Question, effect: Effect): void {
  if (effect.kind === "settle" || effect.kind === "instead") {
    settleQuestion(turn, question, effect);
    return;
  }
  const { matter, note: root } = question;
  closeQuestion(turn, question.id);
  switch (effect.kind) {
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
