import Database from "better-sqlite3";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { rowsOf } from "../../db/derived.ts";
import { examineFile } from "../../db/doctor.ts";
import type { Ledger } from "../../db/ledger.ts";
import { buy, clearLedgers, ledgerWithOwner, list, opensLedger, record, sell } from "./ledgers.ts";

/** Statements until the fault, counted down at each; after it either one fails or all do, until it is mended. */
const fault = { after: Number.POSITIVE_INFINITY, isLasting: false };
const RUNS = new Set(["run", "get", "all", "iterate"]);
const prepare = Database.prototype.prepare;

function isFailing(): boolean {
  fault.after -= 1;
  return fault.after === 0 || (fault.isLasting && fault.after < 0);
}

/** Stands before a statement, and before what `raw` and `pluck` give, which is the statement itself. */
function failing<T extends object>(statement: T): T {
  const stand: T = new Proxy(statement, {
    get(target, name) {
      const value = Reflect.get(target, name);
      if (typeof value !== "function") return value;
      return (...args: unknown[]) => {
        if (RUNS.has(String(name)) && isFailing()) throw new Error("disk I/O error (made for the test)");
        const result = value.apply(target, args);
        return result === target ? stand : result;
      };
    },
  });
  return stand;
}

beforeAll(() => {
  Database.prototype.prepare = function (this: Database.Database, source: string) {
    return failing(prepare.call(this, source));
  } as typeof prepare;
});
afterAll(() => {
  Database.prototype.prepare = prepare;
});
afterEach(() => {
  fault.after = Number.POSITIVE_INFINITY;
  clearLedgers();
});

/** A whole message: seen, stored, recorded, amended, asked about and answered, in one transaction. */
function handle(ledger: Ledger): void {
  ledger.transaction(() => {
    if (!ledger.claimUpdate("update 9")) return;
    const note = ledger.addNote({ chat: "home", message: "9", text: "…", author: 1, said: 9, handled: 9 });
    ledger.record({ note, author: 1, facts: [buy(ledger, 1800, "2026-05-12"), sell(1, 9000, "2026-05-12")] });
    ledger.record({ note, author: 1, facts: [list(1, 12000, "2026-05-04")] });
    const [fact] = ledger.standingFactsOf(note);
    if (!fact) throw new Error("nothing stands");
    ledger.amend({
      note,
      author: 1,
      voids: [fact.id],
      facts: [{ fact: list(1, 11000, "2026-05-04"), replaces: fact.id }],
    });
    ledger.setNoteState(note, "recorded");
    ledger.outbox.queue({ chat: "home", about: note, body: { kind: "text", reply: { text: "Sold" } } });
  });
}

function contentsOf(ledger: Ledger): string {
  const tables = ["notes", "facts", "fact_pieces", "voids", "pieces", "postings", "seen_updates", "outbox"];
  return JSON.stringify(
    tables.map((table) => ledger.connection.sqlite.prepare(`select * from ${table}`).all()),
  );
}

describe.each([
  ["once", false],
  ["once and ever after", true],
])("a statement that fails %s", (_, isLasting) => {
  test("leaves nothing of its message, whichever it is, and the message can come again", () => {
    let faults = 0;
    for (let nth = 1; ; nth += 1) {
      const { ledger, directory } = ledgerWithOwner();
      record(ledger, buy(ledger, 3000));
      const before = contentsOf(ledger);
      const rows = JSON.stringify([...rowsOf(ledger.books).postings]);
      Object.assign(fault, { after: nth, isLasting });
      let failed = false;
      try {
        handle(ledger);
      } catch (error) {
        expect(String(error)).toContain("made for the test");
        failed = true;
      }
      const isClean = fault.after > 0;
      fault.after = Number.POSITIVE_INFINITY;
      expect(failed).toBe(!isClean);
      if (failed) {
        faults += 1;
        expect(contentsOf(ledger)).toBe(before);
        expect(JSON.stringify([...rowsOf(ledger.books).postings])).toBe(rows);
        expect(ledger.nextPiece).toBe(2);
        handle(ledger);
      }
      expect(ledger.books.pieces.get(1)).toMatchObject({ sales: 9000, listPrice: 11000 });
      const after = contentsOf(ledger);
      handle(ledger);
      expect(contentsOf(ledger)).toBe(after);
      expect(examineFile(ledger.connection.path).findings).toEqual([]);
      ledger.close();
      expect(opensLedger(directory).nextPiece).toBe(3);
      clearLedgers();
      if (isClean) break;
    }
    expect(faults).toBeGreaterThan(20);
  });
});

test("a full disk leaves nothing of the message that met it", () => {
  const { ledger } = ledgerWithOwner();
  const { sqlite } = ledger.connection;
  let notes = 0;
  sqlite.pragma(`max_page_count = ${Number(sqlite.pragma("page_count", { simple: true })) + 2}`);
  let before = "";
  const fill = () => {
    for (; notes < 2000; notes += 1) {
      before = contentsOf(ledger);
      record(ledger, buy(ledger, 3000));
    }
  };
  expect(fill).toThrow(/full/);
  expect(contentsOf(ledger)).toBe(before);
  expect(ledger.books.pieces.size).toBe(notes);
  sqlite.pragma("max_page_count = 1000000");
  expect(record(ledger, buy(ledger, 3000)).kind).toBe("recorded");
  expect(examineFile(ledger.connection.path).findings).toEqual([]);
});
