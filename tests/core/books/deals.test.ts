import { describe, expect, it } from "vitest";
import type { FactKind, FactOf } from "../../../core/books/facts.ts";
import { monthRow } from "../../../core/books/month.ts";
import { profitOf } from "../../../core/books/piece.ts";
import { amountOnDay, daysDue, nextDue, standingOn } from "../../../core/books/standing.ts";
import { Ledger } from "../../books/ledger.ts";

const BOUGHT = "2026-05-01";
const SOLD = "2026-05-10";
const LATER = "2026-06-02";

function shop(...names: string[]): Ledger {
  const ledger = new Ledger();
  for (const name of names) ledger.buy(BOUGHT, [name], 3_000);
  return ledger;
}

function on<K extends FactKind>(
  ledger: Ledger,
  day: string,
  kind: K,
  of: { pieces?: number[]; amount?: number; data?: FactOf<K>["data"] },
): Ledger {
  ledger.add(kind, day, { data: {}, ...of } as never);
  return ledger;
}

const soldOwing = (owed: number, price = 20_000) =>
  on(shop("hutch"), SOLD, "sell", { pieces: [1], amount: price, data: { owed } });
const month = (ledger: Ledger, of: string) => monthRow(ledger.books(), of, "2026-06-30");

describe("a sale on which something is owed", () => {
  it("counts whole on its day, and its cash when it comes", () => {
    const ledger = soldOwing(5_000);
    on(ledger, LATER, "collect", { pieces: [1], amount: 2_000 });
    expect(ledger.piece(1)).toMatchObject({ sold: SOLD, sales: 20_000, owed: 3_000 });
    expect(profitOf(ledger.piece(1))).toBe(17_000);
    expect(month(ledger, "2026-05")).toMatchObject({
      flipped: 1,
      proceeds: 20_000,
      forLoan: 17_000,
      cashIn: 15_000,
    });
    expect(month(ledger, "2026-06")).toMatchObject({ proceeds: 0, cashIn: 2_000 });
  });

  it("leaves what is owed out of what is due to the loan, on each day", () => {
    const ledger = soldOwing(5_000);
    expect(ledger.statement("2026-05-31")).toMatchObject({ buyersOwe: "50.00", earmarked: "120.00" });
    on(ledger, LATER, "collect", { pieces: [1], amount: 5_000 });
    expect(ledger.statement("2026-06-30")).toMatchObject({ buyersOwe: "0.00", earmarked: "170.00" });
  });

  it("cannot owe more than is left after the deposit, nor be paid more or sooner than it is owed", () => {
    const held = on(shop("hutch"), SOLD, "hold", { pieces: [1], amount: 4_500 });
    on(held, SOLD, "sell", { pieces: [1], amount: 20_000, data: { owed: 15_501 } });
    expect(held.problem()).toEqual({ kind: "more owed than due", due: 15_500 });
    const over = on(soldOwing(5_000), LATER, "collect", { pieces: [1], amount: 5_001 });
    expect(over.problem()).toEqual({ kind: "more than buyers owe", owed: 5_000 });
    const soon = on(soldOwing(5_000), "2026-05-09", "collect", { pieces: [1], amount: 100 });
    expect(soon.problem()).toEqual({ kind: "nothing owed", number: 1 });
  });

  it("shares what is owed by what is left on each piece, and collects by what each owes", () => {
    const ledger = shop("table", "bench");
    on(ledger, BOUGHT, "list", { pieces: [1], amount: 15_000 });
    on(ledger, BOUGHT, "list", { pieces: [2], amount: 5_000 });
    on(ledger, SOLD, "hold", { pieces: [1], amount: 5_000 });
    on(ledger, SOLD, "sell", { pieces: [1, 2], amount: 20_000, data: { owed: 9_000 } });
    expect([1, 2].map((number) => ledger.piece(number).owed)).toEqual([6_000, 3_000]);
    on(ledger, LATER, "collect", { pieces: [1, 2], amount: 4_500 });
    expect([1, 2].map((number) => ledger.piece(number).owed)).toEqual([3_000 + 0, 1_500]);
  });

  it("that never comes is off the proceeds on its own day, and no cash goes out", () => {
    const ledger = on(soldOwing(5_000), LATER, "refund", { pieces: [1], data: { unpaid: true } });
    expect(ledger.piece(1)).toMatchObject({ owed: 0, refunds: 5_000, gone: "sold" });
    expect(month(ledger, "2026-06")).toMatchObject({ proceeds: -5_000, cashOut: 0, flipped: 0 });
    expect(ledger.statement("2026-06-30")).toMatchObject({ buyersOwe: "0.00", earmarked: "120.00" });
  });

  it("that comes back gives back cash, cancels what is owed, and keeps its fee", () => {
    const ledger = on(shop("hutch"), SOLD, "sell", {
      pieces: [1],
      amount: 20_000,
      data: { owed: 5_000, fee: 600 },
    });
    on(ledger, LATER, "refund", { pieces: [1], amount: 15_000, data: { returned: true } });
    expect(ledger.piece(1)).toMatchObject({
      owed: 0,
      refunds: 20_000,
      fees: 600,
      gone: null,
      finished: LATER,
    });
    expect(month(ledger, "2026-06")).toMatchObject({ proceeds: -20_000, cashOut: 15_000, flipped: -1 });
  });

  it("gives back no more cash than came in", () => {
    const ledger = on(soldOwing(5_000), LATER, "refund", { pieces: [1], amount: 15_001 });
    expect(ledger.problem()).toEqual({ kind: "more than brought in", number: 1, broughtIn: 15_000 });
  });

  it("bounced: a sale booked as paid gives its cash back, and the bank's charge is overhead", () => {
    const ledger = on(soldOwing(0, 12_000), LATER, "refund", { pieces: [1], amount: 12_000 });
    on(ledger, LATER, "spend", { amount: 1_500, data: { what: "bounced check", category: "fees" } });
    expect(month(ledger, "2026-06")).toMatchObject({ proceeds: -12_000, overhead: 1_500, cashOut: 13_500 });
  });
});

