import { describe, expect, it, test } from "vitest";
import { goalsInForce } from "../../core/books/goals.ts";
import { accruedOn } from "../../core/books/loan.ts";
import { lotOf } from "../../core/books/lot.ts";
import { monthRow } from "../../core/books/month.ts";
import { splitByWeight } from "../../core/split.ts";
import { estimatedTaxDays, selfEmploymentTax, vehicleCostCovered } from "../../core/tax.ts";
import { Ledger } from "../books/ledger.ts";
import { projected } from "../published/projected.ts";

// Each of these was found by the mutation run: a changed sign or edge that no other test noticed.

describe("payoff of several loans", () => {
  const low = { principal: 500_000, rate: "4.5" };
  const high = { principal: 500_000, rate: "6.8" };
  const paid = (order: "highest" | "prorata", debts = [low, high]) => {
    const payoff = projected(debts, 30_000, order);
    if (payoff.kind === "never") throw new Error("never paid off");
    return payoff;
  };

  it("pays what was borrowed and the interest, not a cent else, in either order", () => {
    for (const order of ["highest", "prorata"] as const) {
      const { total, interest } = paid(order);
      expect(total - interest).toBe(1_000_000);
    }
  });

  it("costs less by the highest rate first, whichever loan was opened first", () => {
    expect(paid("highest").interest).toBeLessThan(paid("prorata").interest);
    expect(paid("highest", [high, low])).toEqual(paid("highest", [low, high]));
  });

  it("ends with the payment that pays it all, and after a hundred years at most", () => {
    const plain = { principal: 30_000, rate: "0" };
    expect(projected([plain], 10_000)).toMatchObject({ payments: 3, last: 10_000 });
    expect(projected([{ ...plain, principal: 1_200 }], 1)).toMatchObject({ payments: 1_200 });
    expect(projected([{ ...plain, principal: 1_201 }], 1)).toMatchObject({ kind: "never" });
  });
});

describe("loans", () => {
  function loans(...rates: [name: string, amount: number, rate: string][]): Ledger {
    const ledger = new Ledger();
    for (const [name, amount, rate] of rates)
      ledger.add("loan", "2028-01-01", { amount, data: { loan: name, rate } });
    return ledger;
  }

  it("a new rate leaves the count of days as it was", () => {
    const ledger = loans(["van", 1_200_000, "5.5"]);
    ledger.add("terms", "2028-01-01", { data: { loan: "van", rate: "5.4" } });
    // 5.4 % of 12,000.00 for 31 of 365 days; by the days of 2028 it would be 54.89.
    expect(accruedOn(ledger.books().loans.get("van")!, "2028-02-01")).toBe(5_504);
  });

  it("a rate may have fifteen places, and no more", () => {
    const fifteen = loans(["van", 1_200_000, `5.${"5".repeat(15)}`]);
    expect(accruedOn(fifteen.books().loans.get("van")!, "2028-02-01")).toBe(5_662);
    const more = loans(["van", 1_200_000, `5.${"5".repeat(16)}`])
      .books()
      .loans.get("van")!;
    expect(() => accruedOn(more, "2028-02-01")).toThrow("places");
  });

  it("a named loan is no part of what is split over the others", () => {
    const ledger = loans(["van", 10_000, "0"], ["car", 30_000, "0"], ["roof", 60_000, "0"]);
    ledger.add("terms", "2028-01-01", { data: { order: "prorata" } });
    ledger.add("pay", "2028-01-01", { amount: 19_000, data: { loan: "van" } });
    const principals = [...ledger.books().loans.values()].map(({ principal }) => principal);
    expect(principals).toEqual([0, 27_000, 54_000]);
  });

  it("the only loan may be named, whatever the order", () => {
    const ledger = loans(["van", 10_000, "0"]);
    ledger.add("terms", "2028-01-01", { data: { order: "prorata" } });
    ledger.add("pay", "2028-01-01", { amount: 4_000, data: { loan: "van" } });
    expect(ledger.books().loans.get("van")!.principal).toBe(6_000);
  });
});

test("a piece bought alone is its own lot; a lot's pieces come by number", () => {
  const ledger = new Ledger();
  ledger.buy("2026-03-01", ["desk"], 1_000);
  ledger.buy("2026-03-01", ["lamp"], 1_000);
  ledger.buy("2026-03-02", ["chair", "chair", "table"], 3_000);
  const books = ledger.books();
  expect(lotOf(books, 1).map(({ number }) => number)).toEqual([1]);
  const turned = { ...books, pieces: new Map([...books.pieces].reverse()) };
  expect(lotOf(turned, 4).map(({ number }) => number)).toEqual([3, 4, 5]);
});

