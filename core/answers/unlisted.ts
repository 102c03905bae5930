import type { Books } from "../books/books.ts";
import { costOf, pieceLabel, statusOf } from "../books/piece.ts";
import { show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { costOfAll, showAge, unlistedPieces } from "./stock.ts";
import { fitted, LIST_LINES_MAX, reply } from "./wording.ts";

export const unlisted = defineAnswer({
  about: "unlisted",
  example: "what's unlisted",
  asks: {
    phrases: [
      "unlisted",
      "not listed",
      "isnt listed",
      "arent listed",
      "havent listed",
      "havent i listed",
      "need … listed",
      "needs … listed",
      "needs listing",
      "need listing",
      "need to list",
      "needs to be listed",
      "need to be listed",
      "ready to list",
      "finished … not … listed",
      "left to list",
      "not up yet",
      "not posted",
      "should i list next",
      "what … to list",
      "can i list",
      "still … to list",
      "not yet listed",
      ...["what", "whats", "which", "anything"].flatMap((opening) =>
        ["not", "isnt", "arent", "hasnt been", "havent been", "never"].map(
          (not) => `${opening} … ${not} … listed`,
        ),
      ),
      "hasnt been listed",
    ],
    whole: ["unlisted", "ready to list", "not listed"],
  },
  answer: answerUnlisted,
});

function answerUnlisted({ books, today }: Asked): Answer {
  const pieces = unlistedPieces(books);
  if (pieces.length === 0) {
    return reply([
      "Nothing finished is waiting to be listed.",
      ...earlyLines(books),
      'A note finishes one: "finished dresser"',
    ]);
  }
  return reply([
    `${pieces.length} finished, not listed, ${show(costOfAll(pieces))} tied up`,
    ...fitted(
      pieces,
      LIST_LINES_MAX,
      (piece) => `${pieceLabel(piece)}: ${showAge(piece.finished!, today)}, ${show(costOf(piece))}`,
      (left) => `and ${left.length} more, ${show(costOfAll(left))}`,
    ),
  ]);
}

const EARLY_LINES_MAX = 7;

/** Where none is waiting: those that are not up either, since they are not finished. */
function earlyLines(books: Books): string[] {
  const early = [...books.pieces.values()].filter((piece) => /^(?:bought|started)$/.test(statusOf(piece)));
  if (early.length === 0) return [];
  return [
    `${early.length} not listed either: not finished yet`,
    ...fitted(
      early,
      EARLY_LINES_MAX,
      (piece) => `  ${pieceLabel(piece)}`,
      (left) => `  and ${left.length} more`,
    ),
  ];
}
