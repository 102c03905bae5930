import type { Reading } from "../reading.ts";
import { isSettled, opensOther } from "../tokens/lexicon.ts";
import { type Word, wordsOf } from "../tokens/text.ts";
import { anyOf, whyOf } from "../unclear.ts";
import { language } from "../verbs.ts";
import { AND, ARTICLES_WIDE } from "../words/links.ts";
import { NUMBER_WORDS } from "../words/numbers.ts";
import { HOUSEHOLD } from "../words/people.ts";
import {
  BESIDE_VERB,
  COMES_AND,
  HAS,
  IS_BARE,
  NO_PAST,
  OTHERS,
  PAST_OF,
  PAST_OF_PERFECT,
  PASTS,
  TO_US,
  WAS_BARE,
  WE,
  WEEKDAYS,
  WITHOUT_NUMBER,
} from "../words/tenses.ts";
import { offered } from "./slips.ts";

/*
 * "my brother sell the stool for 25", "girl lina she leave me 30", "i have buy", "she come take the desk, pay 120": what
 * happened, told in the present, with a helping verb too many or its subject twice. A line that is not understood as typed
 * is read once more as the past would tell it; where nobody is said to do it, that is only offered.
 */

type Read = (line: string) => Reading[];

/** The readings of a line, told in the past where that is what it means, and the line that they are of. */
export function toldInPast(
  readings: Reading[],
  line: string,
  read: Read,
): { readings: Reading[]; line: string } {
  const asTyped = { readings, line };
  const isToRead = readings.some((reading) => isOpen(reading) || isOfVerb(reading));
  if (!isToRead || readings.some(isHeldUp)) return asTyped;
  const past = pastOf(line);
  if (!past) return asTyped;
  const meant = read(past.line);
  const better = openness(readings) - openness(meant);
  if (better < 0) return asTyped;
  if (past.isSure) return { readings: withTexts(meant, readings, line), line: past.line };
  const [reading, ...others] = readings;
  const [one, ...more] = meant;
  const offers = !one || more.length > 0 || one.missing ? [] : anyOf(one);
  return others.length === 0 && offers.length > 0
    ? {
        readings: [
          offered(
            reading!,
            offers.map((offer) => ({ ...offer, text: reading!.text })),
          ),
        ],
        line,
      }
    : asTyped;
}

const isOpen = ({ kind, missing }: Reading): boolean => kind === "unclear" || missing !== undefined;

/** "i make bookcase 70 now": a verb that was taken for a part of a piece's name. */
const isOfVerb = (reading: Reading): boolean =>
  "pieces" in reading &&
  Array.isArray(reading.pieces) &&
  reading.pieces.some(({ traits }) => traits?.some((trait) => PAST_OF.has(trait)));

/** "sold after he pays": what has not come yet is not made to have come. */
const isHeldUp = (reading: Reading): boolean => reading.kind === "unclear" && HELD_UP.has(reading.why ?? "");
const HELD_UP = new Set((["pending", "unpaid", "doubt"] as const).map((kind) => whyOf({ kind })));

/** How much some readings leave open: a refusal is worse than a question. */
const openness = (readings: readonly Reading[]): number =>
  readings.reduce(
    (sum, reading) =>
      sum + (reading.kind !== "unclear" ? (reading.missing ? 1 : 0) : reading.could ? 2 : REFUSED),
    0,
  );
const REFUSED = 4;

/** What is quoted of a message is what was typed. */
function withTexts(meant: Reading[], typed: readonly Reading[], line: string): Reading[] {
  if (meant.length === 1) return [{ ...meant[0]!, text: line.trim() }];
  return meant.length === typed.length
    ? meant.map((reading, at) => ({ ...reading, text: typed[at]!.text }))
    : meant;
}

/** A word put in the place of another, or before it; none where it is left out. */
interface Change {
  at: number;
  text: string;
}

interface Past {
  line: string;
  /** Somebody is said to have done it. */
  isSure: boolean;
}

const isLetters = (word: Word | undefined): word is Word => word?.kind === "letters";

/** A line as the past tells it; null where it is in the past already, or tells of what may come. */
function pastOf(line: string): Past | null {
  const words = wordsOf(line);
  if (!(words.some(isNumber) || words.some(isOfItsFate)) || words.some(isOfNoPast)) return null;
  const found = changesOf(words);
  if (found.changes.length === 0) return null;
  let told = line;
  for (const { at, text } of found.changes.toReversed()) {
    const { start, end } = words[at]!;
    told = told.slice(0, start) + text + told.slice(end);
  }
  return { line: told.replace(/ {2,}/g, " "), isSure: found.isSure };
}

