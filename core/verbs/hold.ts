import { z } from "zod";
import { checkNotGone } from "../books/check.ts";
import { amountOf, onlyPiece } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { dayShape, wordsShape } from "../books/shapes.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

const rules: FactRules<"hold"> = {
  data: z.strictObject({
    buyer: wordsShape.optional(),
    until: dayShape.optional(),
    method: wordsShape.optional(),
  }),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces);
    if (problem) return problem;
    const deposit = fact.amount === undefined ? 0 : amountOf(fact);
    const shares = splitEvenly(deposit, fact.pieces.length);
    const { buyer, until } = fact.data;
    fact.pieces.forEach((number, index) => {
      const piece = books.piece(number);
      // A second deposit on a held piece adds up; what it does not say stays as it was.
      const { hold } = piece;
      piece.hold = {
        since: hold?.since ?? fact.day,
        buyer: buyer ?? hold?.buyer ?? null,
        until: until ?? hold?.until ?? null,
      };
      piece.deposit += shares[index]!;
      books.post("deposits held", -shares[index]!, { piece: number });
    });
    books.post("cash", deposit, { piece: onlyPiece(fact) });
    return null;
  },
};

export const hold = defineVerb({
  kind: "hold",
  example: "deposit 45 on desk transfer",
  help: "a piece kept for a buyer, with or without a deposit",
  books: rules,
  reads: {},
});
