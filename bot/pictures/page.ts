import { type Day, daysBetween } from "../../core/calendar.ts";
import type { Cents } from "../../core/money.ts";
import { box, text } from "./svg.ts";

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
export const LEFT = 60;
export const RIGHT = WIDTH - 60;
/** The height that a part's title takes. */
export const TITLE_HEIGHT = 62;

/** The part of the page between two heights. */
export interface Band {
  top: number;
  bottom: number;
}

/** The words over a part, and what it comes to on the right. */
export function title(words: string, top: number, right = ""): string[] {
  const style = { size: 34, fill: COLORS.ink, bold: true } as const;
  const parts = [text(LEFT, top + 34, words, style)];
  return right ? [...parts, text(RIGHT, top + 34, right, { ...style, size: 32, anchor: "end" })] : parts;
}

/** A page of a height with its parts on it. */
export function pageOf(height: number, parts: readonly string[]): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}" font-family="DejaVu Sans" font-stretch="condensed">${box(0, 0, WIDTH, height, COLORS.paper)}${parts.join("")}</svg>`;
}

/** Where the days of a stretch stand across the page. */
export function daysAcross(from: Day, to: Day): (day: Day) => number {
  const days = Math.max(1, daysBetween(from, to));
  return (day) => LEFT + 12 + (daysBetween(from, day) / days) * (RIGHT - LEFT - 24);
}

/** What is owed steps down at each payment; between payments it stands still. */
export function stepsOf(
  points: readonly { day: Day; cents: Cents }[],
  [xOf, yOf]: readonly [(day: Day) => number, (cents: Cents) => number],
): [number, number][] {
  return points.flatMap(({ day, cents }, at): [number, number][] => {
    const before = points[at - 1];
    const now: [number, number] = [xOf(day), yOf(cents)];
    return before ? [[xOf(day), yOf(before.cents)], now] : [now];
  });
}

/** Words in the middle of a part that has nothing to draw. */
export function nothing(words: string, band: Band): string {
  return text(WIDTH / 2, (band.top + band.bottom) / 2 + 20, words, {
    size: 30,
    fill: COLORS.faded,
    anchor: "middle",
  });
}
