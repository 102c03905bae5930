import { describe, expect, it } from "vitest";
import { dueAtPickup, goingPrice } from "../../../core/books/agreed.ts";
import type { FactKind, FactOf } from "../../../core/books/facts.ts";
import { earmarked, monthRow } from "../../../core/books/month.ts";
import { profitOf, statusOf } from "../../../core/books/piece.ts";
import type { Posting } from "../../../core/books/postings.ts";
import type { Category, RetireHow } from "../../../core/notes/reading.ts";
import { Ledger } from "../../books/ledger.ts";

/** A ledger with a desk (#1) bought for 30.00 and, where told so, a lot of three chairs (#2–#4) for 100.00. */
function withDesk(more: { chairs?: true } = {}): Ledger {
  const ledger = new Ledger();
  ledger.buy("2026-05-01", ["desk"], 3_000);
  if (more.chairs) ledger.buy("2026-05-01", ["chair", "chair", "chair"], 10_000);
  return ledger;
}

const DESK = 1;
const CHAIRS = [2, 3, 4];

/** The legs of the last fact as short lines: "cash +60.00 #1". */
function legsOf(ledger: Ledger): string[] {
  const legs = ledger.books().postings.get(ledger.facts.at(-1)!.id) ?? [];
  return legs.map(({ account, cents, piece, detail }: Posting) =>
    [account, `${cents > 0 ? "+" : ""}${cents}`, piece && `#${piece}`, detail].filter(Boolean).join(" "),
  );
}

function month(ledger: Ledger, name = "2026-05") {
  return monthRow(ledger.books(), name, "2026-12-31");
}

function on<K extends FactKind>(
  ledger: Ledger,
  kind: K,
  pieces: number[],
  amount?: number,
  data?: FactOf<K>["data"],
  day = "2026-05-20",
): Ledger {
  ledger.add<K>(kind, day, {
    pieces,
    ...(amount !== undefined && { amount }),
    ...(data && { data }),
  } as Partial<FactOf<K>>);
  return ledger;
}

const spend = (ledger: Ledger, pieces: number[], amount: number, category: Category = "materials") =>
  on(ledger, "spend", pieces, amount, { what: "paint", category });
const retire = (ledger: Ledger, pieces: number[], how: RetireHow) =>
  on(ledger, "retire", pieces, undefined, { how });
const sell = (ledger: Ledger, pieces: number[], amount: number, data: FactOf<"sell">["data"] = {}) =>
  on(ledger, "sell", pieces, amount, data);

describe("buy", () => {
  it("moves cash to unsold pieces and splits a lot evenly, the first piece taking the odd cent", () => {
    const ledger = withDesk({ chairs: true });
    expect(legsOf(ledger)).toEqual([
      "unsold pieces +3334 #2",
      "unsold pieces +3333 #3",
      "unsold pieces +3333 #4",
      "cash -10000",
    ]);
    expect(ledger.piece(3)).toMatchObject({ price: 3_333, lot: 2, set: false, bought: "2026-05-01" });
    expect(ledger.piece(DESK)).toMatchObject({ price: 3_000, lot: null });
  });

  it("free pieces cost nothing and post nothing", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-01", ["desk"], 0, { source: "curb" });
    expect(legsOf(ledger)).toEqual([]);
    expect(ledger.books().postings.size).toBe(0);
    expect(ledger.piece(1)).toMatchObject({ price: 0, source: "curb" });
  });

  it("a set remembers that it is one", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-01", ["table", "chair"], 9_000, { set: true });
    expect(ledger.piece(2)).toMatchObject({ set: true, lot: 1 });
  });

  it("a set of one piece is just a piece", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-01", ["table"], 9_000, { set: true });
    expect(ledger.piece(1)).toMatchObject({ set: false, lot: null });
  });

  it("words for another count of pieces than it has numbers are a bug and throw", () => {
    for (const pieces of [[1], [1, 2, 3]]) {
      const ledger = new Ledger();
      const made = [
        { name: "desk", traits: [] },
        { name: "lamp", traits: [] },
      ];
      ledger.add("buy", "2026-05-02", { pieces, amount: 100, data: { made } });
      expect(() => ledger.books()).toThrow(`2 pieces for ${pieces.length} numbers`);
    }
  });

  it("a number given before is a bug and throws", () => {
    const ledger = withDesk();
    ledger.add("buy", "2026-05-02", {
      pieces: [1],
      amount: 1,
      data: { made: [{ name: "desk", traits: [] }] },
    });
    expect(() => ledger.books()).toThrow("given before");
  });
});

