import type { Books } from "../books/books.ts";
import type { Fact } from "../books/facts.ts";
import type { MendField } from "../books/rules.ts";
import { listPriceOf } from "../books/shares.ts";
import { addDays, type Day } from "../calendar.ts";
import type { Choice, Effect, Looking } from "../decide/decision.ts";
import { mentionLabel } from "../decide/pieces/mention-words.ts";
import { byNumbers, mentionsOf } from "../decide/pieces/mentioned.ts";
import { type Cents, show } from "../money.ts";
import { inMeasure } from "../notes/mends/mended.ts";
import type { Mention, Reading, ReadingOf } from "../notes/reading.ts";
import { eitherOf } from "../notes/unclear.ts";
import { bears, language } from "../notes/verbs.ts";
import { HOUSEHOLD } from "../notes/words/people.ts";
import { WAS } from "../notes/words/pieces.ts";
import { A_WEEKDAY } from "../notes/words/times.ts";
import { saysAny } from "../notes/words/words.ts";
import { otherThan } from "./changed.ts";
import { canMend, type MendTo, mendFieldsOf } from "./fields.ts";
import { isMeant, isOfWhat } from "./meant.ts";

/* Corrections of the newest note: which fact they are about, and what they make of it. */

type Mend = ReadingOf<"mend">;
type Fix = ReadingOf<"fix">;

/** What corrects the newest note and names nothing of it, with the fact that it is about; null where it is about none. */
export function mendOfNewest(reading: Mend | Fix, desk: Looking): Reading | null {
  const { past } = desk;
  if (!past) return null;
  if (reading.kind === "fix") return isOwnValue(reading, past.before()) ? reading : null;
  const { bare, to, ...rest } = reading;
  const root = past.touched();
  // "i never listed the trunk" names what it is about.
  const isSaid = reading.removed === true || to?.by !== undefined;
  const isNamed = isSaid && (reading.of?.pieces ?? reading.of?.what) !== undefined;
  // "returned two of the pulls, got 8.10 back" names what was spent, however long ago.
  const isSpent = to?.more !== undefined && reading.of?.what !== undefined;
  const isNear = (each: Fact) => isSpent || (isNamed ? past.isToday(each) : each.root === root);
  const fact = past.newest((each) => isNear(each) && isAbout(each, reading, desk));
  if (!fact || (bare && !isSpent && past.replied === null && !past.isToday(fact))) return null;
  const of = { fact: fact.id };
  if (to?.who !== undefined) return { ...rest, of, to: whoIn(fact, to.who)! };
  if (to?.swap) return { ...rest, of, to: { [nameField(fact, to.swap.then)!]: to.swap.now } };
  const isCount = to?.pieces?.some(({ it }) => it) === true;
  if (isCount && fact.kind === "buy") return otherCount(reading, fact, to!.pieces!);
  // "two of them" alone tells what it was for of nothing.
  if (isCount && bare) return null;
  const kept = to && untilThat(fact, to, reading.text, desk.today);
  if (kept) return { ...rest, of, to: kept };
  if (to?.also) {
    const isOne = fact.pieces.length === 1;
    return isOne ? { ...rest, of, to: { pieces: [...byNumbers(fact.pieces), to.also] } } : null;
  }
  if (to?.more === undefined) return { ...rest, of, ...(to ? { to } : {}) };
  // "20 under asking" of a sale that is noted at less already
  const isUnderAsking = fact.kind === "sell" && reading.of?.kinds !== undefined;
  if (isUnderAsking && fact.amount !== listPriceOf(fact.pieces.map((each) => desk.books.pieces.get(each)!)))
    return null;
  const amount = (fact.amount ?? 0) + to.more;
  return amount < 0 ? null : { ...rest, of, ...(amount === 0 ? { removed: true } : { to: { amount } }) };
}

/** "it was dad who bought it": whom it was sold to or is held for, else who of the household bought it. */
function whoIn({ kind }: Fact, who: string): MendTo | null {
  if (kind === "sell" || kind === "hold") return { buyer: who };
  return kind === "buy" && HOUSEHOLD.has(who) ? { by: who } : null;
}

/** The field of a note that holds that name. */
function nameField(fact: Fact, name: string): MendField | undefined {
  const data = fact.data as Record<string, unknown>;
  return mendFieldsOf(fact.kind).find((field) => data[field] === name);
}

