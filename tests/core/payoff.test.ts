import { describe, expect, it, test } from "vitest";
import { balanceOn } from "../../core/books/loan.ts";
import { addDays, sameDayIn } from "../../core/calendar.ts";
import { firstLoan, neededBy, project } from "../../core/payoff.ts";
import { Ledger } from "../books/ledger.ts";

const OPENED = "2026-01-01";
type Owed = readonly [name: string, cents: number, rate: string];
const GRAD: Owed = ["grad", 500_000, "4.5"];
const CAR: Owed = ["car", 300_000, "9"];

function withLoans(...loans: readonly Owed[]): Ledger {
  const ledger = new Ledger();
  for (const [loan, amount, rate] of loans) ledger.add("loan", OPENED, { amount, data: { loan, rate } });
  return ledger;
}

interface Of {
  monthly: number;
  today: string;
}

/** A projection that ends. */
function paid(...of: Parameters<typeof project>) {
  const payoff = project(...of);
  if (payoff.kind !== "paid") throw new Error(payoff.kind);
  return payoff;
}

/** Notes what a projection supposes payment by payment. */
function notePayments(ledger: Ledger, { payments, lastAmount }: ReturnType<typeof paid>, of: Of): void {
  for (let month = 1; month <= payments; month += 1) {
    const amount = month < payments ? of.monthly : lastAmount;
    ledger.add("pay", sameDayIn(of.today, month), { amount, data: {} });
  }
}

describe("a projection", () => {
  test.each([
    [0, OPENED],
    [0, "2026-03-10"],
    [40_000, "2026-03-10"],
    [310_000, "2026-03-10"],
  ])(
    "with %i cents now, from %s: its payments, noted as they come, leave the books at nothing",
    (now, today) => {
      const ledger = withLoans(GRAD, CAR);
      const payoff = paid(ledger.books(), { monthly: 45_000, now }, today);
      if (now > 0) ledger.add("pay", today, { amount: now, data: {} });
      notePayments(ledger, payoff, { monthly: 45_000, today });
      const books = ledger.books();
      const loans = [...books.loans.values()];
      expect(loans.map((loan) => balanceOn(loan, payoff.last))).toEqual([0, 0]);
      expect(payoff.last).toBe(ledger.facts.at(-1)!.day);
      expect(payoff.interest).toBe(loans.reduce((sum, loan) => sum + loan.interestPaid, 0));
      expect(payoff.total).toBe(loans.reduce((sum, loan) => sum + loan.paid, 0));
      expect(payoff.loans.map(({ name }) => name)).toEqual(["car", "grad"]);
      for (const { name, last } of payoff.loans) {
        const then = new Ledger();
        const owedAfter = (day: string) => {
          then.facts.splice(0, then.facts.length, ...ledger.facts.filter((fact) => fact.day <= day));
          return balanceOn(then.books().loans.get(name)!, day);
        };
        expect([name, owedAfter(last), owedAfter(addDays(last, -1)) > 0]).toEqual([name, 0, true]);
      }
    },
  );

  // 10,000.00 at 9%: 900.00 of interest a year against 915.00; 76.44 in a month of 31 days and 69.04 in one of 28.
  const LONG: Owed = ["long", 1_000_000, "9"];

  it.each([OPENED, "2026-02-01", "2026-06-15", "2026-01-31"])(
    "from %s of payments that outrun the interest of a year, though not that of every month, ends",
    (today) => {
      const ledger = withLoans(LONG);
      const payoff = paid(ledger.books(), { monthly: 7_625, now: 0 }, today);
      notePayments(ledger, payoff, { monthly: 7_625, today });
      expect(balanceOn(ledger.books().loans.get("long")!, payoff.last)).toBe(0);
      expect(payoff.total).toBe(1_000_000 + payoff.interest);
    },
  );

  it("of payments that the interest of a year outruns or eats up never ends", () => {
    const books = withLoans(LONG).books();
    for (const monthly of [0, 7_450, 7_500])
      expect(project(books, { monthly, now: 0 }, OPENED)).toEqual({ kind: "never" });
  });

  it("of one of several loans is that of the loan by itself", () => {
    const both = withLoans(GRAD, CAR).books();
    const supposed = { monthly: 20_000, now: 10_000 };
    for (const one of [GRAD, CAR]) {
      const alone = withLoans(one).books();
      expect(project(both, supposed, OPENED, one[0])).toEqual(project(alone, supposed, OPENED));
      for (const by of ["2026-02-01", "2028-01-01"])
        expect(neededBy(both, by, OPENED, one[0])).toBe(neededBy(alone, by, OPENED));
    }
  });

  it("of all that is owed, paid today, has no month to come", () => {
    // 31 days at 4.5% of 5,000.00: 19.11.
    const payoff = project(withLoans(GRAD).books(), { monthly: 100, now: 900_000 }, "2026-02-01");
    expect(payoff).toEqual({
      kind: "paid",
      payments: 0,
      last: "2026-02-01",
      interest: 1_911,
      lastAmount: 501_911,
      total: 501_911,
      loans: [{ name: "grad", last: "2026-02-01", interest: 1_911 }],
    });
  });
});

