import { describe, expect, it } from "vitest";
import { accruedOn, allocatePayment, balanceOn, interestADay, owedOn } from "../../../core/books/loan.ts";
import type { DaysInYear, PaymentOrder } from "../../../core/notes/reading.ts";
import { Ledger } from "../../books/ledger.ts";

const OPENED = "2026-03-01";

function withLoans(...loans: [name: string, amount: number, rate: string][]): Ledger {
  const ledger = new Ledger();
  for (const [loan, amount, rate] of loans) ledger.add("loan", OPENED, { amount, data: { loan, rate } });
  return ledger;
}

const twoLoans = () => withLoans(["a", 500_000, "6.8"], ["b", 750_000, "4.5"]);

function pay(ledger: Ledger, day: string, amount: number, loan?: string): Ledger {
  ledger.add("pay", day, { amount, data: loan === undefined ? {} : { loan } });
  return ledger;
}

function loanOf(ledger: Ledger, name = "loan") {
  const loan = ledger.books().loans.get(name);
  if (!loan) throw new Error(`no loan ${name}`);
  return loan;
}

function order(ledger: Ledger, how: PaymentOrder): Ledger {
  ledger.add("terms", OPENED, { data: { order: how } });
  return ledger;
}

describe("a loan", () => {
  it("opens at its balance against opening balances, no cash moving", () => {
    const ledger = withLoans(["loan", 1_200_000, "5.5"]);
    expect(ledger.books().postings.get(1)).toMatchObject([
      { account: "loan", cents: -1_200_000, detail: "loan" },
      { account: "opening balances", cents: 1_200_000, detail: "loan" },
    ]);
    expect(ledger.statement(OPENED).months[0]).toMatchObject({ cashIn: "0.00", cashOut: "0.00" });
  });

  it("with no rate given stands at 0 until it is answered", () => {
    const ledger = new Ledger();
    ledger.add("loan", OPENED, { amount: 100_000, data: { loan: "loan", rate: "0", rateUnknown: true } });
    expect(loanOf(ledger).rateUnknown).toBe(true);
    expect(balanceOn(loanOf(ledger), "2027-03-01")).toBe(100_000);
    ledger.add("terms", OPENED, { data: { loan: "loan", rate: "5" } });
    expect(loanOf(ledger)).toMatchObject({ rateUnknown: false, rate: "5" });
    expect(balanceOn(loanOf(ledger), "2027-03-01")).toBe(105_000);
  });

  it("of a name that is taken is refused", () => {
    const ledger = withLoans(["loan", 100, "5"], ["loan", 200, "6"]);
    expect(ledger.problem()).toEqual({ kind: "loan name taken", name: "loan" });
  });
});

