import { hamilton } from "apportionment";
import { expect } from "vitest";
import { splitByWeight, splitEvenly } from "../../core/split.ts";
import { Ledger } from "../books/ledger.ts";
import { publishedTable, rowIds } from "./table.ts";

const COMPUTED = "computed";

publishedTable(
  {
    title: "C, one price over several pieces",
    part: "one price over several pieces",
    ids: rowIds("C", 1, 14),
  },
  ({ row }) => {
    row("C-01", COMPUTED, () => expect(splitEvenly(10_000, 3)).toEqual([3_334, 3_333, 3_333]));
    row("C-02", COMPUTED, () => {
      expect(splitEvenly(10_000, 6)).toEqual([1_667, 1_667, 1_667, 1_667, 1_666, 1_666]);
      expect(splitEvenly(10_000, 7)).toEqual([1_429, 1_429, 1_429, 1_429, 1_428, 1_428, 1_428]);
    });
    row("C-03", COMPUTED, () => {
      expect(splitEvenly(5, 2)).toEqual([3, 2]);
      expect(splitEvenly(1, 3)).toEqual([1, 0, 0]);
      expect(splitEvenly(0, 3)).toEqual([0, 0, 0]);
    });
    row("C-04", COMPUTED, () => expect(splitByWeight(10_000, [120, 80, 50])).toEqual([4_800, 3_200, 2_000]));
    row("C-05", COMPUTED, () => expect(splitByWeight(8_500, [150, 95, 60])).toEqual([4_180, 2_648, 1_672]));
    row("C-06", COMPUTED, () => {
      expect(splitByWeight(17_500, [220, 85, 85, 40])).toEqual([8_954, 3_459, 3_459, 1_628]);
    });
    row("C-07", COMPUTED, () => {
      expect(splitByWeight(12_345, [1, 2, 3, 4])).toEqual([1_235, 2_469, 3_703, 4_938]);
    });
    row("C-08", COMPUTED, () => {
      expect(splitByWeight(6_000, [0, 1, 1])).toEqual([0, 3_000, 3_000]);
      expect(splitByWeight(6_000, [0, 0, 0])).toEqual([2_000, 2_000, 2_000]);
    });
    row(
      "C-09",
      `${COMPUTED}; the weights are given, since the books do not ask for net realizable value`,
      () => {
        expect(splitByWeight(9_000, [175, 120, 30])).toEqual([4_846, 3_323, 831]);
      },
    );
    row("C-10", COMPUTED, () => {
      expect(splitByWeight(10_000, [400, 100])).toEqual([8_000, 2_000]);
    });
    row("C-11", COMPUTED, () => {
      expect(splitByWeight(20_000, [200, 250, 350])).toEqual([5_000, 6_250, 8_750]);
    });
    row(
      "C-12",
      "26 CFR 1.61-6(a), example 2 (read as Cal. Code Regs. tit. 18, 24271(d)); depreciation comes off by hand, the books have none",
      () => {
        const [cost] = splitByWeight(2_500_000, [15_000, 10_000]) as [number];
        expect(cost).toBe(1_500_000);
        expect(2_000_000 - (cost - 200_000)).toBe(700_000);
      },
    );
    row("C-13", COMPUTED, () => {
      expect(splitByWeight(2_400_000, [15_000, 10_000])).toEqual([1_440_000, 960_000]);
    });
    row("C-14", COMPUTED, () => {
      const ledger = new Ledger();
      const pieces = ledger.buy("2026-03-01", ["table", "chair", "chair", "chair", "chair"], 0, {
        set: true,
      });
      ledger.add("list", "2026-03-02", { pieces: pieces.slice(0, 1), amount: 24_000, data: {} });
      ledger.add("list", "2026-03-02", { pieces: pieces.slice(1), amount: 12_000, data: {} });
      ledger.add("sell", "2026-03-03", { pieces, amount: 30_000, data: {} });
      expect(pieces.map((number) => ledger.piece(number).sales)).toEqual([
        20_000, 2_500, 2_500, 2_500, 2_500,
      ]);
    });
  },
);

/** Seats by our split, checked against the general library's Hamilton method. */
function seats(populations: readonly number[], count: number): number[] {
  const ours = splitByWeight(count, populations);
  expect(ours).toEqual(hamilton([...populations], count).apportionment);
  return ours;
}

const STATES = [21_878, 9_713, 4_167, 3_252, 1_065];

publishedTable(
  { title: "H, largest remainder", part: "one price over several pieces", ids: rowIds("H", 1, 6) },
  ({ row }) => {
    row("H-01", "npm apportionment 2.0, hamilton, the readme's example", () =>
      expect(seats(STATES, 44)).toEqual([24, 11, 5, 3, 1]),
    );
    row("H-02", "npm apportionment 2.0, hamilton, the readme's example", () =>
      expect(seats(STATES, 43)).toEqual([24, 10, 4, 4, 1]),
    );
    row("H-03", "npm apportionment 2.0, hamilton", () => {
      expect(seats([153_000, 411_000, 81_000, 92_000, 163_000], 40)).toEqual([7, 18, 4, 4, 7]);
    });
    row("H-04", "npm apportionment 2.0, hamilton", () => {
      expect(seats([247_000, 185_000, 459_000, 400_000, 413_000], 42)).toEqual([6, 5, 11, 10, 10]);
    });
    row("H-05", "npm apportionment 2.0, hamilton", () => {
      expect(seats([93_000, 154_000, 486_000, 249_000, 223_000, 156_000], 53)).toEqual([3, 6, 19, 10, 9, 6]);
    });
    row(
      "H-06",
      "Lippman, Math in Society, chapter Apportionment, Delaware (from memory); npm apportionment 2.0, hamilton",
      () => {
        expect(seats([162_310, 538_479, 197_145], 41)).toEqual([7, 25, 9]);
      },
    );
  },
);
