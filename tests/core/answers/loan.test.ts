import { describe, expect, it } from "vitest";
import { Ledger } from "../../books/ledger.ts";
import { ask, linesOf, springLedger } from "./asking.ts";

describe("loan", () => {
  it("gives today's balance, interest, what is paid and what is ready", () => {
    expect(linesOf(springLedger().books(), "2026-04-08", "loan")).toEqual([
      "Loan: 18,202.73 left today",
      "  principal 18,179.96 + interest 22.77",
      "3.25 interest a day (6.53%, 365 days a year)",
      "Paid so far 322.09, of it interest 102.05",
      "Paid ahead: 45.00 more than earned",
      "No pace yet: nothing paid in the last 3 full months",
    ]);
  });

  it("says what is left after sending what is ready, and what history had sent", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-04-01", { amount: 100_000, data: { loan: "loan", rate: "0" } });
    ledger.add("income", "2026-04-01", { amount: 30_000, data: { stream: "ads" } });
    ledger.add("sent", "2026-04-01", { amount: 10_000, data: {} });
    const lines = linesOf(ledger.books(), "2026-04-02", "loan");
    expect(lines).toContain("Sent before these books: 100.00");
    expect(lines).toContain("Due to the loan: 200.00, then 800.00 left");
  });

  it("projects the payoff at the pace of the last three full months", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-01-01", { amount: 1_290_000, data: { loan: "loan", rate: "0" } });
    for (const day of ["2026-01-20", "2026-02-20", "2026-03-20"]) {
      ledger.add("pay", day, { amount: 30_000, data: {} });
    }
    ledger.add("terms", "2026-04-01", { data: { rate: "5.5", loan: "loan" } });
    // 12,000.00 at 5.5 % and 300.00 a month: 45 payments; by twelfths of a year 1,286.63 of interest (check A-13 of
    // tests/published), by the days of each month 1,288.69.
    expect(linesOf(ledger.books(), "2026-04-01", "loan").slice(-3)).toEqual([
      "At 300.00 a month (last 3 full months):",
      "  paid off about January 2030",
      "  interest until then about 1,288.69 (estimate)",
    ]);
  });

  it("averages months without a payment in, and younger books over what they have", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-02-10", { amount: 1_000_000, data: { loan: "loan", rate: "0" } });
    ledger.add("pay", "2026-02-20", { amount: 30_000, data: {} });
    expect(ask(ledger.books(), "2026-04-05", "loan").text).toContain(
      "At 150.00 a month (last 2 full months):",
    );
    expect(ask(ledger.books(), "2026-05-05", "loan").text).toContain(
      "At 100.00 a month (last 3 full months):",
    );
    expect(ask(ledger.books(), "2026-06-05", "loan").text).toContain("No pace yet");
    expect(ask(ledger.books(), "2026-02-25", "loan").text).toContain("No pace yet");
  });

  it("says when the pace never gets there", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-01-01", { amount: 1_000_000, data: { loan: "loan", rate: "6" } });
    ledger.add("pay", "2026-01-02", { amount: 5_000, data: {} });
    const { text } = ask(ledger.books(), "2026-02-02", "loan");
    expect(text).toContain("not paid off in 100 years: interest is 49.76 a month");
  });

  it("gives several loans a line each, the sum, the order and the days", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-03-01", { amount: 500_000, data: { loan: "grad", rate: "6.8" } });
    ledger.add("loan", "2026-03-01", { amount: 750_000, data: { loan: "loan", rate: "4.5" } });
    ledger.add("terms", "2026-03-01", { data: { loan: "grad", days: "365.25" } });
    const highest = linesOf(ledger.books(), "2026-03-31", "loan");
    expect(highest[0]).toBe("Loans: 12,555.67 left today");
    expect(highest[1]).toBe("  grad: 5,027.93 (6.8%, 365.25 days a year)");
    expect(highest[2]).toBe("  loan: 7,527.74 (4.5%, 365 days a year)");
    expect(highest).toContain("Payments go to all interest, then highest rate first");
    ledger.add("terms", "2026-03-02", { data: { order: "prorata" } });
    expect(ask(ledger.books(), "2026-03-31", "loan").text).toContain("then shared by principal");
  });

  it("asks for a rate that is not known, and is glad when all is paid", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-03-01", { amount: 5_000, data: { loan: "grad", rate: "0", rateUnknown: true } });
    expect(ask(ledger.books(), "2026-03-02", "loan").text).toContain('Say "grad loan rate 5.5%"');
    ledger.add("pay", "2026-03-05", { amount: 5_000, data: {} });
    expect(linesOf(ledger.books(), "2026-03-06", "loan").at(-1)).toBe("All paid off");
  });
});