describe("interest", () => {
  it("is multiplied first, rounded once, not compounded, and carries over", () => {
    // 12,000.00 at 5.5 %, ÷365: the published-style sequence of payments, shortfall included.
    const ledger = new Ledger();
    ledger.add("loan", "2026-01-31", { amount: 1_200_000, data: { loan: "loan", rate: "5.5" } });
    pay(ledger, "2026-02-14", 25_000);
    expect(loanOf(ledger)).toMatchObject({ principal: 1_177_532, interestPaid: 2_532 });
    pay(ledger, "2026-03-31", 18_000);
    expect(loanOf(ledger).principal).toBe(1_167_517);
    pay(ledger, "2026-05-03", 1_000);
    expect(loanOf(ledger)).toMatchObject({ principal: 1_167_517, accrued: 4_806 });
    pay(ledger, "2026-06-30", 40_000);
    expect(loanOf(ledger)).toMatchObject({ principal: 1_142_527, accrued: 0 });
    expect(accruedOn(loanOf(ledger), "2026-07-15")).toBe(2_582);
    expect(balanceOn(loanOf(ledger), "2026-07-15")).toBe(1_145_109);
  });

  it.each<[DaysInYear, number]>([
    ["365", 5_605],
    ["365.25", 5_602],
    ["actual", 5_599],
  ])("with days in the year %s over a leap year's start is %i cents", (days, interest) => {
    const ledger = new Ledger();
    ledger.add("loan", "2027-12-15", { amount: 1_200_000, data: { loan: "loan", rate: "5.5" } });
    ledger.add("terms", "2027-12-15", { data: { loan: "loan", days } });
    expect(accruedOn(loanOf(ledger), "2028-01-15")).toBe(interest);
  });

  it("goes by the terms of each stretch, a change counting from its day, and is rounded once", () => {
    const ledger = withLoans(["loan", 365_000, "0.5"]);
    // 5 cents a day, then 10, then 5: half a cent in no stretch is rounded on its own.
    ledger.add("terms", "2026-03-11", { data: { loan: "loan", rate: "0.57" } });
    ledger.add("terms", "2026-03-21", { data: { loan: "loan", rate: "0.55" } });
    expect(accruedOn(loanOf(ledger), "2026-03-11")).toBe(50);
    expect(accruedOn(loanOf(ledger), "2026-03-12")).toBe(56);
    expect(accruedOn(loanOf(ledger), "2026-03-21")).toBe(107);
    expect(accruedOn(loanOf(ledger), "2026-03-22")).toBe(113);
    expect(interestADay(loanOf(ledger), "2026-03-15").toFixed()).toBe("5.7");
    expect(interestADay(loanOf(ledger), "2026-03-21").toFixed()).toBe("5.5");
  });

  it("a change of terms on the day of another takes its place", () => {
    const ledger = withLoans(["loan", 365_000, "5"]);
    ledger.add("terms", "2026-03-11", { data: { loan: "loan", rate: "9" } });
    ledger.add("terms", "2026-03-11", { data: { loan: "loan", rate: "1" } });
    expect(accruedOn(loanOf(ledger), "2026-03-12")).toBe(510);
    expect(loanOf(ledger).stretches).toHaveLength(2);
  });

  it("a tie at half a cent rounds up, thirds of days summed without loss", () => {
    // 365 days of a principal that makes exactly 0.5 cent in a year, in two stretches.
    const ledger = withLoans(["loan", 50, "1"]);
    ledger.add("terms", "2026-05-10", { data: { loan: "loan", days: "actual" } });
    ledger.add("terms", "2026-08-10", { data: { loan: "loan", days: "365" } });
    expect(accruedOn(loanOf(ledger), "2027-02-28")).toBe(0);
    expect(accruedOn(loanOf(ledger), "2027-03-01")).toBe(1);
  });

  it("at zero is none, and none runs backwards", () => {
    const free = withLoans(["loan", 100_000, "0"]);
    expect(accruedOn(loanOf(free), "2030-01-01")).toBe(0);
    expect(accruedOn(loanOf(twoLoans(), "a"), "2026-02-01")).toBe(0);
  });
});