describe("spend", () => {
  it("naming pieces is split evenly over them", () => {
    const ledger = spend(withDesk({ chairs: true }), CHAIRS, 1_000);
    expect(legsOf(ledger)).toEqual([
      "unsold pieces +334 #2",
      "unsold pieces +333 #3",
      "unsold pieces +333 #4",
      "cash -1000",
    ]);
    expect(ledger.piece(2).materials).toBe(334);
  });

  it("naming none is overhead by category", () => {
    const ledger = spend(withDesk(), [], 2_000, "vehicle");
    expect(legsOf(ledger)).toEqual(["overhead +2000 vehicle", "cash -2000"]);
    expect(month(ledger)).toMatchObject({ overhead: 2_000, flipProfit: -2_000, forLoan: -2_000 });
  });

  it("on a sold piece is cost of pieces sold, dated the day of spending", () => {
    const ledger = sell(withDesk(), [DESK], 9_000);
    ledger.add("spend", "2026-06-02", {
      pieces: [DESK],
      amount: 500,
      data: { what: "delivery", category: "other" },
    });
    expect(legsOf(ledger)).toEqual(["cost of pieces sold +500 #1", "cash -500 #1"]);
    expect(month(ledger).costOfSold).toBe(3_000);
    expect(month(ledger, "2026-06")).toMatchObject({ costOfSold: 500, flipProfit: -500 });
    expect(profitOf(ledger.piece(DESK))).toBe(5_500);
  });

  it.each([
    ["kept", "personal use", 0],
    ["given", "written off", 500],
    ["scrapped", "written off", 500],
  ] as const)("on a piece %s follows its cost to %s", (how, account, more) => {
    const ledger = spend(retire(withDesk(), [DESK], how), [DESK], 500);
    expect(legsOf(ledger)).toEqual([`${account} +500 #1`, "cash -500 #1"]);
    expect(month(ledger).writtenOff).toBe(how === "kept" ? 0 : 3_000 + more);
  });

  it("of category fees that names pieces is a selling fee of theirs; naming none it is overhead", () => {
    const ledger = spend(withDesk(), [DESK], 300, "fees");
    expect(legsOf(ledger)).toEqual(["selling fees +300 #1", "cash -300 #1"]);
    expect(ledger.piece(DESK)).toMatchObject({ fees: 300, materials: 0 });
    expect(month(ledger)).toMatchObject({ fees: 300, flipProfit: -300 });
    expect(legsOf(spend(withDesk(), [], 300, "fees"))).toEqual(["overhead +300 fees", "cash -300"]);
  });

  it("of any other category is materials of the piece", () => {
    expect(spend(withDesk(), [DESK], 300, "vehicle").piece(DESK).materials).toBe(300);
  });

  it("on a piece that is not there is refused", () => {
    expect(spend(withDesk(), [7], 300).problem()).toEqual({ kind: "no such piece", number: 7 });
  });
});

