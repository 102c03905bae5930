import { readFileSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { compiledSource, compileSource } from "./compile-sources.mjs";

/** A TypeScript source as it was compiled before, or as it is now where it was changed since. */
export async function load(url, context, next) {
  if (!/\.ts(?:$|\?)/.test(url) || url.includes("/node_modules/")) return next(url, context);
  const path = fileURLToPath(url);
  const compiled = compiledSource(path);
  const isOld = (statSync(compiled, { throwIfNoEntry: false })?.mtimeMs ?? 0) < statSync(path).mtimeMs;
  const source = isOld ? compileSource(path) : readFileSync(compiled);
  return { format: "module", source, shortCircuit: true };
}
