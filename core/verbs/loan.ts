import * as z from "zod";
import { amountOf } from "../books/facts.ts";
import { loanWords } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { decimalShape, wordsShape } from "../books/shapes.ts";
import { type Ask, type Desk, NEVER_MIND } from "../decide/decision.ts";
import { dayWords } from "../decide/echo.ts";
import { UNNAMED_LOAN } from "../decide/names/loans.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    loan: { balance?: Cents; rate?: string; loan?: string };
  }
}

const rules: FactRules<"loan"> = {
  mends: ["amount", "date", "percent"],
  ownersAlone: true,
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
  page: "costs",
  listed: ({ data }) => `new ${loanWords(data.loan)}`,
  books: rules,
  reads: {
    says: [
      {
        say: phrases(
          "new_loan add_loan added_loan opened_loan took_out_loan took_out_a_loan opened_a_loan got_a_loan started_a_loan add_a_loan loan_called set_up_loan another_loan took_out_new_loan took_out_a_new_loan got_new_loan got_a_new_loan opened_new_loan opened_a_new_loan started_a_new_loan added_a_loan added_new_loan added_a_new_loan took_out opened",
        ),
        with: ["loan"],
        without: ["piece"],
      },
      { say: ["new", "add"], with: ["loan"], without: ["piece"], light: true },
      {
        say: phrases("owe i_owe still_owe i_still_owe owed owing outstanding"),
        with: ["loan", "number", "percent"],
        without: ["piece"],
      },
      {
        say: phrases("loan_balance balance rate loan_rate interest_rate apr"),
        with: ["loan", "number", "percent"],
        without: ["piece"],
      },
      { with: ["loan", "number", "percent"], without: ["piece"] },
    ],
    slots: { rate: "percent", loan: "loan", balance: "money" },
    bears: ["of loans"],
    main: "balance",
    needs: ["balance"],
    absorbs: phrases(
      "rate at interest balance owe owed owing outstanding interest_rate loan_rate loan_balance apr called named",
    ),
  },

  offered({ balance, rate, loan }) {
    return `New loan${loan ? ` ${loan}` : ""} ${show(balance ?? 0)}${rate ? ` at ${rate}%` : ""}`;
  },

  decide(reading, desk) {
    const name = reading.loan ?? UNNAMED_LOAN;
    if (desk.books.loans.has(name)) return { kind: "ask", ask: nameTaken(reading, name) };
    const day = reading.date ?? desk.today;
    const known = reading.rate !== undefined;
    const data = { loan: name, rate: reading.rate ?? "0", ...(known ? {} : { rateUnknown: true as const }) };
    const facts = [{ kind: "loan" as const, day, pieces: [], amount: reading.balance!, data }];
    return known
      ? { kind: "record", facts }
      : { kind: "record", facts, ask: rateQuestion(reading, name, desk) };
  },
  echo({ fact, today }) {
    const name = fact.data.loan === UNNAMED_LOAN ? "Loan" : `Loan "${fact.data.loan}"`;
    const rate = fact.data.rateUnknown ? "at 0% until you tell me its rate" : `at ${fact.data.rate}%`;
    return [`${name}: ${show(fact.amount ?? 0)} ${rate}${dayWords(fact, today)}`];
  },
});

/** The rate holds from the loan's own first day, whenever it is answered. */
function rateQuestion(
  reading: ReadingOf<"loan">,
  loan: string,
  desk: Desk,
): { reading: ReadingOf<"terms">; ask: Ask } {
  const { text, line } = reading;
  const terms = { kind: "terms" as const, loan, date: reading.date ?? desk.today, text, line };
  const zero: Ask["choices"][number] = {
    label: "0%, no interest",
    words: ["0", "none", "zero", "no interest"],
    effect: { kind: "settle", change: { rate: "0" } },
  };
  return {
    reading: terms,
    ask: { prompt: "What is its yearly rate, in percent?", wants: "rate", choices: [zero, NEVER_MIND] },
  };
}

function nameTaken(reading: ReadingOf<"loan">, name: string): Ask {
  const { balance, date, text, line } = reading;
  const said = date ? { date } : {};
  const statement = { kind: "statement" as const, balance: balance!, loan: name, ...said, text, line };
  return {
    prompt: `A loan "${name}" is on the books. A statement of it, or another loan? For another, say its name.`,
    wants: "loan",
    choices: [
      { label: `Statement: ${show(balance!)} owed`, effect: { kind: "instead", readings: [statement] } },
      NEVER_MIND,
    ],
  };
}