describe("work and drive", () => {
  it("minutes are split in whole minutes, the first taking the odd ones", () => {
    const ledger = on(withDesk({ chairs: true }), "work", CHAIRS, undefined, { minutes: 100 });
    expect(CHAIRS.map((number) => ledger.piece(number).minutes)).toEqual([34, 33, 33]);
    expect(legsOf(ledger)).toEqual([]);
  });

  it("work does not start a piece", () => {
    const ledger = on(withDesk(), "work", [DESK], undefined, { minutes: 60 });
    expect(statusOf(ledger.piece(DESK))).toBe("bought");
  });

  it("miles are split exactly: thirds make a whole again", () => {
    const ledger = withDesk({ chairs: true });
    on(ledger, "drive", CHAIRS, undefined, { miles: "10" });
    expect(ledger.piece(2).miles).toBe("3.3333333333");
    on(ledger, "drive", CHAIRS, undefined, { miles: "10" });
    on(ledger, "drive", CHAIRS, undefined, { miles: "10" });
    expect(CHAIRS.map((number) => ledger.piece(number).miles)).toEqual(["10", "10", "10"]);
    on(ledger, "drive", [2, 3], undefined, { miles: "31.5" });
    expect(ledger.piece(3).miles).toBe("25.75");
  });

  it("both may name a piece that is gone, or none", () => {
    const ledger = sell(withDesk(), [DESK], 9_000);
    on(ledger, "work", [DESK], undefined, { minutes: 30 });
    on(ledger, "drive", [DESK], undefined, { miles: "4" });
    on(ledger, "drive", [], undefined, { miles: "9" });
    on(ledger, "work", [], undefined, { minutes: 9 });
    expect(ledger.piece(DESK)).toMatchObject({ minutes: 30, miles: "4" });
  });
});

describe("start, finish, list, reprice", () => {
  it("starting twice keeps the first day, finishing and listing twice the latest", () => {
    const ledger = withDesk();
    for (const day of ["2026-05-02", "2026-05-04"]) {
      on(ledger, "start", [DESK], undefined, {}, day);
      on(ledger, "finish", [DESK], undefined, {}, day);
      on(ledger, "list", [DESK], day === "2026-05-02" ? 9_000 : 8_000, {}, day);
    }
    expect(ledger.piece(DESK)).toMatchObject({
      started: "2026-05-02",
      finished: "2026-05-04",
      listed: "2026-05-04",
      listPrice: 8_000,
      firstListed: "2026-05-02",
      firstListPrice: 9_000,
    });
  });

  it("listing does not finish a piece", () => {
    const ledger = on(withDesk(), "list", [DESK], 9_000, {});
    expect(ledger.piece(DESK).finished).toBeNull();
    expect(statusOf(ledger.piece(DESK))).toBe("listed");
  });

  it("one list price over several pieces, a new one and a cut are shared evenly", () => {
    const ledger = on(withDesk({ chairs: true }), "list", CHAIRS, 10_000, {});
    const prices = () => CHAIRS.map((number) => ledger.piece(number).listPrice);
    expect(prices()).toEqual([3_334, 3_333, 3_333]);
    on(ledger, "reprice", CHAIRS, 9_000, {});
    expect(prices()).toEqual([3_000, 3_000, 3_000]);
    on(ledger, "reprice", CHAIRS, 1_000, { cut: true });
    expect(prices()).toEqual([2_666, 2_667, 2_667]);
  });

  it("a piece never listed has no price to change, and no cut goes below zero", () => {
    expect(on(withDesk(), "reprice", [DESK], 900, {}).problem()).toEqual({
      kind: "piece not listed",
      number: 1,
    });
    const listed = on(withDesk(), "list", [DESK], 900, {});
    expect(on(listed, "reprice", [DESK], 901, { cut: true }).problem()).toEqual({
      kind: "cut below zero",
      number: 1,
      listPrice: 900,
    });
  });

  it("a cut may go down to zero", () => {
    const listed = on(withDesk(), "list", [DESK], 900, {});
    expect(on(listed, "reprice", [DESK], 900, { cut: true }).piece(DESK).listPrice).toBe(0);
  });

  it.each(["start", "finish", "list", "reprice", "hold", "sell"] as const)(
    "%s of a gone piece is refused",
    (kind) => {
      const ledger = sell(withDesk(), [DESK], 9_000);
      on(ledger, kind, [DESK], 100, {}, "2026-05-21");
      expect(ledger.problem()).toEqual({ kind: "piece gone", number: 1, how: "sold", on: "2026-05-20" });
    },
  );

  it("a piece that is gone keeps its last list price", () => {
    const ledger = on(withDesk(), "list", [DESK], 9_000, {});
    expect(sell(ledger, [DESK], 8_000).piece(DESK)).toMatchObject({ listPrice: 9_000, listed: "2026-05-20" });
  });
});

