import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openReader } from "../../../db/open.ts";
import { programPath } from "../../programs.ts";
import { type Standin, startStandin } from "../../standin/standin.ts";

let home: string;
let standin: Standin;
let children: Program[];
beforeEach(async () => {
  home = mkdtempSync(join(tmpdir(), "tailgate-home-"));
  standin = await startStandin();
  children = [];
});
afterEach(async () => {
  for (const { child } of children) if (child.exitCode === null) child.kill("SIGKILL");
  await standin.close();
  rmSync(home, { recursive: true, force: true });
});

interface Program {
  child: ChildProcess;
  output(): string;
  /** Types lines, each after its question has come. */
  type(...lines: string[]): void;
  saying(words: string | RegExp): Promise<string>;
  exit(): Promise<number | null>;
}

/** A program of the project started in an empty folder, with nothing in its environment but the server's address. */
function starts(name: string, environment: Record<string, string> = {}): Program {
  const child = spawn(process.execPath, [programPath(name)], {
    cwd: home,
    env: { PATH: process.env["PATH"], HOME: home, TELEGRAM_API_ROOT: standin.root, ...environment },
    stdio: ["pipe", "pipe", "pipe"],
  });
  let output = "";
  child.stdout.on("data", (chunk) => {
    output += String(chunk);
  });
  child.stderr.on("data", (chunk) => {
    output += String(chunk);
  });
  const ended = new Promise<number | null>((done) => child.on("close", done));
  const program: Program = {
    child,
    output: () => output,
    type: (...lines) => void child.stdin.write(lines.map((line) => `${line}\n`).join("")),
    saying: (words) =>
      standin.waitFor(
        () =>
          words instanceof RegExp ? words.exec(output)?.[0] : output.includes(words) ? output : undefined,
        30_000,
        () => `"${words}" in: ${output}`,
      ),
    exit: () => ended,
  };
  children.push(program);
  return program;
}

function setup(environment: Record<string, string> = {}): Program {
  return starts("setup", environment);
}

const environmentFile = () => readFileSync(join(home, ".env"), "utf8");

describe("a first run on a clean home folder", () => {
  it("leads from nothing to a bot that answers on the phone, with the zone and the loan on the books", async () => {
    const program = setup();
    await program.saying("Send it:  /newbot");
    program.type(standin.token, "denver", "14,600", "5.8%");
    const command = await program.saying(/\/start [\w-]{32}/);
    standin.say(command);
    const greeting = await standin.waitForReply("bought dresser 30");
    expect(greeting.chat).toBe(1001);
    await program.saying("Robin is the owner now");
    standin.say("loan");
    expect((await standin.waitForReply("14,600.00")).text).toContain("5.8%");
    standin.say("members");
    expect((await standin.waitForReply("owner")).text).toContain("1. Robin (owner)\nTo let");
    program.child.kill("SIGTERM");
    expect(await program.exit()).toBe(0);
    expect(environmentFile()).toBe(`BOT_TOKEN=${standin.token}\n`);
    if (process.platform !== "win32") expect(statSync(join(home, ".env")).mode & 0o777).toBe(0o600);
    const opened = openReader(join(home, "data"));
    if (opened.kind !== "open") throw new Error(opened.kind);
    expect(opened.reader.settings.get("timeZone")).toBe("America/Denver");
    opened.reader.close();
    expect(program.output()).not.toMatch(/^ {4}at |Error:/m);
    const shown = program.output().replaceAll("Paste the token", "");
    expect(shown).not.toContain(standin.token);
  });

  it("the next start needs no environment: the token is read from the file", async () => {
    writeFileSync(join(home, ".env"), `BOT_TOKEN=${standin.token}\nOWNER_ID=1001\n`, { mode: 0o600 });
    starts("main");
    standin.say("bought dresser 30");
    expect((await standin.waitForReply("dresser")).text).toContain("Bought #1 dresser");
  });

  it("without a token the chat in the terminal starts, as ever", async () => {
    const program = starts("main");
    program.type("bought dresser 30");
    program.child.stdin?.end();
    expect(await program.exit()).toBe(0);
    expect(program.output()).toContain("Bought #1 dresser");
    expect(existsSync(join(home, ".env"))).toBe(false);
  });

  it("a wrong token and half a token are said in one line each, and asked again", async () => {
    const program = setup();
    program.type("hello", "100200300:withdrawn", standin.token);
    await program.saying("your bot is @yard_ledger_bot");
    expect(program.output()).toContain("\nThat is no token");
    expect(program.output()).toContain(
      "\nTelegram does not know that token. Copy it again from BotFather.\n",
    );
    program.child.stdin?.end();
    expect(await program.exit()).toBe(1);
    expect(program.output()).toContain("Stopped before the end. What you answered is kept");
    // Run again, the token is on file and is not asked for.
    const again = setup();
    await again.saying("A token is on file already.");
    await again.saying("your bot is @yard_ledger_bot");
  });

  it("no network is one line, and Enter tries again", async () => {
    standin.outage(true);
    const program = setup();
    program.type(standin.token);
    await program.saying("\nTelegram cannot be reached. See that this computer is online, then press Enter.");
    expect(existsSync(join(home, ".env"))).toBe(false);
    standin.outage(false);
    program.type("");
    await program.saying("your bot is @yard_ledger_bot");
    expect(program.output()).not.toMatch(/^ {4}at /m);
  });

  it("a second copy running is one line, and nothing is touched", async () => {
    const first = setup();
    await first.saying("Send it:  /newbot");
    const second = setup();
    expect(await second.exit()).toBe(1);
    expect(second.output().trim()).toBe(
      "The bot is running already. Stop it first (Ctrl+C in its window), then run setup again.",
    );
  });

  it("an owner who opens the bot before pairing is told where the link is", async () => {
    writeFileSync(join(home, ".env"), `BOT_TOKEN=${standin.token}\n`);
    const program = starts("main");
    const command = await program.saying(/\/start [\w-]{32}/);
    standin.say("/start");
    const told = await standin.waitForReply();
    expect(told.text).toContain("The link that makes you the owner is in the window where I run");
    expect(told.text).not.toMatch(/invited/);
    standin.say(command);
    await standin.waitForReply("bought dresser 30");
  });

  it("what else stands in the settings file is kept", async () => {
    writeFileSync(join(home, ".env"), "# mine\nTIME_ZONE=America/Chicago\nBOT_TOKEN=\n", { mode: 0o644 });
    const program = setup();
    program.type(standin.token, "");
    await program.saying(/\/start [\w-]{32}/);
    expect(environmentFile()).toBe(`# mine\nTIME_ZONE=America/Chicago\nBOT_TOKEN=${standin.token}\n`);
    expect(program.output()).not.toContain("Your days go by");
  });
});
