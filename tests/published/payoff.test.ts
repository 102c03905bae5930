import { nper, pmt } from "financial";
import { expect } from "vitest";
import { accruedOn } from "../../core/books/loan.ts";
import { addDays } from "../../core/calendar.ts";
import { Ledger } from "../books/ledger.ts";
import { projected } from "./projected.ts";
import { publishedTable, rowIds } from "./table.ts";

const COMPUTED = "computed";

interface Level {
  principal: number;
  rate: string;
  payment: number;
}

/** A schedule of level payments of one loan that does end. */
function schedule({ principal, rate, payment }: Level) {
  const payoff = projected([{ principal, rate }], payment);
  if (payoff.kind === "never") throw new Error("never paid off");
  return payoff;
}

/** The level payment in cents that a general finance library gives for a count of months. */
function levelPayment(principal: number, rate: string, months: number): number {
  return Math.round(-pmt(Number(rate) / 1200, months, principal));
}

/** Payments as the finance library counts them, with a fraction for the last. */
function paymentsOf({ principal, rate, payment }: Level): number {
  return nper(Number(rate) / 1200, -payment, principal);
}

/** Simple daily interest in cents of a loan over a count of days. */
function interestOf({ principal, rate }: Omit<Level, "payment">, days: number): number {
  const ledger = new Ledger();
  ledger.add("loan", "2022-01-01", { amount: principal, data: { loan: "loan", rate } });
  return accruedOn(ledger.books().loans.get("loan")!, addDays("2022-01-01", days));
}

/** Dollars of a printed figure that is rounded to the dollar. */
function expectDollars(cents: number, dollars: number): void {
  expect(Math.abs(cents / 100 - dollars)).toBeLessThan(1);
}

