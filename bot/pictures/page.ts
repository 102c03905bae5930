import { text } from "./svg.ts";

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

/** Words in the middle of a part that has nothing to draw. */
export function nothing(words: string, band: Band): string {
  return text(WIDTH / 2, (band.top + band.bottom) / 2 + 20, words, {
    size: 30,
    fill: COLORS.faded,
    anchor: "middle",
  });
}
