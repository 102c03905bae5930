import { Decimal } from "decimal.js";
import { paceOf } from "../answers/loan.ts";
import { counted } from "../answers/wording.ts";
import { balanceOn, owedOn } from "../books/loan.ts";
import { loanWords } from "../books/problem.ts";
import type { Day } from "../calendar.ts";
import { addMonths, monthOf, showMonth } from "../calendar.ts";
import { amountText, type Cents, roundHalfUp, show } from "../money.ts";
import { firstLoan, neededBy, type Payoff, project } from "../payoff.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import type { LoanQuestion } from "./read-suppose.ts";
import { capital } from "./titles.ts";

/** Answers what a question supposes about loans. Everything here is an estimate, and says so. */
export function answerSuppose(desk: Desk, question: LoanQuestion): Answered {
  const { books, today } = desk;
  const owed = owedOn(books, today);
  if (books.loans.size === 0) return plain(null, "No loan on the books.");
  if (owed === 0) return plain(null, "Nothing is owed any more.");
  const pace = paceOf(books, today);
  switch (question.kind) {
    case "needed":
      return question.yesNo ? answerOnTime(desk, question, pace) : answerNeeded(desk, question);
    case "first loan":
      return answerFirst(desk, pace?.cents ?? null);
    case "saved":
      return pace === null ? noPace() : answerSaved(desk, question, pace.cents);
    case "payoff":
      return answerPayoff(desk, question, pace);
    case "reached":
      return answerReached(desk, question, pace);
  }
}

function plain(value: string | null, ...lines: string[]): Answered {
  return { understood: true, value, period: null, text: lines.join("\n") };
}

function noPace(): Answered {
  return plain(
    null,
    "No pace yet: nothing was paid in the last full months.",
    'Say an amount: "500 a month until it is gone"',
  );
}

type Asked<K extends LoanQuestion["kind"]> = Extract<LoanQuestion, { kind: K }>;

function answerPayoff(
  desk: Desk,
  question: Asked<"payoff">,
  pace: { cents: Cents; of: string } | null,
): Answered {
  const own =
    question.times && question.loan !== null ? paceOfLoan(desk, question.loan) : (pace?.cents ?? null);
  const base = question.monthly ?? (own === null ? null : own * (question.times ?? 1));
  if (base === null && question.extra === 0) return noPace();
  const monthly = Math.max(0, (base ?? 0) + question.extra);
  // An amount said for one loan goes to it alone; the pace of late goes to all in their order.
  const only = question.monthly === null && !question.times ? undefined : (question.loan ?? undefined);
  const payoff = project(desk.books, { monthly, now: question.now }, desk.today, only);
  const how = waysOf(question, monthly, question.times ? null : pace);
  if (payoff.kind === "never") return plain(null, `${how}: never, the interest eats it (estimate)`);
  const named = payoff.loans.find(({ name }) => name === question.loan);
  const loans = named ? [named] : payoff.loans;
  if (question.asksInterest) {
    const interest = named?.interest ?? payoff.interest;
    return plain(
      amountText(interest),
      `Interest until gone, ${named ? loanWords(named.name) : "all told"}: about ${show(interest)} (estimate)`,
      `${capital(how)}: gone about ${endOf(named?.last ?? payoff.last)}`,
    );
  }
  const rows =
    loans.length > 1 ? { rows: loans.map(({ name, last }) => ({ label: name, value: last })) } : {};
  const lines =
    loans.length > 1
      ? loans.map(({ name, last }) => `  ${loanWords(name)}: ${showMonth(monthOf(last))}`)
      : [];
  return {
    understood: true,
    value: named?.last ?? payoff.last,
    ...rows,
    period: null,
    text: [
      `${how}: gone about ${endOf(named?.last ?? payoff.last)}`,
      ...lines,
      // Payments and interest are of all the loans: of one among them only the day is told.
      named && only === undefined && payoff.loans.length > 1
        ? "Beside the others, in their order (estimate)"
        : `${counted(payoff.payments, "payment")}, interest about ${show(payoff.interest)} (estimate)`,
    ].join("\n"),
  };
}

/** When it is under an amount: of the loan named, else of all that is owed. */
function answerReached(
  { books, today }: Desk,
  { until, bound, monthly, extra, loan }: Asked<"reached">,
  pace: { cents: Cents; of: string } | null,
): Answered {
  const what = loan === null ? (books.loans.size > 1 ? "All loans" : "The loan") : capital(loanWords(loan));
  const now = loan === null ? owedOn(books, today) : balanceOn(books.loans.get(loan)!, today);
  if (now <= until) return plain(today, `${what}: already ${bound}, ${show(now)} today`);
  const base = monthly ?? pace?.cents ?? null;
  if (base === null && extra === 0) return noPace();
  const all = (base ?? 0) + extra;
  // An amount said for one loan goes to it alone; the pace of late goes to all in their order.
  const only = monthly === null ? undefined : (loan ?? undefined);
  const payoff = project(books, { monthly: all, now: 0, until }, today, only);
  const how = waysOf({ kind: "payoff", monthly, extra, now: 0, loan: null }, all, pace);
  const day =
    payoff.kind === "never" ? null : (payoff.loans.find(({ name }) => name === loan)?.last ?? payoff.last);
  if (day === null) return plain(null, `${what}, ${how}: never ${bound}, the interest eats it (estimate)`);
  return plain(day, `${what} ${bound}: about ${endOf(day)} (estimate)`, `At ${how}, from ${show(now)} today`);
}

