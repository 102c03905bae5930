import { describe, expect, it } from "vitest";
import { medianPriceOf } from "../../../core/answers/history.ts";
import { Ledger } from "../../books/ledger.ts";
import { ask, linesOf, springLedger } from "./asking.ts";

const TODAY = "2026-05-31";

interface Sale {
  price: number;
  listed?: number;
  soldFor: number;
  minutes?: number;
  materials?: number;
}

/** Dressers, each bought on the first, listed on the fifth and sold some days later than the one before. */
function dressers(sales: readonly Sale[]): Ledger {
  const ledger = new Ledger();
  sales.forEach(({ price, listed, soldFor, minutes, materials }, index) => {
    const pieces = ledger.buy("2026-05-01", ["dresser"], price);
    if (materials) {
      ledger.add("spend", "2026-05-02", {
        pieces,
        amount: materials,
        data: { what: "paint", category: "materials" },
      });
    }
    if (minutes) ledger.add("work", "2026-05-03", { pieces, data: { minutes } });
    if (listed) ledger.add("list", "2026-05-05", { pieces, amount: listed, data: {} });
    ledger.add("sell", `2026-05-${10 + index}`, { pieces, amount: soldFor, data: {} });
  });
  return ledger;
}

const FOUR: Sale[] = [
  { price: 3_000, listed: 20_000, soldFor: 18_000, minutes: 120, materials: 2_000 },
  { price: 4_000, listed: 16_000, soldFor: 16_000, minutes: 60 },
  { price: 1_000, soldFor: 9_000 },
  { price: 2_000, listed: 14_000, soldFor: 11_000 },
];
const DRESSER = [{ name: "dresser", count: 1 }];

describe("price", () => {
  it("gives count, median, range, share of the first list price and days to sell", () => {
    expect(linesOf(dressers(FOUR).books(), TODAY, "price", { pieces: DRESSER })).toEqual([
      "4 dressers sold, median 135.00",
      "From 90.00 to 180.00",
      "90% of the first list price",
      "6 days from listing to sale (median)",
    ]);
  });

  it("goes by what stayed of the price, and leaves out what came back", () => {
    const ledger = dressers(FOUR);
    ledger.add("refund", "2026-05-20", { pieces: [2], amount: 1_000, data: {} });
    ledger.add("refund", "2026-05-21", { pieces: [1], amount: 18_000, data: { returned: true } });
    const books = ledger.books();
    expect(medianPriceOf(books, "dresser")).toBe(11_000);
    expect(linesOf(books, TODAY, "price", { pieces: DRESSER })[1]).toBe("From 90.00 to 150.00");
  });

  it("keeps to the traits named, and says when there are few or none", () => {
    const ledger = new Ledger();
    ledger.add("buy", "2026-05-01", {
      pieces: [1],
      amount: 0,
      data: { made: [{ name: "dresser", traits: ["tall", "white"] }] },
    });
    ledger.add("sell", "2026-05-02", { pieces: [1], amount: 9_000, data: {} });
    const tall = [{ name: "dresser", count: 1, traits: ["tall"] }];
    expect(linesOf(ledger.books(), TODAY, "price", { pieces: tall })).toEqual([
      "1 tall dresser sold, median 90.00",
      "None of them was listed first.",
      "Few sales: take it as a hint.",
    ]);
    const oak = [{ name: "dresser", count: 1, traits: ["oak"] }];
    expect(ask(ledger.books(), TODAY, "price", { pieces: oak }).text).toContain("No oak dresser sold yet.");
  });
});

describe("worth", () => {
  it("says what profit and pay an hour the price would have brought", () => {
    // Without the price paid they left 160, 160, 90 and 110; at 40 each: 120, 120, 50, 70. Three hours earned 240.
    expect(linesOf(dressers(FOUR).books(), TODAY, "worth", { pieces: DRESSER, price: 4_000 })).toEqual([
      "At 40.00: profit about +95.00",
      "Pay about 80.00 an hour",
      "From 4 dressers sold, median 135.00",
    ]);
  });

  it("shares the price over a count, and counts what would have lost", () => {
    const lines = linesOf(dressers(FOUR).books(), TODAY, "worth", {
      pieces: [{ name: "dresser", count: 2 }],
      price: 20_000,
    });
    expect(lines[0]).toBe("At 100.00 each: profit about +35.00");
    expect(lines).toContain("1 of them would have lost money");
  });

  it("says so when fewer than three were sold, or none", () => {
    const two = dressers(FOUR.slice(0, 2)).books();
    expect(linesOf(two, TODAY, "worth", { pieces: DRESSER, price: 4_000 }).at(-1)).toBe(
      "Fewer than 3 sold: too few to rely on.",
    );
    const hutch = [{ name: "hutch", count: 1 }];
    expect(ask(two, TODAY, "worth", { pieces: hutch, price: 4_000 }).text).toContain("No hutch sold yet");
  });
});

describe("best", () => {
  it("ranks by profit and by the hour", () => {
    expect(linesOf(springLedger().books(), TODAY, "best")).toEqual([
      "Best by profit, of 4 sold:",
      "  +147.50  #4 dresser",
      "  +87.91  #1 desk",
      "  +25.01  #5 side table",
      "  +11.67  #2 chair",
      "Best by the hour:",
      "  118.00 an hour  #4 dresser (1 h 15)",
      "  20.01 an hour  #5 side table (1 h 15)",
    ]);
  });
});
