import type { Books } from "../books/books.ts";
import { owedOn } from "../books/loan.ts";
import { earmarked, monthRow } from "../books/month.ts";
import { owedByBuyers } from "../books/shares.ts";
import type { Day } from "../calendar.ts";
import { monthOf } from "../calendar.ts";
import { type Cents, show } from "../money.ts";
import { sideBySide } from "../phone.ts";
import { signed } from "./wording.ts";

/** What a note may move, in cents, as of a day: the running month, the loans, what is earmarked for them. */
export interface Figures {
  flipProfit: Cents;
  otherIncome: Cents;
  /** Null where there is no loan. */
  owed: Cents | null;
  earmarked: Cents;
  /** What buyers still owe: profit that is not in hand. */
  buyersOwe: Cents;
  /** Whether anything was ever sent to a loan. */
  sent: boolean;
}

export function figuresOf(books: Books, today: Day): Figures {
  const { flipProfit, otherIncome } = monthRow(books, monthOf(today), today);
  const owed = books.loans.size === 0 ? null : owedOn(books, today);
  const buyersOwe = owedByBuyers(books.pieces.values());
  const due = earmarked(books, today);
  return { flipProfit, otherIncome, owed, earmarked: due, buyersOwe, sent: wasSent(books, today) };
}

/** `isOwedSaid`: what is owed was said already. What a note moved, in one line where it fits: "Month +107.50 · due to the loan 107.50". Nothing moved: no line. */
export function movedLines(before: Figures, after: Figures, isOwedSaid = false): string[] {
  const moved = (name: keyof Figures) => before[name] !== after[name];
  const isLoanNew = before.owed === null && after.owed !== null;
  const isOwedTold = moved("owed") && !isLoanNew && !isOwedSaid && after.owed !== null;
  const parts = [
    ...(moved("flipProfit") ? [`month ${signed(after.flipProfit)}`] : []),
    ...(moved("otherIncome") ? [`other income ${signed(after.otherIncome)}`] : []),
    ...(isOwedTold ? [`loan ${show(after.owed ?? 0)}`] : []),
    ...(after.owed !== null && (isLoanNew || moved("earmarked")) ? [duePart(after, isOwedTold)] : []),
  ];
  return sideBySide(parts).map((line) => line.charAt(0).toUpperCase() + line.slice(1));
}

function duePart({ earmarked: due, buyersOwe, sent }: Figures, isLoanNamed: boolean): string {
  if (due + buyersOwe >= 0 && due < 0) return `waiting on buyers ${show(-due)}`;
  if (due >= 0) return `due to ${isLoanNamed ? "it" : "the loan"} ${show(due)}`;
  return sent ? `paid ahead ${show(-due)}` : `to earn back ${show(-due)}`;
}

/**
 * What is earmarked on a day. Below zero it waits on buyers that still owe, or more was paid than was earned; where
 * nothing was ever sent, costs came before earnings and are to be earned back first.
 */
export function readyWords(books: Books, day: Day): string {
  const ready = earmarked(books, day);
  if (ready >= 0) return `Due to the loan: ${show(ready)}`;
  if (ready + owedByBuyers(books.pieces.values()) >= 0) return `Waiting on buyers: ${show(-ready)}`;
  if (wasSent(books, day)) return `Paid ahead: ${show(-ready)} more than earned`;
  return `Nothing to send yet: ${show(-ready)} to earn back`;
}

function wasSent(books: Books, day: Day): boolean {
  const paid = [...books.months].some(([month, { paidToLoan }]) => month <= monthOf(day) && paidToLoan > 0);
  return paid || books.declaredSent > 0;
}
