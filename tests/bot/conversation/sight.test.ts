import { afterEach, beforeEach, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
let wren: number;
beforeEach(() => {
  chat = openChat();
  chat.say("loan 14250 at 5.5%");
  chat.say("bought nightstand 12");
  chat.say("bought lamp 5");
  wren = chat.ledger.transaction(() =>
    chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
  );
});
afterEach(() => chat.end());

test("a member's reply has the piece and its profit, not the month, the loan and what is due to it", () => {
  expect(chat.say("sold nightstand 60 cash", { person: wren }).text).toBe(
    "Sold #1 nightstand for 60.00 cash\nProfit 48.00 (cost 12.00)",
  );
  expect(chat.say("sold lamp 20 cash").text).toContain("Month +63.00 · due to the loan 63.00");
});

test.each([["month"], ["loan?"], ["recap"], ["pace"], ["tax"], ["how much this year"], ["export"]])(
  "'%s' is the owner's to ask, until the owner says otherwise",
  (question) => {
    expect(chat.say(question, { person: wren }).text).toBe("The month and the loan are the owner's to tell.");
    expect(chat.say("members see money").text).toBe("Members now see the month and the loan.");
    expect(chat.say(question, { person: wren }).text).not.toContain("owner's to tell");
    chat.say("members see pieces");
    expect(chat.say(question, { person: wren }).text).toContain("owner's to tell");
  },
);

test("a member cannot change what members see, and pieces stay open to all", () => {
  expect(chat.say("members see money", { person: wren }).text).toBe("Only the owner can do that.");
  expect(chat.say("pieces", { person: wren }).text).toContain("#1 nightstand");
});
