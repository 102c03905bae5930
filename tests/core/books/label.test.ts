import { describe, expect, it } from "vitest";
import { labelOf, numbersLabel } from "../../../core/books/label.ts";
import { Ledger } from "../../books/ledger.ts";

describe("several pieces in few words", () => {
  const ledger = new Ledger();
  ledger.buy("2026-05-01", ["desk"], 0);
  ledger.buy("2026-05-01", ["chair", "chair", "chair"], 0);
  ledger.buy("2026-05-02", ["dining set", "dining set"], 0, { set: true });
  ledger.buy("2026-05-03", ["dining set", "dining set"], 0, { set: true });
  ledger.buy("2026-05-03", ["dining set", "dining set"], 0);
  ledger.buy("2026-05-04", ["end table", "end table"], 0, { set: true });
  for (const [index, traits] of [["oak"], ["oak"], ["pine"]].entries()) {
    const made = [{ name: "bench", traits }];
    ledger.add("buy", "2026-05-05", { pieces: [13 + index], amount: 0, data: { made } });
  }
  const books = ledger.books();

  it.each<[string, number[]]>([
    ["#1 desk", [1]],
    ["#1 desk, #2 chair", [1, 2]],
    ["2 chairs (#2, #3)", [2, 3]],
    ["#1 desk, 3 chairs (#2–#4)", [1, 2, 3, 4]],
    // Only what stands side by side goes together: the order is told.
    ["#2 chair, #1 desk, #3 chair", [2, 1, 3]],
    // A set is one however many pieces it has; of two sets or a mere lot there are several.
    ["dining set (#5, #6)", [5, 6]],
    ["4 dining sets (#5–#8)", [5, 6, 7, 8]],
    ["2 dining sets (#9, #10)", [9, 10]],
    ["2 end tables (#11, #12)", [11, 12]],
    // Alike by traits as well as by name.
    ["2 oak benches (#13, #14), #15 pine bench", [13, 14, 15]],
    ["#1 desk", [99, 1]],
    ["", []],
  ])("%s", (words, numbers) => {
    expect(labelOf(books, numbers)).toBe(words);
  });

  it("names three numbers or more in a row by the first and the last, all others each", () => {
    expect([[], [3], [3, 4], [3, 4, 5], [3, 4, 6], [5, 4, 3]].map(numbersLabel)).toEqual([
      "",
      "#3",
      "#3, #4",
      "#3–#5",
      "#3, #4, #6",
      "#5, #4, #3",
    ]);
  });
});
