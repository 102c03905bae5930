import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it, test } from "vitest";
import { circlesIn, layeringFaults } from "./imports.ts";

test("imports point only inward, and the core is pure", () => {
  expect(layeringFaults()).toEqual([]);
});

describe("circles", () => {
  it("are found, types included", () => {
    const folder = mkdtempSync(join(tmpdir(), "tailgate-circle-"));
    writeFileSync(join(folder, "a.ts"), 'import type { B } from "./b.ts";\n');
    writeFileSync(join(folder, "b.ts"), 'import { a } from "./a.ts";\n');
    writeFileSync(join(folder, "c.ts"), 'import { a } from "./a.ts";\n');
    const files = ["a.ts", "b.ts", "c.ts"].map((name) => join(folder, name));
    expect(circlesIn(files)).toHaveLength(1);
    expect(circlesIn(files.slice(0, 1))).toEqual([]);
    rmSync(folder, { recursive: true });
  });
});
