import type { Books, Piece } from "../../books/books.ts";
import { lexed } from "../../notes/lexed.ts";
import { isOfDay } from "../../notes/passed-over/chatter.ts";
import type { Mention } from "../../notes/reading.ts";
import { unitsOf } from "../../notes/rows/units.ts";
import { type Gathered, gathered } from "../../notes/second-look/gathered.ts";
import type { Looking } from "../decision.ts";
import { ever } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { likelyMends } from "./mends.ts";
import { likelyNew } from "./new.ts";
import { type Likely, likelyHere, likelySoldSince } from "./of-pieces.ts";

/*
 * The last resort: what a message that nobody could read may tell, by what is recognised in it and by how the books
 * stand. Whole readings for buttons, likeliest first; none is ever recorded by itself.
 */

/** So much has to speak for a reading. */
const SAID_LEAST = 3;
const CUED_LEAST = 4;
const OFFERED_MAX = 3;

type LikelyDesk = Looking;

/** What such a message may be, likeliest first. */
export function likelyOf(text: string, line: number, desk: LikelyDesk): Likely[] {
  if (tellsOfDay(text)) return [];
  const found = gathered(text, line, desk.today);
  const isAsked = /\?\s*$/.test(text) && !found.tells.has("held") && !found.tells.has("removes");
  if (isAsked || text.length > LENGTH_MAX) return [];
  const numbers = piecesMeant(found, desk);
  const all = [...likelyMends(found, numbers, desk), ...likelyNew(found, numbers, desk)];
  const spoken = desk.talk?.replied ?? desk.talk?.latest ?? [];
  // "i listed it for 160, and the chair i havent touched": "it" is what was spoken of before.
  const isEither =
    found.isOfIt && numbers.length > 0 && spoken.length > 0 && spoken.join() !== numbers.join();
  for (const group of isEither ? [spoken, numbers] : [numbers]) all.push(...ofPieces(found, group, desk));
  // Of a piece that is only spoken of before, something has to say what became of it.
  const isUnnamed = found.mentions.length === 0 && !found.isOfIt && !desk.talk?.replied && numbers === spoken;
  const least = isUnnamed ? CUED_LEAST : SAID_LEAST;
  return all
    .filter(({ weight }) => weight >= least)
    .sort((one, other) => other.weight - one.weight)
    .slice(0, OFFERED_MAX);
}

const LENGTH_MAX = 240;

/** "zero done today, the twins are sick": nothing became of any piece. */
function tellsOfDay(text: string): boolean {
  const tokens = lexed(text);
  return isOfDay(tokens, unitsOf([...tokens]));
}

function ofPieces(found: Gathered, numbers: readonly number[], { books }: LikelyDesk): Likely[] {
  const pieces = numbers.map((number) => books.pieces.get(number)!);
  if (pieces.length === 0) return [];
  if (pieces.every(({ gone }) => gone === null)) return likelyHere(found, pieces, { books });
  return pieces.every(({ gone }) => gone === "sold") ? likelySoldSince(found, pieces) : [];
}

/** Those named; else those of the message replied to, of a name on the books, or spoken of last. */
function piecesMeant(found: Gathered, { books, talk }: LikelyDesk): number[] {
  const named = found.mentions.flatMap(
    (mention) => foundBy([mention], books, ever) ?? foundBy([plainly(mention)], books, ever) ?? [],
  );
  if (named.length > 0) return [...new Set(named)];
  // A name that the books do not have: of no other piece.
  if (found.mentions.length > 0) return [];
  if (talk?.replied) return talk.replied;
  const called = [...books.pieces.values()].filter(({ name }) => saysName(found.words, name));
  if (called.length > 0) return called.map(({ number }) => number);
  const theirs = piecesOfName(found.words, books);
  return theirs.length > 0 ? theirs : (talk?.latest ?? []);
}

/** "make bookcase": a word before the piece that tells nothing of it. */
const plainly = ({ name = "", count, number }: Mention): Mention => ({
  name,
  ...(count === undefined ? {} : { count }),
  ...(number === undefined ? {} : { number }),
});

const saysName = (words: readonly string[], name: string): boolean =>
  ` ${words.join(" ")} `.includes(` ${name} `);

/** The pieces that somebody named holds, or owes on. */
function piecesOfName(words: readonly string[], books: Books): number[] {
  const isSaid = (name: string | null | undefined): boolean =>
    !!name && (saysName(words, name) || saysName(words, `${name}s`));
  const isTheirs = (piece: Readonly<Piece>): boolean =>
    piece.gone === null ? isSaid(piece.hold?.buyer) : piece.owed > 0 && isSaid(buyerOf(piece, books));
  return [...books.pieces.values()].filter(isTheirs).map(({ number }) => number);
}

function buyerOf({ number }: Readonly<Piece>, { facts }: Books): string | undefined {
  const sale = facts.findLast(({ kind, pieces }) => kind === "sell" && pieces.includes(number));
  return sale?.kind === "sell" ? sale.data.buyer : undefined;
}
