import * as z from "zod";
import type { FactRules } from "../books/rules.ts";
import { decimalShape } from "../books/shapes.ts";
import { dayWords } from "../decide/echo.ts";
import { says } from "../notes/clause.ts";
import { phrases } from "../notes/words/words.ts";
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
        say: phrases(
          "set_aside put_away hold_back save put_aside withhold keep set_…_aside put_…_away put_…_aside setting_aside saving stash tax_rate change_tax_to changed_tax_to reserve",
        ),
        with: ["percent"],
        without: ["number", "piece", "loan"],
      },
      {
        say: phrases("set_aside put_away put_aside tax_rate save set_…_aside hold_back"),
        with: ["tax", "number"],
        without: ["piece", "loan", "percent"],
      },
    ],
    slots: { percent: "percent" },
    bears: ["wish"],
    needs: ["percent"],
    absorbs: phrases(
      "tax taxes for_tax for_taxes tax_rate hold keep save want_to will change changed should set now rate should_be actually",
    ),
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
