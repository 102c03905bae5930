import { execFileSync } from "node:child_process";
import { chmodSync, mkdirSync, readdirSync, rmSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, describe, expect, test } from "vitest";
import { createConversation } from "../../bot/conversation/conversation.ts";
import { makeFile } from "../../bot/files/make.ts";
import { join as joinHousehold } from "../../bot/members.ts";
import { notOpenedText } from "../../bot/not-opened.ts";
import { backUp } from "../../db/backup.ts";
import { listBackups } from "../../db/backups.ts";
import type { Ledger } from "../../db/ledger.ts";
import { openLedger } from "../../db/open.ts";
import { restore } from "../../db/restore.ts";
import {
  buy,
  clearLedgers,
  dataDirectory,
  ended,
  ledgerWithOwner,
  opensLedger,
  record,
  runsOnFullDisk,
  runsProgram,
  sell,
} from "./ledgers.ts";

afterEach(clearLedgers);

const wish = (directory: string, file: string) => ({ directory, file, now: Date.now(), today: "2026-05-31" });

function copyOf(ledger: Ledger, directory: string, day = "2026-05-09"): string {
  const made = backUp(ledger.connection, directory, day);
  if (made.kind !== "made") throw new Error(made.why);
  return made.backup.path;
}

/** A ledger with a purchase in its copy and a sale after it. */
function ledgerWithCopy(): { ledger: Ledger; directory: string; file: string } {
  const { ledger, directory } = ledgerWithOwner();
  record(ledger, buy(ledger, 3000));
  const file = copyOf(ledger, directory);
  record(ledger, sell(1, 9000));
  return { ledger, directory, file };
}

/** Everything in a folder, but for the lock. */
const inFolder = (directory: string) =>
  readdirSync(directory)
    .filter((name) => !name.startsWith("writer-lock") && !/-(?:wal|shm)$/.test(name))
    .sort();

describe("restore refuses what is no ledger", () => {
  const refusals: [string, (path: string) => void, RegExp][] = [
    ["an empty file", (path) => writeFileSync(path, ""), /empty/],
    ["a pipe", (path) => void execFileSync("mkfifo", [path]), /pipe/],
    ["a folder", (path) => void mkdirSync(path), /folder/],
    ["words", (path) => writeFileSync(path, "words ".repeat(999)), /database/],
    [
      "the file of another program",
      (path) => new Database(path).exec("create table recipes (name text)").close() && undefined,
      /no ledger/,
    ],
    [
      "a database with nothing in it",
      (path) => new Database(path).exec("create table t (a); drop table t").close() && undefined,
      /nothing in it/,
    ],
  ];

  test.each(refusals)("%s", (_, make, words) => {
    const { ledger, directory } = ledgerWithCopy();
    ledger.close();
    const file = join(directory, "candidate");
    make(file);
    const before = inFolder(directory);
    const result = restore(wish(directory, file));
    expect(result).toMatchObject({ kind: "refused", findings: [{ detail: expect.stringMatching(words) }] });
    expect(inFolder(directory)).toEqual(before);
    expect(opensLedger(directory).books.facts).toHaveLength(2);
  });

  test("a copy of a newer version", () => {
    const { ledger, directory, file } = ledgerWithCopy();
    ledger.close();
    const copy = new Database(file);
    copy.exec("insert into __drizzle_migrations (hash, created_at) values ('later', 9999999999999)");
    copy.close();
    expect(restore(wish(directory, file))).toMatchObject({
      kind: "refused",
      findings: [{ check: "schema", detail: expect.stringContaining("newer") }],
    });
  });

  test("a copy cut short, wherever", () => {
    const { ledger, directory, file } = ledgerWithCopy();
    ledger.close();
    const { size } = statSync(file);
    for (const part of [0.9, 0.5, 0.1, 0.01]) {
      truncateSync(file, Math.floor(size * part));
      expect(restore(wish(directory, file))).toMatchObject({ kind: "refused" });
    }
    expect(inFolder(directory)).toEqual(["backups", "ledger.sqlite"]);
  });
});

