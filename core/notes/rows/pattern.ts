import { type Class, classOf, isClass } from "./classes.ts";

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
  /** The words that it may be, and the classes. */
  words: readonly (readonly string[])[];
  tests: readonly Class[];
}

export interface Pattern {
  elements: readonly Element[];
  /** The elements from the opening bracket up to the closing one. */
  from: number;
  to: number;
  /** First words that a match may begin with; null where it begins with a class. */
  opens: ReadonlySet<string> | null;
  /** What a line must hold somewhere for the pattern to stand in it: one of these words, or one of these classes. */
  needs: readonly { words: readonly string[]; tests: readonly Class[] }[];
}

const REPEAT_MAX = 4;

const SPECIAL: Readonly<Record<string, Element["what"]>> = {
  "…": "gap",
  "^": "start",
  ";": "end",
  ">": "rest",
};

/** Every word that a row names: taken as typed, never for a slip of another. */
export const WORDS_OF_ROWS = new Set<string>();

function elementOf(text: string): Element {
  const last = text.length > 1 ? text.at(-1)! : "";
  const least = last === "?" || last === "*" ? 0 : 1;
  const most = last === "*" ? REPEAT_MAX : 1;
  const core = least === 0 ? text.slice(0, -1) : text;
  if (core.length > 2 && core.startsWith("!!")) return { ...elementOf(core.slice(2)), what: "absent" };
  if (core.length > 1 && core.startsWith("!")) return { ...elementOf(core.slice(1)), what: "not" };
  const what = SPECIAL[core] ?? "one";
  const parts = what === "one" ? core.split("|") : [];
  const words = parts.filter((part) => !isClass(part)).map((part) => part.split("_"));
  for (const word of words.flat()) WORDS_OF_ROWS.add(word);
  return {
    what,
    least,
    most,
    words,
    tests: parts.filter(isClass).map(classOf),
  };
}

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
  const needed = elements.filter(({ what, least }) => what === "one" && least > 0);
  const needs = needed.map(({ words, tests }) => ({ words: words.map(([first]) => first!), tests }));
  // Classes first: whether a line holds one is found out once for all the rows.
  needs.sort((a, b) => a.words.length - b.words.length);
  return { elements, from, to, opens: opensOf(elements), needs };
}

function opensOf(elements: readonly Element[]): Set<string> | null {
  const words = new Set<string>();
  for (const element of elements) {
    if (element.what === "start" || element.what === "not" || element.what === "absent") continue;
    if (element.what !== "one" || element.tests.length > 0) return null;
    for (const [first] of element.words) words.add(first!);
    if (element.least > 0) return words;
  }
  return null;
}
