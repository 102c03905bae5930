import type { Books } from "../books/books.ts";
import type { Day } from "../calendar.ts";
import { showMonth } from "../calendar.ts";
import { amountText, type Cents, show } from "../money.ts";
import type { Answered } from "./answered.ts";
import type { Chart } from "./charted.ts";
import type { Desk } from "./desk.ts";
import type { Figure, Unit } from "./query.ts";

/** More bars than this cannot be told apart on a phone: the rest is left to the text. */
const BARS_MAX = 24;

/** Rows as bars: months under their names, every amount as the text tells it. */
export function barsOf(
  title: string,
  rows: readonly Figure[],
  unit: Unit,
  told: (value: Figure["value"], unit: Unit) => string,
): Chart {
  const bars = rows.slice(-BARS_MAX).map(({ label, value }) => ({
    label: /^\d{4}-\d{2}$/.test(label) ? showMonth(label) : label,
    value: Number(value ?? 0),
    told: told(value, unit),
  }));
  return { kind: "bars", title, bars };
}

/** What is owed of each loan after every day that moved it: principal in cents. */
export function loanLines(books: Books, today: Day): Extract<Chart, { kind: "lines" }> | null {
  const owed = new Map<string, { day: Day; cents: Cents }[]>();
  for (const fact of books.facts) {
    if (fact.day > today) break;
    if (fact.kind !== "pay" && fact.kind !== "statement" && fact.kind !== "loan") continue;
    for (const { account, detail, cents } of books.postings.get(fact.id) ?? []) {
      if (account !== "loan" || detail === null) continue;
      const points = owed.get(detail) ?? [];
      const last = points.at(-1);
      const now = (last?.cents ?? 0) - cents;
      if (last?.day === fact.day) last.cents = now;
      else points.push({ day: fact.day, cents: now });
      owed.set(detail, points);
    }
  }
  const lines = [...owed].map(([name, points]) => ({ name, points }));
  const from = lines.map(({ points }) => points[0]!.day).sort()[0];
  return from === undefined ? null : { kind: "lines", title: "Loan principal", from, to: today, lines };
}

/** "loan chart": a line for each loan, with where each stands in the words beside it. */
export function answerLoanChart({ books, today }: Desk): Answered {
  const chart = loanLines(books, today);
  if (!chart) return { understood: true, value: null, period: null, text: "No loan on the books." };
  const ends = chart.lines.map(({ name, points }) => ({ name, first: points[0]!, last: points.at(-1)! }));
  const sum = ends.reduce((total, { last }) => total + last.cents, 0);
  return {
    understood: true,
    value: null,
    period: null,
    rows: ends.map(({ name, last }) => ({ label: name, value: amountText(last.cents) })),
    text: [
      `Loan principal: ${show(sum)} now`,
      ...ends.map(({ name, first, last }) => `  ${name}: ${show(first.cents)} to ${show(last.cents)}`),
    ].join("\n"),
    chart,
    isOwners: true,
  };
}
