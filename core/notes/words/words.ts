/** A list of words or phrases as a set: blanks or lines part them, "_" stands for a blank within one; with all of other lists. */
export const wordSet = (words: string, ...others: readonly ReadonlySet<string>[]): ReadonlySet<string> => {
  // Looked for in all of them at once: hundreds of lists are made before a bot first listens.
  const one = words.includes("\n") ? words.trim().replaceAll(LINE_END, " ") : words;
  const listed = one.split(" ");
  const set = new Set(words.includes("_") ? listed.map(unjoined) : listed);
  for (const other of others) for (const word of other) set.add(word);
  return set;
};

const LINE_END = /\n */g;
const unjoined = (word: string): string => word.replaceAll("_", " ");

/**
 * A list of thousands of words that is asked now and then: the text that they stand in, with blanks between, and where
 * each begins. A set of them takes seven times the memory.
 */
export class LongList {
  readonly #text: string;
  /** By the order of the words. */
  readonly #starts: Uint32Array;

  constructor(text: string) {
    const starts: number[] = [];
    for (let at = 0; at < text.length; at += 1)
      if (text.charCodeAt(at) > BLANK && (at === 0 || text.charCodeAt(at - 1) <= BLANK)) starts.push(at);
    this.#text = text;
    this.#starts = Uint32Array.from(starts).sort((a, b) => this.#order(a, b));
  }

  #order(a: number, b: number): number {
    const text = this.#text;
    let at = 0;
    while (text.charCodeAt(a + at) === text.charCodeAt(b + at) && text.charCodeAt(a + at) > BLANK) at += 1;
    const [one, other] = [text.charCodeAt(a + at), text.charCodeAt(b + at)];
    return (one > BLANK ? one : 0) - (other > BLANK ? other : 0);
  }

  has(word: string): boolean {
    let low = 0;
    let high = this.#starts.length - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const order = this.#compare(word, this.#starts[middle]!);
      if (order === 0) return true;
      if (order < 0) high = middle - 1;
      else low = middle + 1;
    }
    return false;
  }

  /** Whether a word stands before, as or behind the one that begins at a place; a blank is less than any letter. */
  #compare(word: string, start: number): number {
    const text = this.#text;
    for (let at = 0; at < word.length; at += 1) {
      const letter = text.charCodeAt(start + at);
      // The word in the text has ended, as where no number stands behind the text's own end.
      if (!(letter > BLANK)) return 1;
      const order = word.charCodeAt(at) - letter;
      if (order !== 0) return order;
    }
    return text.charCodeAt(start + word.length) > BLANK ? -1 : 0;
  }
}

const BLANK = 32;

/** The words of a text as typed, lower case. */
export const wordsIn = (text: string): string[] => text.toLowerCase().match(/[a-z0-9]+/g) ?? [];

/** Whether a text says any of some words or phrases. */
export function saysAny(text: string, list: ReadonlySet<string>): boolean {
  const said = ` ${wordsIn(text).join(" ")} `;
  for (const word of list) if (said.includes(` ${word} `)) return true;
  return false;
}

/** The same in their order, as a verb's sayings: "…" in one stands for whatever is said in between. */
export const phrases = (words: string): readonly string[] => [...wordSet(words)];

/** Lists of words or phrases that go together: "=" joins those of one list. */
export const wordsAlike = (words: string): readonly (readonly [string, ...string[]])[] =>
  phrases(words).map((alike) => alike.split("=") as [string, ...string[]]);

/** Words by what they stand for, as the words of each. */
export const standFor = <To extends string>(
  lists: Readonly<Partial<Record<To, string>>>,
): Readonly<Record<string, To>> =>
  Object.fromEntries(
    Object.entries<string | undefined>(lists).flatMap(([to, words = ""]) =>
      phrases(words).map((word) => [word, to as To]),
    ),
  );

/** Words by their place among others, counted from `first`; those joined by "=" have one place. */
export const inOrder = (words: string, first = 0): Readonly<Record<string, number>> =>
  Object.fromEntries(wordsAlike(words).flatMap((alike, at) => alike.map((word) => [word, first + at])));

const VOWELS_CUT = ["", "e"];

/** The plain forms that a word may be of, the odd ones of a learner with them: "gived", "selled", "flogged", "keepin". */
export function formsOf(word: string): string[] {
  const cut = /^(.{2,}?)(?:ied|ies)$/.exec(word);
  const stem = /^(.{2,}?)(?:ing|in|ed|es|s)$/.exec(word)?.[1];
  const ends = stem === undefined ? [] : VOWELS_CUT.map((vowel) => stem + vowel);
  const single = stem !== undefined && stem.at(-1) === stem.at(-2) ? [stem.slice(0, -1)] : [];
  return [word, ...(cut ? [`${cut[1]}y`] : []), ...ends, ...single];
}
