import { counted } from "../core/answers/wording.ts";
import type { openLedger } from "../db/open.ts";

type Lost = Extract<ReturnType<typeof openLedger>, { kind: "lost" }>;

/** What to say where a copy holds more notes than the ledger: what was found, and the one command that helps. */
export function lostText({ notes, copy }: Lost, directory: string): string {
  return [
    `The ledger in ${directory} holds ${counted(notes, "note")}, its copy of ${copy.day} holds ${copy.notes}.`,
    "It was deleted or emptied, or lost its latest writes. Nothing was changed, and nothing is started on it.",
    `Put the copy back with: npm run restore -- ${copy.path}`,
    "To go on without those notes instead, move the folder of copies elsewhere first.",
  ].join("\n");
}
