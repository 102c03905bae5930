import { describe, expect, it } from "vitest";
import {
  booksBefore,
  booksThrough,
  booksWithout,
  type Change,
  changeFacts,
  working,
} from "../../../core/books/change.ts";
import { factsOf } from "../../../core/books/exchange.ts";
import type { Fact } from "../../../core/books/facts.ts";
import { type Folded, foldFacts } from "../../../core/books/fold.ts";
import type { BooksInHand, Changes } from "../../../core/books/hand.ts";
import { Ledger } from "../../books/ledger.ts";

function booksOf(folded: Folded): BooksInHand {
  if (folded.kind === "impossible") throw new Error(JSON.stringify(folded.problem));
  return folded.books;
}

/** Makes a change; the books must be those of a whole fold, their pieces in its order. Gives what it says changed. */
function change(books: BooksInHand, { removed = [], added = [] }: Partial<Change>): Changes {
  const whole = booksOf(foldFacts([...books.facts.filter((fact) => !removed.includes(fact)), ...added]));
  const changed = changeFacts(books, { removed, added });
  if (changed.kind === "impossible") throw new Error(JSON.stringify(changed.problem));
  expect(books).toEqual(whole);
  expect(numbersOf(books)).toEqual(numbersOf(whole));
  return changed.changes;
}

const numbersOf = (books: BooksInHand): number[] => [...books.pieces.keys()];

/** A fact in the place of another, as a fix or an edit puts it there. */
const inPlaceOf = (fact: Fact, more: Partial<Fact> & { id: number }): Fact =>
  ({ ...fact, ...more }) as unknown as Fact;

/** A flip of May: a desk (#1) for 30.00, sanded, 12.00 of paint, work on it and the hutch (#2), sold for 90.00. */
function flip() {
  const ledger = new Ledger();
  const desk = ledger.buy("2026-05-01", ["desk"], 3_000);
  ledger.buy("2026-05-01", ["hutch"], 2_000);
  const started = ledger.add("start", "2026-05-02", { pieces: desk });
  const paint = { what: "paint", category: "materials" } as const;
  const painted = ledger.add("spend", "2026-05-03", { pieces: desk, amount: 1_200, data: paint });
  ledger.add("work", "2026-05-04", { pieces: [1, 2], data: { minutes: 60 } });
  const sold = ledger.add("sell", "2026-05-10", { pieces: desk, amount: 9_000, data: {} });
  return { ledger, books: booksOf(foldFacts(ledger.facts)), started, painted, sold };
}

describe("what a change says is not the same any more", () => {
  it("is the piece, the fact taken out and the sale that stood on it, and neither its mate nor other facts", () => {
    const { books, painted, sold } = flip();
    expect(books.months.get("2026-05")).toMatchObject({ costOfSold: 4_200, cashOut: 6_200 });
    expect(change(books, { removed: [painted] })).toEqual({
      pieces: [1],
      loans: [],
      facts: [painted.id, sold.id],
      mayReplace: true,
    });
    expect(books.months.get("2026-05")).toMatchObject({ costOfSold: 3_000, cashOut: 5_000 });
  });

  it("is the piece alone where nothing was posted", () => {
    const { books, started } = flip();
    expect(change(books, { removed: [started] })).toMatchObject({ pieces: [1], facts: [] });
    expect(change(books, { added: [started] })).toMatchObject({ pieces: [1], facts: [] });
  });

  it("is the loan that a late payment went to, and not the other", () => {
    const ledger = new Ledger();
    ledger.add("loan", "2026-05-01", { amount: 100_000, data: { loan: "van", rate: "0" } });
    ledger.add("loan", "2026-05-01", { amount: 100_000, data: { loan: "grad", rate: "0" } });
    ledger.add("goal", "2026-05-20", { amount: 5_000, data: { per: "month" } });
    const books = booksOf(foldFacts(ledger.facts));
    const paid = ledger.add("pay", "2026-05-10", { amount: 2_500, data: { loan: "grad" } });
    expect(change(books, { added: [paid] })).toMatchObject({ pieces: [], loans: ["grad"], facts: [paid.id] });
    expect(books.loans.get("grad")!.principal).toBe(97_500);
    expect(books.goals).toHaveLength(1);
  });

  it("is a piece flipped, though a free one given for nothing posts nothing", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-01", ["desk"], 0);
    const books = booksOf(foldFacts(ledger.facts));
    const sold = ledger.add("sell", "2026-05-09", { pieces: [1], amount: 0, data: {} });
    expect(change(books, { added: [sold] })).toMatchObject({ pieces: [1], facts: [] });
    expect(books.months.get("2026-05")!.flipped).toBe(1);
    change(books, { removed: [sold] });
    expect(books.months.size).toBe(0);
  });

  it("leaves all as it was where a later fact leans on what was taken out", () => {
    const { ledger, books, sold } = flip();
    const before = booksOf(foldFacts(ledger.facts));
    expect(changeFacts(books, { removed: [ledger.facts[0]!], added: [] })).toMatchObject({
      kind: "impossible",
      fact: { id: 3 },
      problem: { kind: "no such piece", number: 1 },
    });
    const early = inPlaceOf(sold, { id: 20, day: "2026-04-30" });
    expect(changeFacts(books, { removed: [sold], added: [early] })).toMatchObject({
      fact: { id: 20 },
      problem: { kind: "not bought yet", number: 1, bought: "2026-05-01" },
    });
    expect(books).toEqual(before);
  });
});

