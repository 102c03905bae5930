import { createMemory } from "../../db/memory.ts";
import type { Note } from "../../db/notes.ts";
import type { Turn } from "./turn.ts";

/** The same words from the same person within this long are asked about. */
const AGAIN_MS = 5 * 60_000;

/** A long message sent again within minutes is not recorded a second time, since nobody can be asked about all of it. */
export function tellOfTwin(turn: Turn, text: string): boolean {
  const isTwin = twinsOf(turn, text).some((note) => hasRecorded(turn, note));
  if (isTwin)
    turn.spoken.push(
      "You sent the same just now; it counts once. To record it again, send it in five minutes.",
    );
  return isTwin;
}

/** The same words sent within minutes, by anybody, that recorded something or are still asked about. */
export function twinsOf(turn: Turn, text: string): Note[] {
  const { ledger } = turn;
  const isAsked = (note: Note) => ledger.questions.everyOpen().some((open) => open.note === note.root);
  const words = plainWords.get(text);
  return ledger.recentNotes(
    turn.now() - 2 * AGAIN_MS,
    (note) =>
      note.root !== turn.root &&
      Math.abs(turn.said - note.said) <= AGAIN_MS &&
      plainWords.get(note.text) === words &&
      (hasRecorded(turn, note) || isAsked(note)),
  );
}

export function hasRecorded({ ledger }: Turn, { root }: Note): boolean {
  return ledger.hasStandingFacts(root);
}

/** The words of a message without what may differ in a second one. In a flood each is compared with all of the last minutes. */
const plainWords = createMemory((text: string) => text.trim().toLowerCase().replace(/\s+/g, " "), true);
