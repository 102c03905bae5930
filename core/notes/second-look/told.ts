import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { STAYS, TRADES, US } from "../words/chatter.ts";
import { isCommon } from "../words/daily.ts";
import { AND, THE_SAME, WHOSE_OWN } from "../words/links.ts";
import {
  ANY_OR_OWN,
  BE,
  BEFORE_AS,
  CARRIES,
  COMES_OFF,
  COMING,
  DENIED,
  DENIES,
  DUE,
  HARMS,
  HERS,
  isLived,
  LIVES_ON,
  NAMES_WHO,
  NAMES_WHOSE,
  NEEDED,
  NEEDS,
  OF_DEALS,
  OFF_PRICE,
  OPENS_TOLD,
  SAYS,
  STILL,
  THEIR_DEALS,
  THROUGH,
  TURNS_ON,
  WANTED_FOR,
  WANTS,
  WILL,
} from "../words/lived.ts";
import { PIECE_PARTS } from "../words/parts.ts";
import { HOUSEHOLD, isOwner } from "../words/people.ts";
import { PAST_OF, PASTS } from "../words/tenses.ts";
import { formsOf } from "../words/words.ts";

/*
 * What is told in passing behind a whole fact: "keeping the stool, our boy stands on it to brush his teeth". A stretch
 * behind a mark or an opener that has a verb of everyday life, and neither a number, a verb of the books, a denial, a word
 * of what is still to come nor a piece that is not spoken of beside it, is told so.
 */

/** A stretch of a line's tokens, `from` up to `to`, with its opener, behind which its words begin. */
export interface Stretch {
  from: number;
  said: number;
  to: number;
}

const isMark = ({ kind, hints }: Tok): boolean => kind === "mark" && (hints & HINTS.markByChat) !== 0;
/** A mark or an "and", behind which nothing more is said. */
export const isEnd = (token: Tok): boolean => isMark(token) || (token.kind === "word" && AND.has(token.text));

const endsSentence = (token: Tok | undefined): boolean => token !== undefined && /^[.!;]$/.test(token.text);

/** "my wife was going to come over and work 2 hours on it": behind "and" the plan goes on. */
export function plansOn(tokens: readonly Tok[], { said, to }: Stretch): boolean {
  const [verb] = (tokens[to + 1]?.text ?? "").split(" ") as [string];
  const isPlan = tokens
    .slice(said, to)
    .some(({ roles, text }) => roles.hedge === "intention" || WILL.has(text));
  return isPlan && AND.has(tokens[to]?.text ?? "") && PAST_OF.has(verb) && !PASTS.has(verb);
}

/** The stretches of a line between its marks and openers, each with the mark or opener before it. */
export function stretchesOf(tokens: readonly Tok[]): Stretch[] {
  const stretches: Stretch[] = [];
  let from = 0;
  let said = 0;
  for (let at = 0; at <= tokens.length; at += 1) {
    const token = tokens[at];
    const isJoint = token === undefined || isMark(token) || opens(token, tokens[at - 1]);
    if (!isJoint) continue;
    if (at > said) stretches.push({ from, said, to: at });
    if (at > said) from = at;
    said = at + 1;
  }
  return stretches;
}

/** "nobody so much as asks" opens nothing. */
const opens = ({ kind, text }: Tok, before: Tok | undefined): boolean =>
  kind === "word" && OPENS_TOLD.has(text) && !(text === "as" && BEFORE_AS.has(before?.text ?? ""));

/** Whether a stretch tells nothing of the fact beside it. */
export function isTold(tokens: readonly Tok[], stretch: Stretch, isGoingOn: boolean): boolean {
  const { from, said, to } = stretch;
  if (from === 0 && !endsSentence(tokens[to])) return false;
  let isLivedIn = isGoingOn;
  let strange = 0;
  for (let at = from; at < said; at += 1) if (TURNS_ON.has(tokens[at]!.text)) return false;
  for (let at = said; at < to; at += 1) {
    const token = tokens[at]!;
    const isTheirs =
      isTheirDeal(tokens, at, stretch) || (token.roles.labor && isOfTheirs(tokens, at, stretch));
    if (isTheirs || isVerb(token) || DENIES.has(token.text)) isLivedIn = true;
    if (isTheirs || isSafe(tokens, at, stretch)) continue;
    const isNaming = at > said && NAMES_WHO.has(tokens[at - 1]!.text) && !isSeveral(token);
    if (!isUnlisted(token) || isNaming) return false;
    strange += 1;
  }
  // "while i was away the sourdough died": a word of no list only where a sentence of its own begins.
  const isOfItsOwn = tokens.slice(from, said).some(isMark) && isEnd(tokens[said - 1]!);
  return isLivedIn && strange <= (isOfItsOwn ? STRANGE_MAX : 0);
}

