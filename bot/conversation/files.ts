import type { Turn } from "./turn.ts";

const WORDS = {
  export: "Your books as a spreadsheet.",
  backup: "The latest backup of your ledger.",
} as const;

/** Sends a file after the reply; it is made when it is sent. */
export function queueFile(turn: Turn, what: "export" | "backup"): void {
  const name = what === "export" ? `ledger-${turn.today}.xlsx` : `backup-${turn.today}.sqlite`;
  turn.spoken.push(`${WORDS[what]} One moment.`);
  turn.files.push({ kind: "file", make: { what, name, args: { day: turn.today } }, caption: WORDS[what] });
}
