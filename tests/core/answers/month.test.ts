import { describe, expect, it } from "vitest";
import { figuresOf, movedLines, readyWords } from "../../../core/answers/lines.ts";
import { tellMonth } from "../../../core/answers/recap-aloud.ts";
import { Ledger } from "../../books/ledger.ts";
import { ask, linesOf, springLedger } from "./asking.ts";

const TODAY = "2026-04-08";

describe("month", () => {
  const books = springLedger().books();

  it("lists the pieces with their profit and the totals", () => {
    expect(linesOf(books, TODAY, "month", { month: "2026-03" })).toEqual([
      "March 2026: +322.09, 4 flipped",
      "  +147.50  #4 dresser",
      "  +87.91  #1 desk",
      "  +45.01  #5 side table",
      "  +30.00  #3 mirror (deposit kept)",
      "  +11.67  #2 chair",
      "Proceeds 485.00",
      "Costs 162.91",
      "  sold pieces 157.91",
      "  fees 5.00",
      "Profit +322.09",
      "For the loan 322.09",
      "Paid to the loan 0.00",
    ]);
  });

  it("says so far of the running month, and names a later refund", () => {
    expect(linesOf(books, TODAY, "month").slice(0, 2)).toEqual([
      "April 2026 so far: -45.00, 0 flipped",
      "  -20.00  #5 side table (refund)",
    ]);
  });

  it("shows other income and the tax set aside where there are any", () => {
    const ledger = springLedger();
    ledger.add("income", "2026-03-20", { amount: 24_000, data: { stream: "ads" } });
    ledger.add("taxrate", "2026-03-20", { data: { percent: "20" } });
    const lines = linesOf(ledger.books(), TODAY, "month", { month: "2026-03" });
    expect(lines).toContain("Other income 240.00");
    expect(lines).toContain("Set aside for tax 112.42 (20%)");
    expect(lines).toContain("For the loan 449.67");
  });

  it("stays on one screen in a busy month", () => {
    const ledger = new Ledger();
    for (let count = 1; count <= 40; count++) {
      const pieces = ledger.buy("2026-03-02", ["chair"], 100);
      ledger.add("sell", "2026-03-10", { pieces, amount: 100 + count * 10, data: {} });
    }
    const lines = linesOf(ledger.books(), TODAY, "month", { month: "2026-03" });
    expect(lines.length).toBeLessThanOrEqual(20);
    expect(lines[1]).toBe("  +4.00  #40 chair");
    expect(lines[8]).toBe("  +56.10  and 33 more");
  });

  it("does not invent a month", () => {
    expect(ask(books, TODAY, "month", { month: "2026-05" }).text).toBe("May 2026 has not begun yet.");
    expect(ask(books, TODAY, "month", { month: "2026-01" }).text).toBe("January 2026: no money in or out.");
  });
});

describe("year", () => {
  it("adds up its months", () => {
    expect(linesOf(springLedger().books(), TODAY, "year")).toEqual([
      "2026 so far: +277.09, 4 flipped",
      "  Mar  +322.09 (4 flipped)",
      "  Apr  -45.00 (0 flipped)",
      "Proceeds 465.00",
      "Costs 187.91",
      "Profit +277.09",
      "For the loan 277.09",
      "Paid to the loan 322.09",
    ]);
  });
});

