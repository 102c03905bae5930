import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

describe("a standing note", () => {
  test("is shown before it is set up, records what is due today, and is listed in the settings", () => {
    const asked = chat.say("storage 60 every month");
    expect(asked.text).toContain("storage 60.00 every month from Sat May 9");
    expect(chat.ledger.books.facts).toEqual([]);
    const set = chat.press("Yes, set it up");
    expect(set.text).toContain("storage 60.00 every month on the 9th");
    expect(set.text).toContain("Storage 60.00");
    expect(chat.ledger.books.facts.map(({ kind, day }) => [kind, day])).toEqual([
      ["spend", "2026-05-09"],
      ["repeat", "2026-05-09"],
    ]);
    expect(chat.say("settings").text).toContain("By itself: storage 60.00 every month on the 9th");
  });

  test("is undone with what it recorded as it was set up", () => {
    chat.say("storage 60 every month");
    chat.press("Yes, set it up");
    chat.say("undo");
    expect(chat.ledger.books.facts).toEqual([]);
    expect(chat.say("settings").text).not.toContain("By itself:");
  });

  test("of the loan is a payment like any other", () => {
    chat.say("loan 1000 at 0% yesterday");
    chat.say("250 to the loan every month");
    chat.press("Yes, set it up");
    expect(chat.statement().loans[0]?.balance).toBe("750.00");
  });

  test("needs the evening before what it is about: what it cannot record it says", () => {
    chat.say("loan 1000 at 0%");
    chat.say("250 to the loan every month");
    expect(chat.press("Yes, set it up").text).toContain("250.00 to the loan of Sat May 9 is not recorded");
    expect(chat.statement().loans[0]?.balance).toBe("1000.00");
  });
});
