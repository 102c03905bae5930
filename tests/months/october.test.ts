import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, test } from "vitest";
import type { Statement } from "../../core/books/statement.ts";
import { programPath, startOfBot, TOP } from "../programs.ts";
import { OWNER, startStandin } from "../standin/standin.ts";
import { octoberEnd, octoberFigures, octoberNotes } from "./october.ts";

const endings: (() => void | Promise<void>)[] = [];

afterEach(async () => {
  for (const end of endings.splice(0).reverse()) await end();
});

function ownFolder(): string {
  const directory = mkdtempSync(join(tmpdir(), "tailgate-month-"));
  endings.push(() => rmSync(directory, { recursive: true, force: true }));
  return directory;
}

/** The settings of a process under test: its own folder, one time zone, nothing of this machine's. */
function environment(directory: string, more: Record<string, string> = {}): NodeJS.ProcessEnv {
  return {
    PATH: process.env["PATH"],
    DATA_DIR: directory,
    TIME_ZONE: "America/Chicago",
    LOG_LEVEL: "error",
    ...more,
  };
}

function statementThrough(directory: string, day: string): Statement {
  const args = [programPath("books"), "--through", day];
  return JSON.parse(
    execFileSync(process.execPath, args, { cwd: TOP, env: environment(directory), encoding: "utf8" }),
  );
}

/** The chat at a terminal without one: its input is a pipe, and what it has printed so far is kept. */
function openTerminal(directory: string) {
  const chat = spawn(process.execPath, startOfBot(), {
    cwd: TOP,
    env: environment(directory),
    stdio: ["pipe", "pipe", "inherit"],
  });
  endings.push(() => void chat.kill("SIGKILL"));
  let output = "";
  chat.stdout.setEncoding("utf8").on("data", (text: string) => {
    output += text;
  });
  return { chat, printed: () => output };
}

async function typeAtTerminal(directory: string, notes: readonly string[]): Promise<string> {
  const { chat, printed } = openTerminal(directory);
  chat.stdin.end(`${notes.join("\n")}\n`);
  const [code] = await once(chat, "close");
  expect(code).toBe(0);
  return printed();
}

function expectOctober(statement: Statement): void {
  const profits = Object.fromEntries(statement.pieces.map((piece) => [piece.number, piece.profit]));
  expect(profits).toEqual(octoberFigures.profits);
  expect(statement.months).toEqual([octoberFigures.month]);
  expect(statement.loans).toEqual([octoberFigures.loan]);
  const { earmarked, depositsHeld, unsoldCost } = octoberFigures;
  expect(statement).toMatchObject({
    earmarked,
    depositsHeld,
    unsoldCost,
    through: octoberEnd,
    currency: "USD",
  });
}

interface Typed {
  output: string;
  statement: Statement;
}

let typed: Promise<Typed> | undefined;

/** The whole month typed at the terminal, once. */
function typedMonth(): Promise<Typed> {
  typed ??= (async () => {
    const directory = ownFolder();
    const output = await typeAtTerminal(directory, octoberNotes);
    return { output, statement: statementThrough(directory, octoberEnd) };
  })();
  return typed;
}

test("a month typed at the terminal comes out as worked out by hand", async () => {
  const { output, statement } = await typedMonth();
  expectOctober(statement);
  expect(output).toContain("Profit 92.55");
});

test("the same month through a Bot API server gives the same statement", async () => {
  const directory = ownFolder();
  const standin = await startStandin();
  endings.push(() => standin.close());
  const bot = startBot(directory, standin.root, standin.token);
  for (const note of octoberNotes) standin.say(note);
  // All of them are handled once none is waiting; replies that pile up are joined.
  await expect.poll(() => standin.waiting, { timeout: 50_000 }).toBe(0);
  await expect.poll(() => standin.sent().length, { timeout: 50_000 }).toBeGreaterThan(0);
  await end(bot);
  const statement = statementThrough(directory, octoberEnd);
  expectOctober(statement);
  expect(statement).toEqual((await typedMonth()).statement);
});

function startBot(directory: string, root: string, token: string): ChildProcess {
  const more = { BOT_TOKEN: token, OWNER_ID: String(OWNER.id), TELEGRAM_API_ROOT: root };
  const bot = spawn(process.execPath, startOfBot(), {
    cwd: TOP,
    env: environment(directory, more),
    stdio: ["ignore", "ignore", "inherit"],
  });
  endings.push(() => void bot.kill("SIGKILL"));
  return bot;
}

async function end(bot: ChildProcess): Promise<void> {
  const closed = once(bot, "close");
  bot.kill("SIGTERM");
  await closed;
}

test("what was answered is kept when the process is killed right after the reply", async () => {
  const directory = ownFolder();
  const { chat, printed } = openTerminal(directory);
  chat.stdin.write("bought dresser 30 2026-10-05\n");
  await expect.poll(printed, { timeout: 30_000 }).toContain("#1 dresser");
  const closed = once(chat, "close");
  chat.kill("SIGKILL");
  await closed;
  const statement = statementThrough(directory, octoberEnd);
  expect(statement.pieces.map(({ number, name, price }) => ({ number, name, price }))).toEqual([
    { number: 1, name: "dresser", price: "30.00" },
  ]);
});
