import { isSetName } from "../mentions/furniture.ts";
import { pluralOf } from "../mentions/plural.ts";
import type { Category } from "../reading.ts";
import { FILLER, PRONOUNS } from "../words/filler.ts";
import { CLASHING_SHORT_FORMS, FURNITURE } from "../words/furniture.ts";
import type { Hedge } from "../words/hedges.ts";
import { HEDGES, VAGUE_TIMES } from "../words/hedges.ts";
import { METHODS } from "../words/methods.ts";
import { AT_NO_COST } from "../words/money.ts";
import { EACH_WORDS } from "../words/numbers.ts";
import { PEOPLE } from "../words/people.ts";
import { PLACES, PLACES_IN_SHORT } from "../words/places.ts";
import { PLAIN } from "../words/plain.ts";
import { SHORTHANDS } from "../words/shorthand.ts";
import { STREAMS } from "../words/streams.ts";
import { FEE_VERBS, OTHER_SPENDING, SUPPLIES } from "../words/supplies.ts";
import { BROKEN_PASTS } from "../words/tenses.ts";
import { OPINIONS, TRAITS } from "../words/traits.ts";
import { type Roles, rolesOf } from "./roles.ts";
import { lastWord } from "./text.ts";

/** The phrases that go on from a word or from a phrase, and what it is itself where it may end there. */
export interface Entry<Head = unknown> {
  phrase: string;
  next: Entry<Head> | Map<string, Entry<Head>> | undefined;
  /** As the lists say it, the same for all phrases of a list. */
  said: Roles<Head> | undefined;
  /** The phrase's own, with every field there: made when it is first found, since most of some ten thousand never are. */
  made: Roles<Head> | undefined;
  /** What holds of the word, as bits: of some sixteen thousand entries each would else have a field for each. */
  marks: number;
}

/** What may hold of a word beside its phrases: each a bit. */
export const MARKS = {
  /** It may also open a number, a count or a day. */
  opens: 1,
  /** It is known, or ordinary, and taken as typed. */
  settled: 2,
  /** It may be a pause, or begin a mark that is said out loud. */
  spoken: 4,
  /** It is another word in certain company. */
  twofold: 8,
  /** It may open an order to note something. */
  order: 16,
  /** It, or a phrase that it opens, may be said while one thinks. */
  pause: 32,
  /** It may put a number right in the same breath. */
  putsRight: 64,
  /** It may tell how a piece is, or who sold it. */
  describes: 128,
  /** It may tell how a price was bargained over, or the deed that this came to. */
  haggles: 256,
  dealt: 512,
} as const;

type Marked = { marks: number } | undefined;

/** Whether a word may also open a number, a count or a day. */
export const opensOther = (entry: Marked): boolean =>
  entry !== undefined && (entry.marks & MARKS.opens) !== 0;

/** Whether it is taken as typed, and for no slip of another. */
export const isSettled = (entry: Marked): boolean =>
  entry !== undefined && (entry.marks & MARKS.settled) !== 0;

/** Whether it may be a pause, or a mark said out loud. */
export const isSpoken = (entry: Marked): boolean => entry !== undefined && (entry.marks & MARKS.spoken) !== 0;

/** Whether it is taken as typed whatever stands around it. */
export const isPlain = (entry: Marked): boolean =>
  entry !== undefined && (entry.marks & (MARKS.settled | MARKS.twofold)) === MARKS.settled;

/** A phrase found: what it is, and how many words it has. */
export interface Found<Head = unknown> {
  phrase: string;
  roles: Roles<Head>;
  words: number;
}

/** Phrases to roles, found longest first from any word of a line. */
export interface Lexicon<Head = unknown> {
  add(phrase: string, roles: Roles<Head>): void;
  /** Notes what holds of some words (`MARKS`). */
  mark(words: Iterable<string>, marks: number): void;
  /** What begins with a word; undefined where nothing does. */
  entry(word: string): Entry<Head> | undefined;
  /** The longest phrase that begins at `at`. */
  longest(norms: readonly string[], at: number): Found<Head> | null;
  /** Every single word that stands in a phrase: none of them is a slip of another. */
  readonly vocabulary: ReadonlySet<string>;
  /** The words of things, places and verbs: what a slip may be meant for. */
  readonly targets: ReadonlySet<string>;
}

