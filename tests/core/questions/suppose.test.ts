import { nper } from "financial";
import { expect, test } from "vitest";
import { neededBy, project } from "../../../core/payoff.ts";
import { answer } from "../../../core/questions/ask.ts";
import { Ledger } from "../../books/ledger.ts";
import { linesOf } from "../answers/asking.ts";

function loanOf(balance: number, rate: string) {
  const ledger = new Ledger();
  ledger.add("loan", "2026-01-01", { amount: balance, data: { loan: "loan", rate } });
  return ledger.books();
}

test.each([
  [1_425_000, "5.5", 30_000],
  [410_000, "6.8", 15_000],
  [908_565, "5.85", 60_000],
])(
  "%i cents at %s%%, %i a month: as many payments as a financial library counts",
  (balance, rate, monthly) => {
    const payoff = project(loanOf(balance, rate), { monthly, now: 0 }, "2026-01-01");
    const payments = Math.ceil(nper(Number(rate) / 1200, -monthly, balance));
    expect(payoff.kind).toBe("paid");
    // Simple daily interest over months of unequal length may take the last payment one month on or back.
    if (payoff.kind === "paid") expect(Math.abs(payoff.payments - payments)).toBeLessThanOrEqual(1);
  },
);

test("what is needed by a day is enough, and a cent less is not", () => {
  const books = loanOf(1_425_000, "5.5");
  const needed = neededBy(books, "2028-12-31", "2026-01-01")!;
  const endOf = (monthly: number) => {
    const payoff = project(books, { monthly, now: 0 }, "2026-01-01");
    return payoff.kind === "paid" ? payoff.last : null;
  };
  expect(endOf(needed)! <= "2028-12-31").toBe(true);
  expect(endOf(needed - 1)! > "2028-12-31").toBe(true);
});

test("a payment that does not outrun the interest never ends", () => {
  expect(project(loanOf(1_425_000, "5.5"), { monthly: 6_000, now: 0 }, "2026-01-01").kind).toBe("never");
});

test("the loan's own view and a supposition at the same pace tell the same month and interest", () => {
  for (let run = 0; run < 40; run += 1) {
    const ledger = new Ledger();
    const names = run % 3 === 0 ? ["grad", "car"] : ["loan"];
    for (const [index, loan] of names.entries()) {
      const amount = 90_000 + 37_123 * run + 50_000 * index;
      ledger.add("loan", "2026-01-05", { amount, data: { loan, rate: `${3 + (run % 7)}.${index + 1}` } });
    }
    for (const day of ["2026-02-11", "2026-03-08", "2026-04-20"])
      ledger.add("pay", day, { amount: 9_000 + 511 * run, data: {} });
    const books = ledger.books();
    const today = `2026-05-${String((run % 28) + 1).padStart(2, "0")}`;
    const view = linesOf(books, today, "loan").join("\n");
    const supposed = answer("when is it all gone at this pace", {
      books,
      today,
      currency: "USD",
      people: [],
      me: null,
      mileageRates: {},
    }).text;
    expect(view).toContain(`paid off about ${/gone about (\w+ \d{4})/.exec(supposed)![1]}\n`);
    expect(view).toContain(`about ${/interest about ([\d.,]+) /.exec(supposed)![1]} (estimate)`);
  }
});