describe("a trade", () => {
  const chairForDresser = (data: { paid?: number; received?: number } = {}, worth = 4_000) =>
    on(shop("chair"), SOLD, "trade", {
      pieces: [1, 2],
      amount: worth,
      data: { made: [{ name: "dresser", traits: ["oak"] }], ...data },
    });

  it("sells what was given at its worth and buys what was got for that and the cash on top", () => {
    const ledger = chairForDresser({ paid: 2_000 });
    expect(ledger.piece(1)).toMatchObject({ gone: "sold", sold: SOLD, sales: 4_000 });
    expect(profitOf(ledger.piece(1))).toBe(1_000);
    expect(ledger.piece(2)).toMatchObject({
      name: "dresser",
      traits: ["oak"],
      price: 6_000,
      bought: SOLD,
      lot: null,
    });
    expect(month(ledger, "2026-05")).toMatchObject({
      flipped: 1,
      proceeds: 4_000,
      cashIn: 0,
      cashOut: 5_000,
    });
    expect(ledger.statement("2026-05-31").unsoldCost).toBe("60.00");
  });

  it("takes cash that came back off the cost, which cannot go below zero", () => {
    expect(chairForDresser({ received: 1_500 }).piece(2).price).toBe(2_500);
    expect(chairForDresser({ received: 4_001 }).problem()).toEqual({ kind: "trade below zero", cost: -1 });
  });

  it("makes a lot of several got, and shares the worth of several given as a sale's price", () => {
    const ledger = shop("chair", "desk");
    on(ledger, BOUGHT, "list", { pieces: [1], amount: 3_000 });
    on(ledger, BOUGHT, "list", { pieces: [2], amount: 9_000 });
    const made = [
      { name: "bench", traits: [] },
      { name: "stool", traits: [] },
    ];
    on(ledger, SOLD, "trade", { pieces: [1, 2, 3, 4], amount: 8_001, data: { made } });
    expect([1, 2].map((number) => ledger.piece(number).sales)).toEqual([2_000, 6_001]);
    expect([3, 4].map((number) => ledger.piece(number))).toMatchObject([
      { price: 4_001, lot: 3 },
      { price: 4_000, lot: 3 },
    ]);
  });

  it("gives no piece away on which a deposit is held", () => {
    const ledger = on(shop("chair"), SOLD, "hold", { pieces: [1], amount: 500 });
    on(ledger, SOLD, "trade", {
      pieces: [1, 2],
      amount: 4_000,
      data: { made: [{ name: "desk", traits: [] }] },
    });
    expect(ledger.problem()).toEqual({ kind: "deposit held", number: 1, held: 500 });
  });
});

