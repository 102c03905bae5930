import type { Books, Piece } from "../books/books.ts";
import type { Fact } from "../books/facts.ts";
import { factsThrough, foldFacts } from "../books/fold.ts";
import type { Day } from "../calendar.ts";
import { indexOf, type LedgerIndex } from "./ledger-index.ts";
import type { Period } from "./query.ts";

/** Someone who may write: the id that facts carry, and the name that people say. */
export interface Person {
  id: number;
  name: string;
}

/** What was spoken of right before a question, as piece numbers. */
export interface Spoken {
  /** What "it" means: one piece, or pieces of one name that came together. */
  it: readonly number[];
  /** What "they" means. */
  all: readonly number[];
  /** The two spoken of last, one by one: "both". */
  lastTwo: readonly number[];
  /** The loan was spoken of, and no piece since. */
  loan?: true;
}

export const NOTHING_SPOKEN: Spoken = { it: [], all: [], lastTwo: [] };

/** What a question may look at. Pure data: the same question on the same books gives the same answer. */
export interface QuestionDesk {
  books: Books;
  /** The day of the asking. */
  today: Day;
  /** ISO 4217 code. */
  currency: string;
  people: readonly Person[];
  /** Who asks: "mine" is theirs; null where nobody in particular does. */
  me: number | null;
  /** Cents a mile that the owner set, by year. */
  mileageRates: Readonly<Record<string, string>>;
  /** Lists leave out payments and other income noted by others. */
  hidesMoney?: boolean;
  /** What was spoken of right before, where that is known. */
  spoken?: Spoken;
}

/** The desk with the facts sorted for asking. */
export interface Desk extends QuestionDesk {
  index: LedgerIndex;
}

/** The desk with its index brought up to date. */
export function withIndex(desk: QuestionDesk): Desk {
  return { ...desk, index: indexOf(desk.books) };
}

/** One thing that a measure is taken of, with its value in the measure's unit. */
export interface Subject {
  day: Day;
  piece: Readonly<Piece> | null;
  fact: Fact | null;
  units: number;
  /** Of a rate: what the units are divided by. */
  per?: number;
  miles?: string;
  loan?: string;
  /** Of a buyer's money: who paid it. */
  payer?: string | null;
}

const pastBooks = new WeakMap<LedgerIndex, Map<Day, Books>>();

/** The desk as it stood at the end of a day; itself where nothing has come since. */
export function deskOn(desk: Desk, day: Day | null): Desk {
  const last = desk.books.facts.at(-1);
  if (day === null || !last || last.day <= day) return desk;
  const kept = pastBooks.get(desk.index) ?? new Map<Day, Books>();
  pastBooks.set(desk.index, kept);
  let books = kept.get(day);
  if (!books) {
    const folded = foldFacts(factsThrough(desk.books.facts, day));
    if (folded.kind === "impossible") throw new Error(`fact ${folded.fact.id} stands only with later ones`);
    if (kept.size > 24) kept.clear();
    books = folded.books;
    kept.set(day, books);
  }
  return { ...desk, books, today: day, index: indexOf(books) };
}

/** Whether a day lies in a period; open ends take all. */
export function isIn(period: Period | null, day: Day): boolean {
  if (!period) return true;
  return (period.from === null || day >= period.from) && (period.to === null || day <= period.to);
}
