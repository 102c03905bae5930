import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ledgerPath, openLedger } from "../db/open.ts";

let empty: Buffer | undefined;

/** The file of a ledger begun and closed again: made once, since the migrations wait for the disk many times. */
function emptyLedger(): Buffer {
  if (empty) return empty;
  const directory = mkdtempSync(join(tmpdir(), "tailgate-fresh-"));
  const opened = openLedger({ directory, now: 0 });
  if (opened.kind !== "open") throw new Error(JSON.stringify(opened));
  opened.ledger.close();
  empty = readFileSync(ledgerPath(directory));
  rmSync(directory, { recursive: true, force: true });
  return empty;
}

/** Puts an empty ledger into a data directory that has none, as a first start leaves it. */
export function beginLedger(directory: string): void {
  if (existsSync(ledgerPath(directory))) return;
  mkdirSync(directory, { recursive: true, mode: 0o700 });
  writeFileSync(ledgerPath(directory), emptyLedger(), { mode: 0o600 });
}
