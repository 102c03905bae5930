import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { answer } from "../../../core/questions/ask.ts";
import { askedOf, sayAll } from "./asking.ts";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const say = (...notes: string[]): void => sayAll(chat, notes);
const asked = (question: string): string => askedOf(chat, question);

describe("one piece just spoken of", () => {
  test.each([
    ["profit on that", "Profit, #2, ever: 87.50"],
    ["how much did i make on that one", "Profit, #2, ever: 87.50"],
    ["what did i clear on it", "Profit, #2, ever: 87.50"],
    ["how much do i have into it", "Cost, #2, ever: 52.50"],
    ["what did that cost me", "Cost, #2, ever: 52.50"],
    ["how much paint did it take", "12.50"],
    ["what did that dresser cost me", "Cost, #2, ever: 52.50"],
    ["when did i sell it", "#2 dresser: sold"],
  ])("%s", (question, told) => {
    say("bought hutch 60", "bought dresser 40", "paint 12.50 for dresser", "sold dresser 140");
    expect(asked(question)).toContain(told);
  });

  test.each([
    ["whats it at now", "#2 hutch: listed at 180.00"],
    ["how much would i make on it", "Profit at 180.00, #2 hutch: 120.00 (cost 60.00)"],
    ["what would i clear if it sells at that", "Profit at 180.00, #2 hutch: 120.00"],
    ["what would i make on it at 150", "Profit at 150.00, #2 hutch: 90.00"],
    ["what do i make if i let it go for 150", "Profit at 150.00, #2 hutch: 90.00"],
    ["did it sell", "No. #2 hutch: not sold"],
    ["how much is it", "180.00"],
    ["how long has it been listed", "#2"],
    ["who bought this", "#2 hutch: not sold"],
  ])("%s", (question, told) => {
    say("bought desk 20", "bought hutch 60", "listed hutch 180");
    expect(asked(question)).toContain(told);
  });
});

describe("several pieces just spoken of", () => {
  test.each([
    ["whats my profit on those", "Profit, #2 and #3, ever: 112.50"],
    ["how did they do", "112.50"],
    ["what did they cost me", "Cost, #2 and #3, ever: 62.50"],
    ["how much did i make on the pair", "112.50"],
    ["what did the two of them bring in", "175.00"],
    ["average profit on those", "56.25"],
  ])("%s", (question, told) => {
    say("bought hutch 60", "bought dresser 40 and lamp 10", "paint 12.50 for dresser");
    say("sold dresser 140 and lamp 35");
    expect(asked(question)).toContain(told);
  });

  test("what is at several list prices is told for each and together", () => {
    say("bought desk 20", "bought 2 chairs 30", "listed the chairs 50 each");
    expect(asked("what would i make on both").split("\n")).toEqual([
      "Profit at list price, 2 pieces: 70.00 (cost 30.00)",
      "#2 chair: 35.00 at 50.00",
      "#3 chair: 35.00 at 50.00",
    ]);
    expect(asked("how many of them are left")).toMatch(/: 2$/);
    expect(asked("how many are left of those")).toBe("Chairs unsold, now: 2");
  });

  test("two spoken of one after the other are both, and the last two", () => {
    say("bought desk 20", "bought bench 15", "paint 8 for the bench", "bought hutch 60");
    expect(asked("how much is in the bench")).toContain("23.00");
    expect(asked("and the desk")).toContain("20.00");
    expect(asked("how much do i have into both")).toContain("43.00");
  });
});

test("an answer is what is spoken of next, for questions and for notes", () => {
  say("bought desk 20", "sold desk 90", "bought bench 15", "bought lamp 5");
  expect(asked("how did the desk do")).toContain("70.00");
  expect(asked("what did it cost me")).toContain("Cost, #1, ever: 20.00");
  expect(asked("how much is in the bench")).toContain("15.00");
  expect(chat.say("sold it 55").text).toContain("#2 bench");
});

test("the message replied to is what is spoken of", () => {
  const { message } = chat.say("bought desk 20");
  say("bought bench 15");
  expect(chat.say("how much do i have into it", { replyTo: message }).text).toContain(
    "Cost, #1, ever: 20.00",
  );
});

const POINTING = [
  ["how much do i have into it", "it"],
  ["what did that cost me", "that"],
  ["what did they cost me", "they"],
  ["whats my profit on those", "those"],
  ["how much did i make on both", "both"],
  ["what did the pair cost me", "the pair"],
  ["whats it at now", "it"],
  ["how much would i make on it", "it"],
  ["who bought that one", "that one"],
] as const;

test.each(POINTING)("%s: where nothing was spoken of the word is named", (question, word) => {
  say("gas 20");
  expect(asked(question)).toContain(`"${word}"`);
  const desk = { books: chat.ledger.books, today: "2026-05-09", currency: "USD", people: [], me: null };
  expect(answer(question, { ...desk, mileageRates: {} }).understood).toBe(false);
});

test.each(["how much did i make on those", "what did they cost me", "profit on both"])(
  "%s: of one piece nobody says that",
  (question) => {
    say("bought desk 20", "sold desk 90");
    expect(asked(question)).toContain("I don't know");
  },
);

test.each([
  ["hows it going", "May 2026"],
  ["how long does it take to sell a desk", "Days to sell, desks"],
  ["which desks that sold made over 50", "#1 desk"],
])("%s: a word that stands for nothing said before is passed over", (question, told) => {
  say("bought desk 20", "sold desk 90", "bought lamp 5");
  expect(asked(question)).toContain(told);
});

test.each(["how many of #1 and #2 are left", "what of #1 is left", "which of #1 and #2 is white"])(
  "%s: no piece gets another name by a question",
  (question) => {
    say("bought desk 20", "bought lamp 5");
    asked(question);
    expect(chat.statement().pieces.flatMap(({ traits }) => traits)).toEqual([]);
  },
);
