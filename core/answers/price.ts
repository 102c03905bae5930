import { show } from "../money.ts";
import { pluralOf } from "../notes/mentions/plural.ts";
import type { Mention } from "../notes/reading.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { priceHistoryOf, soldOfKind, TELLING_SALES_MIN } from "./history.ts";
import { counted, reply, showShare } from "./wording.ts";

export const price = defineAnswer({
  about: "price",
  example: "what have my dressers sold for",
  asks: {
    phrases: [
      "should i charge … {piece}",
      "{piece} price",
      "{piece} sold for",
      "{piece} sell for",
      "{piece} … sell for",
      "{piece} … sold for",
      "{piece} go for",
      "{piece} … go for",
      "{piece} usually",
      "sell {piece} for",
      "sold {piece} for",
      "{piece} bring",
      "{piece} usually go",
      "going rate … {piece}",
      "average … {piece}",
      "avg … {piece}",
      "avg price … {piece}",
      "average price … {piece}",
      "what … get for … {piece}",
      "get for … {piece}",
      "how much … get for … {piece}",
      "what should i list … {piece}",
      "what should i ask for … {piece}",
      "how much should i ask for … {piece}",
      "how much should i list … {piece}",
      "what should i price … {piece}",
      "how much … {piece} sell for",
      "how much … {piece} go for",
      "how much do … {piece} sell for",
      "how much does … {piece} sell for",
      "how much do … {piece} go for",
      "what do … {piece} go for",
      "what does … {piece} sell for",
      "what do … {piece} sell for",
      "what have … {piece} sold for",
      "what did … {piece} sell for",
      "how much do {piece} sell for",
      "typical price",
      "usual price … {piece}",
      "price for … {piece}",
      "what price",
      "how much have … {piece} sold for",
      "{piece} selling for",
      "what are {piece} going for",
      "{piece} going for",
      "how fast … {piece} sell",
      "how much can i get for … {piece}",
      "what can i get for … {piece}",
      "how much would … {piece} sell for",
      "do {piece} sell",
      "{piece} sell",
    ],
    whole: ["{piece} prices", "average {piece}"],
  },
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
