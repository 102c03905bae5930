import { goingPrice } from "../../books/agreed.ts";
import type { Piece } from "../../books/books.ts";
import { costOf } from "../../books/piece.ts";
import { depositOf, listPriceOf } from "../../books/shares.ts";
import type { Cents } from "../../money.ts";
import type { Reading } from "../../notes/reading.ts";
import type { SumSaid } from "../../notes/second-look/known-sums.ts";
import type { Known } from "../../notes/words/known-sums.ts";
import type { Looking } from "../decision.ts";
import { recordedPieces } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import type { Deciding } from "./whole.ts";

/* What the books have of the pieces that a message with several sums tells of. */

/** How the rest of a message is read, and decided. */
export interface Reader {
  read(rest: string): readonly Reading[];
  /** A reading as the books and the talk leave it. */
  meant(reading: Reading): Reading;
  deciding: Deciding;
}

/** What reads and decides the rest of such a message. */
export interface Telling {
  desk: Looking;
  reader: Reader;
}

/** The sums that are kept of it, and those that are left out. */
export interface Case extends Telling {
  kept: readonly SumSaid[];
  out: readonly SumSaid[];
}

export type Figures = Partial<Record<Known, readonly Cents[]>>;

/** What the books have of some pieces together, by what it is. */
export function figuresOf(pieces: readonly Readonly<Piece>[], { books, past }: Looking): Figures {
  const deposit = depositOf(pieces);
  const going = goingPrice(books, pieces);
  const paid = pieces.reduce((sum, piece) => sum + piece.price, 0);
  const cost = pieces.reduce((sum, piece) => sum + costOf(piece), 0);
  return {
    listed: [going, listPriceOf(pieces)].filter((sum) => sum !== null),
    cost: [paid, cost],
    down: deposit > 0 ? [deposit] : [],
    rest: deposit > 0 && going !== null ? [going - deposit] : [],
    wrote: [past?.newest()?.amount].filter((sum) => typeof sum === "number"),
  };
}

/** The pieces that a reading would be recorded of. */
export function piecesOf(reading: Reading, { desk, reader }: Telling): Readonly<Piece>[] {
  const decision = reader.deciding.decide(reading, desk);
  const numbers =
    decision.kind === "record" ? recordedPieces(decision) : foundBy(mentionsOf(reading), desk.books, here);
  return (numbers ?? []).flatMap((number) => desk.books.pieces.get(number) ?? []);
}
