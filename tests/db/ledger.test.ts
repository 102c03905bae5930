import fc from "fast-check";
import { afterEach, describe, expect, test } from "vitest";
import type { Fact, NewFact } from "../../core/books/facts.ts";
import { rowsOf } from "../../db/derived.ts";
import { examineFile } from "../../db/doctor.ts";
import type { Ledger, Recorded } from "../../db/ledger.ts";
import { runsOf } from "../runs.ts";
import { addNote, buy, clearLedgers, ledgerWithOwner, list, opensLedger, record, sell } from "./ledgers.ts";

afterEach(clearLedgers);

function recorded(result: Recorded): Fact[] {
  if (result.kind !== "recorded") throw new Error(JSON.stringify(result));
  return result.facts;
}

function amend(
  ledger: Ledger,
  voids: number[],
  facts: { fact: NewFact; replaces?: number }[] = [],
): Recorded {
  return ledger.transaction(() => ledger.amend({ note: addNote(ledger), author: 1, voids, facts }));
}

/** Everything the file holds of the history and what is derived from it. */
function contentsOf(ledger: Ledger): unknown {
  const tables = ["notes", "facts", "fact_pieces", "voids", "pieces", "postings", "loans"];
  return tables.map((table) => ledger.connection.sqlite.prepare(`select * from ${table}`).all());
}

describe("recording", () => {
  test("gives ids, places and the note, and stores what the books say", () => {
    const { ledger } = ledgerWithOwner();
    const facts = recorded(record(ledger, buy(ledger, 3000), list(1, 19000)));
    expect(facts.map(({ id, place, note, root, author }) => ({ id, place, note, root, author }))).toEqual([
      { id: 1, place: 1, note: 1, root: 1, author: 1 },
      { id: 2, place: 2, note: 1, root: 1, author: 1 },
    ]);
    expect(ledger.books.pieces.get(1)).toMatchObject({ price: 3000, listPrice: 19000 });
    const { sqlite, path } = ledger.connection;
    expect(sqlite.prepare("select price, list_price from pieces").get()).toEqual({
      price: 3000,
      list_price: 19000,
    });
    expect(examineFile(path).findings).toEqual([]);
  });

  test("gives the same books when the file is opened again", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000), list(1, 19000), sell(1, 17000));
    const before = rowsOf(ledger.books);
    const facts = [...ledger.books.facts];
    ledger.close();
    const again = opensLedger(directory);
    expect(rowsOf(again.books)).toEqual(before);
    expect(again.books.facts).toEqual(facts);
    expect(again.nextPiece).toBe(2);
  });

  test("puts a back-dated fact in its day's place", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000, "2026-05-03"));
    record(ledger, buy(ledger, 1800, "2026-05-01"));
    record(ledger, list(1, 19000, "2026-05-04"));
    recorded(record(ledger, { kind: "reprice", day: "2026-05-05", pieces: [1], amount: 16000, data: {} }));
    recorded(record(ledger, list(2, 9000, "2026-05-02")));
    expect(ledger.books.facts.map(({ id }) => id)).toEqual([2, 5, 1, 3, 4]);
    expect(examineFile(ledger.connection.path).findings).toEqual([]);
  });

  test("of several facts writes all or none", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const result = record(ledger, list(1, 19000), sell(7, 500));
    expect(result).toMatchObject({ kind: "impossible", problem: { kind: "no such piece", number: 7 } });
    expect(ledger.books.pieces.get(1)?.listPrice).toBeNull();
    expect(ledger.books.facts).toHaveLength(1);
    expect(examineFile(ledger.connection.path)).toMatchObject({
      findings: [],
      counts: { facts: 1, notes: 2 },
    });
  });

  test("names the later fact that a back-dated one makes impossible", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    record(ledger, sell(1, 17000, "2026-05-10"));
    const result = record(ledger, { kind: "retire", day: "2026-05-05", pieces: [1], data: { how: "kept" } });
    expect(result).toMatchObject({ kind: "impossible", fact: { id: 2 }, problem: { kind: "piece gone" } });
    expect(ledger.books.pieces.get(1)?.gone).toBe("sold");
  });

  test("checks the data of a fact by its kind's shape before anything is written", () => {
    const { ledger } = ledgerWithOwner();
    const wrong = { ...buy(ledger, 3000), data: { made: [{ name: 7 }] } } as unknown as NewFact;
    expect(() => record(ledger, wrong)).toThrow();
    expect(ledger.books.facts).toHaveLength(0);
    expect(ledger.note(1)).toBeNull();
  });

  test("refuses an amount that is no whole number of cents", () => {
    const { ledger } = ledgerWithOwner();
    expect(() => record(ledger, buy(ledger, 30.5))).toThrow("whole cents");
    expect(ledger.books.facts).toHaveLength(0);
  });
});

