import { MENDED } from "../../db/notes.ts";
import type { OutboxBody } from "../../db/outbox.ts";
import { cautionOf } from "./cautioning.ts";
import { composeReply } from "./composing.ts";
import { nextLead } from "./leading.ts";
import { dropOld } from "./questions.ts";
import { decideReleased } from "./recording.ts";
import { isTellable, tallyOf } from "./tally.ts";
import { tidyButtons } from "./tidying.ts";
import type { Turn } from "./turn.ts";

/** Notes handled within this long of each other are under way together. */
const TOGETHER_MS = 15_000;

/** Queues the reply and what goes with it, and keeps what came of the note. */
export function finish(turn: Turn): void {
  const { ledger, chat, note } = turn;
  dropOld(turn);
  decideReleased(turn);
  const caution = cautionOf(turn);
  const { reply, aside } = composeReply(turn, caution);
  const tally = caution === null && isTellable(turn) ? { tally: { of: tallyOf(turn) } } : {};
  const row = reply === null ? null : queueReply(turn, { kind: "text", reply, ...tally });
  const [asked] = turn.asked;
  if (asked && row !== null) ledger.questions.setPrompt(asked.id, row);
  if (aside !== null) ledger.outbox.queue({ chat, body: { kind: "text", reply: aside }, about: note });
  const lead = nextLead(turn);
  if (lead !== null) ledger.outbox.queue({ chat, body: { kind: "text", reply: lead } });
  for (const body of turn.files) ledger.outbox.queue({ chat, body, about: note });
  tidyButtons(turn);
  const refused = turn.refused.length > 0 ? "unclear" : "answered";
  ledger.setNoteState(
    note,
    turn.recorded.length > 0 || turn.mended ? "recorded" : turn.asked.length > 0 ? "asked" : refused,
    turn.mended ? MENDED : undefined,
  );
}

/**
 * Queues the reply: after an edit as new words of the bot's earlier answer, else as a message, which quotes its
 * note where several are under way. A question always comes as a message: its place in the queue goes by it.
 */
function queueReply(turn: Turn, body: Extract<OutboxBody, { kind: "text" }>): number | null {
  const { ledger, chat, note, root } = turn;
  const earlier = note === root || turn.asked.length > 0 ? null : ledger.outbox.answerOf(root);
  if (earlier?.chat === chat) {
    const edit = { kind: "edit" as const, outbox: earlier.id, reply: body.reply, orSend: true as const };
    return ledger.outbox.queue({ chat, body: edit, about: note });
  }
  const replyTo = isOneOfSeveral(turn) ? { replyTo: ledger.note(note)!.message } : {};
  return ledger.outbox.queue({ chat, body, about: note, ...replyTo });
}

/** Whether the person has other notes under way: sent in the same moment, or waited for together. */
function isOneOfSeveral({ ledger, person, root, said, now, pressed }: Turn): boolean {
  if (pressed !== null) return false;
  if (now() - said > TOGETHER_MS) return true;
  return ledger.hasRecentNote(
    now() - TOGETHER_MS,
    (note) => note.author === person && note.root !== root && !note.message.startsWith("press:"),
  );
}
