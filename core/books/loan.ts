import type { Decimal } from "decimal.js";
import { addDays, type Day, daysBetween, daysInYear, firstDayOf } from "../calendar.ts";
import { type Cents, WideDecimal } from "../money.ts";
import type { DaysInYear, PaymentOrder } from "../notes/reading.ts";
import { splitByWeight } from "../split.ts";
import type { Books, Loan } from "./books.ts";

/**
 * The smallest number that 365, 366 and 1461 (four years of 365.25) all divide. Counting days in parts of a
 * year this fine keeps sums over different day counts exact, so that a tie at half a cent is really one.
 */
const PARTS_OF_YEAR = 2 * 3 * 5 * 61 * 73 * 487;

/** Days from `from` up to and not including `to`, in `PARTS_OF_YEAR`, by the loan's own count of days. */
function yearParts(from: Day, to: Day, days: DaysInYear): number {
  if (to <= from) return 0;
  if (days === "365") return (daysBetween(from, to) * PARTS_OF_YEAR) / 365;
  if (days === "365.25") return (daysBetween(from, to) * 4 * PARTS_OF_YEAR) / 1461;
  let parts = 0;
  for (let start = from; start < to; ) {
    const year = Number(start.slice(0, 4));
    const yearEnd = firstDayOf(`${String(year + 1).padStart(4, "0")}-01`);
    const end = yearEnd < to ? yearEnd : to;
    parts += (daysBetween(start, end) * PARTS_OF_YEAR) / daysInYear(year);
    start = end;
  }
  return parts;
}

/** Rates count in units of 10^-15 percent: as many places as a rate may have. */
const RATE_PLACES = 15;
/** What one cent of interest makes when principal, rate and days are multiplied in these units. */
const CENT_OF_INTEREST = 100n * 10n ** BigInt(RATE_PLACES) * BigInt(PARTS_OF_YEAR);

/**
 * Simple interest in exact units: principal × rate × days, nothing divided yet. Whole numbers of any size, as a
 * ten-year ledger asks this many thousand times and decimals are slow at it.
 */
function interestUnits(principal: Cents, rate: string, parts: number): bigint {
  const [whole, fraction = ""] = rate.split(".") as [string, string?];
  if (fraction.length > RATE_PLACES) throw new Error(`a rate of more than ${RATE_PLACES} places: ${rate}`);
  return BigInt(principal) * BigInt(whole + fraction.padEnd(RATE_PLACES, "0")) * BigInt(parts);
}

/**
 * Interest due on a day in whole cents: what was left unpaid at the last posting, and simple daily interest
 * since, multiplied first and rounded once, half up. Unpaid interest earns none.
 * Source: 34 CFR 685.211 and servicers' pages on simple daily interest (tests/published).
 */
export function accruedOn(loan: Readonly<Loan>, day: Day): Cents {
  let units = 0n;
  loan.stretches.forEach((stretch, index) => {
    const next = loan.stretches[index + 1]?.from;
    const end = next !== undefined && next < day ? next : day;
    units += interestUnits(loan.principal, stretch.rate, yearParts(stretch.from, end, stretch.days));
  });
  return loan.accrued + Number((2n * units + CENT_OF_INTEREST) / (2n * CENT_OF_INTEREST));
}

/** Principal and interest due on a day, in cents. */
export function balanceOn(loan: Readonly<Loan>, day: Day): Cents {
  return loan.principal + accruedOn(loan, day);
}

/** What is owed on all loans on a day, in cents. */
export function owedOn(books: Pick<Books, "loans">, day: Day): Cents {
  let owed = 0;
  for (const loan of books.loans.values()) owed += balanceOn(loan, day);
  return owed;
}

/** Interest of the one day that begins on `day`, in exact cents, at the terms in force on it. */
export function interestADay(loan: Readonly<Loan>, day: Day): Decimal {
  const stretch = loan.stretches.filter(({ from }) => from <= day).at(-1) ?? loan;
  const parts = yearParts(day, addDays(day, 1), stretch.days);
  const units = interestUnits(loan.principal, stretch.rate, parts);
  return new WideDecimal(units.toString()).div(CENT_OF_INTEREST.toString());
}

/** What one loan gets of a payment, in cents. */
interface LoanShare {
  loan: string;
  interest: Cents;
  principal: Cents;
}

/** A payment of `amount` cents on `day`; `named`: the loan to serve in full before the rest. */
interface Payment {
  loans: readonly Readonly<Loan>[];
  amount: Cents;
  day: Day;
  order: PaymentOrder;
  named?: string | undefined;
}

function byHighestRate(a: Readonly<Loan>, b: Readonly<Loan>): number {
  return new WideDecimal(b.rate).comparedTo(a.rate);
}

/**
 * Where a payment goes, a share for each loan that gets anything, in the order of `loans`. A named loan is
 * served in full first; then the interest due on all loans, highest rate first where it does not reach;
 * then principal, by highest rate or in proportion to principal (equal rates: the loan opened earlier). What
 * is more than owed is in no share.
 */
export function allocatePayment({ loans, amount, day, order, named }: Payment): LoanShare[] {
  const shares = new Map(loans.map((loan) => [loan, { loan: loan.name, interest: 0, principal: 0 }]));
  let left = amount;
  const payInterest = (loan: Readonly<Loan>): void => {
    const interest = Math.min(left, accruedOn(loan, day));
    shares.get(loan)!.interest = interest;
    left -= interest;
  };
  const payPrincipal = (loan: Readonly<Loan>, most: Cents): void => {
    const principal = Math.min(most, loan.principal);
    shares.get(loan)!.principal = principal;
    left -= principal;
  };
  const first = loans.filter((loan) => loan.name === named);
  // The sort is stable, so equal rates stay in the order the loans were opened.
  const rest = loans.filter((loan) => loan.name !== named).sort(byHighestRate);
  for (const loan of first) {
    payInterest(loan);
    payPrincipal(loan, left);
  }
  for (const loan of rest) payInterest(loan);
  if (order === "highest") {
    for (const loan of rest) payPrincipal(loan, left);
  } else if (rest.length > 0) {
    const open = loans.filter((loan) => loan.name !== named);
    const principals = open.map((loan) => loan.principal);
    const whole = principals.reduce((a, b) => a + b, 0);
    const parts = splitByWeight(Math.min(left, whole), principals);
    open.forEach((loan, index) => {
      payPrincipal(loan, parts[index]!);
    });
  }
  return [...shares.values()].filter((share) => share.interest > 0 || share.principal > 0);
}

/** A posting on the loan on `day`: the interest due becomes whole cents and runs anew from there. */
export function bringForward(loan: Loan, day: Day): void {
  loan.accrued = accruedOn(loan, day);
  loan.since = day;
  loan.stretches = [{ from: day, rate: loan.rate, days: loan.days }];
}

/** New terms from `day` on: a stretch begins, and interest up to it keeps the old terms, not yet rounded. */
export function changeTerms(loan: Loan, day: Day, terms: { rate?: string; days?: DaysInYear }): void {
  if (terms.rate !== undefined) {
    loan.rate = terms.rate;
    loan.rateUnknown = false;
  }
  if (terms.days !== undefined) loan.days = terms.days;
  const before = loan.stretches.filter(({ from }) => from < day);
  loan.stretches = [...before, { from: day, rate: loan.rate, days: loan.days }];
}