/** What was paid to one loan in a mean month of the last three full ones. */
function paceOfLoan({ books, index, today }: Desk, name: string): Cents | null {
  const running = monthOf(today);
  const opened = monthOf(books.loans.get(name)!.opened);
  const months = [1, 2, 3].map((back) => addMonths(running, -back)).filter((month) => month >= opened);
  const paid = index.journals.paid.reduce(
    (sum, { loan, day, units }) => (loan === name && months.includes(monthOf(day)) ? sum + units : sum),
    0,
  );
  return paid > 0 ? roundHalfUp(new Decimal(paid).div(months.length)) : null;
}

function waysOf(
  { monthly, extra, now, loan }: Asked<"payoff">,
  all: Cents,
  pace: { cents: Cents; of: string } | null,
): string {
  const what = loan === null ? "" : `${loanWords(loan)}, `;
  const once = now > 0 ? `${show(now)} now, then ` : "";
  if (monthly !== null) return `${what}${once}${show(all)} a month`;
  const more = extra === 0 ? "" : `${show(Math.abs(extra))} ${extra > 0 ? "more" : "less"}, `;
  return `${what}${once}${more}${show(all)} a month${pace && extra === 0 ? ` (${pace.of})` : ""}`;
}

function answerNeeded({ books, today }: Desk, { by, name, loan }: Asked<"needed">): Answered {
  const needed = neededBy(books, by, today, loan ?? undefined);
  if (needed === null) return plain(null, `${name} is too soon for monthly payments.`);
  return plain(amountText(needed), `Gone by ${name}: ${show(needed)} a month (estimate)`);
}

/** "Can we be done with the car by june": whether the pace of late does it, and what would. */
function answerOnTime(
  desk: Desk,
  asked: Asked<"needed">,
  pace: { cents: Cents; of: string } | null,
): Answered {
  if (pace === null) return noPace();
  const payoff = project(desk.books, { monthly: pace.cents, now: 0 }, desk.today);
  const last =
    payoff.kind === "never"
      ? null
      : (payoff.loans.find(({ name }) => name === asked.loan)?.last ?? payoff.last);
  const isInTime = last !== null && last <= asked.by;
  const gone = last === null ? "never gone, the interest eats it" : `gone about ${endOf(last)}`;
  const needed = isInTime ? [] : [answerNeeded(desk, asked).text];
  return plain(
    isInTime ? "yes" : "no",
    `${isInTime ? "Yes" : "No"}, at ${show(pace.cents)} a month (${pace.of}): ${gone} (estimate)`,
    ...needed,
  );
}

function interestOf(payoff: Payoff): Cents | null {
  return payoff.kind === "paid" ? payoff.interest : null;
}

function answerSaved({ books, today }: Desk, { now, extra, loan }: Asked<"saved">, pace: Cents): Answered {
  const only = loan ?? undefined;
  const before = interestOf(project(books, { monthly: pace, now: 0 }, today, only));
  const after = project(books, { monthly: pace + extra, now }, today, only);
  const less = interestOf(after);
  const said = now > 0 ? `${show(now)} now` : `${show(extra)} more a month`;
  if (less === null) return plain(null, `At ${show(pace)} a month it is never gone, so nothing can be told.`);
  if (before === null || after.kind !== "paid")
    return plain(null, `${said}: at ${show(pace)} a month alone it is never gone.`);
  return plain(
    amountText(before - less),
    `${said} saves about ${show(before - less)} of interest (estimate)`,
    `Then ${show(pace + extra)} a month: gone about ${endOf(after.last)}`,
  );
}

function endOf(day: Day): string {
  return showMonth(monthOf(day));
}

function answerFirst({ books, today }: Desk, pace: Cents | null): Answered {
  const owed = owedOn(books, today);
  const first = firstLoan(books, pace ?? Math.ceil(owed / 36), today);
  if (!first) return plain(null, "Nothing is owed any more.");
  const rate = books.loans.get(first.name)!.rate;
  const saves =
    first.saves === null || first.saves <= 0
      ? []
      : [
          `Against the other way round it saves about ${show(first.saves)} of interest at ${show(pace ?? Math.ceil(owed / 36))} a month (estimate)`,
        ];
  return plain(first.name, `The ${loanWords(first.name)}: at ${rate}% it costs the most`, ...saves);
}
