import { z } from "zod";
import type { Books } from "../books/books.ts";
import { checkNotGone } from "../books/check.ts";
import { costAccountOf, moveCost } from "../books/cost.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { defineVerb } from "./verb.ts";

/** The buyer is settled first: no piece goes while a deposit is held on it. */
function checkNoDeposit(books: Books, numbers: readonly number[]): Problem | null {
  for (const number of numbers) {
    const { deposit } = books.pieces.get(number)!;
    if (deposit > 0) return { kind: "deposit held", number, held: deposit };
  }
  return null;
}

const rules: FactRules<"retire"> = {
  data: z.strictObject({ how: z.enum(["kept", "given", "scrapped"]) }),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces) ?? checkNoDeposit(books, fact.pieces);
    if (problem) return problem;
    for (const number of fact.pieces) {
      const piece = books.piece(number);
      piece.hold = null;
      piece.gone = fact.data.how;
      piece.goneOn = fact.day;
      moveCost(books, piece, "unsold pieces", costAccountOf(piece));
    }
    return null;
  },
};

export const retire = defineVerb({
  kind: "retire",
  example: "donated the chair",
  help: "a piece kept, given away or scrapped",
  books: rules,
  reads: {},
});