const STRANGE_MAX = 1;

const isSeveral = ({ text }: Tok): boolean => /[^s]s$/.test(text);

/** A word of no list. */
export const isUnlisted = (token: Tok): boolean =>
  token.kind === "word" &&
  token.unknown === true &&
  headsOf(token).length === 0 &&
  !(isLived(token.text) || isCommon(token.text) || OF_DEALS.has(token.text));

/** A verb of everyday life, or of saying. */
export const isVerb = ({ kind, text }: Tok): boolean =>
  (kind === "word" || kind === "piece") && (SAYS.has(text) || text.split(" ").some(isLived));

/** What the books would take for something done. */
export const isDeed = (token: Tok): boolean =>
  !isVerb(token) && headsOf(token).some(({ light, tails }) => !light && tails === null);

/** "they just bought a house", "he sold his boat": what others do with a thing that is none of ours. */
function isTheirDeal(tokens: readonly Tok[], at: number, { said, to }: Stretch): boolean {
  if (!THEIR_DEALS.has(tokens[at]!.text.replace("just ", "")) || !isThey(tokens[said]!)) return false;
  const [next, ...object] = tokens.slice(at + 1, to);
  if (!next || !(ANY_OR_OWN.has(next.text) || isSeveral(next) || next.roles.plain)) return false;
  if (object.length === 0 && ANY_OR_OWN.has(next.text)) return false;
  return [next, ...object].every(
    (token) => token.kind !== "piece" && !isUnlisted(token) && (!token.roles.supply || token.roles.plain),
  );
}

const isThey = ({ text }: Tok): boolean =>
  THE_SAME.has(text.replace(/(?:s|re|ve)$/, "")) || isOwner(text) || HERS.has(text);

/** A token of a stretch that says nothing of a fact. */
function isSafe(tokens: readonly Tok[], at: number, stretch: Stretch): boolean {
  const token = tokens[at]!;
  const { kind, text, roles } = token;
  const before = tokens[at - 1]?.text ?? "";
  if (kind === "span" || kind === "grain" || kind === "clock") return true;
  if (kind === "piece") return isSpokenOf(tokens, token, stretch);
  if (kind === "amount") return isHowMany(tokens, at);
  if (kind !== "word" || OF_DEALS.has(text) || TRADES.has(text) || STAYS.has(text) || TURNS_ON.has(text))
    return false;
  if (roles.vagueTime || roles.method) return false;
  if (roles.labor) return isOfTheirs(tokens, at, stretch);
  if ((token.hints & HINTS.month) !== 0) return before === "in";
  if (roles.stream && !roles.plain) return false;
  if (isOwner(text) && !WHOSE_OWN.has(text) && !HERS.has(text))
    return at + 1 < stretch.to ? isVerb(tokens[at + 1]!) : !NAMES_WHOSE.has(before);
  if (text === "his" || text === "her") return at + 1 < stretch.to;
  if (text === "through") return THROUGH.has(before) && at + 1 < stretch.to;
  if (text === "still") return STILL.has(tokens[at + 1]?.text ?? "");
  if (text === "off") return !OFF_PRICE.has(before);
  if (roles.hedge || WILL.has(text)) return isHarmless(tokens, at, stretch);
  const isLife = isLived(text);
  if (HARMS.has(text) && tokens[at + 1]?.roles.pronoun) return false;
  if (headsOf(token).length > 0) return isLife && headsOf(token).every(({ light }) => light);
  if (roles.supply && isSaidTwice(tokens, token, stretch)) return false;
  return isLife || !token.unknown || isCommon(text) || isPartOfIt(tokens, at);
}

