import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createConversation } from "../../../bot/conversation/conversation.ts";
import type { Conversation, Incoming, Press } from "../../../bot/conversation/incoming.ts";
import { openLog } from "../../../bot/log.ts";
import type { MakeFile } from "../../../bot/telegram/courier.ts";
import type { PollingDeps, PollingEnd } from "../../../bot/telegram/polling.ts";
import { runTelegram } from "../../../bot/telegram/run.ts";
import type { Ledger } from "../../../db/ledger.ts";
import { openLedger } from "../../../db/open.ts";
import { beginLedger } from "../../fresh.ts";
import { OWNER, type Standin, startStandin } from "../../standin/standin.ts";

export function temporaryDirectory(): string {
  return mkdtempSync(join(tmpdir(), "tailgate-test-"));
}

export function openTestLedger(directory: string): Ledger {
  beginLedger(directory);
  const opened = openLedger({ directory, now: Date.now() });
  if (opened.kind !== "open") throw new Error(`ledger ${opened.kind}`);
  return opened.ledger;
}

/** A conversation that keeps what it hears and repeats it; "throw" in a message makes its handling fail. */
export class EchoConversation implements Conversation {
  readonly heard: Incoming[] = [];
  readonly pressed: Press[] = [];
  readonly #ledger: Ledger;

  constructor(ledger: Ledger) {
    this.#ledger = ledger;
  }

  hear(incoming: Incoming): void {
    const { chat, message, text, person, said, update } = incoming;
    this.#ledger.transaction(() => {
      if (!this.#ledger.claimUpdate(update ?? "")) return;
      const note = this.#ledger.addNote({ chat, message, text, author: person, said, handled: Date.now() });
      if (text.includes("throw")) throw new Error("scripted failure");
      this.heard.push(incoming);
      const buttons = [[{ label: "Undo", press: `undo:${note}` }]];
      const reply = { text: `heard: ${text}`, buttons };
      this.#ledger.outbox.queue({ chat, body: { kind: "text", reply }, about: note });
    });
  }

  async hearLong(incoming: Incoming): Promise<void> {
    this.hear(incoming);
  }

  async goOn(): Promise<void> {}

  press(press: Press): void {
    this.#ledger.transaction(() => {
      if (!this.#ledger.claimUpdate(press.update ?? "")) return;
      if (press.press.includes("throw")) throw new Error("scripted failure");
      this.pressed.push(press);
      const row = this.#ledger.outbox.messageOf(press.chat, press.message);
      const reply = { text: `pressed: ${press.press}` };
      const body = row ? { kind: "edit" as const, outbox: row.id, reply } : { kind: "text" as const, reply };
      this.#ledger.outbox.queue({ chat: press.chat, body });
    });
  }
}

export interface Workbench {
  standin: Standin;
  ledger: Ledger;
  conversation: EchoConversation;
  directory: string;
  /** Lines shown to whoever started the bot. */
  shown: string[];
  /** Log lines. */
  logged: string[];
  end: Promise<PollingEnd>;
  stop(): Promise<PollingEnd>;
  /** Stops the bot, and with `keep` leaves the data for a further start. */
  close(): Promise<void>;
}

export interface WorkbenchOptions {
  owner?: string;
  now?: () => number;
  standin?: Standin;
  ledger?: Ledger;
  startSchedule?: Parameters<typeof runTelegram>[0]["startSchedule"];
  /** In place of the echo. */
  hears?: Conversation;
  makeFile?: MakeFile;
  token?: string;
  conflict?: PollingDeps["conflict"];
}

/** Workbenches that are closed together, after each test or after all of a file. */
export function workbenches(): {
  bench(options?: WorkbenchOptions): Promise<Workbench>;
  /** The same with the real conversation. */
  talking(options?: WorkbenchOptions): Promise<Workbench>;
  closeAll(): Promise<void>;
} {
  const open: Workbench[] = [];
  const bench = async (options?: WorkbenchOptions) => {
    const started = await startWorkbench(options);
    open.push(started);
    return started;
  };
  return {
    bench,
    talking(options = {}) {
      const ledger = options.ledger ?? openTestLedger(temporaryDirectory());
      const deps = { ledger, zone: () => "America/Chicago", currency: "USD", now: Date.now };
      const hears = createConversation({ ...deps, log: openLog("silent") });
      return bench({ ...options, ledger, hears });
    },
    async closeAll() {
      for (const each of open.splice(0)) await each.close();
    },
  };
}

/** A bot in this process against a stand-in, with a conversation that echoes. */
export async function startWorkbench(options: WorkbenchOptions = {}): Promise<Workbench> {
  const standin = options.standin ?? (await startStandin());
  const directory = temporaryDirectory();
  const ledger = options.ledger ?? openTestLedger(directory);
  const conversation = new EchoConversation(ledger);
  const stopping = new AbortController();
  const shown: string[] = [];
  const logged: string[] = [];
  const owner = "owner" in options ? options.owner : String(OWNER.id);
  const end = runTelegram({
    settings: {
      mode: "telegram",
      token: options.token ?? standin.token,
      apiRoot: standin.root,
      directory,
      currency: "USD",
      level: "debug",
      ...(owner === undefined ? {} : { owner }),
    },
    ledger,
    conversation: options.hears ?? conversation,
    makeFile: options.makeFile ?? (async ({ name }) => ({ name, bytes: Buffer.from(`made ${name}`) })),
    startSchedule: options.startSchedule ?? (() => ({ tick: () => {}, caughtUp: () => {}, stop: () => {} })),
    zone: () => "America/Chicago",
    stopping: stopping.signal,
    now: options.now ?? Date.now,
    log: openLog("debug", [standin.token], { write: (line) => void logged.push(line) }),
    show: (words) => void shown.push(words),
    screen: { isTerminal: false, columns: 80 },
    ...(options.conflict ? { conflict: options.conflict } : {}),
  });
  const stop = async () => {
    stopping.abort();
    return end;
  };
  return {
    ...{ standin, ledger, conversation, directory, shown, logged, end, stop },
    async close() {
      await stop();
      if (ledger.connection.sqlite.open) ledger.close();
      if (!options.standin) await standin.close();
      rmSync(directory, { recursive: true, force: true });
    },
  };
}
