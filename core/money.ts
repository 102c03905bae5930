import { Decimal } from "decimal.js";

/** Money in whole cents (a safe integer). Never a fraction, never a float of dollars. */
export type Cents = number;

/** Decimals wide enough that sums and products of rates, days, miles and cents stay exact. */
export const WideDecimal = Decimal.clone({ precision: 60 });

/** The most that one note may name: 1,000,000.00. Above it the note is unclear. */
export const AMOUNT_CENTS_MAX = 100_000_000;

/** Throws when an amount is not a whole number of cents: only a bug can cause that. */
export function assertCents(cents: number): asserts cents is Cents {
  if (!Number.isSafeInteger(cents)) throw new Error(`not whole cents: ${cents}`);
}

/** Rounds an exact amount in cents to whole cents, ties away from zero (half up). */
export function roundHalfUp(exactCents: Decimal): Cents {
  const cents = exactCents.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();
  assertCents(cents);
  return cents === 0 ? 0 : cents;
}

/** Cents as a plain decimal string with two places: 125000 → "1250.00", -5 → "-0.05". */
export function amountText(cents: Cents): string {
  assertCents(cents);
  const digits = String(Math.abs(cents)).padStart(3, "0");
  return `${cents < 0 ? "-" : ""}${digits.slice(0, -2)}.${digits.slice(-2)}`;
}

/** Cents as a person reads them, grouped, without a sign for the currency: 125000 → "1,250.00". */
export function show(cents: Cents): string {
  const [whole, fraction] = amountText(Math.abs(cents)).split(".") as [string, string];
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return `${cents < 0 ? "-" : ""}${grouped}.${fraction}`;
}

/** Cents an hour, rounded half up; null where no time is logged. */
export function anHour(cents: Cents, minutes: number): Cents | null {
  return minutes > 0 ? roundHalfUp(new Decimal(cents).times(60).div(minutes)) : null;
}

/** `percent` (a plain decimal such as "22.5") of an amount in cents, rounded half up once. */
export function percentOf(percent: string, cents: Cents): Cents {
  if (percent === "0" || cents === 0) return 0;
  return roundHalfUp(new Decimal(percent).times(cents).div(100));
}
