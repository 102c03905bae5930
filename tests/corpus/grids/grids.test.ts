import { afterAll, describe, expect, it } from "vitest";
import { RIGHT, Stage, tryCase } from "../context.ts";
import { bargained } from "./bargained.ts";
import { type Cell, covering } from "./cells.ts";
import { costs, inBreath, none, others, paid } from "./costs.ts";
import { sums } from "./costs-told.ts";
import { dated, eachDated, ofIt } from "./days.ts";
import { deals } from "./deals.ts";
import { kin } from "./kin.ts";
import { KNOWN } from "./known.ts";
import { lots } from "./lots.ts";
import { people } from "./people.ts";
import { pointing } from "./pointing.ts";
import { righted } from "./righted.ts";
import { added, corrected, joined, plainly } from "./told.ts";

const stage = new Stage();
afterAll(() => stage.end());

/** `few`: how many of its cells are tried each time; all of them in the long runs. */
const GRIDS: readonly { name: string; cells: () => Cell[]; few: number }[] = [
  { name: "pointing", cells: pointing, few: 70 },
  { name: "plainly", cells: plainly, few: 50 },
  { name: "joined", cells: joined, few: 30 },
  { name: "added", cells: added, few: 30 },
  { name: "corrected", cells: corrected, few: 40 },
  { name: "dated", cells: dated, few: 25 },
  { name: "each dated", cells: eachDated, few: 15 },
  { name: "of it", cells: ofIt, few: 10 },
  { name: "deals", cells: deals, few: 60 },
  { name: "lots", cells: lots, few: 40 },
  { name: "kin", cells: kin, few: 40 },
  { name: "bargained", cells: bargained, few: 40 },
  { name: "costs", cells: costs, few: 50 },
  { name: "sums of costs", cells: sums, few: 40 },
  { name: "costs put right", cells: inBreath, few: 15 },
  { name: "costs paid", cells: paid, few: 20 },
  { name: "other costs", cells: others, few: 20 },
  { name: "no costs", cells: none, few: 20 },
  { name: "people", cells: people, few: 45 },
  { name: "righted", cells: righted, few: 40 },
];

/** The failures of cells, each with what was replied. */
function failures(cells: readonly Cell[]): { id: string; told: string }[] {
  return cells.flatMap((cell) => {
    const { outcome, reply } = tryCase(stage, cell);
    return RIGHT.has(outcome) ? [] : [{ id: cell.id, told: `${cell.id}: ${outcome}: ${reply}` }];
  });
}

describe.each(GRIDS)("$name", ({ name, cells, few }) => {
  const known = KNOWN.filter(({ grid }) => grid === name);

  it("fails in no cell but those known to", () => {
    const failed = failures(process.env["LONG"] ? cells() : covering(cells(), few));
    const isKnown = (id: string): boolean => known.some(({ cells: each }) => each.test(id));
    expect(failed.filter(({ id }) => !isKnown(id)).map(({ told }) => told)).toEqual([]);
    // What is mended is no longer known to fail.
    if (process.env["LONG"])
      expect(known.filter(({ cells: each }) => !failed.some(({ id }) => each.test(id)))).toEqual([]);
  });
});
