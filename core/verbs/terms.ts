import * as z from "zod";
import { checkLoan } from "../books/check.ts";
import { changeTerms } from "../books/loan.ts";
import { loanWords } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { daysInYearShape, decimalShape, wordsShape } from "../books/shapes.ts";
import { dayWords } from "../decide/echo.ts";
import { settleLoan } from "../decide/names/loans.ts";
import { judgeTerms } from "../notes/judging/loanterms.ts";
import { phrases } from "../notes/words/words.ts";
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
const RATE_MOVES = phrases(
  "is is_now now now_at is_at to went_to went_up_to went_down_to goes_to changed_to dropped_to fell_to rose_to jumped_to climbed_to reset_to adjusted_to dropped changed went_up went_down lowered_to bumped_to moved_to",
);

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
          ...phrases("loan_rate rate interest_rate loan_interest apr new_rate"),
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
        say: phrases("actual_days actual_year actual_day_count actual actual_days_in_year"),
        with: ["loan"],
      },
      {
        say: phrases(
          "split split_payments split_extra_payments split_extra split_payment split_loan_payments split_the_payments split_…_payments split_…_loans spread_…_loans prorata pro_rata spread_payments spread_the_payments pay_all_loans",
        ),
        with: ["loan"],
        without: ["number", "piece"],
        means: { order: "prorata" },
      },
      {
        say: phrases("split_payments split_extra_payments prorata pro_rata spread_payments"),
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
          ...phrases(
            "highest_rate_loan_first highest_first highest_interest_first highest_rate highest_interest_loan_first highest_interest avalanche",
          ),
        ],
        means: { order: "highest" },
      },
    ],
    slots: { rate: "percent", loan: "loan" },
    bears: ["wish", "of loans"],
    absorbs: [
      ...phrases(
        "use uses using switch switched change set to pay payments payment rate loan_rate now changed split loan loans over all across is_now starting effective interest interest_rate",
      ),
      ...RATE_MOVES,
      ...phrases("first loan_first the_loan extra each evenly"),
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
