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
  for (const page of PAGES.slice(2)) expect(chat.say("help").text).toContain(page);
});

test("a page that is not there is said", () => {
  expect(chat.say("help sofas").text).toBe("There is no page on sofas. Send: help");
});
