import { spokenWords } from "../passed-over/hesitations.ts";
import { isCommon } from "../words/daily.ts";
import { BEFORE_NAMES, IS_CALLED } from "../words/names.ts";
import { UNITS } from "../words/numbers.ts";
import {
  BEFORE_COUNTS,
  BEFORE_FOR_PRICE,
  BEFORE_FOR_SOMEBODY,
  BEFORE_PLACES,
  BEFORE_TO_PRICE,
  COMMONEST,
  ENTIRE,
  HANDS_OVER,
  REMAINING,
} from "../words/shorthand.ts";
import { CONTAINERS } from "../words/supplies.ts";
import { PERIODS } from "../words/units.ts";
import type { Entry, Lexicon } from "./lexicon.ts";
import { isPlain, isSettled, isSpoken, MARKS } from "./lexicon.ts";
import type { Speller } from "./spelling.ts";
import type { Word } from "./text.ts";
import { isBare, type Unvowelled } from "./unvowelled.ts";

export interface Lexer<Head> {
  lexicon: Lexicon<Head>;
  speller: Speller;
  unvowelled: Unvowelled;
  /** Shorthand to the word it stands for. */
  shorthands: ReadonlyMap<string, string>;
}

/** The words of a line as typed, and as they are meant: each corrected where one known word is. */
export interface Meant<Head> {
  words: readonly Word[];
  norms: readonly string[];
  /** What begins with each in the lexicon. */
  entries: readonly (Entry<Head> | undefined)[];
  /** What holds of any of them (`MARKS`). */
  marks: number;
}

/** Words that are others in certain company (`meantAt`): all others that are known are taken as typed. */
export const TWOFOLD: readonly string[] = ["an", "ever", "o", "too", ...REMAINING, ...HANDS_OVER];

/** What the words of a line are meant to be. A word that runs two together becomes those two. */
export function meantBy<Head>(line: string, said: readonly Word[], lexer: Lexer<Head>): Meant<Head> {
  const { lexicon, shorthands } = lexer;
  const typed = withSoundedFor(said);
  const norms: string[] = [];
  const entries: (Entry<Head> | undefined)[] = [];
  let marks = 0;
  for (let at = 0; at < typed.length; at += 1) {
    const word = typed[at]!;
    const entry = word.kind === "letters" ? lexicon.entry(word.norm) : undefined;
    const spoken = isSpoken(entry) ? spokenWords(typed) : typed;
    if (spoken !== typed) return meantBy(line, spoken, lexer);
    const isKnown = word.kind !== "letters" || isSettled(entry) || shorthands.has(word.norm);
    const parts = !isKnown && isGluable(word) ? partsOf(word, lexicon) : null;
    if (parts) return meantBy(line, [...typed.slice(0, at), ...parts, ...typed.slice(at + 1)], lexer);
    const isAsSaid = word.kind !== "letters" || (isPlain(entry) && isWhole(word));
    const norm = isAsSaid ? word.norm : meantAt(line, typed, norms, at, entry, lexer);
    const isAsTyped = norm === word.norm;
    // One string for every time that a word is said: such are compared at a glance, others letter by letter.
    const said = isAsTyped && entry ? entry.phrase : norm;
    const known = isAsTyped ? entry : lexicon.entry(norm);
    // Said twice over: one of them is said while one thinks.
    if (at > 0 && said === norms[at - 1]) marks |= MARKS.pause;
    if (known) marks |= known.marks;
    norms.push(said);
    entries.push(known);
  }
  return { words: typed, norms, entries, marks };
}

/** Nothing was left out of it, as an apostrophe is. */
const isWhole = ({ norm, start, end }: Word): boolean => norm.length === end - start;

/** What one word of letters is meant to be. */
function meantAt<Head>(
  line: string,
  typed: readonly Word[],
  norms: readonly string[],
  at: number,
  entry: Entry<Head> | undefined,
  lexer: Lexer<Head>,
): string {
  const { lexicon, speller, shorthands } = lexer;
  const { norm } = typed[at]!;
  if (norm === "an" && isAndMeant(typed[at + 1])) return "and";
  if (norm === "ever" && PERIODS.has(typed[at + 1]?.norm ?? "")) return "every";
  if (norm === "o" && isOfMeant(norms.at(-1), typed[at + 1]?.norm)) return "of";
  if (REMAINING.has(norm) && isOfThings(typed, at, lexicon)) return "other";
  if (isGiven(typed, at)) return "gave";
  if (norm === "too" && BEFORE_NAMES.has(typed[at + 1]?.norm ?? "")) return "to";
  if (isNounIs(line, typed, norms, at, lexicon)) return norm.slice(0, -1);
  if (isSettled(entry)) return norm;
  const known = shorthands.get(norm);
  if (known !== undefined) return known;
  if (isName(line, typed, at) || IS_CALLED.has(norms.at(-1) ?? "")) return norm;
  return (
    withG(norm, lexicon) ??
    doneAgain(norm, lexicon) ??
    withVowels(typed, norms, at, lexer) ??
    speller.meant(norm) ??
    unstretched(norm, lexicon) ??
    withoutArticle(norm, lexicon)
  );
}

