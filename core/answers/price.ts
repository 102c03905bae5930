import { pluralOf } from "../books/label.ts";
import { show } from "../money.ts";
import type { Mention } from "../notes/reading.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { priceHistoryOf, soldOfKind, TELLING_SALES_MIN } from "./history.ts";
import { counted, reply, showShare } from "./wording.ts";

export const price = defineAnswer({
  about: "price",
  example: "what have my dressers sold for",
  asks: {},
  answer: answerPrice,
});

function answerPrice({ question, books }: Asked): Answer {
  const mention = question.pieces?.[0];
  const history = priceHistoryOf(soldOfKind(books, mention));
  if (history === null)
    return reply([`No ${kindOf(mention, 1)} sold yet.`, 'A note sells one: "sold nightstand 60 cash"']);
  const { count, median, lowest, highest, listed, daysToSell } = history;
  return reply([
    `${count} ${kindOf(mention, count)} sold, median ${show(median)}`,
    lowest === highest ? null : `From ${show(lowest)} to ${show(highest)}`,
    listed === null
      ? "None of them was listed first."
      : `${showShare(listed.soldFor, listed.firstListPrice)} of the first list price`,
    daysToSell === null ? null : `${counted(daysToSell, "day")} from listing to sale (median)`,
    count < TELLING_SALES_MIN ? "Few sales: take it as a hint." : null,
  ]);
}

/** The kind asked about, for a count: "tall dresser", "tall dressers"; "piece" where none is named. */
export function kindOf(mention: Mention | undefined, count: number): string {
  const name = mention?.name ?? "piece";
  return [...(mention?.traits ?? []), count === 1 ? name : pluralOf(name)].join(" ");
}
