import { nper, pmt } from "financial";
import { expect } from "vitest";
import { projected } from "./projected.ts";
import { publishedTable, rowIds } from "./table.ts";

const LIBRARY = "npm financial 0.2 (a port of NumPy Financial)";

/** Closeness in parts of the value: ample for the library's floats. */
function expectNear(actual: number, expected: number): void {
  expect(Math.abs(actual - expected) / Math.abs(expected)).toBeLessThan(1e-9);
}

/** Our count of payments must be the library's, rounded up. */
function expectSameCount(principal: number, rate: number, payment: number): void {
  const payoff = projected([{ principal, rate: String(rate) }], payment);
  expect(payoff).toMatchObject({ kind: "paid", payments: Math.ceil(nper(rate / 1200, -payment, principal)) });
}

publishedTable(
  { title: "F, against a general finance library", part: "payoff estimate", ids: rowIds("F", 1, 11) },
  ({ row, doesNotApply }) => {
    doesNotApply("F-01", "savings that grow: the books hold none");
    row("F-02", "NumPy Financial reference, example; npm financial 0.2", () => {
      expectNear(nper(0.07 / 12, -150, 8_000), 64.07334877066185);
      expectSameCount(800_000, 7, 15_000);
    });
    row("F-03", "NumPy Financial reference, example; npm financial 0.2", () => {
      expectNear(pmt(0.075 / 12, 180, 200_000), -1_854.0247200054619);
      // A payment a cent above the library's level one ends within its count of months.
      const payoff = projected([{ principal: 20_000_000, rate: "7.5" }], 185_403);
      expect(payoff).toMatchObject({ kind: "paid", payments: 180 });
    });
    row("F-04", LIBRARY, () => {
      expectNear(nper(0.055 / 12, -300, 12_000), 44.2882971256);
      expectSameCount(1_200_000, 5.5, 30_000);
    });
    row("F-05", LIBRARY, () => {
      expectNear(nper(0.0653 / 12, -250, 18_400), 94.2838595477);
      expectSameCount(1_840_000, 6.53, 25_000);
    });
    row("F-06", LIBRARY, () => {
      expectNear(nper(0.045 / 12, -400, 27_500), 79.6565496393);
      expectSameCount(2_750_000, 4.5, 40_000);
    });
    const levels = [
      ["F-07", 5.5, 120, 27_000, 293.0209504933],
      ["F-08", 6.82, 36, 5_000, 153.9743230854],
      ["F-09", 6.54, 120, 40_500, 460.694000537],
    ] as const;
    for (const [id, rate, months, principal, payment] of levels) {
      row(id, LIBRARY, () => {
        expectNear(pmt(rate / 1200, months, principal), -payment);
        const payoff = projected(
          [{ principal: principal * 100, rate: String(rate) }],
          Math.ceil(payment * 100),
        );
        expect(payoff).toMatchObject({ kind: "paid", payments: months });
        // Rounding by the month moves the sum by less than a cent for each payment.
        expect(payoff.kind === "paid" && Math.abs(payoff.total - payment * 100 * months)).toBeLessThan(
          months,
        );
      });
    }
    row("F-10", "NumPy Financial reference, formula of the zero rate; npm financial 0.2", () => {
      expectNear(nper(0, -300, 1_000), 10 / 3);
      expectSameCount(100_000, 0, 30_000);
    });
    row("F-11", LIBRARY, () => {
      expect((nper(0.07 / 12, -150, 8_000) * 150).toFixed(2)).toBe("9611.00");
      const payoff = projected([{ principal: 800_000, rate: "7" }], 15_000);
      expect(payoff).toMatchObject({ total: 961_106 });
    });
  },
);
