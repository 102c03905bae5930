import type { ContextCase } from "../context.ts";

/** One message of a grid over its books, with what it has to leave recorded. Its id: "row | column | …". */
export type Cell = ContextCase;

/** What the fact of a note has to hold, beside its pieces. */
export interface Told {
  wants: Record<string, unknown>;
}

/** The text with each {name} replaced. */
export function filled(text: string, words: Readonly<Record<string, string>>): string {
  return text.replace(/\{(\w+)\}/g, (_, name: string) => words[name] ?? `{${name}}`);
}

/** What stands for somebody who was told of, in place of {he}, {him} … of a text. */
export interface Pronouns {
  he: string;
  him: string;
  his: string;
  hes: string;
  owes: string;
}
export const HE: Pronouns = { he: "he", him: "him", his: "his", hes: "he's", owes: "owes" };
export const SHE: Pronouns = { he: "she", him: "her", his: "her", hes: "she's", owes: "owes" };
export const THEY: Pronouns = { he: "they", him: "them", his: "their", hes: "they're", owes: "owe" };

const SEED = 20260509;

/** For each cell chosen, so many are looked at. */
const LOOKED_AT = 20;

/** A few of the cells, by a fixed seed: each time the one with the most rows and columns that no other has shown yet. */
export function covering(cells: readonly Cell[], few: number): Cell[] {
  const some = shuffled(cells).slice(0, few * LOOKED_AT);
  const left = some.map((cell) => ({ cell, marks: cell.id.split(" | ") }));
  const shown = new Set<string>();
  const chosen: Cell[] = [];
  while (chosen.length < few && left.length > 0) {
    const newIn = ({ marks }: { marks: string[] }): number => marks.filter((mark) => !shown.has(mark)).length;
    let best = 0;
    for (let at = 1; at < left.length; at += 1) if (newIn(left[at]!) > newIn(left[best]!)) best = at;
    const [{ cell, marks }] = left.splice(best, 1) as [(typeof left)[number]];
    for (const mark of marks) shown.add(mark);
    chosen.push(cell);
  }
  return chosen;
}

function shuffled<T>(all: readonly T[]): T[] {
  let state = SEED;
  const random = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  return all
    .map((one) => ({ one, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ one }) => one);
}
