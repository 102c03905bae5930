import { describe, expect, it } from "vitest";
import {
  amountOf,
  type Fact,
  type FactKind,
  recordedAs,
  recordedInPlaceOf,
} from "../../../core/books/facts.ts";
import { emptyBooks, foldFacts, foldsLast, recordFact, rulesOf } from "../../../core/books/fold.ts";
import { lotOf, lotTotals } from "../../../core/books/lot.ts";
import { Ledger } from "../../books/ledger.ts";

describe("folding", () => {
  it("goes by day, then by the order first recorded, however the facts are given", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-03", ["desk"], 1_000);
    ledger.add("sell", "2026-05-04", { pieces: [1], amount: 5_000, data: {} });
    ledger.buy("2026-05-01", ["hutch"], 1_000);
    const ids = (facts: Fact[]) => {
      const folded = foldFacts(facts);
      if (folded.kind === "impossible") throw new Error(folded.problem.kind);
      return folded.books.facts.map((fact) => fact.id);
    };
    expect(ids(ledger.facts)).toEqual([3, 1, 2]);
    expect(ids([...ledger.facts].reverse())).toEqual([3, 1, 2]);
  });

  it("puts the instances of standing notes first on their day, by the age of these, whenever recorded", () => {
    const ledger = new Ledger();
    const on = { amount: 100, data: { what: "storage", category: "storage" } } as const;
    for (const repeat of [undefined, 9, 7, undefined]) {
      ledger.add("spend", "2026-05-04", { ...on, ...(repeat ? { repeat } : {}) });
    }
    expect(ledger.books().facts.map((fact) => fact.id)).toEqual([3, 2, 1, 4]);
  });

  it("a replacement keeps its place, its message and its standing note, and no other fact's day", () => {
    const before = { kind: "income", id: 5, place: 2, root: 3, repeat: 1, author: 1, note: 4 } as const;
    const old: Fact = { ...before, day: "2026-05-04", pieces: [], amount: 100, data: { stream: "tips" } };
    const fact = {
      kind: "income",
      day: "2026-05-09",
      pieces: [],
      amount: 200,
      data: { stream: "tips" },
    } as const;
    const next = recordedInPlaceOf(old, { ...fact, pieces: [] }, { id: 8, author: 2, note: 6 });
    expect(next).toEqual({ ...fact, id: 8, place: 2, root: 3, repeat: 1, author: 2, note: 6 });
  });

  it("what a note was edited into stands in its one place by age, wherever a later fact of it was put in", () => {
    const ledger = new Ledger();
    for (const id of [6, 9, 4]) {
      ledger.add("income", "2026-05-04", { id, place: 2, amount: 100, data: { stream: "tips" } });
    }
    expect(ledger.books().facts.map((fact) => fact.id)).toEqual([4, 6, 9]);
  });

  it("a fact is written out with no field that it has no value for, and with all that it has", () => {
    const work = { kind: "work", day: "2026-05-04", pieces: [], data: { minutes: 5 } } as const;
    const by = { id: 8, author: 2, note: 6 };
    const fact = { ...work, pieces: [], place: 8, root: 5, ...by };
    expect(recordedAs({ ...work, pieces: [] }, by, 5)).toStrictEqual(fact);
    const more = { amount: 0, by: "dad", repeat: 3 };
    expect(recordedAs({ ...work, pieces: [], ...more }, by, 5)).toStrictEqual({ ...fact, ...more });
    expect(recordedInPlaceOf(fact, { ...work, pieces: [] }, { ...by, id: 9 })).toStrictEqual({
      ...fact,
      id: 9,
    });
  });

  it("an amount that is missing or negative is a bug and throws", () => {
    expect(amountOf({ ...tips, amount: 0 })).toBe(0);
    expect(() => amountOf({ ...tips, amount: -1 })).toThrow("negative amount");
    const { amount: _, ...without } = tips;
    expect(() => amountOf(without)).toThrow("has no amount");
  });

  it("a replacement keeps its place", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-03", ["desk"], 1_000);
    ledger.add("sell", "2026-05-03", { pieces: [1], amount: 5_000, data: {} });
    const replaced = { ...ledger.facts[0]!, id: 3, amount: 2_000 };
    const folded = foldFacts([ledger.facts[1]!, replaced]);
    expect(folded.kind).toBe("folded");
  });

  it("names the first fact that cannot stand", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-03", ["desk"], 1_000);
    ledger.add("sell", "2026-05-04", { pieces: [1], amount: 5_000, data: {} });
    ledger.add("sell", "2026-05-05", { pieces: [1], amount: 5_000, data: {} });
    expect(foldFacts(ledger.facts)).toMatchObject({
      kind: "impossible",
      fact: { id: 3 },
      problem: { kind: "piece gone", number: 1, how: "sold", on: "2026-05-04" },
    });
    expect(foldFacts(ledger.facts.slice(1))).toMatchObject({
      fact: { id: 2 },
      problem: { kind: "no such piece" },
    });
  });

  it("records a fact that folds last, and throws for one that does not", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-03", ["desk"], 1_000);
    ledger.buy("2026-05-02", ["hutch"], 1_000);
    const books = emptyBooks();
    expect(recordFact(books, ledger.facts[0]!)).toBeNull();
    expect(foldsLast(books, ledger.facts[1]!)).toBe(false);
    expect(() => recordFact(books, ledger.facts[1]!)).toThrow("does not fold last");
    expect(() => recordFact(books, ledger.facts[0]!)).toThrow("does not fold last");
  });

  it("tells what changed since it was last asked, each once", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-03", ["desk"], 1_000);
    ledger.buy("2026-05-03", ["hutch"], 1_000);
    ledger.add("loan", "2026-05-03", { amount: 1_000, data: { loan: "loan", rate: "5" } });
    ledger.add("list", "2026-05-04", { pieces: [2], amount: 9_000, data: {} });
    ledger.add("finish", "2026-05-04", { pieces: [2], data: {} });
    ledger.add("sell", "2026-05-04", { pieces: [7], amount: 9_000, data: {} });
    const books = emptyBooks();
    for (const fact of ledger.facts.slice(0, 3)) recordFact(books, fact);
    expect(books.takeChanges()).toEqual({ pieces: [1, 2], loans: ["loan"], facts: [1, 2, 3] });
    for (const fact of ledger.facts.slice(3)) recordFact(books, fact);
    expect(books.takeChanges()).toEqual({ pieces: [2], loans: [], facts: [4, 5] });
    expect(books.takeChanges()).toEqual({ pieces: [], loans: [], facts: [] });
    expect(books.story.get(2)).toEqual([2, 4, 5]);
  });

  it("a fact that names a piece twice is a bug and throws", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-03", ["desk"], 1_000);
    ledger.add("finish", "2026-05-04", { pieces: [1, 1], data: {} });
    expect(() => ledger.books()).toThrow("names a piece twice");
  });

  const tips = new Ledger().add("income", "2026-05-01", { amount: 5, data: { stream: "tips" } });

  it("legs that do not sum to zero throw", () => {
    const oneLeg = () =>
      emptyBooks().record(tips, (books) => {
        books.post("cash", 5);
        return null;
      });
    expect(oneLeg).toThrow("sum to 5");
  });

  it("rules that post and then refuse, or post outside of a fact, are a bug and throw", () => {
    const afterwards = () =>
      emptyBooks().record(tips, (books) => {
        books.post("cash", 5);
        return { kind: "no loan" };
      });
    expect(afterwards).toThrow("posted and refused");
    expect(() => emptyBooks().post("cash", 5)).toThrow("no fact in hand");
  });

  it("rules that change what is not there are a bug and throw", () => {
    expect(() => emptyBooks().piece(9)).toThrow("no piece 9");
    expect(() => emptyBooks().loan("grad")).toThrow('no loan "grad"');
  });

  it("a fact of a kind that no verb has is a bug and throws", () => {
    const fact = { ...tips, kind: "wish" } as unknown as Fact;
    expect(() => foldFacts([fact])).toThrow("no rules for facts of kind wish");
  });
});

