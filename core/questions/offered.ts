import { Decimal } from "decimal.js";
import type { Piece } from "../books/books.ts";
import { costOf, pieceLabel } from "../books/piece.ts";
import { daysBetween } from "../calendar.ts";
import { amountText, type Cents, roundHalfUp, show } from "../money.ts";
import { suggestPrice } from "../past-sales.ts";
import type { Answered } from "./answered.ts";
import type { Desk } from "./desk.ts";
import { historyFor, middleOf, quantile } from "./own-history.ts";

/*
 * What is offered for a piece of ours: whether to take it, or how low to go.
 */

/** Several pieces may be meant: which one, is asked back. */
export function whichOne(pieces: readonly Readonly<Piece>[]): Answered {
  const names = pieces.slice(0, 5).map(pieceLabel).join(", ");
  return {
    understood: true,
    value: null,
    rows: pieces.map(({ number }) => ({ label: String(number), number, value: null })),
    period: null,
    text: `Which one: ${names}?`,
  };
}

/** Yes where it gains and is no less than such pieces usually bring, or where it has been up longer than they take. */
export function answerOffer(
  desk: Desk,
  { pieces, price }: { pieces: readonly Readonly<Piece>[]; price: Cents | null },
): Answered {
  const [piece, other] = pieces;
  if (other) return whichOne(pieces);
  if (!piece) return { understood: false, text: "No such piece is here to sell." };
  const cost = costOf(piece);
  const { sales } = historyFor(desk, piece.name, piece.traits);
  const share = middleOf(sales.map(({ reached }) => reached));
  const usual =
    piece.listPrice && share !== null
      ? roundHalfUp(new Decimal(piece.listPrice).times(share).div(10_000))
      : sales.length > 0
        ? quantile(
            sales.map((sale) => sale.price),
            0.5,
          )
        : null;
  const days = piece.listed === null ? null : daysBetween(piece.listed, desk.today);
  const usualDays = middleOf(sales.map(({ daysListed }) => daysListed));
  const isLong = days !== null && usualDays !== null && days > usualDays;
  const lower = isLong ? suggestPrice(desk.books, piece, cost) : null;
  const least = lower ?? usual ?? cost;
  const asked = piece.listPrice === null ? "not listed" : `asked ${show(piece.listPrice)}`;
  const lines = [
    usual === null ? null : `Your own sales say about ${show(usual)}; ${asked}`,
    days === null || usualDays === null ? null : `Listed ${days} days, usual is ${usualDays}`,
  ].filter((line) => line !== null);
  if (price === null)
    return {
      understood: true,
      value: amountText(cost),
      period: null,
      text: [
        `${pieceLabel(piece)}: nothing is gained under ${show(cost)}, its cost so far (estimate)`,
        ...lines,
      ].join("\n"),
    };
  const gain = price - cost;
  const yes = gain > 0 && price >= Math.min(least, usual ?? least);
  const said = gain < 0 ? `${show(-gain)} under` : `${show(gain)} over`;
  return {
    understood: true,
    value: yes ? "yes" : "no",
    period: null,
    text: [
      `${yes ? "Yes" : "No"}, at ${show(price)} ${pieceLabel(piece)} brings ${said} its cost of ${show(cost)} (estimate)`,
      ...lines,
    ].join("\n"),
  };
}