/**
 * So many words looked up of late are kept, each in a place told by its letters: people say the same ones again and again,
 * and to compare two words takes a fraction of what it takes to look one up.
 */
const LATEST = 1024;

function makeLexicon<Head>(): Lexicon<Head> {
  const root = new Map<string, Entry<Head>>();
  const vocabulary = new Set<string>();
  const targets = new Set<string>();
  const add = (phrase: string, roles: Roles<Head>): void => {
    const [first = "", ...others] = phrase.split(" ");
    let entry = entryIn(root, first, first);
    let { length } = first;
    for (const word of others) {
      length += 1 + word.length;
      entry = entryBehind(entry, word, phrase.slice(0, length));
    }
    for (const word of [first, ...others]) {
      vocabulary.add(word);
      if (isTarget(roles)) targets.add(word);
    }
    entry.said = entry.said ? rolesOf(roles, entry.said) : roles;
  };
  const mark = (words: Iterable<string>, marks: number): void => {
    for (const word of words) entryIn(root, word, word).marks |= marks;
  };
  const latest = Array.from({ length: LATEST }, () => ({
    word: "",
    entry: undefined as Entry<Head> | undefined,
  }));
  const entry = (word: string): Entry<Head> | undefined => {
    const ends = word.charCodeAt(0) * 31 + word.charCodeAt(word.length - 1);
    const place = (ends * 31 + word.length) & (LATEST - 1);
    const last = latest[place]!;
    if (last.word === word) return last.entry;
    last.word = word;
    last.entry = root.get(word);
    return last.entry;
  };
  const longest = (norms: readonly string[], at: number): Found<Head> | null => {
    const first = at < norms.length ? entry(norms[at]!) : undefined;
    return first ? longestFrom(first, norms, at) : null;
  };
  return { add, mark, entry, longest, vocabulary, targets };
}

function entryIn<Head>(entries: Map<string, Entry<Head>>, word: string, phrase: string): Entry<Head> {
  let entry = entries.get(word);
  if (!entry) {
    entry = madeEntry(phrase);
    entries.set(word, entry);
  }
  return entry;
}

const madeEntry = <Head>(phrase: string): Entry<Head> => ({
  phrase,
  next: undefined,
  said: undefined,
  made: undefined,
  marks: 0,
});

/** The entry of a phrase and one more word, made where it is not there. */
function entryBehind<Head>(before: Entry<Head>, word: string, phrase: string): Entry<Head> {
  const known = nextOf(before, word);
  if (known) return known;
  const { next } = before;
  if (next instanceof Map) return entryIn(next, word, phrase);
  const entry = madeEntry<Head>(phrase);
  // A map for one alone would be most of some three thousand maps.
  before.next = next ? new Map([next, entry].map((each) => [lastWord(each.phrase), each])) : entry;
  return entry;
}

/** What goes on from an entry with a word. */
export function nextOf<Head>({ phrase, next }: Entry<Head>, word: string): Entry<Head> | undefined {
  if (!next || next instanceof Map) return next?.get(word);
  return next.phrase.length === phrase.length + 1 + word.length && next.phrase.endsWith(word)
    ? next
    : undefined;
}

/** All that goes on from an entry. */
export const allBehind = <Head>({ next }: Entry<Head>): readonly Entry<Head>[] =>
  next instanceof Map ? [...next.values()] : next ? [next] : [];

/** The longest phrase that goes on from the entry of the word at `at`. */
export function longestFrom<Head>(
  first: Entry<Head>,
  norms: readonly string[],
  at: number,
): Found<Head> | null {
  let longest = first;
  let words = 1;
  let entry: Entry<Head> | undefined = first;
  for (let index = at + 1; entry?.next && index < norms.length; index += 1) {
    entry = nextOf(entry, norms[index]!);
    if (!entry?.said) continue;
    longest = entry;
    words = index - at + 1;
  }
  const roles = rolesIn(longest);
  return roles ? { phrase: longest.phrase, roles, words } : null;
}

