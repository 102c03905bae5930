import type { Ledger } from "../../../db/ledger.ts";

interface Table {
  all(): unknown[][];
  /** Makes these the rows of the table, and no others. */
  put(rows: readonly unknown[][]): void;
}

const tablesOf = new WeakMap<Ledger, Table[]>();

/**
 * Keeps all rows of a ledger, and gives a way back to them. What guards the history is taken away: it could not be
 * undone else.
 */
export function keepRows(ledger: Ledger): () => void {
  for (const { name } of guardsOf(ledger)) ledger.connection.sqlite.exec(`drop trigger ${name}`);
  return wayBack(ledger);
}

/** Keeps all rows of a ledger, and gives a way back to them and to what guards the history. */
export function keepGuarded(ledger: Ledger): () => void {
  const { sqlite } = ledger.connection;
  const guards = guardsOf(ledger);
  const back = wayBack(ledger);
  return () => {
    for (const { name } of guardsOf(ledger)) sqlite.exec(`drop trigger ${name}`);
    back();
    for (const { sql } of guards) sqlite.exec(sql);
  };
}

function wayBack(ledger: Ledger): () => void {
  const { sqlite } = ledger.connection;
  const tables = tablesOf.get(ledger) ?? allTables(ledger);
  tablesOf.set(ledger, tables);
  const kept = tables.map((table) => ({ table, rows: table.all() }));
  const putBack = sqlite.transaction(() => {
    for (const { table, rows } of kept) table.put(rows);
  });
  return () => {
    forget(ledger);
    sqlite.pragma("foreign_keys = off");
    putBack();
    sqlite.pragma("foreign_keys = on");
  };
}

function guardsOf({ connection: { sqlite } }: Ledger): { name: string; sql: string }[] {
  const guards = sqlite.prepare("select name, sql from sqlite_master where type = 'trigger'");
  return guards.all() as { name: string; sql: string }[];
}

function allTables({ connection: { sqlite } }: Ledger): Table[] {
  const tables = sqlite.prepare("select name, sql from sqlite_master where type = 'table'");
  return (tables.all() as { name: string; sql: string }[]).map(({ name, sql }) => {
    const isNumbered = !/\bwithout rowid\b/i.test(sql);
    const inOrder = `${name} ${isNumbered ? "order by rowid" : ""}`;
    const all = sqlite.prepare(`select * from ${inOrder}`).raw();
    const values = all.columns().map(() => "?");
    const add = sqlite.prepare(`insert into ${name} values (${values})`);
    const which = isNumbered ? `rowid in (select rowid from ${inOrder} limit -1 offset ?)` : "? = 0";
    const cut = sqlite.prepare(`delete from ${name} where ${which}`);
    return {
      all: () => all.all() as unknown[][],
      put(rows) {
        // Most of what stood before stands yet: only what comes behind it is written.
        const now = all.all() as unknown[][];
        const differs = now.findIndex((row, at) => !isSame(row, rows[at]));
        if (differs < 0 && now.length === rows.length) return;
        const first = isNumbered ? (differs < 0 ? now.length : differs) : 0;
        cut.run(first);
        for (const row of rows.slice(first)) add.run(...row);
      },
    };
  });
}

function isSame(row: readonly unknown[], other: readonly unknown[] | undefined): boolean {
  return other !== undefined && row.every((value, column) => value === other[column]);
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
