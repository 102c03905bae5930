import { describe, expect, it } from "vitest";
import { ask, linesOf, springLedger } from "./asking.ts";

const TODAY = "2026-04-08";

describe("pace", () => {
  it("sets pieces and money against the goals, and says what is needed a month", () => {
    const ledger = springLedger();
    ledger.add("goal", "2026-04-06", { data: { per: "year", pieces: 50 } });
    ledger.add("goal", "2026-04-06", { data: { per: "year", pieces: 100 } });
    ledger.add("goal", "2026-04-06", { amount: 80_000, data: { per: "month" } });
    ledger.add("goal", "2026-04-06", { amount: 500_000, data: { per: "year" } });
    // 96 pieces and 4,722.91 to go in the nine months from April on; 98 of 365 days are over.
    expect(linesOf(ledger.books(), TODAY, "pace")).toEqual([
      "April: -45.00 of 800.00",
      "  845.00 to go, 22 days left",
      "2026: 4 of 100 pieces",
      "  96 to go: 10.7 a month from now on",
      "  at this pace 15 by December",
      "2026: 277.09 of 5,000.00",
      "  4,722.91 to go: 524.77 a month from now on",
      "  at this pace 1,032.02 by December",
    ]);
  });

  it("counts other income, and says when a goal is reached", () => {
    const ledger = springLedger();
    ledger.add("goal", "2026-04-06", { amount: 10_000, data: { per: "month" } });
    ledger.add("income", "2026-04-07", { amount: 14_500, data: { stream: "ads" } });
    expect(linesOf(ledger.books(), TODAY, "pace")).toEqual(["April: 100.00 of 100.00, done"]);
  });

  it("without a goal shows what is done and how to set one", () => {
    expect(ask(springLedger().books(), TODAY, "pace").text).toContain('"goal 100 pieces this year"');
  });
});
