import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { constants, Script } from "node:vm";

// Stands in the compiled folder as main.js: it runs main.cjs with what the engine made of that source before, so that
// a start need not do it again. Where that is missing, or another engine's, the start is slower and nothing else.

const path = fileURLToPath(new URL("./main.cjs", import.meta.url));
const cache = `${path}.cache`;
const script = new Script(readFileSync(path, "latin1"), {
  filename: path,
  ...(existsSync(cache) ? { cachedData: readFileSync(cache) } : {}),
  importModuleDynamically: constants.USE_MAIN_CONTEXT_DEFAULT_LOADER,
});
if (process.argv[2] === "keep-code")
  process.on("exit", () => writeFileSync(cache, script.createCachedData()));
const module = { exports: {} };
script.runInThisContext()(module.exports, createRequire(path), module, path, dirname(path));
