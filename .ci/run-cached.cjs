const { existsSync, readFileSync, writeFileSync } = require("node:fs");
const { createRequire } = require("node:module");
const { join } = require("node:path");
const { setFlagsFromString } = require("node:v8");
const { Script } = require("node:vm");

// Stands in the compiled folder as main.cjs: it runs bot.cjs with what the engine made of that source before, so that
// a start need not do it again. Where that is missing, or another engine's, the start is slower and nothing else.

// Most of a bot's code runs too seldom for optimized machine code to pay: made as early as by default, it takes four of
// ninety-four megabytes at the peak and makes the slowest notes slower; made much later, every note is. A Node without the
// flag goes on without it.
setFlagsFromString("--interrupt-budget=400000");

const path = join(__dirname, "bot.cjs");
const cache = `${path}.cache`;
const script = new Script(readFileSync(path, "latin1"), {
  filename: path,
  ...(existsSync(cache) ? { cachedData: readFileSync(cache) } : {}),
});
if (process.argv[2] === "keep-code")
  process.on("exit", () => writeFileSync(cache, script.createCachedData()));
const bot = { exports: {} };
script.runInThisContext()(bot.exports, createRequire(path), bot, path, __dirname);
