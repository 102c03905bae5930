import { Decimal } from "decimal.js";
import type { Books } from "./books/books.ts";
import { firstIndex } from "./books/exchange.ts";
import type { Fact } from "./books/facts.ts";
import type { Day } from "./calendar.ts";
import { addDays, weekdayOf } from "./calendar.ts";
import type { Cents } from "./money.ts";
import { roundHalfUp } from "./money.ts";

/**
 * The most earnings a year that the Social Security part is charged on, in cents: the Social Security Administration's
 * Contribution and Benefit Base, 2026 as announced on 24 October 2025.
 */
const SOCIAL_SECURITY_CAPS: Readonly<Record<string, Cents>> = {
  "2022": 14_700_000,
  "2023": 16_020_000,
  "2024": 16_860_000,
  "2025": 17_610_000,
  "2026": 18_450_000,
};

/** US self-employment tax (26 USC 1401, 1402): rates on 92.35 % of the profit, from 400.00 of that on. */
const BASE_SHARE = "0.9235";
const BASE_CENTS_MIN = 40_000;
const SOCIAL_SECURITY_RATE = "0.124";
const MEDICARE_RATE = "0.029";

interface SelfEmploymentTax {
  /** Net earnings: 92.35 % of the profit, cents, exact. */
  base: Decimal;
  socialSecurity: Cents;
  medicare: Cents;
  /** Rounded once from the exact sum, so it may differ from the two parts by a cent. */
  total: Cents;
  /** Half of the exact sum: what lowers the income that is taxed. */
  half: Cents;
  /** The year whose cap was used: the asked one, or the latest known. */
  capYear: string;
}

/** An estimate from a year's profit and wages in cents; leaves out the additional Medicare part over 200,000. */
export function selfEmploymentTax({
  year,
  profit,
  wages = 0,
}: {
  year: string;
  profit: Cents;
  wages?: Cents;
}): SelfEmploymentTax {
  const capYear = capYearOf(year);
  const base = new Decimal(profit).times(BASE_SHARE);
  if (base.lt(BASE_CENTS_MIN)) {
    return { base: Decimal.max(base, 0), socialSecurity: 0, medicare: 0, total: 0, half: 0, capYear };
  }
  const room = Math.max(0, SOCIAL_SECURITY_CAPS[capYear]! - wages);
  const socialSecurity = Decimal.min(base, room).times(SOCIAL_SECURITY_RATE);
  const medicare = base.times(MEDICARE_RATE);
  const exact = socialSecurity.plus(medicare);
  return {
    base,
    socialSecurity: roundHalfUp(socialSecurity),
    medicare: roundHalfUp(medicare),
    total: roundHalfUp(exact),
    half: roundHalfUp(exact.div(2)),
    capYear,
  };
}

function capYearOf(year: string): string {
  const years = Object.keys(SOCIAL_SECURITY_CAPS).sort();
  return years.filter((known) => known <= year).at(-1) ?? years[0]!;
}

/**
 * The four days by which a year's estimated tax is due (IRS, estimated tax questions): 15 April, June and
 * September, and 15 January after it; on a weekend or legal holiday the next day that is neither.
 */
export function estimatedTaxDays(taxYear: number): [Day, Day, Day, Day] {
  return [
    nextBusinessDay(`${taxYear}-04-15`),
    nextBusinessDay(`${taxYear}-06-15`),
    nextBusinessDay(`${taxYear}-09-15`),
    nextBusinessDay(`${taxYear + 1}-01-15`),
  ];
}

/** The first of those days that is not over on `today`. */
export function nextEstimatedTaxDay(today: Day): Day {
  const year = Number(today.slice(0, 4));
  const days = [year - 1, year].flatMap(estimatedTaxDays);
  // The last day of this year's tax lies in January of the next, so one always remains.
  return days.find((day) => day >= today)!;
}

function nextBusinessDay(day: Day): Day {
  let next = day;
  while (isDayOff(next)) next = addDays(next, 1);
  return next;
}

/** Weekends, and the only two legal holidays that the four days can run into. */
function isDayOff(day: Day): boolean {
  const weekday = weekdayOf(day);
  return weekday === 0 || weekday === 6 || isKingDay(day) || isEmancipationDayObserved(day);
}

/** The third Monday of January. */
function isKingDay(day: Day): boolean {
  const date = Number(day.slice(8, 10));
  return day.slice(5, 7) === "01" && weekdayOf(day) === 1 && date >= 15 && date <= 21;
}

/** The District of Columbia's 16 April, kept on Friday for a Saturday and on Monday for a Sunday. */
function isEmancipationDayObserved(day: Day): boolean {
  const holiday = `${day.slice(0, 4)}-04-16`;
  const weekday = weekdayOf(holiday);
  return day === addDays(holiday, weekday === 6 ? -1 : weekday === 0 ? 1 : 0);
}

/** Vehicle spending that comes on top of the mileage rate, which covers all other (IRS Topic 510). */
const BESIDE_THE_RATE = /\b(?:tolls?|parking)\b/;

function isCoveredByRate(fact: Fact): boolean {
  return fact.kind === "spend" && fact.data.category === "vehicle" && !BESIDE_THE_RATE.test(fact.data.what);
}

/**
 * Vehicle spending, in cents, that lowered the profit from one day through another and that the mileage
 * rate stands in for. Spending on a piece counts when its cost does: at its sale, back at its return.
 */
export function vehicleCostCovered(books: Books, { from, through }: { from: Day; through: Day }): Cents {
  const { facts } = books;
  const onPiece = new Map<number, Cents>();
  const start = firstIndex(facts, ({ day }) => day >= from);
  const end = firstIndex(facts, ({ day }) => day > through);
  let covered = 0;
  for (let at = 0; at < end; at += 1) {
    const fact = facts[at]!;
    // Most facts are neither; of the years before only what pieces still carry counts.
    if (fact.kind === "spend") {
      if (!isCoveredByRate(fact)) continue;
      const atOnce = spentAtOnce(books, fact, onPiece);
      if (at >= start) covered += atOnce;
    } else if (at >= start) covered += directionOf(fact) * sumOver(fact.pieces, onPiece);
  }
  return covered;
}

/** Notes each piece's share for later; gives back what counts as a cost on the day of spending itself. */
function spentAtOnce(books: Books, fact: Fact, onPiece: Map<number, Cents>): Cents {
  let atOnce = 0;
  for (const { account, cents, piece } of books.postings.get(fact.id) ?? []) {
    if (account === "cash") continue;
    if (piece !== null) onPiece.set(piece, (onPiece.get(piece) ?? 0) + cents);
    if (account !== "unsold pieces" && account !== "personal use") atOnce += cents;
  }
  return atOnce;
}

/** 1 where a fact turns what pieces cost into a cost of the business, -1 where it takes that back. */
function directionOf(fact: Fact): number {
  // A piece that a trade brings has had nothing spent on it yet.
  if (fact.kind === "sell" || fact.kind === "trade") return 1;
  if (fact.kind === "retire") return fact.data.how === "kept" ? 0 : 1;
  return fact.kind === "refund" && fact.data.returned ? -1 : 0;
}

function sumOver(pieces: readonly number[], onPiece: ReadonlyMap<number, Cents>): Cents {
  return pieces.reduce((sum, piece) => sum + (onPiece.get(piece) ?? 0), 0);
}
