import * as z from "zod";
import { monthOf } from "../calendar.ts";
import { amountOf } from "./facts.ts";
import type { FactRules } from "./rules.ts";

/**
 * Imported history's profit that had already gone to the loan, or its loss, which takes nothing from what is due. It
 * has no note: the import records it.
 */
export const sent: FactRules<"sent"> = {
  mends: [],
  data: z.strictObject({ loss: z.literal(true).optional() }),
  apply(books, fact) {
    const amount = fact.data.loss ? -amountOf(fact) : amountOf(fact);
    books.declaredSent += amount;
    books.month(monthOf(fact.day)).declaredSent += amount;
    return null;
  },
};
