import { z } from "zod";
import { checkNotGone } from "../books/check.ts";
import type { FactRules } from "../books/rules.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"start"> = {
  data: z.strictObject({}),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    for (const number of fact.pieces) books.piece(number).started ??= fact.day;
    return null;
  },
};

export const start = defineVerb({
  kind: "start",
  example: "started the desk",
  help: "a piece you began work on",
  books: rules,
  reads: {},
});
