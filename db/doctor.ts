import { existsSync } from "node:fs";
import type { Piece } from "../core/books/books.ts";
import type { Fact } from "../core/books/facts.ts";
import { emptyBooks, foldFacts } from "../core/books/fold.ts";
import { problemText } from "../core/books/problem.ts";
import { type Connection, openToRead } from "./connection.ts";
import { type DerivedRows, differences, openDerivedTables, rowsOf } from "./derived.ts";
import { openFactStore } from "./facts.ts";
import { schemaProblem, schemaState } from "./migrate.ts";
import { ledgerPath } from "./open.ts";

/** Something wrong with a ledger: which check found it, and what, in words. */
export interface Finding {
  check:
    | "file"
    | "schema"
    | "integrity"
    | "links"
    | "stored data"
    | "balance"
    | "history"
    | "rebuild"
    | "pieces";
  detail: string;
}

export interface Examination {
  findings: Finding[];
  counts: { notes: number; facts: number; standing: number; pieces: number };
}

/** Enough to see what is wrong; a file that is damaged throughout would give thousands. */
const FINDINGS_EACH_MAX = 20;

/** Everything wrong with the ledger of a data directory; it may be in use. Null: no ledger has been begun. */
export function examine(directory: string): Examination | null {
  return existsSync(ledgerPath(directory)) ? examineFile(ledgerPath(directory)) : null;
}

/** Everything wrong with a ledger file, such as a backup. Never throws: what cannot be read is a finding. */
export function examineFile(path: string): Examination {
  let connection: Connection | null = null;
  try {
    const opened = openToRead(path);
    connection = opened;
    // One read transaction: the bot may be writing meanwhile.
    return opened.db.transaction(() => examineOpened(opened));
  } catch (error) {
    return { findings: [{ check: "file", detail: messageOf(error) }], counts: NO_COUNTS };
  } finally {
    connection?.sqlite.close();
  }
}

export const NO_COUNTS = { notes: 0, facts: 0, standing: 0, pieces: 0 };

function examineOpened(connection: Connection): Examination {
  const integrity = integrityFindings(connection);
  const state = schemaState(connection);
  if (state.kind !== "known" || state.pending > 0) {
    const detail =
      state.kind === "known" ? `${state.pending} migrations are still to run` : schemaProblem(state);
    return { findings: [...integrity, { check: "schema", detail }], counts: NO_COUNTS };
  }
  const facts = factFindings(connection);
  const findings = [
    ...integrity,
    ...linkFindings(connection),
    ...storedDataFindings(connection),
    ...balanceFindings(connection),
    ...facts.findings,
    ...(facts.findings.length === 0 ? rebuildFindings(connection, facts.standing) : []),
  ];
  return { findings, counts: countsOf(connection, facts.standing.length) };
}

function countsOf({ sqlite }: Connection, standing: number): Examination["counts"] {
  const count = (table: string) => sqlite.prepare(`select count(*) from ${table}`).pluck().get() as number;
  return { notes: count("notes"), facts: count("facts"), standing, pieces: count("pieces") };
}

function integrityFindings({ sqlite }: Connection): Finding[] {
  const lines = sqlite.prepare(`pragma integrity_check(${FINDINGS_EACH_MAX})`).pluck().all() as string[];
  return lines.filter((line) => line !== "ok").map((detail) => ({ check: "integrity", detail }));
}

function linkFindings({ sqlite }: Connection): Finding[] {
  const rows = sqlite.pragma("foreign_key_check") as { table: string; rowid: number; parent: string }[];
  return rows.slice(0, FINDINGS_EACH_MAX).map(({ table, rowid, parent }) => ({
    check: "links",
    detail: `row ${rowid} of ${table} points at a row of ${parent} that is not there`,
  }));
}

/** JSON columns beside the facts' own, in case the CHECKs were switched off when they were written. */
function storedDataFindings({ sqlite }: Connection): Finding[] {
  const columns = [
    ["outbox", "body", "id"],
    ["questions", "matter", "id"],
    ["questions", "ask", "id"],
    ["settings", "value", "key"],
  ] as const;
  return columns.flatMap(([table, column, key]) => {
    const broken = sqlite
      .prepare(`select ${key} from ${table} where not json_valid(${column})`)
      .pluck()
      .all();
    return broken.map((row): Finding => ({ check: "stored data", detail: `${column} of ${table} ${row}` }));
  });
}

