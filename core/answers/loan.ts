import { Decimal } from "decimal.js";
import type { Books, Loan } from "../books/books.ts";
import { accruedOn, balanceOn, interestADay, owedOn } from "../books/loan.ts";
import { earmarked, monthRow } from "../books/month.ts";
import { loanWords } from "../books/problem.ts";
import type { Day } from "../calendar.ts";
import { addMonths, daysInYear, monthOf, showMonth } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { roundHalfUp, show } from "../money.ts";
import { project } from "../payoff.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { readyWords } from "./lines.ts";
import { counted, reply } from "./wording.ts";

/** How many full months the pace is taken from: common practice, no source. */
const PACE_MONTHS = 3;

export const loan = defineAnswer({
  about: "loan",
  example: "loan?",
  asks: {
    phrases: [
      "how much … loan",
      "whats left … loan",
      "left on … loan",
      "hows … loan",
      "how … loan",
      "what … loan",
      "loan balance",
      "when … loan … paid",
      "when … loan",
      "when … paid off",
      "when … debt free",
      "how long … loan",
      "how much do i owe",
      "how much do i still owe",
      "how much … owe",
      "what do i owe",
      "whats … loan",
      "payoff date",
      "loan payoff",
      "show … loan",
      "loan left",
      "interest",
      "how much interest",
      "debt",
      "when will i be done paying",
      "am i … loan",
      "show … loans",
      "how far … loan",
    ],
    whole: [
      "loan",
      "loans",
      "balance",
      "my loan",
      "loan balance",
      "loan status",
      "the loan",
      "debt",
      "payoff",
      "loan payoff",
      "grad loan",
    ],
  },
  answer: answerLoan,
});

function answerLoan({ books, today }: Asked): Answer {
  const loans = [...books.loans.values()];
  if (loans.length === 0) {
    const ready = earmarked(books, today);
    return reply([
      "No loan on the books yet.",
      'A note adds it: "loan 14250 at 5.5%"',
      ready > 0 ? `Earned for it so far ${show(ready)}` : null,
    ]);
  }
  return reply([
    ...(loans.length === 1 ? oneLoan(loans[0]!, today) : severalLoans(books, loans, today)),
    ...loans.filter((each) => each.rateUnknown).map(rateAsked),
    ...readyLines(books, today),
    ...payoffLines(books, loans, today),
  ]);
}

function oneLoan(only: Readonly<Loan>, today: Day): string[] {
  const interest = accruedOn(only, today);
  return [
    `Loan: ${show(balanceOn(only, today))} left today`,
    `  principal ${show(only.principal)} + interest ${show(interest)}`,
    `${show(roundHalfUp(interestADay(only, today)))} interest a day (${only.rate}%, ${daysOf(only, today)} days a year)`,
    `Paid so far ${show(only.paid)}, of it interest ${show(only.interestPaid)}`,
  ];
}

function severalLoans(books: Books, loans: readonly Readonly<Loan>[], today: Day): string[] {
  const sum = (of: (each: Readonly<Loan>) => Cents): string =>
    show(loans.reduce((total, each) => total + of(each), 0));
  const interest = loans.reduce((total, each) => total.plus(interestADay(each, today)), new Decimal(0));
  const order = books.order === "highest" ? "highest rate first" : "shared by principal";
  return [
    `Loans: ${show(owedOn(books, today))} left today`,
    ...loans.map(
      (each) =>
        `  ${each.name}: ${show(balanceOn(each, today))} (${each.rate}%, ${daysOf(each, today)} days a year)`,
    ),
    `${show(roundHalfUp(interest))} interest a day`,
    `Paid so far ${sum((each) => each.paid)}, of it interest ${sum((each) => each.interestPaid)}`,
    `Payments go to all interest, then ${order}`,
  ];
}

function rateAsked({ name }: Readonly<Loan>): string {
  return `No rate yet, counted as 0%. Say "${loanWords(name)} rate 5.5%"`;
}

function daysOf(each: Readonly<Loan>, today: Day): string {
  return each.days === "actual" ? String(daysInYear(Number(today.slice(0, 4)))) : each.days;
}

function readyLines(books: Books, today: Day): string[] {
  const ready = earmarked(books, today);
  const owed = owedOn(books, today);
  const declared = books.declaredSent <= 0 ? [] : [`Sent before these books: ${show(books.declaredSent)}`];
  if (ready <= 0) return [...declared, readyWords(books, today)];
  const after = ready >= owed ? "that pays it all" : `then ${show(owed - ready)} left`;
  return [...declared, `${readyWords(books, today)}, ${after}`];
}

/** When it is paid off at the pace of late, in words that say it is an estimate. */
function payoffLines(books: Books, loans: readonly Readonly<Loan>[], today: Day): string[] {
  if (owedOn(books, today) === 0) return ["All paid off"];
  const pace = paceOf(books, today);
  if (pace === null) return ["No pace yet: nothing paid in the last 3 full months"];
  const payoff = project(books, { monthly: pace.cents, now: 0 }, today);
  const pacing = `At ${show(pace.cents)} a month (${pace.of}):`;
  if (payoff.kind === "never") {
    const aDay = loans.reduce((sum, each) => sum.plus(interestADay(each, today)), new Decimal(0));
    const aMonth = show(roundHalfUp(aDay.times(365).div(12)));
    return [pacing, `  not paid off in 100 years: interest is ${aMonth} a month`];
  }
  return [
    pacing,
    `  paid off about ${showMonth(monthOf(payoff.last))}`,
    `  interest until then about ${show(payoff.interest)} (estimate)`,
  ];
}

/** Paid a month, in cents, over the last three full months, or as many as the books go back. */
export function paceOf(books: Books, today: Day): { cents: Cents; of: string } | null {
  const running = monthOf(today);
  // Since there is a loan: past pieces brought in later must not make the months before it count as unpaid.
  const opened = [...books.loans.values()].map((each) => monthOf(each.opened)).sort();
  const first = opened[0] ?? running;
  const months = [1, 2, 3].map((back) => addMonths(running, -back)).filter((each) => each >= first);
  const paid = months.reduce((sum, each) => sum + monthRow(books, each, today).paidToLoan, 0);
  if (paid <= 0) return null;
  const of =
    months.length === PACE_MONTHS ? "last 3 full months" : `last ${counted(months.length, "full month")}`;
  return { cents: roundHalfUp(new Decimal(paid).div(months.length)), of };
}
