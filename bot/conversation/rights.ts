import { ownersChat } from "../../db/members.ts";
import type { Turn } from "./turn.ts";

/**
 * Who may do what, whatever button or reply it comes by:
 * a note is taken back or corrected by its author or by the owner; a question is answered by whom it was asked;
 * the daily message is the owner's, and only the owner changes it.
 */
export function isOwner({ ledger, person }: Pick<Turn, "ledger" | "person">): boolean {
  return ledger.members.byId(person)?.role === "owner";
}

/** Whether this person may take back or correct what a message (its root note) recorded. */
export function mayChange(turn: Turn, root: number): boolean {
  return isOwner(turn) || turn.ledger.note(root)?.author === turn.person;
}

/** What to say where that is not so. */
export function notYours(turn: Turn, root: number): string {
  const author = turn.ledger.note(root)?.author;
  const name = author === undefined ? null : turn.ledger.members.byId(author)?.name;
  return `That is ${name ?? "somebody else"}'s note. Only they or the owner can change it.`;
}

export const OWNER_ONLY = "Only the owner can do that.";

/** What a member did that leaves no note to tell of, such as an undo: the owner hears of it at once. */
export function tellOwner(turn: Turn, did: string): void {
  const { ledger, person, chat } = turn;
  const owner = ownersChat(ledger);
  if (isOwner(turn) || !owner || owner === chat || ledger.settings.get("tellOwner") === false) return;
  const name = ledger.members.byId(person)?.name ?? "Someone";
  ledger.outbox.queue({ chat: owner, body: { kind: "text", reply: { text: `${name} ${did}` } } });
}
