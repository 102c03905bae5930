import { Decimal } from "decimal.js";
import { factsOf } from "./books/exchange.ts";
import type { Fact } from "./books/facts.ts";
import { shareOfMiles } from "./books/shares.ts";
import type { Day } from "./calendar.ts";
import type { Cents } from "./money.ts";
import { roundHalfUp } from "./money.ts";

/**
 * The US standard business rate in cents a mile, from its first day, oldest first: IRS Notice 2022-3 and Announcement
 * 2022-13 (from July 2022), Notices 2023-3, 2024-8, 2025-5 and 2026-10. The numbers of the notices before 2026 are
 * from memory; the rates were read in published tables.
 */
const STANDARD_RATES: readonly { from: Day; cents: string }[] = [
  { from: "2022-01-01", cents: "58.5" },
  { from: "2022-07-01", cents: "62.5" },
  { from: "2023-01-01", cents: "65.5" },
  { from: "2024-01-01", cents: "67" },
  { from: "2025-01-01", cents: "70" },
  { from: "2026-01-01", cents: "72.5" },
];

/** Cents a mile that the owner set, by year, as plain decimals. */
export type OwnerRates = Readonly<Record<string, string>>;

interface MileageRate {
  /** Cents a mile, a plain decimal. */
  cents: string;
  /** The year that the rate was set for. */
  year: string;
  /** False where the day's own year has no rate and the nearest known year's stands in. */
  own: boolean;
}

/** The rate for miles driven on a day: the owner's for that year, else the table's, else the latest known. */
export function mileageRateOn(day: Day, ownerRates: OwnerRates = {}): MileageRate {
  const year = day.slice(0, 4);
  const owners = ownerRates[year];
  if (owners !== undefined) return { cents: owners, year, own: true };
  const known = STANDARD_RATES.filter((rate) => rate.from <= day).at(-1) ?? STANDARD_RATES[0]!;
  const tableYear = known.from.slice(0, 4);
  if (tableYear === year) return { cents: known.cents, year, own: true };
  const latestOwners = Object.keys(ownerRates)
    .filter((ownersYear) => ownersYear < year && ownersYear > tableYear)
    .sort()
    .at(-1);
  if (latestOwners === undefined) return { cents: known.cents, year: tableYear, own: false };
  return { cents: ownerRates[latestOwners]!, year: latestOwners, own: false };
}

/** What miles (a plain decimal) are worth at a rate in cents a mile: whole cents, half up. */
export function valueOfMiles(miles: string, centsPerMile: string): Cents {
  return roundHalfUp(new Decimal(miles).times(centsPerMile));
}

/** Miles at one rate, and what they are worth. */
export interface MilesAtRate {
  rate: MileageRate;
  miles: Decimal;
  value: Cents;
}

export interface MilesDriven {
  miles: Decimal;
  /** Cents: the sum over the rates, each rounded half up once. */
  value: Cents;
  /** One for each rate in force, oldest first. */
  byRate: MilesAtRate[];
}

/** Adds up miles driven on days, each at its day's own rate. */
export function addMiles(
  drives: readonly { day: Day; miles: Decimal }[],
  ownerRates: OwnerRates = {},
): MilesDriven {
  const byRate = new Map<string, { rate: MileageRate; miles: Decimal }>();
  for (const { day, miles } of [...drives].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))) {
    const rate = mileageRateOn(day, ownerRates);
    const key = `${rate.year} ${rate.cents} ${rate.own}`;
    const sum = byRate.get(key)?.miles ?? new Decimal(0);
    byRate.set(key, { rate, miles: sum.plus(miles) });
  }
  const valued = [...byRate.values()].map(({ rate, miles }) => ({
    rate,
    miles,
    value: roundHalfUp(miles.times(rate.cents)),
  }));
  return {
    miles: valued.reduce((sum, { miles }) => sum.plus(miles), new Decimal(0)),
    value: valued.reduce((sum, { value }) => sum + value, 0),
    byRate: valued,
  };
}

/** The drives among facts, in the order in which they fold, from one day through another (both counted). */
export function drivesOf(
  facts: readonly Fact[],
  { from, through }: { from: Day; through: Day },
): { day: Day; miles: Decimal }[] {
  return factsOf(facts, { from, through }).flatMap((fact) =>
    fact.kind === "drive" ? [{ day: fact.day, miles: new Decimal(fact.data.miles) }] : [],
  );
}

/** A piece's share of the drives that name it, split exactly over the pieces of each. */
export function drivesOfPiece(facts: readonly Fact[], piece: number): { day: Day; miles: Decimal }[] {
  return facts.flatMap((fact) =>
    fact.kind === "drive" && fact.pieces.includes(piece)
      ? [{ day: fact.day, miles: shareOfMiles(fact.data.miles, fact.pieces.length) }]
      : [],
  );
}

/** Miles as a person reads them: at most one place, no idle zero ("31.5", "24"). */
export function showMiles(miles: Decimal): string {
  return miles.toDecimalPlaces(1, Decimal.ROUND_HALF_UP).toString();
}

/** Hundredths of a mile as the plain decimal of a fact, without idle zeros: "12.5", "24". */
export function plainMiles(hundredths: number): string {
  return new Decimal(hundredths).div(100).toFixed();
}
