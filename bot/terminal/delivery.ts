import { existsSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { join, resolve } from "node:path";
import type { Instant } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { OutboxRow } from "../../db/outbox.ts";
import { makeFile } from "../files/make.ts";
import { type Choices, showReply } from "./screen.ts";

export const TERMINAL_CHAT = "terminal";

/** Shows what is owed to the terminal, in order, and marks it as sent. Gives the newest choices, if any came. */
export async function deliver(
  ledger: Ledger,
  print: (text: string) => void,
  now: () => Instant,
): Promise<Choices | null> {
  let newest: Choices | null = null;
  for (let row = nextRow(ledger, now()); row; row = nextRow(ledger, now())) {
    newest = (await show(ledger, row, print)) ?? newest;
    ledger.outbox.markSent(row.id, `shown-${row.id}`, now());
  }
  return newest;
}

/** The terminal shows its own chat only; what waits for another chat is that chat's. */
function nextRow(ledger: Ledger, now: Instant): OutboxRow | null {
  return ledger.outbox.nextUnsent(now, TERMINAL_CHAT);
}

async function show(ledger: Ledger, row: OutboxRow, print: (text: string) => void): Promise<Choices | null> {
  switch (row.body.kind) {
    case "text": {
      const { text, choices } = showReply(row.body.reply);
      print(text);
      return choices;
    }
    case "edit":
      // What was printed stays printed; the words that follow say what was chosen.
      return null;
    case "file": {
      const { make, caption } = row.body;
      if (make.what === "picture") {
        print(`${caption}: pictures are shown in the phone's chat.`);
        return null;
      }
      const file = await makeFile(ledger, make);
      const path = unusedPath(file.name);
      await writeFile(path, file.bytes, { mode: 0o600 });
      print([caption, `Saved as ${path}`].filter((line) => line !== "").join("\n"));
      return null;
    }
  }
}

/** A path in the working directory that is not taken: "name.xlsx", "name-2.xlsx" … */
function unusedPath(name: string): string {
  const safe = name.replace(/[^\w.-]/g, "_");
  const dot = safe.lastIndexOf(".");
  for (let count = 1; ; count++) {
    const path = resolve(count === 1 ? safe : join(".", `${safe.slice(0, dot)}-${count}${safe.slice(dot)}`));
    if (!existsSync(path)) return path;
  }
}
