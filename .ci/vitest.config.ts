import { existsSync, statfsSync } from "node:fs";
import { defineConfig } from "vitest/config";
import { LongestFirst } from "./longest-first.ts";

/** A file that stays by itself: it catches every call. */
const APART = ["tests/bot/telegram/wire.test.ts"];
/** What puts something else in the place of a module, which the runner's own way of loading alone can. */
const REPLACING = ["tests/bot/schedule/year.long.test.ts"];
/** Minutes long: with `npm run long` alone. */
const LONG = process.env["LONG"] ? [] : ["tests/**/*.long.test.ts"];

/**
 * Modules as Node loads them, all compiled before the first test: the runner's own way has one process transform them
 * one by one, for which both workers wait.
 */
const AS_NODE_LOADS = {
  experimental: { viteModuleRunner: false, nodeLoader: false },
  // Most of what tests run is run a few times: to compile it as if it were run for hours takes longer than it saves. The
  // long runs are those hours.
  execArgv: [
    ...(process.env["LONG"] ? [] : ["--import", "./.ci/compile-less.mjs"]),
    "--import",
    "./.ci/sources.mjs",
  ],
};

/** Half a gigabyte holds the ledgers of all tests at once. */
const ROOM_BYTES = 2 ** 29;

/** Where there is a file system in memory, the tests' ledgers lie on it: none of them waits for a disk. */
function inMemory(folder: string): { TMPDIR?: string } {
  if (process.env["TMPDIR"] || !existsSync(folder)) return {};
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize >= ROOM_BYTES ? { TMPDIR: folder } : {};
}

export default defineConfig({
  test: {
    env: inMemory("/dev/shm"),
    root: ".",
    globalSetup: ".ci/compile-once.mjs",
    // A test that takes a part of core by itself needs the lists of verbs and answers all the same.
    setupFiles: ["core/lists.ts"],
    // better-sqlite3 is a native add-on: a process for each worker, never a thread.
    pool: "forks",
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    // So long that no load of the machine makes a test fail.
    testTimeout: 180_000,
    hookTimeout: 180_000,
    projects: [
      {
        extends: true,
        test: {
          name: "together",
          include: ["tests/**/*.test.ts"],
          exclude: [...APART, ...REPLACING, ...LONG],
          ...AS_NODE_LOADS,
          // Loading the product anew for each of eighty files would take longer than most of their tests.
          isolate: false,
        },
      },
      { extends: true, test: { name: "apart", include: APART, ...AS_NODE_LOADS } },
      { extends: true, test: { name: "replacing", include: REPLACING, exclude: LONG } },
    ],
  },
});
