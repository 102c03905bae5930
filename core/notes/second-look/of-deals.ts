import type { Tok } from "../clause.ts";
import { DENIES, HARMS, IS_OVER, MAY_UNDO_DEAL, REASONS_WHY, SAYS, THOUGHT } from "../words/lived.ts";
import { HOUSEHOLD } from "../words/people.ts";
import { isBesideDeed, isOfNoDeed, SENTENCE_MIN } from "./of-ours.ts";
import { isEnd, isOneOfUs, isSpokenOf, isTold, isUnlisted, type Stretch } from "./told.ts";

/*
 * What is told behind a deal, and takes nothing from it: why it came to that ("sold the desk 80 because she would not go
 * higher"), what one of us did meanwhile ("sold the bench 65, I wasn't even home"), and what the deal itself says already
 * ("sold the desk 90, desk is out the door"). What a buyer does not do, pays later or thinks of it may undo it.
 */

/** Whether a stretch behind a deal takes nothing from it. */
export function isBesideDeal(tokens: readonly Tok[], stretch: Stretch, isGoingOn: boolean): boolean {
  const { from, said, to } = stretch;
  const words = tokens.slice(said, to);
  const joint = tokens.slice(from, said);
  if (from === 0 || words.some(({ kind }) => kind === "amount") || words.filter(isUnlisted).length > 1)
    return false;
  if (joint.some(({ text }) => REASONS_WHY.has(text)) || isPurpose(joint, words))
    return isBesideDeed(tokens, stretch, isGoingOn);
  // "sold the desk 90, the kid broke it"
  if (words.some(({ text }) => HARMS.has(text))) return false;
  const isDenied = words.some(({ text }) => DENIES.has(text));
  if (isTold(tokens, stretch, isGoingOn)) return !isDenied;
  if (!joint.every(isEnd) || words.length < SENTENCE_MIN || words.some(({ text }) => MAY_UNDO_DEAL.has(text)))
    return false;
  if (isOfUs(words)) return isDenied && isBesideDeed(tokens, stretch, isGoingOn);
  return (
    !isDenied && isSpoken(words) && words.every((_, at) => isOfNoDeed(tokens, said + at, stretch, false))
  );
}

/** "he said he might be back for more" */
const isSpoken = (words: readonly Tok[]): boolean =>
  words.slice(0, SENTENCE_MIN).some(({ text }) => SAYS.has(text));

/** "so she can arrange a van" */
const isPurpose = (joint: readonly Tok[], words: readonly Tok[]): boolean =>
  joint.at(-1)?.text === "so" && words.length > 2 && /^(?:can|could)$/.test(words[1]!.text);

/** Whether a stretch says what a deal of that kind comes to, or takes nothing from it. */
export const isBesideDealOf =
  (kind: string) =>
  (tokens: readonly Tok[], stretch: Stretch, isGoingOn: boolean): boolean =>
    (stretch.from > 0 && isSaidAlready(tokens, stretch, kind)) || isBesideDeal(tokens, stretch, isGoingOn);

/** "I wasn't even home", "my wife couldn't watch", "thought I'd never shift it" */
const isOfUs = (words: readonly Tok[]): boolean =>
  THOUGHT.has(words[0]!.text) ||
  words.slice(0, 2).some((token) => isOneOfUs(token) || HOUSEHOLD.has(token.text));

/** "desk is out the door", "so it's available again": what the deal comes to. */
function isSaidAlready(tokens: readonly Tok[], stretch: Stretch, kind: string): boolean {
  const over = IS_OVER[kind];
  const words = tokens.slice(stretch.said, stretch.to);
  const isOfIt = words.every(
    (token, at) =>
      token.text === "it" ||
      (token.kind === "piece" ? isSpokenOf(tokens, token, stretch) : (over?.has(token.text) ?? false)) ||
      (at === 0 && /^(?:the|my|its?|so)$/.test(token.text)),
  );
  return over !== undefined && words.length > 0 && isOfIt;
}
