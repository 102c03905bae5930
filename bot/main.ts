import type { Instant } from "../core/calendar.ts";
import type { Ledger } from "../db/ledger.ts";
import { openLedger } from "../db/open.ts";
import { createAside } from "./aside.ts";
import { createConversation } from "./conversation/conversation.ts";
import { readEnvironment, withToken } from "./environment.ts";
import type { Make } from "./files/bodies.ts";
import { makeFile } from "./files/make.ts";
import { failureText, type Log, openLog } from "./log.ts";
import { notOpenedText } from "./not-opened.ts";
import { startSchedule } from "./schedule/schedule.ts";
import { readSettings, type Settings } from "./settings.ts";
import { runTelegram } from "./telegram/run.ts";
import { runTerminal } from "./terminal/terminal.ts";
import { liveIn, zoneInForce } from "./zone.ts";

/** After a request to end, the process is gone within five seconds whatever hangs; nothing stored is lost by it. */
const STOP_MS_MAX = 4700;

/** Files of so many facts are made by the bot itself. */
const FACTS_AT_ONCE = 300;

const now = (): Instant => Date.now();

function refuse(problem: string): void {
  console.error(problem);
  process.exitCode = 1;
}

async function start(settings: Settings, log: Log): Promise<void> {
  const opened = openLedger({ directory: settings.directory, now: now() });
  if (opened.kind !== "open") return refuse(notOpenedText(opened, settings.directory));
  if (opened.rederived > 0) log.warn("derived books written anew", { rows: opened.rederived });
  try {
    await run(settings, opened.ledger, log);
  } finally {
    opened.ledger.close();
  }
}

async function run(settings: Settings, ledger: Ledger, log: Log): Promise<void> {
  const { currency } = settings;
  const zone = () => {
    const inForce = zoneInForce(settings.zone, ledger.settings);
    liveIn(inForce);
    return inForce;
  };
  const deps = { ledger, currency, zone, now, log };
  if (settings.mode === "terminal") return runTerminal(deps);
  const aside = createAside(settings.directory);
  const end = await runTelegram({
    ...deps,
    settings,
    conversation: createConversation(deps),
    makeFile: (make) => (isQuick(ledger, make) ? makeFile(ledger, make) : aside.make(make)),
    startSchedule: (of) => startSchedule({ ...deps, ...of, copyAside: aside.copy }),
    stopping: endRequested(log),
    show: (words) => console.log(words),
    screen: { isTerminal: process.stdout.isTTY === true, columns: process.stdout.columns ?? 80 },
  });
  switch (end.kind) {
    case "stopped":
      return;
    case "conflict":
      return refuse(
        "Another copy of this bot is still running with the same token, here or on another computer. Stop that one first.",
      );
    case "refused":
      return refuse("Telegram does not know this token. Copy it again: npm run setup");
  }
}

/** Made sooner than another process is begun: no picture, and nothing of a long history. */
function isQuick({ books }: Ledger, { what }: Make): boolean {
  return what !== "month picture" && what !== "chart" && books.facts.length <= FACTS_AT_ONCE;
}

/** Aborts on SIGTERM or SIGINT, and sees to it that the process then ends in time. */
function endRequested(log: Log): AbortSignal {
  const request = new AbortController();
  const stop = (signal: string) => {
    if (request.signal.aborted) return;
    log.info("stopping", { signal });
    request.abort();
    setTimeout(() => process.exit(), STOP_MS_MAX).unref();
  };
  process.on("SIGTERM", stop);
  process.on("SIGINT", stop);
  return request.signal;
}

async function main(): Promise<void> {
  const found = withToken(readEnvironment());
  const read =
    "problem" in found
      ? { kind: "refused" as const, problems: [found.problem] }
      : readSettings(found.environment, { isTerminal: process.stderr.isTTY === true });
  if (read.kind === "refused") return refuse(read.problems.join("\n"));
  const { settings } = read;
  const log = openLog(settings.level, settings.mode === "telegram" ? [settings.token] : []);
  // A bug: said once, without payloads, and the process ends; what was committed is safe.
  const fail = (error: unknown) => {
    log.error("stopped by a fault", { why: failureText(error) });
    process.exit(1);
  };
  process.on("uncaughtException", fail);
  process.on("unhandledRejection", fail);
  await start(settings, log).catch(fail);
  // A poll that is being broken off, or a wait inside the chat library, must not hold the process up.
  if (settings.mode === "telegram") process.exit();
}

void main();