describe("hold and fallthrough", () => {
  it("a deposit is owed, not earned, and split evenly", () => {
    const ledger = on(withDesk({ chairs: true }), "hold", CHAIRS, 1_000, {
      buyer: "neighbor",
      until: "2026-05-25",
    });
    expect(legsOf(ledger)).toEqual([
      "deposits held -334 #2",
      "deposits held -333 #3",
      "deposits held -333 #4",
      "cash +1000",
    ]);
    expect(month(ledger)).toMatchObject({ proceeds: 0, cashIn: 1_000 });
    expect(ledger.piece(2).hold).toEqual({
      since: "2026-05-20",
      buyer: "neighbor",
      until: "2026-05-25",
      agreed: null,
    });
  });

  it("without a deposit no money moves, and a second deposit adds up", () => {
    const ledger = on(withDesk(), "hold", [DESK], undefined, { buyer: "neighbor" });
    expect(legsOf(ledger)).toEqual([]);
    on(ledger, "hold", [DESK], 1_000, {}, "2026-05-21");
    on(ledger, "hold", [DESK], 500, { until: "2026-05-30" }, "2026-05-22");
    expect(ledger.piece(DESK)).toMatchObject({
      deposit: 1_500,
      hold: { since: "2026-05-20", buyer: "neighbor", until: "2026-05-30", agreed: null },
    });
  });

  it("a price agreed on is split evenly to the cent, stays until another is said, and goes with its hold", () => {
    const ledger = on(withDesk({ chairs: true }), "hold", CHAIRS, 1_000, { buyer: "ann", agreed: 10_000 });
    expect(CHAIRS.map((chair) => ledger.piece(chair).hold!.agreed)).toEqual([3_334, 3_333, 3_333]);
    expect(
      goingPrice(
        ledger.books(),
        CHAIRS.map((chair) => ledger.piece(chair)),
      ),
    ).toBe(10_000);
    // What some of them come to, nobody said.
    expect(goingPrice(ledger.books(), [ledger.piece(2)])).toBeNull();
    on(ledger, "hold", [2], 500, { buyer: "ann" }, "2026-05-21");
    expect(ledger.piece(2).hold).toMatchObject({ agreed: 3_334 });
    on(ledger, "hold", [2], undefined, { agreed: 4_000 }, "2026-05-21");
    expect(goingPrice(ledger.books(), [ledger.piece(2)])).toBe(4_000);
    expect(dueAtPickup([ledger.piece(2)])).toBe(3_166);
    on(ledger, "hold", [2], undefined, { buyer: "ben" }, "2026-05-22");
    expect(ledger.piece(2).hold).toMatchObject({ buyer: "ben", agreed: null });
    on(ledger, "fallthrough", [3], undefined, {}, "2026-05-22");
    expect(ledger.piece(3).hold).toBeNull();
  });

  it("a held piece may be listed or finished, and returns to that", () => {
    const ledger = on(withDesk(), "hold", [DESK], 1_000, {});
    on(ledger, "finish", [DESK], undefined, {});
    on(ledger, "list", [DESK], 9_000, {});
    expect(statusOf(ledger.piece(DESK))).toBe("held");
    on(ledger, "fallthrough", [DESK], 1_000, {});
    expect(statusOf(ledger.piece(DESK))).toBe("listed");
  });

  it("what is refunded leaves cash, the rest is deposits kept that day", () => {
    const ledger = on(withDesk(), "hold", [DESK], 4_500, {});
    on(ledger, "fallthrough", [DESK], 3_000, {}, "2026-06-02");
    expect(legsOf(ledger)).toEqual(["deposits held +4500 #1", "deposits kept -1500 #1", "cash -3000 #1"]);
    expect(month(ledger, "2026-06")).toMatchObject({ proceeds: 1_500, flipProfit: 1_500, cashOut: 3_000 });
    expect(ledger.piece(DESK)).toMatchObject({ deposit: 0, depositsKept: 1_500, hold: null });
    expect(profitOf(ledger.piece(DESK))).toBe(1_500 - 3_000);
  });

  it("what was kept may be said instead", () => {
    const ledger = on(withDesk(), "hold", [DESK], 4_500, {});
    on(ledger, "fallthrough", [DESK], 4_000, { kept: true });
    expect(legsOf(ledger)).toEqual(["deposits held +4500 #1", "deposits kept -4000 #1", "cash -500 #1"]);
  });

  it("a part refund over several pieces goes by what is held on each", () => {
    const ledger = on(withDesk({ chairs: true }), "hold", [2], 3_000, {});
    on(ledger, "hold", [3], 1_000, {});
    on(ledger, "fallthrough", [2, 3], 1_001, {});
    expect(ledger.piece(2).depositsKept).toBe(3_000 - 751);
    expect(ledger.piece(3).depositsKept).toBe(1_000 - 250);
  });

  it("refunding or keeping more than is held is refused; no deposit, no amount needed", () => {
    const held = () => on(withDesk(), "hold", [DESK], 4_500, {});
    expect(on(held(), "fallthrough", [DESK], 4_501, {}).problem()).toEqual({
      kind: "more than held",
      held: 4_500,
    });
    expect(on(held(), "fallthrough", [DESK], 4_501, { kept: true }).problem()).toMatchObject({ held: 4_500 });
    const free = on(withDesk(), "hold", [DESK], undefined, {});
    expect(on(free, "fallthrough", [DESK], undefined, {}).piece(DESK).hold).toBeNull();
    expect(on(withDesk(), "fallthrough", [DESK], 0, {}).problem()).toEqual({
      kind: "piece not held",
      number: 1,
    });
  });
});

