const { existsSync, readdirSync, readFileSync, statSync } = require("node:fs");
const { dirname, join } = require("node:path");

// In the older module form, as is all that a start passes through: the newer one takes ten milliseconds to set up.

const TOP = dirname(__dirname);
/** What is compiled lies here, and in a file of it the fingerprint of the sources that it came from. */
const COMPILED = join(TOP, ".build");
const STAMP = "compiled-from";

/**
 * The name, size and time of every source, and the time of every folder of them, one behind the other: a change of any of
 * them is a change of this. A digest would take a start longer.
 */
function fingerprint() {
  const told = [];
  const add = (path, isFile) => {
    const { size, mtimeMs } = statSync(path);
    told.push(path, isFile ? size : OF_FOLDER, mtimeMs);
  };
  const rooms = ["bot", "core", "db"].map((room) => join(TOP, room));
  const also = ["package.json", "package-lock.json", ".ci/compile.mjs", ".ci/run-cached.cjs"];
  for (const path of rooms.flatMap(foldersIn)) add(path, false);
  for (const path of [...rooms.flatMap(filesIn), ...also.map((name) => join(TOP, name))].sort())
    add(path, true);
  return JSON.stringify(told);
}

const OF_FOLDER = -1;

/** A digest of what stands in the sources of some rooms. */
function contentOf(rooms) {
  const digest = require("node:crypto").createHash("sha256");
  for (const path of rooms.flatMap((room) => filesIn(join(TOP, room))).sort()) {
    digest.update(`${path.slice(TOP.length)}\n`).update(readFileSync(path));
  }
  return digest.digest("hex").slice(0, 16);
}

/** Files have a dot in their names and folders none: to ask the system of each takes a start three milliseconds. */
function filesIn(folder) {
  return readdirSync(folder).flatMap((name) => {
    const path = `${folder}/${name}`;
    return name.includes(".") ? [path] : filesIn(path);
  });
}

function foldersIn(folder) {
  const names = readdirSync(folder).filter((name) => !name.includes("."));
  return [folder, ...names.flatMap((name) => foldersIn(`${folder}/${name}`))];
}

/**
 * Whether all is as it was: a file cannot come or go without its folder telling, so that no folder need be listed, which
 * would take a start as long again.
 */
function isAsItWas(told) {
  for (let at = 0; at < told.length; at += 3) {
    const now = statSync(told[at], { throwIfNoEntry: false });
    if (now?.mtimeMs !== told[at + 2]) return false;
    if (told[at + 1] !== OF_FOLDER && now.size !== told[at + 1]) return false;
  }
  return true;
}

/** The files alone: what an editor lays beside them for a while touches their folder. */
function filesOf(fingerprint) {
  return fingerprint.filter((_, at) => fingerprint[at - (at % 3) + 1] !== OF_FOLDER).join();
}

/** "older": compiled once, from sources that have changed since. */
function stateOfCompiled() {
  const stamp = join(COMPILED, STAMP);
  if (!existsSync(stamp)) return "missing";
  const told = readFileSync(stamp, "utf8");
  // Of an earlier release.
  if (!told.startsWith("[")) return "older";
  const then = JSON.parse(told);
  if (isAsItWas(then)) return "current";
  return filesOf(then) === filesOf(JSON.parse(fingerprint())) ? "current" : "older";
}

module.exports = { TOP, COMPILED, STAMP, fingerprint, contentOf, stateOfCompiled };
