import { type Day, type Month, monthOf } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { amountOf, type Fact, inFoldOrder } from "./facts.ts";
import { addToMonth, BooksInHand, type Changes } from "./hand.ts";
import type { Posting } from "./postings.ts";

/** A part of the books that was folded by itself. */
export interface Exchange {
  /** Facts that no longer stand. */
  removed: readonly Fact[];
  /** All facts that stand of `pieces` (and, where `isLedgerWide`, all that concern the whole ledger), folded. */
  part: BooksInHand;
  pieces: ReadonlySet<number>;
  isLedgerWide: boolean;
}

/** What of the books is kept by piece, by fact or by month. All else is changed by ledger-wide facts alone. */
const KEPT_APART: ReadonlySet<string> = new Set([
  "facts",
  "pieces",
  "months",
  "postings",
  "story",
  "exactMiles",
  "byId",
  "flipped",
  "buyers",
]);

/** Puts a part that was folded anew in the place of what the books have of it. Gives what is not the same any more. */
export function exchange(books: BooksInHand, { removed, part, pieces, isLedgerWide }: Exchange): Changes {
  const changed: Changes = { pieces: [], loans: [], facts: [], mayReplace: true };
  const origins = new Map([...pieces].map((number) => [number, originOf(books, number)]));
  const last = [...books.pieces.keys()].at(-1);
  const months = new Set<Month>();
  const added = part.facts.filter((fact) => !books.byId.has(fact.id));
  for (const fact of removed) dropFact(books, fact, { months, changed });
  placeFacts(books, removed, added);
  for (const fact of removed) books.countBuyer(fact, -1);
  for (const fact of added) books.countBuyer(fact);
  for (const fact of part.facts) takeFact(books, fact, { part, months, changed });
  for (const month of months) if (!isTouched(books, month)) books.months.delete(month);
  const isNew = (number: number) => origins.get(number) === null;
  for (const number of pieces) if (!isNew(number)) takePiece(books, number, { part, changed });
  // A map keeps the order in which keys came: the part has its pieces in the order of the fold.
  const newcomers = [...part.pieces.keys()].filter(isNew);
  for (const number of newcomers) takePiece(books, number, { part, changed });
  const moved = [...origins].flatMap(([number, origin]) => {
    const now = originOf(books, number);
    const isMoved = origin !== null && now !== null && (now !== origin || sharesItsPlace(books, number));
    return isMoved ? [number] : [];
  });
  const [first] = newcomers;
  const isLast = first === undefined || !last || comesBefore(books, last, first);
  if (moved.length > 0 || !isLast) orderPieces(books, [...moved, ...newcomers]);
  if (isLedgerWide) {
    changed.loans = differingKeys(books.loans, part.loans);
    Object.assign(books, ledgerWideOf(part));
  }
  return changed;
}

/** Books of their own that hold the same, to be changed while the others stay. */
export function copyOf(books: BooksInHand): BooksInHand {
  const copy = new BooksInHand();
  fill(copy.facts, books.facts);
  for (const [number, piece] of books.pieces) copy.pieces.set(number, { ...piece });
  for (const [month, sums] of books.months) copy.months.set(month, { ...sums });
  for (const [number, ids] of books.story) copy.story.set(number, [...ids]);
  for (const name of ["postings", "exactMiles", "byId", "flipped", "buyers"] as const) {
    const to: Map<unknown, unknown> = copy[name];
    for (const [key, value] of books[name]) to.set(key, value);
  }
  Object.assign(copy, structuredClone(ledgerWideOf(books)));
  return copy;
}

