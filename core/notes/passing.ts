import type { Clause, Tok } from "./clause.ts";
import type { Draft } from "./draft.ts";
import { HINTS, type Sign } from "./sign-bits.ts";
import { isEveryday } from "./words/everyday.ts";

/*
 * What is said in passing, once the clauses are known: whole clauses beside a fact, and words behind a mark. What tells
 * of the day before anything is cut is the business of `chatter.ts`.
 */

const MEASURED: readonly Sign[] = ["number", "loan", "stream", "duration", "miles", "percent", "tax"];
/** What a clause may hold that is worth a question; without any of it, it is said in passing. */
const MEASURES: readonly Sign[] = [...MEASURED, "piece", "supply", "clock", "span", "labor"];

/** Whether a clause holds something that could be recorded of a piece. */
export const isMeasured = ({ signs }: Clause): boolean => MEASURED.some((sign) => signs.has(sign));

/** "… and it was raining all day": small talk behind a fact says nothing, and asks for nothing. */
export function withoutPassing(drafts: readonly Draft[]): readonly Draft[] {
  const troubles = drafts.filter((draft) => draft.trouble !== undefined);
  if (troubles.length === 0 || troubles.length === drafts.length) return drafts;
  return drafts.filter((draft) => draft.trouble === undefined || !isInPassing(draft));
}

const IN_PASSING: ReadonlySet<string> = new Set(["unknown", "left", "anotherPerson"]);

/** A clause that could record nothing, in words that everybody uses: it says nothing of the facts beside it. */
function isInPassing({ trouble, clause }: Draft): boolean {
  if (!trouble || !IN_PASSING.has(trouble.kind)) return false;
  // "thats it for today" tells no day of what stands beside it.
  const isOfOtherDay = (clause.signs.hints & HINTS.day) !== 0 && !clause.tokens.every(isOfToday);
  if (isOfOtherDay) return false;
  const isOthers = clause.tokens[0]!.roles.person === true;
  return (
    !MEASURES.some((sign) => clause.signs.has(sign) && !(isOthers && sign === "supply")) &&
    clause.tokens.every(saysNothing)
  );
}

const isOfToday = ({ kind, text }: Tok): boolean => kind !== "day" || text === "today";

/** A mark, or a word that neither says a verb of the books nor turns one round. */
export function saysNothing({ kind, text, roles, unknown }: Tok): boolean {
  if (kind === "mark" || kind === "grain" || kind === "day") return true;
  if (kind !== "word" || roles.hedge || roles.vagueTime) return false;
  if (roles.heads?.some((head) => !head.light && head.tail.length === 0)) return false;
  return !unknown || isEveryday(text);
}

/** Where the last words of a clause begin that are said in passing behind a mark: "lunch 26, starving"; past its end without. */
export function passingFrom(tokens: readonly Tok[]): number {
  let at = tokens.length;
  while (
    at > 0 &&
    tokens[at - 1]!.kind !== "mark" &&
    !tokens[at - 1]!.claimed &&
    saysNothing(tokens[at - 1]!)
  )
    at -= 1;
  return at > 0 && tokens[at - 1]!.kind === "mark" ? at : tokens.length;
}
