import * as z from "zod";
import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { splitEvenly } from "../split.ts";
import type { Piece } from "./books.ts";
import type { BooksInHand } from "./hand.ts";
import { wordsShape } from "./shapes.ts";

/** The words of pieces that a fact brings onto the books, in the order of their numbers. */
export const madeShape = z.array(z.strictObject({ name: wordsShape, traits: z.array(wordsShape) })).min(1);
export type Made = z.infer<typeof madeShape>;

interface Arrival {
  numbers: readonly number[];
  made: Made;
  day: Day;
  /** What they cost together, in cents. */
  cost: Cents;
  set?: true | undefined;
  source?: string | undefined;
}

/** Puts new pieces on the books, what they cost split evenly; several make a lot. The cash is the caller's to post. */
export function takeIn(books: BooksInHand, arrival: Arrival): void {
  const { numbers, made, cost } = arrival;
  if (made.length !== numbers.length) throw new Error(`${made.length} pieces for ${numbers.length} numbers`);
  const prices = splitEvenly(cost, numbers.length);
  numbers.forEach((number, index) => {
    books.addPiece(newPiece(arrival, index, prices[index]!));
    books.post("unsold pieces", prices[index]!, { piece: number });
  });
}

/** A piece as it comes onto the books, at its place among those that come with it; its price in cents. */
export function newPiece({ numbers, made, day, set, source }: Arrival, index: number, price: Cents): Piece {
  const { name, traits } = made[index]!;
  const isSeveral = numbers.length > 1;
  return {
    number: numbers[index]!,
    name,
    traits,
    lot: isSeveral ? Math.min(...numbers) : null,
    set: isSeveral && set === true,
    source: source ?? null,
    bought: day,
    started: null,
    finished: null,
    listed: null,
    listPrice: null,
    firstListPrice: null,
    firstListed: null,
    hold: null,
    sold: null,
    gone: null,
    goneOn: null,
    price,
    materials: 0,
    fees: 0,
    deposit: 0,
    depositsKept: 0,
    owed: 0,
    sales: 0,
    refunds: 0,
    minutes: 0,
    miles: "0",
  };
}
