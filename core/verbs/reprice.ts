import { z } from "zod";
import type { Books } from "../books/books.ts";
import { checkNotGone } from "../books/check.ts";
import { amountOf, type FactOf } from "../books/facts.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

/** That every piece is listed, and at no less than its share of a cut. */
function checkPrices(books: Books, fact: FactOf<"reprice">, shares: readonly number[]): Problem | null {
  for (const [index, number] of fact.pieces.entries()) {
    const { listPrice } = books.pieces.get(number)!;
    if (listPrice === null) return { kind: "piece not listed", number };
    if (fact.data.by && shares[index]! > listPrice) return { kind: "cut below zero", number, listPrice };
  }
  return null;
}

const rules: FactRules<"reprice"> = {
  data: z.strictObject({ by: z.literal(true).optional() }),
  apply(books, fact) {
    const shares = splitEvenly(amountOf(fact), fact.pieces.length);
    const problem = checkNotGone(books, fact.pieces) ?? checkPrices(books, fact, shares);
    if (problem) return problem;
    fact.pieces.forEach((number, index) => {
      const piece = books.piece(number);
      piece.listPrice = fact.data.by ? piece.listPrice! - shares[index]! : shares[index]!;
    });
    return null;
  },
};

export const reprice = defineVerb({
  kind: "reprice",
  example: "dropped dresser to 160",
  help: "a new asking price",
  books: rules,
  reads: {},
});