describe("a change folds anew", () => {
  const folds = (books: BooksInHand, of: Partial<Change>) =>
    [...working(books, { removed: [], added: [], ...of })].length;

  it("what hangs together with it by its pieces, and nothing else", () => {
    const { ledger, books, painted } = flip();
    ledger.buy("2026-05-05", ["lamp"], 500);
    ledger.add("loan", "2026-05-01", { amount: 100_000, data: { loan: "van", rate: "0" } });
    const more = booksOf(foldFacts(ledger.facts));
    // Desk and hutch were worked on together: all their facts but the one taken out.
    expect(folds(more, { removed: [painted] })).toBe(5);
    expect(folds(books, { removed: [painted] })).toBe(5);
    expect(folds(more, { removed: [ledger.facts[6]!] })).toBe(0);
  });

  it("of what names no piece the loans and what stands for all, and no overhead", () => {
    const { ledger } = flip();
    const overhead = { amount: 700, data: { what: "tape", category: "materials" } } as const;
    const late = ledger.add("spend", "2026-05-06", { ...overhead });
    ledger.add("spend", "2026-05-07", { ...overhead });
    ledger.add("loan", "2026-05-01", { amount: 100_000, data: { loan: "van", rate: "0" } });
    const paid = ledger.add("pay", "2026-05-09", { amount: 700, data: {} });
    const books = booksOf(foldFacts(ledger.facts));
    expect(folds(books, { removed: [late] })).toBe(0);
    expect(folds(books, { removed: [paid] })).toBe(1);
    expect(folds(books, { removed: [paid], added: [inPlaceOf(paid, { id: 30 })] })).toBe(2);
  });
});

describe("the months of changed books", () => {
  it("have no row where nothing is posted any more, whatever stands before, in or after them", () => {
    const { ledger } = flip();
    const tape = { amount: 700, data: { what: "tape", category: "materials" } } as const;
    const june = ledger.add("spend", "2026-06-03", { ...tape });
    ledger.add("finish", "2026-06-02", { pieces: [2] });
    ledger.add("finish", "2026-06-20", { pieces: [2] });
    ledger.add("spend", "2026-07-01", { ...tape });
    const books = booksOf(foldFacts(ledger.facts));
    expect(books.months.has("2026-06")).toBe(true);
    change(books, { removed: [june] });
    expect([...books.months.keys()].sort()).toEqual(["2026-05", "2026-07"]);
  });

  it("keep what they declare as sent, a loss as well as a profit, with nothing posted for it", () => {
    const ledger = new Ledger();
    const profit = ledger.add("sent", "2026-05-31", { amount: 4_000, data: {} });
    const tape = ledger.add("spend", "2026-05-02", {
      amount: 700,
      data: { what: "tape", category: "materials" },
    });
    const books = booksOf(foldFacts(ledger.facts));
    const loss = ledger.add("sent", "2026-05-30", { amount: 1_500, data: { loss: true } });
    expect(change(books, { added: [loss] })).toMatchObject({ facts: [] });
    expect(books.months.get("2026-05")!.declaredSent).toBe(2_500);
    change(books, { removed: [tape] });
    expect(books.months.get("2026-05")!.declaredSent).toBe(2_500);
    change(books, { removed: [profit] });
    expect(books.months.get("2026-05")!.declaredSent).toBe(-1_500);
    expect(books.declaredSent).toBe(-1_500);
  });
});

