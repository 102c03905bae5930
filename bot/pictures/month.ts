import { counted } from "../../core/answers/wording.ts";
import type { Day } from "../../core/calendar.ts";
import { daysBetween, showDay, showMonth } from "../../core/calendar.ts";
import type { Cents } from "../../core/money.ts";
import { show } from "../../core/money.ts";
import type { Bar, MonthFigures } from "./figures.ts";
import type { TextStyle } from "./svg.ts";
import { box, dot, fitted, line, text, widthOf } from "./svg.ts";

/**
 * Our own look: paper and ink, like a page of a workshop's account book. The ground is opaque, so that it
 * reads the same in light and dark chats; gains and losses differ in side, sign and brightness, not in hue alone.
 */
export const COLORS = {
  paper: "#FBF6EA",
  ink: "#26323B",
  faded: "#59636C",
  rule: "#DDD2BC",
  gain: "#2E7D6B",
  gainPast: "#A9C9BE",
  loss: "#C4512B",
  lossPast: "#E6B9A6",
  loan: "#2A5B8C",
} as const;

export const WIDTH = 1080;
export const HEIGHT = 1350;
const LEFT = 60;
const RIGHT = WIDTH - 60;
const HEADER_HEIGHT = 210;

/** The month as an SVG of 1080 × 1350 pixels, for a phone: profit by piece, the year's months, the loan. */
export function drawMonth(figures: MonthFigures): string {
  const bands = bandsOf(figures.bars.length);
  const parts = [
    box(0, 0, WIDTH, HEIGHT, COLORS.paper),
    ...header(figures),
    ...pieceBars(figures.bars, bands.pieces),
    ...yearBars(figures, bands.year),
    ...loanLine(figures, bands.loan),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" viewBox="0 0 ${WIDTH} ${HEIGHT}" font-family="DejaVu Sans" font-stretch="condensed">${parts.join("")}</svg>`;
}

interface Band {
  top: number;
  bottom: number;
}

const GAP = 46;
const TITLE_HEIGHT = 62;
const BAR_STEP_MAX = 76;

/** The bars take the height they need, at most half of the page; the year and the loan share what is left. */
function bandsOf(bars: number): { pieces: Band; year: Band; loan: Band } {
  const top = HEADER_HEIGHT + 36;
  const foot = HEIGHT - 44;
  const pieces = { top, bottom: top + TITLE_HEIGHT + Math.min(450, Math.max(1, bars) * BAR_STEP_MAX) };
  const half = (foot - pieces.bottom - 2 * GAP) / 2;
  const year = { top: pieces.bottom + GAP, bottom: pieces.bottom + GAP + half };
  return { pieces, year, loan: { top: year.bottom + GAP, bottom: foot } };
}

function header(figures: MonthFigures): string[] {
  const sum = show(figures.flipProfit);
  const name = showMonth(figures.month);
  return [
    box(0, 0, WIDTH, HEADER_HEIGHT, COLORS.ink),
    box(0, HEADER_HEIGHT - 8, WIDTH, 8, figures.flipProfit < 0 ? COLORS.loss : COLORS.gain),
    text(LEFT, 100, name, { size: HEADER_SIZE, fill: COLORS.paper, bold: true }),
    text(LEFT, 155, `${counted(figures.flipped, "piece")} flipped`, { size: 34, fill: COLORS.rule }),
    text(RIGHT, 100, sum, { size: sumSize(sum, name), fill: COLORS.paper, bold: true, anchor: "end" }),
    text(RIGHT, 155, `flip profit, ${figures.currency}`, { size: 34, fill: COLORS.rule, anchor: "end" }),
  ];
}

const HEADER_SIZE = 62;
/** Bold letters are wider than the plain ones that `widthOf` knows. */
const BOLD = 1.12;

/** The month's sum gives way where a long one would run into the month's name. */
function sumSize(sum: string, name: string): number {
  const room = RIGHT - LEFT - widthOf(name, HEADER_SIZE) * BOLD - 30;
  return Math.min(HEADER_SIZE, Math.floor(room / (widthOf(sum, 1) * BOLD)));
}

function title(words: string, top: number, right = ""): string[] {
  const style = { size: 34, fill: COLORS.ink, bold: true } as const;
  const parts = [text(LEFT, top + 34, words, style)];
  return right ? [...parts, text(RIGHT, top + 34, right, { ...style, size: 32, anchor: "end" })] : parts;
}

function colorOf(cents: Cents): string {
  return cents < 0 ? COLORS.loss : COLORS.gain;
}

/** A bar to the right of the zero line for a gain, to the left for a loss; names left, amounts right. */
function pieceBars(bars: readonly Bar[], band: Band): string[] {
  const parts = title("Profit by piece", band.top);
  if (bars.length === 0) return [...parts, nothing("No sales and no spending this month", band)];
  const top = band.top + TITLE_HEIGHT;
  const step = Math.min(BAR_STEP_MAX, (band.bottom - top) / bars.length);
  const size = 29;
  const amountWidth = Math.max(...bars.map((bar) => widthOf(show(bar.cents), size))) + 20;
  const area = { left: LEFT + 350, right: RIGHT - amountWidth };
  const most = Math.max(0, ...bars.map((bar) => bar.cents));
  const least = Math.min(0, ...bars.map((bar) => bar.cents));
  const scale = (area.right - area.left) / (most - least);
  const zero = area.left - least * scale;
  for (const [index, bar] of bars.entries()) {
    const y = top + index * step;
    const middle = y + step / 2 + size * 0.36;
    const length = Math.max(3, Math.abs(bar.cents) * scale);
    const start = bar.cents < 0 ? zero - length : zero;
    parts.push(
      text(LEFT, middle, fitted(bar.label, 335, size), { size, fill: COLORS.ink }),
      box(start, y + step * 0.14, length, step * 0.72, colorOf(bar.cents), 5),
      text(RIGHT, middle, show(bar.cents), { size, fill: inkOf(bar.cents), anchor: "end", bold: true }),
    );
  }
  const foot = top + bars.length * step;
  return [
    ...parts,
    line(
      [
        [zero, top],
        [zero, foot],
      ],
      COLORS.ink,
      2,
    ),
  ];
}

function inkOf(cents: Cents): string {
  return cents < 0 ? COLORS.loss : COLORS.ink;
}

/** Twelve columns; the month itself stands out, the months to come are only named. */
function yearBars(figures: MonthFigures, band: Band): string[] {
  const known = figures.year.map((cents) => cents ?? 0);
  const total = known.reduce((sum, cents) => sum + cents, 0);
  const parts = title(`${figures.month.slice(0, 4)} by month`, band.top, `so far ${show(total)}`);
  const most = Math.max(0, ...known);
  const least = Math.min(0, ...known);
  // Room above the tallest column for its amount; below the deepest, for its own and the month's letter.
  const top = band.top + TITLE_HEIGHT + 36;
  const bottom = band.bottom - (least < 0 ? 66 : 38);
  const scale = (bottom - top) / (most - least || 1);
  const zero = most === least ? bottom : top + most * scale;
  const step = (RIGHT - LEFT) / 12;
  const current = Number(figures.month.slice(5)) - 1;
  for (const [index, cents] of figures.year.entries()) {
    const x = LEFT + index * step;
    const isCurrent = index === current;
    const fill = isCurrent ? COLORS.ink : COLORS.faded;
    const style: TextStyle = { size: 26, fill, anchor: "middle", ...(isCurrent && { bold: true }) };
    parts.push(text(x + step / 2, band.bottom, "JFMAMJJASOND"[index]!, style));
    if (!cents) continue;
    const height = Math.max(3, Math.abs(cents) * scale);
    const y = cents < 0 ? zero : zero - height;
    parts.push(
      box(x + 8, y, step - 16, height, columnColor(cents, isCurrent), 4),
      text(x + step / 2, cents < 0 ? y + height + 26 : y - 10, wholeAmount(cents), { ...style, size: 22 }),
    );
  }
  return [
    ...parts,
    line(
      [
        [LEFT, zero],
        [RIGHT, zero],
      ],
      COLORS.ink,
      2,
    ),
  ];
}

/** Beside a column whole units are enough: the cents stand in the recap's text. */
function wholeAmount(cents: Cents): string {
  return show(Math.round(Math.abs(cents) / 100) * (cents < 0 ? -100 : 100)).slice(0, -3);
}

function columnColor(cents: Cents, isCurrent: boolean): string {
  if (isCurrent) return colorOf(cents);
  return cents < 0 ? COLORS.lossPast : COLORS.gainPast;
}

/** What is owed steps down at each payment; between payments it stands still. */
function loanLine(figures: MonthFigures, band: Band): string[] {
  if (figures.loan === null) return [...title("Loan", band.top), nothing("No loan on the books", band)];
  const { from, points } = figures.loan;
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
  const days = Math.max(1, daysBetween(from, figures.through));
  const xOf = (day: string) => LEFT + 12 + (daysBetween(from, day) / days) * (RIGHT - LEFT - 24);
  const steps: [number, number][] = [];
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    if (before) steps.push([xOf(point.day), yOf(before.cents)]);
    steps.push([xOf(point.day), yOf(point.cents)]);
  }
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
    text(LEFT, band.bottom, `${dayText(from)}: ${show(first)}`, { size: 26, fill: COLORS.faded }),
    text(RIGHT, band.bottom, dayText(figures.through), { size: 26, fill: COLORS.faded, anchor: "end" }),
  );
  return parts;
}

/** "Jun 1, 2025": the weekday of a payment long past says nothing. */
function dayText(day: Day): string {
  return showDay(day, "").slice(4);
}

function nothing(words: string, band: Band): string {
  return text(WIDTH / 2, (band.top + band.bottom) / 2 + 20, words, {
    size: 30,
    fill: COLORS.faded,
    anchor: "middle",
  });
}
