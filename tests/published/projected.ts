import { Decimal } from "decimal.js";
import { addDays } from "../../core/calendar.ts";
import type { PaymentOrder } from "../../core/notes/reading.ts";
import { project } from "../../core/payoff.ts";
import { Ledger } from "../books/ledger.ts";

interface Debt {
  principal: number;
  rate: string;
}

const START = "2026-01-01";
/** Far from touching a cent, and no more places than a rate may have. */
const PLACES = 14;

/**
 * The product's projection of level payments, each after a twelfth of a year as published schedules count it: thirty
 * days at a rate of 365/360 come to a twelfth of the yearly rate of simple daily interest.
 */
export function projected(debts: readonly Debt[], monthly: number, order: PaymentOrder = "highest") {
  const ledger = new Ledger();
  debts.forEach(({ principal, rate }, index) => {
    const scaled = new Decimal(rate).times(365).div(360).toDecimalPlaces(PLACES, Decimal.ROUND_UP).toFixed();
    ledger.add("loan", START, { amount: principal, data: { loan: `loan ${index + 1}`, rate: scaled } });
  });
  ledger.add("terms", START, { data: { order } });
  const payday = (month: number) => addDays(START, 30 * month);
  const payoff = project(ledger.books(), { monthly, now: 0, payday }, START);
  if (payoff.kind === "never") return payoff;
  const { kind, payments, lastAmount: last, interest, total } = payoff;
  return { kind, payments, last, interest, total };
}
