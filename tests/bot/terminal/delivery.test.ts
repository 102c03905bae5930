import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { backupBody, exportBodies } from "../../../bot/files/bodies.ts";
import { openDelivery, TERMINAL_CHAT } from "../../../bot/terminal/delivery.ts";
import type { Ledger } from "../../../db/ledger.ts";
import { openLedger } from "../../../db/open.ts";

let directory: string;
let ledger: Ledger;
let printed: string[];

beforeEach(() => {
  directory = mkdtempSync(join(tmpdir(), "tailgate-terminal-"));
  const opened = openLedger({ directory, now: 0 });
  if (opened.kind !== "open") throw new Error(opened.kind);
  ledger = opened.ledger;
  printed = [];
});
afterEach(() => {
  ledger.close();
  rmSync(directory, { recursive: true, force: true });
});

const delivery = () => openDelivery({ ledger, print: (text) => printed.push(text), now: () => 0 });

function queue(...bodies: Parameters<Ledger["outbox"]["queue"]>[0]["body"][]): void {
  ledger.transaction(() => {
    for (const body of bodies) ledger.outbox.queue({ chat: TERMINAL_CHAT, body });
  });
}

test("replies are shown once and in order, the newest buttons as letters", async () => {
  const buttons = [[{ label: "Undo", press: "u:1" }]];
  queue({ kind: "text", reply: { text: "first" } }, { kind: "text", reply: { text: "second", buttons } });
  const { show } = delivery();
  expect([...(await show())!]).toEqual([["a", "u:1"]]);
  expect(printed).toEqual(["first", "second\n  a) Undo"]);
  expect(await show()).toBeNull();
  expect(printed).toHaveLength(2);
});

test("two showings at once, as when the schedule wakes a chat that is being shown, save a file once", async () => {
  const asked = { through: "2026-05-09", currency: "USD" };
  const [workbook] = exportBodies(asked);
  queue(workbook!, { kind: "text", reply: { text: "after it" } });
  const { show } = delivery();
  await Promise.all([show(), show()]);
  const exports = join(directory, "exports");
  expect(printed).toEqual([expect.stringContaining(`\nSaved as ${exports}`), "after it"]);
  expect(readdirSync(exports)).toEqual(["tailgate-2026-05-09.xlsx"]);
  queue(workbook!);
  await show();
  expect(readdirSync(exports)).toEqual(["tailgate-2026-05-09-2.xlsx", "tailgate-2026-05-09.xlsx"]);
  if (process.platform !== "win32") expect(statSync(exports).mode & 0o777).toBe(0o700);
});

test("a backup is not copied once more: it is shown where it lies", async () => {
  const before = readdirSync(process.cwd());
  queue(backupBody("2026-05-09"));
  await delivery().show();
  const path = join(directory, "backups", "ledger-2026-05-09.sqlite");
  expect(printed).toEqual([expect.stringContaining(`\nSaved as ${path}`)]);
  expect(readdirSync(join(directory, "backups"))).toEqual(["ledger-2026-05-09.sqlite"]);
  expect(readdirSync(process.cwd())).toEqual(before);
});

test("a file that cannot be saved is said, and what comes after it is shown", async () => {
  writeFileSync(join(directory, "exports"), "a file where the folder would be");
  const [workbook] = exportBodies({ through: "2026-05-09", currency: "USD" });
  queue(workbook!, { kind: "text", reply: { text: "after it" } });
  await delivery().show();
  expect(printed).toEqual([expect.stringMatching(/^tailgate-.*xlsx could not be saved: /), "after it"]);
  expect(ledger.outbox.nextUnsent(0)).toBeNull();
});
