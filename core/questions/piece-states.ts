import type { Piece } from "../books/books.ts";
import { statusOf } from "../books/piece.ts";
import type { Day } from "../calendar.ts";
import type { Desk } from "./desk.ts";
import type { Cue } from "./words/cues.ts";

/** Something that is so of a piece or not, by the cue that asks. */
export interface PieceState {
  cue: Cue;
  /** Since when it is so; null: it is not. */
  since(piece: Readonly<Piece>, desk: Desk): Day | null;
  told: string;
}

/** "Was the trunk listed": ever, where it has gone since as well. */
export const WAS_LISTED: PieceState = {
  cue: "listed",
  since: (piece, { index }) => index.of(piece.number).list?.day ?? null,
  told: "listed",
};

export const STATES: readonly PieceState[] = [
  {
    cue: "unlisted",
    since: (piece) => (statusOf(piece) === "finished" ? piece.finished : null),
    told: "finished, not listed",
  },
  { cue: "held", since: (piece) => (piece.gone ? null : (piece.hold?.since ?? null)), told: "on hold" },
  {
    cue: "deposits",
    since: (piece) => (piece.deposit > 0 ? (piece.hold?.since ?? piece.bought) : null),
    told: "has a deposit",
  },
  {
    cue: "priceCut",
    since: (piece, { index }) => index.of(piece.number).repriced,
    told: "price dropped",
  },
  {
    cue: "hadDeposit",
    since: (piece, { index }) => index.of(piece.number).deposited,
    told: "had a deposit",
  },
  { cue: "returned", since: (piece, { index }) => index.of(piece.number).returned, told: "came back" },
  { cue: "kept", since: (piece) => (piece.gone === "kept" ? piece.goneOn : null), told: "kept" },
  { cue: "given", since: (piece) => (piece.gone === "given" ? piece.goneOn : null), told: "given away" },
  { cue: "scrapped", since: (piece) => (piece.gone === "scrapped" ? piece.goneOn : null), told: "scrapped" },
  { cue: "unsold", since: (piece) => (piece.gone ? null : piece.bought), told: "still here" },
  {
    cue: "paidUp",
    since: (piece) => (piece.gone === "sold" && piece.owed === 0 ? piece.sold : null),
    told: "paid for",
  },
  { cue: "sold", since: (piece) => piece.sold, told: "sold" },
  { cue: "gone", since: (piece) => piece.goneOn, told: "gone" },
  { cue: "finished", since: (piece) => piece.finished, told: "finished" },
  { cue: "started", since: (piece) => piece.started, told: "started" },
  { cue: "listed", since: (piece) => (piece.gone ? null : piece.listed), told: "listed" },
  { cue: "free", since: (piece) => (piece.price === 0 ? piece.bought : null), told: "free" },
  { cue: "have", since: (piece) => (piece.gone ? null : piece.bought), told: "still here" },
  { cue: "bought", since: (piece) => piece.bought, told: "bought" },
];
