import { expect, test } from "vitest";
import { missedChoice, showReply } from "../../../bot/terminal/screen.ts";

const { choices } = showReply({ text: "Which?", buttons: [[{ label: "One", press: "q:1" }]] });

test("a letter that stands for no choice is a slip, not a note", () => {
  expect(missedChoice(" B ", choices)).toBe("There is no choice b. Now it is a.");
  expect(missedChoice("a", new Map())).toBe("There is nothing to choose now.");
});

test("a choice, an amount and a note are none of these", () => {
  for (const line of ["a", "A", "5", "sold desk 90"]) expect(missedChoice(line, choices)).toBeNull();
});
