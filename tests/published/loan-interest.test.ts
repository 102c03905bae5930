import { expect } from "vitest";
import type { Loan } from "../../core/books/books.ts";
import { accruedOn, balanceOn, interestADay, owedOn } from "../../core/books/loan.ts";
import { addDays } from "../../core/calendar.ts";
import { roundHalfUp } from "../../core/money.ts";
import type { DaysInYear, PaymentOrder } from "../../core/notes/reading.ts";
import { Ledger } from "../books/ledger.ts";
import { publishedTable, rowIds } from "./table.ts";

const COMPUTED = "computed";
const OPENED = "2026-01-31";

interface Terms {
  principal: number;
  rate: string;
  days?: DaysInYear;
  opened?: string;
}

function ledgerOf({ principal, rate, days = "365", opened = OPENED }: Terms): Ledger {
  const ledger = new Ledger();
  ledger.add("loan", opened, { amount: principal, data: { loan: "loan", rate } });
  ledger.add("terms", opened, { data: { loan: "loan", days } });
  return ledger;
}

function loanIn(ledger: Ledger, name = "loan"): Readonly<Loan> {
  return ledger.books().loans.get(name)!;
}

/** Interest in cents that a loan earns in a count of days from its first. */
function interestFor(terms: Terms, count: number): number {
  return accruedOn(loanIn(ledgerOf(terms)), addDays(terms.opened ?? OPENED, count));
}

/** What the first day of a loan earns, in cents, exact. */
function firstDay(terms: Terms): number {
  return interestADay(loanIn(ledgerOf(terms)), terms.opened ?? OPENED).toNumber();
}

const PAYMENTS = [
  ["2026-02-14", 25_000],
  ["2026-03-31", 18_000],
  ["2026-05-03", 1_000],
  ["2026-06-30", 40_000],
] as const;

/** The loan of rows L-20 to L-25 after its first payments. */
function paying(count: number, days: DaysInYear = "365"): Ledger {
  const ledger = ledgerOf({ principal: 1_200_000, rate: "5.5", days });
  for (const [day, amount] of PAYMENTS.slice(0, count)) ledger.add("pay", day, { amount, data: {} });
  return ledger;
}

/** Interest that the latest of some payments took, in cents. */
function interestOfLatest(count: number, days: DaysInYear = "365"): number {
  return loanIn(paying(count, days)).interestPaid - loanIn(paying(count - 1, days)).interestPaid;
}

function twoLoans(payment: number, order: PaymentOrder): Ledger {
  const ledger = new Ledger();
  ledger.add("loan", OPENED, { amount: 500_000, data: { loan: "a", rate: "6.8" } });
  ledger.add("loan", OPENED, { amount: 750_000, data: { loan: "b", rate: "4.5" } });
  ledger.add("terms", OPENED, { data: { order } });
  ledger.add("pay", addDays(OPENED, 30), { amount: payment, data: {} });
  return ledger;
}

const IDS = [...rowIds("L", 1, 11), ...rowIds("L", 20, 30)];

