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
  reads: {},
});
