import { expect, test } from "vitest";
import { drawMonth } from "../../../bot/pictures/month.ts";
import { COLORS, HEIGHT, WIDTH } from "../../../bot/pictures/page.ts";
import { pngOf } from "../../../bot/pictures/png.ts";
import { drawn, FIGURES } from "./drawn.ts";
import { findColor } from "./pixels.ts";

/** The bars' own band: the header and the columns use the same colours. */
const BARS = { top: 290, bottom: 470 };

test("a bar is as long as its amount: gains to the right of the zero line, losses to the left", async () => {
  const pixels = await drawn();
  const gain = findColor(pixels, COLORS.gain, BARS);
  const loss = findColor(pixels, COLORS.loss, { top: BARS.top, bottom: BARS.bottom });
  const lossBarRight = gain.left;
  const gainWidth = gain.right - gain.left;
  const lossLeft = loss.left;
  expect(gainWidth / (lossBarRight - lossLeft)).toBeCloseTo(4, 0.5);
  expect(lossLeft).toBeLessThan(gain.left);
  expect(gain.bottom).toBeLessThan(loss.top);
});

test("twice the profit against the same largest bar is a bar twice as long", async () => {
  const barOf = async (cents: number) => {
    const bars = [
      { label: "#1 dresser", cents: 20000 },
      { label: "#2 desk", cents },
    ];
    const second = { top: 384, bottom: 440 };
    return findColor(await drawn({ bars }), COLORS.gain, second);
  };
  const [half, whole] = [await barOf(5000), await barOf(10000)];
  expect(half.left).toBe(whole.left);
  expect((whole.right - whole.left) / (half.right - half.left)).toBeCloseTo(2, 1);
});

test("the year's columns stand on their months, this one in full colour and the tallest", async () => {
  const pixels = await drawn();
  const band = { top: 480, bottom: 880 };
  const current = findColor(pixels, COLORS.gain, band);
  const past = findColor(pixels, COLORS.gainPast, band);
  const step = (WIDTH - 120) / 12;
  expect(current.left).toBeGreaterThanOrEqual(60 + 4 * step);
  expect(current.right).toBeLessThanOrEqual(60 + 5 * step);
  expect(past.left).toBeLessThan(60 + step);
  expect(past.right).toBeLessThanOrEqual(60 + 3 * step);
  expect((current.bottom - current.top) / (past.bottom - past.top)).toBeCloseTo(1.5, 1);
});

test("the loan's line comes down at the payment's day and nowhere else", async () => {
  const pixels = await drawn();
  const band = { top: 890, bottom: 1290 };
  const rows = columnRows(pixels, band, [200, 500, 760, 960]);
  expect(rows[1]).toBe(rows[0]);
  expect(rows[2]).toBeGreaterThan(rows[0]!);
  expect(rows[3]).toBe(rows[2]);
});

/** The topmost pixel of the loan's line in each of these columns. */
function columnRows(
  pixels: Awaited<ReturnType<typeof drawn>>,
  band: { top: number; bottom: number },
  xs: number[],
) {
  return xs.map((x) => {
    for (let y = band.top; y < band.bottom; y++) {
      const { red, green, blue } = pixels.at(x, y);
      if (red === 0x2a && green === 0x5b && blue === 0x8c) return y;
    }
    throw new Error(`no line at ${x}`);
  });
}

test("the same figures draw the same bytes, other words other pixels in their own line only", async () => {
  expect(await pngOf(drawMonth(FIGURES))).toEqual(await pngOf(drawMonth(FIGURES)));
  const [one, other] = [
    await drawn(),
    await drawn({ bars: [{ label: "#1 hutch", cents: 20000 }, FIGURES.bars[1]!] }),
  ];
  const changed: number[] = [];
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      if (one.at(x, y).red === other.at(x, y).red) continue;
      changed.push(y);
      break;
    }
  }
  expect(changed.length).toBeGreaterThan(10);
  expect(Math.min(...changed)).toBeGreaterThan(300);
  expect(Math.max(...changed)).toBeLessThan(390);
});

test.each([
  ["an empty month", { bars: [], flipped: 0, flipProfit: 0, year: new Array(12).fill(0), loan: null }],
  ["only a loss", { bars: [{ label: "#1 desk", cents: -1 }], flipProfit: -1 }],
  [
    "the largest amounts",
    { bars: [{ label: "#1 desk", cents: 999_999_999_99 }], flipProfit: 999_999_999_99 },
  ],
  ["a hostile name", { bars: [{ label: `#1 <script>&"'\u0000\u{1F6CB} ${"m".repeat(300)}`, cents: 100 }] }],
  [
    "a loan that stands still",
    { loan: { from: "2026-05-31", points: [{ day: "2026-05-31", cents: 0 }], begun: [] } },
  ],
])("%s is drawn whole", async (_, more) => {
  const pixels = await drawn(more);
  expect(findColor(pixels, COLORS.ink).count).toBeGreaterThan(100_000);
});
