import { describe, expect, it } from "vitest";
import { Ledger } from "../../books/ledger.ts";
import { ask, linesOf, springLedger } from "./asking.ts";

const TODAY = "2026-04-08";

describe("piece", () => {
  const books = springLedger().books();

  it("tells the whole story of one, with days, hours and profit an hour", () => {
    const answer = ask(books, TODAY, "piece", {}, { pieces: [4] });
    expect(answer.pictures).toEqual([4]);
    expect(answer.text.split("\n")).toEqual([
      "#4 dresser: sold Sat Mar 21",
      "Profit +147.50, 118.00 an hour",
      "Brought in 210.00",
      "Cost 62.50 (price 40.00, spent 22.50)",
      "18 days from buying to sale, 1 h 15 of work",
      "  Tue Mar 3: bought 40.00, yard sale",
      "  Tue Mar 3: primer 22.50",
      "  Fri Mar 13: sanding 1 h 15",
      "  Sun Mar 15: listed 220.00",
      "  Sat Mar 21: sold 210.00",
    ]);
  });

  it("keeps miles out of the profit and adds up its lot", () => {
    const lines = linesOf(books, TODAY, "piece", {}, { pieces: [3] });
    expect(lines[0]).toBe("#3 mirror: finished");
    expect(lines).toContain("31.5 miles, worth 22.84 (not in profit)");
    expect(lines).toContain("Lot #1–#3: cost 118.75, 2 of 3 gone, profit +96.25");
    expect(lines).toContain("  Mon Mar 30: buyer backed out, kept 30.00");
  });

  it("shows a hold with its deposit and its day", () => {
    const ledger = new Ledger();
    const pieces = ledger.buy("2026-04-01", ["desk"], 3_000);
    ledger.add("list", "2026-04-02", { pieces, amount: 16_500, data: {} });
    ledger.add("hold", "2026-04-03", {
      pieces,
      amount: 4_500,
      data: { buyer: "lady in the red truck", until: "2026-04-05" },
    });
    const lines = linesOf(ledger.books(), TODAY, "piece", {}, { pieces });
    expect(lines[0]).toBe("#1 desk: held at 165.00");
    expect(lines).toContain("On hold for lady in the red truck until Sun Apr 5 (past), deposit 45.00");
    expect(lines).toContain("7 days since buying, no time logged");
  });

  it("shows a hold at the price agreed on, and not at the list price", () => {
    const ledger = new Ledger();
    const pieces = ledger.buy("2026-04-01", ["desk"], 3_000);
    ledger.add("list", "2026-04-02", { pieces, amount: 16_500, data: {} });
    ledger.add("hold", "2026-04-03", { pieces, amount: 4_500, data: { buyer: "kim", agreed: 15_000 } });
    const lines = linesOf(ledger.books(), TODAY, "piece", {}, { pieces });
    expect(lines[0]).toBe("#1 desk: held at 150.00");
    expect(lines).toContain("On hold for kim at 150.00, deposit 45.00");
    expect(lines.at(-1)).toContain("held for kim at 150.00, deposit 45.00");
    expect(linesOf(ledger.books(), TODAY, "held")[1]).toBe(
      "#1 desk: 45.00, 105.00 at pickup, for kim, held 5 days",
    );
  });

  it("shares what several pieces had together", () => {
    const ledger = new Ledger();
    const pieces = ledger.buy("2026-04-01", ["chair", "chair", "chair"], 1_000, { set: true });
    ledger.add("work", "2026-04-02", { pieces, data: { minutes: 100 } });
    ledger.add("list", "2026-04-03", { pieces, amount: 10_000, data: {} });
    ledger.add("reprice", "2026-04-04", { pieces, amount: 500, data: { cut: true } });
    const lines = linesOf(ledger.books(), TODAY, "piece", {}, { pieces: [1] });
    expect(lines).toContain("  Wed Apr 1: bought 3.34");
    expect(lines).toContain("  Thu Apr 2: work 34 min");
    expect(lines).toContain("  Fri Apr 3: listed 33.34");
    expect(lines).toContain("  Sat Apr 4: price cut by 1.67");
    expect(lines.some((line) => line.startsWith("Set #1–#3: cost 10.00"))).toBe(true);
  });

  it("shortens a long story in its middle", () => {
    const ledger = new Ledger();
    const pieces = ledger.buy("2026-03-01", ["desk"], 3_000);
    for (let day = 10; day < 40; day++) {
      ledger.add("work", `2026-0${day < 32 ? 3 : 4}-${String(day < 32 ? day : day - 31).padStart(2, "0")}`, {
        pieces,
        data: { minutes: 10 },
      });
    }
    const lines = linesOf(ledger.books(), TODAY, "piece", {}, { pieces });
    expect(lines.length).toBeLessThanOrEqual(20);
    expect(lines).toContain("  … 20 more notes …");
    expect(lines.at(-1)).toBe("  Wed Apr 8: work 10 min");
  });

  it("counts no days where there are none", () => {
    const ledger = new Ledger();
    const pieces = ledger.buy(TODAY, ["desk"], 3_000);
    expect(linesOf(ledger.books(), TODAY, "piece", {}, { pieces })).toContain("Bought today, no time logged");
    ledger.add("sell", TODAY, { pieces, amount: 9_000, data: {} });
    const sold = linesOf(ledger.books(), TODAY, "piece", {}, { pieces });
    expect(sold).toContain("Bought and sold the same day, no time logged");
  });

  it("gives several a line each, and says what is not there", () => {
    expect(linesOf(books, TODAY, "piece", {}, { pieces: [1, 3] })).toEqual([
      "#1 desk: sold Sat Mar 28, +87.91",
      "#3 mirror: finished, -3.33",
    ]);
    const { text } = ask(books, TODAY, "piece", { pieces: [{ name: "hutch", count: 1 }] });
    expect(text).toContain('No piece like "hutch" on the books.');
  });
});
