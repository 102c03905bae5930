import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { receiptPath } from "../../bot/files/receipts.ts";
import { beat } from "../../bot/health.ts";
import { backUp } from "../../db/backup.ts";
import type { Ledger } from "../../db/ledger.ts";
import {
  buy,
  clearLedgers,
  dataDirectory,
  ended,
  ledgerWithOwner,
  list,
  record,
  runsProgram,
  sell,
} from "./ledgers.ts";

afterEach(clearLedgers);

const command = (name: string, args: string[], environment: Record<string, string>) =>
  ended(runsProgram(name, args, environment));

/** The nightstand of the statement's example, and a note of June. */
function exampleLedger(): { ledger: Ledger; directory: string } {
  const { ledger, directory } = ledgerWithOwner();
  record(ledger, buy(ledger, 1200, "2026-05-03", "nightstand"), list(1, 5500, "2026-05-08"));
  record(ledger, sell(1, 5500, "2026-05-10"));
  record(ledger, buy(ledger, 3000, "2026-06-02"));
  return { ledger, directory };
}

describe("books", () => {
  test("prints the statement as one line of JSON, beside the writer", async () => {
    const { directory } = exampleLedger();
    const { code, out, err } = await command("books", ["--through", "2026-05-31"], { DATA_DIR: directory });
    expect({ code, err, lines: out.split("\n").length }).toEqual({ code: 0, err: "", lines: 2 });
    expect(JSON.parse(out)).toMatchObject({
      currency: "USD",
      through: "2026-05-31",
      pieces: [
        {
          number: 1,
          name: "nightstand",
          status: "sold",
          sold: "2026-05-10",
          proceeds: "55.00",
          profit: "43.00",
        },
      ],
      months: [{ month: "2026-05", flipped: 1, flipProfit: "43.00", cashIn: "55.00", cashOut: "12.00" }],
      loans: [],
      earmarked: "43.00",
      unsoldCost: "0.00",
    });
  });

  test("counts through today in the ledger's time zone unless told otherwise", async () => {
    const { ledger, directory } = exampleLedger();
    ledger.settings.set("timeZone", "Pacific/Kiritimati");
    const dayIn = (zone: string) => new Intl.DateTimeFormat("en-CA", { timeZone: zone }).format(new Date());
    const stored = await command("books", [], { DATA_DIR: directory, CURRENCY: "EUR" });
    expect(JSON.parse(stored.out)).toMatchObject({ through: dayIn("Pacific/Kiritimati"), currency: "EUR" });
    const set = await command("books", [], { DATA_DIR: directory, TIME_ZONE: "Pacific/Pago_Pago" });
    expect(JSON.parse(set.out).through).toBe(dayIn("Pacific/Pago_Pago"));
  });

  test("prints an empty statement where nothing was begun, and makes nothing", async () => {
    const directory = dataDirectory();
    const { code, out } = await command("books", ["--through", "2026-05-31"], { DATA_DIR: directory });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual({
      currency: "USD",
      through: "2026-05-31",
      pieces: [],
      months: [],
      loans: [],
      earmarked: "0.00",
      depositsHeld: "0.00",
      buyersOwe: "0.00",
      unsoldCost: "0.00",
    });
    expect(existsSync(directory)).toBe(false);
  });

  test.each([
    [["--through", "2026-02-30"], "not a day"],
    [["--through"], "through"],
    [["--until", "2026-05-31"], "--until"],
    [["2026-05-31"], "2026-05-31"],
  ])("refuses %j in words", async (args, words) => {
    const { code, out, err } = await command("books", args, { DATA_DIR: dataDirectory() });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toContain(words);
    expect(err).not.toContain("    at ");
  });
});

