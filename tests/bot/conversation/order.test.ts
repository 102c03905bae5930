import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Incoming } from "../../../bot/conversation/incoming.ts";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const SENT = Date.parse("2026-05-09T15:00:00Z");
let update = 0;
/** One wording of message 5: the original, or an edit made so many seconds later. */
const wording = (text: string, after?: number): Partial<Incoming> & { text: string } => ({
  text,
  message: "5",
  said: SENT,
  update: `u${++update}`,
  ...(after === undefined ? {} : { edited: true, revised: SENT + after * 1000 }),
});
const prices = () => chat.statement().pieces.map(({ name, price }) => `${name} ${price}`);

describe("the wordings of one message, in whatever order they come", () => {
  const original = () => wording("bought dresser 30");
  const first = () => wording("bought dresser 35", 10);
  const second = () => wording("bought dresser 40", 20);

  test.each([
    ["an edit before its original", [first, original], "dresser 35.00"],
    ["an older edit after a newer one", [original, second, first], "dresser 40.00"],
    ["all the wrong way round", [second, first, original], "dresser 40.00"],
    ["the original again under another delivery", [original, original], "dresser 30.00"],
    ["the original again after an edit", [original, first, original], "dresser 35.00"],
    ["in order", [original, first, second], "dresser 40.00"],
  ])("%s", (_, wordings, price) => {
    for (const each of wordings) chat.hear(each());
    expect(prices()).toEqual([price]);
  });

  test("one put back to the first words outlives the edit between", () => {
    for (const each of [original(), wording("bought dresser 30", 20), first()]) chat.hear(each);
    expect(prices()).toEqual(["dresser 30.00"]);
  });
});

describe("a bot with a new token counts its messages from 1 again", () => {
  const later = (text: string, rest: Partial<Incoming> = {}) => ({
    ...wording(text),
    said: SENT + 86_400_000,
    ...rest,
  });

  test("a message of a number used before is another message", () => {
    chat.hear(wording("bought dresser 30"));
    chat.hear(later("bought lamp 10"));
    expect(prices()).toEqual(["dresser 30.00", "lamp 10.00"]);
  });

  test("and an edit or a reply means the later of the two", () => {
    chat.hear(wording("bought dresser 30"));
    chat.hear(later("bought lamp 10"));
    chat.hear(later("bought lamp 12", { edited: true, revised: SENT + 86_500_000 }));
    expect(prices()).toEqual(["dresser 30.00", "lamp 12.00"]);
    chat.at("2026-05-10T16:00:00Z");
    chat.say("undo", { replyTo: "5" });
    expect(prices()).toEqual(["dresser 30.00"]);
  });
});
