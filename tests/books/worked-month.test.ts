import { describe, expect, it } from "vitest";
import { accruedOn } from "../../core/books/loan.ts";
import { monthRow } from "../../core/books/month.ts";
import { profitOf } from "../../core/books/piece.ts";
import { dayOfInstant } from "../../core/calendar.ts";
import type { DaysInYear } from "../../core/notes/reading.ts";
import { Ledger } from "./ledger.ts";

/** The whole-trade worked month, March 2026 in America/Chicago: pieces, month totals and loan together. */
function workedMonth(days: DaysInYear = "365"): Ledger {
  const ledger = new Ledger();
  ledger.add("loan", "2026-03-01", { amount: 1_840_000, data: { loan: "loan", rate: "6.53" } });
  ledger.add("terms", "2026-03-01", { data: { loan: "loan", days } });
  const [desk, chair, mirror] = ledger.buy("2026-03-02", ["desk", "chair", "mirror"], 10_000);
  const [dresser] = ledger.buy("2026-03-03", ["dresser"], 4_000);
  ledger.add("spend", "2026-03-03", {
    pieces: [dresser!],
    amount: 2_250,
    data: { what: "supplies", category: "materials" },
  });
  ledger.add("spend", "2026-03-10", {
    pieces: [desk!],
    amount: 1_875,
    data: { what: "paint", category: "materials" },
  });
  const [table] = ledger.buy("2026-03-12", ["side table"], 0);
  ledger.add("spend", "2026-03-12", {
    pieces: [table!],
    amount: 999,
    data: { what: "spray paint", category: "materials" },
  });
  ledger.add("sell", "2026-03-15", { pieces: [table!], amount: 6_000, data: { fee: 500 } });
  ledger.add("sell", "2026-03-21", { pieces: [dresser!], amount: 21_000, data: {} });
  ledger.add("hold", "2026-03-22", { pieces: [mirror!], amount: 3_000, data: {} });
  ledger.add("sell", "2026-03-28", { pieces: [desk!], amount: 14_000, data: {} });
  ledger.add("fallthrough", "2026-03-30", { pieces: [mirror!], amount: 0, data: {} });
  const lateEvening = dayOfInstant(Date.parse("2026-04-01T04:30:00Z"), "America/Chicago");
  ledger.add("sell", lateEvening, { pieces: [chair!], amount: 4_500, data: {} });
  ledger.add("pay", "2026-04-01", { amount: 32_209, data: { loan: "loan" } });
  ledger.add("refund", "2026-04-05", { pieces: [table!], amount: 2_000, data: {} });
  return ledger;
}

const DESK = 1;
const CHAIR = 2;
const MIRROR = 3;
const DRESSER = 4;
const TABLE = 5;

describe("the worked month", () => {
  const books = workedMonth().books();
  const profit = (number: number) => profitOf(books.pieces.get(number)!);
  const march = monthRow(books, "2026-03", "2026-04-30");
  const april = monthRow(books, "2026-04", "2026-04-30");

  it("W-01 dresser", () => expect(profit(DRESSER)).toBe(14_750));
  it("W-02 desk", () => expect(profit(DESK)).toBe(8_791));
  it("W-03 chair, sold late on the last evening, counts in March", () => {
    expect(profit(CHAIR)).toBe(1_167);
    expect(books.pieces.get(CHAIR)?.sold).toBe("2026-03-31");
    expect(march.flipped).toBe(4);
  });
  it("W-04 side table, before its refund", () => expect(profit(TABLE)).toBe(4_501 - 2_000));
  it("W-05 forfeited hold: income in March, the mirror still unsold at its cost", () => {
    const mirror = books.pieces.get(MIRROR)!;
    expect(mirror).toMatchObject({ depositsKept: 3_000, deposit: 0, hold: null, gone: null, price: 3_333 });
    expect(workedMonth().statement("2026-04-30").unsoldCost).toBe("33.33");
  });
  it("W-06 March profit", () => expect(march.flipProfit).toBe(32_209));
  it("W-07 March cash, gross, and its difference from the profit", () => {
    expect(march).toMatchObject({ cashIn: 48_500, cashOut: 19_624 });
    expect(march.flipProfit - (march.cashIn - march.cashOut)).toBe(3_333);
  });
  it("W-08 the payment: interest first, ÷365", () => {
    expect(books.loans.get("loan")).toMatchObject({
      interestPaid: 10_205,
      principal: 1_817_996,
      paid: 32_209,
    });
    expect(april.paidToLoan).toBe(32_209);
    expect(april.cashOut).toBe(2_000);
  });
  it("W-09 with ÷365.25; ÷366 is the actual year, which 2026 is not", () => {
    const loan = workedMonth("365.25").books().loans.get("loan")!;
    expect(loan).toMatchObject({ interestPaid: 10_198, principal: 1_817_989 });
    const leap = new Ledger();
    leap.add("loan", "2024-03-01", { amount: 1_840_000, data: { loan: "loan", rate: "6.53" } });
    leap.add("terms", "2024-03-01", { data: { loan: "loan", days: "actual" } });
    expect(accruedOn(leap.books().loans.get("loan")!, "2024-04-01")).toBe(10_177);
    leap.add("pay", "2024-04-01", { amount: 32_209, data: {} });
    expect(leap.books().loans.get("loan")!.principal).toBe(1_817_968);
  });
  it("W-10 a later refund is April's and leaves March as it was", () => {
    expect(april.proceeds).toBe(-2_000);
    expect(april.flipProfit).toBe(-2_000);
    expect(march.proceeds).toBe(48_500);
    expect(profit(TABLE)).toBe(2_501);
  });
});
