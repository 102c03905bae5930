import { spawn } from "node:child_process";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { COMPILED, contentOf, fingerprint, STAMP, TOP } from "./compiled.cjs";

/** Packages that stay outside: native code, files beside the code, or loaded only when used. */
const EXTERNAL = ["better-sqlite3", "@resvg/resvg-js", "write-excel-file", "dejavu-fonts-ttf"];

/** How long the bot may take where its code is kept. */
const KEEP_CODE_MS_MAX = 30_000;

/** Modules of Node's own, which only what writes the logs has no need of. */
const NODES_OWN = new Set(["worker_threads", "assert"]);
const OF_LOGS = /node_modules[\\/](?:pino|sonic-boom)[\\/]/;

const DEFINED = { COMPILED_FROM: JSON.stringify(contentOf(["core", "db"])) };

/**
 * What packages bring along and nothing here uses: grammY a fetch for platforms without one (the bot has its own,
 * bot/telegram/http.ts), zod its messages in fifty languages, pino logs written by threads, and with them two modules of
 * Node's that take a start three milliseconds.
 */
const thinner = {
  name: "thinner",
  setup({ onResolve, onLoad }) {
    const instead = {
      "node-fetch": "exports.default = undefined;",
      "abort-controller": "exports.AbortController = globalThis.AbortController;",
      "../locales/index.js": 'export { default as en } from "../locales/en.js";',
      "thread-stream": "",
      worker_threads: "exports.isMainThread = true;",
      assert: "module.exports = (holds, why) => { if (!holds) throw new Error(why); };",
    };
    onResolve(
      {
        filter:
          /^(?:node-fetch|abort-controller|thread-stream|worker_threads|assert|\.\.\/locales\/index\.js)$/,
      },
      ({ path, importer, resolveDir }) =>
        NODES_OWN.has(path) && !OF_LOGS.test(importer)
          ? null
          : { path, namespace: "thin", pluginData: resolveDir },
    );
    onLoad({ filter: /./, namespace: "thin" }, ({ path, pluginData }) => ({
      contents: instead[path],
      resolveDir: pluginData,
    }));
  },
};

/** The tools, each by the name that it is started under. */
function tools() {
  const names = readdirSync(join(TOP, "bot/commands")).filter((name) => name.endsWith(".ts"));
  return names.map((name) => `bot/commands/${name}`);
}

/** Compiles the programs, and puts the fingerprint of their sources beside them. */
export async function compile() {
  await compileInto(COMPILED, tools(), fingerprint(), addBot);
}

/** The bot itself, in the older module form, since only of that the engine's own code can be kept. */
async function addBot(folder) {
  const url = 'require("node:url").pathToFileURL(__filename).href';
  await bundle(["bot/main.ts"], folder, {
    format: "cjs",
    entryNames: "bot",
    outExtension: { ".js": ".cjs" },
    define: { ...DEFINED, "import.meta.url": "fileUrl" },
    // What is kept of the code does not know how to import: what is loaded late is required.
    supported: { "dynamic-import": false },
    // As Node wraps such a module; the whole of the file, so that its source is not held twice.
    banner: { js: `(function (exports, require, module, __filename, __dirname) { const fileUrl = ${url};` },
    footer: { js: "})" },
  });
  cpSync(join(TOP, ".ci/run-cached.cjs"), join(folder, "main.cjs"));
  await keepCode(join(folder, "main.cjs"));
}

/**
 * Runs the bot once, on a ledger of nobody's and a chat platform on loopback that has no messages, until it
 * polls: what the engine compiled meanwhile is kept. Where that cannot be done, starts are slower and nothing else.
 */
async function keepCode(program) {
  const directory = mkdtempSync(join(tmpdir(), "tailgate-compile-"));
  const server = createServer((request, response) => {
    // What runs behind the first poll is compiled as soon as it is fetched, and every start would fetch it.
    if (request.url.endsWith("/getUpdates")) return child.kill();
    const result = request.url.endsWith("/getMe")
      ? { id: 1, is_bot: true, first_name: "-", username: "-" }
      : true;
    response.setHeader("content-type", "application/json").end(JSON.stringify({ ok: true, result }));
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { scripts } = JSON.parse(readFileSync(join(TOP, "package.json"), "utf8"));
  // Kept code is good for the same flags only.
  const flags = scripts.start.match(/--\S+/g) ?? [];
  const child = spawn(process.execPath, [...flags, program, "keep-code"], {
    env: {
      ...{ DATA_DIR: directory, OWNER_ID: "1", TIME_ZONE: "UTC", LOG_LEVEL: "silent" },
      ...{ BOT_TOKEN: `1:${"-".repeat(35)}`, TELEGRAM_API_ROOT: `http://127.0.0.1:${server.address().port}` },
    },
    stdio: "ignore",
    timeout: KEEP_CODE_MS_MAX,
  });
  await new Promise((resolve) => child.once("close", resolve));
  server.closeAllConnections();
  server.close();
  rmSync(directory, { recursive: true, force: true });
}

/**
 * Compiles programs into one folder, whole or not at all: into a folder of its own first, so that neither a
 * kill nor a second start at the same time leaves half of it behind.
 */
export async function compileInto(folder, entryPoints, stamp, addMore = async () => {}) {
  const unfinished = `${folder}.${process.pid}`;
  mkdirSync(unfinished);
  await bundle(entryPoints, unfinished, {
    format: "esm",
    define: DEFINED,
    // Packages in the older module form look for the builtin modules through "require".
    banner: {
      js: 'import { createRequire as requireFrom } from "node:module"; const require = requireFrom(import.meta.url);',
    },
  });
  cpSync(join(TOP, "db/migrations"), join(unfinished, "migrations"), { recursive: true });
  await addMore(unfinished);
  writeFileSync(join(unfinished, STAMP), stamp);
  putInPlace(unfinished, folder);
}

async function bundle(entryPoints, outdir, form) {
  const { outputFiles } = await build({
    absWorkingDir: TOP,
    entryPoints,
    outdir,
    entryNames: "[name]",
    bundle: true,
    // No parts shared between programs: they would be run in another order than the sources are.
    splitting: false,
    platform: "node",
    target: "node20",
    external: EXTERNAL,
    plugins: [thinner],
    // The source of a program stays in memory as long as it runs.
    minify: true,
    legalComments: "none",
    // Tells where a place in the stack of a logged fault stands; the programs themselves do not know of it.
    sourcemap: "external",
    sourcesContent: false,
    write: false,
    logLevel: "warning",
    logOverride: { "direct-eval": "silent" },
    ...form,
  });
  for (const { path, text } of outputFiles) writeFileSync(path, path.endsWith(".map") ? text : inAscii(text));
}

/** One sign of another alphabet and the engine would keep all of the source in two bytes a sign. */
function inAscii(source) {
  return source.replace(
    /(?<!\\)[^\x00-\x7f]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

function putInPlace(unfinished, folder) {
  const old = `${unfinished}.old`;
  try {
    renameSync(folder, old);
  } catch (error) {
    if (error.code !== "ENOENT") throw error;
  }
  try {
    renameSync(unfinished, folder);
  } catch (error) {
    // Another start that compiled the same sources was first.
    if (error.code !== "ENOTEMPTY" && error.code !== "EEXIST") throw error;
  }
  for (const left of [old, unfinished]) rmSync(left, { recursive: true, force: true });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const start = performance.now();
  await compile();
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`Compiled into ${relative(TOP, COMPILED)} in ${seconds} s.`);
}
