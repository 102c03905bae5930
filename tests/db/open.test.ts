import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import Database from "better-sqlite3";
import { readMigrationFiles } from "drizzle-orm/migrator";
import { getTableConfig } from "drizzle-orm/sqlite-core";
import { afterEach, describe, expect, test } from "vitest";
import { openToWrite } from "../../db/connection.ts";
import { migrateLedger, schemaState } from "../../db/migrate.ts";
import { openLedger, openReader } from "../../db/open.ts";
import { restore } from "../../db/restore.ts";
import * as schema from "../../db/schema.ts";
import {
  addNote,
  buy,
  clearLedgers,
  dataDirectory,
  ledgerWithOwner,
  opensLedger,
  record,
} from "./ledgers.ts";

afterEach(clearLedgers);

const modeOf = (path: string): number => statSync(path).mode & 0o777;
const MIGRATIONS = fileURLToPath(new URL("../../db/migrations", import.meta.url));

describe("a first start", () => {
  test("makes a private directory and private files", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    expect(modeOf(directory)).toBe(0o700);
    const files = readdirSync(directory).filter((name) => name.startsWith("ledger"));
    expect(files.sort()).toEqual(["ledger.sqlite", "ledger.sqlite-shm", "ledger.sqlite-wal"]);
    for (const name of readdirSync(directory))
      expect([name, modeOf(join(directory, name))]).toEqual([name, 0o600]);
  });

  test("runs every migration of the journal, and none twice", () => {
    const { ledger, directory } = ledgerWithOwner();
    expect(schemaState(ledger.connection)).toEqual({ kind: "known", pending: 0 });
    ledger.close();
    expect(schemaState(opensLedger(directory).connection)).toEqual({ kind: "known", pending: 0 });
    expect(readdirSync(directory)).not.toContain("backups");
  });

  test("sets every pragma on every open, not only on the first", () => {
    const { ledger, directory } = ledgerWithOwner();
    ledger.close();
    const { sqlite } = opensLedger(directory).connection;
    const inForce = (name: string) => sqlite.pragma(name, { simple: true });
    expect(inForce("journal_mode")).toBe("wal");
    expect(inForce("synchronous")).toBe(2);
    expect(inForce("foreign_keys")).toBe(1);
    expect(inForce("busy_timeout")).toBe(5000);
  });
});

describe("the migrations", () => {
  const tables = Object.values(schema).map(getTableConfig);

  test("make just the tables, columns, keys and checks that the schema names", () => {
    const { sqlite } = ledgerWithOwner().ledger.connection;
    const sourceOf = (name: string) =>
      String(sqlite.prepare("select sql from sqlite_master where name = ?").pluck().get(name));
    expect(tables.length).toBe(16);
    for (const { name, columns, indexes, checks } of tables) {
      const made = sqlite.pragma(`table_info(${name})`) as { name: string; notnull: number }[];
      expect(made.map((column) => [column.name, column.notnull === 1])).toEqual(
        columns.map((column) => [column.name, column.notNull]),
      );
      for (const { config } of indexes) expect(sourceOf(config.name)).toContain("INDEX");
      for (const check of checks) expect(sourceOf(name)).toContain(`CONSTRAINT "${check.name}" CHECK`);
    }
  });

  test("delete nothing along with something else", () => {
    for (const { foreignKeys } of tables) {
      for (const key of foreignKeys) expect(key.onDelete ?? "no action").toBe("no action");
    }
  });
});

describe("derived books", () => {
  const openedBy = (directory: string, release: string | null) => {
    const opened = openLedger({ directory, now: 0, release });
    if (opened.kind !== "open") throw new Error(JSON.stringify(opened));
    const { ledger, rederived } = opened;
    const price = ledger.connection.sqlite.prepare("select price from pieces").pluck().get();
    ledger.close();
    return { rederived, price };
  };

  /** A ledger that release "one" left, whose one piece was then given another price by hand. */
  function touchedByHand(): string {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    ledger.close();
    expect(openedBy(directory, "one")).toEqual({ rederived: 0, price: 3000 });
    const sqlite = new Database(join(directory, "ledger.sqlite"));
    sqlite.exec("update pieces set price = 1");
    sqlite.close();
    return directory;
  }

  test("are not gone through again by the release that wrote them", () => {
    expect(openedBy(touchedByHand(), "one")).toEqual({ rederived: 0, price: 1 });
  });

  test.each(["two", null])(
    "are gone through by another release (%s), which the first one notices",
    (other) => {
      const directory = touchedByHand();
      expect(openedBy(directory, other)).toEqual({ rederived: 1, price: 3000 });
      const sqlite = new Database(join(directory, "ledger.sqlite"));
      sqlite.exec("update pieces set price = 2");
      sqlite.close();
      expect(openedBy(directory, "one")).toEqual({ rederived: 1, price: 3000 });
    },
  );

  test("are gone through after a restore", () => {
    const directory = touchedByHand();
    const copy = join(directory, "copy.sqlite");
    copyFileSync(join(directory, "ledger.sqlite"), copy);
    expect(restore({ directory, file: copy, now: 0, today: "2026-05-09" }).kind).toBe("restored");
    const sqlite = new Database(join(directory, "ledger.sqlite"));
    sqlite.exec("update pieces set price = 2");
    sqlite.close();
    expect(openedBy(directory, "one")).toEqual({ rederived: 1, price: 3000 });
  });
});

