import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import fc from "fast-check";
import { afterEach, describe, expect, test } from "vitest";
import { addDays, lastDayOf, monthOf } from "../../core/calendar.ts";
import { backUp, daysKept } from "../../db/backup.ts";
import { listBackups } from "../../db/backups.ts";
import { examine, examineFile } from "../../db/doctor.ts";
import { openReader } from "../../db/open.ts";
import { restore } from "../../db/restore.ts";
import {
  buy,
  clearLedgers,
  dataDirectory,
  ledgerWithOwner,
  opensLedger,
  record,
  runs,
  sell,
} from "./ledgers.ts";

afterEach(clearLedgers);

function made(result: ReturnType<typeof backUp>): string {
  if (result.kind !== "made") throw new Error(result.why);
  return result.backup.path;
}

describe("a backup", () => {
  test("is a whole private ledger of its own, made while the bot writes", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const path = made(backUp(ledger.connection, directory, "2026-05-09"));
    record(ledger, sell(1, 9000));
    expect(examineFile(path)).toEqual({
      findings: [],
      counts: { notes: 1, facts: 1, standing: 1, pieces: 1 },
    });
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(statSync(join(directory, "backups")).mode & 0o777).toBe(0o700);
    expect(readdirSync(join(directory, "backups"))).toEqual(["ledger-2026-05-09.sqlite"]);
    expect(listBackups(directory).at(-1)).toEqual({ day: "2026-05-09", path });
  });

  test("can be made by a reader", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const opened = openReader(directory);
    if (opened.kind !== "open") throw new Error(JSON.stringify(opened));
    expect(backUp(opened.reader.connection, directory, "2026-05-09").kind).toBe("made");
    expect(() => opened.reader.connection.sqlite.exec("delete from settings")).toThrow(/readonly/);
    opened.reader.close();
  });

  test("of the same day takes the earlier one's place", () => {
    const { ledger, directory } = ledgerWithOwner();
    made(backUp(ledger.connection, directory, "2026-05-09"));
    record(ledger, buy(ledger, 3000));
    const path = made(backUp(ledger.connection, directory, "2026-05-09"));
    expect(examineFile(path).counts.facts).toBe(1);
    expect(listBackups(directory)).toHaveLength(1);
  });

  test("that is no good is not kept, and the earlier one is", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const path = made(backUp(ledger.connection, directory, "2026-05-09"));
    const before = readFileSync(path);
    ledger.connection.sqlite.exec("update postings set cents = cents + 1 where leg = 0");
    const result = backUp(ledger.connection, directory, "2026-05-09");
    expect(result).toEqual({ kind: "failed", why: expect.stringContaining("balance") });
    expect(readFileSync(path).equals(before)).toBe(true);
    expect(readdirSync(join(directory, "backups"))).toEqual(["ledger-2026-05-09.sqlite"]);
  });

  test("that cannot be written says why", () => {
    const { ledger, directory } = ledgerWithOwner();
    writeFileSync(join(directory, "backups"), "in the way");
    expect(backUp(ledger.connection, directory, "2026-05-09")).toMatchObject({ kind: "failed" });
  });

  test("killed half way leaves the earlier ones, and the next one is made all the same", async () => {
    const { ledger, directory } = ledgerWithOwner();
    for (let n = 0; n < 40; n += 1) record(ledger, buy(ledger, 3000));
    made(backUp(ledger.connection, directory, "2026-05-08"));
    for (const wait of [0, 15, 40, 90]) {
      const child = runs("copier", [directory]);
      await new Promise((resolve) => child.stdout?.once("data", resolve));
      await new Promise((resolve) => setTimeout(resolve, wait));
      child.kill("SIGKILL");
      await new Promise((resolve) => child.once("close", resolve));
      for (const { path } of listBackups(directory)) expect(examineFile(path).findings).toEqual([]);
    }
    const path = made(backUp(ledger.connection, directory, "2026-05-10"));
    expect(examineFile(path).counts.facts).toBe(40);
    expect(existsSync(join(directory, "backups", "ledger-2026-05-08.sqlite"))).toBe(true);
    expect(readdirSync(join(directory, "backups")).filter((name) => name.includes("unfinished"))).toEqual([]);
    ledger.close();
    const { kind } = restore({ directory, file: path, now: 0, today: "2026-05-31" });
    expect(kind).toBe("restored");
    expect(opensLedger(directory).books.pieces.size).toBe(40);
  });
});

