import type { Fact } from "../../core/books/facts.ts";
import { isOneThing } from "../../core/decide/talk/talk.ts";
import { bears } from "../../core/notes/verbs.ts";
import { PAID_IT } from "../../core/notes/words/replies.ts";
import { NOTHING_SPOKEN, type Spoken } from "../../core/questions/desk.ts";
import { lastQuestion } from "./last-question.ts";
import { isOfToday, newestFact, piecesOf, talkOf } from "./talk.ts";
import type { Turn } from "./turn.ts";

/** What "it" and "those" of a question mean: of the message replied to, else of this person's last note or answer today. */
export function spokenOf(turn: Turn, replyRoot: number | undefined): Spoken {
  const { ledger } = turn;
  if (replyRoot !== undefined) {
    const pieces = talkOf(turn, replyRoot).replied;
    const facts = ledger.standingFactsOf(replyRoot);
    const all = piecesOf(facts);
    if (pieces || all.length > 0) return spoken(turn, pieces ?? all, all.length > 0 ? all : (pieces ?? []));
    return facts.some(isOfLoans) ? { ...NOTHING_SPOKEN, loan: true } : NOTHING_SPOKEN;
  }
  const told = lastQuestion(turn)?.of;
  const newest = newestFact(turn);
  const isLoanNoted = newest !== undefined && isOfToday(turn, newest) && isOfLoans(newest);
  const fact = newestFact(turn, ({ pieces }) => pieces.length > 0);
  const noted = fact && isOfToday(turn, fact) ? fact : undefined;
  const isLoan = told && told.note > (newest?.note ?? 0) ? told.loan === true : isLoanNoted;
  const isTold = told !== undefined && told.pieces.length > 0 && told.note > (noted?.note ?? 0);
  const latest = isTold ? told.pieces : (talkOf(turn, undefined).latest ?? []);
  const all =
    isTold || !noted || latest.join() !== noted.pieces.join()
      ? latest
      : piecesOf(ledger.standingFactsOf(noted.root));
  const isKnown = (number: number): boolean =>
    latest.includes(number) || noted?.pieces.includes(number) === true;
  const older = noted && newestFact(turn, ({ pieces }) => pieces.length > 0 && !pieces.some(isKnown));
  const lastTwo = [
    latest,
    (isTold && told.before) || [],
    noted?.pieces ?? [],
    older && isOfToday(turn, older) ? older.pieces : [],
  ];
  return { ...spoken(turn, latest, all, lastTwo), ...(isLoan ? { loan: true } : {}) };
}

/** "Paid it" right behind a loan note or answer, in the words that name the loan; the same words otherwise. */
export function paidLoan(turn: Turn, text: string, replyRoot: number | undefined): string {
  return isPaidIt(text) && spokenOf(turn, replyRoot).loan ? "paid the loan" : text;
}

/** "Paid it", "just sent it": tells something, and asks nothing. */
export const isPaidIt = (text: string): boolean => PAID_IT.test(text);

function spoken(
  { ledger }: Turn,
  latest: readonly number[],
  all: readonly number[],
  singles: readonly (readonly number[])[] = [],
): Spoken {
  const two = [...new Set(singles.filter(({ length }) => length === 1).flat())].slice(0, 2);
  return {
    it: latest.length > 0 && isOneThing(latest, ledger.books) ? latest : [],
    all,
    lastTwo: two.length === 2 ? two.sort((a, b) => a - b) : [],
  };
}

const isOfLoans = ({ kind }: Fact): boolean => kind !== "sent" && bears(kind, "of loans");
