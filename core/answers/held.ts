import { dueAtPickup } from "../books/agreed.ts";
import type { Books, Piece } from "../books/books.ts";
import { pieceLabel } from "../books/piece.ts";
import { owedByBuyers } from "../books/shares.ts";
import type { Day } from "../calendar.ts";
import { showDay } from "../calendar.ts";
import { owingWords, salesOwing } from "../decide/deals/owing.ts";
import { show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { heldPieces, showAge } from "./stock.ts";
import { fitted, LIST_LINES_MAX, reply } from "./wording.ts";

export const held = defineAnswer({
  about: "held",
  example: "what's on hold",
  asks: {
    phrases: [
      "on hold",
      "held pieces",
      "show held pieces",
      "being held",
      "are held",
      "is held",
      "whats held",
      "whats being held",
      "what … held",
      "any holds",
      "any deposits",
      "what … deposits",
      "whos holding",
      "what … holding",
      "whats on hold",
      "holds",
      "show … holds",
      "how much … deposits",
      "deposits held",
      "anything held",
      "anything on hold",
      "is … on hold",
      "who … deposit",
      "what … pending",
      "whats pending",
      "any … on hold",
      "which … hold",
      "whats reserved",
      "how much … hold",
    ],
    whole: ["holds", "held", "on hold", "deposits", "pending"],
  },
  answer: answerHeld,
});

/** More sales than this that are owed for do not fit beside what is held. */
const OWED_LINES_MAX = 5;

function answerHeld({ books, today }: Asked): Answer {
  const pieces = heldPieces(books);
  const owed = owedLines(books, today);
  if (pieces.length === 0 && owed.length > 0) return reply(owed);
  if (pieces.length === 0) return reply(["Nothing is on hold.", 'A note holds one: "deposit 45 on desk"']);
  const deposits = pieces.reduce((sum, piece) => sum + piece.deposit, 0);
  return reply([
    `${pieces.length} on hold, ${show(deposits)} in deposits`,
    ...fitted(
      pieces,
      LIST_LINES_MAX,
      (piece) => heldLine(piece, today),
      (left) => `and ${left.length} more`,
    ),
    ...owed,
  ]);
}

/** Who owes what of a sale, the longest first. */
function owedLines(books: Books, today: Day): string[] {
  const sales = salesOwing(books).reverse();
  if (sales.length === 0) return [];
  const lines = fitted(
    sales,
    OWED_LINES_MAX,
    (sale) => `${owingWords(books, sale)}, ${showAge(sale.day, today)}`,
    (left) => `and ${left.length} more`,
  );
  return [`${show(owedByBuyers(books.pieces.values()))} still owed by buyers`, ...lines];
}

/** A held piece in a line: its deposit, what is due, for whom and until when. */
export function heldLine(piece: Readonly<Piece>, today: Day): string {
  const { buyer, since, until } = piece.hold!;
  const due = dueAtPickup([piece]);
  const parts = [
    piece.deposit === 0 ? "no deposit" : show(piece.deposit),
    due === null ? null : `${show(due)} at pickup`,
    buyer ? `for ${buyer}` : null,
    until
      ? `until ${showDay(until, today)}${until < today ? ", past" : ""}`
      : `held ${showAge(since, today)}`,
  ];
  return `${pieceLabel(piece)}: ${parts.filter((part) => part !== null).join(", ")}`;
}
