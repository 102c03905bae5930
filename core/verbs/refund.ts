import { z } from "zod";
import type { Books, Piece } from "../books/books.ts";
import { checkPieces } from "../books/check.ts";
import { moveCost } from "../books/cost.ts";
import { amountOf, type FactOf, onlyPiece } from "../books/facts.ts";
import { proceedsOf, statusOf } from "../books/piece.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { monthOf } from "../calendar.ts";
import { dayWords, namesOf, piecesOf, profitLines } from "../decide/echo.ts";
import { paidFor } from "../decide/fits.ts";
import { settlePieces } from "../decide/pieces.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgeRefund } from "../notes/judging/refunding.ts";
import { splitEvenly } from "../split.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    refund: {
      pieces?: Mention[];
      amount?: Cents;
      returned?: true;
      /** What was owed never comes: no cash goes out. */
      unpaid?: true;
    };
  }
}

/** A piece that brought nothing in, or is to come back unsold, was not sold; none gives back more than it brought. */
function checkRefund(books: Books, fact: FactOf<"refund">, shares: readonly Cents[]): Problem | null {
  for (const [index, number] of fact.pieces.entries()) {
    const piece = books.pieces.get(number)!;
    const broughtIn = proceedsOf(piece);
    if (piece.gone !== "sold" && (fact.data.returned || broughtIn === 0))
      return { kind: "piece not sold", number };
    if (shares[index]! > broughtIn) return { kind: "more than brought in", number, broughtIn };
  }
  return null;
}

/** A piece that came back is on hand again: finished as it was, neither sold nor listed. */
function comeBack(piece: Piece): void {
  piece.sold = null;
  piece.gone = null;
  piece.goneOn = null;
  piece.listed = null;
  piece.listPrice = null;
}

const rules: FactRules<"refund"> = {
  data: z.strictObject({ returned: z.literal(true).optional() }),
  apply(books, fact) {
    const shares = splitEvenly(amountOf(fact), fact.pieces.length);
    const problem = checkPieces(books, fact.pieces) ?? checkRefund(books, fact, shares);
    if (problem) return problem;
    fact.pieces.forEach((number, index) => {
      const piece = books.piece(number);
      piece.refunds += shares[index]!;
      books.post("refunds", shares[index]!, { piece: number });
      if (!fact.data.returned) return;
      moveCost(books, piece, "cost of pieces sold", "unsold pieces");
      comeBack(piece);
    });
    books.post("cash", -amountOf(fact), { piece: onlyPiece(fact) });
    if (fact.data.returned) books.month(monthOf(fact.day)).flipped -= fact.pieces.length;
    return null;
  },
};

export const refund = defineVerb({
  kind: "refund",
  example: "refunded 25 on the desk",
  books: rules,
  reads: {
    says: [
      {
        say: [
          "refunded",
          "refund",
          "refunding",
          "partial refund",
          "gave … back",
          "gave back",
          "money back",
          "sent … back",
          "paid back",
          "paid … back",
        ],
        without: ["loan"],
      },
      {
        say: [
          "came back",
          "brought … back",
          "brought back",
          "returned",
          "took … back",
          "took back",
          "return on",
          "was returned",
          "got returned",
        ],
        means: { returned: true },
        with: ["named"],
      },
      { say: ["came back", "brought back", "returned"], means: { returned: true }, with: ["pronoun"] },
    ],
    slots: { pieces: "pieces", amount: "money" },
    needs: ["pieces", "amount"],
    absorbs: [
      "refunded",
      "refund",
      "gave back",
      "gave",
      "back",
      "returned",
      "came back",
      "took back",
      "paid back",
      "partial",
      "money back",
      "knocked",
      "brought back",
      "brought",
      "wanted",
      "return",
    ],
    judge: judgeRefund,
  },

  decide(reading, desk) {
    const need = { fit: paidFor, question: "was it", unknown: "refuse", lacks: "not sold" } as const;
    const settled = settlePieces(reading, desk, need);
    if (settled.kind !== "settled") return settled;
    const data = reading.returned ? { returned: true as const } : {};
    const day = reading.date ?? desk.today;
    return {
      kind: "record",
      facts: [{ kind: "refund", day, pieces: settled.pieces, amount: reading.amount!, data }],
    };
  },
  echo({ fact, books, today }) {
    const back = `Gave back ${show(fact.amount ?? 0)} on ${namesOf(books, fact)}${dayWords(fact, today)}`;
    const [first] = piecesOf(books, fact);
    const returned =
      fact.data.returned && first
        ? [`${fact.pieces.length === 1 ? "It" : "They"} came back: ${statusOf(first)}, not listed`]
        : [];
    return [back, ...returned, ...profitLines(books, fact)];
  },
});