test("the latest goal of each sort is in force from its day on", () => {
  const ledger = new Ledger();
  ledger.add("goal", "2026-01-01", { data: { per: "year", pieces: 80 } });
  ledger.add("goal", "2026-02-01", { amount: 60_000, data: { per: "month" } });
  ledger.add("goal", "2026-03-01", { data: { per: "year", pieces: 100 } });
  const inForce = (day: string) =>
    goalsInForce(ledger.books(), day).map(({ per, pieces, amount }) => [per, pieces, amount]);
  expect(inForce("2025-12-31")).toEqual([]);
  expect(inForce("2026-01-01")).toEqual([["year", 80, null]]);
  expect(inForce("2026-02-28")).toEqual([
    ["month", null, 60_000],
    ["year", 80, null],
  ]);
  expect(inForce("2026-03-01")).toEqual([
    ["month", null, 60_000],
    ["year", 100, null],
  ]);
});

test("profit sent before lowers what is due, a loss sent before gives it back", () => {
  const ledger = new Ledger();
  ledger.add("sent", "2026-01-31", { amount: 5_000, data: {} });
  ledger.add("sent", "2026-01-31", { amount: 2_000, data: { loss: true } });
  const books = ledger.books();
  expect(books.declaredSent).toBe(3_000);
  expect(monthRow(books, "2026-01", "2026-01-31").declaredSent).toBe(3_000);
});

describe("tax", () => {
  it("a loss has no base", () => {
    expect(selfEmploymentTax({ year: "2026", profit: -100_000 }).base.toNumber()).toBe(0);
  });

  it("a 15 January on a Monday that is the holiday moves by one day", () => {
    expect(estimatedTaxDays(2028)[3]).toBe("2029-01-16");
  });

  /** Fuel of 10.00 on a piece on the first, and what then became of the piece. */
  function fuelFor(become: (ledger: Ledger, piece: number) => void): number {
    const ledger = new Ledger();
    const [piece] = ledger.buy("2026-03-01", ["desk"], 0);
    const data = { what: "gas", category: "vehicle" } as const;
    ledger.add("spend", "2026-03-01", { pieces: [piece!], amount: 1_000, data });
    become(ledger, piece!);
    return vehicleCostCovered(ledger.books(), { from: "2026-03-01", through: "2026-03-31" });
  }

  it("vehicle spending on a piece counts when its cost does", () => {
    expect(fuelFor(() => {})).toBe(0);
    const sell = (ledger: Ledger, piece: number) =>
      void ledger.add("sell", "2026-03-31", { pieces: [piece], amount: 5_000, data: {} });
    expect(fuelFor(sell)).toBe(1_000);
    const back = (returned?: true) => (ledger: Ledger, piece: number) => {
      sell(ledger, piece);
      ledger.add("refund", "2026-03-31", {
        pieces: [piece],
        amount: 500,
        data: returned ? { returned } : {},
      });
    };
    expect([fuelFor(back(true)), fuelFor(back())]).toEqual([0, 1_000]);
    const retire = (how: "kept" | "given") => (ledger: Ledger, piece: number) =>
      void ledger.add("retire", "2026-03-15", { pieces: [piece], data: { how } });
    expect([fuelFor(retire("kept")), fuelFor(retire("given"))]).toEqual([0, 1_000]);
    const work = (ledger: Ledger, piece: number) =>
      void ledger.add("start", "2026-03-15", { pieces: [piece], data: {} });
    expect(fuelFor(work)).toBe(0);
  });

  it("both the first and the last day count, and none beside them", () => {
    const ledger = new Ledger();
    for (const day of ["2026-02-28", "2026-03-01", "2026-03-31", "2026-04-01"])
      ledger.add("spend", day, { amount: 1_000, data: { what: "gas", category: "vehicle" } });
    const month = { from: "2026-03-01", through: "2026-03-31" };
    expect(vehicleCostCovered(ledger.books(), month)).toBe(2_000);
  });

  it("fuel for a piece that was kept is the owner's", () => {
    const ledger = new Ledger();
    const [piece] = ledger.buy("2026-03-01", ["desk"], 0);
    ledger.add("retire", "2026-03-02", { pieces: [piece!], data: { how: "kept" } });
    ledger.add("spend", "2026-03-03", {
      pieces: [piece!],
      amount: 1_000,
      data: { what: "gas", category: "vehicle" },
    });
    expect(vehicleCostCovered(ledger.books(), { from: "2026-03-01", through: "2026-03-31" })).toBe(0);
  });
});

describe("split", () => {
  it("of two equal remainders the earlier share gets the cent, wherever they stand", () => {
    // 2.5, 5 and 2.5: one cent for the first of the two halves.
    expect(splitByWeight(10, [1, 2, 1])).toEqual([3, 5, 2]);
    expect(splitByWeight(7, [3, 1, 1, 1, 1, 1, 1, 1])).toEqual([2, 1, 1, 1, 1, 1, 0, 0]);
  });

  it("over nothing is a bug, and says so", () => {
    expect(() => splitByWeight(100, [])).toThrow("nothing to split over");
  });
});
