import type { ZodType } from "zod";
import type { FactData, FactKind, FactOf } from "./facts.ts";
import type { BooksInHand } from "./hand.ts";
import type { Problem } from "./problem.ts";

/** What of a fact can be corrected; `amount` is its main one: of a sale the price, of a trade the worth. */
export type MendField =
  | ("amount" | "fee" | "owed" | "agreed" | "paid" | "received")
  | ("date" | "until" | "minutes" | "miles" | "percent" | "method")
  | ("buyer" | "source" | "loan" | "how" | "name" | "traits" | "pieces");

/** What a kind of fact does to the books. Lives in the verb's own file. */
export interface FactRules<K extends FactKind> {
  /**
   * A fact of this kind that names no piece only posts: it leans on no other fact and none leans on it. Every
   * other fact without pieces (loans, goals, the tax percent, …) is folded anew when one of them changes.
   */
  alone?: true;
  /** The shape of the fact's data, checked going into the database and coming out. */
  data: ZodType<FactData[K]>;
  /** What of it can be corrected: its day and its pieces where nothing is said. */
  mends?: readonly MendField[];
  /** It tells of the loan or of other income, which may be the owner's alone to see. */
  ownersAlone?: true;
  /** Checks everything first; changes the books in hand only where nothing is wrong. */
  apply(books: BooksInHand, fact: FactOf<K>): Problem | null;
}
