import { expect } from "vitest";
import { monthRow } from "../../core/books/month.ts";
import { profitOf } from "../../core/books/piece.ts";
import { keptDepositMax } from "../../core/cautions.ts";
import { Ledger } from "../books/ledger.ts";
import { publishedTable, rowIds } from "./table.ts";

const COMPUTED = "computed";

/** What has to go back of a deposit where nothing was agreed and no damage is claimed: cents. */
function toReturn(deposit: number, price: number): number {
  return Math.max(0, deposit - keptDepositMax(price));
}

publishedTable("D, deposits", rowIds("D", 1, 7), ({ row }) => {
  row("D-01", COMPUTED, () => {
    const ledger = new Ledger();
    const pieces = ledger.buy("2026-03-01", ["desk"], 0);
    ledger.add("hold", "2026-03-02", { pieces, amount: 3_000, data: {} });
    expect(ledger.statement("2026-03-02")).toMatchObject({ depositsHeld: "30.00" });
    expect(monthRow(ledger.books(), "2026-03", "2026-03-31").proceeds).toBe(0);
    const sale = ledger.add("sell", "2026-03-05", { pieces, amount: 18_000, data: {} });
    const books = ledger.books();
    const cash = books.postings.get(sale.id)!.filter(({ account }) => account === "cash");
    expect(cash.reduce((sum, { cents }) => sum + cents, 0)).toBe(15_000);
    expect(monthRow(books, "2026-03", "2026-03-31").proceeds).toBe(18_000);
  });
  row(
    "D-02",
    "New York small-claims decision, August 1981; the books know no damages, 50 comes off by hand",
    () => {
      expect(toReturn(40_000, 89_500)).toBe(22_100);
      expect(toReturn(40_000, 89_500) - 5_000).toBe(17_100);
    },
  );
  row("D-03", "sales-law outline citing a 2016 New York decision; damages of 250 by hand", () => {
    expect(toReturn(75_000, 135_000)).toBe(48_000);
    expect(toReturn(75_000, 135_000) - 25_000).toBe(23_000);
  });
  row(
    "D-04",
    "law-school note on a New York high-court boat case; by the text, the court ordered 997",
    () => {
      expect(keptDepositMax(1_258_740)).toBe(50_000);
      expect(toReturn(425_000, 1_258_740) - 325_300).toBe(49_700);
    },
  );
  row("D-05", "UCC 2-718(2)(b)", () => {
    expect(keptDepositMax(30_000)).toBe(6_000);
    expect(toReturn(5_000, 30_000)).toBe(0);
  });
  row("D-06", "UCC 2-718(2)(b)", () => {
    expect([toReturn(10_000, 30_000), toReturn(4_000, 18_000)]).toEqual([4_000, 400]);
  });
  row("D-07", COMPUTED, () => {
    const ledger = new Ledger();
    const [mirror] = ledger.buy("2026-03-02", ["mirror", "chair", "desk"], 9_999);
    ledger.add("hold", "2026-03-29", { pieces: [mirror!], amount: 3_000, data: {} });
    ledger.add("fallthrough", "2026-03-30", { pieces: [mirror!], amount: 0, data: {} });
    ledger.add("sell", "2026-04-10", { pieces: [mirror!], amount: 15_000, data: {} });
    const books = ledger.books();
    expect(profitOf(books.pieces.get(mirror!)!)).toBe(14_667);
    const profits = ["2026-03", "2026-04"].map((month) => monthRow(books, month, "2026-04-30").flipProfit);
    expect(profits).toEqual([3_000, 11_667]);
  });
});
