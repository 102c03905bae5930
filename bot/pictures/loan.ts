import { showDate } from "../../core/calendar.ts";
import type { Cents } from "../../core/money.ts";
import { show } from "../../core/money.ts";
import { hasCourse, type LoanFigures, type MonthFigures } from "./figures.ts";
import { type Band, COLORS, daysAcross, LEFT, nothing, RIGHT, stepsOf, TITLE_HEIGHT, title } from "./page.ts";
import { dot, fitted, line, text, widthOf } from "./svg.ts";

/** The height of a loan that has no course to draw yet: its title and a line of words. */
export const COURSELESS_HEIGHT = 130;

/** A loan on which nothing has moved yet, in its figures. */
function standing({ points, from }: LoanFigures, band: Band): string[] {
  const words = `Since ${showDate(from)}, no payment of principal yet`;
  return [
    ...title("Loan principal", band.top, show(points.at(-1)!.cents)),
    text(LEFT, band.top + 92, words, { size: 28, fill: COLORS.faded }),
  ];
}

/** Says why the line goes up: another loan was begun there. */
function begunLabel(
  { name, cents }: LoanFigures["begun"][number],
  { x, top }: { x: number; top: number },
): string {
  const words = fitted(name === "loan" ? `new loan ${show(cents)}` : `new: ${name} ${show(cents)}`, 420, 24);
  const isLeft = x + 14 + widthOf(words, 24) > RIGHT;
  return text(isLeft ? x - 14 : x + 14, top - 2, words, {
    size: 24,
    fill: COLORS.loan,
    ...(isLeft ? { anchor: "end" as const } : {}),
  });
}

/** What is owed steps down at each payment; between payments it stands still. */
export function loanPart(figures: MonthFigures, band: Band): string[] {
  if (figures.loan === null) return [...title("Loan", band.top), nothing("No loan on the books", band)];
  if (!hasCourse(figures.loan)) return standing(figures.loan, band);
  const { from, points, begun } = figures.loan;
  const first = points[0]!.cents;
  const last = points.at(-1)!.cents;
  const parts = title("Loan principal", band.top, show(last));
  const top = band.top + TITLE_HEIGHT + 18;
  const bottom = band.bottom - 52;
  const most = Math.max(...points.map((point) => point.cents));
  const least = Math.min(...points.map((point) => point.cents));
  // The foot of the scale is not zero: 200 off 14,000 must be seen to come down. The ends carry their amounts.
  const yOf = (cents: Cents) =>
    most === least ? (top + bottom) / 2 : top + ((most - cents) / (most - least)) * (bottom - top);
  const xOf = daysAcross(from, figures.through);
  const steps = stepsOf(points, [xOf, yOf]);
  const end: [number, number] = [xOf(figures.through), yOf(last)];
  parts.push(
    line(
      [
        [LEFT, bottom + 10],
        [RIGHT, bottom + 10],
      ],
      COLORS.rule,
      2,
    ),
    line([...steps, end], COLORS.loan, 6),
    dot(steps[0]![0], steps[0]![1], 10, COLORS.loan),
    dot(end[0], end[1], 10, COLORS.loan),
    ...begun.map((each) => begunLabel(each, { x: xOf(each.day), top })),
    text(LEFT, band.bottom, `${showDate(from)}: ${show(first)}`, { size: 26, fill: COLORS.faded }),
    text(RIGHT, band.bottom, showDate(figures.through), { size: 26, fill: COLORS.faded, anchor: "end" }),
  );
  return parts;
}