describe("recap", () => {
  it("fits one screen, and its buttons lead on", () => {
    const answer = ask(springLedger().books(), "2026-04-01", "recap");
    expect(answer.monthPicture).toBe("2026-03");
    expect(answer.text.split("\n")).toEqual([
      "March 2026: +322.09, 4 flipped",
      "Best: #4 dresser +147.50",
      "For the loan 322.09, paid 0.00",
      "Due to the loan: 322.09",
    ]);
    expect(answer.buttons?.flat()).toEqual([
      { label: "Goal for April", press: "rg:2026-04" },
      { label: "Read aloud", press: "ra:2026-03" },
    ]);
  });

  it("is read aloud with every piece and its sums", () => {
    const text = tellMonth(springLedger().books(), "2026-03", TODAY).join("\n");
    const answer = { text };
    expect(answer.text).toContain("March 2026. 4 pieces were flipped. 5 were bought for 140.00.");
    expect(answer.text).toContain(
      "The dresser, number 4, cost 40.00, took 22.50 in materials and brought in 210.00: profit 147.50.",
    );
    expect(answer.text).toContain("For the loan: 322.09. Paid to it: 0.00.\nDue to the loan: 322.09.");
    expect(answer.text).not.toContain("second look");
  });

  it("points out a payment that fits neither the month nor what was ready", () => {
    const ledger = springLedger();
    ledger.add("pay", "2026-04-07", { amount: 5_000, data: {} });
    expect(ask(ledger.books(), TODAY, "recap", { month: "2026-04" }).text).toContain(
      "- 372.09 was paid to the loan, -45.00 was earned for it and 322.09 was ready before.",
    );
    expect(ask(springLedger().books(), TODAY, "recap", { month: "2026-04" }).text).not.toContain("was paid");
  });

  it("points out a sale under cost, a hold past its day and a loan without a rate", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-03-01", {
      amount: 10_000,
      data: { loan: "loan", rate: "0", rateUnknown: true },
    });
    const [bench, hutch] = ledger.buy("2026-03-02", ["bench", "hutch"], 10_000) as [number, number];
    ledger.add("sell", "2026-03-03", { pieces: [bench], amount: 2_000, data: {} });
    ledger.add("hold", "2026-03-04", { pieces: [hutch], amount: 1_500, data: { until: "2026-03-06" } });
    const { text } = ask(ledger.books(), TODAY, "recap");
    expect(text).toContain("- #1 bench brought in 20.00, under what it took: 50.00.");
    expect(text).toContain("- #2 hutch is held with a deposit of 15.00, and its day, Fri Mar 6, is past.");
    expect(text).toContain('- "loan" has no rate yet, so its interest is counted as zero.');
  });
});

/** What the last note of a ledger moved. */
function movedBy(ledger: Ledger, note: (ledger: Ledger) => void): string[] {
  const before = figuresOf(ledger.books(), TODAY);
  note(ledger);
  return movedLines(before, figuresOf(ledger.books(), TODAY));
}

describe("what a note moved", () => {
  it("is told in one line, and only what moved", () => {
    const ledger = springLedger();
    const buy = movedBy(ledger, (each) => each.buy("2026-04-02", ["lamp"], 3_000));
    expect(buy).toEqual([]);
    const spend = { amount: 1_800, data: { what: "primer", category: "materials" } } as const;
    expect(movedBy(ledger, (each) => each.add("spend", "2026-04-02", spend))).toEqual([
      "Month -63.00 · paid ahead 63.00",
    ]);
    const tips = { amount: 20_000, data: { stream: "tips" } } as const;
    expect(movedBy(ledger, (each) => each.add("income", "2026-04-03", tips))).toEqual([
      "Other income +200.00",
      "Due to the loan 137.00",
    ]);
    expect(movedBy(ledger, (each) => each.add("pay", TODAY, { amount: 13_700, data: {} }))).toEqual([
      "Loan 18,065.73 · due to it 0.00",
    ]);
  });

  it("does not call costs that came first paid ahead", () => {
    const ledger = new Ledger();
    const loan = { amount: 10_000, data: { loan: "loan", rate: "0" } };
    expect(movedBy(ledger, (each) => each.add("loan", "2026-04-01", loan))).toEqual(["Due to the loan 0.00"]);
    const spend = { amount: 1_800, data: { what: "primer", category: "materials" } } as const;
    expect(movedBy(ledger, (each) => each.add("spend", "2026-04-02", spend))).toEqual([
      "Month -18.00 · to earn back 18.00",
    ]);
    expect(readyWords(ledger.books(), TODAY)).toBe("Nothing to send yet: 18.00 to earn back");
    ledger.add("pay", "2026-04-03", { amount: 1_000, data: {} });
    expect(readyWords(ledger.books(), TODAY)).toBe("Paid ahead: 28.00 more than earned");
  });

  it("says nothing of a loan where there is none, and takes several together", () => {
    const ledger = new Ledger();
    const tips = { amount: 3_500, data: { stream: "tips" } };
    expect(movedBy(ledger, (each) => each.add("income", "2026-04-01", tips))).toEqual([
      "Other income +35.00",
    ]);
    ledger.add("loan", "2026-04-02", { amount: 10_000, data: { loan: "loan", rate: "0" } });
    ledger.add("loan", "2026-04-02", { amount: 20_050, data: { loan: "grad", rate: "0" } });
    expect(movedBy(ledger, (each) => each.add("pay", "2026-04-02", { amount: 50, data: {} }))).toEqual([
      "Loan 300.00 · due to it 34.50",
    ]);
  });
});
