import { expect, it } from "vitest";
import type { Fact } from "../../../core/books/facts.ts";
import { postedBy, postedTo, shareOf, spentOn } from "../../../core/books/posted.ts";
import { Ledger } from "../../books/ledger.ts";

const ledger = new Ledger();
ledger.buy("2026-05-01", ["desk"], 3_000);
const chairs = ledger.buy("2026-05-01", ["chair", "chair", "chair"], 10_000);
const bought = ledger.facts[1]!;
const worked = ledger.add("work", "2026-05-02", { pieces: chairs, data: { minutes: 100 } });
ledger.add("hold", "2026-05-03", { pieces: [1], amount: 2_000, data: {} });
const sold = ledger.add("sell", "2026-05-04", {
  pieces: [1],
  amount: 9_000,
  data: { deposit: "refunded", fee: 450, owed: 1_000 },
});
const paint = { what: "paint", category: "materials" } as const;
const painted = ledger.add("spend", "2026-05-05", { pieces: [1, 2], amount: 501, data: paint });
const more = ledger.add("spend", "2026-05-05", { pieces: [1], amount: 500, data: paint });
const books = ledger.books();
const of = (fact: Fact, number: number) => ({ fact, books, number });

it("a piece's part of a fact is what it posted to an account of that piece, all legs together", () => {
  expect(chairs.map((number) => postedTo(of(bought, number), "unsold pieces"))).toEqual([
    3_334, 3_333, 3_333,
  ]);
  expect(postedTo(of(bought, 1), "unsold pieces")).toBe(0);
  expect(postedTo(of(bought, 2), "sales")).toBe(0);
  expect(postedTo(of(sold, 1), "sales")).toBe(-9_000);
  expect(postedTo(of(sold, 1), "buyers owe")).toBe(1_000);
  // 80.00 of the price today, 20.00 of the deposit given back, 4.50 for the fee.
  expect(postedTo(of(sold, 1), "cash")).toBe(8_000 - 2_000 - 450);
  expect(postedTo(of(worked, 2), "cash")).toBe(0);
});

it("a piece's share of spending is found wherever its cost went, and is not taken off again as cash", () => {
  expect(spentOn(of(painted, 1))).toBe(251);
  expect(spentOn(of(painted, 2))).toBe(250);
  expect(spentOn(of(painted, 3))).toBe(0);
  expect(spentOn(of(more, 1))).toBe(500);
  expect(spentOn(of(worked, 2))).toBe(0);
});

it("what a fact posted to an account over all pieces adds up its legs there and no others", () => {
  expect(postedBy(books, bought, "cash")).toBe(-10_000);
  expect(postedBy(books, bought, "unsold pieces")).toBe(10_000);
  expect(postedBy(books, sold, "deposits held")).toBe(2_000);
  expect(postedBy(books, worked, "cash")).toBe(0);
});

it("whole units are shared evenly, the first pieces taking the odd ones; one not named has none", () => {
  expect(chairs.map((number) => shareOf(of(worked, number), 100))).toEqual([34, 33, 33]);
  expect(shareOf(of(worked, 1), 100)).toBe(0);
});