describe("sell", () => {
  it("is gross: the fee is its own pair, and the cost moves", () => {
    const ledger = sell(withDesk(), [DESK], 22_000, { fee: 660 });
    expect(legsOf(ledger)).toEqual([
      "cash +22000 #1",
      "sales -22000 #1",
      "cost of pieces sold +3000 #1",
      "unsold pieces -3000 #1",
      "selling fees +660 #1",
      "cash -660 #1",
    ]);
    expect(month(ledger)).toMatchObject({ flipped: 1, proceeds: 22_000, cashIn: 22_000, cashOut: 3_660 });
    expect(profitOf(ledger.piece(DESK))).toBe(22_000 - 660 - 3_000);
  });

  it("one price is shared by list prices, an unlisted piece at its cost beside them; the fee likewise", () => {
    const set = new Ledger();
    set.buy("2026-05-01", ["table", "chair", "chair", "chair", "chair"], 5_000, { set: true });
    on(set, "list", [1], 24_000, {});
    on(set, "list", [2, 3, 4, 5], 12_000, {});
    sell(set, [1, 2, 3, 4, 5], 30_000, { fee: 900 });
    expect([1, 2].map((number) => set.piece(number).sales)).toEqual([20_000, 2_500]);
    expect([1, 2].map((number) => set.piece(number).fees)).toEqual([600, 75]);
    const half = on(withDesk({ chairs: true }), "list", [2], 9_000, {});
    on(half, "spend", [3], 3_333, { what: "paint", category: "materials" });
    sell(half, [2, 3], 30_003);
    expect([2, 3].map((number) => half.piece(number).price)).toEqual([3_334, 3_333]);
    expect([2, 3].map((number) => half.piece(number).sales)).toEqual([10_003, 20_000]);
    const free = new Ledger();
    free.buy("2026-05-01", ["chair", "chair"], 0);
    on(free, "list", [1], 9_000, {});
    expect(sell(free, [1, 2], 10_001).piece(1).sales).toBe(5_001);
  });

  it("a list price of zero counts as none: by cost; a set's one list price counts as each piece's own", () => {
    const zero = on(withDesk({ chairs: true }), "list", [2], 9_000, {});
    on(zero, "list", [3], 0, {});
    expect(sell(zero, [2, 3], 10_000).piece(3).sales).toBe(4_999);
    const set = on(withDesk({ chairs: true }), "list", CHAIRS, 10_000, {});
    on(set, "reprice", [4], 6_666, {});
    sell(set, CHAIRS, 13_333);
    expect(CHAIRS.map((number) => set.piece(number).sales)).toEqual([3_334, 3_333, 6_666]);
  });

  it("a deposit is part of the price: the rest is cash today", () => {
    const sold = sell(on(withDesk(), "hold", [DESK], 4_500, {}), [DESK], 16_500);
    expect(legsOf(sold).slice(0, 3)).toEqual(["cash +12000 #1", "deposits held +4500 #1", "sales -16500 #1"]);
    expect(sold.piece(DESK)).toMatchObject({ deposit: 0, sales: 16_500, hold: null, depositsKept: 0 });
    expect(month(sold)).toMatchObject({ proceeds: 16_500, cashIn: 16_500 });
  });

  it("to another buyer the deposit may be given back or kept", () => {
    const back = sell(on(withDesk(), "hold", [DESK], 4_500, {}), [DESK], 16_500, { deposit: "refunded" });
    expect(month(back)).toMatchObject({ proceeds: 16_500, cashIn: 21_000, cashOut: 7_500 });
    const kept = sell(on(withDesk(), "hold", [DESK], 4_500, {}), [DESK], 16_500, { deposit: "kept" });
    expect(month(kept)).toMatchObject({ proceeds: 21_000, cashIn: 21_000, cashOut: 3_000 });
    expect(kept.piece(DESK)).toMatchObject({ depositsKept: 4_500, sales: 16_500, deposit: 0 });
  });

  it("a deposit larger than the price gives the rest back", () => {
    const ledger = sell(on(withDesk(), "hold", [DESK], 4_500, {}), [DESK], 4_000);
    expect(month(ledger)).toMatchObject({ proceeds: 4_000, cashIn: 4_500, cashOut: 3_500 });
  });

  it("at zero is a sale all the same", () => {
    const ledger = sell(withDesk(), [DESK], 0);
    expect(profitOf(ledger.piece(DESK))).toBe(-3_000);
    expect(month(ledger).flipped).toBe(1);
  });

  it("before its buy, or of a number that is not there, is refused", () => {
    const early = withDesk();
    on(early, "sell", [DESK], 100, {}, "2026-04-30");
    expect(early.problem()).toEqual({ kind: "not bought yet", number: 1, bought: "2026-05-01" });
    expect(sell(withDesk(), [5], 100).problem()).toEqual({ kind: "no such piece", number: 5 });
  });
});

