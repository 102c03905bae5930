import { afterEach, beforeEach, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
  for (const note of [
    "bought dresser 30 yard sale 2026-04-02",
    "paint 12.50 for dresser 2026-04-03",
    "paint 4 2026-05-04",
    "wax 3 2026-05-05",
    "sold dresser 120 cash 2026-05-06",
  ])
    chat.say(note);
});
afterEach(() => chat.end());

const first = (text: string): string => chat.say(text).text.split("\n")[0]!;

test("what is asked right behind a question is the same of another time, thing or grouping", () => {
  expect(first("how much on paint in april")).toBe("Paint, April: 12.50 (1 note)");
  expect(first("and in may?")).toBe("Paint, May: 4.00 (1 note)");
  expect(first("what about wax")).toBe("Wax, May: 3.00 (1 note)");
  expect(first("and this year?")).toBe("Wax, 2026 so far: 3.00 (1 note)");
  expect(chat.say("by month").text).toContain("May 2026: 3.00");
  expect(first("who bought #1")).toContain("#1 dresser");
  expect(first("what did i sell in april")).toContain("April: nothing noted");
  expect(first("and in may?")).toContain("Sold, May: 1 note");
});

test("the other end of an order, and another figure of the same days", () => {
  expect(first("best kind")).toMatch(/^Profit, ever, highest first: /);
  expect(first("worst?")).toMatch(/^Profit, ever, lowest first: /);
  expect(first("how much did i make in may")).toMatch(/^Made, May: /);
  expect(first("and wax?")).toBe("Wax, May: 3.00 (1 note)");
  expect(first("paint in may")).toBe("Paint, May: 4.00 (1 note)");
  expect(first("in april")).toBe("Paint, April: 12.50 (1 note)");
});

test("a note behind a question stays a note, and a question of its own one", () => {
  chat.say("how much on paint in april");
  const before = chat.ledger.books.facts.length;
  chat.say("and wax 5");
  expect(chat.ledger.books.facts).toHaveLength(before + 1);
  expect(first("may?")).not.toContain("Paint");
});

test("nothing is followed up where nothing was asked", () => {
  expect(chat.say("more").text).not.toContain("of it");
  expect(chat.say("and in may?").text).not.toContain("Paint");
});

test("beyond ten rows the next ten are a tap or a word away", () => {
  for (let number = 1; number <= 24; number += 1) chat.say(`gas ${number} 2026-03-${number + 1}`);
  const said = chat.say("show gas");
  expect(said.text).toContain("and 14 more");
  const more = said.buttons.find(({ label }) => label === "More")!;
  const next = chat.tap({ message: said.message, press: more.press });
  expect(next.text.split("\n")[0]).toBe("Spent, gas, ever, 11 to 20 of 24:");
  expect(next.text.match(/gas \d/g)).toHaveLength(10);
  const last = chat.say("more");
  expect(last.text).toContain("21 to 24 of 24");
  expect(last.buttons.some(({ label }) => label === "More")).toBe(false);
  expect(chat.say("remove b").text).toContain("3.00");
  expect(chat.say("more").text).toContain("That was all of it.");
  chat.say("gas by month");
  expect(chat.tap({ message: said.message, press: more.press }).text).toContain("11 to 20");
});

test("an answer about one piece has its story, one about a month the one before and the year", () => {
  expect(chat.say("profit on #1").buttons.map(({ label }) => label)).toContain("Its story");
  const labels = chat.say("revenue in may").buttons.map(({ label }) => label);
  expect(labels).toEqual(["April", "By month", "This year"]);
  expect(chat.press("This year").text).toContain("Brought in, 2026 so far: 120.00");
});

test("whether that is more than another time or thing puts both beside each other", () => {
  expect(first("how much on paint in april")).toBe("Paint, April: 12.50 (1 note)");
  expect(first("is that more than in may?")).toContain("difference 8.50");
  expect(first("paint in may")).toBe("Paint, May: 4.00 (1 note)");
  expect(first("is that more than last month")).toContain("difference -8.50");
  expect(first("how much on paint")).toContain("Paint, ever: 16.50");
  expect(first("more than wax?")).toContain("difference 13.50");
});
