import * as z from "zod";
import type { FactRules } from "../books/rules.ts";
import { decimalShape } from "../books/shapes.ts";
import { dayWords } from "../decide/echo.ts";
import { says } from "../notes/clause.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    taxrate: { percent?: string };
  }
}

const rules: FactRules<"taxrate"> = {
  mends: ["date", "percent"],
  data: z.strictObject({ percent: decimalShape }),
  apply(books, fact) {
    books.taxRates.push({ day: fact.day, percent: fact.data.percent });
    return null;
  },
};

export const taxrate = defineVerb({
  kind: "taxrate",
  example: "set aside 20% for tax",
  page: "slips",
  listed: ({ data: { percent } }) => `${percent}% set aside for tax`,
  books: rules,
  reads: {
    says: [
      { with: ["percent", "tax"], without: ["number", "piece", "loan"] },
      {
        say: [
          "set aside",
          "put away",
          "hold back",
          "save",
          "put aside",
          "withhold",
          "keep",
          "set … aside",
          "put … away",
          "put … aside",
          "setting aside",
          "saving",
          "stash",
          "tax rate",
          "change tax to",
          "changed tax to",
          "reserve",
        ],
        with: ["percent"],
        without: ["number", "piece", "loan"],
      },
      {
        say: ["set aside", "put away", "put aside", "tax rate", "save", "set … aside", "hold back"],
        with: ["tax", "number"],
        without: ["piece", "loan", "percent"],
      },
    ],
    slots: { percent: "percent" },
    bears: ["wish"],
    needs: ["percent"],
    absorbs: [
      "tax",
      "taxes",
      "for tax",
      "for taxes",
      "tax rate",
      "hold",
      "keep",
      "save",
      "want to",
      "will",
      "change",
      "changed",
      "should",
      "set",
      "now",
      "rate",
      "should be",
      "actually",
    ],
    judge: (_, clause) =>
      clause.signs.has("number") || says(clause, /^sales(?: tax)?$/) ? { kind: "percentUnsaid" } : null,
  },

  decide(reading, desk) {
    const percent = reading.percent!;
    if (Number(percent) > 100)
      return { kind: "refuse", why: "Not more than 100%. Like: set aside 20% for tax" };
    const day = reading.date ?? desk.today;
    return { kind: "record", facts: [{ kind: "taxrate", day, pieces: [], data: { percent } }] };
  },
  echo({ fact, today }) {
    return [`Setting aside ${fact.data.percent}% for tax${dayWords(fact, today)}`, "An estimate, no advice"];
  },
});
