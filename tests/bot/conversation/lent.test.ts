import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

describe("a thing that is lent", () => {
  test("is told, moves no money, and comes back", () => {
    chat.say("bought bench 12");
    const before = chat.statement();
    expect(chat.say("lent the sander to mom").text).toContain("Sander lent to mom");
    expect(chat.say("the sander came back").text).toContain("Sander came back");
    expect(chat.statement()).toEqual(before);
  });

  test("shows in the story of a piece, and is undone like any note", () => {
    chat.say("bought bench 12");
    expect(chat.say("lent the bench to my sister").text).toContain("#1 bench lent to sister");
    expect(chat.say("show bench").text).toContain("lent to sister");
    expect(chat.say("undo").text).not.toContain("cannot");
    expect(chat.say("show bench").text).not.toContain("lent to sister");
  });
});
