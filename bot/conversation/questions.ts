import { answerBare } from "../../core/decide/bare.ts";
import { mattersOf } from "../../core/decide/decide.ts";
import type { Ask, Effect, Matter } from "../../core/decide/decision.ts";
import { settle } from "../../core/decide/settle.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Question } from "../../db/questions.ts";
import { fixFact, undoRoot } from "./amending.ts";
import { recordHistory } from "./history.ts";
import { decideAll } from "./recording.ts";
import type { Turn } from "./turn.ts";

/** Opens a question about a message (its root note). It is prompted when the turn's reply is put together. */
export function openQuestion(turn: Turn, matter: Matter, ask: Ask, root: number): void {
  const { person, chat, said: asked } = turn;
  const opened = turn.ledger.questions.open({ person, chat, note: root, matter, ask, asked });
  turn.asked.push({ ...opened, ask, text: matter.reading.text });
}

/** A person's open questions: the one a bare answer goes to first (the one asked last), then the others. */
export function openQuestions(turn: Turn): Question[] {
  const open = turn.ledger.questions.allOpen(turn.person);
  return open.sort((a, b) => (b.prompt ?? -1) - (a.prompt ?? -1) || a.id - b.id);
}

/** Takes a message as the answer to an open question, if it is one. */
export function answerOpen(turn: Turn, text: string, question: Question | undefined): boolean {
  if (!question) return false;
  const effect = answerBare({ reading: question.matter.reading, ask: question.ask }, text, turn.today);
  if (effect) {
    applyEffect(turn, question, effect);
    return true;
  }
  const whole = readTogether(question, text, turn.today);
  if (!whole) return false;
  applyEffect(turn, question, { kind: "instead", readings: [whole] });
  return true;
}

/** "190 to neighbor" after "sold dresser": the two read as one note, where that leaves less to ask. */
function readTogether(question: Question, text: string, today: string): Reading | null {
  const { reading } = question.matter;
  const missing = reading.missing?.length ?? 0;
  if (missing === 0 || readMessage(text, today).some((each) => each.kind !== "unclear")) return null;
  const [whole, ...more] = readMessage(`${reading.text} ${text}`, question.matter.said);
  if (!whole || more.length > 0 || whole.kind !== reading.kind) return null;
  return (whole.missing?.length ?? 0) < missing ? whole : null;
}

/** Closes a question with what its answer does. */
export function applyEffect(turn: Turn, question: Question, effect: Effect): void {
  turn.ledger.questions.close(question.id, turn.now());
  switch (effect.kind) {
    case "drop":
      turn.spoken.push(`Dropped: ${question.matter.reading.text}`);
      break;
    case "undo":
      undoRoot(turn, effect.root);
      break;
    case "fix":
      fixFact(turn, effect.fact, effect.amount);
      break;
    case "history":
      recordHistory(turn, effect.note, effect.sent);
      break;
    default:
      decideAll(turn, settle(question.matter, effect), { root: question.note });
  }
  turn.ledger.setNoteState(question.note, effect.kind === "drop" ? "refused" : "answered");
}

/** Confirms first that the same words within minutes are meant as a second note. */
export function askWhetherAgain(
  turn: Turn,
  readings: readonly Reading[],
  minutes: number,
  root: number,
): void {
  const ago = minutes < 1 ? "just now" : `${minutes} min ago`;
  const [matter] = mattersOf(readings, turn.today);
  const ask: Ask = {
    prompt: `You sent the same note ${ago}. Record it a second time?`,
    wants: "choice",
    choices: [
      { label: "Yes, again", words: ["yes", "again"], effect: { kind: "instead", readings: [...readings] } },
      { label: "No, once", words: ["no", "once"], effect: { kind: "drop" } },
    ],
  };
  openQuestion(turn, { ...matter!, waiting: [] }, ask, root);
}
