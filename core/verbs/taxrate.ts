import { z } from "zod";
import type { FactRules } from "../books/rules.ts";
import { decimalShape } from "../books/shapes.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"taxrate"> = {
  data: z.strictObject({ percent: decimalShape }),
  apply(books, fact) {
    books.taxRates.push({ day: fact.day, percent: fact.data.percent });
    return null;
  },
};

export const taxrate = defineVerb({
  kind: "taxrate",
  example: "set aside 20% for tax",
  help: "what part of the profit to keep for tax",
  books: rules,
  reads: {},

  decide(reading, desk) {
    const percent = reading.percent!;
    if (Number(percent) > 100)
      return { kind: "refuse", why: "Not more than 100%. Like: set aside 20% for tax" };
    const day = reading.date ?? desk.today;
    return { kind: "record", facts: [{ kind: "taxrate", day, pieces: [], data: { percent } }] };
  },
  echo({ fact }) {
    return [`Setting aside ${fact.data.percent}% for tax, an estimate and no advice`];
  },
});
