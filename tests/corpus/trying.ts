import { afterAll, describe, expect, it } from "vitest";
import { contextCases, type Outcome, RIGHT, Stage, tryCase } from "./context.ts";

/** Of how much of a file the messages are right, at once or after one tap; what is wrong is asked or refused, never recorded. */
export interface Expected {
  name: string;
  right: number;
  wrong: readonly string[];
}

/** Tries each file as it is expected, all on one stage. */
export function tryFiles(files: readonly Expected[]): void {
  const stage = new Stage();
  afterAll(() => stage.end());
  describe.each(files)("$name", ({ name, right, wrong }) => {
    it("is right at once or after one tap, and wrong without a word in nothing new", {
      timeout: 900_000,
    }, () => {
      const results = contextCases(name).map((one) => tryCase(stage, one));
      const count = (outcome: Outcome) => results.filter((result) => result.outcome === outcome).length;
      console.log(
        `${name}: ${count("right at once")} at once, ${count("right after one tap")} after one tap, of ${results.length}`,
      );
      const silent = results
        .filter(({ outcome }) => outcome === "wrong silently")
        .map((result) => result.case.id);
      expect(silent.filter((id) => !wrong.includes(id))).toEqual([]);
      const good = results.filter(({ outcome }) => RIGHT.has(outcome)).length;
      expect(good / results.length).toBeGreaterThanOrEqual(right);
    });
  });
}