describe("what is needed by a day", () => {
  it("is all that is owed where one payment is left, and cannot be told where none is", () => {
    const books = withLoans(GRAD).books();
    expect(neededBy(books, "2026-02-01", OPENED)).toBe(501_911);
    expect(neededBy(books, "2026-01-31", OPENED)).toBeNull();
  });

  it("is nothing where nothing is owed, whatever is on another loan", () => {
    const ledger = withLoans(GRAD, CAR);
    ledger.add("pay", OPENED, { amount: GRAD[1], data: { loan: "grad" } });
    expect(neededBy(ledger.books(), "2027-06-01", OPENED, "grad")).toBe(0);
    ledger.add("pay", OPENED, { amount: CAR[1], data: { loan: "car" } });
    expect(neededBy(ledger.books(), "2027-06-01", OPENED)).toBe(0);
  });

  it("is the least that will do", () => {
    const books = withLoans(GRAD, CAR).books();
    const needed = neededBy(books, "2027-06-01", OPENED)!;
    const lastAt = (monthly: number) => paid(books, { monthly, now: 0 }, OPENED).last;
    expect(lastAt(needed) <= "2027-06-01").toBe(true);
    expect(lastAt(needed - 1) > "2027-06-01").toBe(true);
  });
});

describe("the loan to serve first", () => {
  // 100.00 each, one free of interest, the other at ten cents a day; 100.00 a month. The dear one first: 3.10 of
  // interest, then 0.09 of the 3.10 left. The other way round 3.10, 2.80 and 0.18 of the 5.90 left.
  const FREE: Owed = ["free", 10_000, "0"];
  const DEAR: Owed = ["dear", 10_000, "36.5"];

  it("is that of the highest rate, with what it saves", () => {
    for (const loans of [
      [FREE, DEAR],
      [DEAR, FREE],
    ])
      expect(firstLoan(withLoans(...loans).books(), 10_000, OPENED)).toEqual({ name: "dear", saves: 289 });
  });

  it("is the only one where the others are paid, and none where all are", () => {
    const ledger = withLoans(FREE, DEAR);
    ledger.add("pay", OPENED, { amount: 10_000, data: { loan: "dear" } });
    expect(firstLoan(ledger.books(), 10_000, "2026-02-01")).toEqual({ name: "free", saves: null });
    ledger.add("pay", OPENED, { amount: 10_000, data: { loan: "free" } });
    expect(firstLoan(ledger.books(), 10_000, "2026-02-01")).toBeNull();
  });

  it("is known, and what it saves is not, where they are never paid, or only in that order", () => {
    const books = withLoans(FREE, DEAR).books();
    for (const monthly of [100, 310])
      expect(firstLoan(books, monthly, OPENED)).toEqual({ name: "dear", saves: null });
    expect(project(books, { monthly: 310, now: 0 }, OPENED).kind).toBe("paid");
  });

  it("may be one of which nothing but interest is left", () => {
    const ledger = withLoans(DEAR);
    ledger.add("statement", "2026-01-31", { amount: 300, data: { loan: "dear" } });
    expect(firstLoan(ledger.books(), 100, "2026-01-31")).toEqual({ name: "dear", saves: null });
  });
});
