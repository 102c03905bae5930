import { cpSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { COMPILED, fingerprint, STAMP, TOP } from "./compiled.mjs";

/** Packages that stay outside: native code, files beside the code, or loaded only when used. */
const EXTERNAL = ["better-sqlite3", "pino", "@resvg/resvg-js", "write-excel-file", "dejavu-fonts-ttf"];

/** Every program of the project: the bot and the tools, by the name that it is started under. */
function programs() {
  const tools = readdirSync(join(TOP, "bot/commands")).filter((name) => name.endsWith(".ts"));
  return ["bot/main.ts", ...tools.map((name) => `bot/commands/${name}`)];
}

/**
 * Compiles the programs into one folder, whole or not at all: into a folder of its own first, so that neither a
 * kill nor a second start at the same time leaves half of it behind.
 */
export async function compile() {
  const unfinished = `${COMPILED}.${process.pid}`;
  const from = fingerprint();
  await build({
    absWorkingDir: TOP,
    entryPoints: programs(),
    outdir: unfinished,
    entryNames: "[name]",
    chunkNames: "[name]-[hash]",
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "node",
    target: "node20",
    external: EXTERNAL,
    // Packages in the older module form look for the builtin modules through "require".
    banner: {
      js: 'import { createRequire as requireFrom } from "node:module"; const require = requireFrom(import.meta.url);',
    },
    logLevel: "warning",
    logOverride: { "direct-eval": "silent" },
  });
  cpSync(join(TOP, "db/migrations"), join(unfinished, "migrations"), { recursive: true });
  writeFileSync(join(unfinished, STAMP), from);
  putInPlace(unfinished);
}

function putInPlace(unfinished) {
  const old = `${unfinished}.old`;
  try {
    renameSync(COMPILED, old);
  } catch (error) {
    if (error.code !== "ENOENT") throw error;
  }
  try {
    renameSync(unfinished, COMPILED);
  } catch (error) {
    // Another start that compiled the same sources was first.
    if (error.code !== "ENOTEMPTY" && error.code !== "EEXIST") throw error;
  }
  for (const folder of [old, unfinished]) rmSync(folder, { recursive: true, force: true });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const start = performance.now();
  await compile();
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`Compiled into ${relative(TOP, COMPILED)} in ${seconds} s.`);
}
