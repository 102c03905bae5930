import { type Tok, textOf, tokenBefore } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { chatter } from "../rows/chatter.ts";
import type { Fired } from "../rows/table.ts";
import type { Trace } from "../rows/trace.ts";
import { unfinished } from "../rows/unfinished.ts";
import type { Units } from "../rows/units.ts";
import { rolesOf } from "../tokens/roles.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { NO_ROLES, wordToken } from "../tokens/token.ts";
import {
  BEFORE_BUYER,
  BEFORE_SO_MUCH,
  COMES,
  COUNTS_ONE_MORE,
  HARMLESS_HEDGES,
  JOINS_ONE_MORE,
  LIFE,
  MOOD,
  NOT_US,
  OPENS_SLOT,
  POINTS_AT,
  SAME_SUBJECT,
  STAYS,
  TRADES,
  US,
  VAGUE_LIFE,
  WRITES,
} from "../words/chatter.ts";
import { isCommon } from "../words/daily.ts";
import { FILLER } from "../words/filler.ts";
import { FOR_NOTHING } from "../words/money.ts";
import { HELPS, HOUSEHOLD, isOwner, THEM } from "../words/people.ts";
import { CONTAINERS } from "../words/supplies.ts";

/*
 * What is told of the day beside a note. A stretch between two marks or joints that holds nothing but words of the
 * lists, and of the rows of `rows/chatter.ts`, is passed over before anything else is read: what it denies, wishes or
 * loses is not said of the note. Where it may be what a number stands for ("dinner with mom, 40"), it stays.
 */

/** A stretch of a line's tokens, `from` up to `to`, without the joints around it. */
interface Stretch {
  from: number;
  to: number;
}

const FILLERS: ReadonlySet<string> = new Set(FILLER);

const CHAT = rolesOf<never>({ plain: true, filler: true });

const NO_PHRASES: ReadonlyMap<number, Fired> = new Map();

/** The tokens of a line without what is told beside the note; the same ones where nothing is. */
export function withoutChatter(tokens: Tok[], line: Units, trace?: Trace[]): Tok[] {
  const fired = chatter.fired(tokens, line);
  if (fired.length === 0 && !tokens.some(isJoint)) return tokens;
  const phrasesAt = fired.length > 0 ? new Map(fired.map((one) => [one.from, one])) : NO_PHRASES;
  const stretches = stretchesOf(tokens, phrasesAt);
  const firstOfNote = tokens.findIndex((token) => isThing(token) || isAmount(token));
  const dropped = stretches.filter(
    (stretch, at) =>
      // All of a line is not beside it.
      (stretches.length > 1 || fired.length > 0) &&
      isChat(tokens, stretch, phrasesAt, stretch.to <= firstOfNote) &&
      !isWhoDid(tokens, stretch, stretches[at + 1]) &&
      !isForNumber(tokens, stretches, at),
  );
  const beside = withoutTurns(dropped, tokens, line, fired);
  const isAll = beside.length === stretches.length;
  if (isAll && isOfRows(tokens, fired)) return withPhrases(tokens, tokens, fired);
  const kept = isAll ? tokens : without(tokens, beside);
  const phrases = isAll
    ? []
    : fired.filter(({ from, to }) => kept.includes(tokens[from]!) && !tokens.slice(from, to).some(isThing));
  if (trace) {
    for (const { row, from, to } of fired)
      trace.push({ table: "chatter", row, words: textOf(tokens.slice(from, to)) });
    if (!isAll)
      for (const { from, to } of beside)
        trace.push({ table: "beside", words: textOf(tokens.slice(from, to)) });
  }
  return phrases.length === 0 ? kept : withPhrases(kept, tokens, phrases);
}

/** Nothing of it but marks and what the rows account for: "dinner burned, typical", "zero done today". */
const isOfRows = (tokens: readonly Tok[], fired: readonly Fired[]): boolean =>
  tokens.every(
    (token, at) =>
      fired.some(({ from, to }) => at >= from && at < to) || (!isThing(token) && !isAmount(token)),
  );

