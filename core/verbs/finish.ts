import { z } from "zod";
import { checkNotGone } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"finish"> = {
  data: z.strictObject({}),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    for (const number of fact.pieces) books.piece(number).finished = fact.day;
    return null;
  },
};

export const finish = defineVerb({
  kind: "finish",
  example: "finished dresser",
  help: "a piece that is done",
  books: rules,
  reads: {},
});