describe("amending", () => {
  test("keeps place, root and number of what it replaces, and voids the old", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    record(ledger, buy(ledger, 1800));
    const replacement = { ...buy(ledger, 3500), pieces: [1] };
    const [fixed] = recorded(amend(ledger, [1], [{ fact: replacement, replaces: 1 }]));
    expect(fixed).toMatchObject({ id: 3, place: 1, root: 1, note: 3, pieces: [1] });
    expect(ledger.books.facts.map(({ id }) => id)).toEqual([3, 2]);
    expect(ledger.books.pieces.get(1)?.price).toBe(3500);
    expect(ledger.connection.sqlite.prepare("select * from voids").all()).toEqual([
      { fact: 1, note: 3, author: 1, voided: ledger.note(3)?.handled },
    ]);
    expect(ledger.factById(1)).toMatchObject({ amount: 3000 });
    expect(examineFile(ledger.connection.path).findings).toEqual([]);
  });

  test("keeps who did it, and the standing note it was recorded for, across a reading of the file", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, { ...buy(ledger, 3000), by: "dad" });
    record(ledger, { ...buy(ledger, 1800), repeat: 1 });
    amend(ledger, [2], [{ fact: { ...buy(ledger, 1900), pieces: [2] }, replaces: 2 }]);
    expect(ledger.factById(1)).toMatchObject({ by: "dad" });
    expect(ledger.factById(3)).toMatchObject({ amount: 1900, repeat: 1, place: 2 });
    expect(examineFile(ledger.connection.path).findings).toEqual([]);
  });

  test("undo takes the fix and the fact, and their pieces, and no number comes again", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    amend(ledger, [1], [{ fact: { ...buy(ledger, 3500), pieces: [1] }, replaces: 1 }]);
    const root = ledger.lastStanding(1)!;
    expect(root).toBe(1);
    recorded(
      amend(
        ledger,
        ledger.standingFactsOf(root).map(({ id }) => id),
      ),
    );
    expect(ledger.books.pieces.size).toBe(0);
    expect(ledger.lastStanding(1)).toBeNull();
    expect(ledger.nextPiece).toBe(2);
    expect(ledger.connection.sqlite.prepare("select count(*) from pieces").pluck().get()).toBe(0);
    expect(ledger.connection.sqlite.prepare("select count(*) from postings").pluck().get()).toBe(0);
  });

  test("gives further facts of the message the last voided one's place", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000), list(1, 19000, "2026-05-03"));
    record(ledger, buy(ledger, 500));
    const more = [
      { fact: { ...buy(ledger, 3100), pieces: [1] }, replaces: 1 },
      { fact: list(1, 20000, "2026-05-03") },
    ];
    const facts = recorded(amend(ledger, [1, 2], more));
    expect(facts.map(({ place, root }) => ({ place, root }))).toEqual([
      { place: 1, root: 1 },
      { place: 2, root: 1 },
    ]);
    expect(ledger.books.facts.map(({ id }) => id)).toEqual([4, 5, 3]);
  });

  test("is refused whole where a later fact could not stand, naming it", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    record(ledger, sell(1, 17000));
    const before = contentsOf(ledger);
    const result = ledger.transaction(() => ledger.amend({ note: 2, author: 1, voids: [1], facts: [] }));
    expect(result).toMatchObject({ kind: "impossible", fact: { id: 2, kind: "sell" } });
    expect(contentsOf(ledger)).toEqual(before);
    expect(ledger.books.pieces.get(1)?.sold).toBe("2026-05-10");
  });

  test("of what does not stand is a bug and throws", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    amend(ledger, [1]);
    expect(() => amend(ledger, [1])).toThrow("does not stand");
    expect(() => amend(ledger, [], [{ fact: buy(ledger, 1), replaces: 1 }])).toThrow("not voided");
  });

  test("an edited message is a further revision of the same note", () => {
    const { ledger } = ledgerWithOwner();
    const note = { chat: "home", message: "one", author: 1, said: 5, handled: 6 };
    const [first, second] = ledger.transaction(() => {
      const ids = [
        ledger.addNote({ ...note, text: "dresser" }),
        ledger.addNote({ ...note, text: "bought dresser 30" }),
      ];
      recorded(ledger.record({ note: ids[1]!, author: 1, facts: [buy(ledger, 3000)] }));
      return ids as [number, number];
    });
    expect(ledger.findNote("home", "one")).toMatchObject({ id: second, root: first, revision: 1 });
    expect(ledger.standingFactsOf(first)).toHaveLength(1);
    expect(ledger.lastStanding(1)).toBe(first);
  });

  test("undo goes by who said it", () => {
    const { ledger } = ledgerWithOwner();
    ledger.transaction(() => ledger.members.add({ user: "1002", name: "Sam", role: "member", joined: 0 }));
    record(ledger, buy(ledger, 3000));
    ledger.transaction(() => {
      const note = addNote(ledger, "bought bench 10", 2);
      ledger.record({ note, author: 2, facts: [buy(ledger, 1000)] });
    });
    expect([ledger.lastStanding(1), ledger.lastStanding(2), ledger.lastStanding(3)]).toEqual([1, 2, null]);
  });
});

