import { afterEach, beforeEach, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
  for (const note of ["loan 14250 at 0%", "bought nightstand 12", "sold nightstand 60 cash"]) chat.say(note);
  chat.at("2026-06-01T15:00:00Z");
});
afterEach(() => chat.end());

test("the recap fits a screen; what is due is booked as sent by a tap, once", () => {
  const recap = chat.say("recap");
  expect(recap.text).toBe(
    "May 2026: +48.00, 1 flipped\nBest: #1 nightstand +48.00\nFor the loan 48.00, paid 0.00\n" +
      "Due to the loan: 48.00\n[file month-2026-05.png]",
  );
  const paid = chat.press("Sent 48.00 to the loan");
  expect(paid.text).toContain("Paid loan 48.00");
  expect(chat.statement().loans[0]).toMatchObject({ paid: "48.00" });
  expect(() => chat.press(/to the loan/)).toThrow("no button");
  chat.say("undo");
  expect(chat.statement().loans[0]).toMatchObject({ paid: "0.00" });
});

test("the next month's goal by a tap, and the month read aloud", () => {
  chat.say("recap");
  expect(chat.press("Read aloud").text).toContain("The nightstand, number 1, cost 12.00");
  expect(chat.press("Goal for June").text).toContain("How many pieces in June?");
  expect(chat.press("4 pieces").text).toContain("Goal: 4 pieces a month");
  expect(chat.ledger.books.goals).toMatchObject([{ pieces: 4, per: "month" }]);
});

test("a member gets neither by an old button", () => {
  const { message, buttons } = chat.say("recap");
  const person = chat.ledger.transaction(() =>
    chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
  );
  for (const { press } of buttons)
    expect(chat.tap({ message, press, person }).text).toContain("owner's to tell");
});
