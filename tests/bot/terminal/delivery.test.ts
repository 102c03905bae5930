import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { backupBody } from "../../../bot/files/bodies.ts";
import { openDelivery, TERMINAL_CHAT } from "../../../bot/terminal/delivery.ts";
import type { Ledger } from "../../../db/ledger.ts";
import { openLedger } from "../../../db/open.ts";

let directory: string;
let folder: string;
let ledger: Ledger;
let printed: string[];

beforeEach(() => {
  directory = mkdtempSync(join(tmpdir(), "tailgate-terminal-"));
  folder = mkdtempSync(join(tmpdir(), "tailgate-saved-"));
  const opened = openLedger({ directory, now: 0 });
  if (opened.kind !== "open") throw new Error(opened.kind);
  ledger = opened.ledger;
  printed = [];
});
afterEach(() => {
  ledger.close();
  for (const made of [directory, folder]) rmSync(made, { recursive: true, force: true });
});

const delivery = (into = folder) =>
  openDelivery({ ledger, print: (text) => printed.push(text), now: () => 0, folder: into });

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
  queue(backupBody("2026-05-09"), { kind: "text", reply: { text: "after it" } });
  const { show } = delivery();
  await Promise.all([show(), show()]);
  expect(printed).toEqual([expect.stringMatching(/\nSaved as .*\.sqlite$/), "after it"]);
  expect(readdirSync(folder)).toHaveLength(1);
  queue(backupBody("2026-05-09"));
  await show();
  expect(readdirSync(folder)).toEqual(["ledger-2026-05-09-2.sqlite", "ledger-2026-05-09.sqlite"]);
});

test("a file that cannot be saved is said, and what comes after it is shown", async () => {
  queue(backupBody("2026-05-09"), { kind: "text", reply: { text: "after it" } });
  await delivery(join(folder, "not there")).show();
  expect(printed).toEqual([expect.stringMatching(/^ledger\.sqlite could not be saved: /), "after it"]);
  expect(ledger.outbox.nextUnsent(0)).toBeNull();
});
