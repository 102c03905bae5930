import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createConversation } from "../../../bot/conversation/conversation.ts";
import type { Incoming } from "../../../bot/conversation/incoming.ts";
import { zoneInForce } from "../../../bot/zone.ts";
import { type Statement, statementOf } from "../../../core/books/statement.ts";
import { dayOfInstant } from "../../../core/calendar.ts";
import type { Button } from "../../../core/reply.ts";
import type { Ledger } from "../../../db/ledger.ts";
import { openLedger } from "../../../db/open.ts";
import type { OutboxBody } from "../../../db/outbox.ts";
import { beginLedger } from "../../fresh.ts";
import { keepRows } from "./rows-kept.ts";

const silent = {
  debug() {},
  info() {},
  warn() {},
  // A fault behind an honest reply would else stay hidden from the reader of a failed test.
  error: (event: string, fields?: object) => console.error(event, fields),
};

export interface Said {
  text: string;
  /** The text of each message by itself, where the answer came in several. */
  texts: string[];
  buttons: Button[];
  /** The chat's own id of the bot's message. */
  message: string;
}

export interface Chat {
  ledger: Ledger;
  directory: string;
  /** The clock of the chat; notes are sent at it. */
  at(iso: string): void;
  /** Sends a note and gives the bot's replies to it as one. */
  say(
    text: string,
    how?: {
      replyTo?: string;
      message?: string;
      edited?: true;
      person?: number;
      update?: string;
      picture?: { file: string; unique: string };
      document?: { name: string };
    },
  ): Said;
  /** Hands in a message as a transport would. */
  hear(incoming: Partial<Incoming> & { text: string }): Said;
  /** The same for many lines, which let others go first in between. */
  hearLong(incoming: Partial<Incoming> & { text: string }): Promise<Said>;
  /** Presses the newest button of that label. */
  press(label: string | RegExp): Said;
  /** Presses any button, however old, as anybody. */
  tap(button: { message: string; press: string; person?: number }): Said;
  statement(): Statement;
  /** Closes the ledger and opens it again, as after a restart. */
  restart(): void;
  /** Keeps how everything stands. Gives a way back to that, again and again, far cheaper than a chat of its own. */
  keep(): () => void;
  end(): void;
}

/**
 * A conversation over a real ledger in a folder of its own. Local days are those of Chicago. `zone` null: none was given at the start, so the one that is set by chat counts, else the machine's.
 */
