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
import { isYesNo } from "./features.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal, refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Period } from "./query.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import type { Cue } from "./words/cues.ts";
import { nameOf } from "./words-of-answers.ts";

type About = NonNullable<ReadingOf<"ask">["about"]>;

/** A question that one of the views answers whole. */
export interface ViewQuestion {
  kind: "view";
  about: About;
  month?: Month;
  year?: string;
  pieces: readonly number[];
  loan: string | null;
  /** Yes or no is wanted: "am i on track". */
  yesNo?: true;
  /** One figure of the view alone. */
  asks?: ViewFigure;
  /** Of the tax: what was set aside in some months. */
  period?: Period;
}

/** What a loan costs a year, and what is earned for the loans and not sent yet. */
type ViewFigure = "rate" | "ready";

/** When a view is asked for, and the cues that it takes up. */
interface ViewRule {
  about: About;
  when(f: Features, parts: Parts): boolean;
  takes: readonly Cue[];
  asks?: ViewFigure;
}

/** Words that may stand beside a period without asking for anything else. */
const BARE = new Set(
  "how hows howd was is are did for in of the so far what whats about and my i am we please show me now today till date to then come comes came add adds added up amount amounts amounted total totals tally shape work worked".split(
    " ",
  ),
);

/** Whether nothing is said beside a period: "september?", "this month". */
function isPeriodAlone({ marks, items, groups, limits, amounts, orders, besideAt }: Parts): boolean {
  if (
    !marks.every(
      ({ text, period, senses }) =>
        period !== undefined ||
        senses.cues.length > 0 ||
        senses.group !== undefined ||
        text.split(" ").every((word) => BARE.has(word)),
    )
  )
    return false;
  const others = groups.filter(({ group, parted }) => parted || (group !== "month" && group !== "year"));
  return [items, others, limits, amounts, orders, besideAt].every((list) => list.length === 0);
}

const TALK: readonly Cue[] = ["money", "fared", "which", "have", "total", "list"];

const VIEWS: readonly ViewRule[] = [
  {
    about: "loan",
    asks: "rate",
    when: (f) => f.has("rate") && !f.piece,
    takes: [...TALK, "rate", "loan", "paid", "interest"],
  },
  {
    about: "loan",
    asks: "ready",
    when: (f) => f.has("ready"),
    takes: [...TALK, "ready", "loan", "owe", "unsold"],
  },
  { about: "recap", when: (f) => f.has("recap"), takes: [...TALK, "recap", "when", "net", "earn"] },
  {
    about: "tax",
    when: (f) => f.has("tax"),
    takes: [...TALK, "tax", "held", "owe", "paid", "take", "when", "spent", "deposits", "loanPaid", "kept"],
  },
  {
    about: "pace",
    when: (f) => f.has("goal") || (f.has("pace") && !f.loan && !f.has("payoff")),
    takes: [...TALK, "goal", "pace", "howLong", "howMany", "fared", "extra", "unsold"],
  },
  {
    about: "loan",
    when: (f, parts) =>
      (f.loan || f.has("owe")) &&
      !(f.has("principal") && f.has("paid")) &&
      parts.amounts.length === 0 &&
      !f.has("interest", "loanPaid", "suppose", "chart") &&
      !f.period,
    takes: [
      ...TALK,
      "loan",
      "owe",
      "unsold",
      "payoff",
      "when",
      "principal",
      "howLong",
      "paid",
      "tiedUp",
      "whatStatus",
    ],
  },
  {
    about: "piece",
    when: (f, parts) =>
      isOnePiece(parts) &&
      (f.has("whatStatus", "story", "list", "fared") || parts.marks.length <= parts.items.length + 1),
    takes: [...TALK, "whatStatus", "story", "list", "listed", "asking"],
  },
  {
    about: "month",
    when: (f, parts) => isPeriodAlone(parts) && (parts.groups.length > 0 || f.period) && !f.has("chart"),
    takes: [...TALK, "net", "earn"],
  },
  {
    about: "month",
    when: (f, parts) => isPeriodAlone(parts) && f.has("fared"),
    takes: [...TALK, "money", "net", "earn"],
  },
];

