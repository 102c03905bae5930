import type { Books } from "../books/books.ts";
import { earmarked, monthRow } from "../books/month.ts";
import { pieceLabel } from "../books/piece.ts";
import type { Day, Month } from "../calendar.ts";
import { addMonths, firstDayOf, monthName, monthOf, showMonth } from "../calendar.ts";
import { show } from "../money.ts";
import type { Button } from "../reply.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { earningsOf } from "./earnings.ts";
import { readyWords } from "./lines.ts";
import { monthThrough } from "./month.ts";
import { slipsOf } from "./recap-aloud.ts";
import { noMoney, reply, signed } from "./wording.ts";

/** More slips than these are told when the month is read aloud. */
const SLIPS_MAX = 3;

export const recap = defineAnswer({
  about: "recap",
  example: "recap",
  asks: {
    phrases: [
      "monthly summary",
      "month summary",
      "recap",
      "weekly recap",
      "give me a recap",
      "month recap",
      "recap … {month}",
      "wrap up",
      "wrapup",
      "monthly recap",
      "recap … month",
    ],
    whole: ["recap", "recaps", "rundown", "wrap up"],
  },
  answer: answerRecap,
});

function answerRecap({ question, books, today }: Asked): Answer {
  const asked = question.month ?? monthToTell(books, today);
  if (asked > monthOf(today)) return reply([`${showMonth(asked)} has not begun yet.`]);
  if (!books.months.has(asked)) return noMoney(books, showMonth(asked));
  return {
    ...reply(recapLines(books, asked, today)),
    buttons: nextButtons(books, asked, today),
    monthPicture: asked,
  };
}

/** Asked for no month: the one just ended, or the running one where that one is empty. */
function monthToTell(books: Books, today: Day): Month {
  const ended = addMonths(monthOf(today), -1);
  return books.months.has(ended) ? ended : monthOf(today);
}

/** A month on one screen: the profit, the best and the worst piece, the loan, and what looks like a slip. */
function recapLines(books: Books, month: Month, today: Day): (string | null)[] {
  const row = monthRow(books, month, today);
  const earnings = earningsOf(books, { from: firstDayOf(month), through: monthThrough(month, today) });
  const best = earnings[0];
  const worst = earnings.length > 1 ? earnings.at(-1) : undefined;
  const slips = slipsOf(books, { row, earnings, today });
  const name = month === monthOf(today) ? `${showMonth(month)} so far` : showMonth(month);
  return [
    `${name}: ${signed(row.flipProfit)}, ${row.flipped} flipped`,
    best ? `Best: ${pieceLabel(best.piece)} ${signed(best.profit)}` : null,
    worst && worst.profit < 0 ? `Worst: ${pieceLabel(worst.piece)} ${signed(worst.profit)}` : null,
    row.overhead === 0 ? null : `Overhead ${show(row.overhead)}`,
    row.otherIncome === 0 ? null : `Other income ${signed(row.otherIncome)}`,
    row.taxSetAside === 0 ? null : `Set aside for tax ${show(row.taxSetAside)}`,
    ...(books.loans.size === 0
      ? []
      : [
          `For the loan ${show(row.forLoan)}, paid ${show(row.paidToLoan)}`,
          readyWords(books, monthThrough(month, today)),
        ]),
    ...(slips.length === 0 ? [] : ["Worth a second look:"]),
    ...slips.slice(0, SLIPS_MAX).map((slip) => `- ${slip}`),
    slips.length > SLIPS_MAX ? `and ${slips.length - SLIPS_MAX} more when read aloud` : null,
  ];
}

/**
 * What may follow a recap. Presses: "rs:<cents>" that much was sent to the loan, "rg:<month>" a goal for that
 * month, "ra:<month>" the month in sentences.
 */
function nextButtons(books: Books, month: Month, today: Day): Button[][] {
  const due = books.loans.size === 0 ? 0 : earmarked(books, today);
  const next = addMonths(month, 1);
  const isAhead = next >= monthOf(today);
  return [
    ...(due > 0 ? [[{ label: `Sent ${show(due)} to the loan`, press: `rs:${due}` }]] : []),
    [
      ...(isAhead ? [{ label: `Goal for ${monthName(next)}`, press: `rg:${next}` }] : []),
      { label: "Read aloud", press: `ra:${month}` },
    ],
  ];
}
