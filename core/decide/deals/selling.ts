import { goingPrice } from "../../books/agreed.ts";
import type { Piece } from "../../books/books.ts";
import { costOf } from "../../books/piece.ts";
import { depositOf, listPriceOf } from "../../books/shares.ts";
import { showDay } from "../../calendar.ts";
import { type Cents, show } from "../../money.ts";
import type { ReadingOf } from "../../notes/reading.ts";
import { BROUGHT_AND_PAID } from "../../notes/words/settling.ts";
import { type Ask, confirmation, type Decision, type Desk, NEVER_MIND } from "../decision.ts";
import { isAnother } from "./whom.ts";

type Pieces = readonly Readonly<Piece>[];

/** What has to be asked, or is in the way, before a sale of these pieces can be recorded; null: nothing. */
export function doubtOfSale(
  reading: ReadingOf<"sell">,
  pieces: Pieces,
  desk: Desk,
): Exclude<Decision, { kind: "record" }> | null {
  const holders = holdersOf(pieces);
  if (holders.length > 1) {
    const why = `Deposits of ${holders.join(" and ")} are held on these. Settle one first, or sell them apart.`;
    return { kind: "refuse", why };
  }
  const ask =
    dayQuestion(reading, pieces, desk) ??
    depositQuestion(reading, pieces, desk) ??
    owedQuestion(reading, pieces, desk) ??
    priceQuestion(reading, pieces, desk);
  return ask && { kind: "ask", ask };
}

/** What the person said became of a deposit that is no part of the price; null where it is. */
export function depositFate(desk: Desk): "refunded" | "kept" | null {
  if (desk.confirmed.includes("deposit refunded")) return "refunded";
  return desk.confirmed.includes("deposit kept") ? "kept" : null;
}

/** Whose deposits are held on the pieces: money of two buyers cannot be part of one price. */
function holdersOf(pieces: Pieces): string[] {
  const held = pieces.filter((piece) => piece.deposit > 0 && piece.hold?.buyer);
  return [...new Set(held.map((piece) => piece.hold!.buyer!))];
}

/** A piece cannot be sold before it was bought: the day is asked. */
function dayQuestion(reading: ReadingOf<"sell">, pieces: Pieces, desk: Desk): Ask | null {
  const day = reading.date ?? desk.today;
  const later = pieces.find((piece) => piece.bought > day);
  if (!later) return null;
  const bought = showDay(later.bought, desk.today);
  return {
    prompt: `#${later.number} ${later.name} was bought ${bought}, after that day. What day was it sold?`,
    wants: "day",
    choices: [
      { label: `Sold ${bought}`, effect: { kind: "settle", change: { date: later.bought } } },
      NEVER_MIND,
    ],
  };
}

/** Whether a sale at this price would be asked about: the whole of it, or the rest beside the deposit? */
export function isDepositDoubted(price: Cents, pieces: Pieces, desk: Desk): boolean {
  return depositQuestion({ kind: "sell", price, text: "", line: 0 }, pieces, desk) !== null;
}

/** Whose deposit it is, and whether the price is the whole of it or the rest. */
function depositQuestion(reading: ReadingOf<"sell">, pieces: Pieces, desk: Desk): Ask | null {
  const deposit = depositOf(pieces);
  const price = reading.price!;
  if (deposit === 0 || depositFate(desk) || desk.confirmed.includes("whole price")) return null;
  const [holder] = holdersOf(pieces);
  if (holder && isAnother(reading.buyer, holder) && !desk.confirmed.includes("deposit applied")) {
    return otherBuyer(holder, deposit);
  }
  if (reading.whole && price >= deposit) return null;
  const going = goingPrice(desk.books, pieces) ?? listPriceOf(pieces);
  const more: Ask["choices"][number] = {
    label: `${show(price)} today, ${show(price + deposit)} in all`,
    words: ["rest", "the rest", "today"],
    effect: { kind: "settle", change: { price: price + deposit }, confirm: "whole price" },
  };
  if (price < deposit) {
    const whole = `${show(price)} in all, ${show(deposit - price)} given back`;
    const prompt = `A deposit of ${show(deposit)} is held, more than ${show(price)}. Which is it?`;
    return { prompt, wants: "choice", choices: [more, settleWhole(whole), NEVER_MIND] };
  }
  const isRestDoubted = reading.fetched && price !== going;
  if (!isRestDoubted && (going === null || price > going - deposit)) return null;
  const prompt = `${show(deposit)} deposit is held. Is ${show(price)} the whole price, or the rest?`;
  return { prompt, wants: "choice", choices: [settleWhole(`${show(price)} in all`), more, NEVER_MIND] };
}

