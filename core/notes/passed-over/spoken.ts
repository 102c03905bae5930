import { isMark, MEASURES, placeAfter, type Tok, textOf } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { NO_ROLES, wordToken } from "../tokens/token.ts";
import { AND } from "../words/links.ts";
import {
  BEFORE_DONE,
  BEFORE_PIECE,
  BREAKS,
  IS_OR_DID,
  JOINS_SENTENCE,
  KEEPING,
  OF_WHICH,
  WE_ARE,
} from "../words/spoken.ts";
import { PASTS } from "../words/tenses.ts";
import { BEFORE_SOMEBODY, LEADS_INTO, ONE_OF_US, OPENINGS, SHALL_BE } from "../words/to-come.ts";
import { withoutToCome } from "./to-come.ts";

/*
 * A message as it is spoken has no marks: "bob paid the last 30 i took the mirror to the dump oh and the dresser is down to
 * 140 now". Where somebody does something else behind a fact, or an "oh and" stands, a sentence begins, whoever writes it down.
 */

/** A line's tokens without how it begins and what is still to come, and with a mark where a sentence begins. */
export function asSpoken(tokens: Tok[]): Tok[] {
  return withoutToCome(withBreaks(withoutOpening(tokens)));
}

/** "guess what", "ok quick one": nothing is told yet. */
function withoutOpening(tokens: Tok[]): Tok[] {
  let from = 0;
  for (let isOver = false; !isOver; ) {
    isOver = true;
    for (let to = Math.min(from + OPENING_MAX, tokens.length - 1); to > from; to -= 1) {
      const said = tokens.slice(from, to);
      if (said.some(({ kind }) => kind !== "word") || !OPENINGS.has(textOf(said))) continue;
      from = to;
      isOver = false;
      break;
    }
  }
  // A plain "ok" or "so" says nothing anyway, and may be an answer.
  const isMore = from > 1 || (from === 1 && tokens[0]!.text.includes(" "));
  return isMore && tokens[from]!.kind !== "mark" ? tokens.slice(from) : tokens;
}
const OPENING_MAX = 5;

/** The tokens with a mark before each sentence that begins behind a fact with no mark; the same ones where none does. */
function withBreaks(tokens: Tok[]): Tok[] {
  if (tokens.length < TOKENS_MIN || tokens.length > TOKENS_MAX || tokens.some((token) => isMark(token, "?")))
    return tokens;
  let made: Tok[] | null = null;
  let since = 0;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (token.kind === "mark") since = at + 1;
    const joint = at > since ? jointAt(tokens, at) : 0;
    const begins = at + joint;
    const isBreak =
      begins < tokens.length &&
      isFact(tokens, since, at) &&
      isBegun(tokens, { at: begins, since, isJoined: joint > 0 });
    if (isBreak) {
      made ??= tokens.slice(0, at);
      made.push(wordToken("mark", ".", token.from, token.from, NO_ROLES));
      made.push(tokens[begins]!);
      since = begins;
      at = begins;
      continue;
    }
    made?.push(token);
  }
  return made ?? tokens;
}

const TOKENS_MIN = 8;
const TOKENS_MAX = 80;

/** How many tokens join a sentence of its own at a place: "oh and", "and also"; none by itself does. */
function jointAt(tokens: readonly Tok[], at: number): number {
  for (const size of [3, 2, 1]) if (BREAKS.has(textOf(tokens.slice(at, at + size)))) return size;
  return 0;
}

/** Something is told by then: a verb of the books, or a job, and what it is of or how much. */
function isFact(tokens: readonly Tok[], from: number, to: number): boolean {
  let hasVerb = false;
  let hasThing = false;
  for (let at = from; at < to; at += 1) {
    const token = tokens[at]!;
    hasVerb ||=
      headsOf(token).length > 0 ||
      token.roles.labor === true ||
      token.kind === "miles" ||
      token.kind === "duration";
    hasThing ||= token.kind !== "word" && token.kind !== "mark" && token.kind !== "day";
    hasThing ||= token.roles.pronoun === true || token.roles.supply !== undefined;
  }
  return hasVerb && hasThing;
}