/**
 * "sld th drssr": the one word that is meant by its consonants. A place is behind its preposition ("off th crb"), a trait
 * before a thing ("nw hinges", "th wht chr"), a thing behind its article; where more than one is left, none is taken.
 */
function withVowels<Head>(
  typed: readonly Word[],
  norms: readonly string[],
  at: number,
  { lexicon, unvowelled, shorthands }: Lexer<Head>,
): string | null {
  const { norm } = typed[at]!;
  if (!isBare(norm) || isCommon(norm)) return null;
  const found = unvowelled(norm);
  const could = found.length === 0 && norm.endsWith("in") ? unvowelled(`${norm}g`) : found;
  if (could.length < 2) return could[0] ?? null;
  const said = (word: string) => lexicon.entry(word)?.said;
  const last = norms.at(-1) ?? "";
  const isBehindArticle = ENTIRE.has(last) || last === "a";
  const place = could.find((word) => said(word)?.place);
  if (place !== undefined && BEFORE_PLACES.has((isBehindArticle ? norms.at(-2) : last) ?? "")) return place;
  const next = typed[at + 1]?.norm ?? "";
  const thing = said(shorthands.get(next) ?? (said(next) ? next : (unvowelled(next)[0] ?? "")));
  const isBeforeThing = Boolean(thing?.noun || thing?.supply || thing?.trait);
  const fit = could.filter((word) => (said(word)?.trait === true) === isBeforeThing);
  const things = isBehindArticle ? fit.filter((word) => said(word)?.noun) : [];
  const left = things.length > 0 ? things : fit;
  return left.length === 1 || COMMONEST.has(left[0] ?? "") ? (left[0] ?? null) : null;
}

/** "the two remaining stools", "the remaining 2 lamps": things, and no money. */
function isOfThings<Head>(typed: readonly Word[], at: number, { entry }: Lexicon<Head>): boolean {
  const next = typed[at + 1];
  const isCounted = next?.kind === "digits" || UNITS[next?.norm ?? ""] !== undefined;
  return entry((isCounted ? typed[at + 2] : next)?.norm ?? "")?.said?.noun?.plural === true;
}

/** "two o the chairs", "a box o screws" */
const isOfMeant = (before = "", next = ""): boolean => ENTIRE.has(next) || CONTAINERS.has(before);

/** "he threw me 40": money came over, and nothing was thrown. */
const isGiven = (typed: readonly Word[], at: number): boolean =>
  typed[at + 1]?.norm === "me" && typed[at + 2]?.kind === "digits" && HANDS_OVER.has(typed[at]!.norm);

/** "dresser posted 4 130": the digit that sounds like "for". */
function withSoundedFor(words: readonly Word[]): readonly Word[] {
  if (!words.some(isSounded)) return words;
  return words.map((word, at) => {
    if (isFour(word) && isForMeant(words, at)) return { ...word, kind: "letters", norm: "for" };
    return isToMeant(words, at) ? { ...word, kind: "letters", norm: "to" } : word;
  });
}

const isSounded = ({ kind, norm }: Word): boolean => kind === "digits" && (norm === "4" || norm === "2");

/** "desk down 2 140": the digit that sounds like "to". */
const isToMeant = (words: readonly Word[], at: number): boolean =>
  words[at]!.norm === "2" &&
  BEFORE_TO_PRICE.has(words[at - 1]?.norm ?? "") &&
  words[at + 1]?.kind === "digits";

const isFour = ({ kind, norm }: Word): boolean => kind === "digits" && norm === "4";

