import type { Fact, NewFact } from "../../core/books/facts.ts";
import { dayOfInstant } from "../../core/calendar.ts";
import type { Choice, Effect } from "../../core/decide/decision.ts";
import { mentionLabel } from "../../core/decide/pieces.ts";
import { asNew } from "../../core/mending/changed.ts";
import { canMend } from "../../core/mending/fields.ts";
import { type Cents, show } from "../../core/money.ts";
import { afterthoughtOf } from "../../core/notes/afterthoughts.ts";
import type { ReadingOf } from "../../core/notes/reading.ts";
import { newestFact } from "./talk.ts";
import type { Turn } from "./turn.ts";
import { lastRoot } from "./undoing.ts";

type Fix = ReadingOf<"fix">;
type Mend = ReadingOf<"mend">;

/**
 * "make that 1 hour", "no 30 miles", "that was yesterday": a correction of the newest note that it can be about, or of
 * the message replied to. Null where there is none.
 */
export function mendOfFix(turn: Turn, reading: Fix, replyRoot: number | undefined): Mend | null {
  const { kind: _, amount: __, percent: ___, minutes, miles, date, ...rest } = reading;
  const to: NonNullable<Mend["to"]> = {
    ...(minutes === undefined ? {} : { minutes }),
    ...(miles === undefined ? {} : { miles }),
    ...(date === undefined ? {} : { date }),
  };
  const fact = newestFact(turn, (each) => isOf(each, replyRoot) && canMend(each.kind, to));
  return fact && Object.keys(to).length > 0 ? { ...rest, kind: "mend", of: { fact: fact.id }, to } : null;
}

/**
 * "no the hutch", "card not cash", "that was mom", "it's not finished" right behind a note: what that corrects of it.
 * Null where it is no such words, or the newest note is one still asked about.
 */
export function mendOfAfterthought(turn: Turn, text: string, replyRoot: number | undefined): Mend | null {
  const said = afterthoughtOf(text, turn.today);
  const root = replyRoot ?? lastRoot(turn);
  if (!said || root === null) return null;
  const { to, removed } = said;
  const fact = newestFact(turn, (each) =>
    to
      ? isOf(each, root) && canMend(each.kind, to) && !isSameAs(each, to)
      : removed!.kinds.some((kind) => kind === each.kind),
  );
  if (!fact || !isOf(fact, root) || (said.isBare && !isOfToday(turn, fact))) return null;
  const change = to ? { to } : { removed: true as const };
  return { kind: "mend", of: { fact: fact.id }, ...change, text, line: 0 };
}

/** A purchase that already is of what is said to be bought. */
function isSameAs(fact: Fact, { pieces = [] }: NonNullable<Mend["to"]>): boolean {
  const [first, ...others] = pieces;
  if (!first || others.length > 0 || fact.kind !== "buy") return false;
  return fact.data.made.every(({ name }) => name === first.name) && fact.pieces.length === (first.count ?? 1);
}

/** Whether a fact was noted today, whatever day it is of. */
export function isOfToday(turn: Turn, { note }: Fact): boolean {
  const said = turn.ledger.note(note)?.said;
  return said !== undefined && dayOfInstant(said, turn.zone()) === turn.today;
}

/** "make that 22%": the percent of the newest note, where it has one. */
export function percentFix(
  turn: Turn,
  percent: string,
  replyRoot: number | undefined,
): Extract<Effect, { kind: "amend" }> | null {
  const fact = newestFact(turn, (each) => isOf(each, replyRoot));
  const changed = fact && withPercent(fact, percent);
  return changed ? { kind: "amend", voids: [fact.id], facts: [{ fact: changed, replaces: fact.id }] } : null;
}

function isOf({ root }: Fact, replyRoot: number | undefined): boolean {
  return replyRoot === undefined || root === replyRoot;
}

function withPercent(fact: Fact, percent: string): NewFact | null {
  const same = asNew(fact);
  if (same.kind === "taxrate") return { ...same, data: { percent } };
  if (same.kind === "terms" && same.data.rate !== undefined)
    return { ...same, data: { ...same.data, rate: percent } };
  if (same.kind !== "loan") return null;
  const { rateUnknown: _, ...data } = same.data;
  return { ...same, data: { ...data, rate: percent } };
}

/** A count above this is rather an amount. */
const COUNT_MAX = 12;

/**
 * What a correction far below the amount rather means: how many pieces there were, or the fee of the sale. Null where
 * the amount itself is meant.
 */
export function notTheAmount(
  fact: Fact,
  amount: Cents,
): (Choice & { effect: Extract<Effect, { kind: "instead" }> }) | null {
  if (fact.amount === undefined || amount * 2 > fact.amount) return null;
  const mending = (label: string, to: NonNullable<Mend["to"]>) => {
    const readings: Mend[] = [{ kind: "mend", of: { fact: fact.id }, to, text: label, line: 0 }];
    return { label, effect: { kind: "instead" as const, readings } };
  };
  if (fact.kind === "sell" && fact.data.fee !== undefined)
    return mending(`Fee ${show(amount)}`, { fee: amount });
  const [first] = fact.kind === "buy" ? fact.data.made : [];
  const count = amount / 100;
  if (!first || fact.pieces.length < 2 || !Number.isInteger(count) || count > COUNT_MAX || count < 1)
    return null;
  const mention = { ...first, count };
  return mending(`${mentionLabel(mention)}, ${show(fact.amount)} in all`, { pieces: [mention] });
}

/** "30 not 24" where 24 were the miles, the minutes or the pieces of the newest note: no money, yet read like it. */
export function mendOfMeasure(turn: Turn, reading: Mend): Mend | null {
  const { of = {}, to = {} } = reading;
  const isBare = Object.keys(of).join() === "amount" && Object.keys(to).join() === "amount";
  const fact = newestFact(turn);
  if (!isBare || !fact || fact.amount === of.amount) return null;
  const [was, is] = [of.amount! / 100, to.amount! / 100];
  const changed = (next: NonNullable<Mend["to"]>): Mend => ({ ...reading, of: { fact: fact.id }, to: next });
  if (fact.kind === "drive" && Number(fact.data.miles) === was) return changed({ miles: String(is) });
  if (!Number.isInteger(is)) return null;
  if (fact.kind === "work" && fact.data.minutes === was) return changed({ minutes: is });
  const [first] = fact.kind === "buy" ? fact.data.made : [];
  if (!first || fact.pieces.length !== was || is > COUNT_MAX) return null;
  return changed({ pieces: [{ ...first, count: is }] });
}
