import { Decimal } from "decimal.js";
import type { Books, Loan } from "./books/books.ts";
import { accruedOn, allocatePayment, balanceOn, bringForward } from "./books/loan.ts";
import type { Day } from "./calendar.ts";
import { sameDayIn } from "./calendar.ts";
import type { Cents } from "./money.ts";

/** What a supposition may do each month and once, in cents. */
export interface Supposed {
  monthly: Cents;
  /** Paid today, before the first month. */
  now: Cents;
  /** What may be left: nothing where it is not said. */
  until?: Cents;
  /** The day of each monthly payment, counted from 1; unsaid: today's day of each month to come. */
  payday?(month: number): Day;
}

/** How it ends: the day of the last payment of each loan, or never. */
export type Payoff =
  | {
      kind: "paid";
      payments: number;
      last: Day;
      /** Of it all; and of what is paid, the last payment and the whole. */
      interest: Cents;
      lastAmount: Cents;
      total: Cents;
      loans: readonly { name: string; last: Day; interest: Cents }[];
    }
  /** The payments do not outrun the interest, or not in a hundred years. */
  | { kind: "never" };

/** A projection longer than this many months says nothing useful. */
const MONTHS_MAX = 1_200;

/** After so many months the same lengths of months come again: what is owed only compares with what was owed then. */
const LEAP_CYCLE = 48;

type Debts = Loan[];

function copies(books: Books, only?: string): Debts {
  return [...books.loans.values()]
    .filter(({ name }) => only === undefined || name === only)
    .map((loan) => ({ ...loan, stretches: [...loan.stretches] }));
}

function owed(loans: Debts, day: Day): Cents {
  return loans.reduce((sum, loan) => sum + balanceOn(loan, day), 0);
}

/** One payment by the rules of the books; adds the interest in it to that of each loan. */
function payOn(
  loans: Debts,
  amount: Cents,
  { day, order, interest }: { day: Day; order: Books["order"]; interest: Map<string, Cents> },
): void {
  for (const share of allocatePayment({ loans, amount, day, order })) {
    const loan = loans.find(({ name }) => name === share.loan)!;
    bringForward(loan, day);
    loan.accrued -= share.interest;
    loan.principal -= share.principal;
    interest.set(share.loan, (interest.get(share.loan) ?? 0) + share.interest);
  }
}

/**
 * Level monthly payments from today's day of next month on, by the books' own rules: simple daily interest, rounded
 * at each payment, interest first, then principal in the order of the loans. An estimate: who pays on other days
 * pays other interest.
 */
export function project(
  books: Books,
  { monthly, now, until = 0, payday = (month) => sameDayIn(today, month) }: Supposed,
  today: Day,
  only?: string,
): Payoff {
  const loans = copies(books, only);
  let total = Math.min(now, owed(loans, today));
  let lastAmount = total;
  const interest = new Map<string, Cents>();
  payOn(loans, total, { day: today, order: books.order, interest });
  const ends = new Map<string, Day>();
  const note = (day: Day): void => {
    for (const loan of loans)
      if (balanceOn(loan, day) <= until && !ends.has(loan.name)) ends.set(loan.name, day);
  };
  note(today);
  const done = (last: Day, payments: number): Payoff => ({
    kind: "paid",
    payments,
    last,
    interest: [...interest.values()].reduce((sum, cents) => sum + cents, 0),
    lastAmount,
    total,
    loans: [...ends].map(([name, end]) => ({ name, last: end, interest: interest.get(name) ?? 0 })),
  });
  if (owed(loans, today) <= until) return done(today, 0);
  let before = Number.POSITIVE_INFINITY;
  for (let month = 1; month <= MONTHS_MAX; month += 1) {
    const day = payday(month);
    const left = owed(loans, day);
    if (month % LEAP_CYCLE === 1) {
      if (left >= before) return { kind: "never" };
      before = left;
    }
    lastAmount = Math.min(monthly, left);
    total += lastAmount;
    payOn(loans, lastAmount, { day, order: books.order, interest });
    note(day);
    if (owed(loans, day) <= until) return done(day, month);
  }
  return { kind: "never" };
}

/** The least whole cents a month with which nothing is owed after the payment on or before a day; null: too soon. */
export function neededBy(books: Books, by: Day, today: Day, only?: string): Cents | null {
  if (sameDayIn(today, 1) > by) return null;
  const inTime = (monthly: Cents): boolean => {
    const payoff = project(books, { monthly, now: 0 }, today, only);
    return payoff.kind === "paid" && payoff.last <= by;
  };
  let low = 0;
  // All that is owed by then is enough with the first payment.
  let high = owed(copies(books, only), by);
  while (low + 1 < high) {
    const middle = Math.floor((low + high) / 2);
    if (inTime(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Which loan to serve first: the highest rate, and what that saves against the lowest first, in cents of interest. */
export function firstLoan(
  books: Books,
  monthly: Cents,
  today: Day,
): { name: string; saves: Cents | null } | null {
  const open = copies(books).filter((loan) => loan.principal + accruedOn(loan, today) > 0);
  const byRate = [...open].sort((a, b) => new Decimal(b.rate).comparedTo(a.rate));
  const [first] = byRate;
  if (!first) return null;
  if (open.length === 1) return { name: first.name, saves: null };
  const best = servedInOrder(byRate, monthly, today);
  const worst = servedInOrder([...byRate].reverse(), monthly, today);
  return { name: first.name, saves: best === null || worst === null ? null : worst - best };
}

/** All interest until nothing is owed where the loans are served in full one after another; null: never. */
function servedInOrder(loans: readonly Loan[], monthly: Cents, today: Day): Cents | null {
  const debts = loans.map((loan) => ({ ...loan, stretches: [...loan.stretches] }));
  let interest = 0;
  for (let month = 1; month <= MONTHS_MAX; month += 1) {
    const day = sameDayIn(today, month);
    let left = monthly;
    for (const loan of debts) {
      const due = accruedOn(loan, day);
      bringForward(loan, day);
      const paid = Math.min(left, due);
      loan.accrued = due - paid;
      interest += paid;
      left -= paid;
    }
    for (const loan of debts) {
      const paid = Math.min(left, loan.principal);
      loan.principal -= paid;
      left -= paid;
    }
    if (debts.every((loan) => loan.principal + loan.accrued === 0)) return interest;
  }
  return null;
}
