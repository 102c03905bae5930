import type { Cents } from "../money.ts";
import type { Clause, Tok } from "./clause.ts";
import { cutsOf } from "./cutting/clauses.ts";
import type { Cut } from "./cutting/cut.ts";
import { type Draft, draft, unclearDraft } from "./interpreting/draft.ts";
import { interpret } from "./interpreting/interpret.ts";
import { lexed } from "./lexed.ts";
import { mayMend, mendOf } from "./mends/mends.ts";
import { isJoke } from "./mends/takenback.ts";
import type { Reading } from "./reading.ts";
import { withRows } from "./rows/apply.ts";
import { type Units, unitsOf } from "./rows/units.ts";
import { centsIn } from "./slots/money.ts";
import { togetherOf } from "./together/together.ts";
import { tokenShown } from "./tokens/shown.ts";
import { clauseOf, type Told } from "./told.ts";
import { unclear } from "./unclear.ts";
import { language } from "./verbs.ts";

/** The readings of a line's clauses, each whole. */
export function clausesOf(tokens: Tok[], units: Units, told: Told): Reading[] {
  const { trace } = told;
  const said = withRows(units, trace);
  const cuts = cutsOf(said.tokens, language().facts);
  if (trace)
    for (const cut of cuts) trace.push({ table: "clause", words: cut.tokens.map(tokenShown).join(" ") });
  if (cuts.length > 1 && isJoke(tokens)) return [unclear({ kind: "denial" }, told)];
  const isMending = cuts.length > 1 && mayMend(said);
  const drafts: Draft[] = [];
  for (const cut of cuts) drafts.push(draftOf(cut, told, isMending, drafts.at(-1)));
  if (drafts.length === 0) return [unclear({ kind: "unknown" }, told)];
  return correctedOnly(togetherOf(drafts, told.line), told.text);
}

/** The draft of a clause, which may correct an earlier note where one of several does. */
function draftOf(cut: Cut, told: Told, isMending: boolean, before: Draft | undefined): Draft {
  const clause = clauseOf(cut.tokens, told);
  const mend = isMending ? mendOf(unitsOf(cut.tokens), told.today) : null;
  // "the hutch was 60 not 65 and the paint was 14": a correction goes on.
  if (mend && (mend.isSure || before?.kind === "mend")) return draft("mend", { ...mend.mend }, clause);
  const isOfLoan = before !== undefined && isPaidOnIt(clause, before);
  if (isOfLoan) clause.signs.add("loan");
  const made = interpret(clause, cut);
  // "she sold me a lamp for 8 and a stool for 5": asked as the one before.
  if (cut.repeats && before?.trouble?.kind === "anotherPerson" && !made.trouble)
    return unclearDraft(clause, before.trouble, { could: [] });
  if (!isOfLoan) {
    made.repeats = cut.repeats !== undefined;
    return made;
  }
  const name = before.fields["loan"];
  if (made.kind === "pay" && made.fields["loan"] === undefined && name !== undefined)
    made.fields["loan"] = name;
  return made;
}

/** "statement says 6251.08 on the van loan, paid 200 on it": the loan again. */
function isPaidOnIt({ tokens, signs }: Clause, before: Draft): boolean {
  if (!signs.has("pronoun") || !signs.has("number") || signs.has("named")) return false;
  const isOfLoan = language()
    .grammars.get(before.kind)
    ?.fields.some(({ slot }) => slot === "loan");
  return isOfLoan === true && tokens.some(({ text }) => /^(?:paid|pd|payed|sent|put)$/.test(text));
}

/** "scratch that, it was 8": the note stands with the other value, and nothing is taken back beside it. */
function correctedOnly(readings: Reading[], text: string): Reading[] {
  const [undo, fix, ...others] = readings;
  // "i put it on the wrong one, it was for the bench": of what is not understood, and not of the newest note.
  const isOfUnknown = undo?.kind === "unclear" && !undo.could && fix?.kind === "mend" && fix.of?.back === 1;
  if (isOfUnknown && others.length === 0) return [{ ...undo, text }];
  const amount = fix?.kind === "fix" && others.length === 0 ? fix.amount : undefined;
  const old = undo?.kind === "unclear" && amount !== undefined ? amountIn(undo) : null;
  // "i typed 27, should've been 21": what it was tells which note is meant.
  if (undo && old !== null && amount !== undefined)
    return [{ kind: "mend", of: { amount: old }, to: { amount }, text, line: undo.line }];
  if (undo?.kind !== "undo" || fix?.kind !== "fix" || others.length > 0) return readings;
  return [{ ...fix, text }];
}

/** The one amount of a clause that says nothing else that is known. */
function amountIn({ text }: Reading): Cents | null {
  const [amount, ...others] = lexed(text).filter(({ kind }) => kind === "amount");
  return amount && others.length === 0 ? centsIn(amount) : null;
}