describe("of the days' copies stay", () => {
  test("the last 14 days and the last copy of each of 12 months, over two years of nights", () => {
    let kept: string[] = [];
    let day = "2026-01-01";
    for (let night = 0; night < 730; night += 1, day = addDays(day, 1)) kept = daysKept([...kept, day]);
    const last = addDays(day, -1);
    expect(last).toBe("2027-12-31");
    const recent = Array.from({ length: 14 }, (_, n) => addDays(last, n - 13));
    const months = [
      "2027-01",
      "2027-02",
      "2027-03",
      "2027-04",
      "2027-05",
      "2027-06",
      "2027-07",
      "2027-08",
      "2027-09",
      "2027-10",
      "2027-11",
    ];
    expect(kept).toEqual([...months.map(lastDayOf), ...recent]);
  });

  test("the latest, always, and never more than 26", () => {
    const day = fc.integer({ min: 0, max: 900 }).map((n) => addDays("2026-01-01", n));
    const holds = (days: string[]) => {
      const kept = daysKept(days);
      expect(kept.length).toBeLessThanOrEqual(26);
      expect(kept.at(-1)).toBe([...days].sort().at(-1));
      const months = new Set(kept.map(monthOf));
      expect(months.size).toBeGreaterThan(0);
    };
    fc.assert(fc.property(fc.uniqueArray(day, { minLength: 1, maxLength: 80 }), holds), { seed: 7 });
  });
});

describe("restoring", () => {
  const wish = (directory: string, file: string) => ({ directory, file, now: 0, today: "2026-05-31" });

  test("puts the copy in place, keeps the replaced ledger and says what changed", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const file = made(backUp(ledger.connection, directory, "2026-05-09"));
    record(ledger, sell(1, 9000));
    ledger.close();
    const result = restore(wish(directory, file));
    expect(result).toEqual({
      kind: "restored",
      before: { notes: 2, standing: 2, pieces: 1, earmarked: 6000 },
      after: { notes: 1, standing: 1, pieces: 1, earmarked: 0 },
      kept: join(directory, "ledger-replaced-1970-01-01T00-00-00.sqlite"),
      carried: { out: [], joined: [], invitations: 0, lost: { notes: 1, since: expect.any(Number) } },
      members: ["Robin"],
    });
    expect(examine(directory)).toMatchObject({ findings: [], counts: { facts: 1 } });
    expect(examineFile(join(directory, "ledger-replaced-1970-01-01T00-00-00.sqlite"))).toMatchObject({
      findings: [],
      counts: { facts: 2 },
    });
    const again = opensLedger(directory);
    expect(again.books.pieces.get(1)?.sold).toBeNull();
    record(again, sell(1, 8000));
    expect(again.books.pieces.get(1)?.sales).toBe(8000);
  });

  test("needs the writer's place", () => {
    const { ledger, directory } = ledgerWithOwner();
    const file = made(backUp(ledger.connection, directory, "2026-05-09"));
    expect(restore(wish(directory, file))).toEqual({ kind: "locked" });
    expect(ledger.members.owner()?.name).toBe("Robin");
  });

  test("refuses a copy that is no good, and leaves the ledger alone", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    record(ledger, sell(1, 9000));
    const file = made(backUp(ledger.connection, directory, "2026-05-09"));
    ledger.close();
    const before = readFileSync(join(directory, "ledger.sqlite"));
    const copy = new Database(file);
    copy.exec("drop trigger facts_fixed; update facts set day = '2026-06-01' where id = 1");
    copy.close();
    expect(restore(wish(directory, file))).toMatchObject({
      kind: "refused",
      findings: [{ check: "history" }],
    });
    writeFileSync(file, "words");
    expect(restore(wish(directory, file))).toMatchObject({ kind: "refused", findings: [{ check: "file" }] });
    expect(restore(wish(directory, join(directory, "nowhere.sqlite")))).toEqual({ kind: "no such file" });
    expect(readFileSync(join(directory, "ledger.sqlite")).equals(before)).toBe(true);
    expect(readdirSync(directory).filter((name) => /replaced|restoring/.test(name))).toEqual([]);
  });

  test("rescues a ledger that is damaged, and keeps the damaged file", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const file = made(backUp(ledger.connection, directory, "2026-05-09"));
    ledger.close();
    writeFileSync(join(directory, "ledger.sqlite"), "coffee over the disk");
    const result = restore(wish(directory, file));
    expect(result).toMatchObject({ kind: "restored", before: null, after: { pieces: 1 } });
    expect(readFileSync((result as { kept: string }).kept, "utf8")).toBe("coffee over the disk");
    expect(opensLedger(directory).books.pieces.get(1)?.price).toBe(3000);
  });

  test("starts a directory that has no ledger yet", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const file = made(backUp(ledger.connection, directory, "2026-05-09"));
    const elsewhere = dataDirectory();
    expect(restore(wish(elsewhere, file))).toMatchObject({ kind: "restored", before: null, kept: null });
    expect(opensLedger(elsewhere).books.pieces.size).toBe(1);
  });

  test("writes anew what an earlier release derived otherwise", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const file = made(backUp(ledger.connection, directory, "2026-05-09"));
    ledger.close();
    const copy = new Database(file);
    copy.exec("update pieces set materials = 5; update postings set cents = cents + 1 where leg = 0");
    copy.close();
    expect(restore(wish(directory, file))).toMatchObject({ kind: "restored" });
    expect(examine(directory)?.findings).toEqual([]);
  });
});
