import { costOf, pieceLabel, statusOf } from "../books/piece.ts";
import { show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { costOfAll, showAge, unsoldPieces } from "./stock.ts";
import { fitted, LIST_LINES_MAX, reply } from "./wording.ts";

export const unsold = defineAnswer({
  about: "unsold",
  example: "what's unsold",
  asks: {},
  answer: answerUnsold,
});

function answerUnsold({ books, today }: Asked): Answer {
  const pieces = [...unsoldPieces(books)].sort(
    (a, b) => a.bought.localeCompare(b.bought) || a.number - b.number,
  );
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
  ]);
}