function balanceFindings({ sqlite }: Connection): Finding[] {
  const sums = sqlite
    .prepare("select fact, sum(cents) as cents from postings group by fact having sum(cents) <> 0 limit ?")
    .all(FINDINGS_EACH_MAX) as { fact: number; cents: number }[];
  return sums.map(({ fact, cents }) => ({
    check: "balance",
    detail: `the postings of fact ${fact} sum to ${cents} cents, not to zero`,
  }));
}

/** Reads each fact by itself, so that a broken one is named and the others are still looked at. */
function factFindings(connection: Connection): { standing: Fact[]; findings: Finding[] } {
  const standing: Fact[] = [];
  const findings: Finding[] = [];
  for (const { id, isStanding, read } of openFactStore(connection).each()) {
    try {
      const fact = read();
      if (isStanding) standing.push(fact);
    } catch (error) {
      findings.push({ check: "stored data", detail: `fact ${id}: ${messageOf(error)}` });
    }
  }
  return { standing, findings: findings.slice(0, FINDINGS_EACH_MAX) };
}

function rebuildFindings(connection: Connection, standing: Fact[]): Finding[] {
  try {
    const folded = foldFacts(standing);
    if (folded.kind === "impossible") {
      const { fact, problem } = folded;
      const why = problemText(problem, emptyBooks());
      return [
        { check: "history", detail: `fact ${fact.id} (${fact.kind}, ${fact.day}) cannot stand: ${why}` },
      ];
    }
    const states = [...folded.books.pieces.values()].flatMap(pieceFindings);
    const stored = openDerivedTables(connection).stored();
    return [...states, ...differenceFindings(stored, rowsOf(folded.books))];
  } catch (error) {
    return [{ check: "history", detail: messageOf(error) }];
  }
}

function differenceFindings(stored: DerivedRows, rebuilt: DerivedRows): Finding[] {
  const { pieces, loans, postings } = differences(stored, rebuilt);
  const named = [
    ...pieces.map((number) => `piece #${number}`),
    ...loans.map((name) => `loan "${name}"`),
    ...postings.map((fact) => `the postings of fact ${fact}`),
  ];
  return named.slice(0, FINDINGS_EACH_MAX).map((what) => ({
    check: "rebuild",
    detail: `${what}: what is stored is not what the facts give`,
  }));
}

/** States that no order of notes can bring a piece into. */
function pieceFindings(piece: Readonly<Piece>): Finding[] {
  const rules: [boolean, string][] = [
    [
      (piece.gone === "sold") !== (piece.sold !== null),
      "is sold without a day, or has a day without being sold",
    ],
    [
      (piece.gone !== null) !== (piece.goneOn !== null),
      "is gone without a day, or has a day without being gone",
    ],
    [piece.goneOn !== null && piece.goneOn < piece.bought, "is gone before it was bought"],
    [piece.gone !== null && piece.hold !== null, "is gone and on hold"],
    [piece.deposit !== 0 && piece.hold === null, "has a deposit and is not on hold"],
    [(piece.hold?.agreed ?? 0) < 0, "is held at less than nothing"],
    [piece.deposit < 0 || piece.depositsKept < 0, "has less than no deposit"],
    [piece.price < 0 || piece.materials < 0, "cost less than nothing"],
    [piece.refunds > piece.sales + piece.depositsKept, "gave back more than it brought in"],
    [piece.owed < 0 || (piece.owed > 0 && piece.gone !== "sold"), "is owed for without being sold"],
    [piece.owed > piece.sales + piece.depositsKept - piece.refunds, "is owed more for than it brought in"],
    [(piece.listPrice ?? 0) < 0, "is listed at less than nothing"],
    [piece.minutes < 0 || !Number.isInteger(piece.minutes), "has a broken number of minutes"],
  ];
  return rules
    .filter(([isBroken]) => isBroken)
    .map(([, detail]) => ({ check: "pieces", detail: `piece #${piece.number} ${detail}` }));
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
