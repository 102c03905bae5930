/** The few marks that our pictures are made of, as SVG text. Lengths are pixels; y grows downwards. */

export interface TextStyle {
  size: number;
  fill: string;
  bold?: true;
  anchor?: "start" | "middle" | "end";
}

/** Text for an XML element or attribute; characters that XML 1.0 forbids are dropped. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu, "")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");
}

/** Words with their baseline at `y`; `x` is where they start, are centred or end. */
export function text(x: number, y: number, words: string, style: TextStyle): string {
  const weight = style.bold ? ' font-weight="bold"' : "";
  const anchor = style.anchor && style.anchor !== "start" ? ` text-anchor="${style.anchor}"` : "";
  return `<text x="${px(x)}" y="${px(y)}" font-size="${style.size}" fill="${style.fill}"${weight}${anchor}>${escapeXml(words)}</text>`;
}

/** A filled rectangle, its corners rounded by `radius`. */
export function box(x: number, y: number, width: number, height: number, fill: string, radius = 0): string {
  const round = radius > 0 ? ` rx="${px(Math.min(radius, width / 2, height / 2))}"` : "";
  return `<rect x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height)}" fill="${fill}"${round}/>`;
}

/** A line through points, without a fill. */
export function line(
  points: readonly (readonly [number, number])[],
  stroke: string,
  width: number,
  dash = "",
): string {
  const path = points.map(([x, y]) => `${px(x)},${px(y)}`).join(" ");
  const dashes = dash ? ` stroke-dasharray="${dash}"` : "";
  return `<polyline points="${path}" fill="none" stroke="${stroke}" stroke-width="${width}" stroke-linejoin="round" stroke-linecap="round"${dashes}/>`;
}

/** A filled circle. */
export function dot(x: number, y: number, radius: number, fill: string): string {
  return `<circle cx="${px(x)}" cy="${px(y)}" r="${radius}" fill="${fill}"/>`;
}

/** Hundredths of a pixel are plenty, and keep the text of a picture the same on every machine. */
function px(value: number): number {
  return Math.round(value * 100) / 100;
}

/** How wide a text is about, in ems of the condensed face: erring on the wide side, so that nothing overlaps. */
export function widthOf(words: string, size: number): number {
  let ems = 0;
  for (const character of words) {
    if (/[ijltfrI.,:;'|!()[\] -]/u.test(character)) ems += 0.38;
    else if (/[mwMW@%\u{2E80}-\u{10FFFF}]/u.test(character)) ems += 1;
    else if (/\p{Lu}/u.test(character)) ems += 0.68;
    else ems += 0.59;
  }
  return ems * size;
}

/** The text, cut with an ellipsis where it is wider than `width`. */
export function fitted(words: string, width: number, size: number): string {
  if (widthOf(words, size) <= width) return words;
  const characters = [...words];
  while (characters.length > 1 && widthOf(`${characters.join("")}…`, size) > width) characters.pop();
  return `${characters.join("").trimEnd()}…`;
}
