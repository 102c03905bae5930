import type { Books } from "../books/books.ts";
import type { Fact, FactKind } from "../books/facts.ts";
import { labelOf } from "../books/label.ts";
import type { Day } from "../calendar.ts";
import { showDay } from "../calendar.ts";
import { verbOf } from "../decide/decide.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import type { RetireHow } from "../notes/reading.ts";
import { sidesOf } from "../verbs/trade.ts";
import { type Desk, isIn, type Subject } from "./desk.ts";
import { passes } from "./filters.ts";
import type { Filter, Period } from "./query.ts";
import { isOwnersFact } from "./sight.ts";

/** One recorded thing as a list shows it. `value`: cents, null where the note has no amount. */
export interface NoteLine {
  fact: Fact;
  date: Day;
  /** What happened, without day and amount: "sold #5 black bench". */
  label: string;
  numbers: readonly number[];
  value: Cents | null;
  /** What it is put in order by: its amount, else its miles or minutes. */
  size: number;
}

/** Kinds of fact; "fee" stands for what a sale cost in fees, "return" for a piece come back; pieces go in three ways. */
export type NoteKind = Exclude<FactKind, "retire"> | "fee" | "return" | RetireHow;

/** Which notes are listed. */
export interface NotesAsked {
  /** Null for all. */
  kinds: ReadonlySet<NoteKind> | null;
  filters: readonly Filter[];
  period: Period | null;
  /** Several that do not touch, in the place of the one. */
  apart?: readonly Period[];
  /** Only so many of the last recorded; null: all, by their days. */
  last: number | null;
  /** Those without an amount are none: a hold with no deposit. */
  withAmount?: true;
  /** Only so many from one end by their days, or the day of that one, or its age: "my first 3 sales", "when did i last sell". */
  ends?: {
    /** "Highest" and "lowest" go by the amount: "the biggest tip". */
    from: "newest" | "oldest" | "highest" | "lowest";
    count: number;
    asksDay: boolean;
    isAge: boolean;
  };
}

/** What a fact tells, in a few words. */
function noteLabel(books: Books, fact: Fact): string {
  const pieces = labelOf(books, fact.pieces);
  const label = verbOf(fact.kind)?.listed?.(fact as never, pieces, books);
  return label ?? `${fact.kind}${pieces ? ` ${pieces}` : ""}`;
}

/** The pieces of a fact that are asked of: of a trade those given where sales are, those got where purchases are. */
function piecesAsked(fact: Fact, kinds: NotesAsked["kinds"]): readonly number[] {
  if (fact.kind !== "trade" || !kinds || kinds.has("trade")) return fact.pieces;
  const { gave, got } = sidesOf(fact);
  return kinds.has("sell") ? gave : kinds.has("buy") && !kinds.has("spend") ? got : [];
}

/** A trade is a sale of what was given and a purchase of what was got. */
function isTrade(fact: Fact, kinds: ReadonlySet<NoteKind>): boolean {
  return fact.kind === "trade" && piecesAsked(fact, kinds).length > 0;
}

function lineOf(
  { books, index }: Desk,
  fact: Fact,
  { isFee, isEnd, kinds }: { isFee: boolean; isEnd: boolean; kinds: NotesAsked["kinds"] },
): NoteLine {
  const numbers = piecesAsked(fact, kinds);
  const fee = fact.kind === "sell" ? (fact.data.fee ?? 0) : 0;
  // "The biggest price cut": by how much, and not to what.
  const cutBy = isEnd ? index.cutBy.get(fact.id) : undefined;
  const label =
    cutBy !== undefined
      ? `price cut of ${labelOf(books, fact.pieces)}`
      : isFee
        ? `fee on ${labelOf(books, fact.pieces)}`
        : noteLabel(books, fact);
  const isGot = fact.kind === "trade" && kinds?.has("buy") === true && !kinds.has("trade");
  const price = numbers.reduce((sum, number) => sum + (books.pieces.get(number)?.price ?? 0), 0);
  // "The lowest price i ever listed": of each, where several were put up at once.
  const isEach = isEnd && fact.kind === "list" && numbers.length > 1 && fact.amount !== null;
  const amount = isEach ? Math.round(fact.amount! / numbers.length) : fact.amount;
  const value = isFee ? fee : isGot ? price : (cutBy ?? amount ?? null);
  const size =
    value ?? (fact.kind === "drive" ? Number(fact.data.miles) : fact.kind === "work" ? fact.data.minutes : 0);
  return { fact, date: fact.day, label: isEach ? `${label}, each` : label, numbers, value, size };
}

