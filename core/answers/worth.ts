import { Decimal } from "decimal.js";
import { roundHalfUp, show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { priceHistoryOf, soldOfKind, TELLING_SALES_MIN, worthAt } from "./history.ts";
import { kindOf } from "./price.ts";
import { reply, signed } from "./wording.ts";

export const worth = defineAnswer({
  about: "worth",
  example: "worth 40 for a dresser?",
  asks: {
    phrases: [
      "would {money} … {piece}",
      "worth {money} … {piece}",
      "worth … {money} … {piece}",
      "{piece} … worth {money}",
      "{piece} … worth … {money}",
      "should i pay {money} … {piece}",
      "should i buy … {piece} … {money}",
      "should i get … {piece} … {money}",
      "should i grab … {piece} … {money}",
      "should i spend {money} … {piece}",
      "should i … {money} … {piece}",
      "should i … {piece} … {money}",
      "{money} too much … {piece}",
      "{money} … too much … {piece}",
      "too much … {piece} … {money}",
      "{money} … good price … {piece}",
      "good price … {piece}",
      "{money} … good deal … {piece}",
      "good deal … {piece}",
      "is {money} … {piece}",
      "is … {piece} … {money} … good",
      "is … {piece} … {money} … worth",
      "{money} … fair … {piece}",
      "can i pay {money} … {piece}",
      "would you pay {money} … {piece}",
      "pay {money} … {piece}",
      "{money} for … {piece} worth it",
      "{piece} for {money} worth it",
      "{piece} {money} worth it",
      "worth it",
      "{piece} … {money} … good deal",
      "{piece} … {money} … worth",
      "{money} … ok … {piece}",
      "{money} … okay … {piece}",
      "buy … {piece} for {money}",
      "{piece} at {money} … good",
      "how much should i pay for",
    ],
    whole: [
      "{piece} worth {money}",
      "worth {money} for {piece}",
      "worth {piece} {money}",
      "worth {piece} for {money}",
    ],
  },
  answer: answerWorth,
});

function answerWorth({ question, books }: Asked): Answer {
  const mention = question.pieces?.[0];
  if (question.price === undefined || mention === undefined) {
    return reply(["Say what and for how much:", '"worth 40 for a dresser?"']);
  }
  const each = roundHalfUp(new Decimal(question.price).div(mention.count ?? 1));
  const sold = soldOfKind(books, mention);
  const worthIt = worthAt(sold, each);
  if (worthIt === null) return reply([`No ${kindOf(mention, 1)} sold yet, so nothing to go by.`]);
  const { count, medianProfit, losses, anHour } = worthIt;
  const forOne = (mention.count ?? 1) > 1 ? `${show(each)} each` : show(each);
  return reply([
    `At ${forOne}: profit about ${signed(medianProfit)}`,
    anHour === null ? "No time logged on them: no pay an hour" : `Pay about ${show(anHour)} an hour`,
    `From ${count} ${kindOf(mention, count)} sold, median ${show(priceHistoryOf(sold)!.median)}`,
    losses === 0 ? null : `${losses} of them would have lost money`,
    count < TELLING_SALES_MIN ? `Fewer than ${TELLING_SALES_MIN} sold: too few to rely on.` : null,
  ]);
}
