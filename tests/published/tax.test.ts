import { Decimal } from "decimal.js";
import { expect } from "vitest";
import { addMiles, mileageRateOn, valueOfMiles } from "../../core/mileage.ts";
import { roundHalfUp } from "../../core/money.ts";
import { estimatedTaxDays, selfEmploymentTax } from "../../core/tax.ts";
import { publishedTable, rowIds } from "./table.ts";

const COMPUTED = "computed";

/** Whole dollars of cents, as the form rounds them. */
function dollars(cents: number | Decimal): number {
  return roundHalfUp(new Decimal(cents).div(100));
}

publishedTable(
  { title: "S, self-employment tax", part: "self-employment tax", ids: rowIds("S", 1, 9) },
  ({ row }) => {
    row(
      "S-01",
      "IRS, Understanding Taxes, Module 14: Self-Employment Income and the Self-Employment Tax, example",
      () => {
        const tax = selfEmploymentTax({ year: "2022", profit: 2_165_700 });
        expect([tax.base, tax.total, tax.half].map(dollars)).toEqual([20_000, 3_060, 1_530]);
        expect([tax.total, tax.half]).toEqual([306_004, 153_002]);
      },
    );
    row("S-02", COMPUTED, () => {
      const tax = selfEmploymentTax({ year: "2024", profit: 10_000_000 });
      expect(dollars(tax.base)).toBe(92_350);
      expect(tax).toMatchObject({
        socialSecurity: 1_145_140,
        medicare: 267_815,
        total: 1_412_955,
        half: 706_478,
      });
    });
    row("S-03", COMPUTED, () => {
      expect(selfEmploymentTax({ year: "2026", profit: 43_313 }).total).toBe(0);
      expect(selfEmploymentTax({ year: "2026", profit: 43_314 }).total).toBe(6_120);
    });
    row("S-04", COMPUTED, () => {
      const tax = selfEmploymentTax({ year: "2025", profit: 1_200_000 });
      expect(tax.base.toNumber()).toBe(1_108_200);
      expect(tax).toMatchObject({ socialSecurity: 137_417, medicare: 32_138, total: 169_555, half: 84_777 });
    });
    row("S-05", COMPUTED, () => {
      const tax = selfEmploymentTax({ year: "2025", profit: 9_000_000, wages: 10_000_000 });
      expect(tax.base.toNumber()).toBe(8_311_500);
      expect(tax).toMatchObject({ socialSecurity: 943_640, medicare: 241_034, total: 1_184_674 });
    });
    row("S-06", COMPUTED, () => {
      const tax = selfEmploymentTax({ year: "2026", profit: 3_000_000, wages: 17_000_000 });
      expect(tax).toMatchObject({ socialSecurity: 179_800, medicare: 80_345, total: 260_145 });
    });
    row("S-07", COMPUTED, () => {
      const tax = selfEmploymentTax({ year: "2026", profit: 500_000, wages: 18_450_000 });
      expect(tax).toMatchObject({ socialSecurity: 0, medicare: 13_391 });
    });
    row("S-08", COMPUTED, () => {
      const tax = selfEmploymentTax({ year: "2026", profit: 20_000_000 });
      expect(tax.base.toNumber()).toBe(18_470_000);
      expect(tax).toMatchObject({ socialSecurity: 2_287_800, medicare: 535_630, total: 2_823_430 });
    });
    row("S-09", COMPUTED, () => {
      const totals = [240_000, 681_500].map((profit) => selfEmploymentTax({ year: "2026", profit }).total);
      expect(totals).toEqual([33_911, 96_293]);
    });
  },
);

publishedTable(
  { title: "M, miles at the standard rate", part: "miles", ids: rowIds("M", 1, 5) },
  ({ row }) => {
    row(
      "M-01",
      "IRS Notice 2022-3, Announcement 2022-13, Notices 2023-3, 2024-8, 2025-5 (numbers from memory) and 2026-10; products computed",
      () => {
        const days = ["2022-03-01", "2022-09-01", "2023-05-01", "2024-05-01", "2025-05-01", "2026-05-01"];
        const values = days.map((day) => valueOfMiles("100", mileageRateOn(day).cents));
        expect(values).toEqual([5_850, 6_250, 6_550, 6_700, 7_000, 7_250]);
      },
    );
    row("M-02", COMPUTED, () => expect(valueOfMiles("12.2", mileageRateOn("2026-02-02").cents)).toBe(885));
    row("M-03", COMPUTED, () => expect(valueOfMiles("42.6", mileageRateOn("2026-02-02").cents)).toBe(3_089));
    row("M-04", COMPUTED, () => {
      const values = ["2022-06-30", "2022-07-01"].map((day) =>
        valueOfMiles("37.4", mileageRateOn(day).cents),
      );
      expect(values).toEqual([2_188, 2_338]);
    });
    row("M-05", COMPUTED, () => {
      const driven = addMiles([
        { day: "2026-01-01", miles: new Decimal(80) },
        { day: "2025-12-31", miles: new Decimal(120) },
      ]);
      expect(driven.byRate.map(({ value }) => value)).toEqual([8_400, 5_800]);
      expect(driven.value).toBe(14_200);
    });
  },
);

const RULE = "computed by the rule of IRS, Estimated Tax, Frequently Asked Questions, and Rev. Rul. 2015-13";
const SUNDAY_RULE = `${RULE}; a 16 April on a Sunday kept on Monday: from memory`;

publishedTable(
  {
    title: "E, days when estimated tax is due",
    part: "days when estimated tax is due",
    ids: rowIds("E", 1, 7),
  },
  ({ row }) => {
    row("E-01", RULE, () => {
      expect(estimatedTaxDays(2022)).toEqual(["2022-04-18", "2022-06-15", "2022-09-15", "2023-01-17"]);
    });
    row("E-02", RULE, () => {
      expect(estimatedTaxDays(2023)).toEqual(["2023-04-18", "2023-06-15", "2023-09-15", "2024-01-16"]);
    });
    row("E-03", RULE, () => {
      expect(estimatedTaxDays(2024)).toEqual(["2024-04-15", "2024-06-17", "2024-09-16", "2025-01-15"]);
    });
    row(
      "E-04",
      "California tax calendar for 2026 (its last day, read in a copy); the other days computed",
      () => {
        expect(estimatedTaxDays(2025)).toEqual(["2025-04-15", "2025-06-16", "2025-09-15", "2026-01-15"]);
      },
    );
    row("E-05", "California tax calendar for 2026 and 2027 (read in a copy)", () => {
      expect(estimatedTaxDays(2026)).toEqual(["2026-04-15", "2026-06-15", "2026-09-15", "2027-01-15"]);
    });
    row("E-06", SUNDAY_RULE, () => {
      expect(estimatedTaxDays(2027)).toEqual(["2027-04-15", "2027-06-15", "2027-09-15", "2028-01-18"]);
    });
    row("E-07", SUNDAY_RULE, () => {
      expect([2028, 2029].map((year) => estimatedTaxDays(year)[0])).toEqual(["2028-04-18", "2029-04-17"]);
    });
  },
);
