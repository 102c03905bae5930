import type { Day } from "../calendar.ts";
import { assertCents, type Cents } from "../money.ts";
import type { Category, DaysInYear, PaymentOrder, RetireHow } from "../notes/reading.ts";

/**
 * What a fact of each kind holds beside its amount; later kinds stand in their verbs' files. `amount` (cents) of the fact itself is: buy, list, sell:
 * the whole price; spend, refund, income, pay: the amount; reprice: the new price, or the cut where `cut` is
 * set; hold: the deposit (absent: none); fallthrough: refunded, or kept where `kept` is set; loan, statement:
 * the balance; goal: the money goal; an unpaid refund without one: all that is owed; sent: profit declared as already sent to the loan.
 */
export interface FactData {
  /** `made` describes the new pieces in the order of the fact's `pieces`; `set`: kept and priced together. */
  buy: { made: { name: string; traits: string[] }[]; set?: true; method?: string; source?: string };
  spend: { what: string; category: Category; method?: string };
  work: { minutes: number; what?: string };
  start: Record<never, never>;
  finish: Record<never, never>;
  list: { place?: string };
  reprice: { cut?: true };
  /** `agreed`: the whole price that the buyer is to pay, deposit included. */
  hold: { buyer?: string; until?: Day; method?: string; agreed?: Cents };
  fallthrough: { kept?: true };
  /** `owed`: what of the price is still to come. */
  sell: {
    fee?: Cents;
    method?: string;
    buyer?: string;
    deposit?: "applied" | "refunded" | "kept";
    owed?: Cents;
  };
  /** `unpaid`: what was owed never comes, and no cash goes out. */
  refund: { returned?: true; unpaid?: true };
  retire: { how: RetireHow };
  income: { stream: string; method?: string };
  pay: { loan?: string };
  /** `rate`: yearly percent as a plain decimal; `rateUnknown`: recorded at 0 until the owner answers. */
  loan: { loan: string; rate: string; rateUnknown?: true };
  /** `loan` is absent only where `order` alone is set. */
  terms: { loan?: string; rate?: string; days?: DaysInYear; order?: PaymentOrder };
  statement: { loan: string };
  /** `miles`: a plain decimal. */
  drive: { miles: string };
  goal: { per: "month" | "year"; pieces?: number };
  taxrate: { percent: string };
  /** Imported history's profit that had already gone to the loan, or its `loss`: evens out what is earmarked, moves no cash. */
  sent: { loss?: true };
}

export type FactKind = keyof FactData;

export interface FactCommon {
  /** Row id, growing in the order recorded. */
  id: number;
  day: Day;
  /** Order within a day: the id of the fact first recorded in this place (its own, unless a replacement). */
  place: number;
  /** Who said it (member id). */
  author: number;
  /** The message that recorded it. */
  note: number;
  /** The message that the fact is an amended part of: `note` itself unless a fix replaced it. */
  root: number;
  /** The pieces it is about, in order: for a buy the new pieces' numbers. */
  pieces: number[];
  /** Cents, where the kind has an amount. */
  amount?: Cents;
  /** Who of the household did it, where the note said so. */
  by?: string;
  /** The place of the standing note that this was recorded for: an instance stands first on its day. */
  repeat?: number;
}

export type FactOf<K extends FactKind> = { kind: K; data: FactData[K] } & FactCommon;
/** Something that happened, dated; never changed or deleted once recorded. */
export type Fact = { [K in FactKind]: FactOf<K> }[FactKind];
/** A fact as decided, before the ledger gives it an id, a place and its message. */
export type NewFact = {
  [K in FactKind]: { kind: K; data: FactData[K] } & Pick<
    FactCommon,
    "day" | "pieces" | "amount" | "by" | "repeat"
  > & {
      /** A replacement that stands last on its day: what it is about came on the books after the one before it. */
      last?: true;
    };
}[FactKind];

/**
 * The order in which facts fold: by day; on a day the instances of standing notes first, by the age of these,
 * whenever they were recorded; then in the order first recorded.
 */
export function inFoldOrder(a: Fact, b: Fact): number {
  if (a.day !== b.day) return a.day < b.day ? -1 : 1;
  return ageOfRepeat(a) - ageOfRepeat(b) || a.place - b.place || a.id - b.id;
}

/** An instance comes before all that a person noted that day. */
function ageOfRepeat(fact: Fact): number {
  return fact.repeat ?? Number.MAX_SAFE_INTEGER;
}

/** Who and what records a fact, and the id it gets. */
export type Recording = Pick<FactCommon, "id" | "author" | "note">;

/** A new fact, last in the order of recording; `root`: the message that it is a part of. */
export function recordedAs(fact: NewFact, by: Recording, root: number): Fact {
  return alike(fact, by, { place: by.id, root, repeat: fact.repeat });
}

/**
 * A fact written out field by field, as those that come from the file are: facts that are not alike inside make every
 * look through ten years of them slow.
 */
function alike(
  { kind, day, pieces, data, amount, by: who }: NewFact,
  { id, author, note }: Recording,
  { place, root, repeat }: Pick<FactCommon, "place" | "root"> & { repeat: number | undefined },
): Fact {
  const fact: Record<string, unknown> = { id, kind, day, place, author, note, root, pieces, data };
  if (amount !== undefined) fact["amount"] = amount;
  if (who !== undefined) fact["by"] = who;
  if (repeat !== undefined) fact["repeat"] = repeat;
  return fact as unknown as Fact;
}

/**
 * A fact in the place of one that no longer stands: it keeps the place in the order, the message, and the standing
 * note of the one before it. Its day is its own, so that another day sorts it by the order first recorded.
 */
export function recordedInPlaceOf(before: Fact, fact: NewFact, by: Recording): Fact {
  const place = fact.last ? by.id : before.place;
  return alike(fact, by, { ...before, place, repeat: before.repeat ?? fact.repeat });
}

/** The amount of a fact whose kind has one, in cents. Missing, negative or broken amounts are bugs and throw. */
export function amountOf(fact: Readonly<FactCommon>): Cents {
  if (fact.amount === undefined) throw new Error(`fact ${fact.id} has no amount`);
  assertCents(fact.amount);
  if (fact.amount < 0) throw new Error(`fact ${fact.id} has a negative amount`);
  return fact.amount;
}

/** The numbers of the pieces that a fact brings onto the books: all of a buy's, the last of a trade's. */
export function newPiecesOf(fact: Pick<Fact, "kind" | "pieces" | "data">): number[] {
  return "made" in fact.data ? fact.pieces.slice(-fact.data.made.length) : [];
}

/** The piece of a fact that is about one piece alone: cash that moves for several belongs to none of them. */
export function onlyPiece(fact: Readonly<FactCommon>): number | undefined {
  return fact.pieces.length === 1 ? fact.pieces[0] : undefined;
}

/** The facts of a local day, the one told last first. They stand in the order of their days. */
export function factsOfDay(facts: readonly Fact[], day: Day): Fact[] {
  const found: Fact[] = [];
  for (let at = facts.length - 1; at >= 0 && facts[at]!.day >= day; at -= 1)
    if (facts[at]!.day === day) found.push(facts[at]!);
  return found;
}