describe("restore into a folder that takes no files", () => {
  test("says so in one plain line, and leaves no half files", () => {
    const { ledger, directory, file } = ledgerWithCopy();
    ledger.close();
    const full = "/dev/full/never";
    expect(restore(wish(full, file))).toMatchObject({
      kind: "failed",
      why: expect.stringMatching(/cannot be|read/),
    });
    if (process.getuid?.() === 0) return;
    chmodSync(directory, 0o500);
    try {
      expect(restore(wish(directory, file))).toMatchObject({ kind: "failed" });
    } finally {
      chmodSync(directory, 0o700);
    }
    expect(inFolder(directory)).toEqual(["backups", "ledger.sqlite"]);
  });

  test("a disk that fills up half way leaves the ledger as it was", async () => {
    const { ledger, directory, file } = ledgerWithCopy();
    ledger.close();
    const program = runsOnFullDisk("restore", [file], { DATA_DIR: directory }, 40);
    const { out, err, code } = await ended(program);
    expect({ out, code }).toEqual({ out: "", code: 1 });
    expect(err.trim().split("\n")).toHaveLength(1);
    expect(inFolder(directory)).toEqual(["backups", "ledger.sqlite"]);
    expect(opensLedger(directory).books.facts).toHaveLength(2);
  });
});

describe("what a copy does not know is said and carried over", () => {
  test("somebody taken out after it stays out, and the owner is asked", () => {
    const { ledger, directory } = ledgerWithOwner();
    const kay = ledger.members.add({ user: "2002", name: "Kay", role: "member", joined: 1 });
    record(ledger, buy(ledger, 3000));
    const file = copyOf(ledger, directory);
    ledger.members.remove(kay, 5);
    ledger.members.add({ user: "3003", name: "Sam", role: "member", joined: 6 });
    record(ledger, sell(1, 9000));
    ledger.close();
    const result = restore(wish(directory, file));
    expect(result).toMatchObject({
      kind: "restored",
      carried: { out: ["Kay"], joined: ["Sam"], lost: { notes: 1 } },
      members: ["Robin"],
    });
    const again = opensLedger(directory);
    expect(again.members.byUser("2002")?.removed).not.toBeNull();
    const asked = again.outbox.headOf("1001");
    if (asked?.body.kind !== "text") throw new Error("nobody was asked");
    expect(asked.body.reply.text).toContain("Kay was taken out after it and stays out. Keep it so?");
    const [button] = asked.body.reply.buttons?.flat() ?? [];
    const silent = { debug() {}, info() {}, warn() {}, error() {} };
    const deps = { ledger: again, currency: "USD", zone: () => "UTC", now: () => 9, log: silent };
    const press = { chat: "1001", message: "1", press: button?.press ?? "", said: 9 };
    createConversation(deps).press({ ...press, person: 1 });
    expect(again.members.byUser("2002")?.removed).toBeNull();
  });

  test("an invitation used after it lets nobody in", () => {
    const { ledger, directory } = ledgerWithOwner();
    const code = ledger.invitations.invite({ role: "member", expires: 9e15 });
    const later = { user: "3003", name: "Sam" };
    record(ledger, buy(ledger, 3000));
    const file = copyOf(ledger, directory);
    ledger.transaction(() => joinHousehold(ledger, later, code, 5));
    ledger.close();
    expect(restore(wish(directory, file))).toMatchObject({ carried: { invitations: 1, joined: ["Sam"] } });
    const again = opensLedger(directory);
    expect(again.transaction(() => joinHousehold(again, { user: "4004", name: "X" }, code, 6))).toBeNull();
  });

  test("where the later ledger is lost, open invitations are withdrawn and the members named", async () => {
    const { ledger, directory } = ledgerWithOwner();
    const code = ledger.invitations.invite({ role: "member", expires: 9e15 });
    ledger.members.add({ user: "2002", name: "Kay", role: "member", joined: 1 });
    record(ledger, buy(ledger, 3000));
    const file = copyOf(ledger, directory);
    ledger.close();
    writeFileSync(join(directory, "ledger.sqlite"), "coffee over the disk");
    const { out, code: exit } = await ended(runsProgram("restore", [file], { DATA_DIR: directory }));
    expect(exit).toBe(0);
    expect(out).toContain("is not known");
    expect(out).toContain("In are: Robin, Kay.");
    const again = opensLedger(directory);
    expect(again.transaction(() => joinHousehold(again, { user: "4004", name: "X" }, code, 6))).toBeNull();
  });

  test("the command says what is lost, and since when", async () => {
    const { ledger, directory, file } = ledgerWithCopy();
    ledger.close();
    const { out } = await ended(runsProgram("restore", [file], { DATA_DIR: directory }));
    expect(out).toMatch(/^Lost: 1 note since .+$/m);
  });
});

