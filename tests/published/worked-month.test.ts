import { expect } from "vitest";
import type { Loan } from "../../core/books/books.ts";
import { accruedOn } from "../../core/books/loan.ts";
import { earmarked, monthRow } from "../../core/books/month.ts";
import { profitOf } from "../../core/books/piece.ts";
import { dayOfInstant } from "../../core/calendar.ts";
import type { DaysInYear } from "../../core/notes/reading.ts";
import { Ledger } from "../books/ledger.ts";
import { publishedTable, rowIds } from "./table.ts";

const COMPUTED = "computed";
const THROUGH = "2026-04-30";

/** The worked month of March 2026 in America/Chicago, by facts. */
function workedMonth(): Ledger {
  const ledger = new Ledger();
  const [desk, chair, mirror] = ledger.buy("2026-03-02", ["desk", "chair", "mirror"], 10_000) as [
    number,
    number,
    number,
  ];
  const [dresser] = ledger.buy("2026-03-03", ["dresser"], 4_000) as [number];
  const spend = (day: string, piece: number, amount: number): void => {
    ledger.add("spend", day, { pieces: [piece], amount, data: { what: "paint", category: "materials" } });
  };
  const sell = (day: string, piece: number, amount: number, fee?: number): void => {
    ledger.add("sell", day, { pieces: [piece], amount, data: fee === undefined ? {} : { fee } });
  };
  spend("2026-03-03", dresser, 2_250);
  spend("2026-03-10", desk, 1_875);
  const [table] = ledger.buy("2026-03-12", ["side table"], 0) as [number];
  spend("2026-03-12", table, 999);
  sell("2026-03-15", table, 6_000, 500);
  ledger.add("hold", "2026-03-20", { pieces: [mirror], amount: 3_000, data: {} });
  sell("2026-03-21", dresser, 21_000);
  sell("2026-03-28", desk, 14_000);
  ledger.add("fallthrough", "2026-03-30", { pieces: [mirror], amount: 3_000, data: { kept: true } });
  sell(dayOfInstant(Date.parse("2026-04-01T04:30:00Z"), "America/Chicago"), chair, 4_500);
  return ledger;
}

const [DESK, CHAIR, MIRROR, DRESSER, TABLE] = [1, 2, 3, 4, 5] as const;

/** The loan of rows W-08 and W-09, opened on the first of March of a year and paid on the first of April. */
function loanAfter(days: DaysInYear, year = "2026"): Readonly<Loan> {
  const ledger = new Ledger();
  ledger.add("loan", `${year}-03-01`, { amount: 1_840_000, data: { loan: "loan", rate: "6.53" } });
  ledger.add("terms", `${year}-03-01`, { data: { loan: "loan", days } });
  ledger.add("pay", `${year}-04-01`, { amount: 32_209, data: {} });
  return ledger.books().loans.get("loan")!;
}

publishedTable(
  { title: "W, the worked month", part: "a piece's profit and the month", ids: rowIds("W", 1, 10) },
  ({ row }) => {
    const profit = (number: number): number | null => profitOf(workedMonth().piece(number));
    const march = () => monthRow(workedMonth().books(), "2026-03", THROUGH);
    row("W-01", COMPUTED, () => expect(profit(DRESSER)).toBe(14_750));
    row("W-02", COMPUTED, () => expect(profit(DESK)).toBe(8_791));
    row("W-03", COMPUTED, () => {
      expect(profit(CHAIR)).toBe(1_167);
      expect(workedMonth().piece(CHAIR).sold).toBe("2026-03-31");
      expect(march().flipped).toBe(4);
    });
    row("W-04", COMPUTED, () => expect(profit(TABLE)).toBe(4_501));
    row("W-05", COMPUTED, () => {
      const mirror = workedMonth().piece(MIRROR);
      expect(mirror).toMatchObject({ depositsKept: 3_000, gone: null, price: 3_333, deposit: 0 });
      expect(workedMonth().statement(THROUGH).unsoldCost).toBe("33.33");
    });
    row("W-06", COMPUTED, () => expect(march().flipProfit).toBe(32_209));
    row("W-07", COMPUTED, () => {
      const { cashIn, cashOut, flipProfit } = march();
      expect([cashIn, cashOut]).toEqual([48_500, 19_624]);
      expect(flipProfit - (cashIn - cashOut)).toBe(3_333);
    });
    row("W-08", COMPUTED, () => {
      expect(loanAfter("365")).toMatchObject({ interestPaid: 10_205, principal: 1_817_996 });
      expect(earmarked(workedMonth().books(), "2026-03-31")).toBe(32_209);
    });
    row("W-09", `${COMPUTED}; 366 days are the actual year of 2028`, () => {
      expect(loanAfter("365.25")).toMatchObject({ interestPaid: 10_198, principal: 1_817_989 });
      const leap = loanAfter("actual", "2028");
      expect(leap).toMatchObject({ interestPaid: 10_177, principal: 1_817_968 });
      expect(accruedOn(leap, "2028-04-01")).toBe(0);
    });
    row("W-10", COMPUTED, () => {
      const ledger = workedMonth();
      ledger.add("refund", "2026-04-05", { pieces: [TABLE], amount: 2_000, data: {} });
      const books = ledger.books();
      expect(monthRow(books, "2026-04", THROUGH).flipProfit).toBe(-2_000);
      expect(monthRow(books, "2026-03", THROUGH).flipProfit).toBe(32_209);
      expect(profitOf(books.pieces.get(TABLE)!)).toBe(2_501);
    });
  },
);