/** A piece by its number, or one named in the singular. */
function isOnePiece({ items, groups, limits, besideAt, orders, periods }: Parts): boolean {
  if (items.length === 0 || [groups, limits, besideAt, orders, periods].some((list) => list.length > 0))
    return false;
  if (items.some(({ not }) => not)) return false;
  return (
    items.every(
      ({ mark }) =>
        mark.number !== undefined ||
        mark.senses.thing?.noun !== undefined ||
        mark.senses.thing?.trait === true ||
        mark.senses.own.some(({ dimension }) => dimension === "kind" || dimension === "trait"),
    ) &&
    items.some(
      ({ mark }) =>
        mark.number !== undefined || (mark.senses.thing?.noun !== undefined && !mark.senses.thing.plural),
    )
  );
}

/** The view that a question asks for, with every word of it taken up; null where it is none. */
export function readView(parts: Parts, f: Features, desk: Desk): ViewQuestion | Refusal | null {
  const rule = VIEWS.find((each) => each.when(f, parts));
  if (!rule) return null;
  const fault = leftOver(parts, rule.takes, { used: new Set(parts.groups.map(({ at }) => at)) });
  if (fault) return fault;
  if (parts.amounts.length > 0 || parts.limits.length > 0) return null;
  const [said, more] = parts.periods;
  if (more) return null;
  if (said && rule.about === "tax" && !isYear(said.period)) {
    if (!isOfMonths(said.period, desk.today)) return refusal(parts.marks[said.at]!);
    return { kind: "view", about: "tax", pieces: [], loan: null, period: said.period };
  }
  const time = said ? timeOf(said.period, rule.about) : {};
  if (!time) return null;
  const loan =
    parts.items.flatMap(({ mark }) => mark.senses.own).find(({ dimension }) => dimension === "loan")?.value ??
    null;
  if (rule.about !== "piece") {
    const others = parts.items.filter(
      ({ mark }) => !mark.senses.own.some(({ dimension }) => dimension === "loan"),
    );
    if (others.length > 0) return { kind: "refused", words: others.map(({ mark }) => mark.typed) };
    const yesNo = rule.about === "pace" && isYesNo(parts, f) ? { yesNo: true as const } : {};
    const asks = rule.asks ? { asks: rule.asks } : {};
    // What is earned for the loans is for none of them alone.
    if (asks.asks === "ready" && loan !== null)
      return refusal(parts.items.find(({ mark }) => mark.senses.own.length > 0)!.mark);
    return { kind: "view", about: yearly(rule.about, time), ...time, pieces: [], loan, ...yesNo, ...asks };
  }
  const found = narrowed(parts, "profit", desk);
  if ("kind" in found) return found;
  const pieces = piecesOf(
    desk,
    found.map(({ filter }) => filter),
  ).map(({ number }) => number);
  return { kind: "view", about: "piece", pieces, loan: null };
}

function yearly(about: About, { year }: { year?: string }): About {
  return about === "month" && year !== undefined ? "year" : about;
}

function isYear({ from, to }: Period): boolean {
  return (
    from !== null &&
    to !== null &&
    from.endsWith("-01-01") &&
    from.slice(0, 4) === to.slice(0, 4) &&
    to >= `${from.slice(0, 4)}-07`
  );
}

/** Whole months, the running one as far as it has come. */
function isOfMonths({ from, to }: Period, today: Day): boolean {
  return (
    from !== null && to !== null && from.endsWith("-01") && (to === lastDayOf(monthOf(to)) || to >= today)
  );
}

/** A view's month or year; null where the period is neither. */
function timeOf({ from, to }: Period, about: About): { month?: Month; year?: string } | null {
  if (from === null || to === null) return null;
  const month = monthOf(from);
  const isMonth =
    from.endsWith("-01") && monthOf(to) === month && (to === lastDayOf(month) || about !== "tax");
  if (isMonth) return { month };
  if (
    from.endsWith("-01-01") &&
    from.slice(0, 4) === to.slice(0, 4) &&
    (to.endsWith("-12-31") || monthOf(to) > month)
  )
    return { year: from.slice(0, 4) };
  return null;
}

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
  if (question.asks === "rate") return answerRates(desk, loan);
  if (question.asks === "ready") return answerReady(desk);
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
function answerRates({ books }: Desk, name: string | null): Answered {
  const loans = [...books.loans.values()].filter((each) => name === null || each.name === name);
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
  return {
    understood: true,
    value: amountText(earmarked(books, today)),
    period: null,
    text: readyWords(books, today),
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
