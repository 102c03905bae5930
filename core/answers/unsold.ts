import { costOf, pieceLabel, statusOf } from "../books/piece.ts";
import { owedByBuyers } from "../books/shares.ts";
import { show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { costOfAll, showAge, unsoldPieces } from "./stock.ts";
import { fitted, LIST_LINES_MAX, reply } from "./wording.ts";

export const unsold = defineAnswer({
  about: "unsold",
  example: "what's unsold",
  asks: {
    phrases: [
      "slowest pieces",
      "slowest",
      "oldest pieces",
      "old stuff",
      "unsold",
      "not sold",
      "havent sold",
      "havent i sold",
      "hasnt sold",
      "isnt sold",
      "what … left to sell",
      "whats left",
      "still … to sell",
      "what do i still have",
      "still have",
      "have left",
      "not yet sold",
      "arent sold",
      "left to sell",
      "hasnt been sold",
      "whats sitting",
      "sitting on",
      "what hasnt",
      "what isnt sold",
      "how many … unsold",
      "didnt sell",
      "not gone",
    ],
    whole: ["unsold", "not sold", "whats left", "left"],
  },
  answer: answerUnsold,
});

function answerUnsold({ books, today }: Asked): Answer {
  const pieces = [...unsoldPieces(books)].sort(
    (a, b) => a.bought.localeCompare(b.bought) || a.number - b.number,
  );
  const owed = owedByBuyers(books.pieces.values());
  if (pieces.length === 0) return reply(["Nothing is unsold.", 'A note adds a piece: "bought dresser 30"']);
  return reply([
    `${pieces.length} unsold, ${show(costOfAll(pieces))} tied up`,
    ...fitted(
      pieces,
      LIST_LINES_MAX,
      (piece) =>
        `${pieceLabel(piece)}: ${show(costOf(piece))}, ${showAge(piece.bought, today)}, ${statusOf(piece)}`,
      (left) => `and ${left.length} newer, ${show(costOfAll(left))}`,
    ),
    owed > 0 ? `Buyers still owe ${show(owed)}: "held" shows who` : null,
  ]);
}
