import { describe, expect, test } from "vitest";
import { takeAnswer } from "../../../../core/decide/answering/answer.ts";
import { type Ask, NEVER_MIND } from "../../../../core/decide/decision.ts";
import { askMissing } from "../../../../core/decide/missing.ts";
import { readMessage } from "../../../../core/notes/read.ts";
import type { Reading } from "../../../../core/notes/reading.ts";

const TODAY = "2026-05-09";

/** What an answer to the question that a note's first gap raises does. */
function answered(note: string, answer: string, ask?: Ask) {
  const [reading] = readMessage(note, TODAY) as [Reading];
  const matter = { reading, said: TODAY };
  const said = { text: answer, today: TODAY, readings: readMessage(answer, TODAY) };
  return takeAnswer({ matter, ask: ask ?? askMissing(reading)! }, said);
}

describe("an answer fills just what was asked", () => {
  test.each([
    ["bought dresser", "35", { price: 3500, missing: [] }],
    ["bought dresser", "12.50 cash", { price: 1250, method: "cash", missing: [] }],
    ["bought dresser", "it was 35", { price: 3500, missing: [] }],
    ["bought dresser", "free", { price: 0, missing: [] }],
    ["sold dresser", "sold it for 190", { price: 19000, missing: [] }],
    ["sold dresser", "190 to neighbor", { price: 19000, buyer: "neighbor", missing: [] }],
    ["sold dresser", "190 fee 5", { price: 19000, fee: 500, missing: [] }],
    ["worked on hutch", "1h30", { minutes: 90, missing: [] }],
    ["bought stools 60", "3 stools", { pieces: [{ name: "stool", count: 3 }], missing: [] }],
    ["paid loan", "250", { amount: 25000, missing: [] }],
    ["spent 18", "glue", { what: "glue", category: "materials", missing: [] }],
  ])("%s: %s", (note, answer, change) => {
    expect(answered(note, answer)).toEqual({ kind: "settle", change });
  });

  test("never mind drops it", () => {
    expect(answered("bought dresser", "never mind")).toEqual({ kind: "drop" });
  });
});

describe("what is a note of its own is no answer", () => {
  test.each([
    ["sold dresser", "lamp 30"],
    ["sold dresser", "sold lamp 30"],
    ["sold dresser", "bought lamp 30"],
    ["sold dresser", "month"],
    ["sold dresser", "30 miles"],
    ["sold dresser", "-5"],
    ["sold dresser", "19.995"],
    ["sold dresser", "20 or 30"],
    ["bought stools 60", "2 lamps"],
    ["spent 18", "sold chair"],
    ["worked on hutch", "sanding desk 2h"],
  ])("%s: %s", (note, answer) => {
    expect(answered(note, answer)).toBeNull();
  });
});

describe("which of several", () => {
  const two = (number: number) => ({
    pieces: [
      { number, count: 1 },
      { name: "lamp", count: 1 },
    ],
  });
  const ask: Ask = {
    prompt: "Which dresser did you sell?",
    wants: "pieces",
    mention: 0,
    choices: [
      { label: "#1 tall dresser, bought", effect: { kind: "settle", change: two(1) } },
      { label: "#2 white dresser, bought", effect: { kind: "settle", change: two(2) } },
      NEVER_MIND,
    ],
  };

  test.each(["#2", "2", "the white one", "white dresser", "#2 white dresser, bought"])("%s", (answer) => {
    expect(answered("sold dresser and lamp 90", answer, ask)).toEqual({ kind: "settle", change: two(2) });
  });

  test("a piece that is no candidate takes the place of the doubtful one only", () => {
    const effect = answered("sold dresser and lamp 90", "#7", ask);
    expect(effect).toMatchObject({ change: { pieces: [{ number: 7 }, { name: "lamp" }] } });
  });

  test.each(["7", "dresser 30", "yes"])("%s is none of them", (answer) => {
    expect(answered("sold dresser and lamp 90", answer, ask)).toBeNull();
  });
});