describe("the settings file of the folder", () => {
  test.each([
    ["books", ["--through", "2026-05-31"], "", /"earmarked":"43.00"/],
    ["ask", ["--on", "2026-05-31"], "profit this month\n", /43\.00/],
    ["doctor", [], "", /All is well: 4 facts/],
    ["export", [], "", /Wrote \d+ files/],
    ["restore", ["nowhere"], "", /no such file/],
    ["health", [], "", /handling updates/],
  ])("tells %s which ledger is meant", async (name, args, typed, wanted) => {
    const { directory } = exampleLedger();
    beat(directory, { polled: Date.now(), troubleSince: null });
    const folder = join(dataDirectory(), "..");
    writeFileSync(join(folder, ".env"), `DATA_DIR=${directory}\nTIME_ZONE=America/Chicago\n`);
    const child = runsProgram(name, args, {}, folder);
    child.stdin?.end(typed);
    const { out, err } = await ended(child);
    expect(out + err).toMatch(wanted);
  });
});

describe("doctor", () => {
  test("says that all is well, or what is not with exit code 1", async () => {
    const { ledger, directory } = exampleLedger();
    const well = await command("doctor", [], { DATA_DIR: directory });
    expect(well).toMatchObject({
      code: 0,
      err: "",
      out: "All is well: 4 facts (4 standing), 3 notes, 2 pieces.\n",
    });
    ledger.connection.sqlite.exec("update pieces set price = 1 where number = 1");
    const ill = await command("doctor", [], { DATA_DIR: directory });
    expect(ill.code).toBe(1);
    expect(ill.out).toContain("piece #1");
    const none = await command("doctor", [], { DATA_DIR: dataDirectory() });
    expect(none).toMatchObject({ code: 0, out: expect.stringContaining("No ledger has been begun") });
  });
});

describe("export", () => {
  test("puts the receipts' pictures beside the tables, by the names that the tables give them", async () => {
    const { ledger, directory } = exampleLedger();
    record(ledger, {
      kind: "spend",
      day: "2026-06-03",
      pieces: [],
      amount: 1250,
      data: { what: "Paint & primer", category: "materials" },
    });
    const note = ledger.transaction(() => {
      const { note } = ledger.standingFactsSince(0).at(-1)!;
      ledger.pictures.add({ note, file: "in the chat", uniqueFile: "A/b", taken: 0 });
      return note;
    });
    const [receipt] = ledger.pictures.ofMessage(note);
    mkdirSync(join(directory, "receipts"));
    writeFileSync(receiptPath(directory, receipt!), "bytes");
    const folder = join(directory, "out");
    const { code, out } = await command("export", [folder], { DATA_DIR: directory, TIME_ZONE: "UTC" });
    expect({ code, out }).toEqual({ code: 0, out: expect.stringContaining("1 picture of receipts") });
    const name = "2026-06-03-paint-primer-12.50-1.jpg";
    expect(readFileSync(join(folder, "receipts", name), "utf8")).toBe("bytes");
    const table = readdirSync(folder).find((each) => each.endsWith("pictures.csv"))!;
    expect(readFileSync(join(folder, table), "utf8")).toContain(`receipts/${name},in the chat`);
  });
});

describe("restore", () => {
  test("says what changed, and refuses while the bot runs", async () => {
    const { ledger, directory } = exampleLedger();
    const backup = backUp(ledger.connection, directory, "2026-06-02");
    if (backup.kind !== "made") throw new Error(backup.why);
    const file = backup.backup.path;
    record(ledger, sell(2, 9000, "2026-06-03"));
    const locked = await command("restore", [file], { DATA_DIR: directory });
    expect(locked).toMatchObject({ code: 1, out: "", err: expect.stringContaining("Stop it first") });
    ledger.close();
    const done = await command("restore", [file], { DATA_DIR: directory });
    expect(done).toMatchObject({ code: 0, err: "" });
    expect(done.out).toContain("Before: 4 notes, 5 facts, 2 pieces, 103.00 earmarked");
    expect(done.out).toContain("Now:    3 notes, 4 facts, 2 pieces, 43.00 earmarked");
    const kept = /kept in (.+)/.exec(done.out)?.[1] ?? "";
    expect(existsSync(kept)).toBe(true);
    const bad = await command("restore", [join(directory, "nowhere")], { DATA_DIR: directory });
    expect(bad).toMatchObject({ code: 1, err: expect.stringContaining("no such file") });
    const unnamed = await command("restore", [], { DATA_DIR: directory });
    expect(unnamed).toMatchObject({ code: 2, err: expect.stringContaining("usage") });
  });
});
