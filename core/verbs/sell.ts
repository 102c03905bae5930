import { z } from "zod";
import type { Piece } from "../books/books.ts";
import { checkNotGone } from "../books/check.ts";
import { moveCost } from "../books/cost.ts";
import { amountOf, type FactOf, onlyPiece } from "../books/facts.ts";
import type { BooksInHand } from "../books/hand.ts";
import { costOf } from "../books/piece.ts";
import type { FactRules } from "../books/rules.ts";
import { centsShape, wordsShape } from "../books/shapes.ts";
import { depositOf, sharesOfSale } from "../books/shares.ts";
import { monthOf, showDay } from "../calendar.ts";
import { type Ask, confirmation, type Desk, NEVER_MIND } from "../decide/decision.ts";
import { dayWords, methodWords, namesOf, piecesOf, profitLines, sharesWords } from "../decide/echo.ts";
import { here } from "../decide/fits.ts";
import { settlePieces } from "../decide/pieces.ts";
import { type Cents, show } from "../money.ts";
import { judgeSale } from "../notes/judging/selling.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { defineVerb } from "./verb.ts";

/** Settles what is held on the pieces: part of the price, given back to its buyer, or kept that day. */
function settleDeposits(books: BooksInHand, fact: FactOf<"sell">, pieces: readonly Piece[]): void {
  const held = depositOf(pieces);
  const how = fact.data.deposit ?? "applied";
  const price = amountOf(fact);
  books.post("cash", how === "applied" ? price - held : price, { piece: onlyPiece(fact) });
  if (how === "refunded") books.post("cash", -held, { piece: onlyPiece(fact) });
  for (const piece of pieces) {
    books.post("deposits held", piece.deposit, { piece: piece.number });
    if (how === "kept") {
      books.post("deposits kept", -piece.deposit, { piece: piece.number });
      piece.depositsKept += piece.deposit;
    }
    piece.deposit = 0;
    piece.hold = null;
  }
}

const rules: FactRules<"sell"> = {
  data: z.strictObject({
    fee: centsShape.optional(),
    method: wordsShape.optional(),
    buyer: wordsShape.optional(),
    deposit: z.enum(["applied", "refunded", "kept"]).optional(),
  }),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    const pieces = fact.pieces.map((number) => books.piece(number));
    const prices = sharesOfSale(pieces, amountOf(fact));
    const fees = sharesOfSale(pieces, fact.data.fee ?? 0);
    settleDeposits(books, fact, pieces);
    pieces.forEach((piece, index) => {
      const of = { piece: piece.number };
      books.post("sales", -prices[index]!, of);
      // The fee is its own pair, so that cash in is gross.
      books.post("selling fees", fees[index]!, of);
      books.post("cash", -fees[index]!, of);
      moveCost(books, piece, "unsold pieces", "cost of pieces sold");
      piece.sales += prices[index]!;
      piece.fees += fees[index]!;
      piece.sold = fact.day;
      piece.gone = "sold";
      piece.goneOn = fact.day;
    });
    books.month(monthOf(fact.day)).flipped += pieces.length;
    return null;
  },
};