function isForMeant(words: readonly Word[], at: number): boolean {
  const [before, noun, next] = [words[at - 1], words[at - 2], words[at + 1]];
  if (!before || !next || before.norm === "#" || BEFORE_COUNTS.has(before.norm)) return false;
  // "hutch on hold 4 dana"
  const isHeld = BEFORE_FOR_SOMEBODY.has(before.norm) || BEFORE_FOR_SOMEBODY.has(noun?.norm ?? "");
  if (isHeld && next.kind === "letters" && !next.norm.endsWith("s")) return true;
  const isPriced = next.kind === "digits" && !/[a-z]/.test(next.norm);
  return (
    isPriced && BEFORE_FOR_PRICE.has(before.norm) && noun?.kind === "letters" && !noun.norm.endsWith("s")
  );
}

/** Shorter words are never taken apart: too many others lie in them. */
const GLUED_LENGTH_MIN = 8;

const isGluable = (word: Word): boolean => word.norm.length >= GLUED_LENGTH_MIN && isWhole(word);

/** "boughtdresser 30": a verb that runs on into the noun behind it is two words. */
function partsOf<Head>(word: Word, lexicon: Lexicon<Head>): [Word, Word] | null {
  const { norm, start } = word;
  for (let cut = 4; cut <= norm.length - 3; cut += 1) {
    const noun = lexicon.entry(norm.slice(cut))?.said;
    const isVerb = lexicon.entry(norm.slice(0, cut))?.said?.heads !== undefined;
    if (!isVerb || !(noun?.noun || noun?.supply)) continue;
    return [
      { ...word, norm: norm.slice(0, cut), end: start + cut },
      { ...word, norm: norm.slice(cut), start: start + cut, apart: false },
    ];
  }
  return null;
}

/** "sellin", "goin": a verb without its last letter. */
function withG<Head>(norm: string, { entry }: Lexicon<Head>): string | null {
  if (!norm.endsWith("in") || norm.length < AGAIN_LENGTH_MIN) return null;
  return isSettled(entry(`${norm}g`)) ? `${norm}g` : null;
}

/** "restained", "unnailing", of work that is listed without its prefix; "unpainted" tells how a piece is. */
function doneAgain<Head>(norm: string, { entry }: Lexicon<Head>): string | null {
  const once = /^(?:re|(?:un|de).*ing$)/.test(norm) ? norm.slice(2) : "";
  return once.length >= AGAIN_LENGTH_MIN && entry(once)?.said?.labor ? once : null;
}

/** "red" is no "d" done again. */
const AGAIN_LENGTH_MIN = 5;

/** "cashhh", "sooold": a letter typed on and on. */
function unstretched<Head>(norm: string, { entry }: Lexicon<Head>): string | null {
  if (!STRETCHED.test(norm)) return null;
  const meant = [norm.replace(STRETCHES, "$1"), norm.replace(STRETCHES, "$1$1")];
  return meant.find((word) => isSettled(entry(word))) ?? null;
}

const STRETCHED = /(.)\1\1/;
const STRETCHES = /(.)\1{2,}/g;

/** "soldthe": an article run on from its verb is dropped, as articles are. */
function withoutArticle<Head>(norm: string, { entry }: Lexicon<Head>): string {
  const verb = /^(\p{L}{4,})(?:the|my)$/u.exec(norm)?.[1];
  return verb !== undefined && entry(verb)?.said?.heads ? verb : norm;
}

/** "a lowboy 32 an a lamp 9" */
function isAndMeant(next: Word | undefined): boolean {
  return next?.kind === "digits" || /^(?:a|an|the|my|some|then|also)$/.test(next?.norm ?? "");
}

/** "table's done" tells of one table. */
function isNounIs<Head>(
  line: string,
  words: readonly Word[],
  norms: readonly string[],
  at: number,
  lexicon: Lexicon<Head>,
): boolean {
  const { end, norm } = words[at]!;
  if (isWhole(words[at]!) || line[end - 1] !== "s" || !/['’‘]/.test(line[end - 2] ?? "")) return false;
  const noun = norm.slice(0, -1);
  const alone = lexicon.longest([noun], 0)?.roles.noun;
  const joined = at > 0 ? lexicon.longest([norms[at - 1]!, noun], 0) : null;
  return (joined?.words === 2 ? joined.roles.noun : alone)?.plural === false;
}

/** A capital inside a line that is not all capitals is a name: "Stan" is no stain. */
function isName(line: string, words: readonly Word[], at: number): boolean {
  const initial = line[words[at]!.start]!;
  if (at === 0 || initial === initial.toLowerCase() || words[at - 1]!.kind !== "letters") return false;
  return line !== line.toUpperCase();
}
