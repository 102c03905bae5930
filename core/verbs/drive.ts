import { z } from "zod";
import { checkPieces } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { decimalShape } from "../books/shapes.ts";
import { shareOfMiles } from "../books/shares.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"drive"> = {
  data: z.strictObject({ miles: decimalShape }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces);
    if (problem) return problem;
    for (const number of fact.pieces) {
      books.addMiles(number, shareOfMiles(fact.data.miles, fact.pieces.length));
    }
    return null;
  },
};

export const drive = defineVerb({
  kind: "drive",
  example: "drove 24 miles",
  help: "miles driven for the trade",
  books: rules,
  reads: {},
});
