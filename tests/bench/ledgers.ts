import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { NewFact } from "../../core/books/facts.ts";
import { addDays } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import { openLedger } from "../../db/open.ts";

export const NOTES_A_YEAR = 2_500;
/** Notes that each piece of the invented ledger takes: bought, spent on, worked on, finished, listed, sold, and a drive. */
const NOTES_A_PIECE = 7;

export interface BenchLedger {
  ledger: Ledger;
  directory: string;
  person: number;
  /** The last day that has facts. */
  end: string;
  close(): void;
}

/** A ledger with `years` of invented notes, one fact each. */
export function openBenchLedger(years: number): BenchLedger {
  const directory = mkdtempSync(join(tmpdir(), "tailgate-bench-"));
  const opened = openLedger({ directory, now: 0 });
  if (opened.kind !== "open") throw new Error(`ledger ${opened.kind}`);
  const { ledger } = opened;
  const end = "2026-05-31";
  const count = Math.round((years * NOTES_A_YEAR) / NOTES_A_PIECE);
  const person = ledger.transaction(() => {
    const id = ledger.members.add({ user: "1001", name: "Robin", role: "owner", joined: 0 });
    const first = ledger.addNote({
      chat: "bench",
      message: "0",
      text: "bench",
      author: id,
      said: 0,
      handled: 0,
    });
    const start = addDays(end, -Math.round(years * 365));
    const loan = {
      kind: "loan" as const,
      day: start,
      pieces: [],
      amount: 1_425_000,
      data: { loan: "loan", rate: "5.5" },
    };
    ledger.record({ note: first, author: id, facts: [loan] });
    const facts = Array.from({ length: count }, (_, index) => pieceFacts(index, count, start, end)).flat();
    facts.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
    for (let at = 0; at < facts.length; at += 500) {
      ledger.record({ note: first, author: id, facts: facts.slice(at, at + 500) });
    }
    return id;
  });
  const close = () => {
    ledger.close();
    rmSync(directory, { recursive: true, force: true });
  };
  return { ledger, directory, person, end, close };
}

function pieceFacts(index: number, count: number, start: string, end: string): NewFact[] {
  const days = Math.max(1, Math.round((Date.parse(end) - Date.parse(start)) / 86_400_000) - 20);
  const bought = addDays(start, Math.floor((index * days) / count));
  const pieces = [index + 1];
  const on = (after: number) => addDays(bought, after);
  return [
    {
      kind: "buy",
      day: bought,
      pieces,
      amount: 3_000 + (index % 40) * 100,
      data: { made: [{ name: "dresser", traits: [] }] },
    },
    { kind: "drive", day: bought, pieces, data: { miles: "12.5" } },
    { kind: "spend", day: on(3), pieces, amount: 1_250, data: { what: "paint", category: "materials" } },
    { kind: "work", day: on(4), pieces, data: { minutes: 150 } },
    { kind: "finish", day: on(5), pieces, data: {} },
    { kind: "list", day: on(6), pieces, amount: 19_000, data: {} },
    { kind: "sell", day: on(12), pieces, amount: 17_500 + (index % 20) * 50, data: {} },
  ];
}
