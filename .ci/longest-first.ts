import { relative } from "node:path";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The files that take longest, longest first: begun last, one of them would keep a core waiting for the other. */
const LONGEST = [
  "tests/corpus/context.test.ts",
  "tests/crash/process.test.ts",
  "tests/bot/telegram/long.test.ts",
  "tests/corpus/corpus.test.ts",
  "tests/crash/crash.test.ts",
  "tests/bot/telegram/failures.test.ts",
  "tests/bot/setup/first-run.test.ts",
  "tests/db/commands.test.ts",
  "tests/bot/files/make.test.ts",
  "tests/bot/aside.test.ts",
];

const rank = ({ moduleId }: TestSpecification): number => {
  const place = LONGEST.indexOf(relative(process.cwd(), moduleId).replaceAll("\\", "/"));
  return place < 0 ? LONGEST.length : place;
};

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}