describe("a payment", () => {
  it("posts interest and principal by loan, and counts as paid to the loan and not as cash out", () => {
    const ledger = pay(withLoans(["loan", 1_840_000, "6.53"]), "2026-04-01", 32_209);
    expect(ledger.books().postings.get(2)).toMatchObject([
      { account: "loan interest", cents: 10_205, detail: "loan" },
      { account: "loan", cents: 22_004, detail: "loan" },
      { account: "cash", cents: -32_209, piece: null },
    ]);
    expect(ledger.statement("2026-04-30").months.at(-1)).toMatchObject({
      paidToLoan: "322.09",
      cashOut: "0.00",
    });
  });

  it("pays the interest due on all loans, then principal by highest rate", () => {
    const ledger = pay(twoLoans(), "2026-03-31", 50_000);
    expect(loanOf(ledger, "a")).toMatchObject({ interestPaid: 2_795, principal: 455_569 });
    expect(loanOf(ledger, "b")).toMatchObject({ interestPaid: 2_774, principal: 750_000, accrued: 0 });
  });

  it("pro rata by principal where the owner chose so", () => {
    const ledger = pay(order(twoLoans(), "prorata"), "2026-03-31", 50_000);
    expect(loanOf(ledger, "a").principal).toBe(482_228);
    expect(loanOf(ledger, "b").principal).toBe(723_341);
  });

  it("spills over to the next loan", () => {
    const ledger = pay(twoLoans(), "2026-03-31", 600_000);
    expect(loanOf(ledger, "a").principal).toBe(0);
    expect(loanOf(ledger, "b").principal).toBe(655_569);
  });

  it("serves a named loan in full before the rest, its own interest first", () => {
    const some = pay(twoLoans(), "2026-03-31", 50_000, "b");
    expect(loanOf(some, "b")).toMatchObject({ principal: 702_774, interestPaid: 2_774 });
    expect(loanOf(some, "a")).toMatchObject({ principal: 500_000, interestPaid: 0, since: OPENED });
    const more = pay(twoLoans(), "2026-03-31", 800_000, "b");
    expect(loanOf(more, "b")).toMatchObject({ principal: 0, paid: 752_774 });
    expect(loanOf(more, "a")).toMatchObject({ interestPaid: 2_795, principal: 500_000 - (47_226 - 2_795) });
  });

  it("that does not reach pays the interest of the highest rate first, and no principal", () => {
    const ledger = pay(twoLoans(), "2026-03-31", 3_000);
    expect(loanOf(ledger, "a")).toMatchObject({ interestPaid: 2_795, accrued: 0, principal: 500_000 });
    expect(loanOf(ledger, "b")).toMatchObject({ interestPaid: 205, accrued: 2_569, principal: 750_000 });
  });

  it("touches no loan that gets nothing: its interest runs on unrounded", () => {
    const ledger = pay(twoLoans(), "2026-03-31", 1_000);
    expect(loanOf(ledger, "b")).toMatchObject({ since: OPENED, accrued: 0 });
  });

  it("at equal rates the loan opened earlier comes first", () => {
    const loans = [...withLoans(["a", 1_000, "5"], ["b", 1_000, "5.0"]).books().loans.values()];
    expect(allocatePayment({ loans, amount: 1_500, day: OPENED, order: "highest" })).toEqual([
      { loan: "a", interest: 0, principal: 1_000 },
      { loan: "b", interest: 0, principal: 500 },
    ]);
  });

  it("of more than is owed is refused and says what is owed; of all that is owed it ends at zero", () => {
    const ledger = withLoans(["loan", 8_540, "5.5"]);
    expect(owedOn(ledger.books(), "2026-03-21")).toBe(8_566);
    expect(pay(ledger, "2026-03-21", 10_000).problem()).toEqual({ kind: "more than owed", owed: 8_566 });
    ledger.facts.pop();
    pay(ledger, "2026-03-21", 8_566);
    expect(balanceOn(loanOf(ledger), "2027-01-01")).toBe(0);
  });

  it("to a loan that opens only later is refused by its name and day, whatever was opened before", () => {
    const ledger = twoLoans();
    ledger.add("loan", "2026-04-02", { amount: 1_000, data: { loan: "car", rate: "5" } });
    expect(pay(ledger, "2026-03-21", 100, "car").problem()).toEqual({
      kind: "loan not open yet",
      name: "car",
      opened: "2026-04-02",
    });
  });

  it("with no loan, to no such loan or before it was opened is refused", () => {
    expect(pay(new Ledger(), "2026-03-21", 100).problem()).toEqual({ kind: "no loan" });
    expect(pay(twoLoans(), "2026-03-21", 100, "c").problem()).toEqual({ kind: "no such loan", name: "c" });
    expect(pay(twoLoans(), "2026-02-21", 100).problem()).toEqual({
      kind: "loan not open yet",
      name: "a",
      opened: OPENED,
    });
  });
});

describe("a statement", () => {
  it("moves principal so that the balance is the statement's; accrued interest stays accrued", () => {
    const ledger = withLoans(["loan", 1_000_000, "6"]);
    ledger.add("statement", "2026-03-31", { amount: 987_114, data: { loan: "loan" } });
    const loan = loanOf(ledger);
    expect(loan).toMatchObject({ accrued: 4_932, principal: 987_114 - 4_932, since: "2026-03-31" });
    expect(balanceOn(loan, "2026-03-31")).toBe(987_114);
    expect(ledger.books().postings.get(2)).toMatchObject([
      { account: "loan", cents: 17_818 },
      { account: "opening balances", cents: -17_818 },
    ]);
    expect(loan.paid).toBe(0);
  });

  it("may raise the principal, and makes the interest whole cents even where nothing differs", () => {
    const ledger = withLoans(["loan", 1_000_000, "6"]);
    ledger.add("statement", "2026-03-31", { amount: 1_004_932, data: { loan: "loan" } });
    expect(loanOf(ledger)).toMatchObject({ accrued: 4_932, principal: 1_000_000, since: "2026-03-31" });
    ledger.add("statement", "2026-04-01", { amount: 1_100_000, data: { loan: "loan" } });
    expect(balanceOn(loanOf(ledger), "2026-04-01")).toBe(1_100_000);
  });

  it("below the interest due is a problem, at it the principal is gone", () => {
    const ledger = withLoans(["loan", 1_000_000, "6"]);
    ledger.add("statement", "2026-03-31", { amount: 4_931, data: { loan: "loan" } });
    expect(ledger.problem()).toEqual({ kind: "below interest due", interest: 4_932 });
    ledger.facts.pop();
    ledger.add("statement", "2026-03-31", { amount: 4_932, data: { loan: "loan" } });
    expect(loanOf(ledger).principal).toBe(0);
  });
});
