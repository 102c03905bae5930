import { afterAll, describe, expect, it } from "vitest";

/** Where a row's figures come from, in words; "computed" where they were worked out for the table itself. */
type Source = string;

/** A table of check values: every row is either checked or listed with the reason why it does not apply. */
export interface Table {
  row(id: string, source: Source, check: () => void): void;
  doesNotApply(id: string, why: string): void;
}

/** "L-09", "L-10", "L-11" for "L", 9 and 11. */
export function rowIds(letter: string, from: number, through: number): string[] {
  return Array.from(
    { length: through - from + 1 },
    (_, index) => `${letter}-${String(from + index).padStart(2, "0")}`,
  );
}

/** Checks one table; a row that is neither checked nor listed fails, and so does one that is both. */
export function publishedTable(title: string, ids: readonly string[], fill: (table: Table) => void): void {
  describe(title, () => {
    const seen: string[] = [];
    const unfit: string[] = [];
    fill({
      row(id, source, check) {
        seen.push(id);
        it(`${id} (${source})`, check);
      },
      doesNotApply(id, why) {
        seen.push(id);
        unfit.push(`${id}: ${why}`);
      },
    });
    it("accounts for every row once", () => {
      expect([...seen].sort()).toEqual([...ids].sort());
    });
    afterAll(() => {
      if (unfit.length > 0) console.info(`${title}, rows that do not apply:\n  ${unfit.join("\n  ")}`);
    });
  });
}
