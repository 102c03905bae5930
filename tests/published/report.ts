import type { Reporter, TestModule } from "vitest/node";
import { PARTS } from "./parts.ts";
import type { RowMeta } from "./table.ts";

type Row = NonNullable<RowMeta["outside"]> & { passed: boolean };

/** After the checks have run, lists them by the part of the job that they cover, and the parts that none covers. */
export default class PublishedReport implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const rows = modules.flatMap((module) =>
      [...module.children.allTests()].flatMap((test): Row[] => {
        const { outside } = test.meta() as RowMeta;
        return outside ? [{ ...outside, passed: test.result().state === "passed" }] : [];
      }),
    );
    const isOurs = ({ source }: Row) => source.startsWith("computed");
    const isUnfit = ({ source }: Row) => source.startsWith("does not apply");
    const without: string[] = [];
    for (const part of PARTS) {
      const own = rows.filter((row) => row.parts.includes(part));
      const outside = own.filter((row) => !isOurs(row) && !isUnfit(row));
      if (outside.length === 0) without.push(part);
      console.log(
        `\n${part}: ${outside.length} from outside, ${own.filter(isOurs).length} computed by ourselves`,
      );
      for (const { id, source, passed } of outside)
        console.log(`  ${passed ? "ok  " : "FAIL"} ${id}  ${source}`);
      for (const { id, source } of own.filter(isUnfit)) console.log(`       ${id}  ${source}`);
    }
    console.log(`\nWithout a check from outside: ${without.length > 0 ? without.join("; ") : "no part"}`);
    const failed = rows.filter(({ passed }) => !passed);
    if (failed.length > 0) console.error(`Failed: ${failed.map(({ id }) => id).join(", ")}`);
  }
}
