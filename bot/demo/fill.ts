import { DAY_MS, dayOfInstant, firstDayOf, monthOf } from "../../core/calendar.ts";
import type { ConversationDeps } from "../conversation/conversation.ts";
import { createConversation } from "../conversation/conversation.ts";
import { demoNotes } from "./halfyear.ts";

const CHAT = "demo";

/**
 * Sends the half year's notes through the conversation, each on its own day, and counts the last month's recap
 * as told: nobody who only looks in wants a file saved at once. Gives what the bot did not record, as
 * "note: reply"; an empty list is what the tests expect.
 */
export function fillDemo(deps: ConversationDeps): string[] {
  const { ledger, now } = deps;
  const conversation = createConversation(deps);
  const person = ledger.transaction(() =>
    ledger.members.add({ user: CHAT, name: "demo", role: "member", joined: now() }),
  );
  const unrecorded: string[] = [];
  for (const [index, { daysAgo, text }] of demoNotes().entries()) {
    const before = ledger.books.facts.length;
    conversation.hear({ person, chat: CHAT, message: `demo-${index}`, text, said: now() - daysAgo * DAY_MS });
    const row = ledger.outbox.nextUnsent(now(), CHAT);
    const reply = row?.body.kind === "text" ? row.body.reply.text : "";
    if (ledger.books.facts.length === before) unrecorded.push(`${text}: ${reply}`);
    if (row) ledger.outbox.markSent(row.id, null, now());
  }
  const today = dayOfInstant(now(), deps.zone());
  ledger.transaction(() => ledger.reminders.claim(firstDayOf(monthOf(today)), "recap", now()));
  return unrecorded;
}
