import { afterAll, beforeAll, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeAll(() => {
  chat = openChat({ start: "2026-11-26T16:00:00Z" });
  for (const note of [
    "bought desk 20 on oct 3",
    "sold desk 90 on oct 10",
    "bought bench 15 on nov 2",
    "sold bench 55 on nov 9",
  ])
    chat.say(note);
});
afterAll(() => chat.end());

test.each([
  ["am i ahead of last month", "No."],
  ["am i way ahead of where i was last month", "No."],
  ["am i up on last month", "No."],
  ["did i beat october", "No."],
  ["better than last month", "No."],
  ["am i behind last month", "Yes."],
  ["are we down from last month", "Yes."],
  ["am i doing worse than october", "Yes."],
  ["am i up or down this month", "Down."],
  ["are we up or down on last month", "Down."],
])("%s: both months side by side, behind %s", (question, opening) => {
  expect(chat.say(question).text).toBe(
    `${opening} Made, side by side: difference -30.00\n  2026-11: 40.00\n  2026-10: 70.00`,
  );
});

test.each([
  ["how does this month compare", /^Made, side by side: difference -30\.00\n.*40\.00\n.*70\.00$/],
  ["how is this year stacking up against last", /^Made, side by side: difference 110\.00\n/],
  ["am i ahead of last year", /^Yes\. Made, side by side: difference 110\.00\n/],
  ["did i sell more than last month", /^No\. Pieces sold, side by side: difference 0\n.*11: 1\n.*10: 1$/],
  ["did i sell more in november than october", /^No\. Pieces sold, side by side: difference 0\n/],
  ["did i buy more chairs than last month", /^No\. Chairs bought, side by side: difference 0\n/],
  ["are sales down from last month", /^Yes\. Brought in, side by side: difference -35\.00\n/],
  ["what did i make ahead of november", /^Made, before November: 70\.00/],
])("%s", (question, told) => {
  expect(chat.say(question).text).toMatch(told);
});
