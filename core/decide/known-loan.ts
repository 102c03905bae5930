import type { Books } from "../books/books.ts";
import type { Day } from "../calendar.ts";
import { lexed } from "../notes/line.ts";
import { pastDay } from "../notes/quantities/days.ts";
import type { Reading, ReadingOf } from "../notes/reading.ts";
import { besideName } from "../notes/settling.ts";
import { centsIn } from "../notes/slots/money.ts";
import { BESIDE_LOAN, LOAN_MEANT, LOANWARD } from "../notes/words/links.ts";
import { UNNAMED_LOAN } from "./loans.ts";

const TOKENS_MAX = 8;

/** "150 to van", "50 more to the class loan": a payment to a loan that is on the books under that name; null else. */
export function toKnownLoan(text: string, { books, today }: { books: Books; today: Day }): Reading[] | null {
  const names = [...books.loans.keys()].filter((name) => name !== UNNAMED_LOAN);
  const { who: loan, rest } = names.length > 0 ? besideName(text, names) : {};
  const meant = loan === undefined ? null : rest!.trim();
  // "that was for grad": the payment noted before.
  if (meant && meant.split(" ").every((word) => LOAN_MEANT.has(word)))
    return [{ kind: "mend", of: { kind: "pay", back: 1 }, to: { loan: loan! }, text, line: 0 }];
  const tokens = loan === undefined ? [] : lexed(rest!);
  const amounts = tokens.filter(({ kind }) => kind === "amount");
  const [amount, ...others] = amounts.map((token) => (token.each ? null : centsIn(token)));
  const isPaid = tokens.some(({ text: word }) => LOANWARD.has(word));
  if (loan === undefined || amount == null || others.length > 0 || !isPaid || tokens.length > TOKENS_MAX)
    return null;
  const pay: ReadingOf<"pay"> = { kind: "pay", amount, loan, text, line: 0 };
  for (const { kind, text: word, said } of tokens) {
    const day = kind === "day" ? pastDay(said!, today) : null;
    if (day && "day" in day) pay.date = day.day;
    else if (kind !== "amount" && kind !== "mark" && !word.split(" ").every((one) => BESIDE_LOAN.has(one)))
      return null;
  }
  return [pay];
}
