import { inflateSync } from "node:zlib";

/** A decoded picture: red, green, blue and opacity of each pixel, row by row. */
export interface Pixels {
  width: number;
  height: number;
  at(x: number, y: number): { red: number; green: number; blue: number; opacity: number };
}

/**
 * Decodes a PNG of eight bits a channel with opacity, not interlaced: what the renderer writes. Source: PNG
 * Specification (Third Edition), W3C: sections 5 (chunks) and 9 (filters). Anything else throws.
 */
export function decodePng(png: Buffer): Pixels {
  if (png.subarray(0, 8).toString("hex") !== "89504e470d0a1a0a") throw new Error("no PNG");
  const chunks = chunksOf(png);
  const header = chunks.find(({ type }) => type === "IHDR")!.data;
  const [width, height] = [header.readUInt32BE(0), header.readUInt32BE(4)];
  const [depth, colors, , , interlace] = header.subarray(8);
  if (depth !== 8 || colors !== 6 || interlace !== 0) throw new Error("another kind of PNG");
  const packed = chunks.filter(({ type }) => type === "IDAT").map(({ data }) => data);
  const bytes = unfiltered(inflateSync(Buffer.concat(packed)), width, height);
  return {
    width,
    height,
    at(x, y) {
      const [red, green, blue, opacity] = bytes.subarray((y * width + x) * 4);
      return { red: red!, green: green!, blue: blue!, opacity: opacity! };
    },
  };
}

function chunksOf(png: Buffer): { type: string; data: Buffer }[] {
  const chunks: { type: string; data: Buffer }[] = [];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    chunks.push({
      type: png.toString("latin1", at + 4, at + 8),
      data: png.subarray(at + 8, at + 8 + length),
    });
    at += length + 12;
  }
  return chunks;
}

const PIXEL_BYTES = 4;

function unfiltered(raw: Buffer, width: number, height: number): Buffer {
  const rowBytes = width * PIXEL_BYTES;
  const out = Buffer.alloc(rowBytes * height);
  for (let y = 0; y < height; y++) {
    const filter = raw[y * (rowBytes + 1)];
    for (let x = 0; x < rowBytes; x++) {
      const left = x >= PIXEL_BYTES ? out[y * rowBytes + x - PIXEL_BYTES]! : 0;
      const above = y > 0 ? out[(y - 1) * rowBytes + x]! : 0;
      const corner = x >= PIXEL_BYTES && y > 0 ? out[(y - 1) * rowBytes + x - PIXEL_BYTES]! : 0;
      const guesses = [0, left, above, (left + above) >> 1, nearest(left, above, corner)];
      out[y * rowBytes + x] = raw[y * (rowBytes + 1) + 1 + x]! + guesses[filter!]!;
    }
  }
  return out;
}

/** Paeth's predictor. */
function nearest(left: number, above: number, corner: number): number {
  const guess = left + above - corner;
  const [toLeft, toAbove, toCorner] = [left, above, corner].map((value) => Math.abs(guess - value)) as [
    number,
    number,
    number,
  ];
  if (toLeft <= toAbove && toLeft <= toCorner) return left;
  return toAbove <= toCorner ? above : corner;
}

/** Where pixels of exactly this colour ("#RRGGBB") lie: how many, and the box around them. */
export function findColor(
  pixels: Pixels,
  color: string,
  area: Area = { top: 0, bottom: pixels.height },
): Spot {
  const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));
  const spot: Spot = { count: 0, left: pixels.width, right: -1, top: pixels.height, bottom: -1 };
  for (let y = area.top; y < area.bottom; y++) {
    for (let x = 0; x < pixels.width; x++) {
      const pixel = pixels.at(x, y);
      if (pixel.red !== red || pixel.green !== green || pixel.blue !== blue) continue;
      spot.count++;
      spot.left = Math.min(spot.left, x);
      spot.right = Math.max(spot.right, x);
      spot.top = Math.min(spot.top, y);
      spot.bottom = Math.max(spot.bottom, y);
    }
  }
  return spot;
}

export interface Area {
  top: number;
  bottom: number;
}

export interface Spot {
  count: number;
  left: number;
  right: number;
  top: number;
  bottom: number;
}
