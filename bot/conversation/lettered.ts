import { newMatter } from "../../core/decide/decision.ts";
import { LETTERS, letteredMend, readLettered } from "../../core/mending/lettered.ts";
import { decideAll } from "./recording.ts";
import type { Turn } from "./turn.ts";

/** Puts a letter before each line of a list of notes, and keeps which note it stands for. */
export function lettered(turn: Turn, text: string, facts: readonly number[]): string {
  const [head, ...lines] = text.split("\n");
  const shown = facts.slice(0, Math.min(lines.length, LETTERS.length));
  const { settings } = turn.ledger;
  settings.set("notesShown", {
    ...settings.get("notesShown"),
    [turn.person]: { day: turn.today, facts: shown },
  });
  const told = lines.map((line, index) =>
    index < shown.length ? `${LETTERS[index]}  ${line.trim()}` : line,
  );
  return [head, ...told, 'To change one: "remove b" or "b was 14"'].join("\n");
}

/** Takes "remove b" and "b was 14" where a list of notes was shown that day; false where they are no such words. */
export function changeLettered(turn: Turn, text: string): boolean {
  const { ledger, person, today } = turn;
  const said = readLettered(text);
  const shown = ledger.settings.get("notesShown")?.[person];
  if (!said || shown?.day !== today) return false;
  const id = shown.facts[said.index];
  const place = id === undefined ? undefined : ledger.factById(id)?.place;
  if (place === undefined) return false;
  const fact = ledger.factAt(place);
  if (!fact) {
    turn.spoken.push("That note is gone.");
    return true;
  }
  const mend = letteredMend(fact, said.said, { text, today });
  if (!mend) return false;
  decideAll(turn, [newMatter(mend, today)], { root: turn.root });
  return true;
}