/** Whether a whole message tells of the day alone. */
export function isOfDay(tokens: readonly Tok[], line: Units): boolean {
  const fired = chatter.fired(tokens, line);
  if (fired.length === 0 || !isOfRows(tokens, fired)) return false;
  const phrasesAt = new Map(fired.map((one) => [one.from, one]));
  const stretches = stretchesOf(tokens, phrasesAt);
  const told = stretches.filter((stretch) => isChat(tokens, stretch, phrasesAt, true));
  return told.length === stretches.length && withoutTurns(told, tokens, line, fired).length === told.length;
}

/** "fingers crossed" is told of the note: what a row says turns it is never passed over. */
function withoutTurns(
  dropped: Stretch[],
  tokens: readonly Tok[],
  line: Units,
  fired: readonly Fired[],
): Stretch[] {
  if (dropped.length === 0) return dropped;
  const isInPhrase = (turn: Stretch): boolean =>
    fired.some(({ from, to }) => from <= turn.from && to >= turn.to);
  const turns = unfinished
    .fired(tokens, line)
    .filter(({ effect }) => effect !== "word" && effect !== "labor");
  return dropped.filter(
    ({ from, to }) => !turns.some((turn) => turn.from < to && turn.to > from && !isInPhrase(turn)),
  );
}

/** A phrase within the clause of a fact is one word that says nothing. */
function withPhrases(kept: readonly Tok[], tokens: readonly Tok[], phrases: readonly Fired[]): Tok[] {
  const made: Tok[] = [];
  const inPhrase = new Map<Tok, Fired>();
  for (const one of phrases) for (const token of tokens.slice(one.from, one.to)) inPhrase.set(token, one);
  for (const token of kept) {
    const phrase = inPhrase.get(token);
    if (!phrase) made.push(token);
    else if (token === tokens[phrase.from])
      made.push(
        wordToken(
          "word",
          textOf(tokens.slice(phrase.from, phrase.to)),
          token.from,
          tokens[phrase.to - 1]!.to,
          CHAT,
        ),
      );
  }
  return made;
}

function isJoint(token: Tok, at: number, tokens: readonly Tok[]): boolean {
  if (token.kind === "mark") return (token.hints & HINTS.markByChat) !== 0;
  if (token.kind !== "word" || (token.hints & HINTS.wordByChat) === 0) return false;
  return token.text !== "so" || !BEFORE_SO_MUCH.has(tokens[at - 1]?.text ?? "");
}

function stretchesOf(tokens: readonly Tok[], phrasesAt: ReadonlyMap<number, Fired>): Stretch[] {
  const stretches: Stretch[] = [];
  let from = 0;
  for (let at = 0; at <= tokens.length; at += 1) {
    const phrase = phrasesAt.get(at);
    if (phrase) {
      at = phrase.to - 1;
      continue;
    }
    if (at < tokens.length && !isJoint(tokens[at]!, at, tokens)) continue;
    if (at > from) stretches.push({ from, to: at });
    from = at + 1;
  }
  return stretches;
}

/** What a stretch has told so far. */
interface Told {
  /** How many words of life it has, and how many that say something only beside such a word. */
  life: number;
  risky: number;
  /** Words of no list. */
  strange: number;
  isTold: boolean;
  isOfUs: boolean;
  isOfOthers: boolean;
  isOfMood: boolean;
}

/**
 * Whether a stretch says nothing but what is of no note, and more of it than words that mean nothing anywhere. Ahead of
 * the note, one word in three may be of no list ("my sourdough died, drove 44 miles"): what turns a note comes behind it.
 */
