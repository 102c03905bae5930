import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, describe, expect, test } from "vitest";
import { examine, examineFile } from "../../db/doctor.ts";
import { addNote, buy, clearLedgers, dataDirectory, ledgerWithOwner, list, record, sell } from "./ledgers.ts";

afterEach(clearLedgers);

/** A ledger with a loan and two pieces, one of them sold, closed. */
function filledLedger(): { directory: string; path: string } {
  const { ledger, directory } = ledgerWithOwner();
  record(ledger, buy(ledger, 3000));
  record(ledger, buy(ledger, 1800, "2026-05-04", "nightstand"));
  record(ledger, list(1, 19000), sell(1, 17000));
  const loan = { loan: "loan", rate: "5.5" };
  record(ledger, { kind: "loan", day: "2026-05-01", pieces: [], amount: 1_425_000, data: loan });
  ledger.transaction(() => ledger.outbox.queue({ chat: "a", body: { kind: "text", reply: { text: "ok" } } }));
  ledger.close();
  return { directory, path: join(directory, "ledger.sqlite") };
}

/** Changes a closed ledger behind its back, as with a database browser: no keys, no checks, no triggers. */
function tamper(path: string, statement: string): void {
  const sqlite = new Database(path);
  sqlite.pragma("foreign_keys = 0");
  sqlite.pragma("ignore_check_constraints = 1");
  for (const table of ["facts", "fact_pieces", "voids"]) {
    sqlite.exec(`drop trigger ${table}_kept; drop trigger ${table}_fixed`);
  }
  sqlite.exec(statement);
  sqlite.close();
}

describe("the doctor", () => {
  test("finds nothing wrong with a good ledger, and says nothing of one that is not there", () => {
    const { directory } = filledLedger();
    expect(examine(directory)).toEqual({
      findings: [],
      counts: { notes: 4, facts: 5, standing: 5, pieces: 2 },
    });
    expect(examine(dataDirectory())).toBeNull();
  });

  test("examines a ledger that is in use", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    ledger.transaction(() => {
      ledger.record({ note: addNote(ledger), author: 1, facts: [buy(ledger, 1800)] });
      expect(examine(directory)).toMatchObject({ findings: [], counts: { facts: 1 } });
    });
    expect(examine(directory)).toMatchObject({ findings: [], counts: { facts: 2 } });
  });

  test.each([
    ["another amount on a fact", "update facts set amount = 3100 where id = 1", "rebuild", "piece #1"],
    ["another price on a piece", "update pieces set price = 1 where number = 2", "rebuild", "piece #2"],
    [
      "a piece too many",
      "insert into pieces select 9, name, traits, lot, `set`, source, bought, started, finished, listed, list_price, first_list_price, first_listed, hold_since, hold_buyer, hold_until, sold, gone, gone_on, price, materials, fees, deposit, deposits_kept, sales, refunds, minutes, miles, owed, hold_agreed from pieces where number = 2",
      "rebuild",
      "piece #9",
    ],
    [
      "a price that nobody agreed on",
      "update pieces set hold_agreed = 100 where number = 2",
      "rebuild",
      "piece #2",
    ],
    ["a piece too few", "delete from pieces where number = 2", "rebuild", "piece #2"],
    ["another balance on a loan", "update loans set principal = principal - 1", "rebuild", 'loan "loan"'],
    [
      "a posting that does not balance",
      "update postings set cents = cents + 1 where fact = 1 and leg = 0",
      "balance",
      "fact 1 sum to",
    ],
    [
      "a posting moved to another account",
      "update postings set account = 'overhead' where fact = 1 and leg = 0",
      "rebuild",
      "postings of fact 1",
    ],
    ["a void that no message made", "insert into voids values (2, 2, 1, 0)", "rebuild", "piece #2"],
    [
      "a fact moved after what depends on it",
      "update facts set day = '2026-06-01' where id = 1",
      "history",
      "cannot stand",
    ],
    ["a fact gone with a piece in use", "delete from facts where id = 1", "links", "fact_pieces"],
    ["data that is not JSON", "update facts set data = '{' where id = 1", "stored data", "fact 1"],
    ["data of another shape", `update facts set data = '{"made":7}' where id = 1`, "stored data", "fact 1"],
    ["an amount with a fraction", "update facts set amount = 30.5 where id = 1", "stored data", "fact 1"],
    ["a kind that nobody knows", "update facts set kind = 'song' where id = 5", "stored data", "fact 5"],
    ["a reply that is not JSON", "update outbox set body = 'x'", "stored data", "outbox"],
    ["a fact of a note that is gone", "delete from notes where id = 1", "links", "facts"],
  ])("finds %s", (_, statement, check, detail) => {
    const { directory, path } = filledLedger();
    tamper(
      path,
      statement.startsWith("delete from notes") ? `drop trigger notes_kept; ${statement}` : statement,
    );
    const found = examine(directory)?.findings.filter((finding) => finding.check === check) ?? [];
    expect(found.map((finding) => finding.detail).join("\n")).toContain(detail);
  });

  test("finds pages that were overwritten", () => {
    const { path } = filledLedger();
    const bytes = readFileSync(path);
    bytes.fill(0xa5, 4096 * 3 + 100, 4096 * 9);
    writeFileSync(path, bytes);
    expect(examineFile(path).findings.length).toBeGreaterThan(0);
  });

  test("finds a file cut short, and one that is no database", () => {
    const { path } = filledLedger();
    const cut = `${path}.cut`;
    copyFileSync(path, cut);
    writeFileSync(cut, readFileSync(path).subarray(0, 4096 * 5));
    expect(examineFile(cut).findings[0]?.check).toMatch(/file|integrity/);
    writeFileSync(cut, "words");
    expect(examineFile(cut).findings).toMatchObject([{ check: "file" }]);
  });

  test("says so where the facts cannot even be folded", () => {
    const { path } = filledLedger();
    // No note gives a negative price: folding it throws, and the doctor must not.
    tamper(path, "update facts set amount = -5 where id = 3");
    expect(examineFile(path).findings).toMatchObject([{ check: "history" }]);
  });
});
