import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { TOP } from "../programs.ts";
import type { ReadingFigures } from "./reading.ts";

/**
 * The speed of reading, the reader and the date library both compiled as the bot is. Run as sources every small function
 * of ours would be given its name anew at each call, and none of the library's.
 */
export async function benchReading(): Promise<ReadingFigures> {
  const program = join(TOP, `.build-of-bench.${process.pid}.mjs`);
  try {
    await build({
      entryPoints: [join(TOP, "tests/bench/reading.ts")],
      outfile: program,
      ...{ bundle: true, minify: true, platform: "node", target: "node20", format: "esm" },
    });
    const { stdout } = spawnSync(process.execPath, [program], { encoding: "utf8" });
    return JSON.parse(stdout) as ReadingFigures;
  } finally {
    rmSync(program, { force: true });
  }
}
