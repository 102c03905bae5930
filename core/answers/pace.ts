import { Decimal } from "decimal.js";
import type { Books, Goal } from "../books/books.ts";
import { goalsInForce } from "../books/goals.ts";
import { monthRow, monthRows } from "../books/month.ts";
import type { Day } from "../calendar.ts";
import { daysBetween, lastDayOf, monthName, monthOf } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { roundHalfUp, show } from "../money.ts";
import type { Answer, Asked } from "./answer.ts";
import { defineAnswer } from "./answer.ts";
import { counted, reply, signed } from "./wording.ts";
import { sumOfRows } from "./year.ts";

export const pace = defineAnswer({
  about: "pace",
  example: "on pace?",
  asks: {
    phrases: [
      "on pace",
      "on track",
      "goal",
      "how close … goal",
      "how far … goal",
      "my goal",
      "my goals",
      "hit … goal",
      "make … goal",
      "reach … goal",
      "hows … goal",
      "pace",
      "ahead of",
      "behind",
      "how many more",
      "to hit my",
      "how many … to go",
      "goal progress",
      "am i ahead",
      "am i behind",
    ],
    whole: ["pace", "goal", "goals", "progress", "on pace", "on track", "my goal"],
  },
  answer: answerPace,
});

/** What counts toward goals: pieces flipped, and flip profit with other income in cents. */
interface Done {
  pieces: number;
  amount: Cents;
}

function answerPace({ books, today }: Asked): Answer {
  const month = doneIn(books, monthOf(today), today);
  const year = doneIn(books, today.slice(0, 4), today);
  const goals = goalsInForce(books, today);
  const lines = goals.flatMap((goal) =>
    goal.per === "month" ? monthLines(goal, month, today) : yearLines(goal, year, today),
  );
  if (lines.length > 0) return reply(lines);
  return reply([
    `${monthName(monthOf(today))} so far: ${month.pieces} flipped, ${signed(month.amount)}`,
    `${today.slice(0, 4)} so far: ${year.pieces} flipped, ${signed(year.amount)}`,
    "No goal set. A note sets one:",
    '"goal 100 pieces this year" or "goal 800 a month"',
  ]);
}

/** How near a goal would be that nobody has set: "will i make 30 pieces this year". */
export function progressTo(
  books: Books,
  today: Day,
  goal: Goal,
): { onTrack: boolean; need: number; lines: string[] } {
  const done = doneIn(books, goal.per === "month" ? monthOf(today) : today.slice(0, 4), today);
  const lines = goal.per === "month" ? monthLines(goal, done, today) : yearLines(goal, done, today);
  return { onTrack: isReached(books, today, goal), need: Math.max(0, progressOf(goal, done).need), lines };
}

/** Sums over a month ("2026-05") or a year ("2026") through today. */
function doneIn(books: Books, span: string, today: Day): Done {
  const rows =
    span.length === 7
      ? [monthRow(books, span, today)]
      : monthRows(books, today).filter((row) => row.month.startsWith(span));
  const { flipped, flipProfit, otherIncome } = sumOfRows(rows);
  return { pieces: flipped, amount: flipProfit + otherIncome };
}

function monthLines(goal: Goal, done: Done, today: Day): string[] {
  const left = daysBetween(today, lastDayOf(monthOf(today)));
  const { have, want, need } = progressOf(goal, done);
  const name = monthName(monthOf(today));
  if (need <= 0) return [`${name}: ${have} of ${want}, done`];
  return [`${name}: ${have} of ${want}`, `  ${told(goal, need)} to go, ${counted(left, "day")} left`];
}

function yearLines(goal: Goal, done: Done, today: Day): string[] {
  const year = today.slice(0, 4);
  const { have, want, need } = progressOf(goal, done);
  if (need <= 0) return [`${year}: ${have} of ${want}, done`];
  // The running month still counts as one in which something can be done.
  const monthsLeft = 13 - Number(today.slice(5, 7));
  const shown =
    goal.pieces === null ? show(roundHalfUp(aMonth(need, monthsLeft))) : showPieces(aMonth(need, monthsLeft));
  return [
    `${year}: ${have} of ${want}`,
    `  ${told(goal, need)} to go: ${shown} a month from now on`,
    `  at this pace ${told(goal, atThisPace(goal, done, today))} by December`,
  ];
}

/** Whether every goal in force is reached if it goes on like this; null where none is set. */
export function isOnTrack(books: Books, today: Day): boolean | null {
  const goals = goalsInForce(books, today);
  if (goals.length === 0) return null;
  return goals.every((goal) => isReached(books, today, goal));
}

function isReached(books: Books, today: Day, goal: Goal): boolean {
  const done = doneIn(books, goal.per === "month" ? monthOf(today) : today.slice(0, 4), today);
  const want = goal.pieces ?? goal.amount ?? 0;
  if (goal.per !== "month") return atThisPace(goal, done, today) >= want;
  const have = goal.pieces === null ? done.amount : done.pieces;
  return have * Number(lastDayOf(monthOf(today)).slice(8)) >= want * Number(today.slice(8));
}

function progressOf(goal: Goal, done: Done): { have: string; want: string; need: number } {
  if (goal.pieces !== null) {
    return {
      have: String(done.pieces),
      want: counted(goal.pieces, "piece"),
      need: goal.pieces - done.pieces,
    };
  }
  const amount = goal.amount ?? 0;
  return { have: show(done.amount), want: show(amount), need: amount - done.amount };
}

function told(goal: Goal, units: number): string {
  return goal.pieces === null ? show(units) : String(units);
}

function aMonth(need: number, monthsLeft: number): Decimal {
  return new Decimal(need).div(monthsLeft);
}

/** At most one place: "8.5", "9". */
function showPieces(pieces: Decimal): string {
  return pieces.toDecimalPlaces(1, Decimal.ROUND_UP).toString();
}

/** Where the year ends when the rest of it goes as the days so far. */
function atThisPace(goal: Goal, done: Done, today: Day): number {
  const year = today.slice(0, 4);
  const gone = daysBetween(`${year}-01-01`, today) + 1;
  const all = daysBetween(`${year}-01-01`, `${year}-12-31`) + 1;
  const have = goal.pieces === null ? done.amount : done.pieces;
  return roundHalfUp(new Decimal(have).times(all).div(gone));
}
