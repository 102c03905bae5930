import { isVowel } from "../words/tenses.ts";

/** Finds the one known word that a typed word is a slip away from. */
export interface Speller {
  /** The known word meant, or null: known already, too short, an ordinary word, or more than one would do. */
  meant(word: string): string | null;
  /** The known words that lie so near, the nearest first, ordinary as the word may be. */
  near(word: string, slips: number): string[];
}

/** Words shorter than this are never corrected: too many others lie near. */
const LENGTH_MIN = 4;
const LENGTH_MAX = 24;
/** From this length on, two slips are forgiven. */
const TWO_SLIPS_LENGTH_MIN = 8;

/** In a short word a wrong letter makes another word: only swaps and letters lost or doubled are forgiven there. */
function slipsAllowed(length: number): number {
  if (length >= TWO_SLIPS_LENGTH_MIN) return 2 * LETTER;
  return length >= 6 ? WRONG : length === 5 ? LETTER : VOWEL;
}

/** What a slip of the thumb weighs: swaps and lost vowels are commonest, a wrong letter from afar rarest. */
const SWAP = 8;
const VOWEL = 9;
export const LETTER = 10;
const NEIGHBOUR = 11;
export const WRONG = 12;

const KEYS = ["qwertyuiop", "asdfghjkl", "zxcvbnm"];

/** Keys that touch on a phone's keyboard, as pairs of letters. */
const TOUCHING: ReadonlySet<string> = new Set(
  KEYS.flatMap((row, at) =>
    [...row].flatMap((key, place) => {
      const below = KEYS[at + 1] ?? "";
      const others = [row[place + 1], below[place - 1], below[place]].filter((other) => other !== undefined);
      return others.flatMap((other) => [key + other, other + key]);
    }),
  ),
);

/** What it weighs that a letter was typed which is not in the word; one typed twice is as common as one lost. */
const typedWeight = (typed: string, at: number): number => (typed[at] === typed[at - 1] ? VOWEL : LETTER);

/** What it weighs that a known letter was not typed. */
const lostWeight = (known: string, at: number): number =>
  isVowel(known[at]) || known[at] === known[at - 1] ? VOWEL : LETTER;

/**
 * The weight of the slips between a typed and a known word: edit distance that counts a swap of neighbours as
 * one slip (optimal string alignment), in tenths. Words are at most 24 letters long, so the table is small.
 */
