import { cautionFor, type Noted, notedOf } from "../../core/cautions.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Turn } from "./turn.ts";

/** Words to the bot about the books and itself: nothing is being done in them. */
const QUIET: ReadonlySet<string> = new Set(["ask", "undo", "fix", "nudge", "goal", "taxrate"]);

/** Keeps a note as typed for the cautions: they speak of its words whatever is made of them. */
export function heard(turn: Turn, text: string, readings: readonly Reading[]): void {
  const kinds = readings.map(({ kind }) => kind);
  if (kinds.length > 0 && kinds.every((kind) => QUIET.has(kind))) return;
  for (const [line, words] of text.split("\n").entries())
    if (words.trim() !== "") turn.heard.push({ text: words, line, kinds, root: turn.root });
}

/** Whether a fact calls for all that the note as typed can call for: the same words of the same kind, about the same. */
function isSaidBy(fact: Noted, { text, kinds, pieces }: Noted): boolean {
  return (
    fact.text === text &&
    kinds.every((kind) => fact.kinds.includes(kind)) &&
    fact.pieces.length === pieces.length
  );
}

/** The one caution of this turn, remembered so that it is not said too often; null where none is due. */
export function cautionOf(turn: Turn): string | null {
  const { books, settings } = turn.ledger;
  const facts = turn.recorded.map(({ fact, text }) => notedOf(fact, { text, books }));
  const pieces = new Map(facts.flatMap((fact) => fact.pieces.map((piece) => [piece.number, piece] as const)));
  // Of what was read and cannot be, such as a cost of a piece that is not there, nothing is done: no word of it.
  const refused = new Set(turn.refused.flatMap(({ line, isRead }) => (isRead ? [line] : [])));
  const typed = turn.heard
    .filter(({ line }) => !refused.has(line))
    .map(
      (note): Noted => ({
        ...note,
        asTyped: true,
        pieces: pieces.size === 1 && turn.heard.length === 1 ? [...pieces.values()] : [],
      }),
    );
  const noted = [...facts, ...typed.filter((note) => !facts.some((fact) => isSaidBy(fact, note)))];
  const { caution, given, waiting } = cautionFor(
    { noted, day: turn.today },
    {
      given: () => settings.get("cautionsGiven") ?? {},
      waiting: () => settings.get("cautionsWaiting") ?? {},
    },
  );
  if (given) settings.set("cautionsGiven", given);
  if (waiting) settings.set("cautionsWaiting", waiting);
  return caution?.line ?? null;
}
