import type { Piece } from "./books.ts";
import type { BooksInHand } from "./hand.ts";
import { costOf } from "./piece.ts";
import type { Account } from "./postings.ts";

/** The account that holds what a piece cost: spending follows it there when the piece is gone. */
export function costAccountOf(piece: Readonly<Piece>): Account {
  if (piece.gone === null) return "unsold pieces";
  if (piece.gone === "sold") return "cost of pieces sold";
  return piece.gone === "kept" ? "personal use" : "written off";
}

/** Moves a piece's cost from one account to another, that day. */
export function moveCost(books: BooksInHand, piece: Readonly<Piece>, from: Account, to: Account): void {
  books.post(to, costOf(piece), { piece: piece.number });
  books.post(from, -costOf(piece), { piece: piece.number });
}
