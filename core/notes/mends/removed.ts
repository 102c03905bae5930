import type { Reading } from "../reading.ts";
import { eitherOf } from "../unclear.ts";
import { OF_BOOKS } from "../words/mending.ts";

/** "remove the hinges and fill the holes, 1h on the desk": taken off the desk, as likely as out of the books. */
export function removedForSure(readings: Reading[]): Reading[] {
  if (!readings.some(({ kind }) => kind === "work")) return readings;
  const isOfBooks = (text: string) => text.split(/[^a-z]+/i).some((word) => OF_BOOKS.has(word.toLowerCase()));
  return readings.map((each) =>
    each.kind === "mend" && each.removed && !isOfBooks(each.text) ? eitherOf([each], each, "doubt") : each,
  );
}