export function openChat({
  zone = "America/Chicago",
  start = "2026-05-09T15:00:00Z",
}: {
  zone?: string | null;
  start?: string;
} = {}): Chat {
  let now = Date.parse(start);
  let count = 0;
  let shown: Said[] = [];
  const begun = beganAgain() ?? began(now);
  const { directory } = begun;
  let { ledger } = begun;
  let conversation = converse();
  const person = ledger.transaction(() =>
    ledger.members.add({ user: "1001", name: "Robin", role: "owner", joined: now }),
  );

  function zoneNow() {
    return zoneInForce(zone ?? undefined, ledger.settings);
  }

  function converse() {
    const deps = { ledger, currency: "USD", zone: zoneNow, now: () => now, log: silent };
    return createConversation(deps);
  }

  function collect(): Said {
    const parts: Said[] = [];
    for (let row = ledger.outbox.nextUnsent(now); row; row = ledger.outbox.nextUnsent(now)) {
      const message = `bot-${row.id}`;
      if (row.chat === "home" && isNewWords(row.body)) {
        const { text, buttons = [] } = row.body.reply;
        // What takes the place of an earlier answer stands under that one's message.
        const shown = row.body.kind === "edit" ? `bot-${row.body.outbox}` : message;
        parts.push({ text, texts: [text], buttons: buttons.flat(), message: shown });
      } else if (row.body.kind === "edit") tidied(row.body);
      else if (row.body.kind === "file")
        parts.push({ text: `[file ${row.body.make.name}]`, texts: [], buttons: [], message });
      ledger.outbox.markSent(row.id, message, now);
    }
    shown.push(...parts);
    const text = parts.map((part) => part.text).join("\n");
    return {
      text,
      texts: parts.flatMap((part) => part.texts),
      buttons: parts.flatMap((part) => part.buttons),
      message: parts[0]?.message ?? "",
    };
  }

  /** Buttons that the bot takes away cannot be pressed any more. */
  function tidied({ outbox, reply }: OutboxBody & { kind: "edit" }): void {
    const left = new Set((reply.buttons ?? []).flat().map(({ press }) => press));
    shown = shown.map((said) =>
      said.message === `bot-${outbox}`
        ? { ...said, buttons: said.buttons.filter(({ press }) => left.has(press)) }
        : said,
    );
  }

  function tap({ message, press, person: by = person }: { message: string; press: string; person?: number }) {
    now += 1000;
    conversation.press({ person: by, chat: "home", message, press, said: now });
    return collect();
  }

  return {
    get ledger() {
      return ledger;
    },
    directory,
    at(iso) {
      now = Date.parse(iso);
    },
    say(
      text,
      { replyTo, message = `m${++count}`, edited, person: by = person, update, picture, document } = {},
    ) {
      now += 1000;
      conversation.hear({
        person: by,
        chat: "home",
        message,
        text,
        said: now,
        ...(replyTo ? { replyTo } : {}),
        ...(edited ? { edited } : {}),
        ...(update ? { update } : {}),
        ...(picture ? { picture } : {}),
        ...(document ? { document } : {}),
      });
      return collect();
    },
    hear(incoming) {
      now += 1000;
      conversation.hear({ person, chat: "home", message: `m${++count}`, said: now, ...incoming });
      return collect();
    },
    async hearLong(incoming) {
      now += 1000;
      const whole = { person, chat: "home", message: `m${++count}`, said: now, ...incoming };
      await conversation.hearLong(whole, () => false);
      return collect();
    },
    tap,
    press(label) {
      const fits = (button: Button) =>
        typeof label === "string" ? button.label === label : label.test(button.label);
      const last = shown.findLast((said) => said.buttons.some(fits));
      const button = last?.buttons.find(fits);
      if (!last || !button)
        throw new Error(`no button ${label} among ${JSON.stringify(shown.at(-1)?.buttons)}`);
      return tap({ message: last.message, press: button.press });
    },
    statement: () => statementOf(ledger.books, { through: dayOfInstant(now, zoneNow()), currency: "USD" }),
    keep() {
      const at = now;
      const before = shown.slice();
      const back = keepRows(ledger);
      return () => {
        back();
        now = at;
        shown = before.slice();
      };
    },
    restart() {
      ledger.close();
      ledger = open(directory, now);
      conversation = converse();
    },
    end() {
      if (ledger === begun.ledger && isAsBegun(begun)) free.push(begun);
      else {
        ledger.close();
        rmSync(directory, { recursive: true, force: true });
      }
      shown = [];
    },
  };
}

/** A ledger in a folder of its own, and the way back to how it was when it was begun. */
interface Begun {
  directory: string;
  files: string[];
  ledger: Ledger;
  toFresh: () => void;
}

/** Of chats that have ended: to open a ledger takes as long as to handle several notes. */
const free: Begun[] = [];
process.on("exit", () => {
  for (const { directory } of free) rmSync(directory, { recursive: true, force: true });
});

function beganAgain(): Begun | undefined {
  const begun = free.pop();
  begun?.toFresh();
  return begun;
}

function began(now: number): Begun {
  const directory = mkdtempSync(join(tmpdir(), "tailgate-chat-"));
  const ledger = open(directory, now);
  return { directory, ledger, files: readdirSync(directory), toFresh: keepRows(ledger) };
}

/** Whether there is nothing but rows to be taken back. */
function isAsBegun({ directory, files, ledger }: Begun): boolean {
  const { open, inTransaction } = ledger.connection.sqlite;
  return open && !inTransaction && readdirSync(directory).join() === files.join();
}

function isNewWords(body: OutboxBody): body is Exclude<OutboxBody, { kind: "file" }> {
  return body.kind === "text" || (body.kind === "edit" && body.orSend === true);
}

function open(directory: string, now: number): Ledger {
  beginLedger(directory);
  const opened = openLedger({ directory, now });
  if (opened.kind !== "open") throw new Error(`ledger ${opened.kind}`);
  return opened.ledger;
}
