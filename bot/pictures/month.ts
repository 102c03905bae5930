import { counted } from "../../core/answers/wording.ts";
import { showMonth } from "../../core/calendar.ts";
import type { Cents } from "../../core/money.ts";
import { show } from "../../core/money.ts";
import { type Bar, hasCourse, type MonthFigures } from "./figures.ts";
import { COURSELESS_HEIGHT, loanPart } from "./loan.ts";
import {
  type Band,
  COLORS,
  HEIGHT,
  LEFT,
  nothing,
  pageOf,
  RIGHT,
  TITLE_HEIGHT,
  title,
  WIDTH,
} from "./page.ts";
import type { TextStyle } from "./svg.ts";
import { box, fitted, line, text, widthOf } from "./svg.ts";

const HEADER_HEIGHT = 210;

/** The month as an SVG of 1080 × 1350 pixels, for a phone: profit by piece, the year's months, the loan. */
export function drawMonth(figures: MonthFigures): string {
  const bands = bandsOf(figures);
  const parts = [
    ...header(figures),
    ...pieceBars(figures.bars, bands.pieces),
    ...yearBars(figures, bands.year),
    ...loanPart(figures, bands.loan),
  ];
  return pageOf(HEIGHT, parts);
}

const GAP = 46;
const BAR_STEP_MAX = 76;

/** A part without anything to draw takes a line of words, and the others what it leaves. */
const WORDS_HEIGHT = 120;

/** The bars take the height they need, at most half of the page; the year and the loan share what is left. */
function bandsOf({ bars, year, loan }: MonthFigures): { pieces: Band; year: Band; loan: Band } {
  const top = HEADER_HEIGHT + 36;
  const foot = HEIGHT - 44;
  const pieces = {
    top,
    bottom: top + TITLE_HEIGHT + Math.min(450, Math.max(1, bars.length) * BAR_STEP_MAX),
  };
  const left = foot - pieces.bottom - 2 * GAP;
  const loanHeight = loan === null ? WORDS_HEIGHT : hasCourse(loan) ? left / 2 : COURSELESS_HEIGHT;
  const yearHeight = year.some((cents) => cents) ? left - loanHeight : WORDS_HEIGHT;
  const ofYear = { top: pieces.bottom + GAP, bottom: pieces.bottom + GAP + yearHeight };
  return {
    pieces,
    year: ofYear,
    loan: {
      top: ofYear.bottom + GAP,
      bottom: Math.min(foot, ofYear.bottom + GAP + Math.max(loanHeight, left - yearHeight)),
    },
  };
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
  if (known.every((cents) => cents === 0))
    return [...parts, nothing("No profit and no loss yet this year", band)];
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
