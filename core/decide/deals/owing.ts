import type { Books, Piece } from "../../books/books.ts";
import type { FactOf } from "../../books/facts.ts";
import { pieceLabel } from "../../books/piece.ts";
import { owedByBuyers } from "../../books/shares.ts";
import { type Cents, show } from "../../money.ts";
import { piecesOf } from "../echo.ts";
import { toldApart } from "./whom.ts";

/**
 * The sales on which something is still owed, newest first: by the buyer named, where one is, and of at least the
 * amount that came in, where any owes so much.
 */
export function salesOwing(books: Books, said: { amount?: Cents; buyer?: string } = {}): FactOf<"sell">[] {
  const owing = (isOwedAny(books) ? books.facts : []).filter(
    (fact): fact is FactOf<"sell"> =>
      fact.kind === "sell" && owedByBuyers(piecesOf(books, fact)) > 0 && isLastSale(books, fact),
  );
  const isTheirs = ({ data }: FactOf<"sell">): boolean => data.buyer === said.buyer;
  const isAnybody = toldApart(said.buyer) === undefined && !owing.some(isTheirs);
  const fitting = owing.filter((sale) => isAnybody || isTheirs(sale));
  const enough = fitting.filter((sale) => owedByBuyers(piecesOf(books, sale)) >= (said.amount ?? 0));
  return (enough.length > 0 ? enough : fitting).reverse();
}

function isOwedAny({ pieces }: Books): boolean {
  for (const { owed } of pieces.values()) if (owed > 0) return true;
  return false;
}

/** What of a sale is still owed, and by whom: "#4 desk: 50.00 by neighbor". */
export function owingWords(books: Books, sale: FactOf<"sell">): string {
  const owing = owingPieces(books, sale);
  const buyer = sale.data.buyer ? ` by ${sale.data.buyer}` : "";
  return `${owing.map(pieceLabel).join(", ")}: ${show(owedByBuyers(owing))}${buyer}`;
}

export function owingPieces(books: Books, sale: FactOf<"sell">): Readonly<Piece>[] {
  return piecesOf(books, sale).filter((piece) => piece.owed > 0);
}

/** A piece that came back and was sold again owes on its last sale. */
function isLastSale(books: Books, sale: FactOf<"sell">): boolean {
  return sale.pieces.every((number) => {
    const piece = books.pieces.get(number)!;
    return piece.owed === 0 || piece.sold === sale.day;
  });
}
