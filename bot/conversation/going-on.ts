import { continuedReadings, mayGoOn } from "../../core/decide/continued.ts";
import type { Reading } from "../../core/notes/reading.ts";
import { isOfToday } from "./fixing-other.ts";
import { newestFact, talkOf } from "./talk.ts";
import type { Turn } from "./turn.ts";

/** "same again", "now 200": what a message says that only goes on from the note before, or the one replied to. */
export function goneOn(
  turn: Turn,
  text: string,
  readings: readonly Reading[],
  replyRoot: number | undefined,
): Reading[] | null {
  if (turn.lines > 1 || !mayGoOn(text, readings)) return null;
  const { replied, latest = [] } = talkOf(turn, replyRoot);
  const newest = newestFact(turn, ({ root }) => replyRoot === undefined || root === replyRoot);
  const isBefore = newest && (replyRoot !== undefined || isOfToday(turn, newest));
  const { ledger, today } = turn;
  return continuedReadings(text, {
    fact: isBefore ? newest : undefined,
    pieces: replied ?? latest,
    books: ledger.books,
    today,
  });
}