describe("refund", () => {
  it("is refunds and cash, that day; the month of the sale stays", () => {
    const ledger = sell(withDesk(), [DESK], 9_000);
    on(ledger, "refund", [DESK], 2_500, {}, "2026-06-01");
    expect(legsOf(ledger)).toEqual(["refunds +2500 #1", "cash -2500 #1"]);
    expect(month(ledger, "2026-06")).toMatchObject({ proceeds: -2_500, flipped: 0, cashOut: 2_500 });
    expect(profitOf(ledger.piece(DESK))).toBe(3_500);
  });

  it("with return moves the cost back, spending since the sale too, and the piece is unlisted again", () => {
    const ledger = withDesk();
    on(ledger, "finish", [DESK], undefined, {}, "2026-05-05");
    on(ledger, "list", [DESK], 19_000, {}, "2026-05-06");
    sell(ledger, [DESK], 19_000);
    spend(ledger, [DESK], 700);
    on(ledger, "refund", [DESK], 19_000, { returned: true }, "2026-06-01");
    expect(legsOf(ledger)).toEqual([
      "refunds +19000 #1",
      "unsold pieces +3700 #1",
      "cost of pieces sold -3700 #1",
      "cash -19000 #1",
    ]);
    expect(ledger.piece(DESK)).toMatchObject({
      sold: null,
      gone: null,
      goneOn: null,
      listed: null,
      listPrice: null,
      firstListPrice: 19_000,
      finished: "2026-05-05",
    });
    expect(statusOf(ledger.piece(DESK))).toBe("finished");
    expect(profitOf(ledger.piece(DESK))).toBeNull();
    expect(month(ledger, "2026-06")).toMatchObject({ flipped: -1, costOfSold: -3_700, flipProfit: -15_300 });
  });

  it("never more than the piece brought in, kept deposits included", () => {
    const ledger = sell(withDesk(), [DESK], 9_000);
    on(ledger, "refund", [DESK], 5_000, {});
    on(ledger, "refund", [DESK], 4_001, {});
    expect(ledger.problem()).toEqual({ kind: "more than brought in", number: 1, broughtIn: 4_000 });
    const kept = on(withDesk(), "hold", [DESK], 4_500, {});
    on(kept, "fallthrough", [DESK], 500, {});
    sell(kept, [DESK], 1_000);
    expect(on(kept, "refund", [DESK], 5_000, {}).problem()).toBeNull();
  });

  it("of an unsold piece gives back at most a kept deposit", () => {
    expect(on(withDesk(), "refund", [DESK], 100, {}).problem()).toEqual({
      kind: "piece not sold",
      number: 1,
    });
    const kept = on(withDesk(), "hold", [DESK], 4_500, {});
    on(kept, "fallthrough", [DESK], 0, {});
    on(kept, "refund", [DESK], 4_500, {});
    expect(kept.problem()).toBeNull();
    on(kept, "refund", [DESK], 1, {});
    expect(kept.problem()).toEqual({ kind: "piece not sold", number: 1 });
  });

  it("over several pieces is even", () => {
    const ledger = on(withDesk({ chairs: true }), "list", [2], 9_000, {});
    on(ledger, "list", [3], 3_000, {});
    sell(ledger, [2, 3], 12_000);
    on(ledger, "refund", [2, 3], 1_001, {});
    expect([2, 3].map((number) => ledger.piece(number).refunds)).toEqual([501, 500]);
  });

  it("a piece that came back may be sold again", () => {
    const ledger = sell(withDesk(), [DESK], 9_000);
    on(ledger, "refund", [DESK], 9_000, { returned: true });
    sell(ledger, [DESK], 7_000);
    expect(month(ledger)).toMatchObject({
      flipped: 1,
      proceeds: 7_000,
      costOfSold: 3_000,
      flipProfit: 4_000,
    });
    expect(profitOf(ledger.piece(DESK))).toBe(4_000);
  });
});