export const sell = defineVerb({
  kind: "sell",
  example: "sold nightstand 60 cash",
  help: "a sale",
  books: rules,
  reads: {
    says: [
      {
        say: [
          "sold",
          "sld",
          "sodl",
          "slod",
          "soldd",
          "resold",
          "is sold",
          "are sold",
          "got sold",
          "just sold",
        ],
      },
      {
        say: ["went for", "let … go for", "unloaded", "moved … for", "sold off", "sale of"],
        with: ["number"],
      },
      {
        say: ["got … for", "got … out of", "took … for"],
        with: ["moneyFirst", "piece"],
        without: ["supply", "stream"],
        light: true,
      },
    ],
    slots: { pieces: "pieces", price: "money", method: "method", fee: "fee", buyer: "buyer" },
    needs: ["pieces", "price"],
    absorbs: [
      "paid",
      "got",
      "paid in",
      "took",
      "picked up",
      "went for",
      "listed",
      "cleared",
      "made",
      "sold",
      "gone",
      "pending",
      "buyer",
      "lady paid",
      "guy paid",
      "delivered",
    ],
    judge: judgeSale,
  },

  decide(reading, desk) {
    const settled = settlePieces(reading, desk, { fit: here, question: "did you sell", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const pieces = piecesOf(desk.books, settled);
    const holders = holdersOf(pieces);
    if (holders.length > 1) {
      const why = `Deposits of ${holders.join(" and ")} are held on these. Settle one first, or sell them apart.`;
      return { kind: "refuse", why };
    }
    const ask =
      dayQuestion(reading, pieces, desk) ??
      depositQuestion(reading, pieces, desk) ??
      priceQuestion(reading, pieces, desk);
    if (ask) return { kind: "ask", ask };
    const { fee, method, buyer } = reading;
    const deposit = depositFate(desk);
    return {
      kind: "record",
      facts: [
        {
          kind: "sell",
          day: reading.date ?? desk.today,
          pieces: settled.pieces,
          amount: reading.price!,
          data: {
            ...(fee ? { fee } : {}),
            ...(method ? { method } : {}),
            ...(buyer ? { buyer } : {}),
            ...(deposit ? { deposit } : {}),
          },
        },
      ],
    };
  },
  echo({ fact, books, today }) {
    const price = fact.amount ?? 0;
    const buyer = fact.data.buyer ? ` to ${fact.data.buyer}` : "";
    const fee = fact.data.fee ? `, fee ${show(fact.data.fee)}` : "";
    const first = `Sold ${namesOf(books, fact)} for ${show(price)}${methodWords(fact.data.method)}${buyer}${fee}${dayWords(fact, today)}`;
    const legs = books.postings.get(fact.id) ?? [];
    const sales = legs.filter((leg) => leg.account === "sales");
    const shares = sharesWords(sales.map((leg) => -leg.cents));
    const deposit = legs.reduce((sum, leg) => sum + (leg.account === "deposits held" ? leg.cents : 0), 0);
    const applied = deposit > 0 && (fact.data.deposit ?? "applied") === "applied";
    const split = applied ? [`${show(price)}: ${show(deposit)} deposit, ${show(price - deposit)} today`] : [];
    const [profit, ...more] = profitLines(books, fact);
    return [first, ...split, ...(profit ? [shares ? `${profit} · ${shares}` : profit] : []), ...more];
  },
});

function depositFate(desk: Desk): "refunded" | "kept" | null {
  if (desk.confirmed.includes("deposit refunded")) return "refunded";
  return desk.confirmed.includes("deposit kept") ? "kept" : null;
}

/** Whose deposits are held on the pieces: money of two buyers cannot be part of one price. */
function holdersOf(pieces: readonly Readonly<Piece>[]): string[] {
  const held = pieces.filter((piece) => piece.deposit > 0 && piece.hold?.buyer);
  return [...new Set(held.map((piece) => piece.hold!.buyer!))];
}

/** A piece cannot be sold before it was bought: the day is asked. */
function dayQuestion(reading: ReadingOf<"sell">, pieces: readonly Readonly<Piece>[], desk: Desk): Ask | null {
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

/** Whose deposit it is, and whether the price is the whole of it or the rest. */
function depositQuestion(
  reading: ReadingOf<"sell">,
  pieces: readonly Readonly<Piece>[],
  desk: Desk,
): Ask | null {
  const deposit = depositOf(pieces);
  const price = reading.price!;
  if (deposit === 0 || depositFate(desk) || desk.confirmed.includes("whole price")) return null;
  const [holder] = holdersOf(pieces);
  if (holder && reading.buyer && holder !== reading.buyer && !desk.confirmed.includes("deposit applied")) {
    return otherBuyer(holder, deposit);
  }
  const listPrice = listPriceOf(pieces);
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
  if (listPrice === null || price > listPrice - deposit) return null;
  const prompt = `${show(deposit)} deposit is held. Is ${show(price)} the whole price, or the rest?`;
  return { prompt, wants: "choice", choices: [settleWhole(`${show(price)} in all`), more, NEVER_MIND] };
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
function priceQuestion(
  reading: ReadingOf<"sell">,
  pieces: readonly Readonly<Piece>[],
  desk: Desk,
): Ask | null {
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
  const cost = pieces.reduce((sum, piece) => sum + costOf(piece), 0);
  if (price < cost && !desk.confirmed.includes("under cost")) {
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

/** What the pieces are listed at together; null unless each has a price. */
function listPriceOf(pieces: readonly Readonly<Piece>[]): Cents | null {
  if (pieces.some((piece) => piece.listPrice === null)) return null;
  return pieces.reduce((sum, piece) => sum + piece.listPrice!, 0);
}
