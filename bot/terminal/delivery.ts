import { existsSync, promises as files } from "node:fs";
import { dirname, join } from "node:path";
import type { Instant } from "../../core/calendar.ts";
import { createPrivateFolder } from "../../db/connection.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { OutboxRow } from "../../db/outbox.ts";
import { type FileBody, filesFolder } from "../files/bodies.ts";
import { makeFile } from "../files/make.ts";
import { failureText } from "../log.ts";
import { TERMINAL_USER } from "../members.ts";
import { type Choices, showReply } from "./screen.ts";

export const TERMINAL_CHAT = TERMINAL_USER;

export interface Delivery {
  /** Shows what is owed to the terminal, in order, and marks it as sent. Gives the newest choices, if any came. */
  show(): Promise<Choices | null>;
}

/**
 * The terminal's way out of the outbox. One showing at a time: a file takes a while to make, and what the
 * schedule queues meanwhile must not be shown by a second showing as well. Files are saved into folders of their
 * own in the data directory.
 */
export function openDelivery(deps: {
  ledger: Ledger;
  print: (text: string) => void;
  now: () => Instant;
}): Delivery {
  const { ledger, print, now } = deps;
  let showing: Promise<Choices | null> = Promise.resolve(null);

  /** The terminal shows its own chat only; what waits for another chat is that chat's. */
  const nextRow = () => ledger.outbox.nextUnsent(now(), TERMINAL_CHAT);

  async function showAll(): Promise<Choices | null> {
    let newest: Choices | null = null;
    for (let row = nextRow(); row; row = nextRow()) {
      const { text, choices } = await shownForm(row);
      if (text !== "") print(text);
      newest = choices ?? newest;
      ledger.outbox.markSent(row.id, `shown-${row.id}`, now());
    }
    return newest;
  }

  async function shownForm({ body }: OutboxRow): Promise<{ text: string; choices?: Choices }> {
    switch (body.kind) {
      case "text":
        return showReply(body.reply);
      case "edit":
        // What was printed stays printed; only words that say something new follow it.
        return body.orSend ? showReply(body.reply) : { text: "" };
      case "file":
        return { text: await saved(ledger, body) };
    }
  }

  return {
    show() {
      showing = showing.catch(() => null).then(showAll);
      return showing;
    },
  };
}

/** Saves a file and says where; one that cannot be made or saved is said, and holds nothing up. */
async function saved(ledger: Ledger, { make, caption }: FileBody): Promise<string> {
  if (make.what === "picture") return `${caption}: pictures are shown in the phone's chat.`;
  try {
    const file = await makeFile(ledger, make);
    const folder = filesFolder(dirname(ledger.connection.path), make.what);
    createPrivateFolder(folder);
    // A copy of the ledger lies in its folder already: it is only shown where.
    const path = make.what === "backup" ? join(folder, file.name) : unusedPath(folder, file.name);
    if (make.what !== "backup") await files.writeFile(path, file.bytes, { mode: 0o600, flag: "wx" });
    return [caption, `Saved as ${path}`].filter((line) => line !== "").join("\n");
  } catch (error) {
    return `${make.name} could not be saved: ${failureText(error)}`;
  }
}

/** A path in the folder that is not taken: "name.xlsx", "name-2.xlsx" … */
function unusedPath(folder: string, name: string): string {
  const safe = name.replace(/[^\w.-]/g, "_");
  const dot = safe.lastIndexOf(".");
  for (let count = 1; ; count++) {
    const path = join(folder, count === 1 ? safe : `${safe.slice(0, dot)}-${count}${safe.slice(dot)}`);
    if (!existsSync(path)) return path;
  }
}
