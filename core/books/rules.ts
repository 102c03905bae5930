import type { ZodType } from "zod";
import type { FactData, FactKind, FactOf } from "./facts.ts";
import type { BooksInHand } from "./hand.ts";
import type { Problem } from "./problem.ts";

/** What a kind of fact does to the books. Lives in the verb's own file. */
export interface FactRules<K extends FactKind> {
  /**
   * A fact of this kind that names no piece only posts: it leans on no other fact and none leans on it. Every
   * other fact without pieces (loans, goals, the tax percent, …) is folded anew when one of them changes.
   */
  alone?: true;
  /** The shape of the fact's data, checked going into the database and coming out. */
  data: ZodType<FactData[K]>;
  /** Checks everything first; changes the books in hand only where nothing is wrong. */
  apply(books: BooksInHand, fact: FactOf<K>): Problem | null;
}