describe("a transaction", () => {
  test("that throws leaves file and books as they were", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const before = contentsOf(ledger);
    const work = () => {
      ledger.record({ note: addNote(ledger), author: 1, facts: [list(1, 19000), buy(ledger, 900)] });
      ledger.amend({ note: addNote(ledger), author: 1, voids: [2], facts: [] });
      throw new Error("the lamp fell over");
    };
    expect(() => ledger.transaction(work)).toThrow("the lamp fell over");
    expect(contentsOf(ledger)).toEqual(before);
    expect(ledger.books.pieces.get(1)?.listPrice).toBeNull();
    expect(ledger.nextPiece).toBe(2);
    expect(recorded(record(ledger, list(1, 18000)))[0]?.id).toBe(2);
  });

  test("is rolled back where a write failed, even if the error was caught inside", () => {
    const { ledger } = ledgerWithOwner();
    const work = () => {
      const note = addNote(ledger);
      try {
        ledger.record({ note, author: 99, facts: [buy(ledger, 3000)] });
      } catch {}
    };
    expect(() => ledger.transaction(work)).toThrow(/FOREIGN KEY/);
    expect(ledger.note(1)).toBeNull();
    expect(ledger.books.facts).toHaveLength(0);
  });

  test("is needed for writing, is never nested and never waits", () => {
    const { ledger } = ledgerWithOwner();
    expect(() => addNote(ledger)).toThrow("in a transaction only");
    expect(() => ledger.transaction(() => ledger.transaction(() => 1))).toThrow("open already");
    const waits = async () => {
      addNote(ledger);
    };
    expect(() => ledger.transaction(waits)).toThrow(/promise/i);
    expect(ledger.note(1)).toBeNull();
  });
});

describe("any history", () => {
  const day = fc.integer({ min: 1, max: 28 }).map((n) => `2026-05-${String(n).padStart(2, "0")}`);
  const step = fc.record({
    what: fc.constantFrom("buy", "list", "sell", "finish", "undo", "fix", "loan", "pay"),
    day,
    pick: fc.nat(20),
    amount: fc.integer({ min: 1, max: 90_000 }),
  });
  type Step = { what: string; day: string; pick: number; amount: number };

  function take(ledger: Ledger, { what, day: on, pick, amount }: Step): Recorded | null {
    const standing = ledger.books.facts[pick % Math.max(1, ledger.books.facts.length)];
    const piece = 1 + (pick % Math.max(1, ledger.nextPiece - 1));
    if (what === "undo") return standing ? amend(ledger, [standing.id]) : null;
    if (what === "fix") {
      if (!standing) return null;
      const { kind, day: stands, pieces, data, amount: old } = standing;
      const fact = { kind, day: stands, pieces, data, ...(old === undefined ? {} : { amount }) } as NewFact;
      return amend(ledger, [standing.id], [{ fact, replaces: standing.id }]);
    }
    if (what === "buy") return record(ledger, buy(ledger, amount, on));
    if (what === "list") return record(ledger, list(piece, amount, on));
    if (what === "sell") return record(ledger, sell(piece, amount, on));
    if (what === "finish") return record(ledger, { kind: "finish", day: on, pieces: [piece], data: {} });
    if (what === "loan") {
      const data = { loan: "loan", rate: "5.5" };
      return record(ledger, { kind: "loan", day: on, pieces: [], amount: amount * 10, data });
    }
    return record(ledger, { kind: "pay", day: on, pieces: [], amount, data: {} });
  }

  test("leaves what a rebuild gives, and a refusal changes nothing but the note", () => {
    let refusals = 0;
    const holds = (steps: Step[]) => {
      const { ledger, directory } = ledgerWithOwner();
      for (const each of steps) {
        const before = JSON.stringify([...ledger.books.facts]);
        const rows = rowsOf(ledger.books);
        if (take(ledger, each)?.kind !== "impossible") continue;
        refusals += 1;
        expect(JSON.stringify(ledger.books.facts)).toBe(before);
        expect(rowsOf(ledger.books)).toEqual(rows);
      }
      expect(examineFile(ledger.connection.path).findings).toEqual([]);
      const rows = rowsOf(ledger.books);
      ledger.close();
      const again = opensLedger(directory);
      expect(rowsOf(again.books)).toEqual(rows);
      clearLedgers();
    };
    fc.assert(fc.property(fc.array(step, { minLength: 5, maxLength: 25 }), holds), {
      seed: 20260509,
      numRuns: runsOf({ short: 20, long: 500 }),
    });
    expect(refusals).toBeGreaterThan(20);
  });
});
