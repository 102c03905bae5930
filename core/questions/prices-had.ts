import type { Piece } from "../books/books.ts";
import { pieceLabel } from "../books/piece.ts";
import { showDay } from "../calendar.ts";
import { amountText, show } from "../money.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { leftOver } from "./left-over.ts";
import { narrowed, type Refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";
import { piecesOf } from "./read-pieces.ts";
import type { Features } from "./rule.ts";
import { cut, restOf } from "./words-of-answers.ts";

/** "What have i had the desk listed at", "price history of #31". */
export interface PricesQuestion {
  kind: "prices had";
  pieces: readonly Readonly<Piece>[];
}

/** A question of all that was ever asked for pieces; null where it is none. */
export function readPricesHad(parts: Parts, f: Features, desk: Desk): PricesQuestion | Refusal | null {
  if (!f.has("pricesHad") || !f.piece || parts.periods.length + parts.orders.length + parts.limits.length > 0)
    return null;
  const found = narrowed(parts, "asking", desk);
  if ("kind" in found) return found;
  const fault = leftOver(parts, ["pricesHad"]);
  if (fault) return fault;
  const pieces = piecesOf(
    desk,
    found.map(({ filter }) => filter),
  );
  return { kind: "prices had", pieces };
}

/** Each price with its day, newest first; the figure is the last. */
export function answerPricesHad({ index, today }: Desk, { pieces }: PricesQuestion): Answered {
  const prices = pieces
    .flatMap((piece) => index.of(piece.number).prices.map((price) => ({ ...price, piece })))
    .sort((a, b) => (a.day < b.day ? 1 : a.day > b.day ? -1 : b.fact.id - a.fact.id));
  const [last] = prices;
  const [only, more] = pieces;
  const of = { pieces: pieces.map(({ number }) => number) };
  const about = only && !more ? pieceLabel(only) : "Those";
  if (!last) return { understood: true, value: null, period: null, of, text: `${about}: never listed` };
  const lines = prices.map(
    ({ day, cents, fact, piece }) =>
      `  ${showDay(day, today)}: ${more ? `${pieceLabel(piece)} ` : ""}${show(cents)}${fact.kind === "list" ? " listed" : ""}`,
  );
  return {
    understood: true,
    value: amountText(last.cents),
    rows: prices.map(({ day, cents, piece }) => ({
      date: day,
      label: pieceLabel(piece),
      number: piece.number,
      value: amountText(cents),
    })),
    period: null,
    of,
    text: [
      more
        ? `List prices, ${prices.length} in all:`
        : `${about}: list price ${show(last.cents)}, of ${prices.length}`,
      ...cut(lines),
    ].join("\n"),
    ...restOf(lines),
  };
}
