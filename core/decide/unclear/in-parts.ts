import { goingPrice } from "../../books/agreed.ts";
import type { Cents } from "../../money.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import type { Summed, SumSaid } from "../../notes/second-look/known-sums.ts";
import { isWholeNote } from "../../notes/unclear.ts";
import { IN_A_ROW, PAID_BY, PART_OF_ONE, SO_MANY_AT } from "../../notes/words/known-sums.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";
import { toldOf } from "./equations.ts";
import { type Case, piecesOf, type Telling } from "./sums-on-books.ts";

/* Sums of which none is the whole price of what is told: parts of one, or the prices of several pieces in their order. */

/** A reading, or all that it could be, with what was said beside the price. */
export function withBeside(reading: Reading, out: readonly SumSaid[], text: string): Reading {
  const told = { ...reading, ...saidBeside(reading, out), text } as Reading;
  if (told.kind !== "unclear" || !told.could) return told;
  return { ...told, could: told.could.map((each) => ({ ...each, ...saidBeside(each, out) }) as Reading) };
}

/** What was said beside the price: what it cost, so that it needs no asking that it is less, and what is still owed. */
function saidBeside({ kind }: Reading, out: readonly SumSaid[]): { costSaid?: true; owed?: Cents } {
  if (kind !== "sell") return {};
  const [now, ...paid] = out.filter(({ isNow }) => isNow);
  // "100 now, 90 friday"
  const isOther = (sum: SumSaid): boolean => out.length === 2 && paid.length === 0 && sum !== now;
  const owed = out.find((sum) => sum.isOwed || (now && isOther(sum) && !PAID_BY.test(sum.said)));
  return {
    ...(out.some(({ known }) => known.has("cost")) ? { costSaid: true } : {}),
    ...(owed ? { owed: owed.cents } : {}),
  };
}

/** "two came, 14 and 6, 20 in all": as many parts as pieces are the price of each; null where they are not. */
export function eachInOrder(told: readonly Reading[], of: Case): Reading[] | null {
  const [reading, ...others] = told;
  if (reading && SO_MANY_AT.test(reading.text)) return null;
  const parts = of.out.filter((sum) => toldOf(sum, of.kept, of.out) === "part");
  if (!reading || others.length > 0 || parts.length < 2 || !isAt(reading, of.kept[0]!.cents)) return null;
  const isOfOne = parts.some(({ said, isOwed }) => isOwed || PART_OF_ONE.test(said));
  return isOfOne ? null : priced(reading, parts, of);
}

/**
 * Several sums side by side of which none is the whole: one price in parts ("65 cash and the other 100 by transfer"), or
 * the prices of several pieces in their order ("lamp and bench sold for 25 and 60"), or a total first and its parts behind.
 */
export function inParts(text: string, summed: Summed, of: Telling): Reading[] | null {
  const { sums, isRow } = summed;
  const behind = sums.slice(1);
  const isInOrder =
    isRow && !SO_MANY_AT.test(text) && behind.every(({ said, isOwed }) => !isOwed && IN_A_ROW.test(said));
  const isOfOne = isRow && behind.every(({ said, isOwed }) => isOwed || PART_OF_ONE.test(said));
  const total = sums.reduce((sum, { cents }) => sum + cents, 0);
  for (const rest of isInOrder || isOfOne ? summed.asOne(total) : []) {
    const [reading, ...others] = of.reader.read(rest).map((each) => of.reader.meant(each));
    if (!reading || others.length > 0 || !isWholeNote(reading) || !isAt(reading, total)) continue;
    const each = isInOrder ? priced({ ...reading, text }, sums, of) : null;
    if (each) return each;
    if (isOfOne && mentionsOf(reading).length === 1 && isOneSum(reading, sums, of))
      return [withBeside(reading, sums, text)];
  }
  return asTotal(text, summed, of);
}

/** They are what the piece is to bring, or each is said to be paid in a way of its own. */
function isOneSum(reading: Reading, sums: readonly SumSaid[], of: Telling): boolean {
  if (reading.kind !== "sell" && sums.some(({ isOwed }) => isOwed)) return false;
  const total = sums.reduce((sum, { cents }) => sum + cents, 0);
  return (
    sums.every(({ said }) => PAID_BY.test(said)) || goingPrice(of.desk.books, piecesOf(reading, of)) === total
  );
}

const isAt = (reading: Reading, price: Cents): boolean =>
  (reading.kind === "sell" || reading.kind === "list" || reading.kind === "buy") && reading.price === price;

/** A note of each piece at its own price, where there are as many of both; null where there are not. */
function priced(reading: Reading, prices: readonly SumSaid[], of: Telling): Reading[] | null {
  const mentions = mentionsOf(reading);
  const isNamed = mentions.length === prices.length && mentions.every(({ count }) => count === 1);
  const each = isNamed ? mentions : ofOneName(reading, prices.length, of);
  if (each.length !== prices.length || each.length < 2) return null;
  return each.map((piece, at) => ({ ...reading, pieces: [piece], price: prices[at]!.cents }) as Reading);
}

/** Pieces of one name, one by one. */
function ofOneName(reading: Reading, many: number, of: Telling): Mention[] {
  if (reading.kind !== "buy") return byNumbers(piecesOf(reading, of).map(({ number }) => number));
  const [only, ...others] = mentionsOf(reading);
  return only?.count === many && others.length === 0 ? Array<Mention>(many).fill({ ...only, count: 1 }) : [];
}

const ON_TOP = /\btax(?:es)?\b/;

/** "Register said 52.30, thats 46.70 for hinges and 5.60 tax": the first part says what it was, and the total how much. */
function asTotal(text: string, summed: Summed, { reader }: Telling): Reading[] | null {
  for (const total of summed.sums) {
    const parts = summed.sums.filter((sum) => sum !== total);
    const [first, ...rest] = parts;
    const areParts =
      parts.every((part) => !part.isOwed && toldOf(part, [total], parts) === "part") &&
      rest.every(({ said }) => ON_TOP.test(said));
    for (const left of areParts ? summed.without([total, ...rest]) : []) {
      const [reading, ...others] = reader.read(left).map((each) => reader.meant(each));
      const isOfFirst = reading?.kind === "spend" && reading.amount === first?.cents && others.length === 0;
      if (isOfFirst && isWholeNote(reading)) return [{ ...reading, amount: total.cents, text }];
    }
  }
  return null;
}
