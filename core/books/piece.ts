import type { Cents } from "../money.ts";
import type { Piece, Status } from "./books.ts";

/** The furthest that stands: gone (sold, kept, given, scrapped), else held, listed, finished, started, bought. */
export function statusOf(piece: Readonly<Piece>): Status {
  if (piece.gone) return piece.gone;
  if (piece.hold) return "held";
  if (piece.listed) return "listed";
  if (piece.finished) return "finished";
  return piece.started ? "started" : "bought";
}

/** What a piece brought in: sales and kept deposits less refunds, in cents; never below zero. */
export function proceedsOf(piece: Readonly<Piece>): Cents {
  return piece.sales + piece.depositsKept - piece.refunds;
}

/** What a piece cost: its share of the price paid and what was spent on it, in cents; selling fees are apart. */
export function costOf(piece: Readonly<Piece>): Cents {
  return piece.price + piece.materials;
}

/**
 * Proceeds less cost and fees, in cents; null while nothing came in and the piece is not gone. The cost of a
 * kept piece is the owner's draw and no cost of the business.
 */
export function profitOf(piece: Readonly<Piece>): Cents | null {
  const proceeds = proceedsOf(piece);
  if (proceeds === 0 && !piece.gone) return null;
  return proceeds - (piece.gone === "kept" ? 0 : costOf(piece)) - piece.fees;
}

/** A piece as a reply names it: "#9 nightstand", "#12 tall white dresser". */
export function pieceLabel(piece: Readonly<Piece>): string {
  return [`#${piece.number}`, ...piece.traits, piece.name].join(" ");
}