describe("a ledger that lost notes is noticed at start", () => {
  const faults: [string, (path: string) => void][] = [
    ["deleted", (path) => rmSync(path)],
    ["emptied", (path) => truncateSync(path)],
    [
      "begun anew",
      (path) => {
        rmSync(path);
        const aside = `${path}-backups`;
        execFileSync("mv", [join(path, "../backups"), aside]);
        opensLedger(join(path, "..")).close();
        execFileSync("mv", [aside, join(path, "../backups")]);
      },
    ],
  ];

  test.each(faults)("%s: it stops, says what it found and the command, and changes nothing", (_, harm) => {
    const { ledger, directory, file } = ledgerWithCopy();
    ledger.close();
    const path = join(directory, "ledger.sqlite");
    harm(path);
    const before = inFolder(directory);
    const opened = openLedger({ directory, now: 1 });
    if (opened.kind !== "lost") throw new Error(opened.kind);
    expect(opened).toMatchObject({ notes: 0, copy: { notes: 1, path: file } });
    expect(notOpenedText(opened, directory)).toContain(`npm run restore -- ${file}`);
    expect(inFolder(directory)).toEqual(before);
    expect(restore(wish(directory, file))).toMatchObject({ kind: "restored" });
    expect(opensLedger(directory).books.facts).toHaveLength(1);
  });

  test("a lost -wal, too", () => {
    const { ledger, directory } = ledgerWithOwner();
    ledger.connection.sqlite.pragma("wal_checkpoint(truncate)");
    ledger.connection.sqlite.pragma("wal_autocheckpoint = 0");
    record(ledger, buy(ledger, 3000));
    copyOf(ledger, directory);
    // As after a crash: the file as it was at the last checkpoint, without what the -wal held.
    const file = join(directory, "ledger.sqlite");
    const crashed = dataDirectory();
    execFileSync("mkdir", ["-p", crashed]);
    execFileSync("cp", [file, crashed]);
    execFileSync("cp", ["-r", join(directory, "backups"), crashed]);
    expect(openLedger({ directory: crashed, now: 1 })).toMatchObject({ kind: "lost", notes: 0 });
  });

  test("the bot itself ends with that line", async () => {
    const { ledger, directory, file } = ledgerWithCopy();
    ledger.close();
    rmSync(join(directory, "ledger.sqlite"));
    const { code, out, err } = await ended(runsProgram("main", [], { DATA_DIR: directory }));
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toContain(`npm run restore -- ${file}`);
  });

  test("not after a restore of an older copy, nor where a copy cannot be read", () => {
    const { ledger, directory, file } = ledgerWithCopy();
    copyOf(ledger, directory, "2026-05-10");
    ledger.close();
    expect(restore(wish(directory, file))).toMatchObject({ kind: "restored" });
    opensLedger(directory).close();
    writeFileSync(join(directory, "backups", "ledger-2026-06-09.sqlite"), "words");
    expect(opensLedger(directory).books.facts).toHaveLength(1);
  });
});

test("a copy that was spoilt is never sent where a fresh one cannot be made: the one before it is", async () => {
  const { ledger, directory, file } = ledgerWithCopy();
  const newest = copyOf(ledger, directory, "2026-05-10");
  writeFileSync(newest, "bits that fell over");
  ledger.close();
  const make = { what: "backup" as const, name: "ledger.sqlite", args: { today: "2026-05-11" } };
  expect((await makeFile(ledger, make)).name).toBe("ledger-2026-05-09.sqlite");
  writeFileSync(file, "these, too");
  await expect(makeFile(ledger, make)).rejects.toThrow();
  const again = opensLedger(directory);
  expect((await makeFile(again, make)).name).toBe("ledger-2026-05-11.sqlite");
  expect(listBackups(directory)).toHaveLength(3);
});
