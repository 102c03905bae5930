import { expect, test } from "vitest";
import { layeringFaults } from "./imports.ts";

test("imports point only inward, and the core is pure", () => {
  expect(layeringFaults()).toEqual([]);
});
