const { existsSync } = require("node:fs");
const { join } = require("node:path");
const { pathToFileURL } = require("node:url");
const { COMPILED, stateOfCompiled } = require("./compiled.cjs");

// Starts a program of the project: node .ci/start.cjs main. The programs are compiled at install; where the
// sources have changed since, that is said in a line and they are compiled now.

const [name] = process.argv.splice(2, 1);
const state = stateOfCompiled();
if (state === "current") run();
else bringUpToDate().then(run);

function run() {
  const bot = join(COMPILED, `${name}.cjs`);
  process.argv[1] = existsSync(bot) ? bot : join(COMPILED, `${name}.js`);
  if (process.argv[1] === bot) require(bot);
  else import(pathToFileURL(process.argv[1]).href);
}

async function bringUpToDate() {
  const said =
    state === "missing" ? "The program is not compiled yet" : "The sources are newer than the program";
  try {
    const { compile } = await import("./compile.mjs");
    console.error(`${said}: compiling it.`);
    await compile();
  } catch (error) {
    if (error.code !== "ERR_MODULE_NOT_FOUND") throw error;
    console.error(`${said}, and there is no compiler here: run npm ci.`);
    if (state === "missing") process.exit(1);
  }
}
