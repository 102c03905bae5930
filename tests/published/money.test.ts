import { Decimal } from "decimal.js";
import { expect } from "vitest";
import { roundHalfUp } from "../../core/money.ts";
import { readMessage } from "../../core/notes/read.ts";
import { publishedTable, rowIds } from "./table.ts";

const COMPUTED = "computed";

function cents(dollars: string): number {
  return roundHalfUp(new Decimal(dollars).times(100));
}

publishedTable(
  { title: "N, rounding", part: "rounding", ids: rowIds("N", 1, 8) },
  ({ row, doesNotApply }) => {
    doesNotApply("N-01", "half-even rounding is not used: the books round half up");
    row("N-02", COMPUTED, () => {
      const rounded = ["73.5", "74.5", "75.5", "76.5"].map((value) => roundHalfUp(new Decimal(value)));
      expect(rounded).toEqual([74, 75, 76, 77]);
    });
    doesNotApply("N-03", "half-even rounding is not used: the books round half up");
    row("N-04", `${COMPUTED}, the half-up column`, () => {
      expect(["0.005", "0.015", "0.025", "1.005", "2.675"].map(cents)).toEqual([1, 2, 3, 101, 268]);
    });
    row("N-05", COMPUTED, () => expect(["-0.005", "-1.005"].map(cents)).toEqual([-1, -101]));
    row("N-06", `${COMPUTED}, the half-up column`, () => {
      expect(Array.from({ length: 20 }, () => cents("0.125")).reduce((a, b) => a + b, 0)).toBe(260);
      expect(roundHalfUp(new Decimal("0.125").times(100).times(20))).toBe(250);
    });
    row("N-07", "Node 20; what floats do, and what ours does instead", () => {
      expect(Math.round(-2.5)).toBe(-2);
      expect(roundHalfUp(new Decimal("-2.5"))).toBe(-3);
      expect((1.005).toFixed(2)).toBe("1.00");
      expect([1.15 * 100, 4.35 * 100]).toEqual([114.99999999999999, 434.99999999999994]);
      expect([cents("1.005"), cents("1.15"), cents("4.35")]).toEqual([101, 115, 435]);
    });
    row("N-08", `${COMPUTED}; what is no amount is asked for`, () => {
      const typed = ["45", "45.5", "$1,234.50", "1.2k", "4o"].map(
        (amount) => readMessage(`bought dresser ${amount}`, "2026-05-31")[0],
      );
      expect(typed.slice(0, 4)).toMatchObject([4_500, 4_550, 123_450, 120_000].map((price) => ({ price })));
      // Rejected and asked: a number with a letter in it is no amount, and the note is not half read.
      expect(typed[4]).toMatchObject({ kind: "unclear" });
      expect(typed[4]).not.toHaveProperty("price");
    });
  },
);
