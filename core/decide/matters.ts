import type { Reading, ReadingOf } from "../notes/reading.ts";
import { isFor } from "../notes/unclear.ts";
import { type Matter, newMatter } from "./decision.ts";
import { pricedFor } from "./pieces/each.ts";
import { byNumbers, mentionsOf } from "./pieces/mentioned.ts";

/* A message as matters, each to be decided once the one before it is settled. */

/**
 * The matters of a message in order: a reading that follows another ("listed it") waits in the one before it.
 */
export function mattersOf(readings: readonly Reading[], said: string): Matter[] {
  const matters: Matter[] = [];
  for (const reading of listsOf(readings)) {
    const last = matters.findLast((matter) => hasPieces(matter.reading));
    if (last && (reading.follows || isWorkOn(reading, last.reading))) last.waiting.push(reading);
    else matters.push(newMatter(reading, said));
  }
  return matters;
}

/** "rummage sale: chair 15, 2 lamps 3 each": what has no verb in one line is asked about once, and not piece by piece. */
function listsOf(readings: readonly Reading[]): Reading[] {
  const lists: Reading[] = [];
  for (const reading of readings) {
    const first = lists.at(-1);
    if (first && isVerbless(first) && isVerbless(reading) && first.line === reading.line)
      lists[lists.length - 1] = { ...first, rest: [...(first.rest ?? []), reading] };
    else lists.push(reading);
  }
  return lists;
}

const isVerbless = (reading: Reading): reading is ReadingOf<"unclear"> =>
  reading.kind === "unclear" &&
  isFor(reading, "noVerb") &&
  reading.could !== undefined &&
  // "desk to 100 and lamp to 24": the books tell of each.
  !reading.byBooks &&
  reading.rest?.length !== 0;

/** "started the desk", and on the next line "1.5h sanding". */
function isWorkOn({ kind, missing, line }: Reading, before: Reading): boolean {
  return kind === "work" && missing?.join() === "pieces" && line === before.line + 1;
}

/** What waited for "it", now that the pieces of the clause before are known (by number, in order). */
export function followUp(matter: Matter, pieces: readonly number[]): Matter[] {
  const [next, ...waiting] = matter.waiting;
  if (!next) return [];
  // The clause before was recorded without a piece: this one has only its own words to go by.
  if (pieces.length === 0) return [{ reading: next, said: matter.said, confirmed: [], waiting }];
  const mentions = byNumbers(pieces);
  const missing = next.missing?.filter((field) => field !== "pieces") ?? [];
  // "stools are done, listed them 40 each": counted now that it is known which they are.
  const isUncounted = mentionsOf(next).every(
    ({ plural, it, count }) => plural === true || (it === true && count === undefined),
  );
  const priced = isUncounted ? pricedFor({ ...next, pieces: [] } as Reading, mentions) : {};
  const reading = { ...next, pieces: mentions, ...priced, missing } as Reading;
  return [{ reading, said: matter.said, confirmed: [], waiting }];
}

function hasPieces(reading: Reading): boolean {
  return "pieces" in reading || reading.missing?.includes("pieces") === true;
}
