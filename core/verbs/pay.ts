import { z } from "zod";
import { checkLoan } from "../books/check.ts";
import { amountOf } from "../books/facts.ts";
import { allocatePayment, bringForward, owedOn } from "../books/loan.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"pay"> = {
  data: z.strictObject({ loan: wordsShape.optional() }),
  apply(books, fact) {
    const { day, data } = fact;
    const amount = amountOf(fact);
    if (data.loan !== undefined) {
      const problem = checkLoan(books, data.loan);
      if (problem) return problem;
    }
    if (books.loans.size === 0) return { kind: "no loan" };
    const owed = owedOn(books, day);
    if (amount > owed) return { kind: "more than owed", owed };
    const loans = [...books.loans.values()];
    for (const share of allocatePayment({ loans, amount, day, order: books.order, named: data.loan })) {
      const loan = books.loan(share.loan);
      bringForward(loan, day);
      loan.accrued -= share.interest;
      loan.principal -= share.principal;
      loan.interestPaid += share.interest;
      loan.paid += share.interest + share.principal;
      books.post("loan interest", share.interest, { detail: share.loan });
      books.post("loan", share.principal, { detail: share.loan });
    }
    books.post("cash", -amount);
    return null;
  },
};

export const pay = defineVerb({
  kind: "pay",
  example: "paid loan 500",
  help: "a payment to the loan",
  books: rules,
  reads: {},
});
