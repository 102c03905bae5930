import { join } from "node:path";
import Database from "better-sqlite3";
import { createConversation } from "../../bot/conversation/conversation.ts";
import { type BenchLedger, openBenchLedger } from "./ledgers.ts";

const silent = { debug() {}, info() {}, warn() {}, error() {} };

/** Milliseconds a note, from the message handed in to the reply queued, beside the same rows written bare. */
export function benchNotes(years: number, rounds = 200): { noteMs: number; bareMs: number; ratio: number } {
  const bench = openBenchLedger(years);
  const bare = openBare(bench);
  const notes: number[] = [];
  const bares: number[] = [];
  const now = Date.parse(`${bench.end}T18:00:00Z`);
  const deps = {
    ledger: bench.ledger,
    currency: "USD",
    zone: () => "America/Chicago",
    now: () => now,
    log: silent,
  };
  const conversation = createConversation(deps);
  for (let round = 0; round < rounds; round++) {
    const text = `bought lamp ${round + 1} yard sale`;
    const message = `b${round}`;
    const said = now + round;
    notes.push(
      timed(() =>
        conversation.hear({ person: bench.person, chat: "1001", message, text, said, update: `u${round}` }),
      ),
    );
    bares.push(timed(() => bare.write(round)));
  }
  bare.close();
  bench.close();
  const noteMs = medianOf(notes);
  const bareMs = medianOf(bares);
  return { noteMs, bareMs, ratio: noteMs / bareMs };
}

/** One durable transaction of the rows that such a note leaves, by prepared statements and nothing else. */
function openBare(bench: BenchLedger): { write(round: number): void; close(): void } {
  const database = new Database(join(bench.directory, "bare.sqlite"));
  database.pragma("journal_mode = WAL");
  database.pragma("synchronous = FULL");
  const columns: Record<string, number> = {
    seen: 1,
    note: 9,
    fact: 9,
    fact_piece: 3,
    piece: 22,
    posting: 7,
    outbox: 11,
  };
  for (const [name, count] of Object.entries(columns)) {
    const names = Array.from({ length: count }, (_, index) => `c${index}`);
    database.exec(`create table ${name} (id integer primary key, ${names.join(", ")})`);
  }
  const insert = Object.fromEntries(
    Object.entries(columns).map(([name, count]) => [
      name,
      database.prepare(`insert into ${name} values (null${", ?".repeat(count)})`),
    ]),
  );
  const rows = ["seen", "note", "fact", "fact_piece", "piece", "posting", "posting", "outbox"];
  const transaction = database.transaction((round: number) => {
    for (const name of rows)
      insert[name]!.run(...Array.from({ length: columns[name]! }, (_, index) => `value ${round} ${index}`));
    database.prepare("update note set c8 = ? where c0 = ?").run("recorded", `value ${round} 0`);
  });
  return { write: (round) => transaction.immediate(round), close: () => void database.close() };
}

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

export function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}
