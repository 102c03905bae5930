import type { Fact } from "../books/facts.ts";
import type { Day } from "../calendar.ts";
import {
  readBareDay,
  readBareDuration,
  readBareMention,
  readBareMiles,
  readBareMoney,
} from "../notes/bare.ts";
import type { ReadingOf } from "../notes/reading.ts";
import type { MendTo } from "./fields.ts";

/** The letters by which the lines of a list are spoken of, in order. */
export const LETTERS = "abcdefghij";

const REMOVE = /^(?:please\s+)?(?:remove|delete|undo|scratch|drop|take out|take back)\s+([a-j])$/;
const CHANGE =
  /^([a-j])\s+(?:was|were|is|should be|should have been|cost|=)\s+(?:really\s+|actually\s+)?(.+)$/;

/** "remove b", "b was 14", "b was for the desk": which line of a list, and what becomes of it; null: no such words. */
export function readLettered(text: string): { index: number; said: string | null } | null {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, "");
  const removed = REMOVE.exec(plain);
  if (removed) return { index: LETTERS.indexOf(removed[1]!), said: null };
  const changed = CHANGE.exec(plain);
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
  const to = becoming(fact, said.replace(/^for\s+(?=\d)/, ""), today);
  return to && { kind: "mend", of, to, text, line: 0 };
}

/** An amount, a day, a time, miles, or the pieces it was for: what fits the kind of note. */
function becoming(fact: Fact, said: string, today: Day): MendTo | null {
  const day = readBareDay(said.replace(/^on\s+/, ""), today);
  if (day !== null) return { date: day };
  const minutes = fact.kind === "work" ? readBareDuration(said) : null;
  if (minutes !== null) return { minutes };
  const miles = fact.kind === "drive" ? readBareMiles(said) : null;
  if (miles !== null) return { miles };
  const amount = readBareMoney(said);
  if (amount !== null) return { amount };
  const aimed = /^(?:for|on)\s+(.+)$/.exec(said);
  const mention = aimed ? readBareMention(aimed[1]!) : null;
  return mention ? { pieces: [mention] } : null;
}
