import { z } from "zod";
import { checkNotGone } from "../books/check.ts";
import { amountOf } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"list"> = {
  data: z.strictObject({ place: wordsShape.optional() }),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    const prices = splitEvenly(amountOf(fact), fact.pieces.length);
    fact.pieces.forEach((number, index) => {
      const piece = books.piece(number);
      piece.listed = fact.day;
      piece.listPrice = prices[index]!;
      piece.firstListed ??= fact.day;
      piece.firstListPrice ??= prices[index]!;
    });
    return null;
  },
};

export const list = defineVerb({
  kind: "list",
  example: "listed dresser 190",
  help: "a piece you offered for sale, and at what price",
  books: rules,
  reads: {},
});
