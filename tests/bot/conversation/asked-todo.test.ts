import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { askedOf, sayAll } from "./asking.ts";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat({ start: "2026-11-26T16:00:00Z" });
});
afterEach(() => chat.end());

const say = (...notes: string[]): void => sayAll(chat, notes);
const asked = (question: string): string => askedOf(chat, question);

describe("what is left", () => {
  test.each([
    "how much left",
    "how much is left",
    "whats left",
    "how much left on it",
    "how much more to go",
    "how much do i still owe on it",
  ])("%s: of the loan right behind a payment", (question) => {
    say("loan 1000 at 6%", "bought desk 20", "sold desk 120", "paid loan 50");
    expect(asked(question)).toMatch(/^Loan: 950\.00 left/);
  });

  test("of pieces, where they were spoken of; else it is asked", () => {
    say("loan 1000 at 6%", "bought desk 20", "bought bench 15");
    expect(asked("whats left")).toContain("2 unsold");
    const said = chat.say("how much left");
    expect(said.buttons.map(({ label }) => label)).toEqual(["Of the loan", "Pieces"]);
    expect(chat.tap({ message: said.message, press: said.buttons[0]!.press }).text).toContain(
      "Loan: 1,000.00",
    );
    expect(asked("how much is left")).toContain("Loan: 1,000.00");
    expect(asked("how much do i have into it")).toContain("Cost, #2");
  });

  test("'paid it' is told, and asks for nothing", () => {
    say("loan 1000 at 6%", "bought desk 20");
    expect(asked("what did i pay for the desk")).toContain("20.00");
    expect(asked("paid it")).not.toContain("20.00");
    asked("how is the loan");
    expect(asked("paid it")).toBe("How much did you send to the loan?");
  });

  test.each([
    "all profit to the loan",
    "put all of it on the loan",
    "all of it to the loan",
    "send it all to the loan",
  ])("%s: what is due is one tap away", (text) => {
    say("loan 1000 at 6%", "bought desk 20", "sold desk 120");
    expect(asked(text)).toBe("Due to the loan: 100.00");
    expect(chat.press("Paid loan 100.00").text).toContain("Paid loan 100.00");
    expect(chat.statement().loans[0]!.paid).toBe("100.00");
    expect(chat.ledger.books.facts.some(({ kind, data }) => kind === "sell" && "buyer" in data)).toBe(false);
  });
});

describe("who still comes", () => {
  beforeEach(() =>
    say(
      "bought hutch 60",
      "bought bench 10",
      "bought desk 20",
      "hold bench for sam",
      "deposit 20 on hutch from maria till friday",
    ),
  );

  test.each([
    [
      "whos coming this week",
      /^To be picked up, this week: 1 piece\n#1 hutch: .*maria.*Nov 27\nNo day said: #2 bench/,
    ],
    ["who still needs to pick up", /^To be picked up: 2 pieces\n#1 hutch/],
    ["anyone picking up tomorrow", /^Yes\. To be picked up, tomorrow: 1 piece\n#1 hutch/],
    ["who is coming saturday", /^Nobody, Sat Nov 28\n/],
    ["when is maria coming", /#1 hutch: 20\.00, for maria, until Fri Nov 27$/],
    ["is anyone coming to get the desk", /^No\. #3 desk: not on hold$/],
    ["anything i need to do", /#1 hutch on hold: 20\.00, for maria, until Fri Nov 27/],
    ["whats left to do", /#1 hutch on hold: 20\.00, for maria, until Fri Nov 27/],
    ["any pickups next week", /"week"/],
  ])("%s", (question, told) => {
    expect(asked(question)).toMatch(told);
  });
});

test("what sits too long is held against a number of days that is said", () => {
  say("bought desk 20 on aug 1", "listed desk 90 on aug 9", "bought bench 15", "listed bench 60");
  for (const question of ["anything sitting too long", "anything gathering dust", "is anything not selling"])
    expect(asked(question)).toBe(
      "Yes. Listed over 30 days (a guess, too few sales to tell): 1 piece\n#1 desk: 109 days at 90.00",
    );
  expect(asked("benches not selling?")).toContain("Longest: #2 bench: 0 days at 60.00");
});

test.each([
  ["goal 800 a month", "how much more do i need to sell", "700.00 to go"],
  ["goal 20 pieces this year", "how many more do i need to sell", "19 to go"],
  ["goal 800 a month", "am i going to make it", "No. November: 100.00 of 800.00"],
])("%s, %s", (goal, question, told) => {
  say(goal, "bought desk 20", "sold desk 120");
  expect(asked(question)).toContain(told);
});

test("how long a piece took is its hours and days; how long it took to sell are days", () => {
  say(
    "bought hutch 60 on nov 1",
    "2h sanding hutch on nov 5",
    "finished hutch on nov 10",
    "sold hutch 200 on nov 20",
  );
  expect(asked("how long did the hutch take me")).toBe(
    "#1 hutch: 2 h of work, done in 9 days, sold in 19 days",
  );
  expect(asked("how long did the hutch take to sell")).toContain("19 days");
});

test.each([
  ["profit per piece", "Average profit, ever: 40.00 (1 piece)"],
  ["average per flip", "Average profit, ever: 40.00 (1 piece)"],
  ["profit on chairs", "Profit, chairs, ever: nothing (0.00)"],
])("%s: a question without its mark", (question, told) => {
  say("bought hutch 60", "sold hutch 100");
  expect(asked(question)).toBe(told);
});

test("a kind of which one piece fits has its story one tap away, by its name", () => {
  say("bought dresser 40", "sold dresser 140", "bought desk 20");
  expect(chat.say("what did i clear on the dresser").buttons.map(({ label }) => label)).toContain(
    "#1 dresser",
  );
});
