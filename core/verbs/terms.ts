import * as z from "zod";
import { checkLoan } from "../books/check.ts";
import { changeTerms } from "../books/loan.ts";
import { loanWords } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { daysInYearShape, decimalShape, wordsShape } from "../books/shapes.ts";
import { dayWords } from "../decide/echo.ts";
import { settleLoan } from "../decide/loans.ts";
import { judgeTerms } from "../notes/judging/loanterms.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    terms: { rate?: string; days?: DaysInYear; order?: PaymentOrder; loan?: string };
  }
}

const rules: FactRules<"terms"> = {
  mends: ["date", "percent"],
  ownersAlone: true,
  data: z
    .strictObject({
      loan: wordsShape.optional(),
      rate: decimalShape.optional(),
      days: daysInYearShape.optional(),
      order: z.enum(["highest", "prorata"]).optional(),
    })
    .refine(({ loan, rate, days }) => loan !== undefined || (!rate && !days), "terms of no loan"),
  apply(books, fact) {
    const { loan: name, rate, days, order } = fact.data;
    if (name === undefined && (rate !== undefined || days !== undefined)) {
      throw new Error(`fact ${fact.id} changes the terms of no loan`);
    }
    const problem = name === undefined ? null : checkLoan(books, name);
    if (problem) return problem;
    if (name !== undefined) changeTerms(books.loan(name), fact.day, { rate, days });
    if (order !== undefined) books.order = order;
    return null;
  },
};

/** What a rate does on its way to another. */
const RATE_MOVES = [
  ...["is", "is now", "now", "now at", "is at", "to", "went to", "went up to", "went down to", "goes to"],
  ...["changed to", "dropped to", "fell to", "rose to", "jumped to", "climbed to", "reset to", "adjusted to"],
  ...["dropped", "changed", "went up", "went down", "lowered to", "bumped to", "moved to"],
];

/** "loan rate is now", "interest went up to" */
const RATES_NOW = ["rate", "loan rate", "interest", "interest rate"].flatMap((rate) =>
  RATE_MOVES.map((move) => `${rate} ${move}`),
);

export const terms = defineVerb({
  kind: "terms",
  example: "loan rate 6.8%",
  page: "costs",
  listed: ({ data: { loan, rate } }) =>
    rate === undefined ? "how the loan counts" : `${loanWords(loan ?? "loan")} at ${rate}%`,
  books: rules,
  reads: {
    says: [
      {
        say: [
          "loan rate",
          "rate",
          "interest rate",
          "loan interest",
          "apr",
          "new rate",
          ...RATES_NOW,
          "rate on",
          "changed rate",
        ],
        with: ["percent"],
        without: ["number", "tax", "piece"],
      },
      { with: ["loan", "percent"], without: ["number", "tax", "piece"] },
      { with: ["loan", "yearDays"], without: ["percent"] },
      {
        say: ["actual days", "actual year", "actual day count", "actual", "actual days in year"],
        with: ["loan"],
      },
      {
        say: [
          "split",
          "split payments",
          "split extra payments",
          "split extra",
          "split payment",
          "split loan payments",
          "split the payments",
          "split … payments",
          "split … loans",
          "spread … loans",
          "prorata",
          "pro rata",
          "spread payments",
          "spread the payments",
          "pay all loans",
        ],
        with: ["loan"],
        without: ["number", "piece"],
        means: { order: "prorata" },
      },
      {
        say: ["split payments", "split extra payments", "prorata", "pro rata", "spread payments"],
        means: { order: "prorata" },
      },
      {
        say: [
          "highest rate first",
          ...["payments", "extra", "extra payments", "payments go"].flatMap((paid) => [
            `${paid} to highest rate first`,
            `${paid} to the highest rate first`,
            `${paid} to the highest rate loan first`,
          ]),
          "highest rate loan first",
          "highest first",
          "highest interest first",
          "highest rate",
          "highest interest loan first",
          "highest interest",
          "avalanche",
        ],
        means: { order: "highest" },
      },
    ],
    slots: { rate: "percent", loan: "loan" },
    bears: ["wish", "of loans"],
    absorbs: [
      ...["use", "uses", "using", "switch", "switched", "change", "set", "to"],
      "pay",
      "payments",
      "payment",
      "rate",
      "loan rate",
      "now",
      "changed",
      "split",
      "loan",
      "loans",
      "over",
      "all",
      "across",
      "is now",
      "starting",
      "effective",
      "interest",
      "interest rate",
      ...RATE_MOVES,
      "first",
      "loan first",
      "the loan",
      "extra",
      "each",
      "evenly",
    ],
    judge: judgeTerms,
  },

  decide(reading, desk) {
    const day = reading.date ?? desk.today;
    const { rate, days, order } = reading;
    const said = { ...(rate ? { rate } : {}), ...(days ? { days } : {}), ...(order ? { order } : {}) };
    if (!rate && !days) return { kind: "record", facts: [{ kind: "terms", day, pieces: [], data: said }] };
    const settled = settleLoan(reading.loan, desk);
    if (settled.kind !== "settled") return settled;
    return {
      kind: "record",
      facts: [{ kind: "terms", day, pieces: [], data: { loan: settled.loan, ...said } }],
    };
  },
  echo({ fact, today }) {
    const { loan, rate, days, order } = fact.data;
    const said = [
      ...(rate ? [`${rate}% a year`] : []),
      ...(days ? [days === "actual" ? "the year's own days" : `${days} days in a year`] : []),
      ...(order ? [order === "highest" ? "highest rate first" : "payments shared over all loans"] : []),
    ].join(", ");
    const whose = loan ? (loan === "loan" ? "Loan" : `Loan "${loan}"`) : "Loans";
    return [`${whose}: ${said}${dayWords(fact, today)}`];
  },
});
