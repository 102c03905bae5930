import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { COMPILED, stateOfCompiled } from "./compiled.mjs";

// Starts a program of the project: node .ci/start.mjs main. The programs are compiled at install; where the
// sources have changed since, that is said in a line and they are compiled now.

const [name] = process.argv.splice(2, 1);
const state = stateOfCompiled();
if (state !== "current") await bringUpToDate();
const program = join(COMPILED, `${name}.js`);
process.argv[1] = program;
await import(pathToFileURL(program).href);

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
