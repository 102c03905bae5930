import { readyWords } from "../answers/lines.ts";
import { answers } from "../answers/list.ts";
import { isOnTrack } from "../answers/pace.ts";
import { balanceOn, owedOn } from "../books/loan.ts";
import { earmarked, monthRow } from "../books/month.ts";
import { loanWords } from "../books/problem.ts";
import { addMonths, type Day, lastDayOf, type Month, monthOf } from "../calendar.ts";
import { amountText, show } from "../money.ts";
import type { ReadingOf } from "../notes/reading.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import type { Period } from "./query.ts";
import { nameOf } from "./titles.ts";
import type { ViewQuestion } from "./views.ts";

/** Answers with a view's own words; where the view has one figure, that is the value. */
export function answerView(desk: Desk, question: ViewQuestion): Answered {
  const { about, month, year, pieces, loan } = question;
  const asked: ReadingOf<"ask"> = {
    kind: "ask",
    about,
    text: about,
    line: 0,
    ...(month ? { month } : {}),
    ...(year ? { year } : {}),
  };
  const rule = answers.find((each) => each.about === about)!;
  const { books, today, currency, mileageRates } = desk;
  if (question.asks === "rate") return answerRates(desk, question.loans ?? (loan === null ? null : [loan]));
  if (question.asks === "number") return answerNumber(desk);
  if (question.asks === "ready") return answerReady(desk);
  if (about === "loan" && question.yesNo) return answerOwed(desk, question);
  if (about === "loan" && question.loans) return answerSomeLoans(desk, question.loans);
  if (about === "loan" && loan !== null) return answerOneLoan(desk, loan);
  if (about === "tax" && question.period) return answerSetAside(desk, question.period);
  const told = rule.answer({ question: asked, books, today, currency, pieces, mileageRates });
  const onTrack = question.yesNo ? isOnTrack(books, today) : null;
  if (onTrack !== null)
    return {
      understood: true,
      value: onTrack ? "yes" : "no",
      period: null,
      text: `${onTrack ? "Yes" : "No"}. ${told.text}`,
    };
  return {
    understood: true,
    ...figureOf(desk, { ...question, ...(told.monthPicture ? { month: told.monthPicture } : {}) }),
    text: told.text,
    ...(told.buttons ? { buttons: told.buttons } : {}),
    ...(told.pictures ? { pictures: told.pictures } : {}),
    ...(told.monthPicture ? { monthPicture: told.monthPicture } : {}),
  };
}

function figureOf({ books, today }: Desk, { about, month, year, pieces }: ViewQuestion): Partial<Answered> {
  const whole = { period: null };
  if (about === "loan") {
    const owed = owedOn(books, today);
    const rows = [...books.loans.values()].map((each) => ({
      label: each.name,
      value: amountText(balanceOn(each, today)),
    }));
    return { ...whole, value: amountText(owed), ...(rows.length > 1 ? { rows } : {}) };
  }
  if (about === "piece")
    return {
      ...whole,
      value: null,
      rows: pieces.map((number) => ({ label: books.pieces.get(number)!.name, number, value: null })),
    };
  if (about === "tax")
    return {
      ...whole,
      value: amountText(
        monthsOf(year ?? today.slice(0, 4), today).reduce(
          (sum, each) => sum + monthRow(books, each, today).taxSetAside,
          0,
        ),
      ),
    };
  if (about === "pace") return { ...whole, value: null };
  const months = year ? monthsOf(year, today) : [month ?? monthOf(today)];
  const net = months.reduce((sum, each) => sum + monthRow(books, each, today).flipProfit, 0);
  const last = lastDayOf(months.at(-1)!);
  return {
    measure: "net",
    value: amountText(net),
    period: { from: `${months[0]}-01`, to: last < today ? last : today },
  };
}

