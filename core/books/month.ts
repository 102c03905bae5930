import { addMonths, type Day, lastDayOf, type Month, monthOf } from "../calendar.ts";
import { type Cents, percentOf } from "../money.ts";
import type { Books, MonthSums } from "./books.ts";

/** A month as the totals of the books have it: its sums as posted and what follows from them. Cents. */
export interface MonthRow extends MonthSums {
  month: Month;
  flipProfit: Cents;
  taxSetAside: Cents;
  forLoan: Cents;
}

/** The sums of a month in which nothing was posted. */
export function emptyMonth(): MonthSums {
  return {
    flipped: 0,
    proceeds: 0,
    costOfSold: 0,
    fees: 0,
    overhead: 0,
    writtenOff: 0,
    otherIncome: 0,
    paidToLoan: 0,
    declaredSent: 0,
    buyersOwe: 0,
    cashIn: 0,
    cashOut: 0,
  };
}

/** The percent to set aside for tax that is in force on a day, a plain decimal; "0" before any was set. */
export function taxPercentOn(books: Pick<Books, "taxRates">, day: Day): string {
  return books.taxRates.findLast((rate) => rate.day <= day)?.percent ?? "0";
}

/**
 * A month's totals in cents, as the books stand: books that are to end on an earlier day are folded from the
 * facts through it. Tax goes by the percent in force at the month's end, or at `through` while it runs.
 */
export function monthRow(books: Books, month: Month, through: Day): MonthRow {
  const sums = books.months.get(month) ?? emptyMonth();
  return { month, ...sums, ...profitIn(sums, books, month, through) };
}

/** What follows from the sums of a month. */
function profitIn(
  sums: Readonly<MonthSums>,
  books: Books,
  month: Month,
  through: Day,
): Pick<MonthRow, "flipProfit" | "taxSetAside" | "forLoan"> {
  const flipProfit = sums.proceeds - sums.costOfSold - sums.fees - sums.overhead - sums.writtenOff;
  const income = flipProfit + sums.otherIncome;
  const taxSetAside = income > 0 ? percentOf(percentIn(books, month, through), income) : 0;
  return { flipProfit, taxSetAside, forLoan: income - taxSetAside };
}

/** The percent in force at a month's end, or at `through` while it runs. */
const percentIn = (books: Books, month: Month, through: Day): string =>
  taxPercentOn(books, month < monthOf(through) ? lastDayOf(month) : through);

/** Every month from the earliest fact that stands (a standing note makes no month) to the month of `through`. */
export function monthRows(books: Books, through: Day): MonthRow[] {
  const earliest = books.facts.find((fact) => fact.kind !== "repeat");
  if (!earliest) return [];
  const rows: MonthRow[] = [];
  const last = monthOf(through);
  for (let month = monthOf(earliest.day); month <= last; month = addMonths(month, 1)) {
    rows.push(monthRow(books, month, through));
  }
  return rows;
}

/**
 * Due to the loan, in cents: all "for the loan" so far less all paid or declared as sent, and less what
 * buyers owe: profit that is not in hand.
 */
export function earmarked(books: Books, through: Day): Cents {
  let ready = 0;
  const last = monthOf(through);
  for (const [month, sums] of books.months) {
    if (month > last) continue;
    const { forLoan } = profitIn(sums, books, month, through);
    ready += forLoan - sums.paidToLoan - sums.declaredSent - sums.buyersOwe;
  }
  return ready;
}
