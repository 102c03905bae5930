import { z } from "zod";
import { amountOf } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { decimalShape, wordsShape } from "../books/shapes.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"loan"> = {
  data: z.strictObject({ loan: wordsShape, rate: decimalShape, rateUnknown: z.literal(true).optional() }),
  apply(books, fact) {
    const { loan: name, rate, rateUnknown } = fact.data;
    if (books.loans.has(name)) return { kind: "loan name taken", name };
    const balance = amountOf(fact);
    const days = "365";
    books.addLoan({
      name,
      opened: fact.day,
      rate,
      rateUnknown: rateUnknown === true,
      days,
      principal: balance,
      accrued: 0,
      since: fact.day,
      stretches: [{ from: fact.day, rate, days }],
      paid: 0,
      interestPaid: 0,
    });
    books.post("loan", -balance, { detail: name });
    books.post("opening balances", balance, { detail: name });
    return null;
  },
};

export const loan = defineVerb({
  kind: "loan",
  example: "loan 14250 at 5.5%",
  help: "a loan, what is owed and its rate",
  books: rules,
  reads: {},
});
