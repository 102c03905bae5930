import type { Books } from "../../books/books.ts";
import type { Reading, ReadingOf } from "../../notes/reading.ts";
import { isNearSpelling } from "../../notes/tokens/spelling.ts";
import { couldOf } from "../../notes/unclear.ts";
import { PLAIN_LOANS } from "../../notes/words/links.ts";
import { type Choice, type Decision, type Desk, NEVER_MIND } from "../decision.ts";

/** The name that an unnamed first loan goes by. */
export const UNNAMED_LOAN = "loan";

/** "i owe 15,300 on my student loan, rate is 6.25%": one reading, a new loan where none of that name is on the books. */
export function withNewLoan(readings: readonly Reading[], { loans }: Books): readonly Reading[] {
  const at = readings.findIndex(
    (each, place) => place > 0 && each.kind === "terms" && each.rate !== undefined,
  );
  const [before, terms] = at < 0 ? [] : [readings[at - 1]!, readings[at] as ReadingOf<"terms">];
  const owed = before && [before, ...couldOf(before)].find(({ kind }) => kind === "statement");
  if (!terms || owed?.kind !== "statement" || owed.balance === undefined) return readings;
  const { balance, loan = terms.loan, text, line, date } = owed;
  const isKnown = loan === undefined ? loans.size > 0 : isOnBooks(loan, [...loans.keys()]);
  if (terms.loan !== undefined && terms.loan !== loan) return readings;
  // "student loan is at 15,000 now, rate 6": the rate of the same.
  if (isKnown) return loan === undefined ? readings : readings.with(at, { ...terms, loan });
  const opened: Reading = {
    kind: "loan",
    ...(loan === undefined ? {} : { loan }),
    balance,
    rate: terms.rate!,
    ...(date === undefined ? {} : { date }),
    text: `${text}, ${terms.text}`,
    line,
  };
  return [...readings.slice(0, at - 1), opened, ...readings.slice(at + 1)];
}

const isOnBooks = (loan: string, names: readonly string[]): boolean =>
  calledSo(loan, names) !== undefined || (names.includes(UNNAMED_LOAN) && isPlain(loan));

/** The loan of that name, or of nearly that spelling. */
const calledSo = (said: string, names: readonly string[]): string | undefined =>
  names.find((name) => name === said) ?? names.find((name) => isNearSpelling(name, said));

/** "student loan": it may be one that was never named. */
const isPlain = (said: string): boolean => said.split(" ").every((word) => PLAIN_LOANS.has(word));

/** Which loan a note means: the one it names, or the only one; else the question which. */
export function settleLoan(
  said: string | undefined,
  desk: Desk,
): { kind: "settled"; loan: string } | Exclude<Decision, { kind: "record" }> {
  const names = [...desk.books.loans.keys()];
  if (names.length === 0)
    return { kind: "refuse", why: "No loan on the books yet. Start with: loan 14250 at 5.5%" };
  if (said !== undefined) {
    const exact = calledSo(said, names);
    if (exact) return { kind: "settled", loan: exact };
    // "the student loan" where there is but one, of no name.
    if (isPlain(said) && names.length === 1 && names[0] === UNNAMED_LOAN)
      return { kind: "settled", loan: UNNAMED_LOAN };
  } else if (names.length === 1) return { kind: "settled", loan: names[0]! };
  const prompt = said === undefined ? "Which loan?" : `No "${said}" loan on the books. Which loan?`;
  const choices: Choice[] = names.map((loan) => ({
    label: loan,
    words: [`${loan} loan`],
    effect: { kind: "settle", change: { loan } },
  }));
  return { kind: "ask", ask: { prompt, wants: "choice", choices: [...choices, NEVER_MIND] } };
}