/** The first index at which `isFrom` holds, where it holds from some index on; the length where it never does. */
export function firstIndex<T>(list: readonly T[], isFrom: (each: T) => boolean): number {
  let [low, high] = [0, list.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (isFrom(list[middle]!)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The facts, of some in fold order, from one day through another (both counted). */
export function factsOf(facts: readonly Fact[], { from, through }: { from: Day; through: Day }): Fact[] {
  return facts.slice(
    firstIndex(facts, ({ day }) => day >= from),
    firstIndex(facts, ({ day }) => day > through),
  );
}

interface Touched {
  months: Set<Month>;
  changed: Changes;
}

function dropFact(books: BooksInHand, fact: Fact, { months, changed }: Touched): void {
  const legs = books.postings.get(fact.id);
  if (legs) changed.facts.push(fact.id);
  count(books, fact, { legs, flipped: books.flipped.get(fact.id), declared: declaredBy(fact) }, -1);
  for (const of of [books.postings, books.flipped, books.byId]) of.delete(fact.id);
  months.add(monthOf(fact.day));
}

function takeFact(
  books: BooksInHand,
  fact: Fact,
  { part, months, changed }: Touched & { part: BooksInHand },
): void {
  const declared = declaredBy(fact);
  const had = books.byId.has(fact.id) ? declared : 0;
  const before = { legs: books.postings.get(fact.id), flipped: books.flipped.get(fact.id), declared: had };
  const after = { legs: part.postings.get(fact.id), flipped: part.flipped.get(fact.id), declared };
  books.byId.set(fact.id, fact);
  const isPostedAlike = isSame(before.legs, after.legs);
  if (!isPostedAlike) changed.facts.push(fact.id);
  else if (before.flipped === after.flipped && had === declared) return;
  count(books, fact, before, -1);
  count(books, fact, after, 1);
  setOrDelete(books.postings, fact.id, after.legs);
  setOrDelete(books.flipped, fact.id, after.flipped);
  months.add(monthOf(fact.day));
}

/** Profit that a fact declares as sent: kept by month, though nothing is posted for it. */
function declaredBy(fact: Fact): Cents {
  if (fact.kind !== "sent") return 0;
  return fact.data.loss ? -amountOf(fact) : amountOf(fact);
}

/** Adds what a fact did to its month, or takes it out again. */
function count(
  books: BooksInHand,
  fact: Fact,
  {
    legs = [],
    flipped = 0,
    declared,
  }: { legs: readonly Posting[] | undefined; flipped: number | undefined; declared: Cents },
  times: 1 | -1,
): void {
  const sums = books.month(monthOf(fact.day));
  for (const leg of legs) addToMonth(sums, leg, fact.kind, times);
  sums.flipped += times * flipped;
  sums.declaredSent += times * declared;
}

/** Whether any fact of a month has posted or flipped something: else the month has no row. */
function isTouched(books: BooksInHand, month: Month): boolean {
  for (let index = firstIndex(books.facts, ({ day }) => monthOf(day) >= month); ; index += 1) {
    const fact = books.facts[index];
    if (!fact || monthOf(fact.day) !== month) return false;
    if (books.postings.has(fact.id) || books.flipped.has(fact.id) || fact.kind === "sent") return true;
  }
}

/** So many are taken out or put in one by one; for more of them the whole list is gone through once. */
const FEW = 50;

function placeFacts(books: BooksInHand, removed: readonly Fact[], added: readonly Fact[]): void {
  const { facts } = books;
  if (removed.length > FEW) {
    const gone = new Set(removed.map((fact) => fact.id));
    fill(
      facts,
      facts.filter((fact) => !gone.has(fact.id)),
    );
  } else for (const fact of removed) facts.splice(placeIn(facts, fact), 1);
  if (added.length > FEW) fill(facts, [...facts, ...added].sort(inFoldOrder));
  else for (const fact of added) facts.splice(placeIn(facts, fact), 0, fact);
}

function placeIn(facts: readonly Fact[], fact: Fact): number {
  return firstIndex(facts, (other) => inFoldOrder(other, fact) >= 0);
}

function takePiece(
  books: BooksInHand,
  number: number,
  { part, changed }: { part: BooksInHand; changed: Changes },
): void {
  if (!isSame(books.pieces.get(number), part.pieces.get(number))) changed.pieces.push(number);
  setOrDelete(books.pieces, number, part.pieces.get(number));
  setOrDelete(books.story, number, part.story.get(number));
  setOrDelete(books.exactMiles, number, part.exactMiles.get(number));
}

/** The fact that put a piece on the books: the first one that names it. */
function firstFactOf(books: BooksInHand, number: number): Fact | undefined {
  const id = books.story.get(number)?.[0];
  return id === undefined ? undefined : books.byId.get(id);
}

/** Where in the fold a piece came onto the books. */
function originOf(books: BooksInHand, number: number): string | null {
  const fact = firstFactOf(books, number);
  return fact ? `${fact.day} ${fact.repeat} ${fact.place} ${fact.pieces.indexOf(number)}` : null;
}

/** The order in which pieces came onto the books. */
function inOrderOfOrigin(books: BooksInHand, number: number, other: number): number {
  const [one, two] = [firstFactOf(books, number), firstFactOf(books, other)];
  if (!one || !two) return 0;
  return inFoldOrder(one, two) || one.pieces.indexOf(number) - two.pieces.indexOf(other);
}

/** Whether a piece came onto the books before another. */
const comesBefore = (books: BooksInHand, number: number, other: number): boolean =>
  inOrderOfOrigin(books, number, other) < 0;

/** A message edited into several facts has them all in one place. */
function sharesItsPlace(books: BooksInHand, number: number): boolean {
  const fact = firstFactOf(books, number)!;
  const index = placeIn(books.facts, fact);
  return [index - 1, index + 1].some((near) => books.facts[near]?.place === fact.place);
}

/** Puts some pieces where they belong in the order in which pieces came onto the books. */
function orderPieces(books: BooksInHand, numbers: readonly number[]): void {
  const placed = new Set(numbers);
  const inOrder = [...books.pieces.values()].filter((piece) => !placed.has(piece.number));
  if (placed.size > FEW) {
    for (const number of placed) inOrder.push(books.pieces.get(number)!);
    inOrder.sort((one, other) => inOrderOfOrigin(books, one.number, other.number));
  } else
    for (const number of placed) {
      const index = firstIndex(inOrder, (other) => comesBefore(books, number, other.number));
      inOrder.splice(index, 0, books.pieces.get(number)!);
    }
  books.pieces.clear();
  for (const piece of inOrder) books.pieces.set(piece.number, piece);
}

/** What ledger-wide facts alone change. */
function ledgerWideOf(books: BooksInHand): Record<string, unknown> {
  return Object.fromEntries(Object.entries(books).filter(([name]) => !KEPT_APART.has(name)));
}

function fill<T>(list: T[], values: readonly T[]): void {
  list.length = values.length;
  for (let index = 0; index < values.length; index += 1) list[index] = values[index]!;
}

function setOrDelete<K, V>(map: Map<K, V>, key: K, value: V | undefined): void {
  if (value === undefined) map.delete(key);
  else map.set(key, value);
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function differingKeys<K>(one: ReadonlyMap<K, unknown>, other: ReadonlyMap<K, unknown>): K[] {
  const keys = new Set([...one.keys(), ...other.keys()]);
  return [...keys].filter((key) => !isSame(one.get(key), other.get(key)));
}