describe("the schema refuses", () => {
  test.each([
    ["an amount in words", "'thirty'", "2026-05-03", "'{}'"],
    ["an amount with a fraction", "30.5", "2026-05-03", "'{}'"],
    ["a day in another form", "3000", "5/3/2026", "'{}'"],
    ["a day that does not exist", "3000", "2026-02-30", "'{}'"],
    ["data that is no JSON", "3000", "2026-05-03", "'{'"],
  ])("%s", (_, amount, day, data) => {
    const { ledger } = ledgerWithOwner();
    const note = ledger.transaction(() => addNote(ledger));
    const insert = `insert into facts (kind, day, place, author, note, root, amount, data)
      values ('buy', '${day}', 1, 1, ${note}, ${note}, ${amount}, ${data})`;
    expect(() => ledger.connection.sqlite.exec(insert)).toThrow(/CHECK constraint failed/);
  });

  test("a posting that is no whole number of cents", () => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    const change = (cents: string) => `update postings set cents = ${cents}`;
    for (const cents of ["0.5", "'many'", "1e300"]) {
      expect(() => ledger.connection.sqlite.exec(change(cents))).toThrow(/CHECK constraint failed/);
    }
  });

  test("a fact of a note that is not there", () => {
    const { ledger } = ledgerWithOwner();
    const insert = `insert into facts (kind, day, place, author, note, root, data)
      values ('finish', '2026-05-03', 1, 1, 99, 99, '{}')`;
    expect(() => ledger.connection.sqlite.exec(insert)).toThrow(/FOREIGN KEY constraint failed/);
  });

  test.each(["facts", "fact_pieces", "voids"])("to change or delete a row of %s", (table) => {
    const { ledger } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    ledger.transaction(() => ledger.amend({ note: addNote(ledger), author: 1, voids: [1], facts: [] }));
    const { sqlite } = ledger.connection;
    expect(() => sqlite.exec(`delete from ${table}`)).toThrow(/never deleted/);
    expect(() =>
      sqlite.exec(`update ${table} set fact = 7`.replace("facts set fact", "facts set id")),
    ).toThrow(/never changed/);
  });
});

describe("an older ledger", () => {
  /** A ledger as the first migration alone leaves it, holding one member. */
  function olderLedger(directory: string): void {
    mkdirSync(directory, { recursive: true });
    const sqlite = new Database(join(directory, "ledger.sqlite"));
    const [first] = readMigrationFiles({ migrationsFolder: MIGRATIONS });
    for (const statement of first!.sql) sqlite.exec(statement);
    sqlite.exec(
      "create table __drizzle_migrations (id serial primary key, hash text not null, created_at numeric)",
    );
    sqlite
      .prepare("insert into __drizzle_migrations (hash, created_at) values (?, ?)")
      .run(first!.hash, first!.folderMillis);
    sqlite.exec("insert into members (user, name, role, joined) values ('1001', 'Robin', 'owner', 0)");
    sqlite.close();
  }

  test("is copied first, then brought up to date with what it held", () => {
    const directory = dataDirectory();
    olderLedger(directory);
    const ledger = opensLedger(directory);
    expect(ledger.members.owner()?.name).toBe("Robin");
    expect(schemaState(ledger.connection)).toEqual({ kind: "known", pending: 0 });
    expect(ledger.connection.sqlite.pragma("foreign_keys", { simple: true })).toBe(1);
    const copies = readdirSync(join(directory, "backups"));
    expect(copies).toEqual(["before-migration-1970-01-01T00-00-00.sqlite"]);
    const copy = new Database(join(directory, "backups", copies[0]!));
    expect(copy.prepare("select name from members").pluck().get()).toBe("Robin");
    copy.close();
  });

  test("is not read before that", () => {
    const directory = dataDirectory();
    olderLedger(directory);
    expect(openReader(directory)).toMatchObject({
      kind: "unusable",
      why: expect.stringContaining("older version"),
    });
  });

  test("whose rows point at nothing is not called migrated", () => {
    const directory = dataDirectory();
    olderLedger(directory);
    const connection = openToWrite(join(directory, "ledger.sqlite"));
    connection.sqlite.pragma("foreign_keys = 0");
    connection.sqlite.exec("insert into pictures (note, file, unique_file, taken) values (9, 'f', 'u', 0)");
    expect(() => migrateLedger(connection, 0)).toThrow("1 rows point at nothing");
    connection.sqlite.close();
  });
});

