import { counted } from "../../core/answers/wording.ts";
import type { Ledger } from "../../db/ledger.ts";

export interface Returning {
  /** A chat would take nothing: the bot was blocked there, or the chat is gone. */
  lost(chat: string): void;
  /** Somebody is heard from a chat again: what could not be sent is, before the answer to this. */
  back(chat: string): void;
}

/**
 * Replies that a chat refused for good are sent when its person is back. What the bot had said of its own accord
 * meanwhile (daily messages) is out of date and only counted.
 */
export function createReturning(ledger: Ledger): Returning {
  const chats = new Set(ledger.settings.get("unreachedChats") ?? []);
  return {
    lost(chat) {
      if (chats.has(chat)) return;
      chats.add(chat);
      ledger.settings.set("unreachedChats", [...chats]);
    },
    back(chat) {
      if (!chats.has(chat)) return;
      ledger.transaction(() => {
        const rows = ledger.outbox.unreached(chat);
        const replies = rows.filter(({ note }) => note !== null);
        for (const { id } of replies) ledger.outbox.revive(id);
        for (const { id, note } of rows)
          if (note === null) ledger.outbox.giveUp(id, "out of date when the chat was reached again");
        const text = returnText(replies.length, rows.length - replies.length);
        if (text !== null) ledger.outbox.queue({ chat, body: { kind: "text", reply: { text } } });
        ledger.settings.set(
          "unreachedChats",
          [...chats].filter((other) => other !== chat),
        );
      });
      chats.delete(chat);
    },
  };
}

function returnText(replies: number, others: number): string | null {
  if (replies + others === 0) return null;
  const late = replies > 0 ? [`${counted(replies, "answer")} above could not be sent before.`] : [];
  const left = others > 0 ? [`Left out: ${counted(others, "message")} of my own.`] : [];
  return ["I could not write to you for a while.", ...late, ...left].join("\n");
}
