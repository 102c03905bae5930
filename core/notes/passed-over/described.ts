import { isPiece, type Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { firstWord } from "../tokens/text.ts";
import {
  ALONG_WITH,
  ANIMALS,
  AWAY,
  BEFORE_LIKENESS,
  COUNTS_NOTHING,
  FROM,
  HAS_OR_LACKS,
  IS_LIKE,
  ITS_OWN,
  LIKE_PARTS,
  NO_LIKENESS,
  NOT_THERE,
  SOMEBODY,
  TO_BE_DONE,
} from "../words/described.ts";
import { PREPOSITIONS } from "../words/links.ts";
import { isLived } from "../words/lived.ts";
import { BLEMISHES, HURTS, PIECE_PARTS } from "../words/parts.ts";
import { HOUSEHOLD } from "../words/people.ts";
import { isAnd, isFromSomebody, isTaleOfOthers, withoutSeller } from "./sellers.ts";

/*
 * What is told of a piece beside its purchase: how it is ("missing a shelf", "one drawer sticks", "comes with a key") and
 * who sold it ("from a customer whose panel I was swapping"). A part that is told of so is no second piece, a number
 * before it no price, and what is to be done no obstacle: it is passed over before anything else is read.
 */

/** The first words of all that it is told in: a line without any, and without two pieces or a person, tells nothing of it. */
export const DESCRIBES: readonly string[] = [
  ...[HAS_OR_LACKS, TO_BE_DONE, IS_LIKE, HURTS, BLEMISHES, PIECE_PARTS, LIKE_PARTS],
  ...[FROM, SOMEBODY, ANIMALS, HOUSEHOLD],
].flatMap((words) => [...words].map(firstWord));

/** Whether a piece of a line may be one that was told of before in it. */
export function hasTwoPieces(tokens: readonly Tok[]): boolean {
  let pieces = 0;
  for (let at = 0; at < tokens.length; at += 1) if (isPiece(tokens[at]!)) pieces += 1;
  return pieces > 1;
}

/** The tokens of a line without what is told of a piece that was bought; the same ones where nothing is. */
export function withoutDescribed(tokens: Tok[]): Tok[] {
  const isOfPurchase = tokens.some((token, at) => saysBought(token) || isFromSomebody(tokens, at));
  if (!isOfPurchase || !tokens.some(({ kind }) => kind === "piece")) return tokens;
  return withoutLikeness(withoutSeller(tokens));
}

const saysBought = (token: Tok): boolean => headsOf(token).some(({ kind }) => kind === "buy");

/** A verb of another kind than a purchase. */
const saysOther = (token: Tok): boolean =>
  headsOf(token).some(({ light, tails }) => !light && tails === null) && !saysBought(token);

/* How it is. */

interface Stretch {
  from: number;
  to: number;
}

function withoutLikeness(tokens: Tok[]): Tok[] {
  let kept: Tok[] | null = null;
  let isOfPurchase = false;
  let hasPiece = false;
  let hasPrice = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const told = isOfPurchase && hasPiece && mayBegin(tokens, at) ? likenessAt(tokens, at, hasPrice) : null;
    if (told) {
      kept ??= tokens.slice(0, told.from);
      // What goes on behind it is parted from what stood before.
      if (told.to < tokens.length && tokens[told.to]!.kind !== "mark" && !isAnd(tokens[told.to]!))
        kept.push(tokens[told.from]!);
      at = told.to - 1;
      continue;
    }
    const token = tokens[at]!;
    if (saysBought(token) || (hasPiece && isFromSomebody(tokens, at))) isOfPurchase = true;
    else if (saysOther(token)) isOfPurchase = false;
    hasPiece ||= token.kind === "piece";
    hasPrice ||= token.kind === "amount" || headsOf(token).some(({ said }) => said.means["price"] === 0);
    kept?.push(token);
  }
  return kept ?? tokens;
}

/** Behind a mark, a price, or the piece itself. */
function mayBegin(tokens: readonly Tok[], at: number): boolean {
  const { kind, text } = tokens[at]!;
  if (kind === "mark") return text !== "?" && at + 1 < tokens.length;
  const before = tokens[at - 1]?.kind;
  // "from a neighbor two doors down"
  if (before === "amount" && AWAY.has(tokens[at + 1]?.text ?? "")) return false;
  return kind !== "piece" || before === "amount" ? before === "amount" || text === "but" : false;
}

