import { isNearSpelling } from "../../notes/tokens/spelling.ts";
import { PLAIN_LOANS } from "../../notes/words/links.ts";
import { type Choice, type Decision, type Desk, NEVER_MIND } from "../decision.ts";

/** The name that an unnamed first loan goes by. */
export const UNNAMED_LOAN = "loan";

/** Which loan a note means: the one it names, or the only one; else the question which. */
export function settleLoan(
  said: string | undefined,
  desk: Desk,
): { kind: "settled"; loan: string } | Exclude<Decision, { kind: "record" }> {
  const names = [...desk.books.loans.keys()];
  if (names.length === 0)
    return { kind: "refuse", why: "No loan on the books yet. Start with: loan 14250 at 5.5%" };
  if (said !== undefined) {
    const exact = names.find((name) => name === said) ?? names.find((name) => isNearSpelling(name, said));
    if (exact) return { kind: "settled", loan: exact };
    // "the student loan" where there is but one, of no name.
    const isPlain = said.split(" ").every((word) => PLAIN_LOANS.has(word));
    if (isPlain && names.length === 1 && names[0] === UNNAMED_LOAN)
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
