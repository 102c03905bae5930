import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { splitByWeight, splitEvenly } from "../../core/split.ts";

const SEED = Number(process.env["SEED"] ?? 20260531);

describe("shares", () => {
  it("take the odd cents by largest remainder, the earlier one where remainders are equal", () => {
    expect(splitByWeight(12_345, [1, 2, 3, 4])).toEqual([1_235, 2_469, 3_703, 4_938]);
    expect(splitByWeight(17_500, [220, 85, 85, 40])).toEqual([8_954, 3_459, 3_459, 1_628]);
    expect(splitByWeight(1, [1, 1, 1])).toEqual([1, 0, 0]);
  });

  it("go evenly where every weight is zero, and a zero weight gets nothing beside others", () => {
    expect(splitByWeight(100, [0, 0, 0])).toEqual([34, 33, 33]);
    expect(splitByWeight(6_000, [0, 1, 1])).toEqual([0, 3_000, 3_000]);
  });

  it("of a negative total mirror the positive ones, without a negative zero", () => {
    expect(splitEvenly(-100, 3)).toEqual([-34, -33, -33]);
    expect(splitByWeight(-1, [1, 3])).toEqual([0, -1]);
  });

  it("stay exact where total times weight passes the safe integers", () => {
    expect(splitByWeight(99_999_999, [100_000_000, 99_999_999])).toEqual([50_000_000, 49_999_999]);
  });

  it("over nothing are a bug and throw", () => {
    expect(() => splitEvenly(100, 0)).toThrow("nothing to split over");
    expect(() => splitByWeight(100, [])).toThrow("nothing to split over");
    expect(() => splitEvenly(0.5, 2)).toThrow("not whole cents");
  });

  it("always sum to the total, and none is a whole unit away from its exact share", () => {
    const weights = fc.array(fc.nat(1_000_000), { minLength: 1, maxLength: 12 });
    const property = fc.property(
      fc.integer({ min: -100_000_000, max: 100_000_000 }),
      weights,
      (total, parts) => {
        const shares = splitByWeight(total, parts);
        const sum = parts.reduce((a, b) => a + b, 0);
        expect(shares.reduce((a, b) => a + b, 0)).toBe(total);
        shares.forEach((share, index) => {
          const exact = sum === 0 ? total / parts.length : (total * parts[index]!) / sum;
          expect(Math.abs(share - exact)).toBeLessThan(1);
        });
      },
    );
    fc.assert(property, { seed: SEED, numRuns: 500 });
  });

  it("even shares are those of equal weights", () => {
    const property = fc.property(
      fc.integer({ min: -9_999, max: 9_999 }),
      fc.integer({ min: 1, max: 9 }),
      (total, count) => {
        expect(splitEvenly(total, count)).toEqual(splitByWeight(total, new Array<number>(count).fill(7)));
      },
    );
    fc.assert(property, { seed: SEED, numRuns: 300 });
  });
});