describe("the data of facts", () => {
  it.each<[FactKind, unknown, unknown]>([
    ["buy", { made: [{ name: "desk", traits: ["oak"] }], source: "curb" }, { made: [] }],
    ["spend", { what: "paint", category: "materials" }, { what: "paint", category: "paint" }],
    ["work", { minutes: 30 }, { minutes: 1.5 }],
    ["start", {}, { what: "x" }],
    ["finish", {}, { what: "x" }],
    ["list", { place: "porch" }, { place: "" }],
    ["reprice", { cut: true }, { cut: false }],
    ["hold", { until: "2026-05-31" }, { until: "2026-02-30" }],
    ["fallthrough", { kept: true }, { kept: 3 }],
    ["sell", { fee: 5, deposit: "kept" }, { fee: -5 }],
    ["refund", { returned: true }, { returned: false }],
    ["retire", { how: "given" }, { how: "lost" }],
    ["income", { stream: "ads" }, {}],
    ["pay", { loan: "grad" }, { loan: 3 }],
    ["loan", { loan: "loan", rate: "5.5" }, { loan: "loan", rate: "5.5%" }],
    ["terms", { order: "prorata" }, { rate: "5" }],
    ["statement", { loan: "loan" }, {}],
    ["drive", { miles: "31.5" }, { miles: "-3" }],
    ["goal", { per: "year", pieces: 100 }, { per: "week" }],
    ["taxrate", { percent: "20" }, { percent: "1e2" }],
    ["sent", {}, { loan: "loan" }],
  ])("of kind %s are checked by its own shape", (kind, good, bad) => {
    expect(rulesOf(kind).data.safeParse(good).success).toBe(true);
    expect(rulesOf(kind).data.safeParse(bad).success).toBe(false);
  });
});

