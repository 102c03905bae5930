import type { Day } from "../calendar.ts";
import { addMonths, lastDayOf, monthOf, sameDayIn, showMonth } from "../calendar.ts";
import { type Cents, show } from "../money.ts";
import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { type Refusal, refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import type { Period } from "./query.ts";
import type { Features } from "./rule.ts";
import { type Cue, cues } from "./words/cues.ts";
import { COUNTABLE } from "./words/plain.ts";

/** A question about loans that supposes something. Amounts in cents. */
export type LoanQuestion =
  /** When it is gone at so much a month (`null`: at the pace of late, or so many `times` of it), `extra` on top, `now` paid at once. */
  | {
      kind: "payoff";
      monthly: Cents | null;
      extra: Cents;
      now: Cents;
      loan: string | null;
      times?: number;
      asksInterest?: boolean;
    }
  /** When no more than `until` is left of it, paid like that. */
  | { kind: "reached"; until: Cents; bound: string; monthly: Cents | null; extra: Cents; loan: string | null }
  /** How much a month it takes to be rid of it by a day; or whether that is so at the pace of late. */
  | { kind: "needed"; by: Day; name: string; loan: string | null; yesNo?: boolean }
  /** How much interest an amount paid now, or more each month, saves at the pace of late. */
  | { kind: "saved"; now: Cents; extra: Cents; loan: string | null }
  /** Which loan to serve first. */
  | { kind: "first loan" };

const TAKES: readonly Cue[] = cues(
  "rate everything loan loanPaid paid payoff ends pace suppose extra saves once until take interest money when howLong howMany owe gone earn net minutes principal first which have takes got total fared bought cost revenue soldFor spent tiedUp asking",
);

/** What the question supposes about loans, or null where it supposes nothing. */
export function readSuppose(parts: Parts, f: Features, desk: Desk): LoanQuestion | Refusal | null {
  if (f.piece || f.supply || countsThings(parts)) return null;
  const isMonthlyEnd =
    parts.groups.some(({ group }) => group === "month") &&
    parts.amounts.length > 0 &&
    f.has("ends", "until", "paid", "loanPaid");
  const isAboutLoan =
    f.loan ||
    isMonthlyEnd ||
    f.has("owe", "payoff", "interest", "pace") ||
    parts.marks.some(({ text }) => /\bdebt/.test(text));
  const loan = loanNamed(parts, desk);
  const asked =
    isAboutLoan || f.has("suppose", "loanPaid", "saves") ? questionOf(parts, f, desk, loan) : null;
  if (!asked) return null;
  const used = new Set([...usedPlaces(parts), ...(timesOf(parts)?.places ?? [])]);
  // "Van or school loan, which one first": all of them are meant.
  const named = new Set(
    parts.items.flatMap(({ mark }) =>
      mark.senses.own.filter(({ dimension }) => dimension === "loan").map(({ value }) => value),
    ),
  );
  const isAll = !("words" in asked) && asked.kind === "first loan" && named.size === desk.books.loans.size;
  const fault = leftOver(withoutTimes(parts), TAKES, { used, passed: isAll ? ["or"] : [], isItKnown: true });
  return fault ?? asked;
}

/** The words of "double" are known where a payment is doubled, and nowhere else. */
function withoutTimes(parts: Parts): Parts {
  const { places = [] } = timesOf(parts) ?? {};
  return { ...parts, unknown: parts.unknown.filter((mark) => !places.includes(parts.marks.indexOf(mark))) };
}

/** "When will i hit 30 pieces": so many of them, and no money. */
function countsThings({ amounts, marks }: Parts): boolean {
  return amounts.some(({ at, money }) => {
    const next = marks[at + 1];
    return !money && next !== undefined && (next.senses.thing?.plural === true || COUNTABLE.has(next.text));
  });
}

/** "In 2 years", "within 18 months": how long from now, in months, and where that stands. */
function lastingOf({ amounts, groups, marks }: Parts): { months: number; at: number; ends: number } | null {
  for (const { at, cents, money } of amounts) {
    const group = groups.find((each) => each.at === at + 1)?.group;
    const isLed = /\b(?:in|within|over|inside)$/.test(marks[at - 1]?.text ?? "");
    if (!money && isLed && cents % 100 === 0 && (group === "year" || group === "month"))
      return { months: (cents / 100) * (group === "year" ? 12 : 1), at, ends: at + 1 };
  }
  return null;
}

function loanNamed(parts: Parts, { books }: Desk): string | null {
  for (const { mark } of parts.items)
    for (const own of mark.senses.own)
      if (own.dimension === "loan" && books.loans.has(own.value)) return own.value;
  return null;
}

/** "Double my payment", "pay twice as much": so many times the pace of late, and the places of the words. */
function timesOf({ marks }: Parts): { times: number; places: number[] } | null {
  const at = marks.findIndex(({ text }) => TIMES.test(text));
  if (at < 0) return null;
  const places = [at];
  if (marks[at + 1]?.text === "as" || marks[at + 1]?.text === "that") places.push(at + 1);
  return { times: /^(?:trebl|tripl|three)/.test(marks[at]!.text) ? 3 : 2, places };
}
const TIMES = /^(?:doubled?|doubling|twice|tripled?|three times)\b(?! up)/;

/** Numbers, groups ("a month") and orders ("most") have their place in a supposition. */
function usedPlaces(parts: Parts): Set<number> {
  const places = [...parts.amounts, ...parts.groups, ...parts.limits, ...parts.orders].map(({ at }) => at);
  for (const { at } of parts.limits) places.push(at + 1);
  parts.marks.forEach(({ senses }, at) => {
    if (senses.flags.has("parted") || senses.flags.has("comparing") || senses.limit) places.push(at);
  });
  return new Set(places);
}

function questionOf(
  parts: Parts,
  f: Features,
  desk: Desk,
  loan: string | null,
): LoanQuestion | Refusal | null {
  // "Which loan has the highest rate"
  const isDearest =
    f.has("rate", "cost") && parts.orders.length > 0 && parts.orders.every(({ order }) => order === "most");
  if (isDearest && (f.has("which") || f.loan) && parts.amounts.length === 0) return { kind: "first loan" };
  const isFirst = f.has("which") || /^(?:what|which)$/.test(parts.first);
  if (
    (isFirst || parts.orAt.length > 0) &&
    f.loan &&
    f.has("first", "payoff", "loanPaid", "paid") &&
    parts.amounts.length === 0 &&
    f.has("first")
  )
    return { kind: "first loan" };
  const lasting = lastingOf(parts);
  if (lasting) return parts.amounts.length > 1 ? null : neededIn(desk, lasting.months, loan);
  const reached = reachedIn(parts, f, loan);
  if (reached) return reached;
  const amounts = amountsOf(parts);
  if (amounts.length > 2) return refusal(parts.marks[amounts[2]!.at]!);
  // "Payoff date at 175"
  const isAtRate =
    amounts.some(({ at }) => parts.marks[at - 1]?.text === "at") &&
    f.has("payoff", "ends", "when", "howLong");
  const isMonthly = isAtRate || parts.groups.some(({ group }) => group === "month");
  if (amounts.length === 0) return withoutAmount(parts, f, { isMonthly, loan, desk });
  const [first, second] = amounts as [{ cents: Cents; at: number }, { cents: Cents; at: number } | undefined];
  if (second) return null;
  // "Raise it by 100"
  const isRaise = parts.marks[first.at - 1]?.text === "by" && /\b(?:rais|bump|upp|increas)/.test(parts.said);
  const isAdded = /\b(?:add|adding|added|(?:throw|threw|kick|kicked|chip|chipped) in)\b/.test(parts.said);
  // "What if i pay 50 less a month"
  const isLess = /^less\b/.test(parts.marks[first.at + 1]?.text ?? "");
  if (isMonthly && isLess) return { kind: "payoff", monthly: null, extra: -first.cents, now: 0, loan };
  const isExtra = f.has("extra") || parts.limits.length > 0 || isRaise || isAdded;
  const asksInterest = f.has("interest") && !f.has("saves");
  if (f.has("saves") && (f.loan || f.has("interest") || f.has("extra")))
    return { kind: "saved", now: isMonthly ? 0 : first.cents, extra: isMonthly ? first.cents : 0, loan };
  if (isMonthly)
    return {
      kind: "payoff",
      monthly: isExtra ? null : first.cents,
      extra: isExtra ? first.cents : 0,
      now: 0,
      loan,
      asksInterest,
    };
  const isFuture = f.has("suppose") || f.has("payoff", "ends", "when", "howLong", "pace");
  return isFuture ? { kind: "payoff", monthly: null, extra: 0, now: first.cents, loan } : null;
}

/** "When is the loan under 2500", "how long until the van is down to 1000", with what is paid a month or at the pace of late. */
function reachedIn(parts: Parts, f: Features, loan: string | null): LoanQuestion | null {
  const { limits, amounts, groups, marks, said } = parts;
  if (
    !f.has("when", "howLong", "inDays", "until", "howMany") &&
    !/\bhow (?:long|soon)\b|what point/.test(said)
  )
    return null;
  const under = limits.find(({ limit }) => limit === "under" || limit === "most");
  const downTo = amounts.find(({ at }) => {
    const before = marks.slice(Math.max(0, at - 3), at).map(({ text }) => text);
    const isLeft = /^(?:left|remaining|to go)\b/.test(marks[at + 1]?.text ?? "");
    return /\bdown to$/.test(before.join(" ")) || isLeft;
  });
  const bound = under ?? downTo;
  if (!bound) return null;
  const others = [...amounts, ...limits].filter((each) => each !== bound);
  const [paid, more] = others;
  const isMonthly = groups.some(({ group }) => group === "month");
  if (more || (paid && !isMonthly)) return null;
  const isExtra = f.has("extra");
  return {
    kind: "reached",
    until: under?.limit === "under" ? bound.cents - 1 : bound.cents,
    bound: `${under?.limit === "under" ? "under" : "down to"} ${show(bound.cents)}`,
    monthly: paid && !isExtra ? paid.cents : null,
    extra: paid && isExtra ? paid.cents : 0,
    loan,
  };
}

function neededIn({ today }: Desk, months: number, loan: string | null): LoanQuestion {
  const by = sameDayIn(today, months);
  return { kind: "needed", by, name: showMonth(monthOf(by)), loan };
}

function amountsOf(parts: Parts): { cents: Cents; at: number }[] {
  return [...parts.amounts, ...parts.limits].map(({ cents, at }) => ({ cents, at }));
}

function withoutAmount(
  parts: Parts,
  f: Features,
  { isMonthly, loan, desk }: { isMonthly: boolean; loan: string | null; desk: Desk },
): LoanQuestion | null {
  const [said] = parts.periods;
  const times = timesOf(parts);
  if (times) return { kind: "payoff", monthly: null, extra: 0, now: 0, loan, times: times.times };
  // "Interest until it is gone"
  if (f.has("interest") && f.has("until", "ends") && !f.has("saves") && !said)
    return { kind: "payoff", monthly: null, extra: 0, now: 0, loan, asksInterest: true };
  const isNeeded =
    (isMonthly ||
      f.has("take") ||
      (f.loan && f.has("money") && f.has("payoff", "ends") && !/\b(?:did|have|has)\b/.test(parts.said))) &&
    f.has("money", "howMany", "take") &&
    f.has("payoff", "ends", "take", "loanPaid");
  if (said && isNeeded) return neededBy(said.period, desk, loan);
  const isToCome =
    /^(?:can|could|will|would|(?:am|are) .*\bon (?:track|pace|course))\b.* (?:by|before) /.test(parts.said);
  if (said && isToCome && f.has("payoff", "ends", "gone", "loanPaid", "paid"))
    return { ...neededBy(said.period, desk, loan), yesNo: true };
  const asksWhen =
    f.has("when", "howLong") ||
    parts.marks.some(({ text }) => /how long|payoff date|(?:last|final) payment|finish line/.test(text));
  if (said || !asksWhen) return null;
  if (f.has("pace") || (f.has("payoff", "ends", "loanPaid", "gone", "paid") && (f.loan || f.has("payoff"))))
    return { kind: "payoff", monthly: null, extra: 0, now: 0, loan };
  return null;
}

/** By the end of what was said, which is still to come: "by june" is the next one. */
function neededBy(
  { to, name }: Period,
  { today }: Desk,
  loan: string | null,
): LoanQuestion & { kind: "needed" } {
  const by = coming(to, today);
  return { kind: "needed", by, name: by === to ? name : showMonth(monthOf(by)), loan };
}

/** A month or day without its year is the next one where the last one has passed. */
function coming(day: Day | null, today: Day): Day {
  let end = day ?? today;
  while (end <= today) {
    const month = addMonths(monthOf(end), 12);
    end = end === lastDayOf(monthOf(end)) ? lastDayOf(month) : `${month}${end.slice(7)}`;
  }
  return end;
}
