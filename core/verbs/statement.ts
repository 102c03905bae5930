import * as z from "zod";
import { checkLoan } from "../books/check.ts";
import { amountOf } from "../books/facts.ts";
import { accruedOn, balanceOn, bringForward } from "../books/loan.ts";
import { loanWords } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { type Ask, confirmation, NEVER_MIND } from "../decide/decision.ts";
import { dayWords } from "../decide/echo.ts";
import { settleLoan } from "../decide/loans.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { isAfterPayment } from "../notes/heads.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { PAYS_BALANCE } from "../notes/words/verbs.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    statement: { balance?: Cents; loan?: string };
  }
}

const rules: FactRules<"statement"> = {
  mends: ["amount", "date"],
  ownersAlone: true,
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
  page: "costs",
  listed: ({ data }) => `statement of the ${loanWords(data.loan)}`,
  books: rules,
  reads: {
    says: [
      {
        say: [
          "loan balance",
          "balance",
          "statement",
          "statement says",
          "loan statement",
          "statement balance",
          "new balance",
          "balance is",
          "current balance",
          "lender says",
          "servicer says",
          "bank says",
          "bank says i owe",
          ...[
            "site says i owe",
            "app says i owe",
            "website says i owe",
            "lender says i owe",
            "portal says i owe",
          ],
          "loan says",
          "loan website says",
          "loan site says",
          "loan app says",
          "loan bill",
          "loan bill says",
          "statements in",
          "statement is in",
          "statement came",
          "balance is now",
          "balance now",
          "balance says",
          "remaining balance",
          "payoff",
          "loan balance should be",
          "loan balance should read",
          "loan balance ought to be",
          "balance ought to be",
          "loan should be at",
          "loan should be",
          "loan is at",
          "loan is now at",
          "loan sits at",
          "loan stands at",
          "balance is at",
        ],
        with: ["number"],
        without: ["piece", "percent"],
      },
      {
        say: [
          "owe",
          "still owe",
          "owed",
          "i owe",
          "left",
          "sits at",
          "stands at",
          "is sitting at",
          "down to",
        ],
        with: ["loan", "number"],
        without: ["piece", "percent"],
      },
      {
        say: [
          "is what i owe",
          "is what i still owe",
          "is what we owe",
          "remaining",
          "remaining on",
          "remains",
          "still left on",
          "outstanding",
          "outstanding on",
        ],
        with: ["loan", "number"],
        without: ["piece", "percent"],
        light: true,
      },
    ],
    slots: { loan: "loan", balance: "money" },
    bears: ["others act", "of loans"],
    main: "balance",
    needs: ["balance"],
    absorbs: [
      "now",
      "is now",
      "says",
      "balance",
      "statement",
      "loan",
      "owe",
      "loan balance",
      "lender",
      "still",
      "shows",
      "reads",
      "statement says",
      "lender says",
      "bank says",
      "came",
      "came in",
      "arrived",
      "in the mail",
      "bill",
      "checked",
    ],
    judge: (_, clause) =>
      clause.tokens.some(({ text }, at) => PAYS_BALANCE.has(text) && !isAfterPayment(clause.tokens, at))
        ? { kind: "loanAlone" }
        : null,
  },

  offered: ({ balance, loan }) =>
    `${loan && loan !== "loan" ? `${loan} loan` : "Loan"} balance ${show(balance ?? 0)}`,

  decide(reading, desk) {
    if (desk.books.loans.size === 0) return { kind: "ask", ask: newLoan(reading) };
    const settled = settleLoan(reading.loan, desk);
    if (settled.kind !== "settled") return settled;
    const day = reading.date ?? desk.today;
    const interest = accruedOn(desk.books.loans.get(settled.loan)!, day);
    const balance = reading.balance!;
    if (balance < interest) {
      const prompt = `Interest of ${show(interest)} is due already, more than ${show(balance)}. What is the whole balance?`;
      return { kind: "ask", ask: { prompt, wants: "balance", choices: [NEVER_MIND] } };
    }
    const known = balanceOn(desk.books.loans.get(settled.loan)!, day);
    if (isFarOff(balance, known) && !desk.confirmed.includes("far off")) {
      const prompt = `The books have ${show(known)} left on the ${loanWords(settled.loan)}. Is it really ${show(balance)}?`;
      const yes = { label: `Yes, ${show(balance)} is left`, confirm: "far off" };
      return { kind: "ask", ask: { ...confirmation(prompt, yes), wants: "balance" } };
    }
    const data = { loan: settled.loan };
    return { kind: "record", facts: [{ kind: "statement", day, pieces: [], amount: balance, data }] };
  },
  echo({ fact, books, today }) {
    const loan = books.loans.get(fact.data.loan)!;
    const moved = (books.postings.get(fact.id) ?? []).find((leg) => leg.account === "loan");
    // Principal owed is a credit: a positive leg lowers it.
    const difference = -(moved?.cents ?? 0);
    const how =
      difference === 0
        ? "just as the books had it"
        : `${show(Math.abs(difference))} ${difference > 0 ? "more" : "less"} than the books had`;
    const name = loan.name === "loan" ? "Loan" : `Loan "${loan.name}"`;
    const now = fact.day === today ? [] : [`Balance today ${show(balanceOn(loan, today))}`];
    return [`${name} balance ${show(fact.amount ?? 0)}${dayWords(fact, today)}: ${how}`, ...now];
  },
});

/** A statement moves a loan by little: less than half, or more than twice, is rather another number ("balance 75" of a sale). */
const isFarOff = (balance: Cents, known: Cents): boolean =>
  known > 0 && (balance < known / 2 || balance > known * 2);

function newLoan(reading: ReadingOf<"statement">): Ask {
  const { balance, loan, date, text, line } = reading;
  const said = { ...(loan ? { loan } : {}), ...(date ? { date } : {}) };
  const opening = { kind: "loan" as const, balance: balance!, ...said, text, line };
  return {
    prompt: `No loan on the books. Start one at ${show(balance!)}?`,
    wants: "choice",
    choices: [
      { label: "Yes, a new loan", words: ["yes"], effect: { kind: "instead", readings: [opening] } },
      { ...NEVER_MIND, words: ["no"] },
    ],
  };
}