function isChat(
  tokens: readonly Tok[],
  { from, to }: Stretch,
  phrasesAt: ReadonlyMap<number, Fired>,
  isAhead: boolean,
): boolean {
  if (phrasesAt.size === 0 && !isOnlySaid(tokens, from, to)) return false;
  if (OPENS_SLOT.has(tokens[from]!.text) && !phrasesAt.has(from)) return false;
  if (isOneMore(tokens, from, to)) return false;
  const told: Told = {
    life: 0,
    risky: 0,
    strange: 0,
    isTold: false,
    isOfUs: false,
    isOfOthers: false,
    isOfMood: true,
  };
  for (let at = from; at < to; at += 1) {
    const phrase = phrasesAt.get(at);
    if (phrase) {
      told.isTold = true;
      at = phrase.to - 1;
      continue;
    }
    const isBuyer = tokens[at]!.roles.person === true && BEFORE_BUYER.has(tokens[at - 1]?.text ?? "");
    const isPointing = POINTS_AT.has(tokens[at]!.text) && at + 1 < to && isPointedAt(tokens[at + 1]!);
    if (isPointing) continue;
    if (isBuyer || isOfPrice(tokens, at, from) || !tell(told, tokens[at]!)) return false;
  }
  const isOfKin = tokens.slice(from, from + 2).some(({ text }) => HOUSEHOLD.has(text));
  if (isOfKin && tokens.slice(from + 1, from + 3).some(({ text }) => WRITES.has(text))) return false;
  const isLifeAhead = isAhead && told.life > 0 && !told.isOfOthers;
  if (told.strange > 0 && (!isLifeAhead || told.strange * 3 > to - from)) return false;
  if (told.risky > 0 && (told.life === 0 || told.isOfOthers)) return false;
  return told.isTold && (told.isOfMood || isOfKin || !told.isOfOthers);
}

/** "100 now, the rest in two weeks", and no "rest of the day". */
const isOfPrice = (tokens: readonly Tok[], at: number, from: number): boolean =>
  tokens[at]!.text === "rest" &&
  (at === from || /^(?:the|his|her|their)$/.test(tokens[at - 1]!.text)) &&
  tokens[at + 1]?.text !== "of";

/** Nearly every stretch names a piece or holds a number, and is of the note. */
function isOnlySaid(tokens: readonly Tok[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) {
    const { kind } = tokens[at]!;
    if (kind !== "word" && kind !== "span") return false;
  }
  return true;
}

/** "bought a dresser for 30 and a stove", "paint, a roll of tape": one more thing, and no remark. */
function isOneMore(tokens: readonly Tok[], from: number, to: number): boolean {
  const said = tokens.slice(from, to);
  if (said.length <= OF_ONE_MAX && said.at(-1)!.roles.supply && said.some(({ text }) => CONTAINERS.has(text)))
    return true;
  return (
    to - from <= ONE_MORE_MAX &&
    JOINS_ONE_MORE.has(tokenBefore(tokens, from)?.text ?? "") &&
    COUNTS_ONE_MORE.has(tokens[from]!.text)
  );
}

const ONE_MORE_MAX = 3;
const OF_ONE_MAX = 5;

/** "this heat", "this mess", and never "that deal". */
const isPointedAt = ({ text, roles }: Tok): boolean =>
  isLife(text) || (roles.plain === true && !TRADES.has(text) && !NOT_US.has(text));

/** Adds a word to what is told; false where it may be of the note. */
function tell(told: Told, token: Tok): boolean {
  const { kind, text, roles } = token;
  if (kind === "span") return true;
  if (kind !== "word" || roles.vagueTime || roles.method || roles.stream || roles.place || roles.noun)
    return false;
  if (STAYS.has(text) || FOR_NOTHING.has(text)) return false;
  const isOfLife = isLife(text);
  const heads = headsOf(token);
  const isVerb = heads.some((head) => !head.light);
  if (isVerb && !isOfLife) return false;
  if (roles.hedge && !(isOfLife || HARMLESS_HEDGES.has(text))) return false;
  if (isVerb || roles.hedge || roles.labor || roles.supply) {
    // "burned dinner", "didnt sleep", "cleaning the garage": with a word of life beside it.
    if (roles.labor && !isOfLife) return false;
    told.risky += 1;
    return true;
  }
  if (heads.length > 0 && !isOfLife && !roles.filler) return false;
  told.isOfOthers ||= NOT_US.has(text);
  const isMood = MOOD.has(text) || roles.opinion === true;
  told.isOfUs ||= US.has(text);
  if (isOfLife && !VAGUE_LIFE.has(text)) told.life += isMood && !told.isOfUs ? 0 : 1;
  const isFiller = roles.filler === true || (roles === NO_ROLES && FILLERS.has(text));
  if (isFiller || NOT_US.has(text)) return !TRADES.has(text);
  told.isOfMood &&= isMood;
  const isOwn = roles.trait || roles.person || isOwner(text);
  if (token.unknown === true && !isOwn && !isOfLife && !isCommon(text) && !roles.plain && !roles.opinion) {
    told.strange += 1;
    return true;
  }
  told.isTold ||= isOfLife || isMood || !isOwn;
  return (
    isOfLife || roles.plain === true || roles.opinion === true || isOwn === true || token.unknown === true
  );
}

