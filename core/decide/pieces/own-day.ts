import { booksThrough } from "../../books/change.ts";
import type { Day } from "../../calendar.ts";
import type { Reading } from "../../notes/reading.ts";
import type { Looking } from "../decision.ts";
import { ever } from "./fits.ts";
import { matchMention } from "./match.ts";
import { mentionsOf } from "./mentioned.ts";

/**
 * What a note may look at: the books as they stood at the end of its own day, where facts of later days have
 * been recorded and that day knew its pieces. So a piece that has gone since can still be told of, and a name
 * means a piece that was there then, not one bought since. Whether the later facts stay possible is for the
 * fold to say.
 */
export function deskOfItsDay<D extends Looking>(reading: Reading, desk: D): D {
  const day: Day = ("date" in reading ? reading.date : undefined) ?? desk.today;
  const last = desk.books.facts.at(-1);
  if (!last || last.day <= day) return desk;
  const folded = booksThrough(desk.books, day);
  if (folded.kind === "impossible") return desk;
  const { books } = folded;
  const mentions = mentionsOf(reading);
  const isKnown = mentions.every((mention) => {
    const { kind } = matchMention(mention, books, ever, new Set());
    return kind !== "none" && kind !== "no such number";
  });
  return isKnown ? { ...desk, books } : desk;
}
