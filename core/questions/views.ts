import { type Day, lastDayOf, type Month, monthOf } from "../calendar.ts";
import type { ReadingOf } from "../notes/reading.ts";
import type { Desk } from "./desk.ts";
import { isYesNo } from "./features.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal, refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Period } from "./query.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import { type Cue, cues } from "./words/cues.ts";

type About = NonNullable<ReadingOf<"ask">["about"]>;

/** A question that one of the views answers whole. */
export interface ViewQuestion {
  kind: "view";
  about: About;
  month?: Month;
  year?: string;
  pieces: readonly number[];
  loan: string | null;
  /** Several loans, told together. */
  loans?: readonly string[];
  /** Yes or no is wanted: "am i on track". */
  yesNo?: true;
  /** One figure of the view alone. */
  asks?: ViewFigure;
  /** Of the tax: what was set aside in some months. */
  period?: Period;
}

/** What a loan costs a year, what is earned for the loans and not sent yet, how many loans there are, whether they are over. */
type ViewFigure = "rate" | "ready" | "number" | "over";

/** When a view is asked for, and the cues that it takes up. */
interface ViewRule {
  about: About;
  when(f: Features, parts: Parts): boolean;
  takes: readonly Cue[];
  asks?: ViewFigure;
}

/** Words that may stand beside a period without asking for anything else. */
const BARE = new Set(
  "how hows howd was is are did for in of the so far what whats about and my i am we please pls plz thx ty show me now today till date to then come comes came add adds added up amount amounts amounted total totals tally shape work worked".split(
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
    asks: "over",
    when: (f) => f.asksOver && !f.piece && !f.supply,
    takes: [...TALK, "loan", "loanPaid", "paid", "payoff", "ends", "gone", "finished", "free"],
  },
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
  {
    about: "loan",
    asks: "number",
    when: (f) =>
      f.loan && f.has("howMany", "inDays") && (f.has("have") || f.bare) && !f.has("paid", "loanPaid"),
    takes: [...TALK, "howMany", "loan", "unsold"],
  },
  { about: "recap", when: (f) => f.has("recap"), takes: [...TALK, "recap", "when", "net", "earn"] },
  {
    about: "tax",
    when: (f) => f.has("tax"),
    takes: [...TALK, ...cues("tax miles held owe paid take when spent deposits loanPaid kept")],
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
    takes: [...TALK, ...cues("loan owe unsold payoff when principal howLong paid tiedUp whatStatus")],
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
  const time = said ? timeOf(said.period, rule.about, desk.today) : {};
  if (!time) return null;
  const named = new Set(
    parts.items
      .flatMap(({ mark }) => mark.senses.own)
      .filter(({ dimension }) => dimension === "loan")
      .map(({ value }) => value),
  );
  const [loan = null, ...others] = named;
  if (rule.about !== "piece") {
    const strange = parts.items.filter(
      ({ mark, not }) => not || !mark.senses.own.some(({ dimension }) => dimension === "loan"),
    );
    if (strange.length > 0) return { kind: "refused", words: strange.map(({ mark }) => mark.typed) };
    const isAsked = rule.about === "pace" || (rule.about === "loan" && f.has("owe"));
    const yesNo = (isAsked || rule.asks === "over") && isYesNo(parts, f) ? { yesNo: true as const } : {};
    const asks = rule.asks ? { asks: rule.asks } : {};
    // What is earned for the loans is for none of them alone.
    if (asks.asks === "ready" && loan !== null)
      return refusal(parts.items.find(({ mark }) => mark.senses.own.length > 0)!.mark);
    return {
      kind: "view",
      about: yearly(rule.about, time),
      ...time,
      pieces: [],
      loan,
      ...(others.length > 0 ? { loans: [...named] } : {}),
      ...yesNo,
      ...asks,
    };
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
  return (about === "month" || about === "recap") && year !== undefined ? "year" : about;
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
function timeOf({ from, to }: Period, about: About, today: Day): { month?: Month; year?: string } | null {
  if (from === null || to === null) return null;
  const month = monthOf(from);
  const isRunning = about !== "tax" && to === today;
  const isMonth = from.endsWith("-01") && monthOf(to) === month && (to === lastDayOf(month) || isRunning);
  if (isMonth) return { month };
  if (
    from.endsWith("-01-01") &&
    from.slice(0, 4) === to.slice(0, 4) &&
    (to.endsWith("-12-31") || to === today)
  )
    return { year: from.slice(0, 4) };
  return null;
}
