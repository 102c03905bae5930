import type { Books, Piece } from "../../books/books.ts";
import { lexed } from "../../notes/lexed.ts";
import { pluralOf } from "../../notes/mentions/plural.ts";
import { readMessage } from "../../notes/read.ts";
import type { Reading } from "../../notes/reading.ts";
import { isWholeNote } from "../../notes/unclear.ts";
import { BEFORE_DESCRIBED } from "../../notes/words/pieces.ts";
import { SAME_THINGS } from "../../notes/words/same.ts";
import { cannotBe, type Decision, type Looking } from "../decision.ts";
import { nameWith } from "../pieces/mention-words.ts";
import { hereOf } from "./unnamed.ts";

/*
 * Pieces told by what only they are, their noun left out: "hall one's up for 65", "green's up at 60, black 75". The
 * message is read once more with their names, and taken so where all of it is a note then.
 */

interface Deciding {
  decide(reading: Reading, desk: Looking): Decision;
}

const TEXT_MAX = 120;

/** What a message tells of pieces that it only describes; null where it names them, or the books hold none such. */
export function ofDescribed(
  text: string,
  readings: readonly Reading[],
  desk: Looking,
  { decide }: Deciding,
): readonly Reading[] | null {
  if (text.length > TEXT_MAX || text.includes("?") || !readings.some(isOpen)) return null;
  const named = withNames(text, desk.books);
  if (named === text) return null;
  const again = readMessage(named, desk.today);
  const isTaken = (reading: Reading): boolean =>
    isWholeNote(reading)
      ? OF_PIECES.has(reading.kind) && !cannotBe(decide(reading, desk))
      : reading.kind === "unclear" && reading.byBooks === true;
  return again.length > 0 && again.every(isTaken) ? again : null;
}

const OF_PIECES: ReadonlySet<Reading["kind"]> = new Set<Reading["kind"]>([
  "finish",
  "list",
  "reprice",
  "sell",
  "hold",
  "retire",
  "start",
  "work",
  "spend",
  "fallthrough",
]);

/** It says not all of what it tells, and nothing stands before it that would. */
const isOpen = (reading: Reading): boolean =>
  !reading.follows && (reading.kind === "unclear" || reading.missing?.includes("pieces") === true);

/** The text with the names of the pieces here in the place of words that tell one from all others. */
function withNames(text: string, books: Books): string {
  const pieces = hereOf(books);
  const names = namesByWord(pieces);
  const named = lexed(text).filter(({ mention }) => mention?.name !== undefined);
  const isInName = (word: string): boolean => named.some(({ text: said }) => said.split(" ").includes(word));
  // "work" of a work bench says what was done.
  const isTrait = (word: string): boolean =>
    pieces.some(({ traits }) => traits.includes(word)) &&
    lexed(word).every(({ roles }) => !roles.heads && !roles.labor);
  let before = "";
  return text.replace(SAID, (all, lead: string, word: string, one: string | undefined, rest: string) => {
    const said = word.toLowerCase();
    const isLed = lead.trim() !== "" || before === "" || BEFORE_DESCRIBED.has(before);
    before = said;
    const name = names.get(said);
    if (!name || isInName(said) || !(one || (isLed && isTrait(said)))) return all;
    return `${lead}${/ones/i.test(one ?? "") ? pluralOf(name) : name}${rest}`;
  });
}

/** A mark and blanks before a word, the word, "one" or "ones" behind it, and what ends it. */
const SAID = /((?:^|[,.;:!&+]|\s)\s*)([a-z]+)(\s+ones?\b)?((?:['\u2019]?s)?(?![\w'\u2019]))/gi;

/** The full names of pieces by each of their words that is of no other name. */
function namesByWord(pieces: readonly Readonly<Piece>[]): Map<string, string> {
  const names = new Map<string, string>();
  const shared = new Set<string>();
  for (const piece of pieces) {
    const name = nameWith(piece);
    for (const word of wordsOf(piece)) {
      if ((names.get(word) ?? name) !== name) shared.add(word);
      names.set(word, name);
    }
  }
  for (const word of shared) names.delete(word);
  return names;
}

/** Its traits, and what stands before the noun of its name, or of another name for it. */
function wordsOf({ name, traits }: Readonly<Piece>): string[] {
  const others = SAME_THINGS.filter((group) => group.has(name)).flatMap((group) => [...group]);
  return [...traits, ...[name, ...others].flatMap((each) => each.split(" ").slice(0, -1))];
}
