import { describe, expect, it } from "vitest";
import { mileageRateOn } from "../../../core/mileage.ts";
import { nextEstimatedTaxDay, vehicleCostCovered } from "../../../core/tax.ts";
import { Ledger } from "../../books/ledger.ts";
import { ask, linesOf, springLedger } from "./asking.ts";

const TODAY = "2026-04-08";
const YEAR = { from: "2026-01-01", through: "2026-12-31" };

describe("tax", () => {
  it("shows both figures, the self-employment estimate and the next due date, as an estimate", () => {
    const ledger = springLedger();
    ledger.add("income", "2026-04-07", { amount: 100_000, data: { stream: "workshop" } });
    ledger.add("taxrate", "2026-04-07", { data: { percent: "20" } });
    // 277.09 + 1,000.00 earned; gas 25.00 gives way to 31.5 miles at 72.5 cents, 22.84: 1,279.25.
    // 1,279.25 × 0.9235 × 0.153 = 180.75. April set aside: 20 % of 955.00.
    expect(linesOf(ledger.books(), TODAY, "tax")).toEqual([
      "Tax 2026 so far, an estimate:",
      "Net with vehicle costs +1,277.09",
      "  vehicle costs in it 25.00",
      "Net with miles instead +1,279.25",
      "  31.5 miles worth 22.84 (72.5 cents)",
      "Self-employment tax about 180.75",
      "  half of it, 90.38, lowers taxed income",
      "  Income tax comes on top.",
      "Set aside so far 191.00 (20% now)",
      "Next estimated tax is due Wed Apr 15",
      "An estimate, no advice:",
      "ask a licensed tax preparer.",
    ]);
  });

  it("starts the self-employment tax at 400 of net earnings", () => {
    expect(ask(springLedger().books(), TODAY, "tax").text).toContain("(it starts at 400.00 of net earnings)");
  });

  it("uses the latest known figures for a later year and says so", () => {
    const ledger = new Ledger();
    ledger.add("income", "2028-02-01", { amount: 1_000_000, data: { stream: "ads" } });
    ledger.add("drive", "2028-02-01", { data: { miles: "10" } });
    const { text } = ask(ledger.books(), "2028-03-01", "tax");
    expect(text).toContain("with the 2026 figures, the latest known");
    expect(text).toContain("no newer rate known: that of 2026 used");
  });

  it("speaks only of US dollars", () => {
    const { text } = ask(springLedger().books(), TODAY, "tax", {}, { currency: "EUR" });
    expect(text).toContain("only US rules");
    expect(text).not.toContain("Self-employment");
  });
});

describe("vehicle spending that the rate covers", () => {
  const spend = (ledger: Ledger, day: string, what: string, amount: number, pieces: number[] = []): void => {
    ledger.add("spend", day, { pieces, amount, data: { what, category: "vehicle" } });
  };

  it("leaves tolls and parking where they are", () => {
    const ledger = new Ledger();
    spend(ledger, "2026-02-01", "gas", 2_000);
    spend(ledger, "2026-02-02", "tolls", 500);
    spend(ledger, "2026-02-03", "parking", 300);
    spend(ledger, "2025-12-31", "gas", 900);
    expect(vehicleCostCovered(ledger.books(), YEAR)).toBe(2_000);
  });

  it("counts what was spent on a piece with its sale, back with its return, and never when it is kept", () => {
    const ledger = new Ledger();
    const pieces = ledger.buy("2026-02-01", ["hutch"], 3_000);
    spend(ledger, "2026-02-02", "gas", 1_000, pieces);
    expect(vehicleCostCovered(ledger.books(), YEAR)).toBe(0);
    ledger.add("sell", "2026-02-03", { pieces, amount: 9_000, data: {} });
    expect(vehicleCostCovered(ledger.books(), YEAR)).toBe(1_000);
    spend(ledger, "2026-02-04", "gas", 200, pieces);
    expect(vehicleCostCovered(ledger.books(), YEAR)).toBe(1_200);
    ledger.add("refund", "2026-02-05", { pieces, amount: 9_000, data: { returned: true } });
    expect(vehicleCostCovered(ledger.books(), YEAR)).toBe(0);
    ledger.add("retire", "2026-02-06", { pieces, data: { how: "kept" } });
    expect(vehicleCostCovered(ledger.books(), YEAR)).toBe(0);
  });

  it("counts it in the year of the sale or trade alone, whenever it was spent", () => {
    const ledger = new Ledger();
    const pieces = ledger.buy("2024-02-01", ["hutch", "desk", "lamp"], 3_000);
    for (const [index, number] of pieces.entries())
      spend(ledger, "2024-02-02", "gas", 100 * 10 ** index, [number]);
    ledger.add("sell", "2024-12-31", { pieces: [pieces[0]!], amount: 9_000, data: {} });
    ledger.add("sell", "2026-01-01", { pieces: [pieces[1]!], amount: 9_000, data: {} });
    const made = [{ name: "mirror", traits: [] }];
    ledger.add("trade", "2026-12-31", { pieces: [pieces[2]!, 4], amount: 5_000, data: { made } });
    const ofYear = (year: number) =>
      vehicleCostCovered(ledger.books(), { from: `${year}-01-01`, through: `${year}-12-31` });
    expect([2023, 2024, 2025, 2026, 2027].map(ofYear)).toEqual([0, 100, 0, 1_000 + 10_000, 0]);
  });
});

describe("estimated-tax days", () => {
  it("gives the next one that is not over", () => {
    const next = ["2026-01-01", "2026-01-16", "2026-04-15", "2026-04-16", "2026-12-31"].map(
      nextEstimatedTaxDay,
    );
    expect(next).toEqual(["2026-01-15", "2026-04-15", "2026-04-15", "2026-06-15", "2027-01-15"]);
  });
});

describe("miles", () => {
  it("gives the year's miles and their value", () => {
    expect(linesOf(springLedger().books(), TODAY, "miles")).toEqual([
      "2026 so far: 31.5 miles",
      "Worth 22.84, 72.5 cents a mile",
      "April 2026 so far: 31.5 miles",
      "Miles do not change the profit.",
    ]);
  });

  it("takes each half of 2022 at its own rate", () => {
    const ledger = new Ledger();
    ledger.add("drive", "2022-06-30", { data: { miles: "37.4" } });
    ledger.add("drive", "2022-07-01", { data: { miles: "37.4" } });
    expect(linesOf(ledger.books(), TODAY, "miles", { year: "2022" })).toEqual([
      "2022: 74.8 miles",
      "Worth 45.26",
      "  37.4 miles at 58.5 cents: 21.88",
      "  37.4 miles at 62.5 cents: 23.38",
      "Miles do not change the profit.",
    ]);
  });

  it("uses the latest known rate for a year without one and says so, or the owner's", () => {
    const ledger = new Ledger();
    ledger.add("drive", "2027-03-01", { data: { miles: "100" } });
    const asked = (mileageRates: Record<string, string>): string =>
      ask(ledger.books(), "2027-03-02", "miles", {}, { mileageRates }).text;
    expect(asked({})).toContain(
      "Worth 72.50, 72.5 cents a mile\nNo rate known for this year: the 2026 one used",
    );
    expect(asked({ "2027": "74" })).toContain("Worth 74.00, 74 cents a mile\n");
    expect(asked({ "2027": "74" })).not.toContain("No rate known");
    expect(mileageRateOn("2029-01-01", { "2027": "74" })).toEqual({ cents: "74", year: "2027", own: false });
  });
});
