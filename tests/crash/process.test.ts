import { execFile } from "node:child_process";
import { chmodSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { test as base, describe, expect } from "vitest";
import { examine } from "../../db/doctor.ts";
import { openLedger, openReader } from "../../db/open.ts";
import { programPath } from "../programs.ts";
import { type Standin, startStandin } from "../standin/standin.ts";
import { type BotProcess, morningZone, startBot, startProgram } from "./bot-process.ts";

const run = promisify(execFile);

/** A data directory, a server and the bots started on them, all of one test's own. */
class Place {
  readonly directory = mkdtempSync(join(tmpdir(), "tailgate-process-"));
  readonly bots: BotProcess[] = [];

  constructor(readonly standin: Standin) {}

  start(environment: Record<string, string> = {}, user?: number): BotProcess {
    const bot = startBot(this.standin, this.directory, environment, user);
    this.bots.push(bot);
    return bot;
  }

  facts(): Record<string, unknown>[] {
    const opened = openReader(this.directory);
    if (opened.kind !== "open") throw new Error(`ledger: ${opened.kind}`);
    const query = "select kind, amount, day from facts order by id";
    try {
      return opened.reader.connection.sqlite.prepare(query).all() as Record<string, unknown>[];
    } finally {
      opened.reader.close();
    }
  }

  async close(isFailed: boolean): Promise<void> {
    for (const bot of this.bots) {
      if (!bot.exit) await bot.kill();
      if (isFailed) console.log(bot.output);
      // Whatever happened, and at the most talkative level: the token is in no line of it.
      expect(bot.output).not.toContain(this.standin.token);
    }
    await this.standin.close();
    rmSync(this.directory, { recursive: true, force: true });
  }
}

// Each test has a place of its own and mostly waits for a process, so they run side by side; those that measure how
// long ending takes run alone.
const it = base.extend<{ place: Place }>({
  place: async ({ task }, use) => {
    const place = new Place(await startStandin());
    await use(place);
    await place.close(task.result?.state === "fail");
  },
});

describe.concurrent("starting", () => {
  it("with settings that are wrong says of each what it must be, and ends with 1", async ({ place }) => {
    const bot = place.start({
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

  it("without an owner shows the way to become it, once only", async ({ place }) => {
    const bot = place.start({ OWNER_ID: "" });
    const code = await place.standin.waitFor(() => /\/start [\w-]{32}/.exec(bot.output)?.[0]);
    place.standin.say(code);
    await place.standin.waitForReply(/bought dresser 30/);
    await bot.stop();
    const again = place.start({ OWNER_ID: "" });
    place.standin.say("month");
    await place.standin.waitForReply();
    expect(again.output).not.toContain("/start");
  });

  it("in a place that cannot be written says so", async ({ place }) => {
    writeFileSync(join(place.directory, "file"), "");
    const bot = place.start({ DATA_DIR: join(place.directory, "file", "data") });
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    expect(bot.output).toMatch(/The ledger cannot be used/);
  });

  it("in a file system that takes no folders says so, and ends", async ({ place }) => {
    const bot = place.start({ DATA_DIR: "/proc/ledger/data" });
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    expect(bot.output).toMatch(/The ledger cannot be used/);
  });

  it("in a read-only data directory says so and records nothing", async ({ place }) => {
    chmodSync(place.directory, 0o555);
    // The superuser may write anywhere, so the bot is started as nobody where the tests run as root.
    const asNobody = process.getuid?.() === 0 ? 65534 : undefined;
    const bot = place.start({}, asNobody);
    place.standin.say("bought dresser 30");
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    expect(bot.output).toMatch(/may not be read or written|read-only/);
    expect(readdirSync(place.directory)).toEqual([]);
    expect(place.standin.waiting).toBe(1);
    chmodSync(place.directory, 0o755);
  });

  it("a token that Telegram does not know ends it with 1", async ({ place }) => {
    const bot = place.start({ BOT_TOKEN: "100200300:withdrawn" });
    expect(await bot.exited).toEqual({ code: 1, signal: null });
    expect(bot.output).toMatch(/does not know this token/);
  });
});

describe.concurrent("while it runs", () => {
  it("files come from the bot itself and pictures from a process beside it", async ({ place }) => {
    place.start();
    place.standin.say("bought dresser 30");
    await place.standin.waitForReply("dresser");
    place.standin.say("export");
    const files = () => place.standin.sent().flatMap(({ file }) => file ?? []);
    const workbook = await place.standin.waitFor(() => files()[0]);
    expect(workbook).toMatchObject({ name: expect.stringMatching(/\.xlsx$/) });
    place.standin.say("chart of spending by month");
    const isPicture = ({ method }: { method: string }) => method === "sendPhoto";
    await place.standin.waitFor(() => place.standin.sent().find(isPicture));
    expect(place.bots[0]?.output).not.toContain("file not made");
  });
});

describe.concurrent("one writer", () => {
  it("a second one refuses and says why; readers run beside; a killed one frees the place", async ({
    place,
  }) => {
    const first = place.start();
    place.standin.say("bought dresser 30");
    await place.standin.waitForReply("dresser");
    const second = place.start();
    expect(await second.exited).toEqual({ code: 1, signal: null });
    expect(second.output).toMatch(/running already on the books/);
    const terminal = startProgram("main", { DATA_DIR: place.directory });
    expect((await terminal.exited).code).toBe(1);
    // In the bot's own zone: its day may have begun where the machine's has not.
    const environment = { ...process.env, DATA_DIR: place.directory, TIME_ZONE: morningZone(new Date()) };
    const reader = (name: string) => run(process.execPath, [programPath(name)], { env: environment });
    const books = JSON.parse((await reader("books")).stdout) as { pieces: unknown[] };
    expect(books.pieces).toHaveLength(1);
    await reader("doctor");
    expect((await reader("health")).stdout).toContain("handling updates");
    await first.kill();
    place.start();
    place.standin.say("sold dresser 190 cash");
    await place.standin.waitForReply("190");
    expect(place.facts()).toHaveLength(2);
  });
});

describe.concurrent("trouble while it runs", () => {
  it("a full disk: said honestly, no half fact, and on it goes when there is room", async ({ place }) => {
    const full = join(place.directory, "..", `full-${process.pid}`);
    place.start({ FULL_DISK: full });
    place.standin.say("bought dresser 30");
    await place.standin.waitForReply("dresser");
    writeFileSync(full, "");
    place.standin.say("paint 12.50 for dresser");
    await place.standin.waitForReply("Nothing was recorded");
    expect(place.facts()).toHaveLength(1);
    rmSync(full);
    place.standin.say("paint 12.50 for dresser");
    await place.standin.waitForReply(/12\.50/);
    expect(place.facts()).toMatchObject([{ kind: "buy" }, { kind: "spend", amount: 1250 }]);
    expect(examine(place.directory)?.findings).toEqual([]);
  });

  it("down for two days: the owner hears from when to when notes may be missing, and the rest is handled, behind another poller too", async ({
    place,
  }) => {
    const first = place.start();
    place.standin.say("bought dresser 30");
    await place.standin.waitForReply("dresser");
    await first.stop();
    const opened = openLedger({ directory: place.directory, now: Date.now() });
    if (opened.kind !== "open") throw new Error(opened.kind);
    const { ledger } = opened;
    ledger.transaction(() => ledger.settings.set("lastSeenUpdateAt", Date.now() - 2 * 86_400_000));
    ledger.close();
    place.standin.say("sold dresser 190 cash", { date: Date.now() - 3_600_000 });
    place.standin.fail("getUpdates", { kind: "status", code: 409 }, 1);
    place.start();
    await place.standin.waitForReply(/out of reach from .* may be missing/s, 15_000);
    await place.standin.waitForReply("190");
    expect(place.facts()).toHaveLength(2);
  });
});

describe("ending", () => {
  it("SIGTERM ends it within five seconds with 0, a poll in wait or a send hanging", async ({ place }) => {
    const bot = place.start();
    place.standin.say("bought dresser 30");
    await place.standin.waitForReply("dresser");
    const asked = Date.now();
    expect(await bot.stop()).toEqual({ code: 0, signal: null });
    expect(Date.now() - asked).toBeLessThan(2000);
    const next = place.start();
    place.standin.fail("sendMessage", { kind: "hangs" });
    place.standin.say("paint 12.50 for dresser");
    await place.standin.waitFor(() =>
      place.standin.calls.findLast(({ fields }) => /12\.50/.test(String(fields["text"]))),
    );
    const askedAgain = Date.now();
    expect(await next.stop()).toEqual({ code: 0, signal: null });
    expect(Date.now() - askedAgain).toBeLessThan(5000);
    place.start();
    await place.standin.waitForReply(/12\.50/);
    expect(place.facts()).toHaveLength(2);
  });

  it("SIGINT in an outage ends it within five seconds too", async ({ place }) => {
    place.standin.outage(true);
    const bot = place.start();
    await place.standin.waitFor(() => /cannot be reached/.test(bot.output) || undefined);
    const asked = Date.now();
    bot.send("SIGINT");
    expect(await bot.exited).toEqual({ code: 0, signal: null });
    expect(Date.now() - asked).toBeLessThan(5000);
  });

  it("kill -9 right after a reply loses nothing, and what it leaves is for its owner only", async ({
    place,
  }) => {
    const bot = place.start();
    place.standin.say("bought dresser 30");
    await place.standin.waitForReply("dresser");
    await bot.kill();
    const files = readdirSync(place.directory, { recursive: true, withFileTypes: true }).filter((each) =>
      each.isFile(),
    );
    expect(files.length).toBeGreaterThan(3);
    for (const { parentPath, name } of files) {
      expect([name, statSync(join(parentPath, name)).mode & 0o777]).toEqual([name, 0o600]);
    }
    expect(place.facts()).toMatchObject([{ kind: "buy", amount: 3000 }]);
    expect(examine(place.directory)?.findings).toEqual([]);
  });
});
