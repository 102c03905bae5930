import { callsOf, cautionFor, type Noted, notedOf } from "../../core/cautions.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Turn } from "./turn.ts";

/** Words to the bot about the books and itself: nothing is being done in them. */
const QUIET: ReadonlySet<string> = new Set(["ask", "undo", "fix", "nudge", "goal", "taxrate"]);

/** Keeps a note as typed for the cautions: they speak of its words whatever is made of them. `from`: its first line. */
export function heard(turn: Turn, text: string, readings: readonly Reading[], from = 0): void {
  const kinds = readings.map(({ kind }) => kind);
  if (kinds.length > 0 && kinds.every((kind) => QUIET.has(kind))) return;
  for (const [index, words] of text.split("\n").entries()) {
    if (words.trim() === "") continue;
    const line = from + index;
    const own = readings.filter((reading) => reading.line === line).map(({ kind }) => kind);
    turn.heard.push({ text: words, line, kinds: own.length > 0 ? own : kinds, root: turn.root });
  }
}

/** The notes for which no fact calls for all that they can call for: the same words of the same kind, about as many. */
function notSaidBy(facts: readonly Noted[], typed: readonly Noted[]): Noted[] {
  const keyOf = ({ text, pieces }: Noted) => `${pieces.length} ${text}`;
  // By their words: a message may have the same line a thousand times.
  const kindsOf = new Map<string, Set<string>>();
  for (const fact of facts) {
    const known = kindsOf.get(keyOf(fact)) ?? new Set();
    for (const kind of fact.kinds) known.add(kind);
    kindsOf.set(keyOf(fact), known);
  }
  return typed.filter((note) => {
    const said = [...(kindsOf.get(keyOf(note)) ?? [])];
    return !said.some((fact) => note.kinds.every((kind) => kind === fact));
  });
}

/**
 * Looks at what was recorded and typed since the last time, for its cautions. Of a message of many lines it is done
 * with each slice: all of them at its end would keep everybody waiting.
 */
export function lookForCautions(turn: Turn): void {
  const { books } = turn.ledger;
  const { looked } = turn;
  const facts = turn.recorded.slice(looked.recorded).map(({ fact, text }) => notedOf(fact, { text, books }));
  const heard = turn.heard.slice(looked.heard);
  const pieces = new Map(facts.flatMap((fact) => fact.pieces.map((piece) => [piece.number, piece] as const)));
  // Of what was read and cannot be, such as a cost of a piece that is not there, nothing is done: no word of it.
  const refused = new Set(turn.refused.flatMap(({ line, isRead }) => (isRead ? [line] : [])));
  const typed = heard
    .filter(({ line }) => !refused.has(line))
    .map(
      (note): Noted => ({
        ...note,
        asTyped: true,
        pieces: pieces.size === 1 && turn.heard.length === 1 ? [...pieces.values()] : [],
      }),
    );
  turn.looked = {
    recorded: turn.recorded.length,
    heard: turn.heard.length,
    calls: callsOf([...facts, ...notSaidBy(facts, typed)], looked.calls),
  };
}

/** The one caution of this turn, remembered so that it is not said too often; null where none is due. */
export function cautionOf(turn: Turn): string | null {
  const { settings } = turn.ledger;
  lookForCautions(turn);
  const { caution, given, waiting } = cautionFor(
    { noted: [], day: turn.today, before: turn.looked.calls },
    {
      given: () => settings.get("cautionsGiven") ?? {},
      waiting: () => settings.get("cautionsWaiting") ?? {},
    },
  );
  if (given) settings.set("cautionsGiven", given);
  if (waiting) settings.set("cautionsWaiting", waiting);
  return caution?.line ?? null;
}
