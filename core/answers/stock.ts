import type { Books, Piece } from "../books/books.ts";
import { costOf, statusOf } from "../books/piece.ts";
import type { Day } from "../calendar.ts";
import { daysBetween, showDays } from "../calendar.ts";
import type { Cents } from "../money.ts";

type Pieces = readonly Readonly<Piece>[];

/** All pieces not gone, by number. */
export function unsoldPieces(books: Books): Pieces {
  return [...books.pieces.values()].filter((piece) => !piece.gone).sort((a, b) => a.number - b.number);
}

/** Finished, not listed, not held, not gone: the longest finished first. */
export function unlistedPieces(books: Books): Pieces {
  return oldestFirst(
    unsoldPieces(books).filter((piece) => statusOf(piece) === "finished"),
    (piece) => piece.finished,
  );
}

/** Listed and not gone, held ones too: the longest listed first. */
export function listedPieces(books: Books): Pieces {
  return oldestFirst(
    unsoldPieces(books).filter((piece) => piece.listed !== null),
    (piece) => piece.listed,
  );
}

/** On hold for a buyer: the longest held first. */
export function heldPieces(books: Books): Pieces {
  return oldestFirst(
    unsoldPieces(books).filter((piece) => piece.hold !== null),
    (piece) => piece.hold!.since,
  );
}

/** Every piece that is sold now, the latest first. */
export function soldPieces(books: Books): Pieces {
  return [...books.pieces.values()]
    .filter((piece) => piece.gone === "sold")
    .sort((a, b) => (a.sold! < b.sold! ? 1 : a.sold! > b.sold! ? -1 : b.number - a.number));
}

function oldestFirst(pieces: Pieces, since: (piece: Readonly<Piece>) => Day | null): Pieces {
  return [...pieces].sort((a, b) => (since(a) ?? "").localeCompare(since(b) ?? "") || a.number - b.number);
}

/** Money tied up in pieces, in cents. */
export function costOfAll(pieces: Pieces): Cents {
  return pieces.reduce((sum, piece) => sum + costOf(piece), 0);
}

/** How long something has been so: "today", "1 day", "12 days". */
export function showAge(since: Day, today: Day): string {
  return showDays(daysBetween(since, today));
}
