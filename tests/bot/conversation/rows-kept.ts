import type Database from "better-sqlite3";
import type { Ledger } from "../../../db/ledger.ts";

/** Of a numbered table the row id stands first. */
type Row = readonly unknown[];

interface Table {
  /** Rows of other tables refer to its own. */
  isReferred: boolean;
  all(): Row[];
  /** Takes out what is not among these rows: of a table that others refer to, only what they have no number for. */
  cut(rows: readonly Row[]): void;
  /** Brings back what is missing of them, or differs. */
  fill(rows: readonly Row[]): void;
}

const tablesOf = new WeakMap<Ledger, Table[]>();

/** While this setting is there, history may be taken back. */
const TAKES_BACK = "'takes back'";

/**
 * Keeps all rows of a ledger, and gives a way back to them. It changes nothing but rows, so that no statement has to be
 * prepared anew: what guards the history stays, and lets this way pass.
 */
export function keepRows(ledger: Ledger): () => void {
  const { sqlite } = ledger.connection;
  const tables = tablesOf.get(ledger) ?? allTables(sqlite);
  tablesOf.set(ledger, tables);
  const kept = tables.map((table) => ({ table, rows: table.all() }));
  const referred = kept.filter(({ table }) => table.isReferred);
  const others = kept.filter(({ table }) => !table.isReferred);
  const putBack = sqlite.transaction(() => {
    sqlite.exec(`insert into settings (rowid, key, value) values (-1, ${TAKES_BACK}, '1')`);
    for (const { table, rows } of others) table.cut(rows);
    for (const { table, rows } of referred) table.fill(rows);
    for (const { table, rows } of referred.toReversed()) table.cut(rows);
    for (const { table, rows } of others) table.fill(rows);
    sqlite.exec(`delete from settings where key = ${TAKES_BACK}`);
  });
  return () => {
    forget(ledger);
    putBack();
  };
}

/** The tables, each behind those that it refers to. */
function allTables(sqlite: Database.Database): Table[] {
  letPass(sqlite);
  const names = sqlite.prepare("select name, sql from sqlite_master where type = 'table'").raw().all();
  const sqlOf = new Map(names as [string, string][]);
  const parents = new Map(
    [...sqlOf.keys()].map((name) => {
      const keys = sqlite.pragma(`foreign_key_list(${name})`) as { table: string }[];
      return [name, keys.map(({ table }) => table).filter((table) => table !== name)];
    }),
  );
  const depth = (name: string): number => Math.max(0, ...parents.get(name)!.map((of) => depth(of) + 1));
  const referred = new Set([...parents.values()].flat());
  return [...sqlOf.keys()]
    .sort((a, b) => depth(a) - depth(b))
    .map((name) => {
      const isNumbered = !/\bwithout rowid\b/i.test(sqlOf.get(name)!);
      return isNumbered ? numbered(sqlite, name, referred.has(name)) : unnumbered(sqlite, name);
    });
}

/** What guards the history is made to let the way back pass. */
function letPass(sqlite: Database.Database): void {
  const guards = sqlite.prepare("select name, sql from sqlite_master where type = 'trigger'").all();
  for (const { name, sql } of guards as { name: string; sql: string }[]) {
    const unless = `WHEN NOT EXISTS (SELECT 1 FROM settings WHERE key = ${TAKES_BACK})`;
    sqlite.exec(`drop trigger ${name}; ${sql.replace(" BEGIN ", ` ${unless} BEGIN `)}`);
  }
}

function numbered(sqlite: Database.Database, name: string, isReferred: boolean): Table {
  const others = name === "settings" ? `where key <> ${TAKES_BACK}` : "";
  const all = sqlite.prepare(`select rowid, * from ${name} ${others} order by rowid`).raw();
  const columns = all.columns().map(({ name: column }) => `"${column}"`);
  const own = columns.slice(1);
  const remove = sqlite.prepare(`delete from ${name} where rowid = ?`);
  const places = columns.map(() => "?");
  const add = sqlite.prepare(`insert into ${name} (rowid, ${own}) values (${places})`);
  const set = own.map((column) => `${column} = ?`);
  const change = sqlite.prepare(`update ${name} set ${set} where rowid = ?`);
  const rowsNow = () => all.all() as Row[];
  const byNumber = (rows: readonly Row[]) => new Map(rows.map((row) => [row[0], row]));
  return {
    isReferred,
    all: rowsNow,
    cut(rows) {
      const kept = byNumber(rows);
      // The newest first: a row may refer to an earlier one of its table.
      for (const row of rowsNow().reverse()) {
        const before = kept.get(row[0]);
        if (!before || (!isReferred && !isSame(row, before))) remove.run(row[0]);
      }
    },
    fill(rows) {
      const now = byNumber(rowsNow());
      for (const row of rows) {
        const there = now.get(row[0]);
        if (!there) add.run(...row);
        else if (!isSame(row, there)) change.run(...row.slice(1), row[0]);
      }
    },
  };
}

function unnumbered(sqlite: Database.Database, name: string): Table {
  const all = sqlite.prepare(`select * from ${name}`).raw();
  const add = sqlite.prepare(`insert into ${name} values (${all.columns().map(() => "?")})`);
  const empty = sqlite.prepare(`delete from ${name}`);
  const rowsNow = () => all.all() as Row[];
  const areSame = (rows: readonly Row[], others: readonly Row[]) =>
    rows.length === others.length && rows.every((row, at) => isSame(row, others[at]!));
  return {
    isReferred: false,
    all: rowsNow,
    cut(rows) {
      if (!areSame(rowsNow(), rows)) empty.run();
    },
    fill(rows) {
      if (!areSame(rowsNow(), rows)) for (const row of rows) add.run(...row);
    },
  };
}

function isSame(row: Row, other: Row): boolean {
  return row.every((value, column) => value === other[column]);
}

/** What a ledger has in mind of its rows it lets go only where a transaction fails. */
function forget(ledger: Ledger): void {
  const failure = new Error("to forget");
  try {
    ledger.transaction(() => {
      throw failure;
    });
  } catch (error) {
    if (error !== failure) throw error;
  }
}
