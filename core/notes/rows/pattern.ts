import { type Bits, bitsOf } from "./bits.ts";
import { isClass, placeOf } from "./classes.ts";
import { OFTEN_SAID, type RowWord, rowWord, SAID_AT_TIMES, sieveOf } from "./words.ts";

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
  /** The words that it may be, of each the first, with their bits; the bits and places of its classes. */
  firsts: readonly RowWord[];
  /** All words of each, where any has several; else none. */
  words: readonly (readonly RowWord[])[];
  classes: readonly number[];
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
  /** The classes of which a line must hold two. */
  twice: Bits;
}

/** What a line must hold somewhere for a pattern to stand in it. */
export interface Needed {
  /** All of these classes and all these bits of words. */
  must: { bits: Bits; words: readonly RowWord[] };
  /** The rarest of it: a row is looked up by its words and classes. */
  key: Element;
  /** The other elements of which it must hold a word or a class, where that is more than one class. */
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
  const said = parts.filter((part) => !isClass(part));
  const words = said.some((part) => part.includes("_")) ? said.map(wordsOf) : NO_PHRASES;
  const firsts = words.length > 0 ? words.map(([first]) => first!) : said.map(rowWord);
  const named = parts.filter(isClass);
  const element: Element = {
    what,
    least,
    most,
    words,
    classes: named.length > 0 ? named.map(placeOf) : NO_PLACES,
    firsts,
    sieve: sieveOf(firsts),
    bits: bitsOf(named.map(placeOf)),
    often: named.reduce((sum, part) => sum + oftenOf(part), 0),
  };
  element.often += rarestIn(element).reduce((sum, { text }) => sum + oftenOf(text), 0);
  return element;
}

const NO_PHRASES: readonly (readonly RowWord[])[] = [];
const NO_PLACES: readonly number[] = [];

const PHRASES = new Map<string, readonly RowWord[]>();

/** The words of an alternative, once for all elements that have it: most are written again and again. */
function wordsOf(alternative: string): readonly RowWord[] {
  const known = PHRASES.get(alternative);
  if (known) return known;
  const words = alternative.split("_").map(rowWord);
  PHRASES.set(alternative, words);
  return words;
}

/** Lets go of what was kept while rows were made, so that those that write the same share it. */
export function forgetWritten(): void {
  ELEMENTS.clear();
  PHRASES.clear();
}

/** The rarest word of each that an element may be. */
export const rarestIn = ({ firsts, words }: Element): readonly RowWord[] =>
  words.length > 0 ? words.map(rarestOf) : firsts;

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
  ...{ "<numbered>": 3, "<weekday>": 3, "<ownspot>": 3, "<part>": 3, "<workpart>": 3, "<house>": 14 },
  ...{ "<ofset>": 1, "<monthday>": 1, "<container>": 1, "<hurt>": 1, "<start>": 1, "<~start>": 1 },
  ...{ "<span>": 0.7, "<work>": 0.6, "<month>": 0.6, "<things>": 0.6, "<lent>": 0.5, "<site>": 0.5 },
  ...{ "<clock>": 0.4, "<theirs>": 0.4, "<grain>": 0.4, "<amonth>": 0.3, "<ofthem>": 0.3, "<rank>": 0.2 },
  ...{ "<onemore>": 0.1, "<other>": 0.1, "<blemish>": 0.2, "<comp>": 0.1, "<previous>": 0.1, "<ours>": 0.1 },
};
const OFTEN_OF_OTHERS = 2;
const OFTEN_OF_WORD = 0.3;

const oftenOf = (part: string): number =>
  isClass(part)
    ? (OFTEN[part] ?? OFTEN_OF_OTHERS)
    : (OFTEN_SAID[part] ?? SAID_AT_TIMES[part] ?? OFTEN_OF_WORD);

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
  const classes = classesOf(elements.filter(isNeeded));
  return {
    elements,
    from,
    to,
    opens: opens && { words: opens, sieve: sieveOf(opens) },
    twice: bitsOf(classes.filter((place, at) => classes.indexOf(place) < at)),
  };
}

/** What a line must hold for a pattern; asked once of each, when rows are made ready to be looked up. */
export function neededFor({ elements }: Pattern): Needed {
  const needed = elements.filter(isNeeded);
  const key = needed.reduce((a, b) => (b.often < a.often ? b : a));
  const words = needed.filter(isOneWord).flatMap(({ words: phrases, firsts }) => phrases[0] ?? firsts);
  return {
    must: { bits: bitsOf(classesOf(needed)), words },
    key,
    // That one word of a phrase stands in a line is not enough.
    needs: needed.filter((need) => !isOneClass(need) && (need !== key || need.words.length > 0)),
  };
}

const isNeeded = ({ what, least }: Element): boolean => what === "one" && least > 0;

/** The classes of which a line must hold each. */
const classesOf = (needed: readonly Element[]): number[] =>
  needed.filter(isOneClass).map(({ classes: [place] }) => place!);

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
