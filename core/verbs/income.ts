import { z } from "zod";
import { amountOf } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, methodWords } from "../decide/echo.ts";
import { show } from "../money.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"income"> = {
  data: z.strictObject({ stream: wordsShape, method: wordsShape.optional() }),
  apply(books, fact) {
    const amount = amountOf(fact);
    books.post("cash", amount);
    books.post("other income", -amount, { detail: fact.data.stream });
    return null;
  },
};

export const income = defineVerb({
  kind: "income",
  example: "tips 35",
  help: "other money that came in",
  books: rules,
  reads: {},

  decide(reading, desk) {
    const { stream, method } = reading;
    const data = { stream: stream!, ...(method ? { method } : {}) };
    const day = reading.date ?? desk.today;
    return { kind: "record", facts: [{ kind: "income", day, pieces: [], amount: reading.amount!, data }] };
  },
  echo({ fact, today }) {
    const amount = `${show(fact.amount ?? 0)}${methodWords(fact.data.method)}`;
    return [`Other income: ${amount} from ${fact.data.stream}${dayWords(fact, today)}`];
  },
});
