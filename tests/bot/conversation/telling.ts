import { composeReply } from "../../../bot/conversation/composing.ts";
import { decideAll } from "../../../bot/conversation/recording.ts";
import { newTurn } from "../../../bot/conversation/turn.ts";
import { newMatter } from "../../../core/decide/decision.ts";
import type { Kind, Reading, ReadingFields } from "../../../core/notes/reading.ts";
import type { Chat } from "./chat.ts";

const silent = { debug: () => {}, info: () => {}, warn: () => {}, error: () => {} };

let told = 0;

/** Tells a chat one reading as if a note had been read so, whatever its words; gives the reply's text and labels. */
export function tell<K extends Kind>(
  chat: Chat,
  kind: K,
  fields: ReadingFields[K] & { date?: string; by?: string },
  said = Date.parse("2026-05-09T16:00:00Z"),
): { text: string; labels: string[] } {
  const { ledger } = chat;
  return ledger.transaction(() => {
    const person = ledger.members.owner()!.id;
    told += 1;
    const message = `told-${told}`;
    const note = ledger.addNote({
      chat: "home",
      message,
      text: message,
      author: person,
      said,
      handled: said,
    });
    const deps = { ledger, currency: "USD", zone: () => "America/Chicago", now: () => said, log: silent };
    const turn = newTurn(deps, { person, chat: "home", note, said, lines: 1 });
    const reading = { kind, text: message, line: 0, ...fields } as Reading;
    decideAll(turn, [newMatter(reading, turn.today)], { root: note });
    const { reply } = composeReply(turn, null);
    if (reply) ledger.outbox.queue({ chat: "home", body: { kind: "text", reply }, about: note });
    return { text: reply?.text ?? "", labels: (reply?.buttons ?? []).flat().map(({ label }) => label) };
  });
}