describe("a standing note", () => {
  function standing(first: string, more: Partial<Extract<FactOf<"repeat">["data"], { note: unknown }>> = {}) {
    const ledger = new Ledger();
    const note = { kind: "spend", what: "storage", category: "storage" } as const;
    ledger.add("repeat", first, { amount: 6_000, data: { every: "month", first, note, ...more } });
    return ledger;
  }
  const only = (ledger: Ledger) => [...ledger.books().standing.values()][0]!;

  it("counts months from its day and not from the last one: the 31st is the last day of a shorter month", () => {
    const note = only(standing("2026-01-31", { day: 31 }));
    expect(daysDue(note, null, "2026-05-31")).toEqual([
      "2026-01-31",
      "2026-02-28",
      "2026-03-31",
      "2026-04-30",
      "2026-05-31",
    ]);
    const clipped = only(standing("2026-02-28", { day: 31 }));
    expect(nextDue(clipped, "2026-03-01")).toBe("2026-03-31");
    expect(
      daysDue(only(standing("2028-02-29", { every: "year", day: 29 })), "2028-03-01", "2032-12-31"),
    ).toEqual(["2029-02-28", "2030-02-28", "2031-02-28", "2032-02-29"]);
    expect(daysDue(only(standing("2026-05-01", { every: "week" })), "2026-05-01", "2026-05-20")).toEqual([
      "2026-05-08",
      "2026-05-15",
    ]);
  });

  it("changes its amount and stops from a day on, and makes no month of its own", () => {
    const ledger = standing("2026-01-05");
    ledger.add("repeat", "2026-02-01", { amount: 6_500, data: { of: 1, from: "2026-03-01" } });
    ledger.add("repeat", "2026-04-10", { data: { of: 1, from: "2026-04-10", stop: true } });
    const note = only(ledger);
    expect(daysDue(note, null, "2026-12-31").map((day) => amountOnDay(note, day))).toEqual([
      6_000, 6_000, 6_500, 6_500,
    ]);
    expect(nextDue(note, "2026-04-06")).toBeNull();
    expect(ledger.statement("2026-05-31").months).toEqual([]);
  });

  it("goes by the amount said last of those that have begun, from the very day on", () => {
    const ledger = standing("2026-01-05");
    for (const [amount, from] of [
      [6_500, "2026-03-05"],
      [7_000, "2026-04-05"],
      [7_500, "2026-06-01"],
    ] as const) {
      ledger.add("repeat", "2026-02-01", { amount, data: { of: 1, from } });
    }
    const note = only(ledger);
    const amounts = ["2026-02-05", "2026-03-05", "2026-04-05", "2026-05-05", "2026-06-05"];
    expect(amounts.map((day) => amountOnDay(note, day))).toEqual([6_000, 6_500, 7_000, 7_000, 7_500]);
  });

  it("is due next on the day itself, and stops on the very day, before which it stands", () => {
    const ledger = standing("2026-01-05");
    expect(nextDue(only(ledger), "2026-03-05")).toBe("2026-03-05");
    expect(nextDue(only(ledger), "2026-03-06")).toBe("2026-04-05");
    ledger.add("repeat", "2026-02-01", { data: { of: 1, from: "2026-03-05", stop: true } });
    const note = only(ledger);
    expect(daysDue(note, null, "2026-12-31")).toEqual(["2026-01-05", "2026-02-05"]);
    expect(nextDue(note, "2026-02-01")).toBe("2026-02-05");
    expect(nextDue(note, "2026-02-06")).toBeNull();
    expect(standingOn([note], "2026-03-04")).toEqual([note]);
    expect(standingOn([note], "2026-03-05")).toEqual([]);
    expect(standingOn([{ ...note, stopped: null }], "2036-01-01")).toHaveLength(1);
  });

  it("that is not there is changed by nobody", () => {
    const ledger = new Ledger();
    ledger.add("repeat", "2026-02-01", { amount: 6_500, data: { of: 9, from: "2026-03-01" } });
    expect(ledger.problem()).toEqual({ kind: "no such repeat" });
  });
});
