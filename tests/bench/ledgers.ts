import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { NewFact } from "../../core/books/facts.ts";
import { addDays, type Day } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import { openLedger } from "../../db/open.ts";

export const NOTES_A_YEAR = 2_500;
/** Notes that each piece of the invented ledger takes: bought, spent on, worked on, finished, listed, sold, and a drive. */
const NOTES_A_PIECE = 7;
/** The last day of every invented ledger. */
export const BENCH_END: Day = "2026-05-31";
const FACTS_A_TRANSACTION = 2_000;

export interface BenchLedger {
  ledger: Ledger;
  directory: string;
  person: number;
  /** The last day that has facts. */
  end: Day;
  close(): void;
}

/** A ledger with `years` of invented notes, one fact each, and a loan that is paid every month. */
export function openBenchLedger(years: number): BenchLedger {
  const directory = mkdtempSync(join(tmpdir(), "tailgate-bench-"));
  const ledger = openInvented(directory);
  const person = ledger.transaction(() =>
    ledger.members.add({ user: "1001", name: "Robin", role: "owner", joined: 0 }),
  );
  const facts = inventedFacts(years);
  for (let at = 0; at < facts.length; at += FACTS_A_TRANSACTION) {
    const some = facts.slice(at, at + FACTS_A_TRANSACTION);
    ledger.transaction(() => {
      for (const [index, fact] of some.entries()) recordOne(ledger, fact, { person, message: at + index });
    });
  }
  const close = () => {
    ledger.close();
    rmSync(directory, { recursive: true, force: true });
  };
  return { ledger, directory, person, end: BENCH_END, close };
}

function openInvented(directory: string): Ledger {
  const opened = openLedger({ directory, now: 0 });
  if (opened.kind !== "open") throw new Error(`ledger ${opened.kind}`);
  return opened.ledger;
}

function recordOne(ledger: Ledger, fact: NewFact, { person, message }: { person: number; message: number }) {
  const said = Date.parse(`${fact.day}T18:00:00Z`);
  const of = { chat: "1001", message: `old${message}`, text: `${fact.kind} ${message}` };
  const note = ledger.addNote({ ...of, author: person, said, handled: said });
  const result = ledger.record({ note, author: person, facts: [fact] });
  if (result.kind !== "recorded") throw new Error(JSON.stringify(result));
  ledger.setNoteState(note, "recorded");
}

function inventedFacts(years: number): NewFact[] {
  const start = addDays(BENCH_END, -Math.round(years * 365));
  const count = Math.round((years * NOTES_A_YEAR) / NOTES_A_PIECE);
  const data = { loan: "loan", rate: "5.5" };
  const loan: NewFact = { kind: "loan", day: start, pieces: [], amount: 100_000_000, data };
  const payments = Array.from({ length: Math.floor(years * 12) }, (_, month): NewFact => {
    const day = addDays(start, 30 * (month + 1));
    return { kind: "pay", day, pieces: [], amount: 30_000, data: {} };
  });
  const pieces = Array.from({ length: count }, (_, index) => pieceFacts(index, count, start)).flat();
  return [loan, ...payments, ...pieces].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

/** Nouns enough that a name is not shared by everything in stock. */
const NAMES = [
  "dresser",
  "desk",
  "lamp",
  "bench",
  "hutch",
  "bookcase",
  "armoire",
  "stool",
  "mirror",
  "table",
];

function pieceFacts(index: number, count: number, start: Day): NewFact[] {
  const days = Math.max(1, Math.round((Date.parse(BENCH_END) - Date.parse(start)) / 86_400_000) - 20);
  const bought = addDays(start, Math.floor((index * days) / count));
  const pieces = [index + 1];
  const on = (after: number) => addDays(bought, after);
  const made = [{ name: NAMES[index % NAMES.length]!, traits: [] }];
  return [
    { kind: "buy", day: bought, pieces, amount: 3_000 + (index % 40) * 100, data: { made } },
    { kind: "drive", day: bought, pieces, data: { miles: "12.5" } },
    { kind: "spend", day: on(3), pieces, amount: 1_250, data: { what: "paint", category: "materials" } },
    { kind: "work", day: on(4), pieces, data: { minutes: 150 } },
    { kind: "finish", day: on(5), pieces, data: {} },
    { kind: "list", day: on(6), pieces, amount: 19_000, data: {} },
    { kind: "sell", day: on(12), pieces, amount: 17_500 + (index % 20) * 50, data: {} },
  ];
}
