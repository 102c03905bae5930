import { z } from "zod";
import { checkPieces } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"work"> = {
  data: z.strictObject({ minutes: z.int().nonnegative(), what: wordsShape.optional() }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces);
    if (problem) return problem;
    if (fact.pieces.length === 0) return null;
    const shares = splitEvenly(fact.data.minutes, fact.pieces.length);
    fact.pieces.forEach((number, index) => {
      books.piece(number).minutes += shares[index]!;
    });
    return null;
  },
};

export const work = defineVerb({
  kind: "work",
  example: "2.5h sanding dresser",
  help: "hours you put in",
  books: rules,
  reads: {},
});
