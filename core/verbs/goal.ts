import { z } from "zod";
import { amountOf } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"goal"> = {
  data: z.strictObject({ per: z.enum(["month", "year"]), pieces: z.int().nonnegative().optional() }),
  apply(books, fact) {
    books.goals.push({
      day: fact.day,
      per: fact.data.per,
      pieces: fact.data.pieces ?? null,
      amount: fact.amount === undefined ? null : amountOf(fact),
    });
    return null;
  },
};

export const goal = defineVerb({
  kind: "goal",
  example: "goal 100 pieces this year",
  help: "what you aim for in a month or a year",
  books: rules,
  reads: {},
});
