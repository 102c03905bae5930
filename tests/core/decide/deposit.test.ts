import { expect, test } from "vitest";
import { decide } from "../../../core/decide/decide.ts";
import { mattersOf } from "../../../core/decide/matters.ts";
import { readMessage } from "../../../core/notes/read.ts";
import { Ledger } from "../../books/ledger.ts";

const TODAY = "2026-05-20";

/** What comes of a sale of a desk and a lamp, 30.00 held on both; `listed`: at what each is. */
function sold(price: number, listed: readonly number[]): string {
  const ledger = new Ledger();
  const pieces = ledger.buy("2026-05-01", ["desk", "lamp"], 2_000);
  for (const [index, amount] of listed.entries())
    ledger.add("list", "2026-05-02", { pieces: [pieces[index]!], amount, data: {} });
  ledger.add("hold", "2026-05-03", { pieces, amount: 3_000, data: {} });
  const [matter] = mattersOf(readMessage(`sold #1 and #2 for ${price}`, TODAY), TODAY);
  const decision = decide(matter!, { books: ledger.books(), today: TODAY, nextPiece: 3 });
  return decision.kind === "ask" ? decision.ask.prompt : decision.kind;
}

test("the price of several is doubted where it is what they are listed at together less the deposit, or less", () => {
  expect(sold(120, [10_000, 5_000])).toContain("Is 120.00 the whole price, or the rest?");
  expect(sold(70, [10_000, 5_000])).toContain("Is 70.00 the whole price, or the rest?");
  expect(sold(121, [10_000, 5_000])).toBe("record");
});

test("not where one of them has no list price", () => {
  expect(sold(120, [10_000])).toBe("record");
  expect(sold(60, [10_000])).toBe("record");
});
