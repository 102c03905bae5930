import { z } from "zod";
import type { Books } from "../books/books.ts";
import { checkPieces } from "../books/check.ts";
import { amountOf, onlyPiece } from "../books/facts.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { depositOf, sharesOfDeposit } from "../books/shares.ts";
import { defineVerb } from "./verb.ts";

function checkHeld(books: Books, numbers: readonly number[]): Problem | null {
  const number = numbers.find((each) => !books.pieces.get(each)!.hold);
  return number === undefined ? null : { kind: "piece not held", number };
}

const rules: FactRules<"fallthrough"> = {
  data: z.strictObject({ kept: z.literal(true).optional() }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces) ?? checkHeld(books, fact.pieces);
    if (problem) return problem;
    const held = depositOf(fact.pieces.map((number) => books.pieces.get(number)!));
    const amount = fact.amount === undefined ? 0 : amountOf(fact);
    if (amount > held) return { kind: "more than held", held };
    const pieces = fact.pieces.map((number) => books.piece(number));
    const refunded = fact.data.kept ? held - amount : amount;
    const shares = sharesOfDeposit(pieces, refunded);
    pieces.forEach((piece, index) => {
      const kept = piece.deposit - shares[index]!;
      books.post("deposits held", piece.deposit, { piece: piece.number });
      books.post("deposits kept", -kept, { piece: piece.number });
      piece.depositsKept += kept;
      piece.deposit = 0;
      piece.hold = null;
    });
    books.post("cash", -refunded, { piece: onlyPiece(fact) });
    return null;
  },
};

export const fallthrough = defineVerb({
  kind: "fallthrough",
  example: "buyer backed out of desk, refunded 30",
  help: "a buyer who is gone, and what became of the deposit",
  books: rules,
  reads: {},
});
