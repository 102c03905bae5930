import type { Mention, Reading } from "../../notes/reading.ts";
import type { Choice } from "../decision.ts";

const PLACES: readonly string[] = ["first", "second", "third", "fourth"];
const PASSED = new Set(["the", "one", "a", "my"]);
const WORDS_MAX = 3;

/** "the second one", "kitchen", "both": by their place among the choices, by words of just one, or all of two. */
export function pointedAt(text: string, choices: readonly Choice[]): Partial<Reading> | null {
  const said = text.toLowerCase().match(/[a-z]+/g) ?? [];
  const words = said.filter((word) => !PASSED.has(word));
  if (words.length === 0 || words.length > WORDS_MAX || /\d/.test(text)) return null;
  const offered = choices.flatMap(({ label, effect }) => {
    const change = effect.kind === "settle" ? effect.change : undefined;
    return change && "pieces" in change ? [{ label, change }] : [];
  });
  const place = words.length === 1 ? PLACES.indexOf(words[0]!) : -1;
  if (place >= 0) return offered[place]?.change ?? null;
  if (words.join(" ") === "both") return bothOf(offered.map(({ change }) => change));
  const fitting = offered.filter(({ label }) => {
    const shown: readonly string[] = label.toLowerCase().split(/[^a-z]+/);
    return words.every((word) => shown.includes(word));
  });
  return fitting.length === 1 ? fitting[0]!.change : null;
}

/** Both candidates, where nothing but the pieces is to be settled. */
function bothOf(changes: readonly Partial<Reading>[]): Partial<Reading> | null {
  if (changes.length !== 2 || !changes.every((change) => Object.keys(change).join() === "pieces"))
    return null;
  return {
    pieces: changes.flatMap((change) => (change as { pieces: Mention[] }).pieces),
  } as Partial<Reading>;
}