describe("the pieces of changed books stand in the order in which they came onto them", () => {
  /** Books with pieces #1, #2, … bought on these days of May. */
  function bought(...days: number[]) {
    const ledger = new Ledger();
    const buy = (day: number) => {
      ledger.buy(`2026-05-${String(day).padStart(2, "0")}`, ["desk"], 1_000);
      return ledger.facts.at(-1)!;
    };
    const facts = days.map(buy);
    return { buy, facts, books: booksOf(foldFacts(ledger.facts)) };
  }
  const onDay = (fact: Fact, day: string) => inPlaceOf(fact, { id: fact.id + 1_000, day: `2026-05-${day}` });

  it.each<[string, number, number[]]>([
    ["first", 1, [4, 1, 2, 3]],
    ["between", 5, [1, 2, 4, 3]],
    ["last", 20, [1, 2, 3, 4]],
  ])("a late one comes %s", (_where, on, order) => {
    const { buy, books } = bought(2, 4, 10);
    change(books, { added: [buy(on)] });
    expect(numbersOf(books)).toEqual(order);
  });

  it("several new ones by their days, however they are given, onto empty books as well", () => {
    const { buy, books } = bought(2);
    change(books, { added: [buy(20), buy(15)] });
    expect(numbersOf(books)).toEqual([1, 3, 2]);
    const empty = booksOf(foldFacts([]));
    change(empty, { added: [buy(8), buy(7)] });
    expect(numbersOf(empty)).toEqual([5, 4]);
  });

  it("one that is taken out leaves the others, and a new one in its stead goes by its own day", () => {
    const { buy, facts, books } = bought(2, 4, 10);
    change(books, { removed: [facts[1]!] });
    expect(numbersOf(books)).toEqual([1, 3]);
    change(books, { removed: [facts[2]!], added: [buy(1)] });
    expect(numbersOf(books)).toEqual([4, 1]);
  });

  it("one with another day moves, forward or back, beside a new one too", () => {
    const { buy, facts, books } = bought(2, 4, 10);
    const later = onDay(facts[1]!, "20");
    change(books, { removed: [facts[1]!], added: [later] });
    expect(numbersOf(books)).toEqual([1, 3, 2]);
    const first = onDay(facts[2]!, "01");
    change(books, { removed: [facts[2]!], added: [first, buy(15)] });
    expect(numbersOf(books)).toEqual([3, 1, 4, 2]);
    change(books, { removed: [later, first], added: [facts[1]!, facts[2]!] });
    expect(numbersOf(books)).toEqual([1, 2, 3, 4]);
  });

  it("those of one buy stand as it names them", () => {
    const ledger = new Ledger();
    ledger.buy("2026-05-02", ["desk", "lamp"], 1_000);
    const books = booksOf(foldFacts(ledger.facts));
    change(books, { removed: ledger.facts, added: [inPlaceOf(ledger.facts[0]!, { id: 7, pieces: [2, 1] })] });
    expect(numbersOf(books)).toEqual([2, 1]);
  });

  it("those of one place, where a message was edited into several, by the age of what stands there", () => {
    const { facts, books } = bought(2, 2, 2, 4);
    const [desk, lamp, chair] = facts
      .slice(0, 3)
      .map((fact, index) => inPlaceOf(fact, { id: 10 * (index + 1), place: 1 }));
    change(books, { removed: facts.slice(0, 3), added: [desk!, lamp!, chair!] });
    expect(numbersOf(books)).toEqual([1, 2, 3, 4]);
    const between = inPlaceOf(desk!, { id: 25 });
    change(books, { removed: [desk!], added: [between] });
    expect(numbersOf(books)).toEqual([2, 1, 3, 4]);
    const last = inPlaceOf(between, { id: 35 });
    change(books, { removed: [between], added: [last] });
    expect(numbersOf(books)).toEqual([2, 3, 1, 4]);
    change(books, { removed: [last], added: [desk!] });
    expect(numbersOf(books)).toEqual([1, 2, 3, 4]);
  });

  it("a hundred at once as one by one", () => {
    const { buy, facts, books } = bought(2, 30);
    const many = Array.from({ length: 100 }, (_, index) => buy(29 - (index % 20)));
    change(books, { added: many });
    expect(numbersOf(books)[0]).toBe(1);
    expect(numbersOf(books).at(-1)).toBe(2);
    const late = many.map((fact) => onDay(fact, "31"));
    change(books, { removed: [...many, facts[0]!], added: late });
    expect(numbersOf(books)).toEqual([2, ...many.flatMap((fact) => fact.pieces)]);
    change(books, { removed: late });
    expect(numbersOf(books)).toEqual([2]);
  });
});

