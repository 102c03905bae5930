import { type Bits, bitsOf } from "./bits.ts";
import { isClass, placeOf } from "./classes.ts";
import { OFTEN_SAID, type RowWord, rowWord, sieveOf } from "./words.ts";

/*
 * The language of the rows. A pattern is words and classes with a blank between; the part in brackets is what the
 * row is about, the rest only has to stand around it.
 *
 *   down from      these words, one after the other ("down|off": either; "has_been": two words as one choice)
 *   $  #           an amount; a whole number without a sign of money
 *   <class>        a word of a class: the names in classes.ts, or a kind of note for its verbs ("<sell>")
 *   x?  x*         once or not at all; up to four times
 *   !x  !!x        what comes next is no x; no x comes in all the rest of the line
 *   …              up to eight tokens of anything but a mark
 *   >              the rest of the sentence, where that holds no number, no other verb and nothing that turns it round
 *   ^  ;           before it nothing of its sentence; behind it nothing
 */

export interface Element {
  what: "one" | "gap" | "start" | "end" | "not" | "absent" | "rest";
  least: number;
  most: number;
  /** The words that it may be. */
  words: readonly (readonly RowWord[])[];
  /** The places of the classes that it may be of. */
  classes: readonly number[];
  /** The first of its words, with their bits, and the bits of its classes. */
  firsts: readonly RowWord[];
  /** The rarest word of each. */
  rarest: readonly RowWord[];
  sieve: number;
  bits: Bits;
  /** How many of a hundred notes hold any of it, about. */
  often: number;
}

export interface Pattern {
  elements: readonly Element[];
  /** The elements from the opening bracket up to the closing one. */
  from: number;
  to: number;
  /** First words that a match may begin with, and their bits; null where it begins with a class. */
  opens: { words: readonly RowWord[]; sieve: number } | null;
  /** What a line must hold somewhere for the pattern to stand in it: all of these classes and all these bits of words. */
  must: { bits: Bits; words: readonly RowWord[] };
  /** The classes of which a line must hold two. */
  twice: Bits;
  /** The rarest of all that a line must hold: a row is looked up by its words and classes. */
  key: Element;
  /** The other elements of which a line must hold a word or a class, where that is more than one class. */
  needs: readonly Element[];
}

const REPEAT_MAX = 4;

const SPECIAL: Readonly<Record<string, Element["what"]>> = {
  "…": "gap",
  "^": "start",
  ";": "end",
  ">": "rest",
};

const ELEMENTS = new Map<string, Element>();

/** An element from its text, one for all the rows that write it. */
function elementOf(text: string): Element {
  const known = ELEMENTS.get(text);
  if (known) return known;
  const element = madeElement(text);
  ELEMENTS.set(text, element);
  return element;
}

function madeElement(text: string): Element {
  const last = text.length > 1 ? text.at(-1)! : "";
  const least = last === "?" || last === "*" ? 0 : 1;
  const most = last === "*" ? REPEAT_MAX : 1;
  const core = least === 0 ? text.slice(0, -1) : text;
  if (core.length > 2 && core.startsWith("!!")) return { ...elementOf(core.slice(2)), what: "absent" };
  if (core.length > 1 && core.startsWith("!")) return { ...elementOf(core.slice(1)), what: "not" };
  const what = SPECIAL[core] ?? "one";
  const parts = what === "one" ? core.split("|") : [];
  const words = parts.filter((part) => !isClass(part)).map(wordsOf);
  const firsts = words.map(([first]) => first!);
  const rarest = words.some(isPhrase) ? words.map(rarestOf) : firsts;
  const classes = parts.filter(isClass).map(placeOf);
  return {
    what,
    least,
    most,
    words,
    classes,
    firsts,
    rarest,
    sieve: sieveOf(firsts),
    bits: bitsOf(classes),
    often: [...rarest.map(({ text }) => text), ...parts.filter(isClass)].reduce(
      (sum, part) => sum + oftenOf(part),
      0,
    ),
  };
}

const WORDS_OF = new Map<string, readonly RowWord[]>();