const SPELLED = new Set(NUMBER_WORDS);
const isNumber = ({ kind, norm }: Word): boolean => kind === "digits" || SPELLED.has(norm);
/** What says a whole note without a number, or in a word for one. */
const isOfItsFate = ({ norm }: Word): boolean => WITHOUT_NUMBER.has(norm);
const isOfNoPast = ({ kind, norm }: Word): boolean => (kind === "mark" ? norm === "?" : NO_PAST.has(norm));

function changesOf(words: readonly Word[]): { changes: Change[]; isSure: boolean } {
  const [first, second] = words;
  // "is sold, 140" asks nothing.
  if (WAS_BARE.has(first!.norm) && isLetters(second) && PASTS.has(second.norm))
    return { changes: [{ at: 0, text: `it ${first!.norm}` }], isSure: true };
  const changes: Change[] = [];
  let [isSaid, isTorn] = [false, false];
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at]!;
    if (!isLetters(word)) continue;
    if (isSecondSubject(words, at)) {
      changes.push({ at, text: "" });
      continue;
    }
    const past = PAST_OF.get(word.norm);
    // "drove 36 miles for take the dresser"
    if (past !== undefined && words[at - 1]?.norm === "for" && !isThing(word.norm)) {
      changes.push({ at: at - 1, text: "to" });
      isSaid = true;
      continue;
    }
    if (past === undefined) {
      isSaid ||= PASTS.has(word.norm) || PAST_OF_PERFECT.has(word.norm);
      continue;
    }
    // "a guy i work with": what he is to me.
    if (word.norm === "work" && words[at + 1]?.norm === "with") continue;
    if (COMES_AND.has(word.norm) && words.slice(at + 1, at + 3).some(({ norm }) => WEEKDAYS.has(norm)))
      continue;
    const doer = doerAt(words, at);
    if (doer === null) continue;
    if (doer.helping !== null) changes.push({ at: doer.helping, text: "" });
    const isOwn = doer.kind === "said" || (doer.kind === "same" && isSaid);
    isSaid ||= isOwn;
    isTorn ||= !isOwn || isOnSomeDay(words, at);
    changes.push({ at, text: doer.isBehindComing ? `and ${past}` : past });
  }
  changes.push(...helpedPasts(words, changes));
  // "guy comes at 5": somebody who comes has done nothing yet, but where what was done follows.
  const isComing = ({ at }: Change) => COMES_AND.has(words[at]!.norm) && !isAndDone(words, at);
  if (changes.every(isComing)) return { changes: [], isSure: false };
  return { changes: changes.sort((a, b) => a.at - b.at), isSure: isSaid && !isTorn };
}

/** "his boy come and hauled it off" */
const isAndDone = (words: readonly Word[], at: number): boolean =>
  words.slice(at + 1, at + 4).some(({ norm }) => PASTS.has(norm) || norm.endsWith("ed"));

/** "she pay 60 friday" may be what she will do. */
function isOnSomeDay(words: readonly Word[], at: number): boolean {
  const end = words.findIndex(({ kind }, place) => place > at && kind === "mark");
  return words.slice(at, end < 0 ? words.length : end).some(({ norm }) => WEEKDAYS.has(norm));
}

/** "my husband have bought", "she done bought", "dana has taken": the helping verb is left out. */
function helpedPasts(words: readonly Word[], changes: readonly Change[]): Change[] {
  return words.flatMap(({ norm }, at) => {
    const next = words[at + 1];
    if (!HAS.has(norm) || !isLetters(next)) return [];
    const perfect = PAST_OF_PERFECT.get(next.norm);
    if (perfect === undefined && !PASTS.has(next.norm)) return [];
    if (changes.some((change) => change.at === at)) return [];
    if (perfect === undefined && !isSomebody(words, at - 1)) return [];
    const left = { at, text: "" };
    return perfect === undefined ? [left] : [left, { at: at + 1, text: perfect }];
  });
}

/** Who does what a verb says. */
interface Doer {
  /** Somebody said, the same as before, or nobody. */
  kind: "said" | "same" | "nobody";
  /** The place of the helping verb between. */
  helping: number | null;
  isBehindComing: boolean;
}

