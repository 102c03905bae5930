import type { MonthRow } from "../books/month.ts";
import { monthRows } from "../books/month.ts";
import { monthName } from "../calendar.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { totalLines } from "./month.ts";
import { noMoney, reply, signed } from "./wording.ts";

export const year = defineAnswer({
  about: "year",
  example: "how much this year",
  asks: {
    phrases: [
      "{year}",
      "how … {year}",
      "how much … {year}",
      "what … {year}",
      "total … {year}",
      "totals … {year}",
      "profit … {year}",
      "made … {year}",
      "make … {year}",
      "sold … {year}",
      "show … {year}",
      "year so far",
      "{year} … so far",
      "year to date",
      "how many … {year}",
      "{year} total",
      "{year} totals",
      "{year} profit",
      "{year} numbers",
      "{year} summary",
      "whole year",
      "the year",
      "hows the year",
    ],
    whole: ["year", "{year}", "this year", "yearly", "ytd", "annual"],
  },
  answer: answerYear,
});

function answerYear({ question, books, today }: Asked): Answer {
  const thisYear = today.slice(0, 4);
  const asked = question.year ?? question.month?.slice(0, 4) ?? thisYear;
  if (asked > thisYear) return reply([`${asked} has not begun yet.`]);
  const name = asked === thisYear ? `${asked} so far` : asked;
  const rows = monthRows(books, today).filter(
    (row) => row.month.startsWith(asked) && books.months.has(row.month),
  );
  if (rows.length === 0) return noMoney(books, name);
  const sum = sumOfRows(rows);
  return reply([
    `${name}: ${signed(sum.flipProfit)}, ${sum.flipped} flipped`,
    ...rows.map(
      (row) => `  ${monthName(row.month).slice(0, 3)}  ${signed(row.flipProfit)} (${row.flipped} flipped)`,
    ),
    ...totalLines(sum, null),
  ]);
}

/** Each column of the months' rows added up, in cents. */
export function sumOfRows(rows: readonly MonthRow[]): Omit<MonthRow, "month"> {
  const add = (column: Exclude<keyof MonthRow, "month">): number =>
    rows.reduce((sum, row) => sum + row[column], 0);
  return {
    flipped: add("flipped"),
    proceeds: add("proceeds"),
    costOfSold: add("costOfSold"),
    fees: add("fees"),
    overhead: add("overhead"),
    writtenOff: add("writtenOff"),
    otherIncome: add("otherIncome"),
    paidToLoan: add("paidToLoan"),
    declaredSent: add("declaredSent"),
    buyersOwe: add("buyersOwe"),
    cashIn: add("cashIn"),
    cashOut: add("cashOut"),
    flipProfit: add("flipProfit"),
    taxSetAside: add("taxSetAside"),
    forLoan: add("forLoan"),
  };
}
