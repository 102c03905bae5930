import type { Mention, Reading } from "../../notes/reading.ts";
import { PIECE_PARTS } from "../../notes/words/parts.ts";
import type { Looking } from "../decision.ts";
import { ever, here } from "../pieces/fits.ts";
import { matchMention } from "../pieces/match.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";

/* Parts that are named with a piece, or in the place of one: whose they are, the books know. */

/** "fabric 36 for the seats": those of what was spoken of last, where the books have no seats; null else. */
export function withoutPart(reading: Reading, { books, talk }: Looking): Reading | null {
  const spoken = talk?.replied ?? talk?.latest ?? [];
  const [mention, ...more] = mentionsOf(reading);
  if (reading.kind !== "spend" || reading.category !== "materials" || spoken.length === 0) return null;
  const part = mention?.name?.split(" ").at(-1);
  if (!mention || !part || more.length > 0 || !PIECE_PARTS.has(part)) return null;
  if (matchMention(mention, books, ever, new Set()).kind !== "none") return null;
  const { pieces: _, ...rest } = reading;
  return rest;
}

/** "glass guy charged 35 to redo the doors": first as a cost of what was spoken of, whose doors they may be. */
export function withItsPart(
  could: readonly Reading[],
  left: readonly string[],
  { books, talk }: Looking,
): readonly Reading[] {
  const [first] = could;
  const spoken = talk?.replied ?? talk?.latest ?? [];
  const isHere = spoken.length > 0 && spoken.every((number) => books.pieces.get(number)?.gone === null);
  const isOfPart = first?.kind === "spend" && !first.pieces && left.some((word) => PIECE_PARTS.has(word));
  return isOfPart && isHere ? [{ ...first, pieces: byNumbers(spoken) } as Reading, ...could] : could;
}

/** "fabric for the chair seats 36" of four chairs bought together: the seats are those of all of them; null else. */
export function withAllItsParts(reading: Reading, { books }: Looking): Reading | null {
  const [mention, ...more] = mentionsOf(reading);
  if ((reading.kind !== "spend" && reading.kind !== "work") || more.length > 0) return null;
  if (mention?.name === undefined || mention.number !== undefined || mention.count !== 1) return null;
  if (!namesItsParts(reading.text.toLowerCase(), mention.name)) return null;
  const { count: _, ...all }: Mention = { ...mention, plural: true };
  const match = matchMention(all, books, here, new Set());
  const pieces = match.kind === "found" ? match.pieces.map((number) => books.pieces.get(number)!) : [];
  const [first] = pieces;
  const isOneLot =
    first?.lot != null && pieces.every(({ lot, name }) => lot === first.lot && name === first.name);
  return isOneLot ? { ...reading, pieces: byNumbers(pieces.map(({ number }) => number)) } : null;
}

/** "chair seats", "nightstand drawers": and no article that tells one of several. */
function namesItsParts(text: string, name: string): boolean {
  const words = text.split(/[^a-z]+/);
  const head = name.split(" ").at(-1)!;
  return words.some(
    (word, at) => word === head && PLURAL.test(words[at + 1] ?? "") && PIECE_PARTS.has(words[at + 1]!),
  );
}

const PLURAL = /[^s]s$/;
