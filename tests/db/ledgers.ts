import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { NewFact } from "../../core/books/facts.ts";
import type { Ledger, Recorded } from "../../db/ledger.ts";
import { openLedger } from "../../db/open.ts";
import { beginLedger } from "../fresh.ts";
import { programPath, TOP } from "../programs.ts";

const made: string[] = [];
const opened: Ledger[] = [];

/** A data directory of its own for one test; not made yet, as at a first start. */
export function dataDirectory(): string {
  const parent = mkdtempSync(join(tmpdir(), "ledger-"));
  made.push(parent);
  return join(parent, "data");
}

export function opensLedger(directory: string): Ledger {
  const result = openLedger({ directory, now: 0 });
  if (result.kind !== "open") throw new Error(JSON.stringify(result));
  opened.push(result.ledger);
  return result.ledger;
}

/** Closes and removes what the test made. Call it after each. */
export function clearLedgers(): void {
  for (const ledger of opened.splice(0)) if (ledger.connection.sqlite.open) ledger.close();
  for (const directory of made.splice(0)) rmSync(directory, { recursive: true, force: true });
}

/** A ledger with one member, and notes numbered as they come. */
export function ledgerWithOwner(directory = dataDirectory()): { ledger: Ledger; directory: string } {
  beginLedger(directory);
  const ledger = opensLedger(directory);
  ledger.transaction(() => ledger.members.add({ user: "1001", name: "Robin", role: "owner", joined: 0 }));
  return { ledger, directory };
}

let messages = 0;

/** Stores a note of member 1, inside a transaction that the caller has opened. */
export function addNote(ledger: Ledger, text = "a note", author = 1): number {
  messages += 1;
  const instants = { said: messages, handled: messages };
  return ledger.addNote({ chat: "home", message: `m${messages}`, text, author, ...instants });
}

/** A note and its facts in one transaction; a note that records nothing is stored all the same. */
export function record(ledger: Ledger, ...facts: NewFact[]): Recorded {
  return ledger.transaction(() => ledger.record({ note: addNote(ledger), author: 1, facts }));
}

export function buy(ledger: Ledger, amount: number, day = "2026-05-03", name = "dresser"): NewFact {
  return { kind: "buy", day, pieces: [ledger.nextPiece], amount, data: { made: [{ name, traits: [] }] } };
}

export function list(piece: number, amount: number, day = "2026-05-08"): NewFact {
  return { kind: "list", day, pieces: [piece], amount, data: {} };
}

export function sell(piece: number, amount: number, day = "2026-05-10"): NewFact {
  return { kind: "sell", day, pieces: [piece], amount, data: {} };
}

/** A program of the tests run as a process of its own: "writer" or "copier". */
export function runs(name: string, args: string[]): ChildProcess {
  return spawned([join(TOP, ".build-of-tests", `${name}.js`), ...args], {});
}

/** A tool of the project run as a person runs it. */
export function runsProgram(
  name: string,
  args: string[],
  environment: Record<string, string>,
  folder = TOP,
): ChildProcess {
  return spawned([programPath(name), ...args], environment, folder);
}

/** The same where no file may grow past so many KB: in the middle of a write the disk is full. */
export function runsOnFullDisk(
  name: string,
  args: string[],
  environment: Record<string, string>,
  kilobytes: number,
): ChildProcess {
  const limited = `ulimit -f ${kilobytes}; exec "$0" "$@"`;
  return spawn("bash", ["-c", limited, process.execPath, programPath(name), ...args], {
    cwd: TOP,
    env: { PATH: process.env["PATH"], BOT_TOKEN: "", ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
}

function spawned(args: string[], environment: Record<string, string>, folder = TOP): ChildProcess {
  return spawn(process.execPath, args, {
    cwd: folder,
    // An empty token: a developer's own settings file in this folder must not send a test to Telegram.
    env: { PATH: process.env["PATH"], BOT_TOKEN: "", ...environment },
    stdio: ["pipe", "pipe", "pipe"],
  });
}

/** Waits for the end of a process: its exit code and what it printed. */
export async function ended(child: ChildProcess): Promise<{ code: number | null; out: string; err: string }> {
  let out = "";
  let err = "";
  child.stdout?.on("data", (chunk) => {
    out += chunk;
  });
  child.stderr?.on("data", (chunk) => {
    err += chunk;
  });
  const code = await new Promise<number | null>((resolve) => child.on("close", resolve));
  return { code, out, err };
}

/** Waits for the first line that a process prints. */
export async function saysFirst(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = "";
    child.stdout?.on("data", (chunk) => {
      text += chunk;
      if (text.includes("\n")) resolve(text.split("\n")[0]!);
    });
    child.on("close", (code) => reject(new Error(`ended with ${code} before it said anything`)));
  });
}
