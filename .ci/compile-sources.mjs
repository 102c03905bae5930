import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { build, transformSync } from "esbuild";
import { TOP } from "./compiled.cjs";

const FOLDER = join(TOP, ".build-of-sources");

/** Without names kept: each small function made within another would be given its name at each call. */
const FORM = {
  format: "esm",
  platform: "node",
  target: "node20",
  sourcemap: "inline",
  sourcesContent: false,
};

/** Where a source lies compiled. */
export const compiledSource = (path) => join(FOLDER, relative(TOP, path).replace(/\.ts$/, ".js"));

/** Every source and test by itself, for the workers that run them. */
export async function compileSources() {
  const entryPoints = ["bot", "core", "db", "tests"].flatMap((room) =>
    readdirSync(join(TOP, room), { recursive: true })
      .filter((name) => name.endsWith(".ts"))
      .map((name) => join(TOP, room, name)),
  );
  await build({ ...FORM, entryPoints, outdir: FOLDER, outbase: TOP, bundle: false, logLevel: "warning" });
}

export function compileSource(path) {
  return transformSync(readFileSync(path, "utf8"), { ...FORM, loader: "ts", sourcefile: path }).code;
}
