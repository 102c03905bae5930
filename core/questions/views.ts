import { answers } from "../answers/list.ts";
import { isOnTrack } from "../answers/pace.ts";
import { balanceOn, owedOn } from "../books/loan.ts";
import { monthRow } from "../books/month.ts";
import { addMonths, lastDayOf, type Month, monthOf } from "../calendar.ts";
import { amountText, show } from "../money.ts";
import type { ReadingOf } from "../notes/reading.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { isYesNo } from "./features.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Period } from "./query.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import type { Cue } from "./words/cues.ts";

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
}

/** When a view is asked for, and the cues that it takes up. */
interface ViewRule {
  about: About;
  when(f: Features, parts: Parts): boolean;
  takes: readonly Cue[];
}

/** Words that may stand beside a period without asking for anything else. */
const BARE = new Set(
  "how hows howd was is are did for in of the so far what whats about and my i am we please show me now today till date to then".split(
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
  { about: "recap", when: (f) => f.has("recap"), takes: [...TALK, "recap", "when", "net", "earn"] },
  {
    about: "tax",
    when: (f) => f.has("tax"),
    takes: [...TALK, "tax", "held", "owe", "paid", "take", "when", "spent", "deposits"],
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
      (f.has("whatStatus", "list", "fared") || parts.marks.length <= parts.items.length + 1),
    takes: [...TALK, "whatStatus", "list"],
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
    return { kind: "view", about: yearly(rule.about, time), ...time, pieces: [], loan, ...yesNo };
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
  if (about === "loan" && loan !== null) return answerOneLoan(desk, loan);
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
