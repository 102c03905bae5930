import { z } from "zod";
import { checkLoan } from "../books/check.ts";
import { amountOf } from "../books/facts.ts";
import { accruedOn, bringForward } from "../books/loan.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"statement"> = {
  data: z.strictObject({ loan: wordsShape }),
  apply(books, fact) {
    const name = fact.data.loan;
    const problem = checkLoan(books, name);
    if (problem) return problem;
    const interest = accruedOn(books.loans.get(name)!, fact.day);
    const balance = amountOf(fact);
    if (balance < interest) return { kind: "below interest due", interest };
    const loan = books.loan(name);
    bringForward(loan, fact.day);
    // The statement is the truth: principal moves so that with the interest due it makes the balance.
    const difference = balance - interest - loan.principal;
    loan.principal += difference;
    books.post("loan", -difference, { detail: name });
    books.post("opening balances", difference, { detail: name });
    return null;
  },
};

export const statement = defineVerb({
  kind: "statement",
  example: "loan balance 9871.14",
  help: "what the lender says is owed",
  books: rules,
  reads: {},
});
