import type { Instant } from "../core/calendar.ts";
import type { Ledger } from "../db/ledger.ts";
import { openLedger } from "../db/open.ts";
import { createConversation } from "./conversation/conversation.ts";
import { makeFile } from "./files/make.ts";
import { failureText, type Log, openLog } from "./log.ts";
import { startSchedule } from "./schedule/schedule.ts";
import { readSettings, type Settings } from "./settings.ts";
import { runTelegram } from "./telegram/run.ts";
import { runTerminal } from "./terminal/terminal.ts";
import { zoneInForce } from "./zone.ts";

/** After a request to end, the process is gone within five seconds whatever hangs; nothing stored is lost by it. */
const STOP_MS_MAX = 4700;

const now = (): Instant => Date.now();

function refuse(problem: string): void {
  console.error(problem);
  process.exitCode = 1;
}

async function start(settings: Settings, log: Log): Promise<void> {
  const opened = openLedger({ directory: settings.directory, now: now() });
  switch (opened.kind) {
    case "locked":
      return refuse(
        `The ledger in ${settings.directory} is in use by another start of this program, the bot or a terminal chat. Only one may write. Stop that one first, or set DATA_DIR to another folder.`,
      );
    case "unusable":
      return refuse(`The ledger cannot be used: ${opened.why}.`);
    case "open":
      if (opened.rederived > 0) log.warn("derived books written anew", { rows: opened.rederived });
      try {
        await run(settings, opened.ledger, log);
      } finally {
        opened.ledger.close();
      }
  }
}

async function run(settings: Settings, ledger: Ledger, log: Log): Promise<void> {
  const { currency } = settings;
  const zone = () => zoneInForce(settings.zone, ledger.settings);
  const deps = { ledger, currency, zone, now, log };
  if (settings.mode === "terminal") return runTerminal(deps);
  const end = await runTelegram({
    ...deps,
    settings,
    conversation: createConversation(deps),
    makeFile: (make) => makeFile(ledger, make),
    startSchedule: (wake) => startSchedule({ ...deps, wake }),
    stopping: endRequested(log),
    show: (line) => console.log(line),
  });
  switch (end.kind) {
    case "stopped":
      return;
    case "conflict":
      return refuse(
        "Another program is reading this bot's messages with the same BOT_TOKEN. Stop that one first.",
      );
    case "refused":
      return refuse("Telegram does not know this BOT_TOKEN. Copy it again from where you made the bot.");
  }
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

const read = readSettings(process.env);
if (read.kind === "refused") refuse(read.problems.join("\n"));
else {
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
