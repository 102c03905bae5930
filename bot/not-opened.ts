import { counted } from "../core/answers/wording.ts";
import type { openLedger } from "../db/open.ts";

type Opened = ReturnType<typeof openLedger>;
type Lost = Extract<Opened, { kind: "lost" }>;

/** What to tell a person where the ledger was not opened for writing. */
export function notOpenedText(opened: Exclude<Opened, { kind: "open" }>, directory: string): string {
  if (opened.kind === "lost") return lostText(opened, directory);
  if (opened.kind === "unusable") return `The ledger cannot be used: ${opened.why}.`;
  return `The bot or a terminal chat is running already on the books in ${directory}. Stop that one first, or set DATA_DIR to another folder.`;
}

/** Where a copy holds more notes than the ledger: what was found, and the one command that helps. */
function lostText({ notes, copy }: Lost, directory: string): string {
  return [
    `The ledger in ${directory} holds ${counted(notes, "note")}, its copy of ${copy.day} holds ${copy.notes}.`,
    "It was deleted or emptied, or lost its latest writes. Nothing was changed, and nothing is started on it.",
    `Put the copy back with: npm run restore -- ${copy.path}`,
    "To go on without those notes instead, move the folder of copies elsewhere first.",
  ].join("\n");
}