/** "napping", "naps" as "nap". */
const isLife = (word: string): boolean =>
  LIFE.has(word) ||
  (word.endsWith("s") && LIFE.has(word.slice(0, -1))) ||
  (word.endsWith("ing") && LIFE.has(word.slice(0, -3)));

/** "a teenager came and bought the desk": who came is who bought. */
function isWhoDid(tokens: readonly Tok[], { from, to }: Stretch, next: Stretch | undefined): boolean {
  if (!next) return false;
  const said = tokens.slice(from, to);
  // "uncle helped so i gave him 15 for the desk": what it was paid for.
  const isPaid = tokens.slice(next.from, next.to).some(({ text }) => THEM.has(text));
  if (isPaid && said.some(({ text }) => HELPS.has(text))) return true;
  if (next.from !== to + 1 || !SAME_SUBJECT.has(tokens[to]!.text)) return false;
  if (headsOf(tokens[next.from]!).length === 0 || said.some(({ text }) => US.has(text))) return false;
  return said.some(({ text, roles }) => COMES.has(text) || (roles.person && !HOUSEHOLD.has(text)));
}

const isCost = ({ roles }: Tok): boolean => roles.supply !== undefined || roles.labor === true;
const isAmount = ({ kind }: Tok): boolean => kind === "amount" || kind === "duration";

/** What a number may be for. */
const isThing = ({ kind, roles, text }: Tok): boolean =>
  kind === "piece" ||
  kind === "miles" ||
  roles.labor === true ||
  roles.supply !== undefined ||
  roles.stream !== undefined ||
  text.startsWith("loan");

/** "dinner with mom, 40": the number of a stretch that names nothing may be what the one before it cost. */
function isForNumber(tokens: readonly Tok[], stretches: readonly Stretch[], at: number): boolean {
  const isNamed = ({ from, to }: Stretch): boolean => tokens.slice(from, to).some(isThing);
  const { from, to } = stretches[at]!;
  const isNamedHere = tokens.slice(from, to).some(isCost);
  return (
    (isBare(tokens, stretches[at + 1]) && (isNamedHere || !stretches.slice(0, at).some(isNamed))) ||
    (isNamedHere && at > 0 && isBare(tokens, stretches[at - 1]))
  );
}

/** A number, and nothing that it may be for. */
function isBare(tokens: readonly Tok[], stretch: Stretch | undefined): boolean {
  const said = stretch ? tokens.slice(stretch.from, stretch.to) : [];
  return said.some(isAmount) && !said.some(isThing);
}

/** The tokens without some stretches and the joints that led to or from them. */
function without(tokens: readonly Tok[], dropped: readonly Stretch[]): Tok[] {
  if (dropped.length === 0) return tokens as Tok[];
  const ends = new Map(dropped.map(({ from, to }) => [from, to]));
  const kept: Tok[] = [];
  let isAfterDropped = true;
  for (let at = 0; at < tokens.length; at += 1) {
    const end = ends.get(at);
    if (end !== undefined) {
      isAfterDropped = true;
      at = end - 1;
      continue;
    }
    if (isAfterDropped && isJoint(tokens[at]!, at, tokens)) continue;
    isAfterDropped = false;
    kept.push(tokens[at]!);
  }
  // "finished the desk? ha": what was asked stays a question.
  const isLoose = (token: Tok | undefined) =>
    token !== undefined && token.text !== "?" && isJoint(token, kept.length - 1, kept);
  while (isAfterDropped && isLoose(kept.at(-1))) kept.pop();
  return kept;
}
