import type { Instant } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { Incoming, Press, Unheard } from "../conversation/incoming.ts";

/** Why a message becomes no note. */
export type Why = Unheard | "not fetched";

const WORDS: Record<Why, string> = {
  "too long": "That is more than I read at once, so nothing of it was recorded. Please send it in parts.",
  "too many":
    "Too many messages at once: I stopped at this one. Wait a minute, then send it again, and what came after it.",
  "not text": "I read text only, so nothing was recorded. A note I would understand: bought dresser 30",
  "not stored":
    "Something went wrong on my side, so nothing was recorded. Your words are kept. Please try again, or say it another way.",
  "not fetched": "I could not fetch that file, so nothing of it was recorded. Please send it again.",
};
const PRESS_FAILED = "Something went wrong on my side: the button did nothing. Please type it instead.";

/** What to say past the ledger when not even a failure can be stored. */
export const NOTHING_STORED =
  "I could not store that: the disk may be full or read-only. Nothing was recorded. Please send it again later.";

/** Marks a delivery that became no note as handled, and queues the honest line that says so. */
export function answerUnheard(ledger: Ledger, incoming: Incoming, why: Why): void {
  ledger.transaction(() => {
    if (!ledger.claimUpdate(incoming.update ?? "")) return;
    queueWords(ledger, incoming, WORDS[why]);
  });
}

/** After a handler failed and was rolled back: keeps the raw words as a failed note, with an honest line. */
export function storeFailure(ledger: Ledger, incoming: Incoming, why: string, now: Instant): void {
  const { chat, message, text, person, said } = incoming;
  ledger.transaction(() => {
    if (!ledger.claimUpdate(incoming.update ?? "")) return;
    const note = ledger.addNote({ chat, message, text, author: person, said, handled: now });
    ledger.setNoteState(note, "failed", why);
    queueWords(ledger, incoming, WORDS["not stored"], note);
  });
}

export function storePressFailure(ledger: Ledger, press: Press): void {
  ledger.transaction(() => {
    if (!ledger.claimUpdate(press.update ?? "")) return;
    queueWords(ledger, press, PRESS_FAILED);
  });
}

function queueWords(ledger: Ledger, { chat, message }: Incoming | Press, text: string, about?: number): void {
  const link = about === undefined ? {} : { about };
  ledger.outbox.queue({ chat, body: { kind: "text", reply: { text } }, replyTo: message, ...link });
}
