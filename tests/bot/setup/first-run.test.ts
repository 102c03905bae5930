import { existsSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openReader } from "../../../db/open.ts";
import { type Standin, startStandin } from "../../standin/standin.ts";
import { Home } from "./home.ts";

let home: Home;
let standin: Standin;
beforeEach(async () => {
  standin = await startStandin();
  home = new Home(standin);
});
afterEach(async () => {
  home.end();
  await standin.close();
});

const setup = () => home.starts("setup");
const environmentFile = () => readFileSync(join(home.folder, ".env"), "utf8");

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
    if (process.platform !== "win32") expect(statSync(join(home.folder, ".env")).mode & 0o777).toBe(0o600);
    const opened = openReader(join(home.folder, "data"));
    if (opened.kind !== "open") throw new Error(opened.kind);
    expect(opened.reader.settings.get("timeZone")).toBe("America/Denver");
    opened.reader.close();
    expect(program.output()).not.toMatch(/^ {4}at |Error:/m);
    const shown = program.output().replaceAll("Paste the token", "");
    expect(shown).not.toContain(standin.token);
  });

  it("the next start needs no environment: the token is read from the file", async () => {
    writeFileSync(join(home.folder, ".env"), `BOT_TOKEN=${standin.token}\nOWNER_ID=1001\n`, { mode: 0o600 });
    home.starts("main");
    standin.say("bought dresser 30");
    expect((await standin.waitForReply("dresser")).text).toContain("Bought #1 dresser");
  });

  it("without a token the chat in the terminal starts, as ever", async () => {
    const program = home.starts("main");
    program.type("bought dresser 30");
    program.child.stdin?.end();
    expect(await program.exit()).toBe(0);
    expect(program.output()).toContain("Bought #1 dresser");
    expect(existsSync(join(home.folder, ".env"))).toBe(false);
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
    expect(existsSync(join(home.folder, ".env"))).toBe(false);
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
    writeFileSync(join(home.folder, ".env"), `BOT_TOKEN=${standin.token}\n`);
    const program = home.starts("main");
    const command = await program.saying(/\/start [\w-]{32}/);
    standin.say("/start");
    const told = await standin.waitForReply();
    expect(told.text).toContain("The link that makes you the owner is in the window where I run");
    expect(told.text).not.toMatch(/invited/);
    standin.say(command);
    await standin.waitForReply("bought dresser 30");
  });

  it("what else stands in the settings file is kept", async () => {
    writeFileSync(join(home.folder, ".env"), "# mine\nTIME_ZONE=America/Chicago\nBOT_TOKEN=\n", {
      mode: 0o644,
    });
    const program = setup();
    program.type(standin.token, "");
    await program.saying(/\/start [\w-]{32}/);
    expect(environmentFile()).toBe(`# mine\nTIME_ZONE=America/Chicago\nBOT_TOKEN=${standin.token}\n`);
    expect(program.output()).not.toContain("Your days go by");
  });
});
