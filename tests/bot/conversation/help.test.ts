import { afterEach, beforeEach, expect, test } from "vitest";
import { verbs } from "../../../core/verbs/list.ts";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

const PAGES = [
  "help",
  "help notes",
  "help costs",
  "help deals",
  "help slips",
  "help questions",
  "help words",
  "help answers",
];

test("every page of the help fits a phone: a screen of lines, none over 40 characters", () => {
  for (const page of PAGES) {
    const lines = chat.say(page).text.split("\n");
    expect([page, lines.length]).toEqual([page, expect.any(Number)]);
    expect(lines.length).toBeLessThanOrEqual(20);
    expect(lines.filter((line) => [...line].length > 40)).toEqual([]);
  }
});

test("every kind of note has its example on a page, and the first page names the others", () => {
  const all = PAGES.map((page) => chat.say(page).text).join("\n");
  for (const { kind, example } of verbs) if (kind !== "ask") expect(all).toContain(example);
  for (const page of PAGES.slice(2, 7)) expect(chat.say("help").text).toContain(page);
});

test("a page that is not there is said", () => {
  expect(chat.say("help sofas").text).toContain("There is no page on sofas. There is one on questions, ");
  expect(chat.say("help deposits").text).toContain("A deposit is not earned until the sale.");
});

test("a list of notes is no answer, and the piece spoken of is a button", () => {
  chat.say("bought dresser 30");
  expect(chat.say("listed 140").text).toContain("What did you list?");
  expect(chat.say("last 3 notes").text).toContain("bought #1 dresser 30.00");
  const asked = chat.say("done");
  expect(asked.text).toContain("What is finished?");
  expect(asked.buttons.map(({ label }) => label)).toContain("#1 dresser");
});