/** Who does what the verb at a place says; null where it is none that somebody did. */
function doerAt(words: readonly Word[], at: number): Doer | null {
  let before = at - 1;
  while (before >= 0 && isLetters(words[before]) && BESIDE_VERB.has(words[before]!.norm)) before -= 1;
  const said = words[before];
  const none = { helping: null, isBehindComing: false };
  // "old boy down the road give me 90 for it": whoever it was.
  if (words[at]!.norm === "give" && isToUs(words, at) && isLetters(said)) return { kind: "said", ...none };
  const isNoun = isThing(words[at]!.norm);
  if (said === undefined || said.kind === "mark" || AND.has(said.norm))
    return isNoun ? null : { kind: "same", ...none };
  if (said.kind !== "letters") return null;
  if (COMES_AND.has(said.norm)) return { kind: "same", helping: null, isBehindComing: true };
  const isOf = isSomebody(words, before - 1);
  if ((HAS.has(said.norm) || IS_BARE.has(said.norm)) && (isOf || said.norm === "im" || said.norm === "ive"))
    return {
      kind: "said",
      helping: said.norm === "im" || said.norm === "ive" ? null : before,
      isBehindComing: false,
    };
  if (WAS_BARE.has(said.norm))
    return isOf ? { kind: "nobody", helping: before, isBehindComing: false } : null;
  if (!isSomebody(words, before) || (isNoun && !isTold(said.norm))) return null;
  // "he give 90 for it" is an offer as often.
  const isOffer = words[at]!.norm === "give" && !WE.has(said.norm) && !TO_US.has(words[at + 1]?.norm ?? "");
  return { kind: isOffer ? "nobody" : "said", ...none };
}

/** "give me 90" */
const isToUs = (words: readonly Word[], at: number): boolean =>
  TO_US.has(words[at + 1]?.norm ?? "") && words[at + 2]?.kind === "digits";

const rolesAt = (norm: string) => language().lexer.lexicon.entry(norm)?.said;

/** "paint", "stain", "transfer": names of things as well as doings. */
function isThing(norm: string): boolean {
  const roles = rolesAt(norm);
  return Boolean(roles?.supply || roles?.noun || roles?.method);
}

/** A pronoun, or a word for people. */
const isTold = (norm: string): boolean =>
  WE.has(norm) || OTHERS.has(norm) || HOUSEHOLD.has(norm) || rolesAt(norm)?.person === true;

/** Whether the word at a place is who does something: a pronoun, a word for people, or a name. */
function isSomebody(words: readonly Word[], at: number): boolean {
  const word = words[at];
  if (!isLetters(word)) return false;
  return isTold(word.norm) || isName(words, at);
}

/** A word that nobody listed, or one that says nothing by itself where a sentence begins. */
function isName(words: readonly Word[], at: number): boolean {
  const { norm } = words[at]!;
  const entry = language().lexer.lexicon.entry(norm);
  if (PASTS.has(norm) || PAST_OF.has(norm)) return false;
  if (!entry || !isSettled(entry)) return true;
  const { heads, noun, supply, hedge, filler, place, labor, trait } = entry.said ?? {};
  const opens = at === 0 || words[at - 1]!.kind === "mark";
  return (
    opens && !(heads || noun || supply || hedge || filler || place || labor || trait) && !opensOther(entry)
  );
}

/** "girl lina she leave me 30", "the desk it was sold": the pronoun that says the subject once more. */
function isSecondSubject(words: readonly Word[], at: number): boolean {
  const { norm } = words[at]!;
  const next = words[at + 1];
  const isDone =
    isLetters(next) &&
    (PAST_OF.has(next.norm) || PASTS.has(next.norm) || HAS.has(next.norm) || WAS_BARE.has(next.norm));
  if (!isDone || !isLetters(words[at - 1])) return false;
  if (norm === "it")
    return rolesAt(words[at - 1]!.norm)?.noun !== undefined && opensWith(words, at, isThingSaid);
  return OTHERS.has(norm) && opensWith(words, at, isPersonSaid);
}

const SUBJECT_MAX = 4;

/** Whether all words of a sentence up to a place are such. */
function opensWith(
  words: readonly Word[],
  at: number,
  is: (words: readonly Word[], at: number) => boolean,
): boolean {
  let from = at - 1;
  while (from >= 0 && isLetters(words[from])) {
    if (!is(words, from)) return false;
    from -= 1;
  }
  return at - 1 - from <= SUBJECT_MAX;
}

const isPersonSaid = (words: readonly Word[], at: number): boolean => {
  const { norm } = words[at]!;
  const isPronoun = WE.has(norm) || OTHERS.has(norm);
  return !isPronoun && (ARTICLES_WIDE.has(norm) || BESIDE_VERB.has(norm) || isSomebody(words, at));
};

const isThingSaid = (words: readonly Word[], at: number): boolean => {
  const { norm } = words[at]!;
  const roles = rolesAt(norm);
  return ARTICLES_WIDE.has(norm) || roles?.noun !== undefined || roles?.trait === true;
};
