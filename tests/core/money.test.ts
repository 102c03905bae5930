import { Decimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amountText, anHour, assertCents, percentOf, roundHalfUp, show } from "../../core/money.ts";
import { centsOf } from "./cents.ts";

const SEED = Number(process.env["SEED"] ?? 20260531);

describe("money", () => {
  it("is rounded half up, away from zero, and never to a negative zero", () => {
    expect(["0.5", "1.5", "2.4999", "-0.5", "-1.5"].map((text) => roundHalfUp(new Decimal(text)))).toEqual([
      1, 2, 2, -1, -2,
    ]);
    expect(Object.is(roundHalfUp(new Decimal("-0.4")), 0)).toBe(true);
  });

  it("is written with two places and read back", () => {
    expect([0, 5, -5, 125_000, -100].map(amountText)).toEqual(["0.00", "0.05", "-0.05", "1250.00", "-1.00"]);
    const property = fc.property(fc.integer(), (cents) => {
      expect(centsOf(amountText(cents))).toBe(cents);
    });
    fc.assert(property, { seed: SEED });
  });

  it("is shown to people grouped", () => {
    expect([0, 99, 123_456_789, -123_456].map(show)).toEqual(["0.00", "0.99", "1,234,567.89", "-1,234.56"]);
  });

  it("is told by the hour, half up, where time is logged", () => {
    expect(anHour(160_00, 90)).toBe(106_67);
    expect(anHour(-1, 120)).toBe(-1);
    expect(anHour(500, 0)).toBeNull();
  });

  it("takes a percent, rounded once", () => {
    expect(percentOf("22.5", 10_001)).toBe(2_250);
    expect(percentOf("0.5", 100)).toBe(1);
    expect(percentOf("20", -12)).toBe(-2);
  });

  it("that is no whole number of cents is a bug and throws", () => {
    expect(() => assertCents(0.1 + 0.2)).toThrow("not whole cents");
    expect(() => amountText(Number.MAX_SAFE_INTEGER + 1)).toThrow("not whole cents");
  });
});
