import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import { altText, isWorthDrawing, monthFigures } from "../../../bot/pictures/figures.ts";
import { drawMonth } from "../../../bot/pictures/month.ts";
import { COLORS, HEIGHT, WIDTH } from "../../../bot/pictures/page.ts";
import { escapeXml, fitted, widthOf } from "../../../bot/pictures/svg.ts";
import { Ledger } from "../../books/ledger.ts";
import { drawn } from "./drawn.ts";

const ASKED = { month: "2026-05", today: "2026-06-01", currency: "USD" };

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

test("a loan that has not moved is told in figures, not as a dot in a void", () => {
  const ledger = new Ledger();
  ledger.add("loan", "2026-05-10", { amount: 1460000, data: { loan: "loan", rate: "5.8" } });
  const svg = drawMonth(monthFigures(ledger.books(), ASKED));
  expect(svg).toContain("14,600.00");
  expect(svg).toContain("Since May 10, 2026, no payment of principal yet");
  expect(svg).toContain("No profit and no loss yet this year");
  expect(svg).not.toMatch(/<circle|<polyline/);
});

test("a loan begun in the middle of the year is labelled where the line goes up", () => {
  const ledger = workshop();
  ledger.add("loan", "2026-05-10", { amount: 410000, data: { loan: "grad", rate: "6.8" } });
  const figures = monthFigures(ledger.books(), ASKED);
  expect(figures.loan?.begun).toEqual([{ day: "2026-05-10", name: "grad", cents: 410000 }]);
  expect(drawMonth(figures)).toContain("new: grad 4,100.00");
  expect(drawMonth(monthFigures(workshop().books(), ASKED))).not.toContain("new:");
});

test.each([
  ["no loan", (_: Ledger) => {}],
  [
    "a loan alone",
    (ledger: Ledger) => ledger.add("loan", "2026-05-10", { amount: 1, data: { loan: "loan", rate: "0" } }),
  ],
])("with %s every part stays on the page", (_, prepare) => {
  const ledger = new Ledger();
  prepare(ledger);
  const [desk] = ledger.buy("2026-05-02", ["desk"], 2000);
  ledger.add("sell", "2026-05-05", { pieces: [desk!], amount: 9000, data: {} });
  const ys = [...drawMonth(monthFigures(ledger.books(), ASKED)).matchAll(/ (?:y|cy)="([\d.-]+)"/g)].map(
    (each) => Number(each[1]),
  );
  expect(Math.max(...ys)).toBeLessThan(HEIGHT);
  expect(Math.min(...ys)).toBeGreaterThanOrEqual(0);
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
  const loanAlone = new Ledger();
  loanAlone.add("loan", "2026-05-10", { amount: 1460000, data: { loan: "loan", rate: "5.8" } });
  expect(isWorthDrawing(monthFigures(loanAlone.books(), ASKED))).toBe(false);
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
