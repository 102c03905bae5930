import { MEASURES_OR_RATE, type Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { isCommon } from "../words/daily.ts";
import { WHOSE_OWN } from "../words/links.ts";
import {
  AGREES,
  BACK_FOR,
  BEFORE_SLOT,
  DENIES,
  HARMLESS_BESIDE,
  HARMS,
  HERS,
  HOPED,
  HOPES,
  IT_WENT,
  MAY_HAVE,
  MAY_UNDO_DEAL,
  MORE_OR_LESS,
  NAMED_THINGS,
  NAMES_BODY,
  NOT_DONE_YET,
  NOT_US_BUT,
  OF_DEALS,
  REASONS,
  SAYS,
  SUBJECTS,
  TAKES_IT,
  UNABLE,
  UNDOES,
} from "../words/lived.ts";
import { PIECE_PARTS } from "../words/parts.ts";
import { HOUSEHOLD, isOwner } from "../words/people.ts";
import { formsOf } from "../words/words.ts";
import {
  isDeed,
  isFew,
  isHarmless,
  isSaidTwice,
  isSpokenOf,
  isTold,
  isUnlisted,
  isVerb,
  plansOn,
  type Stretch,
  stretchesOf,
} from "./told.ts";

/*
 * What we did ourselves stands whatever a remark beside it denies: "an hour on the desk, the paint would not come off".
 * Such a remark need only name no number, no piece and no verb of its own, and nothing that undoes such a deed.
 */

/** What nobody else can turn round. */
export const OURS: ReadonlySet<string> = new Set([
  "work",
  "spend",
  "drive",
  "pay",
  "list",
  "reprice",
  "finish",
  "start",
  "retire",
  "statement",
  "refund",
  "fallthrough",
]);

/** Of what we ask anybody may think something else. */
const ASKED_FOR: ReadonlySet<string> = new Set(["list", "reprice"]);

/** What else is said beside a deed, and has neither a number nor a verb: "couldn't watch and saved it". */
export const besideIn = (tokens: readonly Tok[]): Stretch[] =>
  stretchesOf(tokens).filter(
    ({ from, said, to }) =>
      from > 0 &&
      tokens.slice(said, to).every((token) => !MEASURES_OR_RATE.has(token.kind) && !isDeed(token)),
  );

/**
 * Whether a remark may turn a deed of that kind round all the same: a part of the piece or a wish its being done, who
 * will not come its being given away, what "they" or "it" did a payment.
 */
export function turnsDeed(kind: string, tokens: readonly Tok[], { from, said, to }: Stretch): boolean {
  const words = tokens.slice(said, to);
  if (isHoped(words)) return kind === "finish" || kind === "pay";
  if (words.some(({ text }, at) => UNDOES.has(text) && !isNamedThing(words, at))) return true;
  if (!ASKED_FOR.has(kind) && isSaidByOurs(tokens, { from, said, to })) return true;
  const isHedged = words.some(({ roles }) => roles.hedge !== undefined);
  if (kind === "pay") return isHedged && words.some(({ text }) => IT_WENT.has(text));
  if (kind === "refund" || kind === "fallthrough")
    return isHedged && words.some(({ text }) => IT_WENT.has(text) || MAY_UNDO_DEAL.has(text));
  if (kind === "retire")
    return words.some(({ text }) => TAKES_IT.has(text) || formsOf(text).some((form) => TAKES_IT.has(form)));
  if (kind !== "finish" && kind !== "start") return false;
  const isSafeWish = tokens.slice(from, said).some(isReason) || SUBJECTS.has(tokens[said]!.text);
  return (
    (isHedged && !isSafeWish) ||
    words.some(
      ({ text, roles }) => roles.labor || roles.supply || PIECE_PARTS.has(text) || NOT_DONE_YET.has(text),
    )
  );
}

/** "the man at the till", "my back can't move it" */
const isNamedThing = (tokens: readonly Tok[], at: number): boolean =>
  NAMED_THINGS.has(tokens[at]!.text) && NAMES_BODY.has(tokens[at - 1]?.text ?? "");

const isReason = ({ text }: Tok): boolean => REASONS.has(text);

/** Whether a stretch tells why, or what went on meanwhile: "while waiting for the plumber". */
export const tellsWhy = (tokens: readonly Tok[], { from, said }: Stretch): boolean =>
  tokens.slice(from, said).some(isReason);

/** Whether a stretch says nothing that could undo what we did ourselves. */
export function isBesideDeed(tokens: readonly Tok[], stretch: Stretch, isGoingOn: boolean): boolean {
  if (stretch.from > 0 && isTold(tokens, stretch, isGoingOn)) return true;
  const { from, said, to } = stretch;
  if (plansOn(tokens, stretch)) return false;
  const joint = tokens.slice(from, said);
  if (joint.some(({ text }) => UNDOES.has(text))) return false;
  const isWhy = joint.some(isReason);
  const words = tokens.slice(said, to);
  if (words.every(({ kind }) => kind === "span")) return true;
  if (!isWhy && isBit(words) && (joint.every(isMark) || isCommon(words.at(-1)!.text))) return true;
  if (!isWhy && isHoped(words)) return true;
  const isShort = to - said < (words[0]!.kind === "amount" || isAgreed(words) ? 2 : SENTENCE_MIN);
  if (!isWhy && isShort) return false;
  let strange = 0;
  let isSaid = isWhy;
  for (let at = said; at < to; at += 1) {
    const token = tokens[at]!;
    if (!isOfNoDeed(tokens, at, stretch, isWhy)) return false;
    const isHedged = HARMLESS_BESIDE.has(token.roles.hedge ?? "");
    if (isHedged && !isWhy && !isSaidOfSomething(tokens, at, stretch)) return false;
    if (isHedged && !isWhy && !isLike(joint) && !isSaidToTheEnd(tokens, at, stretch)) return false;
    isSaid ||= isVerb(token) || isHedged || token.kind === "amount" || (at > said && isDoing(token));
    if (isUnlisted(token) && !PIECE_PARTS.has(token.text)) strange += 1;
  }
  return isSaid && (isWhy || strange <= OURS_STRANGE_MAX);
}

/** "perhaps that helps", "should be enough for the seat" */
const isHoped = (words: readonly Tok[]): boolean =>
  words.length > 1 &&
  HOPES.has(words[0]!.text) &&
  words.slice(1).some(({ text }) => HOPED.has(text) || /^be /.test(text)) &&
  words.every(({ kind, text }) => (kind === "word" || kind === "piece") && !MORE_OR_LESS.has(text)) &&
  words.filter(isUnlisted).length <= OURS_STRANGE_MAX;

/**
 * "mostly the tambour slats", "a blister": a bit of talk with no verb, which names nobody, nothing that costs, no piece
 * and no work. One word alone may be what a cost was for.
 */
const isBit = (words: readonly Tok[]): boolean =>
  words.length > 1 &&
  words.every(isOfBit) &&
  words.filter(isUnlisted).length <= BIT_STRANGE_MAX &&
  !BEFORE_SLOT.has(words[0]!.text);

const isOfBit = (token: Tok): boolean => {
  const { kind, text, roles } = token;
  if (kind !== "word" || isOwner(text) || OF_DEALS.has(text) || UNDOES.has(text)) return false;
  const isThing =
    roles.supply ||
    (roles.stream && !roles.plain) ||
    roles.labor ||
    roles.noun ||
    roles.method ||
    roles.place;
  return !(isThing || roles.person || roles.hedge || roles.vagueTime || headsOf(token).length > 0);
};
const BIT_STRANGE_MAX = 1;

const isMark = ({ kind }: Tok): boolean => kind === "mark";

/** "my toddler scribbled on the side" */
const isDoing = (token: Tok): boolean => isUnlisted(token) && /[a-z]{3}ed$/.test(token.text);

/** Of fewer words nothing is told. */
export const SENTENCE_MIN = 3;
const OURS_STRANGE_MAX = 2;

/** "husband agrees" */
const isAgreed = (words: readonly Tok[]): boolean =>
  words.some(({ text }) => HOUSEHOLD.has(text)) && AGREES.has(words.at(-1)!.text);

/** "as my aunt would have" */
const isLike = (joint: readonly Tok[]): boolean => joint.some(({ text }) => text === "as");

/** "never saved", "not really": with nobody and nothing that it is said of. */
function isSaidOfSomething(tokens: readonly Tok[], at: number, stretch: Stretch): boolean {
  const { text } = tokens[at]!;
  if (at > stretch.said || SUBJECTS.has(text) || isHarmless(tokens, at, stretch)) return true;
  // "lost his flat"
  if (HERS.has(tokens[at + 1]?.text ?? "") && HARMS.has(text)) return true;
  const behind = tokens.slice(at + 1, stretch.to);
  // "can't glue anything below freezing"
  return UNABLE.has(text) && behind.length > 1 && !behind.some(({ roles }) => roles.pronoun);
}

/** "my helper would not", "that wasn't me", "she said no": it may be the deed that is denied or wished. */
function isSaidToTheEnd(tokens: readonly Tok[], at: number, stretch: Stretch): boolean {
  if (isSaidByOurs(tokens, stretch)) return true;
  const { said, to } = stretch;
  const behind = tokens.slice(at + 1, to).filter(({ text }) => !DENIES.has(text) && !MAY_HAVE.has(text));
  if (SUBJECTS.has(tokens[said]!.text) || isAgreed(tokens.slice(said, to))) return true;
  const isSpoken = tokens.slice(said, to).some(({ text }) => SAYS.has(text) || text === "before");
  return behind.length > 0 && !isSpoken && !(behind.length === 1 && NOT_US_BUT.has(behind[0]!.text));
}

/** "dropped the table to 140 since the chairs went without it" */
const isOtherNamed = (tokens: readonly Tok[], { from, to }: Stretch): boolean =>
  tokens.some(({ mention }, at) => mention !== undefined && !mention.it && (at < from || at >= to));

/** "dad says 220 tops": what somebody of us thinks it should be. */
function isSaidByOurs(tokens: readonly Tok[], { said, to }: Stretch): boolean {
  const words = tokens.slice(said, to);
  const at = words.findIndex(({ kind }) => kind === "amount");
  return (
    at > 0 && SAYS.has(words[at - 1]!.text) && words.slice(0, at).some(({ text }) => HOUSEHOLD.has(text))
  );
}

/** A token of a stretch that undoes nothing we did. */
export function isOfNoDeed(tokens: readonly Tok[], at: number, stretch: Stretch, isWhy: boolean): boolean {
  const token = tokens[at]!;
  const { kind, text, roles } = token;
  if (kind === "piece") return isSpokenOf(tokens, token, stretch) || (isWhy && isOtherNamed(tokens, stretch));
  if (kind === "amount")
    return (isFew(tokens, at) && !tokens[at + 1]!.roles.supply) || isSaidByOurs(tokens, stretch);
  if (kind !== "word") return kind === "span" || kind === "grain" || kind === "clock";
  if (isNamedThing(tokens, at)) return true;
  // "said he might be back for more"
  if (text === "back" && BACK_FOR.has(tokens[at + 2]?.text ?? "") && tokens[at + 1]!.text === "for")
    return true;
  if (OF_DEALS.has(text) || UNDOES.has(text) || roles.vagueTime || roles.method) return false;
  if ((roles.stream && !roles.plain) || (roles.labor && !isWhy)) return false;
  if ((token.hints & HINTS.month) !== 0) return false;
  // "three kids"
  if (at > 0 && tokens[at - 1]!.kind === "amount" && isFew(tokens, at - 1)) return true;
  if (isOwner(text) && !WHOSE_OWN.has(text)) return at + 1 < stretch.to && tokens[at + 1]!.kind !== "piece";
  // "my son walked it over"
  if (text === "over" && tokens[at - 1]?.roles.pronoun && tokens[at + 1]?.kind !== "amount") return true;
  // "for love or money"
  if (roles.hedge && !HARMLESS_BESIDE.has(roles.hedge))
    return (roles.hedge === "vague" || text === "or") && at > stretch.said && tokens[at + 1]?.kind === "word";
  if (roles.supply && isSaidTwice(tokens, token, stretch)) return false;
  // "got teo from work, 12 mi"
  return !(stretch.from === 0 ? headsOf(token).length > 0 && !roles.filler : isDeed(token));
}
