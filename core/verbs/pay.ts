import * as z from "zod";
import { checkLoan } from "../books/check.ts";
import { amountOf, factsOfDay } from "../books/facts.ts";
import { allocatePayment, bringForward, owedOn } from "../books/loan.ts";
import { loanWords } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import { type Day, showDay } from "../calendar.ts";
import { type Ask, type Desk, NEVER_MIND } from "../decide/decision.ts";
import { dayWords } from "../decide/echo.ts";
import { settleLoan } from "../decide/names/loans.ts";
import { type Cents, show } from "../money.ts";
import { says } from "../notes/clause.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { ONE_MORE, PROCEEDS } from "../notes/words/money.ts";
import { phrases, saysAny } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    pay: { amount?: Cents; loan?: string };
  }
}

const rules: FactRules<"pay"> = {
  mends: ["amount", "date", "loan"],
  ownersAlone: true,
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
  page: "costs",
  listed: ({ data }) => `paid to the ${loanWords(data.loan ?? "loan")}`,
  books: rules,
  goesOn: { pieces: "same", carries: ({ amount, data: { loan } }) => ({ amount, loan }) },
  reads: {
    says: [
      {
        say: phrases(
          "paid pay payed pd sent send paying put threw threw_…_at chipped_…_off knocked_…_off shaved_…_off threw_another transferred paid_off paid_down made_…_payment made_a_payment payment payments paid_extra extra paid_on paid_toward kicked chucked tossed shoved plunked_down kicked_in dropped_…_on dropped_…_at mailed wired squeezed_out eked_out snuck sneaked yeeted plowed ploughed funneled funnelled dumped thrown flung lobbed poured_in pitched_in fired_off contributed applied shelled_out forked_over forked_out coughed_up wrote_a_check wrote_…_check cut_a_check scraped_together autopay auto_pay autopaid auto_payment automatic_payment autopay_took auto_pay_took autopay_hit",
        ),
        with: ["loan"],
        without: ["piece", "percent"],
      },
      {
        say: ["went to", "goes to", "went toward", "gets"],
        with: ["loan", "number"],
        without: ["piece", "percent"],
        light: true,
      },
      { with: ["loan", "number", "loanward"], without: ["piece", "percent"] },
      {
        say: phrases(
          "went_to goes_to went_toward went_straight_to goes_straight_to straight_to throw toss chuck",
        ),
        with: ["loan"],
        without: ["piece", "percent", "number"],
        light: true,
      },
      { with: ["loan", "loanward", "proceeds"], without: ["piece", "percent", "number"] },
    ],
    slots: { amount: "money", loan: "loan" },
    bears: ["everyday words", "repeats", "of loans", "not to a buyer"],
    main: "amount",
    needs: ["amount"],
    absorbs: [
      ...phrases(
        "paid payment payments sent put made to toward towards extra pay threw sale straight on_the_loan to_the_loan principal min minimum autopay monthly money something",
      ),
      ...PROCEEDS,
    ],
    judge: (_, clause) =>
      says(clause, /^(?:balance|statement|owe|owed|rate)$/) ? { kind: "loanAlone" } : null,
  },

  offered: ({ amount, loan }) =>
    `Paid ${loan && loan !== "loan" ? `${loan} loan` : "loan"}${amount === undefined ? "" : ` ${show(amount)}`}`,

  decide(reading, desk) {
    if (desk.books.loans.size === 0) return { kind: "ask", ask: loanFirst(reading, desk) };
    const named = reading.loan === undefined ? null : settleLoan(reading.loan, desk);
    if (named && named.kind !== "settled") return named;
    const day = reading.date ?? desk.today;
    const owed = owedOn(desk.books, day);
    if (reading.amount! > owed) return { kind: "ask", ask: moreThanOwed(owed) };
    const data = named ? { loan: named.loan } : {};
    if (isNotedAlready(reading, data, desk)) return { kind: "ask", ask: sameOrAnother(reading, day, desk) };
    return { kind: "record", facts: [{ kind: "pay", day, pieces: [], amount: reading.amount!, data }] };
  },
  echo({ fact, books, today }) {
    const legs = books.postings.get(fact.id) ?? [];
    const interest = legs.reduce((sum, leg) => sum + (leg.account === "loan interest" ? leg.cents : 0), 0);
    const principal = (fact.amount ?? 0) - interest;
    const loans = [...new Set(legs.flatMap((leg) => (leg.detail ? [leg.detail] : [])))];
    const to =
      loans.length === 1 && loans[0] !== "loan" ? `${loans[0]} loan` : loans.length > 1 ? "loans" : "loan";
    const first = `Paid ${to} ${show(fact.amount ?? 0)}${dayWords(fact, today)}`;
    return [first, `Interest ${show(interest)}, principal ${show(principal)}`];
  },
});

/** A payment to a loan that is not on the books: the loan comes first, at what was owed before it. */
function loanFirst(reading: ReadingOf<"pay">, desk: Desk): Ask {
  const day = reading.date ?? desk.today;
  const { text, line } = reading;
  const named = reading.loan ? { loan: reading.loan } : {};
  const loan = { kind: "loan" as const, ...named, date: day, missing: ["balance" as const], text, line };
  return {
    prompt: `No loan on the books yet. What was owed before this ${show(reading.amount!)}?`,
    wants: "balance",
    choices: [NEVER_MIND],
    first: [loan, { ...reading, date: day }],
  };
}

/** Just as much was noted as paid to the loan that day already, by whomever, and nobody says that this is more. */
function isNotedAlready(reading: ReadingOf<"pay">, data: { loan?: string }, desk: Desk): boolean {
  const day = reading.date ?? desk.today;
  if (desk.confirmed.includes(TWICE) || saysAny(reading.text, ONE_MORE)) return false;
  return factsOfDay(desk.books.facts, day).some(
    (fact) =>
      fact.kind === "pay" &&
      fact.amount === reading.amount &&
      (data.loan === undefined || fact.data.loan === undefined || fact.data.loan === data.loan),
  );
}

const TWICE = "paid twice";

function sameOrAnother({ amount }: ReadingOf<"pay">, day: Day, { today }: Desk): Ask {
  const when = day === today ? "today" : `for ${showDay(day, today)}`;
  return {
    prompt: `${show(amount!)} to the loan is noted ${when} already. The same, or another?`,
    wants: "choice",
    choices: [
      { label: "Another: add it", words: [...ONE_MORE], effect: { kind: "settle", confirm: TWICE } },
      { label: "The same: skip", words: ["the same", "same"], effect: { kind: "drop" } },
    ],
  };
}

function moreThanOwed(owed: Cents): Ask {
  const all: Ask["choices"] =
    owed > 0
      ? [{ label: `Pay ${show(owed)}`, words: ["yes"], effect: { kind: "settle", change: { amount: owed } } }]
      : [];
  return {
    prompt: `Only ${show(owed)} is owed. Pay that, or send the statement first, like: loan balance 9871.14`,
    wants: "amount",
    choices: [...all, { ...NEVER_MIND, words: ["no"] }],
  };
}
