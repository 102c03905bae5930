import { COMMONEST } from "../words/shorthand.ts";
import { PAST_OF } from "../words/tenses.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Roles } from "./roles.ts";

/** A word written without its vowels, and all that it may be meant for; of two letters only one of the commonest. */
export type Unvowelled = (word: string) => readonly string[];

const LENGTH_MAX = 24;
const NONE: readonly string[] = [];

const VOWELS = /[aeiou]/g;
const DOUBLES = /(.)\1+/g;

const once = (word: string): string => word.replace(DOUBLES, "$1");

/** The first letter of a word and its consonants: "desk" is "dsk". */
const consonantsOf = (word: string): string => word[0]! + word.slice(1).replace(VOWELS, "");

const vowelsIn = (word: string): number => word.slice(1).match(VOWELS)?.length ?? 0;

/** From this length on a word that keeps one vowel may have lost others: shorter ones are too often whole words. */
const ONE_VOWEL_LENGTH_MIN = 6;

/** Whether a word keeps so few of its vowels that others may be left out of it; one of three letters only its last. */
export function isBare(word: string): boolean {
  const { length } = word;
  if (length < 2 || length > LENGTH_MAX) return false;
  const kept = vowelsIn(word);
  return kept === 0 || (kept === 1 && !word.endsWith("y") && (length > 3 || word.endsWith("e")));
}

/** Whether the letters of a word stand in another in their order. */
function isWithin(word: string, whole: string): boolean {
  let at = 0;
  for (const letter of whole) if (letter === word[at]) at += 1;
  return at === word.length;
}

/** What a word typed may be meant for, of some words: "drsr" is "dresser" as "drssr" is. */
function fullOf(typed: string, words: Iterable<string>): string[] {
  const [consonants, plainly] = [consonantsOf(typed), once(typed)];
  const isMeant = (word: string): boolean =>
    (consonantsOf(word) === consonants && isWithin(typed, word)) ||
    (consonantsOf(once(word)) === consonantsOf(plainly) && isWithin(plainly, word));
  const found: string[] = [];
  for (const word of words)
    if (
      word[0] === typed[0] &&
      word.length > typed.length &&
      vowelsIn(word) > vowelsIn(typed) &&
      isMeant(word)
    )
      found.push(word);
  return found;
}

/** A verb's forms are one meaning, as are the spellings of one noun. */
function meaningOf(word: string, { noun, heads }: Roles): string {
  if (noun) return `${noun.name} ${noun.plural}`;
  return heads ? (PAST_OF.get(word) ?? word) : word;
}

const isOfTrade = ({ noun, supply, place, heads, method, labor, person, stream }: Roles): boolean =>
  Boolean(noun || supply || place || heads || method || labor || person || stream);

const isBeside = ({ trait, hedge }: Roles): boolean => Boolean(trait || hedge);

/**
 * Finds words by their consonants among those of the reader: one of the commonest before all, else those that mean
 * something for the books before those that do not, of each meaning one, the past before other forms of a verb.
 */
export function makeUnvowelled<Head>(lexicon: Lexicon<Head>): Unvowelled {
  const remembered = new Map<string, readonly string[]>();
  const rolesIn = (word: string): Roles => lexicon.entry(word)?.said ?? {};
  const isSaid = (word: string): boolean => {
    const entry = lexicon.entry(word);
    return entry?.said !== undefined || entry?.next !== undefined;
  };
  const find = (typed: string): readonly string[] => {
    const commonest = fullOf(typed, COMMONEST);
    if (commonest.length > 0) return commonest;
    const isMute = typed.endsWith("e") && typed.length > 3;
    if (typed.length < (vowelsIn(typed) > 0 && !isMute ? ONE_VOWEL_LENGTH_MIN : 3)) return NONE;
    const all = fullOf(typed, lexicon.vocabulary).filter((word) => isSaid(word) && vowelsIn(word) > 0);
    const isOf = (word: string): boolean => isOfTrade(rolesIn(word));
    const told = all.some(isOf) ? all.filter((word) => isOf(word) || isBeside(rolesIn(word))) : all;
    const byMeaning = new Map<string, string>();
    for (const word of told) {
      const meaning = meaningOf(word, rolesIn(word));
      if (!byMeaning.has(meaning) || word === meaning) byMeaning.set(meaning, word);
    }
    return [...byMeaning.values()];
  };
  return (typed) => {
    const before = remembered.get(typed);
    if (before) return before;
    const found = find(typed);
    // Whatever is typed, no more than some thousands are remembered.
    if (remembered.size > 2000) remembered.clear();
    remembered.set(typed, found);
    return found;
  };
}
