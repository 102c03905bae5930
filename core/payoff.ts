import { Decimal } from "decimal.js";
import type { Cents } from "./money.ts";
import { roundHalfUp } from "./money.ts";
import type { PaymentOrder } from "./notes/reading.ts";
import { splitByWeight } from "./split.ts";

/** What a projection needs of a loan: cents, and the yearly percent as a plain decimal. */
interface Debt {
  principal: Cents;
  /** Interest due already; it earns none itself. */
  accrued: Cents;
  rate: string;
}

type Payoff =
  /** The payment does not outrun the interest, or not in a hundred years: `interest` is the first month's, in cents. */
  | { kind: "never"; interest: Cents }
  /** `payments` monthly ones, the last trimmed to `last`; interest from now on and all that is paid, in cents. */
  | { kind: "paid"; payments: number; last: Cents; interest: Cents; total: Cents };

/** A projection longer than this many months says nothing useful: it counts as never. */
const MONTHS_MAX = 1_200;

/**
 * Projects level monthly payments until nothing is owed: interest of a twelfth of the yearly rate, half up
 * each month, interest first, then principal in the loans' order. The loans themselves run on simple daily
 * interest, so the result is an estimate, good to some dollars.
 */
export function projectPayoff(debts: readonly Debt[], payment: Cents, order: PaymentOrder): Payoff {
  const never: Payoff = { kind: "never", interest: sumOf(debts.map(monthsInterest)) };
  let owed = debts.map((debt) => ({ ...debt }));
  let interestTotal = 0;
  let total = 0;
  for (let month = 1; month <= MONTHS_MAX; month++) {
    const interest = owed.map(monthsInterest);
    const added = sumOf(interest);
    if (payment <= added) return never;
    interestTotal += added;
    const due = owed.map((debt, index) => ({ ...debt, accrued: debt.accrued + interest[index]! }));
    const balance = due.reduce((sum, debt) => sum + debt.principal + debt.accrued, 0);
    if (balance <= payment) {
      return {
        kind: "paid",
        payments: month,
        last: balance,
        interest: interestTotal,
        total: total + balance,
      };
    }
    total += payment;
    owed = afterPayment(due, payment, order);
  }
  return never;
}

function sumOf(amounts: readonly Cents[]): Cents {
  return amounts.reduce((a, b) => a + b, 0);
}

function monthsInterest(debt: Debt): Cents {
  return roundHalfUp(new Decimal(debt.rate).times(debt.principal).div(1_200));
}

/** Interest of all loans first, by highest rate where it does not reach, then principal in the order. */
function afterPayment(debts: readonly Debt[], payment: Cents, order: PaymentOrder): Debt[] {
  const paid = debts.map((debt) => ({ ...debt }));
  const byRate = [...paid].sort((a, b) => new Decimal(b.rate).cmp(a.rate));
  let left = payment;
  for (const debt of byRate) {
    const share = Math.min(debt.accrued, left);
    debt.accrued -= share;
    left -= share;
  }
  if (order === "prorata") {
    const shares = splitByWeight(
      left,
      paid.map((debt) => debt.principal),
    );
    paid.forEach((debt, index) => {
      debt.principal -= shares[index]!;
    });
    return paid;
  }
  for (const debt of byRate) {
    const share = Math.min(debt.principal, left);
    debt.principal -= share;
    left -= share;
  }
  return paid;
}