/** What a word or phrase is where it may end there. */
function rolesIn<Head>(entry: Entry<Head>): Roles<Head> | undefined {
  if (entry.said && !entry.made) entry.made = rolesOf(entry.said);
  return entry.made;
}

function isTarget({ noun, supply, place, heads, method, labor }: Roles): boolean {
  return Boolean(noun || supply || place || heads || method || labor);
}

/** The ways one listed spelling may be written: joined, apart, with a hyphen (read as apart). */
function spellings(spelling: string): string[] {
  if (spelling.includes("+")) return [spelling.replace("+", ""), spelling.replace("+", " ")];
  const words = spelling.split(" ");
  // "endtable", "coffeetable": the last two words run together.
  return words.length === 2 ? [spelling, words.join("")] : [spelling];
}

function addFurniture(lexicon: Lexicon): void {
  for (const [first, ...others] of FURNITURE) {
    const name = first.replace("+", "").normalize("NFD").replace(/\p{M}/gu, "");
    const isSet = isSetName(name);
    const listed = name.includes(" ") ? others : others.filter((other) => /[ +]/.test(other));
    for (const spelling of [first, ...listed].flatMap(spellings)) {
      if (CLASHING_SHORT_FORMS.has(spelling)) continue;
      const plain = spelling.normalize("NFD").replace(/\p{M}/gu, "");
      lexicon.add(plain, { noun: { name, plural: false, isSet } });
      const plural = pluralOf(plain);
      if (plural !== plain) lexicon.add(plural, { noun: { name, plural: true, isSet } });
    }
  }
}

/** Listed misspellings of one word, and shorthand: each is read as the word wherever it stands. */
export function shorthands(): Map<string, string> {
  const found = new Map(Object.entries(BROKEN_PASTS));
  for (const [word, ...others] of SHORTHANDS) for (const other of others) found.set(other, word);
  for (const [first, ...others] of FURNITURE) {
    const name = first.replace("+", "").normalize("NFD").replace(/\p{M}/gu, "");
    if (name.includes(" ")) continue;
    for (const other of others) {
      if (/[ +]/.test(other)) continue;
      const plain = other.normalize("NFD").replace(/\p{M}/gu, "");
      found.set(plain, name);
      found.set(pluralOf(plain), pluralOf(name));
    }
  }
  return found;
}

function addSupplies(lexicon: Lexicon): void {
  for (const [category, names] of Object.entries(SUPPLIES)) {
    const supply: Roles = { supply: category as Category };
    for (const name of names) {
      lexicon.add(name, supply);
      lexicon.add(pluralOf(name), supply);
    }
  }
  for (const name of OTHER_SPENDING) lexicon.add(name, { supply: "other" });
}

/** The words of the trade; the verbs and the labors of their files are added by the reader. */
export function tradeLexicon<Head>(): Lexicon<Head> {
  const lexicon = makeLexicon<Head>();
  const addAll = (phrases: Iterable<string>, roles: Roles<Head>): void => {
    for (const phrase of phrases) lexicon.add(phrase, roles);
  };
  addFurniture(lexicon as Lexicon);
  addSupplies(lexicon as Lexicon);
  for (const place of PLACES) {
    lexicon.add(place, { place });
    lexicon.add(pluralOf(place), { place: pluralOf(place) });
    // "yardsale", "fleamarket"
    if (place.split(" ").length === 2) lexicon.add(place.replace(" ", ""), { place });
  }
  for (const [words, place] of Object.entries(PLACES_IN_SHORT)) lexicon.add(words, { place });
  for (const [words, method] of Object.entries(METHODS)) lexicon.add(words, { method });
  for (const [words, stream = words] of STREAMS) lexicon.add(words, { stream });
  for (const [hedge, phrases] of Object.entries(HEDGES)) addAll(phrases, { hedge: hedge as Hedge });
  addAll(VAGUE_TIMES, { vagueTime: true });
  addAll(PEOPLE, { person: true });
  addAll(TRAITS, { trait: true });
  addAll(OPINIONS, { opinion: true });
  addAll([...PLAIN, ...FEE_VERBS, ...EACH_WORDS, ...AT_NO_COST], { plain: true });
  addAll(FILLER, { filler: true });
  addAll(PRONOUNS, { pronoun: true });
  return lexicon;
}
