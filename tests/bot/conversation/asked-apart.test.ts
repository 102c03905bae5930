import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
  for (const note of ["bought lamp 3", "bought desk 20", "finished desk", "loan 5000 at 5%"]) chat.say(note);
});
afterEach(() => chat.end());

describe("a note with a question behind it", () => {
  test.each([
    ["sold lamp 14, how am i doing this month?", "Sold #1 lamp for 14.00", "Profit +11.00"],
    ["paid 90 on the loan, how much is left on the loan?", "Paid loan 90.00", "4,910.00 left today"],
    ["listed the lamp 30. what else is not listed yet", "Listed #1 lamp at 30.00", "1 finished, not listed"],
    ["sold the desk for 60 and what did it make", "Sold #2 desk for 60.00", "40.00 (1 piece)"],
  ])("%s", (said, recorded, answered) => {
    const { text } = chat.say(said);
    expect(text).toContain(recorded);
    expect(text).toContain(answered);
  });

  test("is one question where it only supposes", () => {
    const before = chat.statement();
    expect(chat.say("put 1000 on the loan, what would i save").text).not.toContain("Paid loan");
    expect(chat.statement()).toEqual(before);
  });
});

describe("two questions", () => {
  test.each([
    ["what is unsold, and what was my best flip", ["2 unsold", "Profit, "]],
    ["how much tax do i owe and how many miles did i drive this year", ["Tax 2", "Miles, 2"]],
    ["what did i spend this month? what is on hold?", ["Spent, ", "hold"]],
  ])("%s", (said, answers) => {
    const { text } = chat.say(said);
    for (const answer of answers) expect(text.toLowerCase()).toContain(answer.toLowerCase());
  });
});