/** "no wait we kept it", "no the other one's done": what of the newest note is another, where that is of the same kind. */
export function mendOfRestated(reading: Reading, { past, books }: Looking): Reading | null {
  const fact = past?.before();
  if (!fact || fact.kind !== reading.kind) return null;
  const { text, line, date } = reading;
  const said = reading as unknown as Record<string, unknown>;
  const had = fact.data as Record<string, unknown>;
  const main = language().grammars.get(reading.kind)?.main;
  const amount = main ? (said[main] as Cents | undefined) : undefined;
  const isOther = amount !== undefined && amount !== fact.amount;
  const pieces = mentionsOf(reading).filter(({ it }) => !it);
  const named = pieces.filter(({ other }) => !other);
  const isSame = isOfPieces(fact, named, books);
  const fields = (["how", "method"] as const).filter(
    (field) => said[field] !== undefined && said[field] !== had[field],
  );
  const to: MendTo = {
    ...(isOther ? { amount } : {}),
    ...(date === undefined ? {} : { date }),
    ...(reading.by === undefined ? {} : { by: reading.by }),
    ...(pieces.length > 0 && !(isSame && named.length > 0) ? { pieces } : {}),
    ...Object.fromEntries(fields.map((field) => [field, said[field]])),
  };
  if (Object.keys(to).length === 0 || !canMend(fact.kind, to)) return null;
  const mend: Mend = { kind: "mend", of: { fact: fact.id }, to, text, line };
  // "no i sold the round one", and no price: of the same sale.
  if (
    isSame ||
    (reading.missing?.includes("price") && fact.kind === "sell" && mentionsOf(reading).length === 1)
  )
    return mend;
  // "no, sold the desk 90": the desk in the place of the chest, or the desk as well.
  return eitherOf([mend, { ...reading, asNew: true }], { text, line }, "newOrOld");
}

/** "two of them": as many of what was bought, for what was paid in all or for each. */
function otherCount(
  { text, line }: Mend,
  fact: Extract<Fact, { kind: "buy" }>,
  said: readonly Mention[],
): Reading | null {
  const [first] = fact.data.made;
  const [{ count = 0 } = {}, ...others] = said;
  if (!first || others.length > 0 || fact.data.made.some(({ name }) => name !== first.name)) return null;
  const mention = { ...first, count };
  const mend = (amount: Cents): Mend => ({
    kind: "mend",
    of: { fact: fact.id },
    to: { pieces: [mention], amount },
    text: `${mentionLabel(mention)}, ${show(amount)} in all`,
    line,
  });
  const paid = fact.amount ?? 0;
  const each = fact.pieces.length === 1 && paid > 0 ? [mend(paid * count)] : [];
  return eitherOf([mend(paid), ...each], { text, line }, "priceOfBoth");
}

/** "only 1h": the note has such a value, be it miles said as "30"; "30 each": it is of several. */
function isOwnValue({ amount, minutes, miles, each }: Fix, fact: Fact | undefined): boolean {
  if (!fact || (each && fact.pieces.length < 2)) return false;
  if (amount === undefined) return canMend(fact.kind, valuesOf({ minutes, miles }));
  return fact.amount !== undefined || canMend(fact.kind, { miles: "" });
}

function isAbout(fact: Fact, { of = {}, to, removed }: Mend, { books }: Looking): boolean {
  if ((removed || of.kinds) && !of.kinds?.some((kind) => kind === fact.kind)) return false;
  if (of.what !== undefined && !isOfWhat(fact, of.what)) return false;
  if (of.amount !== undefined && of.amount !== fact.amount) return false;
  if (of.minutes !== undefined && !(fact.kind === "work" && fact.data.minutes === of.minutes)) return false;
  if (removed) return isOfPieces(fact, of.pieces, books);
  if (to?.swap) return nameField(fact, to.swap.then) !== undefined;
  if (to?.who !== undefined) return whoIn(fact, to.who) !== null;
  if (!to || !canMend(fact.kind, to) || isSameAs(fact, to)) return false;
  if (to.more !== undefined && fact.amount === undefined) return false;
  if (
    to.pieces?.length === 0 &&
    (!bears(fact.kind as Reading["kind"], "piece or none") || fact.pieces.length === 0)
  )
    return false;
  return isOfPieces(fact, of.pieces, books);
}

function isOfPieces(fact: Fact, said: readonly Mention[] | undefined, books: Books): boolean {
  const pieces = fact.pieces.map((number) => books.pieces.get(number)!);
  return (said ?? []).every((mention) => pieces.some((piece) => isMeant(mention, piece)));
}

/** A purchase that already is of what is said to be bought. */
function isSameAs(fact: Fact, { pieces = [] }: MendTo): boolean {
  const [first, ...others] = pieces;
  if (!first || others.length > 0 || fact.kind !== "buy") return false;
  return fact.data.made.every(({ name }) => name === first.name) && fact.pieces.length === (first.count ?? 1);
}

