import * as z from "zod";
import { amountOf } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { dayWords, methodWords } from "../decide/echo.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { says } from "../notes/clause.ts";
import { isPaidForStream } from "../notes/judging/earning.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    income: { amount?: Cents; stream?: string; method?: string };
  }
}

const rules: FactRules<"income"> = {
  mends: ["amount", "date", "method"],
  ownersAlone: true,
  alone: true,
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
  page: "costs",
  listed: ({ data }) => data.stream,
  books: rules,
  goesOn: { pieces: "same", carries: ({ amount, data }) => ({ ...data, amount }) },
  reads: {
    says: [
      { with: ["stream", "number"], without: ["piece", "loan", "supply"] },
      {
        say: phrases("earned got_paid took_in brought_in pulled_in was_paid income"),
        with: ["stream"],
        without: ["loan"],
      },
      { say: ["got", "made", "received", "collected"], with: ["stream"], without: ["loan"], light: true },
      {
        say: phrases(
          "made_…_from earned_…_from income_…_from got_paid_…_for made_…_off earned_…_for paid_me_…_for paid_us_…_for sent_me_…_for sent_us_…_for gave_me_…_for gave_us_…_for",
        ),
        with: ["number"],
        without: ["piece", "supply", "loan"],
        light: true,
      },
      {
        say: ["paid", "paid out"],
        with: ["stream", "number"],
        without: ["piece", "supply", "loan", "person"],
        light: true,
      },
      {
        say: ["paid out", "came in", "payout"],
        with: ["stream"],
        without: ["piece", "supply", "loan"],
        light: true,
      },
      {
        say: phrases("taught teaching led hosted ran held netted cleared grossed"),
        with: ["stream", "number"],
        without: ["piece", "supply", "loan"],
        light: true,
      },
      { say: ["tipped me", "tipped us"], with: ["number"], means: { stream: "tips" } },
      { say: ["tipped"], with: ["number"], means: { stream: "tips" }, light: true },
      {
        say: phrases("income other_income extra_income side_income earned"),
        with: ["number"],
        without: ["piece", "supply", "loan", "percent"],
        light: true,
      },
    ],
    slots: { amount: "money", stream: "stream", method: "method" },
    bears: ["others act", "dated in passing", "things beside", "repeats", "not to a buyer", "not a service"],
    main: "amount",
    needs: ["stream", "amount"],
    absorbs: phrases(
      "got made earned received income paid came_in payout money revenue gave left collected tipped netted cleared grossed taught teaching led hosted ran",
    ),
    judge: (_, clause) =>
      says(clause, /^(?:spent|bought|took|attended)$/) || isPaidForStream(clause)
        ? { kind: "twoKinds" }
        : null,
  },

  offered: ({ amount, stream }) => `Other income ${show(amount ?? 0)}${stream ? ` from ${stream}` : ""}`,

  decide(reading, desk) {
    const { stream, method } = reading;
    const data = { stream: stream!, ...(method ? { method } : {}) };
    const day = reading.date ?? desk.today;
    return { kind: "record", facts: [{ kind: "income", day, pieces: [], amount: reading.amount!, data }] };
  },
  echo({ fact, today }) {
    const amount = `${show(fact.amount ?? 0)}${methodWords(fact.data.method)}`;
    return [`Got ${amount} from ${fact.data.stream}${dayWords(fact, today)}`];
  },
});
