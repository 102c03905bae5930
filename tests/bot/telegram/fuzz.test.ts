import fc from "fast-check";
import { API_CONSTANTS } from "grammy";
import type { Update } from "grammy/types";
import { afterAll, beforeAll, expect, it } from "vitest";
import { OWNER } from "../../standin/standin.ts";
import { startWorkbench, type Workbench } from "./workbench.ts";

// Every kind of update that the Bot API can send, and one that does not exist yet.
const KINDS = [...API_CONSTANTS.ALL_UPDATE_TYPES, "future_thing"];
// What a message may hold beside words: media, notices of the chat, and what nobody has thought of yet.
const CONTENTS = [
  ...[
    "sticker",
    "voice",
    "video",
    "video_note",
    "audio",
    "animation",
    "document",
    "photo",
    "location",
    "venue",
  ],
  ...["contact", "poll", "dice", "game", "story", "invoice", "successful_payment", "new_chat_members"],
  ...["left_chat_member", "new_chat_title", "pinned_message", "group_chat_created", "migrate_to_chat_id"],
  ...["forum_topic_created", "video_chat_started", "web_app_data", "giveaway", "checklist", "future_content"],
];

const people = fc.constantFrom(
  { ...OWNER, is_bot: false },
  { id: 3003, is_bot: false, first_name: "Quill" },
  { id: 42, is_bot: true, first_name: "Other" },
  undefined,
);
// Undefined: the sender's own private chat.
const chats = fc.constantFrom(
  undefined,
  undefined,
  { id: OWNER.id, type: "private" },
  { id: 3003, type: "private" },
  { id: -55, type: "group", title: "yard" },
  { id: -1001, type: "supergroup", title: "yard", is_forum: true },
  { id: -1002, type: "channel", title: "yard" },
);
const anything = fc.anything({ withNullPrototype: false, maxDepth: 2 });
const contents = fc.tuple(fc.constantFrom(...CONTENTS), fc.oneof(fc.constant({}), fc.constant([]), anything));
const messages = fc
  .record({
    from: people,
    chat: chats,
    date: fc.integer({ min: 0, max: 4_000_000_000 }),
    message_id: fc.nat(),
    text: fc.option(fc.oneof(fc.string({ maxLength: 40 }), fc.constant("x".repeat(5000))), {
      nil: undefined,
    }),
    caption: fc.option(fc.string({ maxLength: 40 }), { nil: undefined }),
    reply_to_message: fc.option(fc.constant({ message_id: 1 }), { nil: undefined }),
    content: contents,
    future_field: fc.option(anything, { nil: undefined }),
  })
  .map(({ content: [kind, value], chat, ...rest }) => {
    const own = { id: rest.from?.id ?? OWNER.id, type: "private" };
    return { ...rest, chat: chat ?? own, [kind]: value };
  });
const others = fc.record({
  id: fc.string({ maxLength: 5 }),
  from: people,
  chat: chats,
  user: people,
  data: fc.option(fc.string({ maxLength: 64 }), { nil: undefined }),
  message: fc.option(messages, { nil: undefined }),
  new_chat_member: fc.constantFrom({ status: "member" }, { status: "kicked" }, { status: "future" }),
  old_chat_member: fc.constant({ status: "left" }),
});
const updates = fc
  .tuple(fc.oneof(fc.constantFrom(...KINDS), fc.constant("message")), fc.oneof(messages, others))
  .map(([kind, content]) => ({ [kind]: content }));

/** As many as `UPDATES` says, in the long run 20,000. */
const UPDATES = Number(process.env["UPDATES"] ?? (process.env["LONG"] ? 20_000 : 1500));

let bench: Workbench;
beforeAll(async () => {
  bench = await startWorkbench();
});
afterAll(() => bench.close());

it("no update stops the bot", async () => {
  const { standin, conversation } = bench;
  const drawn = fc.sample(updates, { numRuns: UPDATES, seed: 20260509 });
  for (const update of drawn) standin.update(JSON.parse(JSON.stringify(update)) as Partial<Update>);
  await standin.waitFor(() => standin.waiting <= 100 || undefined, 170_000);
  const from = { id: 777, first_name: "Wren" };
  bench.ledger.members.add({ user: "777", name: "Wren", role: "member", joined: 0 });
  standin.say("bought dresser 30", { from });
  await standin.waitForReply("heard: bought dresser 30", 60_000);
  // Strangers and groups were told once each at most.
  const perChat = new Map<number, number>();
  for (const { chat } of standin.sent()) perChat.set(chat, (perChat.get(chat) ?? 0) + 1);
  expect(perChat.get(3003)).toBe(1);
  for (const chat of [-55, -1001]) expect(perChat.get(chat) ?? 0).toBeLessThanOrEqual(1);
  expect(conversation.heard.length).toBeGreaterThan(20);
});
