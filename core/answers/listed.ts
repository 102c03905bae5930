import type { Piece } from "../books/books.ts";
import { pieceLabel } from "../books/piece.ts";
import type { Day } from "../calendar.ts";
import { show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { listedPieces, showAge } from "./stock.ts";
import { fitted, LIST_LINES_MAX, reply } from "./wording.ts";

export const listed = defineAnswer({
  about: "listed",
  example: "what's listed",
  asks: {
    phrases: [
      "what do i have listed",
      "what have i got listed",
      "whats listed",
      "what … listed",
      "is listed",
      "are listed",
      "have listed",
      "do i have listed",
      "do i have up",
      "what do i have posted",
      "do we have posted",
      "do i have up for sale",
      "do we have up for sale",
      "do i have for sale",
      "do we have for sale",
      "whats up for sale",
      "what … for sale",
      "show … listed",
      "show … listings",
      "my listings",
      "active listings",
      "how many … listed",
      "what … up for sale",
      "anything listed",
      "whats live",
      "list … listings",
      "all listings",
      "currently listed",
      "which … listed",
      "whats posted",
      "what … posted",
    ],
    whole: ["listed", "listings", "for sale", "my listings", "active listings", "whats up"],
  },
  answer: answerListed,
});

function answerListed({ books, today }: Asked): Answer {
  const pieces = listedPieces(books);
  if (pieces.length === 0) return reply(["Nothing is listed.", 'A note lists one: "listed dresser 190"']);
  const asking = pieces.reduce((sum, piece) => sum + (piece.listPrice ?? 0), 0);
  return reply([
    `${pieces.length} listed, asking ${show(asking)}`,
    ...fitted(
      pieces,
      LIST_LINES_MAX,
      (piece) => listedLine(piece, today),
      (left) => `and ${left.length} more`,
    ),
  ]);
}

function listedLine(piece: Readonly<Piece>, today: Day): string {
  const dropped = (piece.firstListPrice ?? 0) > (piece.listPrice ?? 0);
  const from = dropped ? ` (was ${show(piece.firstListPrice!)})` : "";
  const held = piece.hold ? ", held" : "";
  return `${pieceLabel(piece)}: ${show(piece.listPrice ?? 0)}${from}, ${showAge(piece.listed!, today)}${held}`;
}
