import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
// @ts-expect-error: a plain script without types
import { packages } from "../.ci/licences.mjs";

const TOP = resolve(fileURLToPath(import.meta.url), "../..");
const read = (name: string) => readFileSync(join(TOP, name), "utf8");

interface Listed {
  name: string;
  version: string;
  licence: string;
  isOfBot: boolean;
  isOptional: boolean;
}
const listed = packages() as Listed[];

describe("the image", () => {
  const dockerfile = read("Dockerfile");

  test("is built from one exact base, on a line of Node that the package allows and that is maintained", () => {
    const bases = [...dockerfile.matchAll(/^FROM (\S+)/gm)].map(([, base]) => base);
    expect(bases).toHaveLength(2);
    expect(new Set(bases).size).toBe(1);
    const [, major] = /^node:(\d+)\.\d+\.\d+-\w+-slim@sha256:[0-9a-f]{64}$/.exec(bases[0]!) ?? [];
    expect(Number(major)).toBeGreaterThanOrEqual(22);
    expect(Number(major) % 2).toBe(0);
  });

  test("checks its health, and starts, with what was compiled at the build", () => {
    for (const line of [/^ {2}CMD (.+)$/m, /^CMD (.+)$/m]) {
      const [program, ...args] = JSON.parse(line.exec(dockerfile)![1]!) as string[];
      expect(program).toBe("node");
      expect(args.at(-1)).toMatch(/^\.build\/\w+\.c?js$/);
      // Flags for the engine may stand before it; a loader that compiles at start may not.
      for (const flag of args.slice(0, -1)) expect(flag).toMatch(/^--(?!import)[\w-]+(?:=\d+)?$/);
    }
  });

  test("holds the list of its software", () => {
    expect(dockerfile).toContain("licences.mjs > licences.txt");
    expect(dockerfile).toContain("COPY --from=build /app/licences.txt ./");
  });
});

describe("the list of software", () => {
  /** Licences that ask for no more than to be named; MPL-2.0 is for files of its own that are used unchanged. */
  const USABLE = /^\(?(?:(?:MIT|ISC|0BSD|BSD-[23]-Clause|Apache-2\.0|MPL-2\.0|WTFPL)(?: OR )?)+\)?$/;

  test("names every package that the bot needs, with a licence that allows its use", () => {
    const manifest = JSON.parse(read("package.json")) as { dependencies: Record<string, string> };
    const ofBot = listed.filter(({ isOfBot }) => isOfBot);
    for (const name of Object.keys(manifest.dependencies))
      expect(ofBot.map((each) => each.name)).toContain(name);
    // The fonts' own words stand in their folder: free to use and to pass on.
    const others = ofBot.filter(({ licence }) => !USABLE.test(licence)).map(({ name }) => name);
    expect(others).toEqual(["dejavu-fonts-ttf"]);
  });

  test("gives the versions and licences that are installed", () => {
    for (const { name, version, licence } of listed.filter((each) => each.isOfBot && !each.isOptional)) {
      const own = JSON.parse(read(join("node_modules", name, "package.json"))) as Record<string, unknown>;
      // Of a package that is there twice the one nearer to the top is looked at.
      if (own["version"] !== version) continue;
      expect([name, own["license"]]).toEqual([name, licence]);
    }
  });
});