describe("a lot", () => {
  it("is all the pieces of one buy, with their sums", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-01", ["desk"], 500);
    ledger.buy("2026-05-01", ["chair", "chair", "table"], 10_000);
    expect(lotOf(ledger.books(), 1).map((piece) => piece.number)).toEqual([1]);
    expect(lotTotals(lotOf(ledger.books(), 3)).profit).toBeNull();
    ledger.add("sell", "2026-05-04", { pieces: [3], amount: 5_000, data: { fee: 100 } });
    ledger.add("drive", "2026-05-04", { pieces: [2, 4], data: { miles: "9" } });
    expect(lotTotals(lotOf(ledger.books(), 4))).toEqual({
      pieces: 3,
      cost: 10_000,
      fees: 100,
      proceeds: 5_000,
      profit: 5_000 - 100 - 3_333,
      minutes: 0,
      miles: "9",
    });
    expect(lotOf(ledger.books(), 9)).toEqual([]);
  });
});

/** What a step makes, and the processor's time that it takes, in milliseconds. */
function cpuOf<Made>(step: () => Made): { made: Made; ms: number } {
  const before = process.cpuUsage();
  const made = step();
  const { user, system } = process.cpuUsage(before);
  return { made, ms: (user + system) / 1000 };
}

describe("speed", () => {
  it("folds ten years, 25,000 facts, in a moment, and records one more in no time", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2016-01-01", { amount: 5_000_000, data: { loan: "loan", rate: "5.5" } });
    for (let flip = 0; ledger.facts.length < 25_000; flip++) {
      const day = new Date(Date.UTC(2016, 0, 2 + Math.floor(flip * 1.02))).toISOString().slice(0, 10);
      const pieces = ledger.buy(day, ["dresser"], 3_000);
      ledger.add("spend", day, { pieces, amount: 1_250, data: { what: "paint", category: "materials" } });
      ledger.add("work", day, { pieces, data: { minutes: 150 } });
      ledger.add("finish", day, { pieces, data: {} });
      ledger.add("list", day, { pieces, amount: 19_000, data: {} });
      ledger.add("sell", day, { pieces, amount: 18_000, data: { fee: 500 } });
      ledger.add("pay", day, { amount: 1_000, data: {} });
    }
    const last = ledger.facts.pop()!;
    const tenth = cpuOf(() => foldFacts(ledger.facts.slice(0, 2_500)));
    const whole = cpuOf(() => foldFacts(ledger.facts));
    const folded = whole.made;
    if (folded.kind === "impossible") throw new Error(JSON.stringify(folded.problem));
    const one = cpuOf(() => recordFact(folded.books, last));
    expect(one.made).toBeNull();
    console.log(
      `fold of 25,000 facts: ${whole.ms.toFixed(0)} ms of the processor; one more: ${one.ms.toFixed(1)} ms`,
    );
    // By the processor's time and beside a tenth of it, so that no load counts: a square would be a hundred times.
    expect(whole.ms).toBeLessThan(Math.max(tenth.ms, 20) * 40);
    expect(one.ms).toBeLessThan(Math.max(tenth.ms, 50));
  });
});
