import { z } from "zod";
import { amountOf } from "./facts.ts";
import type { FactRules } from "./rules.ts";

/** Imported history's profit that had already gone to the loan. It has no note: the import records it. */
export const sent: FactRules<"sent"> = {
  data: z.strictObject({}),
  apply(books, fact) {
    books.declaredSent += amountOf(fact);
    return null;
  },
};
