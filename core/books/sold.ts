import type { Day } from "../calendar.ts";
import { monthOf } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Piece } from "./books.ts";
import { moveCost } from "./cost.ts";
import type { BooksInHand } from "./hand.ts";

/** A piece goes for its share of a price, in cents: its sale, and its cost to what sold pieces cost. */
export function sellOne(books: BooksInHand, piece: Piece, { price, day }: { price: Cents; day: Day }): void {
  books.post("sales", -price, { piece: piece.number });
  moveCost(books, piece, "unsold pieces", "cost of pieces sold");
  piece.sales += price;
  piece.sold = day;
  piece.gone = "sold";
  piece.goneOn = day;
  piece.hold = null;
  books.month(monthOf(day)).flipped += 1;
}
