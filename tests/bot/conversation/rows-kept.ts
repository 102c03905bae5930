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
  const { sqlite } = ledger.connection;
  const tables = tablesOf.get(ledger) ?? unguardedTables(ledger);
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

function unguardedTables({ connection: { sqlite } }: Ledger): Table[] {
  const named = (type: string) =>
    sqlite.prepare("select name from sqlite_master where type = ?").pluck().all(type) as string[];
  for (const name of named("trigger")) sqlite.exec(`drop trigger ${name}`);
  return named("table").map((name) => {
    const all = sqlite.prepare(`select * from ${name}`).raw();
    const values = all.columns().map(() => "?");
    const empty = sqlite.prepare(`delete from ${name}`);
    const add = sqlite.prepare(`insert into ${name} values (${values})`);
    return {
      all: () => all.all() as unknown[][],
      put(rows) {
        empty.run();
        for (const row of rows) add.run(...row);
      },
    };
  });
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
