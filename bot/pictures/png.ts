import { createRequire } from "node:module";
import { dirname, join } from "node:path";

/** The faces that the pictures are set in; no font of the machine is used, so a picture is the same everywhere. */
const FACES = ["DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"];

/** Draws an SVG as a PNG. The renderer is loaded here and nowhere else: only when a picture is drawn. */
export async function pngOf(svg: string): Promise<Buffer> {
  const { Resvg } = await import("@resvg/resvg-js");
  const folder = dirname(createRequire(import.meta.url).resolve("dejavu-fonts-ttf/package.json"));
  const rendered = new Resvg(svg, {
    font: {
      loadSystemFonts: false,
      fontFiles: FACES.map((face) => join(folder, "ttf", face)),
      defaultFontFamily: "DejaVu Sans",
    },
    logLevel: "error",
  }).render();
  return rendered.asPng();
}