/** More cannot be owed than is left to pay after the deposit. */
function owedQuestion(reading: ReadingOf<"sell">, pieces: Pieces, desk: Desk): Ask | null {
  const deposit = depositFate(desk) ? 0 : depositOf(pieces);
  const due = Math.max(0, reading.price! - deposit);
  if ((reading.owed ?? 0) <= due) return null;
  const prompt = `${show(due)} is left to pay, so ${show(reading.owed!)} cannot be owed. How much is?`;
  const owed = (label: string, cents: Cents, words: string[]): Ask["choices"][number] => ({
    label,
    words,
    effect: { kind: "settle", change: { owed: cents } },
  });
  const all = due > 0 ? [owed(`All of it, ${show(due)}`, due, ["all"])] : [];
  return {
    prompt,
    wants: "choice",
    choices: [...all, owed("Nothing, it is paid", 0, ["nothing"]), NEVER_MIND],
  };
}

function settleWhole(label: string): Ask["choices"][number] {
  const words = ["whole", "the whole", "whole price", "the whole price", "all", "in all"];
  return { label, words, effect: { kind: "settle", confirm: "whole price" } };
}

function otherBuyer(holder: string, deposit: Cents): Ask {
  return {
    prompt: `${show(deposit)} is held from ${holder}. What becomes of it?`,
    wants: "choice",
    choices: [
      choice("It is part of this price", ["part of it", "part of the price"], "deposit applied"),
      choice(`Given back to ${holder}`, ["given back", "gave it back", "refunded"], "deposit refunded"),
      choice("Kept", ["kept it", "i kept it"], "deposit kept"),
      NEVER_MIND,
    ],
  };
}

function choice(label: string, words: string[], confirm: string): Ask["choices"][number] {
  return { label, words, effect: { kind: "settle", confirm } };
}

/** Odd but possible prices are asked about once: ten times the list price, under cost, a fee above the price. */
function priceQuestion(reading: ReadingOf<"sell">, pieces: Pieces, desk: Desk): Ask | null {
  const price = reading.price!;
  const listPrice = listPriceOf(pieces);
  if (
    listPrice !== null &&
    listPrice > 0 &&
    price >= listPrice * 10 &&
    !desk.confirmed.includes("ten times")
  ) {
    const tenth = Math.round(price / 10);
    const prompt = `${show(price)} is ${Math.floor(price / listPrice)} times the list price ${show(listPrice)}. Is that right?`;
    const others = [
      { label: `It was ${show(tenth)}`, effect: { kind: "settle" as const, change: { price: tenth } } },
    ];
    const ask = confirmation(prompt, { label: `Yes, ${show(price)}`, confirm: "ten times" }, others);
    return { ...ask, wants: "price" };
  }
  // "son delivered the desk and got 20": its price, or something for his trouble.
  const isFarUnder = listPrice !== null && price * 2 < listPrice && BROUGHT_AND_PAID.test(reading.text);
  if (isFarUnder && !desk.confirmed.includes("far under")) {
    const prompt = `${show(price)} is far under the list price ${show(listPrice)}. Is that the price?`;
    return {
      ...confirmation(prompt, { label: `Yes, ${show(price)}`, confirm: "far under" }),
      wants: "price",
    };
  }
  const cost = pieces.reduce((sum, piece) => sum + costOf(piece), 0);
  if (price < cost && !reading.costSaid && !desk.confirmed.includes("under cost")) {
    const prompt = `${show(price)} is under what it cost, ${show(cost)}. Is that right?`;
    return {
      ...confirmation(prompt, { label: `Yes, ${show(price)}`, confirm: "under cost" }),
      wants: "price",
    };
  }
  if ((reading.fee ?? 0) > price && !desk.confirmed.includes("fee")) {
    const prompt = `The fee ${show(reading.fee!)} is more than the price ${show(price)}. Is that right?`;
    return confirmation(prompt, { label: "Yes", confirm: "fee" });
  }
  return null;
}
