import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { MONTHS } from "../words/calendar.ts";
import { PIECE_PARTS, SERVICES, THINGS, WORK_PARTS } from "../words/parts.ts";
import { HOUSEHOLD, isOwner } from "../words/people.ts";
import { GRITS } from "../words/supplies.ts";

/*
 * The language of the rows. A pattern is words and classes with a blank between; the part in brackets is what the
 * row is about, the rest only has to stand around it.
 *
 *   down from      these words, one after the other ("down|off": either; "has_been": two words as one choice)
 *   $  #           an amount; a whole number without a sign of money
 *   <class>        a word of a class: the names of CLASSES below, or a kind of note for its verbs ("<sell>")
 *   x?  x*         once or not at all; up to four times
 *   !x  !!x        what comes next is no x; no x comes in all the rest of the line
 *   …              up to eight tokens of anything but a mark
 *   >              the rest of the sentence, where that holds no number, no other verb and nothing that turns it round
 *   ^  ;           before it nothing of its sentence; behind it nothing
 */

type Test = (token: Tok) => boolean;

/** A class: what it takes, and its place among all classes. */
interface Class {
  test: Test;
  place: number;
}

interface Element {
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

export interface Match {
  from: number;
  to: number;
}

/** No picture or table top is given in less: "6x2" of a thing is a count and a price. */
const SIDE_MIN = 10;
const GAP_MAX = 8;
/** How far a reason runs, and how far "nowhere in the rest" looks: a sentence, so that time stays linear. */
const REST_MAX = 30;
const REPEAT_MAX = 4;

const isVerb: Test = (token) => headsOf(token).some(({ light }) => !light);
const isWord = (token: Tok): boolean => token.kind === "word";
const role =
  (name: "labor" | "person" | "place" | "trait" | "opinion" | "stream" | "noun"): Test =>
  (token) =>
    token.kind === "word" && token.roles[name] !== undefined;

const ARTICLES = new Set([
  "the",
  "a",
  "an",
  "my",
  "our",
  "this",
  "that",
  "his",
  "her",
  "their",
  "some",
  "those",
  "these",
  "your",
]);
const PRONOUNS = new Set(["he", "she", "they", "somebody", "someone", "who"]);
const CLAUSE_MARKS = new Set([",", ".", ";", "!", "?", ":", "-", "(", ")"]);
/** Marks that a gap goes over. */
const GAP_MARKS = new Set([",", "-", "(", ")", "+", "&"]);
const JOINTS = new Set(["and", "then", "but", "so", "&", "also"]);

/** What a "<name>" may be. */
const CLASSES: Readonly<Record<string, Test>> = {
  piece: ({ kind }) => kind === "piece",
  several: ({ kind, mention }) => kind === "piece" && (mention!.plural === true || (mention!.count ?? 1) > 1),
  numbered: ({ kind, mention }) => kind === "piece" && mention!.number !== undefined,
  supply: ({ kind, roles }) => kind === "word" && roles.supply !== undefined && !roles.heads,
  labor: role("labor"),
  person: role("person"),
  kin: ({ kind, text }) => kind === "word" && HOUSEHOLD.has(text),
  /** Somebody else's: "moms lamp", "the neighbors". */
  theirs: ({ text, mention, kind }) =>
    kind === "piece" ? (mention!.traits ?? []).some(isOwner) : kind === "word" && isOwner(text),
  someone: ({ kind, text }) => kind === "word" && PRONOUNS.has(text),
  place: role("place"),
  trait: role("trait"),
  opinion: role("opinion"),
  stream: role("stream"),
  new: ({ kind, unknown, text }) => kind === "word" && unknown === true && !/^loans?$/.test(text),
  art: ({ kind, text }) => kind === "word" && ARTICLES.has(text),
  day: ({ kind }) => kind === "day",
  weekday: ({ kind, said }) => kind === "day" && said?.form === "weekday",
  monthday: ({ kind, said }) => kind === "day" && said?.form === "dayOfMonth",
  time: ({ kind }) => kind === "duration",
  clock: ({ kind }) => kind === "clock",
  coats: ({ kind, text }) => kind === "grain" && /coats?$/.test(text),
  eachway: ({ kind, text }) => kind === "miles" && text.endsWith("way"),
  /** "60 a month": how often, where no time passes. */
  amonth: ({ kind, text }) =>
    kind === "span" && (text === "a month" || text === "per month" || text === "one month"),
  aweek: ({ kind, text }) =>
    kind === "span" && (text === "a week" || text === "per week" || text === "one week"),
  /** "25 each" before what it is each of. */
  eachof: ({ kind, each }) => kind === "amount" && each === true,
  /** Words that are days as often as not. */
  sunsat: ({ kind, text }) => kind === "day" && (text === "sun" || text === "sat"),
  miles: ({ kind }) => kind === "miles",
  percent: ({ kind }) => kind === "percent",
  span: ({ kind }) => kind === "span",
  grain: ({ kind }) => kind === "grain",
  number: ({ kind }) => kind === "number",
  size: ({ amount: said }) =>
    said?.factors?.every(({ digits, scale }) => scale === 0 && digits >= SIDE_MIN) === true,
  grit: ({ kind, text }) => kind === "amount" && GRITS.has(text),
  month: ({ kind, text }) => kind === "word" && MONTHS[text] !== undefined,
  part: ({ kind, text, roles }) => kind === "word" && PIECE_PARTS.has(text) && !roles.heads,
  things: ({ kind, text }) => kind === "word" && THINGS.has(text),
  workpart: ({ kind, text }) => kind === "word" && WORK_PARTS.has(text),
  service: ({ kind, text }) => kind === "word" && SERVICES.has(text),
  done: ({ kind, text, unknown, roles }) =>
    kind === "word" &&
    (SERVICES.has(text) || roles.labor === true || (unknown === true && text.endsWith("ed"))),
  plain: ({ kind, roles }) => kind === "word" && roles.plain === true && roles.filler !== true,
  word: isWord,
  any: () => true,
  light: (token) => headsOf(token).length > 0,
  verb: isVerb,
};

const amount: Test = ({ kind }) => kind === "amount";
const wholeNumber: Test = ({ kind, amount: said, each }) =>
  kind === "amount" && said!.money !== true && !each && wholeOf(said!.exact) !== null;

const KNOWN = new Map<string, Class>();

/** A class by its name: one for all the rows that name it. */
function classOf(name: string): Class {
  let found = KNOWN.get(name);
  if (!found) {
    const inner = name.slice(1, -1);
    const test = name === "$" ? amount : name === "#" ? wholeNumber : (CLASSES[inner] ?? verbTest(inner));
    found = { test, place: KNOWN.size };
    KNOWN.set(name, found);
  }
  return found;
}

/** "<sell>" is a verb that says a sale alone, "<~sell>" also one that may say something else. */
function verbTest(name: string): Test {
  const isLoose = name.startsWith("~");
  const kind = isLoose ? name.slice(1) : name;
  return (token) =>
    headsOf(token).some((head) => head.kind === kind && (isLoose || !head.light) && head.tail.length === 0);
}

const isClass = (text: string): boolean => text === "$" || text === "#" || text.startsWith("<");

const SPECIAL: Readonly<Record<string, Element["what"]>> = {
  "…": "gap",
  "^": "start",
  ";": "end",
  ">": "rest",
};

function elementOf(text: string): Element {
  const last = text.length > 1 ? text.at(-1)! : "";
  const least = last === "?" || last === "*" ? 0 : 1;
  const most = last === "*" ? REPEAT_MAX : 1;
  const core = least === 0 ? text.slice(0, -1) : text;
  if (core.length > 2 && core.startsWith("!!")) return { ...elementOf(core.slice(2)), what: "absent" };
  if (core.length > 1 && core.startsWith("!")) return { ...elementOf(core.slice(1)), what: "not" };
  const what = SPECIAL[core] ?? "one";
  const parts = what === "one" ? core.split("|") : [];
  return {
    what,
    least,
    most,
    words: parts.filter((part) => !isClass(part)).map((part) => part.split("_")),
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

/** One word of a line as patterns see it: tokens of several words are several units, each a place of its own. */
interface Unit {
  word: string;
  /** The tables that know it, as bits. */
  tables: number;
  /** The place of its token, and how many units of that token are still to come, itself included; 0 within one. */
  token: number;
  span: number;
}

/** The words of a line's tokens, made once for all the rows of a table. */
export interface Units {
  tokens: readonly Tok[];
  units: readonly Unit[];
  /** The tables that know any of its words, as bits. */
  tables: number;
  /** Which classes the line holds at all, by their place: 1 yes, 2 no, found when first asked. */
  holds: Uint8Array;
}

/** Words to the tables that look rows up by them, as bits. */
const TABLES_OF = new Map<string, number>();
let tables = 0;

/** A bit for one more table, set for each word that it looks rows up by. */
export function bitOf(words: Iterable<string>): number {
  const bit = 1 << tables;
  tables += 1;
  for (const word of words) TABLES_OF.set(word, (TABLES_OF.get(word) ?? 0) | bit);
  return bit;
}

export function unitsOf(tokens: readonly Tok[]): Units {
  const units: Unit[] = [];
  let known = 0;
  for (let at = 0; at < tokens.length; at += 1) {
    const { kind, text } = tokens[at]!;
    if (kind !== "word" || !text.includes(" ")) {
      const word = kind === "piece" ? "" : text;
      const bits = TABLES_OF.get(word) ?? 0;
      units.push({ word, tables: bits, token: at, span: 1 });
      known |= bits;
      continue;
    }
    const words = text.split(" ");
    words.forEach((word, place) => {
      const bits = TABLES_OF.get(word) ?? 0;
      units.push({ word, tables: bits, token: at, span: place === 0 ? words.length : 0 });
      known |= bits;
    });
  }
  return { tokens, units, tables: known, holds: new Uint8Array(KNOWN.size) };
}

/** Whether a line holds all that a pattern needs; most rows are set aside here. */
export function couldStand({ needs }: Pattern, line: Units): boolean {
  for (let need = 0; need < needs.length; need += 1) {
    const { words, tests } = needs[need]!;
    let is = false;
    for (let at = 0; at < tests.length && !is; at += 1) is = holds(line, tests[at]!);
    for (let at = 0; at < words.length && !is; at += 1) is = hasWord(line, words[at]!);
    if (!is) return false;
  }
  return true;
}

function hasWord({ units }: Units, word: string): boolean {
  for (let at = 0; at < units.length; at += 1) if (units[at]!.word === word) return true;
  return false;
}

const YES = 1;
const NO = 2;

function holds({ tokens, holds: known }: Units, { test, place }: Class): boolean {
  if (known[place] === 0) {
    let is = false;
    for (let at = 0; at < tokens.length && !is; at += 1) is = test(tokens[at]!);
    known[place] = is ? YES : NO;
  }
  return known[place] === YES;
}

/** How many units the words of a literal take from `at` on, 0 where they do not stand there. */
function literalAt(units: readonly Unit[], at: number, words: readonly string[]): number {
  for (let place = 0; place < words.length; place += 1)
    if (units[at + place]?.word !== words[place]) return 0;
  return words.length;
}

function takes({ tokens, units }: Units, at: number, element: Element): number {
  const unit = units[at];
  if (!unit) return 0;
  let most = 0;
  for (const words of element.words) most = Math.max(most, literalAt(units, at, words));
  if (most > 0) return most;
  return unit.span > 0 && element.tests.some(({ test }) => test(tokens[unit.token]!)) ? unit.span : 0;
}

const endsSentence = (token: Tok | undefined): boolean =>
  !token ||
  (token.kind === "mark" && CLAUSE_MARKS.has(token.text)) ||
  (token.kind === "word" && JOINTS.has(token.text));

const INTERJECTIONS = new Set(
  "ok okay so hey hi well um uh yes yep yeah oh yay finally today just now also btw fyi update note lol morning".split(
    " ",
  ),
);
const isPassedOver = ({ kind, text, roles }: Tok): boolean =>
  kind === "word" && INTERJECTIONS.has(text) && !roles.heads;

function isStart({ tokens, units }: Units, at: number): boolean {
  if (units[at]?.span === 0) return false;
  let before = (units[at]?.token ?? tokens.length) - 1;
  while (before >= 0 && isPassedOver(tokens[before]!)) before -= 1;
  return endsSentence(tokens[before]);
}

const isEnd = ({ tokens, units }: Units, at: number): boolean =>
  units[at]?.span !== 0 && endsSentence(units[at] ? tokens[units[at]!.token] : undefined);

interface Run {
  line: Units;
  pattern: Pattern;
  /** Where each bracket was reached. */
  from: number;
  to: number;
}

function follow(run: Run, element: number, at: number): boolean {
  const { line, pattern } = run;
  if (element === pattern.from) run.from = at;
  if (element === pattern.to) run.to = at;
  const next = pattern.elements[element];
  if (!next) return true;
  switch (next.what) {
    case "start":
      return isStart(line, at) && follow(run, element + 1, at);
    case "end":
      return isEnd(line, at) && follow(run, element + 1, at);
    case "not":
      return takes(line, at, next) === 0 && follow(run, element + 1, at);
    case "absent":
      return isAbsent(line, at, next) && follow(run, element + 1, at);
    case "gap":
      return followGap(run, element, at);
    case "rest":
      return follow(run, element + 1, restFrom(line, at));
    case "one":
      return followOne(run, element, at);
  }
}

function isAbsent(line: Units, from: number, element: Element): boolean {
  const end = Math.min(line.units.length, from + REST_MAX);
  for (let at = from; at < end; at += 1) if (takes(line, at, element) > 0) return false;
  return true;
}

/** Takes an element as often as it may, and once less where what follows does not fit. */
function followOne(run: Run, element: number, at: number): boolean {
  const next = run.pattern.elements[element]!;
  const places = [at];
  let place = at;
  for (let times = 0; times < next.most; times += 1) {
    const taken = takes(run.line, place, next);
    if (taken === 0) break;
    place += taken;
    places.push(place);
  }
  for (let times = places.length - 1; times >= next.least; times -= 1) {
    if (element === run.pattern.from) run.from = at;
    if (follow(run, element + 1, places[times]!)) return true;
  }
  return false;
}

function followGap(run: Run, element: number, at: number): boolean {
  const { units, tokens } = run.line;
  for (let skipped = 0; skipped <= GAP_MAX; skipped += 1) {
    if (follow(run, element + 1, at + skipped)) return true;
    const unit = units[at + skipped];
    if (!unit) return false;
    const token = tokens[unit.token]!;
    if (token.kind === "mark" && !GAP_MARKS.has(token.text)) return false;
  }
  return false;
}

/** Where a reason ends: at the end of its sentence, or before what is no reason (a number, a verb, a turn). */
function restFrom({ tokens, units }: Units, at: number): number {
  let end = at;
  while (end < units.length && end - at < REST_MAX) {
    const token = tokens[units[end]!.token]!;
    if (token.kind === "mark" && CLAUSE_MARKS.has(token.text)) break;
    const isPlain =
      (token.kind === "word" && (!token.roles.hedge || token.roles.hedge === "offer") && !isVerb(token)) ||
      token.kind === "piece";
    if (!isPlain) return at;
    end += Math.max(1, units[end]!.span);
  }
  return end;
}

/** Where a pattern's part in brackets stands if the pattern begins at unit `at`; null where it does not. Bounded steps. */
export function matchAt(pattern: Pattern, line: Units, at: number): Match | null {
  const run: Run = { line, pattern, from: at, to: at };
  if (!follow(run, 0, at) || run.to <= run.from) return null;
  return { from: line.units[run.from]!.token, to: line.units[run.to - 1]!.token + 1 };
}