export function slipsBetween(typed: string, known: string): number {
  let beforeLast: number[] = [];
  let last = [0];
  for (let j = 1; j <= known.length; j += 1) last.push(last[j - 1]! + lostWeight(known, j - 1));
  for (let i = 1; i <= typed.length; i += 1) {
    const row = [i * LETTER];
    for (let j = 1; j <= known.length; j += 1) {
      const same = typed[i - 1] === known[j - 1];
      const wrong = TOUCHING.has(typed[i - 1]! + known[j - 1]!) ? NEIGHBOUR : WRONG;
      const lost = row[j - 1]! + lostWeight(known, j - 1);
      let cost = Math.min(last[j]! + typedWeight(typed, i - 1), lost, last[j - 1]! + (same ? 0 : wrong));
      if (i > 1 && j > 1 && typed[i - 1] === known[j - 2] && typed[i - 2] === known[j - 1])
        cost = Math.min(cost, beforeLast[j - 2]! + SWAP);
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[known.length]!;
}

/** A word's letters without the vowels behind the first letter: "dresser" is "drssr". */
const skeletonOf = (word: string): string =>
  word[0]! + [...word.slice(1)].filter((each) => !isVowel(each)).join("");

const SKELETON_MIN = 4;
/** One vowel may have stayed in a word of so many letters. */
const ONE_VOWEL_LENGTH_MIN = 6;

/** Whether a word is written without its vowels, nearly: "wshstnd", "reclnr". */
function isShortened(word: string): boolean {
  const vowels = [...word.slice(1)].filter(isVowel).length;
  return vowels === 0 || (vowels === 1 && word.length >= ONE_VOWEL_LENGTH_MIN);
}

/** Whether a typed word is likely a known one mistyped; short words are hardly forgiven anything. */
export function isNearSpelling(typed: string, known: string): boolean {
  if (typed === known) return true;
  if (typed.length < LENGTH_MIN || typed.length > LENGTH_MAX || known.length > LENGTH_MAX) return false;
  return typed[0] === known[0] && slipsBetween(typed, known) <= slipsAllowed(typed.length);
}

/** By how many letters a known word may be shorter or longer. */
const LENGTHS_APART_MAX = 1;

/** A known word with two vowels that stand together left out: "bookcase" is typed "bkcase" as well. */
const withoutVowelPairs = (word: string): string[] =>
  [...word.matchAll(/(?<=.)[aeiou]{2}/g)].map(({ index }) => word.slice(0, index) + word.slice(index + 2));

/** The weight of the slips to a known word of about the same length, two vowels together lost as one; infinite beyond. */
function slipsTo(known: string, typed: string): number {
  const whole = areOfALength(typed, known) ? slipsBetween(typed, known) : Number.POSITIVE_INFINITY;
  if (known.length <= typed.length) return whole;
  const shortened = withoutVowelPairs(known).filter((word) => areOfALength(typed, word));
  return Math.min(whole, ...shortened.map((word) => LETTER + slipsBetween(typed, word)));
}

const areOfALength = (a: string, b: string): boolean => Math.abs(a.length - b.length) <= LENGTHS_APART_MAX;

/**
 * A speller over the words of the lexicon. The first letter must be right: slips there make other words, and only
 * the known words of that letter are looked through. What was found is remembered, since people type alike again.
 */
export function makeSpeller(vocabulary: Iterable<string>, isSettled: (word: string) => boolean): Speller {
  const known = new Set(vocabulary);
  const byLetter = new Map<string, string[]>();
  for (const word of known) {
    if (word.length < LENGTH_MIN) continue;
    const list = byLetter.get(word[0]!);
    if (list) list.push(word);
    else byLetter.set(word[0]!, [word]);
  }
  const remembered = new Map<string, string | null>();
  return {
    meant(word) {
      if (word.length < LENGTH_MIN || word.length > LENGTH_MAX || isSettled(word)) return null;
      const before = remembered.get(word);
      if (before !== undefined) return before;
      const candidates = byLetter.get(word[0]!) ?? [];
      const found = nearest(word, candidates) ?? (isShortened(word) ? fullOf(word, candidates) : null);
      // A bounded memory: whatever is typed, it never grows past a few thousand words.
      if (remembered.size > 4000) remembered.clear();
      remembered.set(word, found);
      return found;
    },
    near(word, slips) {
      if (word.length < LENGTH_MIN || word.length > LENGTH_MAX) return [];
      return (byLetter.get(word[0]!) ?? [])
        .map((candidate) => ({ candidate, weight: candidate === word ? Infinity : slipsTo(candidate, word) }))
        .filter(({ weight }) => weight <= slips)
        .sort((a, b) => a.weight - b.weight)
        .map(({ candidate }) => candidate);
    },
  };
}

/** The known word that the fewest slips lead to; null where none is near, or two are as near. */
function nearest(word: string, candidates: readonly string[]): string | null {
  let best: string | null = null;
  let fewest = slipsAllowed(word.length) + 1;
  for (const candidate of candidates) {
    const slips = slipsTo(candidate, word);
    if (slips < fewest) {
      best = candidate;
      fewest = slips;
    } else if (slips === fewest && best !== candidate) best = samePlain(best, candidate);
  }
  return best;
}

/** The known word that was written without its vowels and one more letter; null where it may be several. */
function fullOf(word: string, candidates: readonly string[]): string | null {
  const typed = skeletonOf(word);
  if (typed.length < SKELETON_MIN) return null;
  return onlyOne(candidates.filter((known) => lacksOneLetter(typed, skeletonOf(known))));
}

/** Whether a word is another one with a letter left out behind the first. */
function lacksOneLetter(shorter: string, longer: string): boolean {
  if (longer.length !== shorter.length + 1) return false;
  let at = 1;
  while (at < shorter.length && shorter[at] === longer[at]) at += 1;
  return shorter.slice(at) === longer.slice(at + 1);
}

const onlyOne = (words: readonly string[]): string | null =>
  words.length === 0 ? null : words.reduce<string | null>((one, word) => samePlain(one, word), words[0]!);

/** Two candidates as near as each other settle nothing, unless one only goes on from the other ("deposit", "deposits"). */
export function samePlain(a: string | null, b: string): string | null {
  if (a === null) return null;
  if (a.startsWith(b)) return b;
  return b.startsWith(a) ? a : null;
}
