import type { Books, Piece, Status } from "../books/books.ts";
import { costOf, pieceLabel, profitOf, statusOf } from "../books/piece.ts";
import type { Day } from "../calendar.ts";
import { showDay } from "../calendar.ts";
import { show } from "../money.ts";
import { foldedUnder } from "../phone.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { unsoldPieces } from "./stock.ts";
import { fitted, LIST_LINES_MAX, reply, signed } from "./wording.ts";

/** The nearest to its money first. */
const STATUS_ORDER: readonly Status[] = ["held", "listed", "finished", "started", "bought"];
const GONE_LINES_MAX = 10;

export const pieces = defineAnswer({
  about: "pieces",
  example: "my pieces",
  asks: {
    phrases: [
      "show … pieces",
      "all … pieces",
      "all pieces",
      "list … pieces",
      "list all … pieces",
      "what pieces",
      "my pieces",
      "inventory",
      "how many pieces do i have",
      "how many pieces",
      "whats in stock",
      "in stock",
      "show … inventory",
      "show … stock",
      "what do i have",
      "what have i got",
      "everything i have",
      "whats in the garage",
      "show everything",
      "show all",
      "list all",
      "list everything",
      "what … inventory",
    ],
    whole: ["pieces", "all pieces", "my pieces", "inventory", "stock", "items", "everything"],
  },
  answer: answerPieces,
});

function answerPieces({ books, today }: Asked): Answer {
  if (books.pieces.size === 0) {
    return reply(["No pieces on the books yet.", 'A note adds one: "bought dresser 30"']);
  }
  const unsold = unsoldPieces(books);
  const byStatus = STATUS_ORDER.flatMap((status) => {
    const alike = unsold.filter((piece) => statusOf(piece) === status);
    if (alike.length === 0) return [];
    return [
      `${status[0]!.toUpperCase()}${status.slice(1)}:`,
      ...fitted(alike, LIST_LINES_MAX, unsoldLine, (left) => `  and ${left.length} more`),
    ];
  });
  return reply([
    `${unsold.length} unsold`,
    ...[...byStatus, ...goneLines(books, today)].flatMap(foldedUnder),
  ]);
}

function unsoldLine(piece: Readonly<Piece>): string {
  const asking = piece.listPrice === null ? "" : `, asking ${show(piece.listPrice)}`;
  return `  ${pieceLabel(piece)}: cost ${show(costOf(piece))}${asking}`;
}

function goneLines(books: Books, today: Day): string[] {
  const gone = [...books.pieces.values()]
    .filter((piece) => piece.gone)
    .sort((a, b) => b.goneOn!.localeCompare(a.goneOn!) || b.number - a.number)
    .slice(0, GONE_LINES_MAX);
  if (gone.length === 0) return [];
  return [
    "Latest gone:",
    ...gone.map(
      (piece) =>
        `  ${pieceLabel(piece)}: ${piece.gone} ${showDay(piece.goneOn!, today)}, ${signed(profitOf(piece) ?? 0)}`,
    ),
  ];
}
