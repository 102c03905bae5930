import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { examineFile } from "../../db/doctor.ts";
import { openLedger, openReader } from "../../db/open.ts";
import {
  clearLedgers,
  dataDirectory,
  ended,
  ledgerWithOwner,
  opensLedger,
  runs,
  saysFirst,
} from "./ledgers.ts";

afterEach(clearLedgers);

describe("one writer at a time", () => {
  test("a second process is told so, readers go on, and a killed one frees the place at once", async () => {
    const { ledger, directory } = ledgerWithOwner();
    expect(openLedger({ directory, now: 0 })).toEqual({ kind: "locked" });
    const refused = await ended(runs("writer", [directory]));
    expect(refused).toMatchObject({ code: 3, out: "locked\n" });
    ledger.close();

    const holder = runs("writer", [directory, "hold"]);
    expect(await saysFirst(holder)).toBe("open");
    expect(openLedger({ directory, now: 0 })).toEqual({ kind: "locked" });
    const reading = openReader(directory);
    expect(reading.kind).toBe("open");
    if (reading.kind === "open") reading.reader.close();
    holder.kill("SIGKILL");
    await new Promise((resolve) => holder.once("close", resolve));
    expect(opensLedger(directory).members.owner()?.name).toBe("Robin");
  });

  test("closing a ledger frees the place too", () => {
    const { ledger, directory } = ledgerWithOwner();
    ledger.close();
    opensLedger(directory).close();
    opensLedger(directory);
    expect(openLedger({ directory, now: 0 })).toEqual({ kind: "locked" });
  });

  test("ledgers in two directories do not get in each other's way", () => {
    ledgerWithOwner();
    expect(openLedger({ directory: dataDirectory(), now: 0 }).kind).toBe("open");
  });
});

describe("a writer killed at work", () => {
  /** Runs the writer until it has told of eight more notes and a while has passed; gives the last one it told of. */
  async function killedAfter(directory: string, milliseconds: number): Promise<number> {
    const child = runs("writer", [directory]);
    const output = ended(child);
    let lines = 0;
    await new Promise<void>((resolve) => {
      child.stdout?.on("data", (chunk) => {
        lines += String(chunk).split("\n").length - 1;
        if (lines > 8) resolve();
      });
    });
    await new Promise((resolve) => setTimeout(resolve, milliseconds));
    child.kill("SIGKILL");
    return Number((await output).out.split("\n").at(-2));
  }

  test("leaves each note wholly there or wholly absent, and none that it told of is lost", async () => {
    const { ledger, directory } = ledgerWithOwner();
    ledger.close();
    let told = 0;
    for (const wait of [0, 3, 8, 13, 21]) {
      told = Math.max(told, await killedAfter(directory, wait));
      const again = opensLedger(directory);
      const { sqlite } = again.connection;
      const whole = sqlite
        .prepare(
          `select n.id, n.state,
             (select count(*) from facts where note = n.id) as facts,
             (select count(*) from outbox where note = n.id) as replies,
             (select count(*) from seen_updates where key = 'update ' || n.id) as seen
           from notes n`,
        )
        .all() as Record<string, unknown>[];
      expect(whole.length).toBeGreaterThanOrEqual(told);
      for (const note of whole)
        expect(note).toMatchObject({ state: "recorded", facts: 2, replies: 1, seen: 1 });
      const count = (table: string) => sqlite.prepare(`select count(*) from ${table}`).pluck().get();
      expect(count("facts")).toBe(2 * whole.length);
      expect(count("outbox")).toBe(whole.length);
      expect(again.nextPiece).toBe(whole.length + 1);
      again.close();
      expect(examineFile(join(directory, "ledger.sqlite")).findings).toEqual([]);
    }
    expect(told).toBeGreaterThanOrEqual(40);
  });
});
