import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
  chat.say("loan 9000 at 5.5%");
  chat.say("send 100 to the loan");
});
afterEach(() => chat.end());

const paid = () => chat.ledger.books.facts.filter(({ kind }) => kind === "pay").map(({ amount }) => amount);

describe("as much paid to the loan again on one day", () => {
  test.each(["paid the loan 100", "put 100 on the loan, done", "100 to the loan today"])(
    "is asked about: %s",
    (note) => {
      const { text, buttons } = chat.say(note);
      expect(text).toContain("100.00 to the loan is noted today already");
      expect(buttons.flat().map(({ label }) => label)).toEqual(["Another: add it", "The same: skip"]);
      expect(paid()).toEqual([100_00]);
    },
  );

  test("is added, or skipped, as it is answered", () => {
    chat.say("paid the loan 100");
    chat.say("the same");
    expect(paid()).toEqual([100_00]);
    chat.say("put 100 on the loan");
    chat.say("another");
    expect(paid()).toEqual([100_00, 100_00]);
  });

  test.each(["paid another 100 to the loan", "paid the loan 120", "paid 100 more to the loan"])(
    "is not doubted where it is said to be more, or is not as much: %s",
    (note) => {
      chat.say(note);
      expect(paid()).toHaveLength(2);
    },
  );
});
