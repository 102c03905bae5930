import type { MonthRow } from "../books/month.ts";
import { monthRow, taxPercentOn } from "../books/month.ts";
import { pieceLabel } from "../books/piece.ts";
import type { Day, Month } from "../calendar.ts";
import { firstDayOf, lastDayOf, monthOf, showMonth } from "../calendar.ts";
import { show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import type { Earning } from "./earnings.ts";
import { earningsOf } from "./earnings.ts";
import { fitted, noMoney, reply, signed } from "./wording.ts";

/** A phone screen holds some twenty lines; the totals below the pieces take up to eleven. */
const PIECE_LINES_MAX = 8;

export const month = defineAnswer({
  about: "month",
  example: "month",
  asks: {
    phrases: [
      "hows … month",
      "how is … month",
      "how was … month",
      "how many did i flip",
      "how many have i flipped",
      "how many did i sell",
      "{month}",
      "howd … {month}",
      "howd i do",
      "how much … {month}",
      "how … {month}",
      "what … {month}",
      "{month} … so far",
      "total … {month}",
      "totals … {month}",
      "profit … {month}",
      "made … {month}",
      "make … {month}",
      "earned … {month}",
      "sold … {month}",
      "spend … {month}",
      "spent … {month}",
      "how am i doing",
      "hows business",
      "how is business",
      "month to date",
      "month so far",
      "this month so far",
      "how did i do",
      "how much did i make",
      "how much have i made",
      "whats my profit",
      "whats the damage",
      "where am i at",
      "summary … {month}",
      "numbers … {month}",
      "show … {month}",
      "{month} total",
      "{month} totals",
      "{month} profit",
      "{month} numbers",
      "{month} summary",
      "how much profit",
      "what did i make",
      "what have i made",
      "what did i spend",
      "how much did i spend",
      "how much have i spent",
      "how much to send",
      "how much … send to the loan",
      "how much goes to the loan",
      "how much is due to the loan",
      "earmarked",
      "how many … did i sell",
      "how many … have i sold",
      "how many … sold",
      "how many did i sell",
      "how many have i sold",
      "how many pieces have i sold",
      "how much cash came in",
      "cash in",
      "whats my total",
      "hows it going money wise",
    ],
    whole: [
      "sales … {month}",
      "net … {month}",
      "flips … {month}",
      "summary … {month}",
      "month",
      "{month}",
      "this month",
      "monthly",
      "mtd",
      "months",
      "profit",
      "total",
      "totals",
      "earnings",
      "the month",
      "month total",
    ],
  },
  answer: answerMonth,
});

function answerMonth({ question, books, today }: Asked): Answer {
  const asked = question.month ?? monthOf(today);
  if (asked > monthOf(today)) return reply([`${showMonth(asked)} has not begun yet.`]);
  const name = asked === monthOf(today) ? `${showMonth(asked)} so far` : showMonth(asked);
  if (!books.months.has(asked)) return noMoney(books, name);
  const through = monthThrough(asked, today);
  const row = monthRow(books, asked, today);
  return reply([
    `${name}: ${signed(row.flipProfit)}, ${row.flipped} flipped`,
    ...pieceLines(earningsOf(books, { from: firstDayOf(asked), through })),
    ...totalLines(row, taxPercentOn(books, through), partsOf(row)),
  ]);
}

function pieceLines(earnings: readonly Earning[]): string[] {
  return fitted(
    earnings,
    PIECE_LINES_MAX,
    ({ piece, profit, because }) =>
      `  ${signed(profit)}  ${pieceLabel(piece)}${because ? ` (${because})` : ""}`,
    (left) => `  ${signed(left.reduce((sum, { profit }) => sum + profit, 0))}  and ${left.length} more`,
  );
}

/** The totals under a month's or a year's pieces; what is zero and says nothing is left out. */
export function totalLines(
  row: Omit<MonthRow, "month">,
  taxPercent: string | null,
  costParts: readonly string[] = [],
): (string | null)[] {
  const costs = row.costOfSold + row.fees + row.overhead + row.writtenOff;
  const set = taxPercent === null ? "" : ` (${taxPercent}%)`;
  return [
    `Proceeds ${show(row.proceeds)}`,
    `Costs ${show(costs)}`,
    ...costParts,
    `Profit ${signed(row.flipProfit)}`,
    row.otherIncome === 0 ? null : `Other income ${show(row.otherIncome)}`,
    row.taxSetAside === 0 ? null : `Set aside for tax ${show(row.taxSetAside)}${set}`,
    `For the loan ${show(row.forLoan)}`,
    `Paid to the loan ${show(row.paidToLoan)}`,
  ];
}

/** What the costs are made of, where they are more than the cost of what was sold. */
function partsOf(row: MonthRow): string[] {
  const parts = [
    ["sold pieces", row.costOfSold],
    ["fees", row.fees],
    ["overhead", row.overhead],
    ["written off", row.writtenOff],
  ] as const;
  const told = parts.filter(([, cents]) => cents !== 0);
  if (told.every(([name]) => name === "sold pieces")) return [];
  return told.map(([name, cents]) => `  ${name} ${show(cents)}`);
}

/** The last day of a month that counts on `today`. */
export function monthThrough(of: Month, today: Day): Day {
  return lastDayOf(of) < today ? lastDayOf(of) : today;
}
