import decodeQR from "qr/decode.js";
import { describe, expect, it } from "vitest";
import { pairingText } from "../../bot/pairing.ts";

const LINK = `https://t.me/yard_ledger_bot?start=${"Ab3_".repeat(8)}`;

/** Half blocks back to pixels, each module drawn large: a white block is light, as a terminal shows it. */
function photographed(lines: readonly string[], scale = 6) {
  const rows = lines.flatMap((line) => {
    const halves = [...line];
    return [halves.map((half) => "█▀".includes(half)), halves.map((half) => "█▄".includes(half))];
  });
  const [width, height] = [rows[0]!.length * scale, rows.length * scale];
  const data = new Uint8Array(width * height * 4);
  for (let at = 0; at < width * height; at++) {
    const isLight = rows[Math.floor(at / width / scale)]![Math.floor((at % width) / scale)]!;
    data.set([isLight ? 255 : 0, isLight ? 255 : 0, isLight ? 255 : 0, 255], at * 4);
  }
  return { width, height, data };
}

describe("the pairing link", () => {
  it("stands alone on its line, and a camera reads the same link from the picture", () => {
    const lines = pairingText(LINK, "yard_ledger_bot", { isTerminal: true, columns: 80 }).split("\n");
    const at = lines.indexOf(LINK);
    expect([lines[at - 1], lines[at + 1]]).toEqual(["", ""]);
    const drawn = lines
      .filter((line) => line.includes("█"))
      .map((line) => line.replace(/\x1b\[[\d;]+m/g, ""));
    expect(drawn.length).toBeLessThan(24);
    expect(decodeQR(photographed(drawn))).toBe(LINK);
  });

  it.each([
    ["a narrow terminal", LINK, { isTerminal: true, columns: 30 }],
    ["a log file", LINK, { isTerminal: false, columns: 80 }],
    ["another server, where there is no address", "/start abc", { isTerminal: true, columns: 80 }],
  ])("is not drawn on %s", (_, link, screen) => {
    const text = pairingText(link, "yard_ledger_bot", screen);
    expect(text).toContain(`\n${link}`);
    expect(text).not.toContain("█");
  });
});
