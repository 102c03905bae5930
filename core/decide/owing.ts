import type { Books } from "../books/books.ts";
import type { FactOf } from "../books/facts.ts";
import { owedByBuyers } from "../books/shares.ts";
import type { Cents } from "../money.ts";
import { piecesOf } from "./echo.ts";

/**
 * The sales on which something is still owed, newest first: by the buyer named, where one is, and of at least the
 * amount that came in, where any owes so much.
 */
export function salesOwing(books: Books, said: { amount?: Cents; buyer?: string } = {}): FactOf<"sell">[] {
  const isOwed = [...books.pieces.values()].some((piece) => piece.owed > 0);
  const owing = (isOwed ? books.facts : []).filter(
    (fact): fact is FactOf<"sell"> =>
      fact.kind === "sell" && owedByBuyers(piecesOf(books, fact)) > 0 && isLastSale(books, fact),
  );
  const fitting = owing.filter((sale) => said.buyer === undefined || sale.data.buyer === said.buyer);
  const enough = fitting.filter((sale) => owedByBuyers(piecesOf(books, sale)) >= (said.amount ?? 0));
  return (enough.length > 0 ? enough : fitting).reverse();
}

/** A piece that came back and was sold again owes on its last sale. */
function isLastSale(books: Books, sale: FactOf<"sell">): boolean {
  return sale.pieces.every((number) => {
    const piece = books.pieces.get(number)!;
    return piece.owed === 0 || piece.sold === sale.day;
  });
}