/** What tells how a piece is, from a place on: up to the next mark, or to an "and" before something else. */
function likenessAt(tokens: readonly Tok[], from: number, hasPrice: boolean): Stretch | null {
  let said = from;
  while (said < tokens.length && (tokens[said]!.kind === "mark" || isAnd(tokens[said]!))) said += 1;
  let end = said;
  while (end < tokens.length && tokens[end]!.kind !== "mark") end += 1;
  for (let to = end; to > said; to -= 1) {
    if (to < end && !(isAnd(tokens[to]!) || tokens[to]!.text === "but" || tokens[to]!.text === "from"))
      continue;
    const isTold =
      isLikeness(tokens, said, to, hasPrice) || (hasPrice && said > from && isTaleOfOthers(tokens, said, to));
    if (isTold && !isPriced(tokens, to, hasPrice)) return { from, to };
  }
  return null;
}

/** "new knobs, 12": its own price. */
const isPriced = (tokens: readonly Tok[], to: number, hasPrice: boolean): boolean => {
  const next = tokens[to]?.kind === "mark" ? tokens[to + 1] : tokens[to];
  const at = tokens[to]?.kind === "mark" ? to + 1 : to;
  // "butcher block top, one wheel missing"
  const isAmount = next?.kind === "amount" && !isCountOfParts(tokens, at, tokens.length);
  return hasPrice && (isAmount || next?.kind === "duration" || next?.text === "was");
};

function isLikeness(tokens: readonly Tok[], from: number, to: number, hasPrice: boolean): boolean {
  let at = from;
  while (at < to && isBefore(tokens, at, to)) at += 1;
  const opener = at < to ? wordsOf(tokens[at]!) : [];
  const lacks = opener.some((word) => HAS_OR_LACKS.has(word));
  const isToDo = opener.some((word) => TO_BE_DONE.has(word));
  const isOpened = lacks || isToDo;
  // "off the side of the road", "12 on paint"
  if (!isOpened && PREPOSITIONS.has(tokens[from]!.text)) return false;
  let parts = 0;
  let hurts = 0;
  let strange = 0;
  let isState = false;
  let hasPiece = false;
  for (let place = isOpened ? at + 1 : from; place < to; place += 1) {
    const token = tokens[place]!;
    if (!isOfLikeness(tokens, place, { from, to }, isToDo, parts > 0)) return false;
    // "with a mirror" may be two pieces, "with the mirror" is its own.
    if (
      lacks &&
      token.kind === "piece" &&
      ALONG_WITH.has(opener[0]!) &&
      !ITS_OWN.has(tokens[place - 1]!.text)
    )
      return false;
    // "butcher block top" is a top.
    const isWhole = token.kind === "piece" && !isPartAt(tokens, place + 1);
    hasPiece ||= isWhole;
    const words = wordsOf(token);
    if (words.some(isPartWord) || token.roles.labor || isOneOfThem(tokens, place)) parts += 1;
    else if (token.unknown) strange += 1;
    if (words.some((word) => HURTS.has(word) || BLEMISHES.has(word))) hurts += 1;
    isState ||= parts > 0 && words.some((word) => IS_LIKE.has(word) || HURTS.has(word) || isLived(word));
  }
  if (strange > STRANGE_MAX) return false;
  if (isOpened) return parts + hurts > 0;
  // "one drawer sticks"; "dovetail drawers" only where the price has been told.
  return parts > 0
    ? isState || (!hasPiece && hasPrice && to - from > 1 && (hurts > 0 || !isThing(tokens, from, to)))
    : false;
}

const STRANGE_MAX = 2;

/** "the", "but it", "will": ahead of what opens it. */
function isBefore(tokens: readonly Tok[], at: number, to: number): boolean {
  const { kind, text, mention } = tokens[at]!;
  if (at + 1 >= to) return false;
  if (kind === "piece") return isSpokenOf(tokens, at, mention?.name);
  return text.split(" ").every((word) => BEFORE_LIKENESS.has(word)) && !isOpener(text);
}

