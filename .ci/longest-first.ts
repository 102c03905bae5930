import { relative } from "node:path";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The files that take longest, longest first: begun last, one of them would keep a core waiting for the other. */
const LONGEST = [
  "tests/corpus/going-on.test.ts",
  "tests/corpus/context.test.ts",
  "tests/crash/process.test.ts",
  "tests/bot/telegram/long.test.ts",
  "tests/db/commands.test.ts",
  "tests/questions/sample.test.ts",
  "tests/bot/setup/first-run.test.ts",
  "tests/corpus/corpus.test.ts",
  "tests/published/engine.test.ts",
  "tests/months/october.test.ts",
  "tests/bot/files/make.test.ts",
  "tests/bot/setup/moving.test.ts",
  "tests/bot/pictures/month.test.ts",
];

const rank = ({ moduleId, project }: TestSpecification): number => {
  // A worker serves one project: between two files of another it would end, and the next load the product anew.
  if (project.name !== "together") return -1;
  const place = LONGEST.indexOf(relative(process.cwd(), moduleId).replaceAll("\\", "/"));
  return place < 0 ? LONGEST.length : place;
};

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}
