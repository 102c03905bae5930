import type { Fact } from "../books/facts.ts";
import type { Day } from "../calendar.ts";
import { lexed } from "../notes/lexed.ts";
import { inMeasure, type Side, side, takeTo } from "../notes/mends/mended.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { CHANGES_LETTER, REMOVES_LETTER } from "../notes/words/mending.ts";
import { canMend, type MendTo } from "./fields.ts";

/** The letters by which the lines of a list are spoken of, in order. */
export const LETTERS = "abcdefghij";

/** "remove b", "b was 14", "b was for the desk": which line of a list, and what becomes of it; null: no such words. */
export function readLettered(text: string): { index: number; said: string | null } | null {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, "");
  const removed = REMOVES_LETTER.exec(plain);
  if (removed) return { index: LETTERS.indexOf(removed[1]!), said: null };
  const changed = CHANGES_LETTER.exec(plain);
  return changed ? { index: LETTERS.indexOf(changed[1]!), said: changed[2]! } : null;
}

/** The correction that such words are, of that fact; null where what it should be is not understood. */
export function letteredMend(
  fact: Fact,
  said: string | null,
  { text, today }: { text: string; today: Day },
): ReadingOf<"mend"> | null {
  const of = { fact: fact.id };
  if (said === null) return { kind: "mend", of, removed: true, text, line: 0 };
  const to = becoming(fact, said, today);
  return to && { kind: "mend", of, to, text, line: 0 };
}

/** What the words say that it becomes, where a note of its kind can. */
function becoming(fact: Fact, said: string, today: Day): MendTo | null {
  const { of, to, ...rest } = side();
  const made = { of: { kind: fact.kind }, to, ...rest } as Side;
  if (!takeTo(lexed(said), made, today) || Object.keys(to).length === 0) return null;
  inMeasure(made);
  return canMend(fact.kind, to) ? to : null;
}
