import type { Tok } from "../clause.ts";
import {
  DENIES,
  HARMLESS_BESIDE,
  HARMS,
  IS_OVER,
  MAY_UNDO_DEAL,
  NONE_OF,
  OF_DEALS,
  REASONS_WHY,
  REGRETS,
  REGRETTED,
  SAYS,
  THOUGHT,
} from "../words/lived.ts";
import { BLEMISHES, HURTS, PIECE_PARTS } from "../words/parts.ts";
import { HOUSEHOLD } from "../words/people.ts";
import { isBesideDeed, isOfNoDeed, SENTENCE_MIN } from "./of-ours.ts";
import { isDeed, isEnd, isOneOfUs, isSpokenOf, isTold, isUnlisted, type Stretch } from "./told.ts";

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
  if (from > 0 && tellsHowItIs(tokens, stretch)) return true;
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
  if (isRegret(words)) return true;
  if (isOfUs(words)) return (isDenied || !words.some(isHedged)) && isBesideDeed(tokens, stretch, isGoingOn);
  return (
    !isDenied && isSpoken(words) && words.every((_, at) => isOfNoDeed(tokens, said + at, stretch, false))
  );
}

/** "missing one door but solid oak", "key is lost but the lock works": parts, wear and traits, and nothing of a deal. */
function tellsHowItIs(tokens: readonly Tok[], stretch: Stretch): boolean {
  const words = tokens.slice(stretch.said, stretch.to);
  return (
    words.length > 1 &&
    words.some((token) => isState(token) || (NONE_OF.has(token.text) && words.some(isPartOrWear))) &&
    words.every((token, at) => {
      const { kind, text, roles } = token;
      if (kind === "piece") return isSpokenOf(tokens, token, stretch);
      if (kind === "amount") return text === "one" && isPartOrWear(words[at + 1]);
      if (kind !== "word" || roles.person || roles.method || roles.vagueTime) return false;
      if (isPartOrWear(token) || isState(token) || NONE_OF.has(text)) return true;
      return !(
        roles.hedge ||
        MAY_UNDO_DEAL.has(text) ||
        isUnlisted(token) ||
        isDeed(token) ||
        OF_DEALS.has(text)
      );
    })
  );
}

const isPartOrWear = (token: Tok | undefined): boolean =>
  token !== undefined && (PIECE_PARTS.has(token.text) || BLEMISHES.has(token.text));

const isState = ({ text, roles }: Tok): boolean =>
  HURTS.has(text) || BLEMISHES.has(text) || roles.trait !== undefined;

/** "should have asked more" */
const isRegret = (words: readonly Tok[]): boolean => {
  const at = words.findIndex(({ text }) => text === "have");
  return (
    at > 0 &&
    at < SENTENCE_MIN &&
    REGRETS.has(words[at - 1]!.text) &&
    REGRETTED.has(words[at + 1]?.text ?? "") &&
    words.slice(0, at - 1).every(isOneOfUs) &&
    words.every(({ kind, text }) => (kind === "word" || text === "it") && !OF_DEALS.has(text))
  );
};

/** What is wished, offered or still to come may be the deal. */
const isHedged = ({ roles }: Tok): boolean => HARMLESS_BESIDE.has(roles.hedge ?? "");

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
