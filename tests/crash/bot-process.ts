import { type ChildProcess, spawn } from "node:child_process";
import { join } from "node:path";
import { programPath, startOfBot, TOP } from "../programs.ts";
import type { Standin } from "../standin/standin.ts";
import { OWNER } from "../standin/standin.ts";

const PRELOAD = join(import.meta.dirname, "preload.mjs");

export interface Exit {
  code: number | null;
  signal: NodeJS.Signals | null;
}

/** The whole bot in a process of its own, as a person starts it. */
export class BotProcess {
  readonly exited: Promise<Exit>;
  exit: Exit | undefined;
  readonly #child: ChildProcess;
  #output = "";

  constructor(child: ChildProcess) {
    this.#child = child;
    child.stdout?.on("data", (chunk) => {
      this.#output += String(chunk);
    });
    child.stderr?.on("data", (chunk) => {
      this.#output += String(chunk);
    });
    this.exited = new Promise((resolve) => {
      // Not before all that it wrote has been read.
      child.on("close", (code, signal) => {
        this.exit = { code, signal };
        resolve(this.exit);
      });
    });
  }

  /** All that it wrote to standard output and standard error. */
  get output(): string {
    return this.#output;
  }

  send(signal: NodeJS.Signals): void {
    this.#child.kill(signal);
  }

  async stop(): Promise<Exit> {
    this.send("SIGTERM");
    return this.exited;
  }

  async kill(): Promise<Exit> {
    this.send("SIGKILL");
    return this.exited;
  }
}

const MORNING = 8;
/** No zone is further behind. */
const HOURS_BEHIND_MAX = 12;

/** A zone in which it is morning: whenever the tests run, the hour of the daily message does not come in between. */
export function morningZone(now: Date): string {
  const ahead = MORNING - now.getUTCHours();
  const hours = ahead < -HOURS_BEHIND_MAX ? ahead + 24 : ahead;
  // The names of these zones count the other way round.
  return `Etc/GMT${hours < 0 ? "+" : "-"}${Math.abs(hours)}`;
}

/** Starts the bot against a stand-in. Further variables go into its environment. */
export function startBot(
  standin: Standin,
  directory: string,
  environment: Record<string, string> = {},
  user?: number,
): BotProcess {
  const settings = {
    BOT_TOKEN: standin.token,
    TELEGRAM_API_ROOT: standin.root,
    OWNER_ID: String(OWNER.id),
    DATA_DIR: directory,
    TIME_ZONE: morningZone(new Date()),
    LOG_LEVEL: "debug",
    ...environment,
  };
  return startProgram("main", settings, user);
}

/** Runs a program of the project with just these settings in its environment, perhaps as another user. */
export function startProgram(name: string, environment: Record<string, string>, user?: number): BotProcess {
  const preload = Object.keys(environment).some((name) => /^(?:CRASH|FULL|STEP)_/.test(name));
  const imports = preload ? ["--import", PRELOAD] : [];
  const program = name === "main" ? startOfBot() : [programPath(name)];
  const child = spawn(process.execPath, [...imports, ...program], {
    cwd: TOP,
    // An empty token: a developer's own settings file in this folder must not send a test to Telegram.
    env: { PATH: process.env["PATH"] ?? "", HOME: process.env["HOME"] ?? "", BOT_TOKEN: "", ...environment },
    stdio: ["pipe", "pipe", "pipe"],
    ...(user === undefined ? {} : { uid: user, gid: user }),
  });
  child.stdin?.end();
  return new BotProcess(child);
}
