import { join } from "node:path";
import { compile, compileInto } from "./compile.mjs";
import { compileSources } from "./compile-sources.mjs";
import { stateOfCompiled, TOP } from "./compiled.cjs";

/** Programs of the tests that are run as processes of their own. */
const OF_TESTS = ["tests/db/writer.ts", "tests/db/copier.ts"];

/** Before any test: the processes that tests start run what is compiled, as people do, and the workers each source by itself. */
export default async function setup() {
  if (stateOfCompiled() !== "current") await compile();
  await compileInto(join(TOP, ".build-of-tests"), OF_TESTS, "tests");
  await compileSources();
}
