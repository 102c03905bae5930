import type { MonthFigures } from "../../../bot/pictures/figures.ts";
import { drawMonth } from "../../../bot/pictures/month.ts";
import { pngOf } from "../../../bot/pictures/png.ts";
import { decodePng } from "./pixels.ts";

export const FIGURES: MonthFigures = {
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
    begun: [],
  },
};

/** The picture of these figures, changed in `more`, as pixels. */
export async function drawn(more: Partial<MonthFigures> = {}) {
  return decodePng(await pngOf(drawMonth({ ...FIGURES, ...more })));
}