/** Whether a fact is among those asked for, any of its pieces being enough. */
function isAsked(desk: Desk, fact: Fact, { kinds, filters, period, apart, withAmount }: NotesAsked): boolean {
  const kind = fact.kind === "retire" ? fact.data.how : fact.kind;
  const isReturn = kinds?.has("return") === true && fact.kind === "refund" && fact.data.returned === true;
  const isFeeSpent = kinds?.has("fee") === true && fact.kind === "spend" && fact.data.category === "fees";
  const isOther = isReturn || isFeeSpent || (kinds && (isTrade(fact, kinds) || isFee(fact, kinds)));
  if (kinds && !kinds.has(kind) && !isOther) return false;
  // What was put up in price is no price cut.
  if (fact.kind === "reprice" && kinds?.has("reprice") && !desk.index.cutBy.has(fact.id)) return false;
  if (!(apart ?? [period]).some((each) => isIn(each, fact.day)) || (withAmount && !fact.amount)) return false;
  if (desk.hidesMoney && fact.author !== desk.me && isOwnersFact(fact.kind)) return false;
  if (filters.length === 0) return true;
  const numbers = piecesAsked(fact, kinds);
  const pieces = numbers.length > 0 ? numbers.map((number) => desk.books.pieces.get(number) ?? null) : [null];
  const loan =
    fact.kind === "pay" || fact.kind === "statement" || fact.kind === "loan" ? fact.data.loan : undefined;
  return pieces.some((piece) => {
    const subject: Subject = {
      day: fact.day,
      piece,
      fact,
      units: fact.amount ?? 0,
      ...(loan ? { loan } : {}),
    };
    return passes(subject, filters, { desk, measure: "spent", units: fact.amount ?? null });
  });
}

/** A sale is among expenses for its fee alone. */
function isFee(fact: Fact, kinds: NotesAsked["kinds"]): boolean {
  return kinds?.has("fee") === true && fact.kind === "sell" && (fact.data.fee ?? 0) > 0;
}

/** The notes asked for, newest first: by their days, or, where only the last are asked for, as they were recorded. */
export function listNotes(desk: Desk, asked: NotesAsked): NoteLine[] {
  const { kinds, last } = asked;
  const found: Fact[] = [];
  const { facts } = desk.books;
  const { places } = desk.index;
  const from = asked.period?.from ?? null;
  // The place of the earliest recorded one that is kept: what was recorded before it needs no further look.
  let least = -1;
  // Facts stand in the order of their days: from the newest back, as far as the period goes.
  for (let at = facts.length - 1; at >= 0; at -= 1) {
    if (places[at]! < least) continue;
    const fact = facts[at]!;
    if (from !== null && fact.day < from) break;
    if (!isAsked(desk, fact, asked)) continue;
    if (last === null) found.push(fact);
    else keepLatest(found, fact, last);
    if (last !== null && found.length >= last) least = found.at(-1)!.place;
  }
  const { ends } = asked;
  const isEnd = ends?.from === "highest" || ends?.from === "lowest";
  if (ends?.from === "oldest") found.reverse();
  const lines = (some: readonly Fact[]): NoteLine[] =>
    some.map((fact) =>
      lineOf(desk, fact, { isFee: isFee(fact, kinds) && !kinds?.has("sell"), isEnd, kinds }),
    );
  if (!isEnd) return lines(ends ? found.slice(0, ends.count) : found);
  const turn = ends!.from === "highest" ? 1 : -1;
  return lines(found)
    .sort((a, b) => turn * (b.size - a.size))
    .slice(0, ends!.count);
}

/** Puts a fact among the last recorded ones, of which only so many are kept. */
function keepLatest(found: Fact[], fact: Fact, most: number): void {
  const isLater = (other: Fact): boolean =>
    other.place < fact.place || (other.place === fact.place && other.id < fact.id);
  const at = found.findIndex(isLater);
  found.splice(at < 0 ? found.length : at, 0, fact);
  if (found.length > most) found.pop();
}

/** A line as a reply shows it: "Sat May 9: sold #5 black bench 157.00". */
export function showNoteLine({ date, label, value }: NoteLine, today: Day): string {
  return `${showDay(date, today)}: ${label}${value === null ? "" : ` ${show(value)}`}`;
}
