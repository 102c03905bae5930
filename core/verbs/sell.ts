import { z } from "zod";
import type { Piece } from "../books/books.ts";
import { checkNotGone } from "../books/check.ts";
import { moveCost } from "../books/cost.ts";
import { amountOf, type FactOf, onlyPiece } from "../books/facts.ts";
import type { BooksInHand } from "../books/hand.ts";
import type { FactRules } from "../books/rules.ts";
import { centsShape, wordsShape } from "../books/shapes.ts";
import { depositOf, sharesOfSale } from "../books/shares.ts";
import { monthOf } from "../calendar.ts";
import { dayWords, methodWords, namesOf, piecesOf, profitLines, sharesWords } from "../decide/echo.ts";
import { here } from "../decide/fits.ts";
import { settlePieces } from "../decide/pieces.ts";
import { depositFate, doubtOfSale } from "../decide/selling.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgeSale } from "../notes/judging/selling.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    sell: {
      pieces?: Mention[];
      price?: Cents;
      method?: string;
      fee?: Cents;
      buyer?: string;
      /** What of the price is still to come. */
      owed?: Cents;
    };
  }
}

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
        say: [
          "went for",
          "gone for",
          "is gone for",
          "let go of … for",
          "let … go for",
          "unloaded",
          "offloaded",
          "moved … for",
          "sold off",
          "sale of",
        ],
        with: ["number"],
      },
      {
        say: [
          "found a new home",
          "found a home",
          "found its new home",
          "went to a new home",
          "has a new home",
        ],
        with: ["piece", "number"],
      },
      { say: ["flipped", "parted with", "got rid of"], with: ["piece", "number"], without: ["supply"] },
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
      "deposit",
      "gave",
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
    const doubt = doubtOfSale(reading, pieces, desk);
    if (doubt) return doubt;
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
    const legs = books.postings.get(fact.id) ?? [];
    const sales = legs.filter((leg) => leg.account === "sales");
    const shares = sharesWords(sales.map((leg) => -leg.cents));
    const each = shares ? ` (${shares})` : "";
    const first = `Sold ${namesOf(books, fact)} for ${show(price)}${each}${methodWords(fact.data.method)}${buyer}${fee}${dayWords(fact, today)}`;
    const deposit = legs.reduce((sum, leg) => sum + (leg.account === "deposits held" ? leg.cents : 0), 0);
    const applied = deposit > 0 && (fact.data.deposit ?? "applied") === "applied";
    const split = applied ? [`${show(price)}: ${show(deposit)} deposit, ${show(price - deposit)} today`] : [];
    return [first, ...split, ...profitLines(books, fact)];
  },
});
