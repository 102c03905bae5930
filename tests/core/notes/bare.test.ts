import { describe, expect, it } from "vitest";
import * as bare from "../../../core/notes/bare.ts";

const TODAY = "2026-05-12";

describe("bare answers", () => {
  it.each([
    ["35", 3500],
    ["$35", 3500],
    ["35 bucks", 3500],
    ["thirty five", 3500],
    ["it was 12.50", 1250],
    ["12.50 cash", 1250],
    ["1.2k", 120_000],
    ["35 or 40", null],
    ["-5", null],
    ["35 each", null],
    ["sold desk 35", null],
    ["desk 35", null],
    ["about 35", null],
    ["soon", null],
  ])("money: %s", (text, cents) => expect(bare.readBareMoney(text)).toBe(cents));

  it.each([
    ["#4", { number: 4, count: 1 }],
    ["dresser", { name: "dresser", count: 1 }],
    ["the white dresser", { name: "dresser", count: 1, traits: ["white"] }],
    ["the tall one", { traits: ["tall"] }],
    ["white", { traits: ["white"] }],
    ["35", null],
    ["sold dresser 30", null],
    ["dresser and desk", null],
  ])("mention: %s", (text, mention) => expect(bare.readBareMention(text)).toEqual(mention));

  it.each([
    ["yesterday", "2026-05-11"],
    ["today", TODAY],
    ["sat", "2026-05-09"],
    ["on the 3rd", "2026-05-03"],
    ["3/14", "2026-03-14"],
    ["never", null],
    ["sat 40", null],
  ])("day: %s", (text, day) => expect(bare.readBareDay(text, TODAY)).toBe(day));

  it.each([
    ["45 min", 45],
    ["2h", 120],
    ["hour and a half", 90],
    ["45", null],
  ])("duration: %s", (text, minutes) => expect(bare.readBareDuration(text)).toBe(minutes));

  it.each([
    ["24", "24"],
    ["24.5 miles", "24.5"],
    ["7 miles each way", "14"],
    ["$24", null],
  ])("miles: %s", (text, miles) => expect(bare.readBareMiles(text)).toBe(miles));

  it.each([
    ["5.5%", "5.5"],
    ["6", "6"],
    ["6.8 percent", "6.8"],
    ["six bucks", null],
  ])("percent: %s", (text, percent) => expect(bare.readBarePercent(text)).toBe(percent));

  it.each([
    ["4", 4],
    ["four", 4],
    ["a pair", 2],
    ["4 chairs", 4],
    ["4.5", null],
    ["$4", null],
    ["0", null],
  ])("count: %s", (text, count) => expect(bare.readBareCount(text)).toBe(count));

  it.each([
    ["yes", "yes"],
    ["Yep!", "yes"],
    ["y", "yes"],
    ["ok", "yes"],
    ["no", "no"],
    ["nah", "no"],
    ["never mind", "never mind"],
    ["nvm", "never mind"],
    ["cancel", "never mind"],
    ["no 35", null],
    ["yes sold it", null],
  ])("yes or no: %s", (text, answer) => expect(bare.readYesNo(text)).toBe(answer));

  it.each(["", " ", "🎉", "💸".repeat(3000), "9".repeat(4096), "a ".repeat(2048)])(
    "any text gives a value",
    (text) => {
      expect(bare.readBareMoney(text)).toBeNull();
      expect(bare.readBareDuration(text)).toBeNull();
      expect(bare.readYesNo(text)).toBeNull();
    },
  );
});