publishedTable(
  { title: "L, simple daily interest and how payments apply", part: "daily interest", ids: IDS },
  ({ row }) => {
    row(
      "L-01",
      "US Education Department, Direct Loan Servicing, How can I calculate the amount of interest on my own? (dl.ed.gov, archived 7 May 2009); printed 68.66 with the factor rounded first",
      () => {
        const ledger = ledgerOf({ principal: 950_000, rate: "8.25", days: "365.25" });
        ledger.add("pay", addDays(OPENED, 32), { amount: 16_000, data: {} });
        // The page rounds the factor to eight places first; multiplied first and rounded once it is a cent more.
        expect(loanIn(ledger)).toMatchObject({ interestPaid: 6_867, principal: 950_000 - 9_133 });
      },
    );
    row(
      "L-02",
      "US Education Department, Direct Loan Servicing, Interest Rate Factor, table (dl.ed.gov, archived 7 May 2009)",
      () => {
        const factors = ["8.99", "8.25", "7.59"].map((rate) =>
          (firstDay({ principal: 100, rate, days: "365.25" }) / 100).toFixed(8),
        );
        expect(factors).toEqual(["0.00024613", "0.00022587", "0.00020780"]);
      },
    );
    row("L-03", COMPUTED, () => {
      expect(interestFor({ principal: 1_000_000, rate: "6", days: "365.25" }, 30)).toBe(4_928);
    });
    row("L-04", COMPUTED, () => {
      expect(interestFor({ principal: 1_000_000, rate: "5.75", days: "365.25" }, 30)).toBe(4_723);
    });
    row(
      "L-05",
      "Tufts University, Cummings School of Veterinary Medicine, financial aid, page on loan interest (read in a copy)",
      () => {
        const terms = { principal: 4_050_000, rate: "6.54" };
        expect(firstDay(terms).toFixed(0)).toBe("726");
        expect(interestFor(terms, 365)).toBe(264_870);
      },
    );
    row("L-06", COMPUTED, () => {
      expect(interestFor({ principal: 1_000_000, rate: "5.50" }, 1)).toBe(151);
    });
    row(
      "L-07",
      "waycalculator.com, Student Loan Interest Calculator, example; printed 50.84 rounds the day first, corrected 50.96",
      () => {
        expect(interestFor({ principal: 1_000_000, rate: "6" }, 31)).toBe(5_096);
      },
    );
    row(
      "L-08",
      "onesdr.com, Daily Interest Calculator for Student Loans, examples (1.37 a day, about 41 a month)",
      () => {
        const terms = { principal: 1_000_000, rate: "5" };
        expect(firstDay(terms).toFixed(0)).toBe("137");
        expect(interestFor(terms, 30)).toBe(4_110);
      },
    );
    row("L-09", `${COMPUTED}; the fourth column, 360 days, is no setting of a loan`, () => {
      const terms = { principal: 1_200_000, rate: "5.5", opened: "2028-01-01" };
      const by = (days: DaysInYear): number => interestFor({ ...terms, days }, 31);
      expect([by("365"), by("365.25"), by("actual")]).toEqual([5_605, 5_602, 5_590]);
    });
    row("L-10", COMPUTED, () => {
      const terms = { principal: 1_200_000, rate: "5.5" };
      expect([28, 29, 30].map((days) => interestFor(terms, days))).toEqual([5_063, 5_244, 5_425]);
    });
    row("L-11", COMPUTED, () => {
      const terms = { principal: 1_200_000, rate: "5.5", opened: "2027-12-15" };
      expect(interestFor({ ...terms, days: "365" }, 31)).toBe(5_605);
      expect(interestFor({ ...terms, days: "actual" }, 31)).toBe(5_599);
    });
    row("L-20", COMPUTED, () => {
      expect(loanIn(paying(1))).toMatchObject({ interestPaid: 2_532, principal: 1_177_532, accrued: 0 });
    });
    row("L-21", COMPUTED, () => {
      expect(interestOfLatest(2)).toBe(7_985);
      expect(loanIn(paying(2)).principal).toBe(1_167_517);
    });
    row("L-22", COMPUTED, () => {
      const loan = loanIn(paying(3));
      expect(loan).toMatchObject({ principal: 1_167_517, accrued: 4_806 });
      expect(interestOfLatest(3)).toBe(1_000);
      expect(balanceOn(loan, "2026-05-03")).toBe(1_172_323);
    });
    row("L-23", COMPUTED, () => {
      expect(accruedOn(loanIn(paying(3)), "2026-06-30")).toBe(4_806 + 10_204);
      expect(interestOfLatest(4)).toBe(15_010);
      expect(loanIn(paying(4)).principal).toBe(1_142_527);
    });
    row("L-24", COMPUTED, () => {
      const loan = loanIn(paying(4));
      expect(accruedOn(loan, "2026-07-15")).toBe(2_582);
      expect(balanceOn(loan, "2026-07-15")).toBe(1_145_109);
    });
    row("L-25", COMPUTED, () => {
      expect(interestOfLatest(1, "365.25")).toBe(2_530);
      expect(interestOfLatest(2, "365.25")).toBe(7_979);
      expect(accruedOn(loanIn(paying(2, "365.25")), "2026-05-03")).toBe(5_802);
      expect(accruedOn(loanIn(paying(3, "365.25")), "2026-06-30")).toBe(5_802 - 1_000 + 10_197);
      expect(loanIn(paying(4, "365.25")).principal).toBe(1_142_508);
    });
    row("L-26", COMPUTED, () => {
      const ledger = ledgerOf({ principal: 8_540, rate: "5.5" });
      const day = addDays(OPENED, 20);
      expect(accruedOn(loanIn(ledger), day)).toBe(26);
      ledger.add("pay", day, { amount: 10_000, data: {} });
      expect(ledger.problem()).toEqual({ kind: "more than owed", owed: 8_566 });
      const exact = ledgerOf({ principal: 8_540, rate: "5.5" });
      exact.add("pay", day, { amount: 8_566, data: {} });
      expect(owedOn(exact.books(), day)).toBe(0);
    });
    row("L-27", COMPUTED, () => {
      const ledger = twoLoans(50_000, "highest");
      expect(loanIn(ledger, "a")).toMatchObject({ interestPaid: 2_795, principal: 455_569 });
      expect(loanIn(ledger, "b")).toMatchObject({ interestPaid: 2_774, principal: 750_000 });
    });
    row("L-28", COMPUTED, () => {
      const ledger = twoLoans(50_000, "prorata");
      expect(loanIn(ledger, "a").principal).toBe(482_228);
      expect(loanIn(ledger, "b").principal).toBe(723_341);
    });
    row("L-29", COMPUTED, () => {
      const ledger = twoLoans(600_000, "highest");
      expect(loanIn(ledger, "a").principal).toBe(0);
      expect(loanIn(ledger, "b").principal).toBe(655_569);
    });
    row(
      "L-30",
      `${COMPUTED}; the books never capitalize by themselves, a statement's balance does it`,
      () => {
        const ledger = ledgerOf({ principal: 1_200_000, rate: "5.5" });
        expect((firstDay({ principal: 1_200_000, rate: "5.5" }) / 100).toFixed(4)).toBe("1.8082");
        ledger.add("statement", OPENED, { amount: 1_236_025, data: { loan: "loan" } });
        const day = interestADay(loanIn(ledger), OPENED);
        expect(day.div(100).toFixed(4)).toBe("1.8625");
        expect(roundHalfUp(day)).toBe(186);
      },
    );
  },
);
