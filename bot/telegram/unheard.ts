import type { Ledger } from "../../db/ledger.ts";
import type { Incoming } from "../conversation/incoming.ts";

/** Why a message becomes no note. */
export type Why = "too long" | "too many lines" | "not text" | "not fetched";

const WORDS: Record<Why, string> = {
  "too long":
    "That is more than I read at once (a message, or a file of 1 MB), so nothing of it was recorded. Please send it in parts.",
  "too many lines":
    "That file has more than 2,000 lines, and I take 2,000 at a time. Nothing of it was recorded. Please send it in parts.",
  "not text": "I read text only, so nothing was recorded. A note I would understand: bought dresser 30",
  "not fetched": "I could not fetch that file, so nothing of it was recorded. Please send it again.",
};

/** What to say past the ledger when not even a failure can be stored. */
export const NOTHING_STORED =
  "I could not store that: the disk may be full or read-only. Nothing was recorded. Please send it again later.";

/** Marks a delivery that became no note as handled, and queues the honest line that says so. */
export function answerUnheard(ledger: Ledger, { chat, message, update }: Incoming, why: Why): void {
  ledger.transaction(() => {
    if (update && !ledger.claimUpdate(update)) return;
    ledger.outbox.queue({ chat, body: { kind: "text", reply: { text: WORDS[why] } }, replyTo: message });
  });
}