const isOpener = (text: string): boolean =>
  text.split(" ").some((word) => HAS_OR_LACKS.has(word) || TO_BE_DONE.has(word));

const isPartAt = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at]?.kind === "word" && PIECE_PARTS.has(tokens[at]!.text);

/** "one chair wobbles", of chairs told before. */
const isOneOfThem = (tokens: readonly Tok[], at: number): boolean => {
  const next = tokens[at + 1];
  const isState =
    next?.kind === "word" && (HURTS.has(next.text) || IS_LIKE.has(next.text) || isLived(next.text));
  return tokens[at]!.kind === "piece" && isState && isSpokenOf(tokens, at, tokens[at]!.mention?.name);
};

/** A piece that is told of outside. */
const isSpokenOf = (tokens: readonly Tok[], at: number, name: string | undefined): boolean =>
  name !== undefined &&
  !PIECE_PARTS.has(name) &&
  tokens.some((other, place) => place < at && other.mention?.name === name);

/** "new knobs", "4 drawer fronts": what may have been bought as well. */
const isThing = (tokens: readonly Tok[], from: number, to: number): boolean => {
  const first = tokens[from]!;
  const isOffered =
    first.kind === "amount" ||
    /^(?:new|replacement|spare|some|more|another|a|an|extra|the)$/.test(first.text);
  return isOffered || tokens.slice(from, to).every(({ roles }) => roles.supply !== undefined);
};

const wordsOf = ({ text }: Tok): string[] => text.split(" ");

const isPartWord = (word: string): boolean =>
  PIECE_PARTS.has(word) || LIKE_PARTS.has(word) || BLEMISHES.has(word);

/** A token that a remark on a piece may hold. */
function isOfLikeness(
  tokens: readonly Tok[],
  at: number,
  { from, to }: Stretch,
  isToDo: boolean,
  isBehindPart: boolean,
): boolean {
  const token = tokens[at]!;
  const { kind, text, roles, mention } = token;
  const words = wordsOf(token);
  if (kind === "piece") {
    if (mention?.number !== undefined) return false;
    return (
      isPartAt(tokens, at + 1) ||
      PIECE_PARTS.has(words.at(-1)!) ||
      PIECE_PARTS.has(mention?.name ?? "") ||
      isSpokenOf(tokens, at, mention?.name)
    );
  }
  if (kind === "amount") return isCountOfParts(tokens, at, to);
  if (kind !== "word") return kind === "grain";
  if (isBehindPart && words.some((word) => NOT_THERE.has(word))) return true;
  if (words.some((word) => NO_LIKENESS.has(word)) || roles.vagueTime || roles.method) return false;
  if (roles.person || (roles.stream && !roles.plain) || (token.hints & HINTS.month) !== 0) return false;
  if (roles.labor) return isToDo || (isBehindPart && at > from);
  if (text === "or") return tokens[at + 1]?.kind === "amount";
  if (roles.hedge) return IS_LIKE.has(text) || isToDo || BEFORE_LIKENESS.has(text);
  if (roles.supply) return words.some(isPartWord) || roles.plain === true || roles.trait === true;
  const isDeed = headsOf(token).some(({ light }) => !light);
  return !isDeed || IS_LIKE.has(text) || words.some(isPartWord);
}

/** "6 small drawers", "two of the knobs", "a knob or two" */
function isCountOfParts(tokens: readonly Tok[], at: number, to: number): boolean {
  const { amount, each } = tokens[at]!;
  if (each || amount?.money || amount?.exact === null || amount?.factors) return false;
  if (tokens[at - 1]?.text === "or") return at + 1 === to || isLived(tokens[at + 1]!.text);
  for (let place = at + 1; place < to && place <= at + COUNTS_WITHIN; place += 1) {
    const token = tokens[place]!;
    // "8 before work"
    if (OF_NO_COUNT.has(wordsOf(token)[0]!)) return false;
    if (wordsOf(token).some(isPartWord)) return true;
    if (token.kind !== "word") return false;
  }
  return false;
}

const COUNTS_WITHIN = 3;
const OF_NO_COUNT = new Set([...PREPOSITIONS, ...COUNTS_NOTHING].filter((word) => word !== "of"));
