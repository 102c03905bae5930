import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: ".",
    include: ["tests/**/*.test.ts"],
    globalSetup: ".ci/compile-once.mjs",
    // better-sqlite3 is a native add-on: a process for each worker, never a thread.
    pool: "forks",
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
