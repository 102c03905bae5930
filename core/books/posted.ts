import type { Cents } from "../money.ts";
import { splitEvenly } from "../split.ts";
import type { Books } from "./books.ts";
import type { Fact } from "./facts.ts";
import type { Account } from "./postings.ts";

/** A fact as it concerns one of its pieces, for the words that tell that piece's story. */
export interface OfPiece<F = Fact> {
  fact: F;
  books: Books;
  number: number;
}

/** As much of a fact as its sums need. */
type Posted = Pick<Fact, "id" | "pieces">;

/** What a fact posted to one account of a piece, in cents: debit positive. */
export function postedTo({ books, fact, number }: OfPiece<Posted>, account: Account): Cents {
  return (books.postings.get(fact.id) ?? [])
    .filter((posting) => posting.piece === number && posting.account === account)
    .reduce((sum, posting) => sum + posting.cents, 0);
}

/** A piece's share of spending in cents, wherever its cost went. */
export function spentOn({ books, fact, number }: OfPiece<Posted>): Cents {
  return (books.postings.get(fact.id) ?? [])
    .filter((posting) => posting.piece === number && posting.account !== "cash")
    .reduce((sum, posting) => sum + posting.cents, 0);
}

/** A piece's even share of whole units, the earlier pieces taking the odd ones. */
export function shareOf({ fact, number }: OfPiece<Posted>, units: number): number {
  return splitEvenly(units, fact.pieces.length)[fact.pieces.indexOf(number)] ?? 0;
}

/** What a fact posted to one account, over all its pieces, in cents: debit positive. */
export function postedBy(books: Pick<Books, "postings">, { id }: Pick<Fact, "id">, account: Account): Cents {
  return (books.postings.get(id) ?? []).reduce(
    (sum, leg) => sum + (leg.account === account ? leg.cents : 0),
    0,
  );
}
