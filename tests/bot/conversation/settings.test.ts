import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat;
beforeEach(() => {
  chat = openChat();
});
afterEach(() => chat.end());

test("settings tell what is in force, and nothing that a later note replaced", () => {
  chat.say("goal 80 pieces this year");
  chat.say("goal 100 pieces this year");
  chat.say("goal 800 a month");
  chat.say("goal 9 pieces a month");
  chat.say("set aside 15% for tax");
  chat.say("set aside 20% for tax");
  const lines = chat.say("settings").text.split("\n");
  expect(lines).toContain("Goals: 9 pieces a month, 800.00 a month, 100 pieces a year");
  expect(lines).toContain("Tax set aside: 20%");
  expect(lines).toContain("Daily message: at 6 pm");
});

test("each way to change them that is shown works as it stands", () => {
  const { text } = chat.say("settings");
  const [, ways = ""] = text.split("To change them, send:\n");
  for (const way of ways.split(/\n| · /)) {
    const { text: reply } = chat.say(way);
    const note = chat.ledger.recentNotes(0, () => true)[0];
    expect([way, reply, note?.state]).toEqual([
      way,
      expect.any(String),
      expect.not.stringMatching("unclear"),
    ]);
  }
  const after = chat.say("settings").text;
  expect(after).toContain("Cents a mile: 74 in 2027");
  expect(after).toContain("Members' notes: not told");
  expect(after).toContain("Daily message: off, quiet until Tue May 12");
});

test("a setting named without a value says what is set, or how", () => {
  expect(chat.say("time zone").text).toBe(
    "Your days go by America/Chicago time.\nTo change it: time zone America/Chicago",
  );
  for (const words of ["mileage rate", "mileage rate 2027", "mileage rate 27 74"])
    expect(chat.say(words).text).toContain("like: mileage rate 2027 74");
  expect(chat.say("mileage rate 2027 74").text).toContain("Miles of 2027 count 74 cents each");
});

test("a time zone is kept with its own capitals", () => {
  chat.say("time zone america/denver");
  expect(chat.ledger.settings.get("timeZone")).toBe("America/Denver");
});

test("the hour of the daily message is said as it was typed", () => {
  expect(chat.say("nudge at 6:30pm").text).toContain("comes at 6:30 pm,\n");
  expect(chat.say("nudge at 7am").text).toContain("comes at 7 am,");
  expect(chat.say("settings").text).toContain("Daily message: at 7 am");
});

describe("an hour for the daily message that is past already", () => {
  test("starts tomorrow", () => {
    const late = openChat({ start: "2026-05-09T17:00:00Z" });
    expect(late.say("nudge at 2:30am").text).toContain("at 2:30 am, from tomorrow");
    expect(late.ledger.reminders.has("2026-05-09", "nudge")).toBe(true);
    late.end();
  });

  test("one that is still to come starts today", () => {
    const early = openChat({ start: "2026-05-09T17:00:00Z" });
    expect(early.say("nudge at 9pm").text).not.toContain("tomorrow");
    expect(early.ledger.reminders.has("2026-05-09", "nudge")).toBe(false);
    early.end();
  });
});
