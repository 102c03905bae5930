import type { Piece } from "../books/books.ts";
import { pieceLabel, profitOf } from "../books/piece.ts";
import { showMinutes } from "../decide/echo.ts";
import type { Cents } from "../money.ts";
import { anHour, show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { soldPieces } from "./stock.ts";
import { reply, signed } from "./wording.ts";

const BEST_LINES_MAX = 5;

export const best = defineAnswer({
  about: "best",
  example: "best flips",
  asks: {
    phrases: [
      "top {money} flips",
      "top {money}",
      "best flip",
      "best flips",
      "my best",
      "best piece",
      "best pieces",
      "best sale",
      "best seller",
      "best sellers",
      "most profitable",
      "biggest profit",
      "top flips",
      "top flip",
      "best deal",
      "best deals",
      "what … best",
      "which … best",
      "highest profit",
      "top pieces",
      "top sellers",
      "best month",
      "best money",
      "best kind",
      "best kinds",
      "made the most",
      "most money",
      "makes the most",
      "worst flip",
      "worst",
      "best margin",
      "best hourly",
    ],
    whole: ["best", "best flips", "best flip", "top"],
  },
  answer: answerBest,
});

function answerBest({ question, books }: Asked): Answer {
  const span = question.month ?? question.year ?? "";
  const sold = soldPieces(books).filter((piece) => piece.sold!.startsWith(span));
  if (sold.length === 0) return reply(["Nothing sold yet.", 'A note sells one: "sold nightstand 60 cash"']);
  const timed = sold.filter((piece) => piece.minutes > 0);
  return reply([
    `Best by profit, of ${sold.length} sold:`,
    ...top(sold, profitOfSold).map((piece) => `  ${signed(profitOfSold(piece))}  ${pieceLabel(piece)}`),
    ...(timed.length > 0
      ? ["Best by the hour:", ...top(timed, hourly).map(hourlyLine)]
      : ['Log time to see the best by the hour: "45 min on desk"']),
  ]);
}

function profitOfSold(piece: Readonly<Piece>): Cents {
  return profitOf(piece) ?? 0;
}

function hourly(piece: Readonly<Piece>): Cents {
  return anHour(profitOfSold(piece), piece.minutes) ?? 0;
}

function hourlyLine(piece: Readonly<Piece>): string {
  return `  ${show(hourly(piece))} an hour  ${pieceLabel(piece)} (${showMinutes(piece.minutes)})`;
}

function top(pieces: readonly Readonly<Piece>[], by: (piece: Readonly<Piece>) => Cents): Readonly<Piece>[] {
  const valued = pieces.map((piece) => ({ piece, value: by(piece) }));
  valued.sort((a, b) => b.value - a.value || a.piece.number - b.piece.number);
  return valued.slice(0, BEST_LINES_MAX).map(({ piece }) => piece);
}
