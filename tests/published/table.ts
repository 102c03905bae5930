import { describe, expect, it } from "vitest";
import type { Part } from "./parts.ts";

/**
 * Where a row's figures come from, so that a reader can find it: who published it, title, section, year.
 * "computed…" where they were worked out for the table itself; a rule or figure nobody read again says "from memory".
 */
type Source = string;

/** A table of check values: every row is either checked or listed with the reason why it does not apply. */
export interface Table {
  /** `parts`: where the row checks other parts of the job than the table does. */
  row(id: string, source: Source, check: () => void, ...parts: Part[]): void;
  doesNotApply(id: string, why: string): void;
}

/** "L-09", "L-10", "L-11" for "L", 9 and 11. */
export function rowIds(letter: string, from: number, through: number): string[] {
  return Array.from(
    { length: through - from + 1 },
    (_, index) => `${letter}-${String(from + index).padStart(2, "0")}`,
  );
}

/** What a table is about, and which part of the job its rows check. */
interface About {
  title: string;
  part: Part;
  ids: readonly string[];
}

/** What the report knows a row by. */
export interface RowMeta {
  outside?: { id: string; source: string; parts: readonly Part[] };
}

declare module "vitest" {
  interface TaskMeta extends RowMeta {}
}

/** Checks one table; a row that is neither checked nor listed fails, and so does one that is both. */
export function publishedTable({ title, part, ids }: About, fill: (table: Table) => void): void {
  describe(title, () => {
    const seen: string[] = [];
    fill({
      row(id, source, check, ...parts) {
        seen.push(id);
        it(`${id} (${source})`, ({ task }) => {
          task.meta.outside = { id, source, parts: parts.length > 0 ? parts : [part] };
          check();
        });
      },
      doesNotApply(id, why) {
        seen.push(id);
        it(`${id} does not apply: ${why}`, ({ task }) => {
          task.meta.outside = { id, source: `does not apply: ${why}`, parts: [part] };
          expect(why).not.toBe("");
        });
      },
    });
    it("accounts for every row once", () => {
      expect([...seen].sort()).toEqual([...ids].sort());
    });
  });
}