publishedTable(
  { title: "A, level payments and payoff", part: "payoff estimate", ids: rowIds("A", 1, 17) },
  ({ row }) => {
    row(
      "A-01",
      "US Education Department, Federal Direct PLUS Loan Master Promissory Note, Borrower's Rights and Responsibilities, chart on capitalized interest",
      () => {
        const paid = { principal: 1_500_000, rate: "10.5", payment: levelPayment(1_500_000, "10.5", 120) };
        const capitalized = {
          principal: 1_657_500,
          rate: "10.5",
          payment: levelPayment(1_657_500, "10.5", 120),
        };
        expect([paid.payment, capitalized.payment]).toEqual([20_240, 22_365]);
        // A payment rounded down to the cent leaves a 121st one of under a dollar.
        // The first column pays a year's interest, 1,575, before the payments begin.
        const firstYear = interestOf({ principal: 1_500_000, rate: "10.5" }, 365);
        expect(firstYear).toBe(157_500);
        expectDollars(schedule(paid).total + firstYear, 25_863.3);
        expectDollars(schedule(capitalized).total, 26_838.57);
      },
    );
    row(
      "A-02",
      "Northwestern University, Student Financial Wellness, interest capitalization (read in a copy)",
      () => {
        const plain = { principal: 1_000_000, rate: "5", payment: levelPayment(1_000_000, "5", 120) };
        const later = { principal: 1_212_300, rate: "5", payment: levelPayment(1_212_300, "5", 120) };
        expect([plain.payment, later.payment]).toEqual([10_607, 12_858]);
        expectDollars(schedule(plain).total, 12_728);
        expectDollars(schedule(later).total, 15_430);
        expectDollars(interestOf({ principal: 1_000_000, rate: "5" }, 1_550), 2_123);
      },
    );
    row(
      "A-03",
      "US Education Department, exit-counseling chart of payments of the 1990s (read in a copy); strict schedule computed",
      () => {
        const first = schedule({ principal: 262_500, rate: "8.25", payment: 5_000 });
        expect(first).toMatchObject({ payments: 66, last: 1_760, total: 326_760 });
        const second = schedule({ principal: 285_500, rate: "8.25", payment: 5_000 });
        expect(second.payments).toBe(73);
        expectDollars(second.total, 3_638);
      },
    );
    row("A-04", "P.L. 119-21 (2025), tiered standard plan of 180 payments; npm financial 0.2, pmt", () => {
      const payment = levelPayment(3_500_000, "4", 180);
      expect(payment).toBe(25_889);
      expectDollars(schedule({ principal: 3_500_000, rate: "4", payment }).total, 46_600.34);
    });
    row("A-05", "NumPy Financial reference, pmt, example", () => {
      expect(-pmt(0.075 / 12, 180, 200_000)).toBeCloseTo(1_854.0247200054619, 8);
      const { total } = schedule({ principal: 20_000_000, rate: "7.5", payment: 185_402 });
      expect(Math.abs(total / 100 - 180 * 1_854.0247200054619)).toBeLessThan(2);
    });
    row("A-06", "NumPy Financial reference, nper, example; schedule computed", () => {
      const level = { principal: 800_000, rate: "7", payment: 15_000 };
      expect(paymentsOf(level)).toBeCloseTo(64.07334877066185, 8);
      expect(schedule(level)).toMatchObject({ payments: 65, last: 1_106, interest: 161_106, total: 961_106 });
    });
    row("A-07", "npm financial 0.2, nper; schedule computed", () => {
      const level = { principal: 1_000_000, rate: "8", payment: 20_000 };
      expect(paymentsOf(level)).toBeCloseTo(61.02, 2);
      expect(schedule(level)).toMatchObject({ payments: 62, last: 451, interest: 220_451 });
    });
    row("A-08", "npm financial 0.2, nper; schedule computed", () => {
      const level = { principal: 300_000, rate: "14", payment: 6_000 };
      expect(paymentsOf(level)).toBeCloseTo(75.477, 3);
      expect(schedule(level)).toMatchObject({ payments: 76, last: 2_871, interest: 152_871 });
    });
    row("A-09", "npm financial 0.2, nper; schedule computed", () => {
      const level = { principal: 100_000, rate: "24", payment: 3_000 };
      expect(paymentsOf(level)).toBeCloseTo(55.4781076387803, 8);
      expect(schedule(level)).toMatchObject({ payments: 56, last: 1_443, interest: 66_443 });
    });
    row("A-10", "npm financial 0.2, nper; schedule computed", () => {
      const level = { principal: 200_000, rate: "12", payment: 30_000 };
      expect(paymentsOf(level)).toBeCloseTo(6.934, 3);
      expect(schedule(level)).toMatchObject({ payments: 7, last: 28_021, interest: 8_021 });
    });
    row("A-11", "npm financial 0.2, nper; schedule computed", () => {
      const level = { principal: 980_000, rate: "12.6", payment: 13_000 };
      expect(paymentsOf(level)).toBeCloseTo(150.116, 3);
      expect(schedule(level)).toMatchObject({ payments: 151, last: 1_503 });
    });
    row("A-12", "npm financial 0.2, pmt", () => {
      expect(levelPayment(6_000_000, "7.5", 120)).toBe(71_221);
      expectDollars(schedule({ principal: 6_000_000, rate: "7.5", payment: 71_221 }).interest, 25_465.27);
    });
    row("A-13", COMPUTED, () => {
      const level = { principal: 1_200_000, rate: "5.5", payment: 30_000 };
      expect(paymentsOf(level)).toBeCloseTo(44.2882971256, 8);
      expect(schedule(level)).toEqual({
        kind: "paid",
        payments: 45,
        last: 8_663,
        interest: 128_663,
        total: 1_328_663,
      });
    });
    row("A-14", COMPUTED, () => {
      const level = { principal: 1_840_000, rate: "6.53", payment: 25_000 };
      expect(paymentsOf(level)).toBeCloseTo(94.2838595477, 8);
      expect(schedule(level)).toMatchObject({ payments: 95, last: 7_116, interest: 517_116 });
    });
    row("A-15", COMPUTED, () => {
      const level = { principal: 2_750_000, rate: "4.5", payment: 40_000 };
      expect(paymentsOf(level)).toBeCloseTo(79.6565496393, 8);
      expect(schedule(level)).toMatchObject({ payments: 80, last: 26_275, interest: 436_275 });
    });
    row("A-16", COMPUTED, () => {
      expect(schedule({ principal: 100_000, rate: "0", payment: 30_000 })).toMatchObject({
        payments: 4,
        last: 10_000,
        interest: 0,
      });
    });
    row("A-17", COMPUTED, () => {
      expect(projected([{ principal: 1_000_000, rate: "6" }], 5_000)).toEqual({ kind: "never" });
    });
  },
);

const REGULATION =
  "12 CFR 1026, Appendix J(c), truth in lending, examples (as transcribed in an open-source test)";
const ODD_PERIODS = "its first period is no whole month, which the monthly projection does not know";

publishedTable(
  { title: "Z, truth-in-lending examples", part: "payoff estimate", ids: rowIds("Z", 1, 7) },
  ({ row, doesNotApply }) => {
    row("Z-01", REGULATION, () => {
      const payoff = schedule({ principal: 500_000, rate: "9.69", payment: 23_000 });
      // The printed rate has two places, so the 24th payment leaves some cents.
      expect(payoff.total - payoff.last).toBe(24 * 23_000);
      expect(payoff.last).toBeLessThan(100);
      expectDollars(payoff.interest, 520);
    });
    for (const id of ["Z-02", "Z-03", "Z-04", "Z-05"]) doesNotApply(id, ODD_PERIODS);
    doesNotApply("Z-06", "one payment differs from the rest, and a pace is level");
    row("Z-07", REGULATION, () => {
      // A single payment is simple interest; the printed rate has two places, so a cent of the 80.00 is missing.
      expect(interestOf({ principal: 100_000, rate: "11.45" }, 255)).toBe(7_999);
    });
  },
);