describe("retire", () => {
  it.each([
    ["kept", "personal use", 0, 0],
    ["given", "written off", 3_000, -3_000],
    ["scrapped", "written off", 3_000, -3_000],
  ] as const)("%s moves the cost to %s", (how, account, writtenOff, profit) => {
    const ledger = retire(withDesk(), [DESK], how);
    expect(legsOf(ledger)).toEqual([`${account} +3000 #1`, "unsold pieces -3000 #1"]);
    expect(month(ledger)).toMatchObject({ writtenOff, flipProfit: 0 - writtenOff, flipped: 0 });
    expect(profitOf(ledger.piece(DESK))).toBe(profit);
    expect(ledger.piece(DESK)).toMatchObject({ gone: how, goneOn: "2026-05-20", sold: null });
  });

  it("a kept piece's profit is its proceeds less fees", () => {
    const ledger = on(withDesk(), "hold", [DESK], 4_500, {});
    on(ledger, "fallthrough", [DESK], 0, {});
    spend(ledger, [DESK], 300, "fees");
    expect(profitOf(retire(ledger, [DESK], "kept").piece(DESK))).toBe(4_200);
  });

  it("is refused while a deposit is held; a hold without one just ends", () => {
    const held = on(withDesk(), "hold", [DESK], 4_500, {});
    expect(retire(held, [DESK], "given").problem()).toEqual({ kind: "deposit held", number: 1, held: 4_500 });
    const cent = on(withDesk(), "hold", [DESK], 1, {});
    expect(retire(cent, [DESK], "scrapped").problem()).toEqual({ kind: "deposit held", number: 1, held: 1 });
    const free = on(withDesk(), "hold", [DESK], undefined, {});
    expect(retire(free, [DESK], "given").piece(DESK).hold).toBeNull();
  });
});