/** The values that were said. */
export const valuesOf = (values: { [F in keyof MendTo]?: MendTo[F] | undefined }): MendTo =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

/** "more like 3" behind work, and nothing of money: so many hours or minutes, by the rule of any other correction of work. */
export function asTime(fix: Fix, { past, books }: Looking): Fix {
  const { amount, ...rest } = fix;
  const fact = past?.newest();
  const isOther = ({ root, kind, id }: Fact): boolean =>
    root === fact?.root && (kind !== "work" || id !== fact.id);
  if (
    amount === undefined ||
    fix.fact !== undefined ||
    fact?.kind !== "work" ||
    fact.root !== past!.touched()
  )
    return fix;
  if (books.facts.some(isOther)) return fix;
  const mend = { of: { kind: "work" as const }, to: { amount } as MendTo };
  inMeasure(mend);
  return { ...rest, minutes: mend.to.minutes! };
}

/** "make that 1 hour", "no 30 miles", "that was yesterday", "make that 22%": the newest note that it can be about. */
export function mendOfFix(reading: Fix, { past, books, today }: Looking): Mend | null {
  const { kind: _, amount, minutes, miles, percent, date, fact: id, isTold, ...rest } = reading;
  const to = valuesOf({ minutes, miles, percent, date, ...(id === undefined ? {} : { amount }) });
  const fits = (each: Fact) => canMend(each.kind, to);
  // A rate of long ago is not what was meant.
  const newest = isTold ? past?.before() : percent === undefined ? past?.newest(fits) : past?.newest();
  const fact = id === undefined ? newest : books.facts.find((each) => each.id === id);
  // "make that saturday" behind a hold: so long, and no other day that it began.
  const kept = fact && untilThat(fact, to, reading.text, today);
  if (fact && kept) return { ...rest, kind: "mend", of: { fact: fact.id }, to: kept };
  return fact && fits(fact) && Object.keys(to).length > 0
    ? { ...rest, kind: "mend", of: { fact: fact.id }, to }
    : null;
}

/** Of a hold a day that is still to come is until when it is kept; null of another that has been. */
export function untilThat({ kind }: Fact, to: MendTo, text: string, today: Day): MendTo | null {
  const { date, ...others } = to;
  if (kind !== "hold" || date === undefined || Object.keys(others).length > 0 || saysAny(text, WAS))
    return null;
  const until = date > today ? date : A_WEEKDAY.test(text) ? addDays(date, WEEK) : null;
  return until === null ? null : { until };
}
const WEEK = 7;

/** A count above this is rather an amount. */
const COUNT_MAX = 12;

/** "30 not 24" where 24 were the miles, the minutes or the pieces of the newest note: no money, yet read like it. */
export function asMeasure(reading: Mend, { past, books }: Looking): Mend {
  const { of = {}, to = {} } = reading;
  const isBare = Object.keys(of).join() === "amount" && Object.keys(to).join() === "amount";
  const fact = isBare ? past?.newest() : undefined;
  if (!fact) return reading;
  // "25 not 20" where an older note is of 20 too.
  if (fact.amount === of.amount) return { ...reading, of: { fact: fact.id } };
  const [was, is] = [of.amount! / 100, to.amount! / 100];
  const changed = (next: MendTo): Mend => ({ ...reading, of: { fact: fact.id }, to: next });
  if (fact.kind === "drive" && Number(fact.data.miles) === was) return changed({ miles: String(is) });
  if (!Number.isInteger(is)) return reading;
  if (fact.kind === "work" && fact.data.minutes === was) return changed({ minutes: is });
  if (fact.pieces.length !== was || is > COUNT_MAX) return reading;
  const [first] = fact.kind === "buy" ? fact.data.made : [];
  if (first) return changed({ pieces: [{ ...first, count: is }] });
  // "three not two" of what was sold: of the same name, those of the note first.
  const all = [...fact.pieces, ...otherThan(fact.pieces, books)];
  return all.length < is ? reading : changed({ pieces: byNumbers(all.slice(0, is)) });
}

/**
 * What a correction far below the amount rather means: how many pieces there were, or the fee of the sale. Null where
 * the amount itself is meant.
 */
export function notTheAmount(
  fact: Fact,
  amount: Cents,
): (Choice & { effect: Extract<Effect, { kind: "instead" }> }) | null {
  if (fact.amount === undefined || amount * 2 > fact.amount) return null;
  const mending = (label: string, to: MendTo) => {
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