/** The words of an alternative, once for all elements that have it: of some ten thousand most are written again and again. */
function wordsOf(alternative: string): readonly RowWord[] {
  const known = WORDS_OF.get(alternative);
  if (known) return known;
  const words = alternative.split("_").map(rowWord);
  WORDS_OF.set(alternative, words);
  return words;
}

const rarestOf = (words: readonly RowWord[]): RowWord =>
  words.reduce((a, b) => (oftenOf(b.text) < oftenOf(a.text) ? b : a));

/** How many of a hundred notes hold the commonest classes, about. */
const OFTEN: Readonly<Record<string, number>> = {
  ...{ "<any>": 99, "<word>": 98, "<light>": 75, $: 69, "<piece>": 68, "<verb>": 65, "<bare>": 61, "#": 61 },
  ...{ "<art>": 34, "<~spend>": 30, "<~buy>": 30, "<spend>": 26, "<buy>": 25, "<sitename>": 16, "<new>": 16 },
  ...{
    "<house>": 14,
    "<~sell>": 13,
    "<sell>": 13,
    "<supply>": 13,
    "<day>": 12,
    "<inpiece>": 10,
    "<grit>": 9,
  },
  ...{ "<person>": 9, "<several>": 8, "<plain>": 8, "<done>": 7, "<~list>": 6, "<method>": 6, "<list>": 5 },
  ...{ "<service>": 5, "<place>": 5, "<pay>": 4, "<time>": 4, "<~hold>": 4, "<hold>": 4, "<~finish>": 3 },
};
const OFTEN_OF_OTHERS = 2;
const OFTEN_OF_WORD = 0.3;

const oftenOf = (part: string): number =>
  isClass(part) ? (OFTEN[part] ?? OFTEN_OF_OTHERS) : (OFTEN_SAID[part] ?? OFTEN_OF_WORD);

/** A pattern from its text; throws where a bracket is missing, which a test of every row would show. */
export function patternOf(text: string): Pattern {
  const elements: Element[] = [];
  let from = -1;
  let to = -1;
  for (const part of text.split(" ")) {
    let core = part;
    if (core.startsWith("[")) {
      from = elements.length;
      core = core.slice(1);
    }
    const closes = core.endsWith("]");
    if (closes) core = core.slice(0, -1);
    elements.push(elementOf(core));
    if (closes) to = elements.length;
  }
  if (from < 0 || to <= from) throw new Error(`a row without its part in brackets: ${text}`);
  const opens = opensOf(elements);
  const needed = elements.filter(({ what, least }) => what === "one" && least > 0);
  const key = needed.reduce((a, b) => (b.often < a.often ? b : a));
  const classes = needed.filter(isOneClass).map(({ classes: [place] }) => place!);
  const must = {
    bits: bitsOf(classes),
    words: needed.filter(isOneWord).flatMap(({ words }) => words.flat()),
  };
  return {
    elements,
    from,
    to,
    opens: opens && { words: opens, sieve: sieveOf(opens) },
    must,
    twice: bitsOf(classes.filter((place, at) => classes.indexOf(place) < at)),
    key,
    needs: needed.filter((need) => !isOneClass(need) && (need !== key || need.words.some(isPhrase))),
  };
}

/** That one of its words stands in a line is not enough. */
const isPhrase = ({ length }: readonly RowWord[]): boolean => length > 1;

const isOneClass = ({ firsts, classes }: Element): boolean => firsts.length === 0 && classes.length === 1;
const isOneWord = ({ firsts, classes }: Element): boolean => firsts.length === 1 && classes.length === 0;

function opensOf(elements: readonly Element[]): readonly RowWord[] | null {
  let words: readonly RowWord[] = NO_WORDS;
  for (const element of elements) {
    if (element.what === "start" || element.what === "not" || element.what === "absent") continue;
    if (element.what !== "one" || element.classes.length > 0) return null;
    words = words.length === 0 ? element.firsts : [...words, ...element.firsts];
    if (element.least > 0) return words;
  }
  return null;
}

const NO_WORDS: readonly RowWord[] = [];
