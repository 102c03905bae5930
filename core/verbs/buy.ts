import { z } from "zod";
import type { Piece } from "../books/books.ts";
import { amountOf, type FactOf, onlyPiece } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { wordsShape } from "../books/shapes.ts";
import type { Cents } from "../money.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

/** The piece that a buy makes, at its share of the price in cents. */
function newPiece(fact: FactOf<"buy">, index: number, price: Cents): Piece {
  const { name, traits } = fact.data.made[index]!;
  const several = fact.pieces.length > 1;
  return {
    number: fact.pieces[index]!,
    name,
    traits,
    lot: several ? fact.pieces[0]! : null,
    set: several && fact.data.set === true,
    source: fact.data.source ?? null,
    bought: fact.day,
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
    sales: 0,
    refunds: 0,
    minutes: 0,
    miles: "0",
  };
}

const rules: FactRules<"buy"> = {
  data: z.strictObject({
    made: z.array(z.strictObject({ name: wordsShape, traits: z.array(wordsShape) })).min(1),
    set: z.literal(true).optional(),
    method: wordsShape.optional(),
    source: wordsShape.optional(),
  }),
  apply(books, fact) {
    const { made } = fact.data;
    if (made.length !== fact.pieces.length) throw new Error(`fact ${fact.id} makes ${made.length} pieces`);
    const prices = splitEvenly(amountOf(fact), made.length);
    fact.pieces.forEach((number, index) => {
      books.addPiece(newPiece(fact, index, prices[index]!));
      books.post("unsold pieces", prices[index]!, { piece: number });
    });
    books.post("cash", -amountOf(fact), { piece: onlyPiece(fact) });
    return null;
  },
};

export const buy = defineVerb({
  kind: "buy",
  example: "bought dresser 30",
  help: "a piece, a lot or a set you bought, or got free",
  books: rules,
  reads: {},
});