/** The months of a year that have begun. */
function monthsOf(year: string, today: string): Month[] {
  const months: Month[] = [];
  for (
    let month = `${year}-01`;
    month.startsWith(year) && month <= monthOf(today);
    month = addMonths(month, 1)
  )
    months.push(month);
  return months;
}

/** The yearly rate of one loan, or of each. */
function answerRates({ books }: Desk, names: readonly string[] | null): Answered {
  const loans = [...books.loans.values()].filter(({ name }) => names === null || names.includes(name));
  const rows = loans.map((each) => ({ label: each.name, value: each.rate }));
  const lines = loans.map((each) => `${loanWords(each.name)}: ${each.rate}% a year`);
  const isOne = loans.length === 1;
  return {
    understood: true,
    value: isOne ? loans[0]!.rate : null,
    ...(isOne ? {} : { rows }),
    period: null,
    text: lines.join("\n") || "No loan on the books.",
  };
}

/** What is ready for the loans today; below zero it was sent ahead or waits on buyers. */
function answerReady({ books, today }: Desk): Answered {
  const due = earmarked(books, today);
  return {
    understood: true,
    value: amountText(due),
    period: null,
    text: readyWords(books, today),
    ...(due > 0 && books.loans.size > 0
      ? { buttons: [[{ label: `Paid loan ${show(due)}`, press: `rs:${due}` }]] }
      : {}),
  };
}

/** What some months set aside for tax. */
function answerSetAside({ books, today }: Desk, period: Period): Answered {
  const { from, to } = period as { from: Day; to: Day };
  const months: Month[] = [];
  for (let month = monthOf(from); month <= monthOf(to < today ? to : today); month = addMonths(month, 1))
    months.push(month);
  const sum = months.reduce((all, each) => all + monthRow(books, each, today).taxSetAside, 0);
  return {
    understood: true,
    value: amountText(sum),
    period: { from, to },
    text: `Set aside for tax, ${nameOf(period, today)}: ${show(sum)} (an estimate)`,
  };
}

/** "Do i owe anything on the loan" */
function answerOwed(desk: Desk, question: ViewQuestion): Answered {
  const { yesNo: _, asks, ...plain } = question;
  const told = answerView(desk, plain);
  // "Is it paid off" is the other way round.
  const yes = Number(told.value ?? 0) > 0 !== (asks === "over");
  return { ...told, value: yes ? "yes" : "no", text: `${yes ? "Yes" : "No"}. ${told.text}` };
}

/** "What do i owe on the van and the school loan": what is left of each, and of them together. */
function answerSomeLoans({ books, today }: Desk, names: readonly string[]): Answered {
  const left = names.map((name) => ({ name, cents: balanceOn(books.loans.get(name)!, today) }));
  const sum = left.reduce((all, { cents }) => all + cents, 0);
  return {
    understood: true,
    value: amountText(sum),
    rows: left.map(({ name, cents }) => ({ label: name, value: amountText(cents) })),
    period: null,
    text: [
      `${names.join(" and ")} loan: ${show(sum)} left today`,
      ...left.map(({ name, cents }) => `  ${name}: ${show(cents)}`),
    ].join("\n"),
  };
}

/** "How many loans do i have". */
function answerNumber({ books, today }: Desk): Answered {
  const loans = [...books.loans.values()];
  return {
    understood: true,
    value: String(loans.length),
    period: null,
    text: [
      `Loans: ${loans.length}`,
      ...loans.map((each) => `  ${each.name}: ${show(balanceOn(each, today))} left today`),
    ].join("\n"),
  };
}

function answerOneLoan({ books, today }: Desk, name: string): Answered {
  const loan = books.loans.get(name)!;
  const balance = balanceOn(loan, today);
  return {
    understood: true,
    value: amountText(balance),
    period: null,
    text: [
      `${name} loan: ${show(balance)} left today`,
      `  at ${loan.rate}%, paid so far ${show(loan.paid)}`,
      `  of it interest ${show(loan.interestPaid)}`,
    ].join("\n"),
  };
}
