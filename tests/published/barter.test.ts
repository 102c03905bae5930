import { describe, expect, it } from "vitest";
import { monthRow } from "../../core/books/month.ts";
import { profitOf } from "../../core/books/piece.ts";
import { Ledger } from "../books/ledger.ts";
import { ask } from "../core/answers/asking.ts";

/**
 * Barter: IRS Topic 420, bartering income: the fair market value of goods received in barter is income of the year in
 * which they are received. What was received has that value as its cost from then on (IRS Publication 551, basis
 * other than cost).
 */
describe("a trade, by the rule for bartered goods", () => {
  it("B-01 goods for goods of 120.00: 120.00 of income, and 120.00 the basis of what came", () => {
    const ledger = new Ledger();
    const [chair] = ledger.buy("2026-05-01", ["chair"], 4_000);
    const made = [{ name: "dresser", traits: [] }];
    ledger.add("trade", "2026-05-10", { pieces: [chair!, 2], amount: 12_000, data: { made } });
    expect(monthRow(ledger.books(), "2026-05", "2026-05-31")).toMatchObject({
      proceeds: 12_000,
      flipProfit: 8_000,
    });
    expect(ledger.piece(2).price).toBe(12_000);
  });

  it("B-02 with 30.00 paid on top for goods of 150.00: still 120.00 of income, a basis of 150.00", () => {
    const ledger = new Ledger();
    const [chair] = ledger.buy("2026-05-01", ["chair"], 4_000);
    const made = [{ name: "dresser", traits: [] }];
    ledger.add("trade", "2026-05-10", { pieces: [chair!, 2], amount: 12_000, data: { made, paid: 3_000 } });
    expect(profitOf(ledger.piece(1))).toBe(8_000);
    expect(ledger.piece(2).price).toBe(15_000);
  });

  it("B-03 with 30.00 received besides goods of 90.00: income of both together, a basis of 90.00", () => {
    const ledger = new Ledger();
    const [chair] = ledger.buy("2026-05-01", ["chair"], 4_000);
    const made = [{ name: "bench", traits: [] }];
    ledger.add("trade", "2026-05-10", {
      pieces: [chair!, 2],
      amount: 12_000,
      data: { made, received: 3_000 },
    });
    expect(profitOf(ledger.piece(1))).toBe(8_000);
    expect(ledger.piece(2).price).toBe(9_000);
  });

  it("is income of the year of receipt, and the tax answer says what stands for the value", () => {
    const ledger = new Ledger();
    const [chair] = ledger.buy("2025-12-01", ["chair"], 4_000);
    const made = [{ name: "dresser", traits: [] }];
    ledger.add("trade", "2026-01-02", { pieces: [chair!, 2], amount: 12_000, data: { made } });
    const { text } = ask(ledger.books(), "2026-02-01", "tax");
    expect(text).toContain("Net with vehicle costs +80.00");
    expect(text).toContain("trades count as sales, 120.00");
  });
});

/**
 * Cash method: IRS Publication 334, accounting methods: income is counted in the year in which it is actually or
 * constructively received.
 */
describe("money still owed, on the cash basis", () => {
  function soldInDecember(): Ledger {
    const ledger = new Ledger();
    const [hutch] = ledger.buy("2025-11-01", ["hutch"], 6_000);
    ledger.add("sell", "2025-12-20", { pieces: [hutch!], amount: 20_000, data: { owed: 5_000 } });
    return ledger;
  }

  it("counts in the year in which it comes: 50.00 of a sale in December, paid in January", () => {
    const ledger = soldInDecember();
    ledger.add("collect", "2026-01-15", { pieces: [1], amount: 5_000, data: {} });
    const books = ledger.books();
    const sold = ask(books, "2026-02-01", "tax", { year: "2025" }).text;
    expect(sold).toContain("Net with vehicle costs +90.00");
    expect(sold).toContain("50.00 that buyers owe is left out:");
    const paid = ask(books, "2026-02-01", "tax", { year: "2026" }).text;
    expect(paid).toContain("Net with vehicle costs +50.00");
    expect(paid).toContain("50.00 less is owed by buyers than");
    expect(monthRow(books, "2025-12", "2026-02-01").flipProfit).toBe(14_000);
  });

  it("that never comes was never income", () => {
    const ledger = soldInDecember();
    ledger.add("refund", "2026-01-15", { pieces: [1], data: { unpaid: true } });
    const { text } = ask(ledger.books(), "2026-02-01", "tax", { year: "2026" });
    expect(text).toContain("Net with vehicle costs 0.00");
  });
});
