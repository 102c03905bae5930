import { existsSync, statfsSync } from "node:fs";
import { defineConfig } from "vitest/config";
import { LongestFirst } from "./longest-first.ts";

/** Files that stay by themselves: they put something else in the place of a module, or catch every call. */
const APART = ["tests/bot/schedule/year.long.test.ts", "tests/bot/telegram/wire.test.ts"];
/** Minutes long: with `npm run long` alone. */
const LONG = process.env["LONG"] ? [] : ["tests/**/*.long.test.ts"];

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
          exclude: [...APART, ...LONG],
          // Loading the product anew for each of eighty files would take longer than most of their tests.
          isolate: false,
        },
      },
      { extends: true, test: { name: "apart", include: APART, exclude: LONG } },
    ],
  },
});
