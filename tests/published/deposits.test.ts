import { expect } from "vitest";
import { monthRow } from "../../core/books/month.ts";
import { profitOf } from "../../core/books/piece.ts";
import { keptDepositMax } from "../../core/cautions.ts";
import { Ledger } from "../books/ledger.ts";
import { openChat } from "../bot/conversation/chat.ts";
import { publishedTable, rowIds } from "./table.ts";

const COMPUTED = "computed";

/** The caution of a deposit kept on a piece listed at a price, through the chat. */
function keptInChat(listed: string, deposit: string): string {
  const chat = openChat();
  try {
    chat.say("free desk curb");
    chat.say(`listed desk ${listed}`);
    chat.say(`deposit ${deposit} on desk`);
    return chat.say("no show on desk kept the deposit").text;
  } finally {
    chat.end();
  }
}

publishedTable({ title: "D, deposits", part: "deposits", ids: rowIds("D", 1, 7) }, ({ row }) => {
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
    "UCC 2-718(2)(b), with the price and deposit of a New York small-claims case of August 1981",
    () => {
      expect(keptInChat("895", "400")).toContain("at most 179.00");
    },
  );
  row("D-03", "UCC 2-718(2)(b), with the price and deposit of a New York decision of 2016", () => {
    expect(keptInChat("1350", "750")).toContain("at most 270.00");
  });
  row(
    "D-04",
    "UCC 2-718(2)(b), with the figures of Neri v. Retail Marine Corp., 30 N.Y.2d 393 (1972)",
    () => {
      expect(keptInChat("12587.40", "4250")).toContain("at most 500.00");
    },
  );
  row("D-05", "UCC 2-718(2)(b)", () => {
    expect(keptDepositMax(30_000)).toBe(6_000);
    expect(keptInChat("300", "50")).not.toContain("at most");
  });
  row("D-06", "UCC 2-718(2)(b)", () => {
    expect(keptInChat("300", "100")).toContain("at most 60.00");
    expect(keptInChat("180", "40")).toContain("at most 36.00");
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