/** "the lid doesn't close" */
const isPartOfIt = (tokens: readonly Tok[], at: number): boolean => {
  const next = tokens[at + 1];
  return PIECE_PARTS.has(tokens[at]!.text) && next !== undefined && (isVerb(next) || DENIES.has(next.text));
};

/** A piece that the rest of the line names, or "it". */
export function isSpokenOf(tokens: readonly Tok[], { mention, text }: Tok, { from, to }: Stretch): boolean {
  if (isLived(text) || /\bold one$|^one of th(?:em|ose|ese)$/.test(text)) return true;
  if (!mention || mention.count !== undefined || mention.number !== undefined) return false;
  if (mention.it) return true;
  return tokens.some(
    (other, at) => (at < from || at >= to) && other.mention?.name === mention.name && !mention.traits,
  );
}

/** "three kids", "a family of six" */
const isHowMany = (tokens: readonly Tok[], at: number): boolean =>
  isFew(tokens, at) && (isCommon(tokens[at + 1]!.text) || tokens[at + 1]!.roles.person === true);

/** "six nights", "zero replies" */
export function isFew(tokens: readonly Tok[], at: number): boolean {
  const { text, amount, each } = tokens[at]!;
  const next = tokens[at + 1];
  const isSmall = !each && !amount?.money && amount?.exact !== null && /^(?:[2-9]|[a-z]+)$/.test(text);
  return isSmall && next?.kind === "word" && /[^s]s$/.test(next.text) && !PIECE_PARTS.has(next.text);
}

/** What a cost is for is no remark on it. */
export const isSaidTwice = (tokens: readonly Tok[], { text }: Tok, { from, to }: Stretch): boolean =>
  tokens.some((other, at) => (at < from || at >= to) && other.text === text);

/** "it doesn't fit my car", "she will use it", "her kids need one", "he is due in june". */
export function isHarmless(tokens: readonly Tok[], at: number, { said, to }: Stretch): boolean {
  const { text, roles } = tokens[at]!;
  const [next, behind] = [tokens[at + 1], tokens[at + 2]];
  if (at + 1 >= to || !next) return false;
  if (text === "due" || text === "expecting") return BE.has(tokens[at - 1]?.text ?? "") && DUE.has(next.text);
  if (COMING.has(text))
    return COMES_OFF.has(next.text) && !tokens.slice(said, at).some(({ roles: { person } }) => person);
  if (DENIES.has(text)) {
    const denied = next.text === "to" ? behind : next;
    return (
      [denied?.text ?? "", ...formsOf(denied?.text ?? "")].some((form) => DENIED.has(form)) ||
      next.roles.opinion === true ||
      next.roles.trait === true
    );
  }
  const isOfOthers = at > said ? !isUs(tokens[at - 1]!) : isOfThem(tokens, said);
  if (WILL.has(text)) return isOfOthers && LIVES_ON.has(next.text);
  if (SAYS.has(text)) return isOfOthers;
  if (WANTS.has(text)) return isOfOthers && NEEDED.has(next.text) && WANTED_FOR.has(behind?.text ?? "");
  if (NEEDS.has(text)) return isOfOthers && NEEDED.has(next.text);
  return roles.hedge === "vague" && next.kind !== "amount" && next.kind !== "duration";
}

/** "he's a magician and will use it on stage": of whom the stretch before tells. */
const isOfThem = (tokens: readonly Tok[], said: number): boolean =>
  tokens[said - 1]?.text === "and" &&
  tokens.slice(0, said).some(({ text }) => THE_SAME.has(text) || HERS.has(text));

/** "she just painted her dining room", "the buyer carried it out by himself" */
function isOfTheirs(tokens: readonly Tok[], at: number, { said }: Stretch): boolean {
  const before = tokens.slice(said, at);
  const next = tokens[at + 1];
  if (CARRIES.has(tokens[at]!.text) && next?.roles.pronoun)
    return before.some(({ text, roles }) => roles.person && !HOUSEHOLD.has(text));
  return WHOSE_OWN.has(next?.text ?? "") && before.some(isThey);
}

const isUs = ({ text }: Tok): boolean => US.has(text);

/** One of us as the one who does it, and not as whose it is. */
export const isOneOfUs = ({ text }: Tok): boolean => US.has(text) && text !== "my" && text !== "our";