/** Whether a sentence that tells a fact begins at a place. */
function isBegun(
  tokens: readonly Tok[],
  { at, since, isJoined }: { at: number; since: number; isJoined: boolean },
): boolean {
  const before = tokens[at - 1];
  const isLedInto = !isJoined && before !== undefined && leadsInto(before);
  // "wednesday i sold the dresser and tuesday i paid 200": the day leads it.
  const isDayed = before?.kind === "day" && AND.has(tokens[at - 2]?.text ?? "");
  if (isLedInto || isDayed) return false;
  // "the 7 i spent on wood filler", "the other two im keeping"
  const isCounted = !isJoined && before?.kind === "amount" && OF_WHICH.has(tokens[at - 2]?.text ?? "");
  const { text } = tokens[at]!;
  // "im keeping the mirror"
  if (WE_ARE.has(text))
    return KEEPING.has(tokens[at + 1]?.text ?? "") && tokens[at + 2] !== undefined && !isCounted;
  if (ONE_OF_US.has(text)) {
    const verb = placeAfter(tokens, at + 1, BEFORE_DONE);
    if (!isDone(tokens, verb) || isCounted) return false;
    // "sold the trunk i listed for 60": of which it is told.
    return isJoined || before!.kind !== "piece" || (isWhole(tokens, since, at) && namesOther(tokens, verb));
  }
  if (BEFORE_PIECE.has(text)) {
    const piece = tokens.findIndex((token, place) => place > at && token.kind === "piece");
    const isClose = piece > at && piece <= at + 2 && tokens[piece]!.mention !== undefined;
    const verb = tokens[piece + 1];
    if (isClose && verb && (IS_OR_DID.has(verb.text) || isDone(tokens, piece + 1)))
      return isJoined || (isEnded(before) && (before!.kind !== "piece" || isWhole(tokens, since, at)));
  }
  // "a guy bought the trunk for 60"
  if (BEFORE_SOMEBODY.has(text)) {
    const who = tokens.findIndex((token, place) => place > at && token.roles.person === true);
    const isHis = who > at && who <= at + 2 && isDone(tokens, who + 1);
    return (
      isHis && (isJoined || (isEnded(before) && (before!.kind !== "piece" || isWhole(tokens, since, at))))
    );
  }
  return isJoined && isDone(tokens, at);
}

/** "more than i paid", "and i paid" */
function leadsInto({ text }: Tok): boolean {
  const last = text.slice(text.lastIndexOf(" ") + 1);
  return LEADS_INTO.has(last) || AND.has(text) || JOINS_SENTENCE.has(text);
}

/** "i finished the desk i sold the trunk" */
const namesOther = (tokens: readonly Tok[], verb: number): boolean =>
  tokens
    .slice(verb, verb + OWN_MAX)
    .some(
      ({ kind, mention, roles }) =>
        kind === "duration" || kind === "miles" || (mention && !mention.it) || roles.supply !== undefined,
    );
const OWN_MAX = 8;

/** A fact that needs no number, or has one: what goes on behind its piece is of no clause of it. */
function isWhole(tokens: readonly Tok[], from: number, to: number): boolean {
  const said = tokens.slice(from, to);
  const kinds = said.flatMap((token) =>
    headsOf(token).filter(({ light, tails }) => !light && tails === null),
  );
  if (
    said.some(({ kind }) => MEASURES.has(kind)) &&
    (kinds.length > 0 || said.some(({ roles }) => roles.labor))
  )
    return true;
  return kinds.some(({ kind }) => kind === "finish" || kind === "retire" || kind === "lent");
}

/** What stands before it needs nothing more: a number, a day, a piece, a place. */
const isEnded = (before: Tok | undefined): boolean =>
  before !== undefined && (before.kind !== "word" || !headsOf(before).some(({ light }) => light));

/** A verb of the books, or of work, in the past. */
function isDone(tokens: readonly Tok[], at: number): boolean {
  const token = tokens[at];
  if (token?.kind !== "word" || SHALL_BE.has(tokens[at - 1]?.text ?? "")) return false;
  const word = token.text.split(" ")[0]!;
  return (
    (headsOf(token).length > 0 || token.roles.labor === true) && (PASTS.has(word) || word.endsWith("ed"))
  );
}
