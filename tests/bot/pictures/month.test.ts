import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import { altText, isWorthDrawing, type MonthFigures, monthFigures } from "../../../bot/pictures/figures.ts";
import { COLORS, drawMonth, HEIGHT, WIDTH } from "../../../bot/pictures/month.ts";
import { pngOf } from "../../../bot/pictures/png.ts";
import { escapeXml, fitted, widthOf } from "../../../bot/pictures/svg.ts";
import { Ledger } from "../../books/ledger.ts";
import { decodePng, findColor } from "./pixels.ts";

const ASKED = { month: "2026-05", today: "2026-06-01", currency: "USD" };

const FIGURES: MonthFigures = {
  month: "2026-05",
  through: "2026-05-31",
  currency: "USD",
  flipped: 2,
  flipProfit: 15000,
  bars: [
    { label: "#1 dresser", cents: 20000 },
    { label: "#2 desk", cents: -5000 },
  ],
  year: [5000, null, 10000, null, 15000, null, null, null, null, null, null, null],
  loan: {
    from: "2025-06-01",
    points: [
      { day: "2025-06-01", cents: 1000000 },
      { day: "2026-01-15", cents: 600000 },
    ],
  },
};

async function drawn(more: Partial<MonthFigures> = {}) {
  return decodePng(await pngOf(drawMonth({ ...FIGURES, ...more })));
}

/** The bars' own band: the header and the columns use the same colours. */
const BARS = { top: 290, bottom: 470 };

test("a phone's picture, opaque in every pixel, dark on light", async () => {
  const pixels = await drawn();
  expect([pixels.width, pixels.height]).toEqual([WIDTH, HEIGHT]);
  let clear = 0;
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) if (pixels.at(x, y).opacity !== 255) clear++;
  }
  expect(clear).toBe(0);
  for (const x of [0, WIDTH - 1]) {
    expect(pixels.at(x, HEIGHT - 1)).toMatchObject({ red: 0xfb, green: 0xf6, blue: 0xea });
  }
  for (const ink of [COLORS.ink, COLORS.faded, COLORS.loss, COLORS.gain, COLORS.loan]) {
    expect(contrast(ink, COLORS.paper)).toBeGreaterThan(4);
  }
});

/** WCAG 2.2, "contrast ratio" and "relative luminance". */
function contrast(dark: string, light: string): number {
  const [low, high] = [dark, light].map((color) => {
    const [red, green, blue] = [1, 3, 5].map((at) => {
      const share = Number.parseInt(color.slice(at, at + 2), 16) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    }) as [number, number, number];
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  }) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

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
  ["a loan that stands still", { loan: { from: "2026-05-31", points: [{ day: "2026-05-31", cents: 0 }] } }],
])("%s is drawn whole", async (_, more) => {
  const pixels = await drawn(more);
  expect(findColor(pixels, COLORS.ink).count).toBeGreaterThan(100_000);
});

test("XML is escaped, and what XML forbids is dropped", () => {
  expect(escapeXml(`<a b="c">&'\u0000\u0008\uFFFE ok`)).toBe("&lt;a b=&quot;c&quot;&gt;&amp;&#39; ok");
});

test("a name too wide is cut with an ellipsis and then fits", () => {
  expect(fitted("#1 desk", 335, 29)).toBe("#1 desk");
  const cut = fitted("#14 mid-century walnut sideboard", 335, 29);
  expect(cut.endsWith("…")).toBe(true);
  expect(widthOf(cut, 29)).toBeLessThanOrEqual(335);
});

/** Two pieces sold in May, one in April, overhead, a loan with a payment. */
function workshop(): Ledger {
  const ledger = new Ledger();
  ledger.add("loan", "2026-03-01", { amount: 1000000, data: { loan: "loan", rate: "0" } });
  const [desk] = ledger.buy("2026-03-02", ["desk"], 2000);
  ledger.add("sell", "2026-04-05", { pieces: [desk!], amount: 9000, data: {} });
  const [dresser] = ledger.buy("2026-04-10", ["dresser"], 3000);
  const [lamp] = ledger.buy("2026-04-11", ["lamp"], 1500);
  ledger.add("sell", "2026-05-02", { pieces: [dresser!], amount: 19000, data: {} });
  ledger.add("sell", "2026-05-03", { pieces: [lamp!], amount: 500, data: {} });
  ledger.add("spend", "2026-05-04", { amount: 2500, data: { what: "sander", category: "tools" } });
  ledger.add("pay", "2026-05-20", { amount: 50000, data: {} });
  ledger.add("spend", "2026-06-01", { amount: 700, data: { what: "gas", category: "vehicle" } });
  return ledger;
}

test("the figures are those of the statement, and the bars sum to the flip profit", () => {
  const ledger = workshop();
  const figures = monthFigures(ledger.books(), ASKED);
  expect(figures.bars).toEqual([
    { label: "#2 dresser", cents: 16000 },
    { label: "#3 lamp", cents: -1000 },
    { label: "overhead", cents: -2500 },
  ]);
  expect(figures.flipProfit).toBe(12500);
  expect(figures.year).toEqual([0, 0, 0, 7000, 12500, null, null, null, null, null, null, null]);
  expect(figures.loan?.points).toEqual([
    { day: "2026-03-01", cents: 1000000 },
    { day: "2026-05-20", cents: 950000 },
  ]);
  expect(ledger.statement("2026-05-31").months.at(-1)?.flipProfit).toBe("125.00");
});

test("with more pieces than fit, the best and the worst stay and the sum is kept", () => {
  const ledger = new Ledger();
  for (let index = 0; index < 30; index++) {
    const [piece] = ledger.buy("2026-05-01", ["stool"], 1000);
    ledger.add("sell", "2026-05-02", { pieces: [piece!], amount: index * 100, data: {} });
  }
  const { bars, flipProfit } = monthFigures(ledger.books(), ASKED);
  expect(bars).toHaveLength(9);
  expect(bars[0]).toEqual({ label: "#30 stool", cents: 1900 });
  expect(bars[6]?.label).toBe("21 more pieces");
  expect(bars.at(-1)).toEqual({ label: "#1 stool", cents: -1000 });
  expect(bars.reduce((sum, bar) => sum + bar.cents, 0)).toBe(flipProfit);
});

test("the alternative text says what the picture shows", () => {
  expect(altText(monthFigures(workshop().books(), ASKED))).toBe(
    "May 2026: 2 pieces flipped, flip profit 125.00 USD. By piece: #2 dresser +160.00, #3 lamp -10.00, " +
      "overhead -25.00. 2026 so far: 195.00. Loan principal from 10,000.00 to 9,500.00.",
  );
});

test("of empty books there is nothing to draw", () => {
  expect(isWorthDrawing(monthFigures(new Ledger().books(), ASKED))).toBe(false);
  expect(isWorthDrawing(monthFigures(workshop().books(), ASKED))).toBe(true);
});

test("the renderer is not loaded until a picture is drawn", () => {
  const script = `
    const { makeFile } = await import("./bot/files/make.ts");
    const { pngOf } = await import("./bot/pictures/png.ts");
    const { default: modules } = await import("node:module");
    const loaded = () => Object.keys(modules._cache).filter((path) => path.includes("resvg")).length > 0;
    const before = loaded();
    await pngOf('<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"/>');
    console.log(typeof makeFile, before, loaded());
  `;
  const run = spawnSync(process.execPath, ["--import", "tsx", "--input-type=module", "-e", script], {
    encoding: "utf8",
  });
  expect(run.stdout.trim()).toBe("function false true");
});
