import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, expect, test } from "vitest";
import { createAside } from "../../bot/aside.ts";
import { exportBodies, monthPictureBody } from "../../bot/files/bodies.ts";
import { makeFile } from "../../bot/files/make.ts";
import { examineFile } from "../../db/doctor.ts";
import { buy, clearLedgers, dataDirectory, ledgerWithOwner, record, sell } from "../db/ledgers.ts";
import { programPath } from "../programs.ts";

afterEach(clearLedgers);

const asideOf = (directory: string) => createAside(directory, [programPath("aside")]);

test("a copy made beside the bot is the ledger, while the bot has it open", async () => {
  const { ledger, directory } = ledgerWithOwner();
  record(ledger, buy(ledger, 3000));
  const copied = await asideOf(directory).copy("2026-05-09");
  const path = join(directory, "backups", "ledger-2026-05-09.sqlite");
  expect(copied).toEqual({ kind: "made", backup: { day: "2026-05-09", path } });
  expect(examineFile(path)).toMatchObject({ findings: [], counts: { facts: 1 } });
  record(ledger, sell(1, 9000));
});

test("files made beside the bot are those that the bot makes", async () => {
  const { ledger, directory } = ledgerWithOwner();
  record(ledger, buy(ledger, 3000), sell(1, 9000, "2026-05-09"));
  const asked = { today: "2026-05-31", currency: "USD" };
  const pieces = exportBodies({ through: asked.today, currency: "USD" }).find(({ make }) =>
    make.name.endsWith("-pieces.csv"),
  );
  const picture = monthPictureBody(ledger.books, { ...asked, month: "2026-05" });
  for (const { make } of [pieces!, picture!]) {
    const [own, aside] = [await makeFile(ledger, make), await asideOf(directory).make(make)];
    expect(aside.name).toBe(own.name);
    expect(Buffer.from(own.bytes).equals(aside.bytes)).toBe(true);
  }
});

test("what goes wrong beside the bot comes back as words", async () => {
  const directory = dataDirectory();
  const copied = await asideOf(directory).copy("2026-05-09");
  expect(copied).toEqual({ kind: "failed", why: "there is no ledger" });
  expect(existsSync(directory)).toBe(false);
  const { directory: other } = ledgerWithOwner();
  const make = { what: "picture" as const, name: "a.png", args: {} };
  await expect(asideOf(other).make(make)).rejects.toThrow("not made anew");
  expect(readFileSync(join(other, "ledger.sqlite")).length).toBeGreaterThan(0);
});