describe("income, tax and earmarked", () => {
  it("income is other income by stream", () => {
    const ledger = on(new Ledger(), "income", [], 24_000, { stream: "ads" });
    expect(legsOf(ledger)).toEqual(["cash +24000", "other income -24000 ads"]);
    expect(month(ledger)).toMatchObject({
      otherIncome: 24_000,
      flipProfit: 0,
      forLoan: 24_000,
      cashIn: 24_000,
    });
  });

  it("tax goes by the percent in force at the month's end, or today while the month runs", () => {
    const ledger = on(new Ledger(), "income", [], 10_001, { stream: "ads" });
    on(ledger, "taxrate", [], undefined, { percent: "22.5" }, "2026-05-31");
    on(ledger, "taxrate", [], undefined, { percent: "30" }, "2026-06-01");
    expect(month(ledger).taxSetAside).toBe(2_250);
    expect(monthRow(ledger.books(), "2026-05", "2026-05-30").taxSetAside).toBe(0);
    expect(month(ledger)).toMatchObject({ forLoan: 7_751 });
  });

  it("tax is never below zero", () => {
    const ledger = spend(withDesk(), [], 500);
    on(ledger, "taxrate", [], undefined, { percent: "20" });
    expect(month(ledger)).toMatchObject({ taxSetAside: 0, forLoan: -500 });
  });

  it("earmarked is all for the loan less all paid and less what was declared as sent", () => {
    const ledger = on(new Ledger(), "loan", [], 100_000, { loan: "loan", rate: "0" }, "2026-04-01");
    on(ledger, "income", [], 10_000, { stream: "ads" }, "2026-04-20");
    on(ledger, "income", [], 5_000, { stream: "ads" });
    on(ledger, "pay", [], 8_000, {});
    expect(ledger.statement("2026-05-31").earmarked).toBe("70.00");
    expect(earmarked(ledger.books(), "2026-04-30")).toBe(10_000);
    on(ledger, "sent", [], 9_000, {});
    expect(ledger.statement("2026-05-31").earmarked).toBe("-20.00");
    expect(month(ledger)).toMatchObject({ paidToLoan: 8_000, cashOut: 0 });
  });

  it("goals are kept, oldest first", () => {
    const ledger = on(new Ledger(), "goal", [], undefined, { per: "year", pieces: 100 });
    on(ledger, "goal", [], 80_000, { per: "month" });
    expect(ledger.books().goals).toEqual([
      { day: "2026-05-20", per: "year", pieces: 100, amount: null },
      { day: "2026-05-20", per: "month", pieces: null, amount: 80_000 },
    ]);
  });
});