describe("books of another time", () => {
  const { books, painted, sold, started } = flip();
  const idsOf = (folded: Folded) => booksOf(folded).facts.map((fact) => fact.id);

  it("hold the facts through a day, that day's as well", () => {
    for (const [day, last] of [
      ["2026-04-30", 0],
      ["2026-05-02", 3],
      ["2026-05-04", 5],
      ["2026-05-09", 5],
      ["2026-05-10", 6],
    ] as const) {
      const then = booksThrough(books, day);
      expect(idsOf(then)).toEqual([1, 2, 3, 4, 5, 6].slice(0, last));
      expect(booksOf(then)).toEqual(booksOf(foldFacts(books.facts.slice(0, last))));
    }
  });

  it("hold what folds before a fact, and not the fact", () => {
    expect(idsOf(booksBefore(books, sold))).toEqual([1, 2, 3, 4, 5]);
    expect(idsOf(booksBefore(books, started))).toEqual([1, 2]);
    expect(idsOf(booksBefore(books, books.facts[0]!))).toEqual([]);
    expect(idsOf(booksBefore(books, inPlaceOf(sold, { id: 30, place: 30 })))).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it("are changed without the others, and are impossible without what a later fact leans on", () => {
    const without = booksOf(booksWithout(books, [painted]));
    expect(without.pieces.get(1)).toMatchObject({ materials: 0 });
    expect(without).toEqual(booksOf(foldFacts(books.facts.filter((fact) => fact !== painted))));
    expect(books.pieces.get(1)).toMatchObject({ materials: 1_200 });
    const impossible = { kind: "impossible", problem: { kind: "no such piece", number: 1 } };
    expect(booksWithout(books, [books.facts[0]!])).toMatchObject(impossible);
    expect(booksWithout(books, books.facts.slice(0, 4))).toMatchObject(impossible);
  });

  it("come of books that are only there to be read as well", () => {
    const { exactMiles, byId, flipped, ...read } = books;
    expect(booksOf(booksWithout(read, [painted]))).toEqual(booksOf(booksWithout(books, [painted])));
  });

  it("give the facts from one day through another, both counted", () => {
    const ids = (from: string, through: string) =>
      factsOf(books.facts, { from, through }).map((fact) => fact.id);
    expect(ids("2026-05-02", "2026-05-04")).toEqual([3, 4, 5]);
    expect(ids("2026-05-01", "2026-05-01")).toEqual([1, 2]);
    expect(ids("2026-05-05", "2026-05-09")).toEqual([]);
    expect(ids("2026-05-05", "2026-12-31")).toEqual([6]);
  });
});
