import type { Answered } from "./answered.ts";
import { askingButton } from "./canonical.ts";
import type { Desk } from "./desk.ts";
import type { Refusal } from "./narrowing.ts";
import type { Parts } from "./parts.ts";

/*
 * What is said where a question is not answered: the word in the way, and what could have been meant.
 */

/** "22": an amount or a piece, nobody can tell; the piece of that number is one tap away. */
export function bareNumber(text: string, { books }: Desk): Answered | null {
  const [, digits] = /^\s*(\d{1,5})\s*\??\s*$/.exec(text) ?? [];
  if (digits === undefined || !books.pieces.has(Number(digits))) return null;
  const number = `#${Number(digits)}`;
  return {
    understood: false,
    text: "A number alone tells too little.",
    words: [digits],
    buttons: [[{ label: number, press: `ask:show ${number}` }]],
  };
}

/** "How much left": of the loan or of the pieces, nobody can tell. */
export function leftOfWhat({ books }: Desk): Answered {
  const loan = books.loans.size > 0 ? [{ label: "Of the loan", press: "ask:loan" }] : [];
  const pieces = { label: "Pieces", press: "ask:whats unsold" };
  return {
    understood: false,
    text: 'What is "left" of: the loan, or pieces?',
    words: ["left"],
    buttons: [[...loan, pieces]],
  };
}

/** "Benches?": what is asked of them is one tap away. */
export function whatAbout({ marks, items, cues, unknown }: Parts): Answered | null {
  const isOfPieces =
    items.length > 0 && items.every(({ mark, not }) => mark.senses.thing?.noun !== undefined && !not);
  if (!isOfPieces || cues.size > 0 || unknown.length > 0 || marks.length > items.length + 2) return null;
  const named = items.map(({ mark }) => mark.text).join(" and ");
  const buttons = [
    askingButton("Profit", `profit on ${named}`),
    askingButton("Sold", `how many ${named} sold`),
    askingButton("Still here", `how many ${named} are left`),
  ].filter((button) => button !== null);
  return { understood: false, text: `What about ${named}?`, buttons: [buttons] };
}

/** The words that nobody knows; else those that the trade knows and these books do not. */
export function wordsInTheWay({ unknown, items, marks }: Parts): string[] {
  const unasked = marks.filter(({ senses }) => senses.cues.includes("unasked"));
  if (unasked.length > 0) return unasked.map(({ typed }) => typed);
  const strange = items.filter(({ mark }) => mark.number === undefined && mark.senses.own.length === 0);
  return [...unknown, ...(unknown.length > 0 ? [] : strange.map(({ mark }) => mark))].map(
    ({ typed }) => typed,
  );
}

/** Words that a refusal names. */
const WORDS_NAMED = 3;

/** The answer that names what stands in the way. */
export function refused({ words, why }: Refusal): Answered {
  if (why) return { understood: false, text: why };
  const named = words.slice(0, WORDS_NAMED).map((word) => `"${word}"`);
  const text =
    named.length > 0
      ? `I don't know ${named.join(" or ")} here, so I'd rather not guess.`
      : "I can't tell what you ask for.";
  return { understood: false, text, words };
}

/** Words that only lead to the one that stands in the way. */
const LEADING = /^(?:after|before|per|during|while|when|until|with|by|for|if)$/;

/** The word in the way with what it leads to, or with the trait before it: "after rent", "square foot". */
export function wholeRefusal(refusal: Refusal, { marks }: Parts): Refusal {
  const [only, more] = refusal.words;
  if (more !== undefined || refusal.why) return refusal;
  const at = marks.findIndex(({ typed }) => typed === only);
  if (at < 0) return refusal;
  const [before, next] = [marks[at - 1], marks[at + 1]];
  if (LEADING.test(marks[at]!.text) && next && !next.period)
    return { ...refusal, words: [`${only} ${next.typed}`] };
  const isTrait = before?.senses.thing?.trait === true && before.senses.own.length === 0;
  return isTrait ? { ...refusal, words: [`${before.typed} ${only}`] } : refusal;
}
