import { defineConfig } from "vitest/config";

/** The tests that a mutant of the money has to survive: pure ones, and none that is about time. */
export default defineConfig({
  test: {
    root: ".",
    // As in the tests' own settings: a part of core by itself needs the lists of verbs and answers all the same.
    setupFiles: ["core/lists.ts"],
    include: [
      "tests/core/{split,money,signs,payoff}.test.ts",
      "tests/core/books/*.test.ts",
      "tests/core/questions/{sight,suppose}.test.ts",
      "tests/core/decide/deposit.test.ts",
      "tests/core/answers/{tax,month,loan}.test.ts",
      "tests/books/{random,worked-month}.test.ts",
      "tests/published/{deposits,finance-library,loan-interest,payoff,split,tax,worked-month}.test.ts",
    ],
    // A few random histories tell as much as many, which a mutant would run through a thousand times.
    env: { RUNS: "16", SHRINK: "no" },
    testNamePattern: "^(?!.*in a moment)",
    // One import of the product for all the files of a run.
    isolate: false,
    testTimeout: 60_000,
  },
});