describe("a file that cannot be used", () => {
  test("of another version is refused and left alone", () => {
    const { ledger, directory } = ledgerWithOwner();
    ledger.connection.sqlite.exec(
      "insert into __drizzle_migrations (hash, created_at) values ('later', 9e15)",
    );
    ledger.close();
    const before = readFileSync(join(directory, "ledger.sqlite"));
    const why = expect.stringContaining("another version");
    expect(openLedger({ directory, now: 0 })).toEqual({ kind: "unusable", why });
    expect(openReader(directory)).toEqual({ kind: "unusable", why });
    expect(readFileSync(join(directory, "ledger.sqlite")).equals(before)).toBe(true);
  });

  test("that is some other database is refused", () => {
    const directory = dataDirectory();
    mkdirSync(directory);
    const other = new Database(join(directory, "ledger.sqlite"));
    other.exec("create table songs (title)");
    other.close();
    expect(openLedger({ directory, now: 0 })).toMatchObject({ why: expect.stringContaining("no ledger") });
  });

  test("that is no database at all is refused in words", () => {
    const directory = dataDirectory();
    mkdirSync(directory);
    writeFileSync(join(directory, "ledger.sqlite"), "not a database, only words ".repeat(100));
    for (const opened of [openLedger({ directory, now: 0 }), openReader(directory)]) {
      expect(opened).toMatchObject({ kind: "unusable", why: expect.stringContaining("damaged") });
    }
  });

  test("because its place is a file is refused in words", () => {
    const directory = dataDirectory();
    writeFileSync(directory, "");
    expect(openLedger({ directory, now: 0 })).toMatchObject({
      why: expect.stringContaining("cannot be opened"),
    });
  });
});

describe("a reader", () => {
  test("finds nothing where nothing was begun, and makes nothing", () => {
    const directory = dataDirectory();
    expect(openReader(directory)).toEqual({ kind: "none" });
    expect(() => statSync(directory)).toThrow();
  });

  test("sees what was committed while the writer goes on, and cannot write", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    ledger.transaction(() => {
      ledger.record({ note: addNote(ledger), author: 1, facts: [buy(ledger, 1800)] });
      const opened = openReader(directory);
      if (opened.kind !== "open") throw new Error(JSON.stringify(opened));
      expect([...opened.reader.books.pieces.keys()]).toEqual([1]);
      expect(() => opened.reader.connection.sqlite.exec("delete from settings")).toThrow(/readonly/);
      opened.reader.close();
    });
    const opened = openReader(directory);
    expect(opened.kind === "open" && [...opened.reader.books.pieces.keys()]).toEqual([1, 2]);
    if (opened.kind === "open") opened.reader.close();
  });

  test("reads a ledger in a folder that it may not write to", () => {
    const { ledger, directory } = ledgerWithOwner();
    record(ledger, buy(ledger, 3000));
    ledger.close();
    chmodSync(join(directory, ".."), 0o755);
    chmodSync(join(directory, "ledger.sqlite"), 0o644);
    chmodSync(directory, 0o555);
    // The superuser may write anywhere, so the test becomes nobody for a moment.
    const isSuperuser = process.geteuid?.() === 0;
    if (isSuperuser) process.seteuid?.(65534);
    try {
      const opened = openReader(directory);
      expect(opened.kind === "open" && opened.reader.books.pieces.get(1)?.price).toBe(3000);
      if (opened.kind === "open") opened.reader.close();
      expect(openLedger({ directory, now: 0 }).kind).toBe("unusable");
    } finally {
      if (isSuperuser) process.seteuid?.(0);
      chmodSync(directory, 0o755);
    }
  });
});
