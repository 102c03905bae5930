import type { Instant } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { Note } from "../../db/notes.ts";
import type { Incoming } from "./incoming.ts";
import type { ConversationDeps } from "./turn.ts";

/** Keeps what was said. Null where it was handled before, or a newer wording of the same message was. */
export function storeNote(
  { ledger, now }: ConversationDeps,
  incoming: Incoming,
): { note: number; said: Instant; before: Note | null } | null {
  if (incoming.update && !ledger.claimUpdate(incoming.update)) return null;
  const { person: author, chat, text, revised } = incoming;
  const { message, before, isOld } = placeOf(ledger, incoming);
  if (isOld) return null;
  const isSame = before?.text === text;
  if (isSame && (revised === undefined || revised <= instantOf(before))) return null;
  const said = before?.said ?? incoming.said;
  const worded = revised === undefined ? {} : { revised };
  const note = ledger.addNote({ chat, message, text, author, said, handled: now(), ...worded });
  if (!isSame) return { note, said, before };
  // Kept for its time alone: an edit made before it may still come.
  ledger.setNoteState(note, before.state);
  return null;
}

/**
 * Where a delivery belongs: the name it is kept under, what was kept of the message before, and whether that is
 * newer. Edits may come in any order and before their original, and an original again under another delivery.
 * A message of the same name but of another time is another one: a bot with a new token counts from 1 again.
 */
export function placeOf(
  ledger: Ledger,
  { chat, message, said, edited, revised }: Incoming,
): { message: string; before: Note | null; isOld: boolean } {
  const known = ledger.findNote(chat, message);
  if (!known) return { message, before: null, isOld: false };
  const isOfIt = known.said === said || (edited === true && revised === undefined);
  if (!isOfIt) return { message: `${message}@${said}`, before: null, isOld: false };
  const isOld = edited ? revised !== undefined && revised < instantOf(known) : true;
  return { message: known.message, before: known, isOld };
}

/** When a wording was made. */
function instantOf(note: Pick<Note, "revised" | "said">): Instant {
  return note.revised ?? note.said;
}
