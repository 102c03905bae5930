import { execFile } from "node:child_process";
import { chmodSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { examine } from "../../db/doctor.ts";
import { openLedger, openReader } from "../../db/open.ts";
import { programPath } from "../programs.ts";
import { type Standin, startStandin } from "../standin/standin.ts";
import { type BotProcess, startBot, startProgram } from "./bot-process.ts";

const run = promisify(execFile);

let directory: string;
let standin: Standin;
let bots: BotProcess[];
beforeEach(async () => {
  directory = mkdtempSync(join(tmpdir(), "tailgate-process-"));
  standin = await startStandin();
  bots = [];
});
afterEach(async ({ task }) => {
  for (const bot of bots) {
    if (!bot.exit) await bot.kill();
    if (task.result?.state === "fail") console.log(bot.output);
    // Whatever happened, and at the most talkative level: the token is in no line of it.
    expect(bot.output).not.toContain(standin.token);
  }
  await standin.close();
  rmSync(directory, { recursive: true, force: true });
});

function start(environment: Record<string, string> = {}): BotProcess {
  const bot = startBot(standin, directory, environment);
  bots.push(bot);
  return bot;
}

function rows(query: string): Record<string, unknown>[] {
  const opened = openReader(directory);
  if (opened.kind !== "open") throw new Error(`ledger: ${opened.kind}`);
  try {
    return opened.reader.connection.sqlite.prepare(query).all() as Record<string, unknown>[];
  } finally {
    opened.reader.close();
  }
}

const facts = () => rows("select kind, amount, day from facts order by id");

describe("starting", () => {
  it("with settings that are wrong says of each what it must be, and ends with 1", async () => {
    const bot = start({
      BOT_TOKEN: "nonsense",
      OWNER_ID: "robin",
      TIME_ZONE: "Mars/Base",
      CURRENCY: "JPY",
      LOG_LEVEL: "loud",
    });
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    for (const said of [
      "BOT_TOKEN is not in the form",
      "OWNER_ID must be",
      "TIME_ZONE must be",
      "CURRENCY must have two decimals",
      "LOG_LEVEL must be one of",
    ])
      expect(bot.output).toContain(said);
  });

  it("without an owner shows the way to become it, once only", async () => {
    const bot = start({ OWNER_ID: "" });
    const code = await standin.waitFor(() => /\/start [\w-]{32}/.exec(bot.output)?.[0]);
    standin.say(code);
    await standin.waitForReply(/bought dresser 30/);
    await bot.stop();
    const again = start({ OWNER_ID: "" });
    standin.say("month");
    await standin.waitForReply();
    expect(again.output).not.toContain("/start");
  });

  it("in a place that cannot be written says so", async () => {
    writeFileSync(join(directory, "file"), "");
    const bot = start({ DATA_DIR: join(directory, "file", "data") });
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    expect(bot.output).toMatch(/The ledger cannot be used/);
  });

  it("in a file system that takes no folders says so, and ends", async () => {
    const bot = start({ DATA_DIR: "/proc/ledger/data" });
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    expect(bot.output).toMatch(/The ledger cannot be used/);
  });

  it("in a read-only data directory says so and records nothing", async () => {
    chmodSync(directory, 0o555);
    // The superuser may write anywhere, so the bot is started as nobody where the tests run as root.
    const asNobody = process.getuid?.() === 0 ? 65534 : undefined;
    const bot = startBot(standin, directory, {}, asNobody);
    bots.push(bot);
    standin.say("bought dresser 30");
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    expect(bot.output).toMatch(/may not be read or written|read-only/);
    expect(readdirSync(directory)).toEqual([]);
    expect(standin.waiting).toBe(1);
    chmodSync(directory, 0o755);
  });

  it("a token that Telegram does not know ends it with 1", async () => {
    const bot = start({ BOT_TOKEN: "100200300:withdrawn" });
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    expect(bot.output).toMatch(/does not know this token/);
  });
});

describe("one writer", () => {
  it("a second one refuses and says why; readers run beside; a killed one frees the place", async () => {
    const first = start();
    standin.say("bought dresser 30");
    await standin.waitForReply("dresser");
    const second = start();
    expect(await second.exited).toEqual({ code: 1, signal: null });
    expect(second.output).toMatch(/running already on the books/);
    const terminal = startProgram("main", { DATA_DIR: directory });
    expect((await terminal.exited).code).toBe(1);
    const environment = { ...process.env, DATA_DIR: directory };
    const reader = (name: string) => run(process.execPath, [programPath(name)], { env: environment });
    const books = JSON.parse((await reader("books")).stdout) as { pieces: unknown[] };
    expect(books.pieces).toHaveLength(1);
    await reader("doctor");
    expect((await reader("health")).stdout).toContain("handling updates");
    await first.kill();
    start();
    standin.say("sold dresser 190 cash");
    await standin.waitForReply("190");
    expect(facts()).toHaveLength(2);
  });
});

describe("ending", () => {
  it("SIGTERM ends it within five seconds with 0, a poll in wait or a send hanging", async () => {
    const bot = start();
    standin.say("bought dresser 30");
    await standin.waitForReply("dresser");
    const asked = Date.now();
    expect(await bot.stop()).toEqual({ code: 0, signal: null });
    expect(Date.now() - asked).toBeLessThan(2000);
    const next = start();
    standin.fail("sendMessage", { kind: "hangs" });
    standin.say("paint 12.50 for dresser");
    await standin.waitFor(() =>
      standin.calls.findLast(({ fields }) => /12\.50/.test(String(fields["text"]))),
    );
    const askedAgain = Date.now();
    expect(await next.stop()).toEqual({ code: 0, signal: null });
    expect(Date.now() - askedAgain).toBeLessThan(5000);
    start();
    await standin.waitForReply(/12\.50/);
    expect(facts()).toHaveLength(2);
  });

  it("SIGINT in an outage ends it within five seconds too", async () => {
    standin.outage(true);
    const bot = start();
    await standin.waitFor(() => /cannot be reached/.test(bot.output) || undefined);
    const asked = Date.now();
    bot.send("SIGINT");
    expect(await bot.exited).toEqual({ code: 0, signal: null });
    expect(Date.now() - asked).toBeLessThan(5000);
  });

  it("kill -9 right after a reply loses nothing, and what it leaves is for its owner only", async () => {
    const bot = start();
    standin.say("bought dresser 30");
    await standin.waitForReply("dresser");
    await bot.kill();
    const files = readdirSync(directory, { recursive: true, withFileTypes: true }).filter((each) =>
      each.isFile(),
    );
    expect(files.length).toBeGreaterThan(3);
    for (const { parentPath, name } of files) {
      expect([name, statSync(join(parentPath, name)).mode & 0o777]).toEqual([name, 0o600]);
    }
    expect(facts()).toMatchObject([{ kind: "buy", amount: 3000 }]);
    expect(examine(directory)?.findings).toEqual([]);
  });
});

describe("trouble while it runs", () => {
  it("a full disk: said honestly, no half fact, and on it goes when there is room", async () => {
    const full = join(directory, "..", `full-${process.pid}`);
    start({ FULL_DISK: full });
    standin.say("bought dresser 30");
    await standin.waitForReply("dresser");
    writeFileSync(full, "");
    standin.say("paint 12.50 for dresser");
    await standin.waitForReply("Nothing was recorded");
    expect(facts()).toHaveLength(1);
    rmSync(full);
    standin.say("paint 12.50 for dresser");
    await standin.waitForReply(/12\.50/);
    expect(facts()).toMatchObject([{ kind: "buy" }, { kind: "spend", amount: 1250 }]);
    expect(examine(directory)?.findings).toEqual([]);
  });

  it("down for two days: the owner hears from when to when notes may be missing, and the rest is handled, behind another poller too", async () => {
    const first = start();
    standin.say("bought dresser 30");
    await standin.waitForReply("dresser");
    await first.stop();
    const opened = openLedger({ directory, now: Date.now() });
    if (opened.kind !== "open") throw new Error(opened.kind);
    const { ledger } = opened;
    ledger.transaction(() => ledger.settings.set("lastSeenUpdateAt", Date.now() - 2 * 86_400_000));
    ledger.close();
    standin.say("sold dresser 190 cash", { date: Date.now() - 3_600_000 });
    standin.fail("getUpdates", { kind: "status", code: 409 }, 1);
    start();
    await standin.waitForReply(/out of reach from .* may be missing/s, 15_000);
    await standin.waitForReply("190");
    expect(facts()).toHaveLength(2);
  });
});
