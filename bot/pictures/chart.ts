import { showDate } from "../../core/calendar.ts";
import { show } from "../../core/money.ts";
import type { Chart } from "../../core/questions/charted.ts";
import { COLORS, daysAcross, LEFT, nothing, pageOf, RIGHT, stepsOf, TITLE_HEIGHT, title } from "./page.ts";
import { box, dot, fitted, line, text, widthOf } from "./svg.ts";

const TOP = 48;
const BAR_STEP = 58;
const LINES_HEIGHT = 760;
const SIZE = 29;

/** A chart as SVG in the look of the month's picture, as high as it needs. */
export function drawChart(chart: Chart): string {
  const drawn = chart.kind === "bars" ? drawBars(chart) : drawLines(chart);
  return pageOf(drawn.height, drawn.parts);
}

interface Drawn {
  parts: string[];
  height: number;
}

/** A bar to the right of the zero line for what came in, to the left for what went; names left, amounts right. */
function drawBars({ title: words, bars }: Extract<Chart, { kind: "bars" }>): Drawn {
  const top = TOP + TITLE_HEIGHT + 12;
  const height = top + Math.max(2, bars.length) * BAR_STEP + 50;
  const parts = title(fitted(words, RIGHT - LEFT, 34), TOP);
  if (bars.length === 0)
    return { parts: [...parts, nothing("Nothing to draw", { top, bottom: height })], height };
  const amountWidth = Math.max(...bars.map(({ told }) => widthOf(told, SIZE))) + 24;
  const area = { left: LEFT + 330, right: RIGHT - amountWidth };
  const most = Math.max(0, ...bars.map(({ value }) => value));
  const least = Math.min(0, ...bars.map(({ value }) => value));
  const scale = (area.right - area.left) / (most - least || 1);
  const zero = area.left - least * scale;
  bars.forEach(({ label, value, told }, index) => {
    const y = top + index * BAR_STEP;
    const middle = y + BAR_STEP / 2 + SIZE * 0.36;
    const length = value === 0 ? 0 : Math.max(3, Math.abs(value) * scale);
    const color = value < 0 ? COLORS.loss : COLORS.gain;
    parts.push(text(LEFT, middle, fitted(label, 315, SIZE), { size: SIZE, fill: COLORS.ink }));
    if (length > 0) parts.push(box(value < 0 ? zero - length : zero, y + 8, length, BAR_STEP - 16, color, 5));
    parts.push(
      text(RIGHT, middle, told, {
        size: SIZE,
        fill: value < 0 ? COLORS.loss : COLORS.ink,
        anchor: "end",
        bold: true,
      }),
    );
  });
  parts.push(
    line(
      [
        [zero, top],
        [zero, top + bars.length * BAR_STEP],
      ],
      COLORS.ink,
      2,
    ),
  );
  return { parts, height };
}

/** Loans are told apart by colour, by their dashes and by their names at the line's end. */
const LINE_STYLES = [
  { color: COLORS.loan, dash: "" },
  { color: COLORS.loss, dash: "22 12" },
  { color: COLORS.gain, dash: "4 12" },
  { color: COLORS.ink, dash: "30 10 4 10" },
] as const;

/** What is owed steps down at each payment; between payments it stands still. */
function drawLines({ title: words, from, to, lines }: Extract<Chart, { kind: "lines" }>): Drawn {
  const top = TOP + TITLE_HEIGHT + 60 + lines.length * 42;
  const bottom = top + LINES_HEIGHT - 120;
  const height = bottom + 90;
  const sum = lines.reduce((total, { points }) => total + (points.at(-1)?.cents ?? 0), 0);
  const parts = title(words, TOP, show(sum));
  const most = Math.max(1, ...lines.flatMap(({ points }) => points.map(({ cents }) => cents)));
  const xOf = daysAcross(from, to);
  const yOf = (cents: number) => bottom - (cents / most) * (bottom - top);
  lines.forEach(({ name, points }, index) => {
    const { color, dash } = LINE_STYLES[index % LINE_STYLES.length]!;
    const steps = stepsOf(points, [xOf, yOf]);
    const last = points.at(-1)!;
    const end: [number, number] = [xOf(to), yOf(last.cents)];
    const y = TOP + TITLE_HEIGHT + 34 + index * 42;
    parts.push(
      line(
        [
          [LEFT, y - 10],
          [LEFT + 90, y - 10],
        ],
        color,
        6,
        dash,
      ),
      text(LEFT + 110, y, fitted(`${name}: ${show(points[0]!.cents)} to ${show(last.cents)}`, 820, SIZE), {
        size: SIZE,
        fill: COLORS.ink,
      }),
      line([...steps, end], color, 6, dash),
      dot(end[0], end[1], 10, color),
    );
  });
  parts.push(
    line(
      [
        [LEFT, bottom + 8],
        [RIGHT, bottom + 8],
      ],
      COLORS.rule,
      2,
    ),
    text(LEFT, bottom + 52, showDate(from), { size: 26, fill: COLORS.faded }),
    text(RIGHT, bottom + 52, showDate(to), { size: 26, fill: COLORS.faded, anchor: "end" }),
  );
  return { parts, height };
}
