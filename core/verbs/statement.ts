import * as z from "zod";
import { checkLoan } from "../books/check.ts";
import { amountOf } from "../books/facts.ts";
import { accruedOn, balanceOn, bringForward } from "../books/loan.ts";
import { loanWords } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { type Ask, confirmation, NEVER_MIND } from "../decide/decision.ts";
import { dayWords } from "../decide/echo.ts";
import { settleLoan } from "../decide/names/loans.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { isAfterPayment } from "../notes/heads.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { PAYS_BALANCE } from "../notes/words/verbs.ts";
import { phrases } from "../notes/words/words.ts";
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
        say: phrases(
          "loan_balance balance statement statement_says loan_statement statement_balance new_balance new_loan_balance balance_is current_balance lender_says servicer_says bank_says bank_says_i_owe site_says_i_owe app_says_i_owe website_says_i_owe lender_says_i_owe portal_says_i_owe loan_says loan_website_says loan_site_says loan_app_says loan_bill loan_bill_says statements_in statement_is_in statement_came balance_is_now balance_now balance_says remaining_balance payoff loan_balance_should_be loan_balance_should_read loan_balance_ought_to_be balance_ought_to_be loan_should_be_at loan_should_be loan_is_at loan_is_now_at loan_is_down_to loan_down_to loan_sits_at loan_stands_at balance_is_at",
        ),
        with: ["number"],
        without: ["piece", "percent"],
      },
      {
        say: phrases("owe still_owe owed i_owe left sits_at stands_at is_sitting_at down_to"),
        with: ["loan", "number"],
        without: ["piece", "percent"],
      },
      {
        say: phrases(
          "is_what_i_owe is_what_i_still_owe is_what_we_owe remaining remaining_on remains still_left_on outstanding outstanding_on",
        ),
        with: ["loan", "number"],
        without: ["piece", "percent"],
        light: true,
      },
    ],
    slots: { loan: "loan", balance: "money" },
    bears: ["others act", "of loans"],
    main: "balance",
    needs: ["balance"],
    absorbs: phrases(
      "now is_now says balance statement loan owe loan_balance lender still shows reads statement_says lender_says bank_says came came_in arrived in_the_mail bill checked",
    ),
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
