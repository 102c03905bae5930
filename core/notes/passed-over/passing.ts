import { type Clause, MEASURES_OR_PIECE, type Tok } from "../clause.ts";
import type { Draft } from "../interpreting/draft.ts";
import { HINTS, type Sign } from "../tokens/sign-bits.ts";
import { isCommon } from "../words/daily.ts";
import { NEAR_AMOUNT } from "../words/doubts.ts";
import {
  ARTICLES_WIDE,
  OPENS_ASIDE,
  OPENS_OF_OWN,
  OPENS_WIDE,
  OWNS,
  TERMS,
  WHOSE_OWN,
} from "../words/links.ts";
import { isOwner } from "../words/people.ts";

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
  const isTimed = !drafts.some(({ kind, fields }) => kind === "work" && fields["minutes"] === undefined);
  return drafts.filter(
    (draft) => draft.trouble === undefined || !(isInPassing(draft) || (isTimed && isTimeOfLife(draft))),
  );
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

/** "twelve hours on the ward and then 2 hours on the bench": a time of no work on anything. */
const isTimeOfLife = ({ trouble, clause, could }: Draft): boolean =>
  trouble?.kind === "left" &&
  could.every(({ kind, fields }) => kind === "work" && fields["pieces"] === undefined) &&
  clause.tokens.every((token) => token.kind === "duration" || saysNothing(token));

const isOfToday = ({ kind, text }: Tok): boolean => kind !== "day" || text === "today";

/** A mark, or a word that neither says a verb of the books nor turns one round. */
export function saysNothing({ kind, text, roles, unknown }: Tok): boolean {
  if (kind === "mark" || kind === "grain" || kind === "day") return true;
  if (kind !== "word" || roles.hedge || roles.vagueTime) return false;
  if (roles.heads?.some((head) => !head.light && head.tails === null)) return false;
  return !unknown || isCommon(text) || isOwner(text);
}

/**
 * The words of a clause that are said in passing: those ahead of its first mark or behind its last one, and those behind a word that opens an aside
 * ("during naptime", "while the soup simmered", "singing all the way"), up to what a slot took or may say something. In
 * the narrow sense, "for my fence" names what a cost is for: a piece has to be named before such a word.
 */
export function passingIn(tokens: readonly Tok[], isNarrow = false): ReadonlySet<Tok> {
  const passing = new Set<Tok>();
  let isPassing = false;
  let isWide = !isNarrow;
  let isTold = false;
  let isAtEnd = true;
  for (let at = tokens.length - 1; at >= 0 && isAtEnd; at -= 1) {
    const token = tokens[at]!;
    if (token.kind === "mark") for (const behind of tokens.slice(at + 1)) passing.add(behind);
    isAtEnd = !token.claimed && token.kind !== "mark" && isNothing(tokens, at);
  }
  const ahead = tokens.findIndex(({ kind }) => kind === "mark");
  if (ahead > 0 && tokens.slice(0, ahead).every((token, at) => !token.claimed && isNothing(tokens, at)))
    for (const token of tokens.slice(0, ahead)) passing.add(token);
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    isWide ||= token.kind === "piece" && token.claimed;
    isTold ||= token.claimed && MEASURES_OR_PIECE.has(token.kind);
    isPassing &&= !token.claimed && token.kind !== "mark" && isNothing(tokens, at);
    isPassing ||=
      !token.claimed &&
      (isNothing(tokens, at) || isLike(token, tokens[at + 1])) &&
      (opensAside(token, tokens[at + 1], isWide) || (isTold && isDoing(token)));
    if (isPassing) passing.add(token);
  }
  return passing;
}

/** "like a maniac": such a word is in no list by itself, and before a number it is no opener. */
const isLike = ({ text, roles }: Tok, next: Tok | undefined): boolean =>
  !roles.hedge && !roles.heads && OPENS_ASIDE.has(text) && next?.kind === "word";

/** "sick about it": what stands before no number says nothing of one. */
function isNothing(tokens: readonly Tok[], at: number): boolean {
  const token = tokens[at]!;
  const next = tokens[at + 1]?.kind ?? "word";
  if (TERMS.has(token.text)) return false;
  return saysNothing(token) || (NEAR_AMOUNT.test(token.text) && (next === "word" || next === "mark"));
}

/** "and my back hurts" opens one, "and a vase" none; "on her break", and not "on tick". */
function opensAside({ text }: Tok, next: Tok | undefined, isWide: boolean): boolean {
  if (OPENS_OF_OWN.has(text)) return next !== undefined && OWNS.has(next.text);
  if (isWide && OPENS_WIDE.has(text)) return next !== undefined && opensOf(text).has(next.text);
  return OPENS_ASIDE.has(text);
}

/** "on a dentist" names no more than where or on whom, "for a fence" what it is for. */
const opensOf = (text: string): ReadonlySet<string> => (text === "on" ? ARTICLES_WIDE : WHOSE_OWN);

/** "singing all the way", behind what the note tells. */
const isDoing = ({ text }: Tok): boolean =>
  text.length > ING_LENGTH_MIN && text.endsWith("ing") && isCommon(text);

const ING_LENGTH_MIN = 5;
