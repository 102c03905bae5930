import type { Earning } from "../../core/answers/earnings.ts";
import { earningsOf } from "../../core/answers/earnings.ts";
import { monthThrough } from "../../core/answers/month.ts";
import { counted, signed } from "../../core/answers/wording.ts";
import type { Books } from "../../core/books/books.ts";
import { monthRow } from "../../core/books/month.ts";
import { pieceLabel } from "../../core/books/piece.ts";
import type { Day, Month } from "../../core/calendar.ts";
import { addMonths, firstDayOf, monthOf, showMonth } from "../../core/calendar.ts";
import type { Cents } from "../../core/money.ts";
import { show } from "../../core/money.ts";

/** A bar of the month: a piece, or what several of them (or none) come to. Cents. */
export interface Bar {
  label: string;
  cents: Cents;
}

/** What the month's picture shows: cents, local days; nothing of it depends on the clock. */
export interface MonthFigures {
  month: Month;
  /** The last day counted: the month's last, or an earlier one while the month runs. */
  through: Day;
  currency: string;
  flipped: number;
  flipProfit: Cents;
  /** What each piece added to the month's flip profit, largest first; the bars sum to `flipProfit`. */
  bars: Bar[];
  /** January to December of the month's year; null for the months after it. */
  year: (Cents | null)[];
  /** Principal owed on all loans at the end of each day that moved it, oldest first; null without a loan. */
  loan: LoanFigures | null;
}

export interface LoanFigures {
  from: Day;
  points: { day: Day; cents: Cents }[];
  /** Loans that were begun after `from`: the line goes up there, and is told why. */
  begun: { day: Day; name: string; cents: Cents }[];
}

/** The figures of a month's picture: the same folds as the recap's text, so that the two never differ. */
export function monthFigures(books: Books, { month, today, currency }: FiguresAsked): MonthFigures {
  const through = monthThrough(month, today);
  const row = monthRow(books, month, today);
  return {
    month,
    through,
    currency,
    flipped: row.flipped,
    flipProfit: row.flipProfit,
    bars: barsOf(earningsOf(books, { from: firstDayOf(month), through }), row.overhead),
    year: monthsOfYear(month).map((each) => (each > month ? null : monthRow(books, each, today).flipProfit)),
    loan: loanLine(books, through),
  };
}

export interface FiguresAsked {
  month: Month;
  today: Day;
  currency: string;
}

function monthsOfYear(month: Month): Month[] {
  const january = `${month.slice(0, 4)}-01`;
  return Array.from({ length: 12 }, (_, index) => addMonths(january, index));
}

/** The most bars that fit the picture; beyond it the middle ones are summed in one. */
const BARS_MAX = 9;

function barsOf(earnings: readonly Earning[], overhead: Cents): Bar[] {
  const bars = earnings
    .filter(({ profit }) => profit !== 0)
    .map(({ piece, profit }) => ({ label: pieceLabel(piece), cents: profit }));
  const room = overhead === 0 ? BARS_MAX : BARS_MAX - 1;
  const shown = bars.length > room ? withMiddleSummed(bars, room) : bars;
  return overhead === 0 ? shown : [...shown, { label: "overhead", cents: -overhead }];
}

/** Keeps the best and the two worst: those are what one wants to see; the rest is one honest bar. */
function withMiddleSummed(bars: readonly Bar[], room: number): Bar[] {
  const worst = bars.slice(-2);
  const best = bars.slice(0, room - 3);
  const middle = bars.slice(room - 3, -2);
  const cents = middle.reduce((total, bar) => total + bar.cents, 0);
  return [...best, { label: `${middle.length} more pieces`, cents }, ...worst];
}

/** The line starts with the year before the month's end, or with the first loan when that is later. */
function loanLine(books: Books, through: Day): MonthFigures["loan"] {
  const byDay = new Map<Day, Cents>();
  for (const fact of books.facts) {
    // Only these move what is owed; the postings of all others are many.
    if (fact.kind !== "pay" && fact.kind !== "statement" && fact.kind !== "loan") continue;
    for (const { account, day, cents } of books.postings.get(fact.id) ?? [])
      if (account === "loan" && day <= through) byDay.set(day, (byDay.get(day) ?? 0) - cents);
  }
  const days = [...byDay.keys()].sort();
  const first = days[0];
  if (first === undefined) return null;
  const yearBack = firstDayOf(addMonths(monthOf(through), -11));
  const from = [first, yearBack].sort()[1]!;
  let owed = 0;
  const points: { day: Day; cents: Cents }[] = [];
  for (const day of days) {
    owed += byDay.get(day)!;
    if (day <= from) points[0] = { day: from, cents: owed };
    else points.push({ day, cents: owed });
  }
  const begun = books.facts.flatMap((fact) =>
    fact.kind === "loan" && fact.day > from && fact.day <= through
      ? [{ day: fact.day, name: fact.data.loan, cents: fact.amount ?? 0 }]
      : [],
  );
  return { from, points, begun };
}

/** The picture in words, for those who cannot see it; at most about 700 characters. */
export function altText(figures: MonthFigures): string {
  const sentences = [
    `${showMonth(figures.month)}: ${counted(figures.flipped, "piece")} flipped, flip profit ${show(figures.flipProfit)} ${figures.currency}.`,
  ];
  if (figures.bars.length > 0) {
    const bars = figures.bars.map((bar) => `${bar.label} ${signed(bar.cents)}`).join(", ");
    sentences.push(`By piece: ${bars}.`);
  }
  const soFar = figures.year.reduce<Cents>((total, cents) => total + (cents ?? 0), 0);
  sentences.push(`${figures.month.slice(0, 4)} so far: ${show(soFar)}.`);
  const points = figures.loan?.points ?? [];
  if (points.length > 0) {
    sentences.push(`Loan principal from ${show(points[0]!.cents)} to ${show(points.at(-1)!.cents)}.`);
  }
  return sentences.join(" ");
}

/** Whether there is anything to draw: a picture of nothing but words is not sent. */
export function isWorthDrawing({ bars, loan, year }: MonthFigures): boolean {
  return bars.length > 0 || year.some((cents) => cents) || (loan !== null && hasCourse(loan));
}

/** Whether what is owed has moved: else a line through the page would say less than its figures. */
export function hasCourse({ points }: LoanFigures): boolean {
  return points.some(({ cents }) => cents !== points[0]!.cents);
}
