import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { escapeHtml, htmlParts } from "../../../bot/telegram/markup.ts";

function unescaped(html: string): string {
  return html.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");
}

describe("escaping", () => {
  it("leaves nothing that HTML mode would take for markup", () => {
    expect(escapeHtml("<b>Tom & Ann</b> &lt;")).toBe("&lt;b&gt;Tom &amp; Ann&lt;/b&gt; &amp;lt;");
  });
});

describe("parts", () => {
  it("a short text is one part, an empty one none", () => {
    expect(htmlParts("dresser 30.00\nmonth 12.00")).toEqual(["dresser 30.00\nmonth 12.00"]);
    expect(htmlParts(" \n")).toEqual([]);
  });

  it("a long text is cut at line ends", () => {
    const lines = Array.from({ length: 400 }, (_, index) => `#${index} dresser, oak & brass: 190.00`);
    const parts = htmlParts(lines.join("\n"));
    expect(parts.length).toBeGreaterThan(2);
    expect(parts.flatMap((part) => part.split("\n")).map(unescaped)).toEqual(lines);
  });

  it("a line longer than a message is cut at spaces, and inside a word only where there is none", () => {
    expect(htmlParts("aaa bbb ccc", 8)).toEqual(["aaa bbb", " ccc"]);
    expect(htmlParts("abcdefghij", 4)).toEqual(["abcd", "efgh", "ij"]);
  });

  it("any text: no part too long, no escape or character cut in two, no word lost", () => {
    const pieces = fc.constantFrom("<", "&", "🪑", "a", " ", "\n", "é", "word");
    const texts = fc.array(pieces, { maxLength: 300 }).map((each) => each.join(""));
    fc.assert(
      fc.property(texts, fc.integer({ min: 8, max: 60 }), (text, lengthMax) => {
        const parts = htmlParts(text, lengthMax);
        for (const part of parts) {
          expect(part.length).toBeLessThanOrEqual(lengthMax);
          expect(part.trim()).not.toBe("");
          expect(part).not.toMatch(/&(?!amp;|lt;|gt;)|<|>/);
          expect(() => encodeURIComponent(part)).not.toThrow();
        }
        expect(parts.map(unescaped).join("").replace(/\s/g, "")).toBe(text.replace(/\s/g, ""));
      }),
      { seed: 20260509 },
    );
  });
});
