import type { Tok } from "./clause.ts";
import type { QuestionGrammar } from "./grammar.ts";
import { wholeOf } from "./quantities/amounts.ts";
import type { Question } from "./reading.ts";
import { ASKING, BESIDE_PHRASE, SHORT_PERIODS, TOPICS } from "./words/asking.ts";
import { MONTHS } from "./words/calendar.ts";

/** What the reader needs of an answer: what it is about and how it is asked. */
interface Asked {
  readonly about?: Question | undefined;
  readonly asks: QuestionGrammar;
}

let answers: readonly Asked[] = [];

/** Hands in the questions that are answered, once, before anything is read. */
export function handInAnswers(list: readonly Asked[]): void {
  answers = list;
}

interface Phrase {
  about: Question;
  parts: readonly string[];
  weight: number;
  /** Beside any topic at hand a general phrase gives way to the one that names it. */
  weightBesideTopic: number;
  whole: boolean;
  /** The bits of its parts: units that lack one of them do not hold the phrase. */
  sieve: number;
}

const GENERAL: ReadonlySet<Question> = new Set(["month", "year", "recap"]);

/** What phrases are made of: a bit of 32, shared with others, and the phrases that it opens, the fullest first. */
interface Part {
  bit: number;
  opens: Phrase[];
}

/** The parts of all phrases, built once. */
let index: Map<string, Part> | undefined;

function phraseOf(into: Map<string, Part>, about: Question, text: string, whole: boolean): Phrase {
  const parts = text.split(" ");
  const weight = parts.reduce(
    (sum, part) => sum + (part === "…" ? 0 : part.startsWith("{") ? 0.5 : 1),
    whole ? 0.25 : 0,
  );
  const weightBesideTopic = GENERAL.has(about) ? weight / 10 : weight;
  const sieve = parts.reduce((bits, part) => (part === "…" ? bits : bits | partIn(into, part).bit), 0);
  return { about, parts, weight, weightBesideTopic, whole, sieve };
}

function partIn(parts: Map<string, Part>, text: string): Part {
  const known = parts.get(text);
  if (known) return known;
  const part: Part = { bit: 1 << (parts.size & 31), opens: [] };
  parts.set(text, part);
  return part;
}

function partsOfPhrases(): ReadonlyMap<string, Part> {
  if (index) return index;
  index = new Map();
  for (const { about, asks } of answers) {
    if (!about) continue;
    for (const text of asks.phrases) addPhrase(index, phraseOf(index, about, text, false));
    for (const text of asks.whole ?? []) addPhrase(index, phraseOf(index, about, text, true));
  }
  // The fullest phrase first: once it stands, the lesser ones are passed over unread.
  for (const { opens } of index.values()) opens.sort((a, b) => b.weight - a.weight);
  return index;
}

const addPhrase = (into: Map<string, Part>, phrase: Phrase): void =>
  void partIn(into, phrase.parts[0]!).opens.push(phrase);

/** One word or typed token of the question, as phrases see it. */
export interface Unit {
  keys: readonly string[];
  token: Tok;
}

/** Questions are short; what lies beyond this many words is not looked at, so matching stays linear. */
const UNITS_MAX = 40;

/** The words of a question as phrases see them. */
export function unitsOf(tokens: readonly Tok[]): Unit[] {
  const units: Unit[] = [];
  for (const token of tokens) {
    if (units.length >= UNITS_MAX) break;
    if (token.kind === "mark") continue;
    if (token.kind === "piece") units.push({ keys: ["{piece}"], token });
    else if (token.kind === "amount")
      units.push({ keys: isYear(token) ? ["{money}", "{year}"] : ["{money}"], token });
    else if (!token.text.includes(" ")) addWord(units, token.text, token);
    else for (const word of token.text.split(" ")) addWord(units, word, token);
  }
  return units;
}

function isYear(token: Tok): boolean {
  const whole = wholeOf(token.amount?.exact ?? null);
  return whole !== null && whole >= 1990 && whole <= 2099 && !token.amount?.money;
}

/** Adds a word; "last month" and "this year" are periods whichever way they were cut into tokens. */
function addWord(units: Unit[], said: string, token: Tok): void {
  const word = SHORT_PERIODS[said] ?? said;
  const previous = units.at(-1);
  const which = previous?.keys[0];
  if (previous && (word === "month" || word === "year") && (which === "this" || which === "last"))
    previous.keys = [`${which} ${word}`, `{${word}}`];
  else units.push({ keys: MONTHS[word] !== undefined ? [word, "{month}"] : [word], token });
}

/** Whether a phrase stands in the units from `start` on, and which it claims. Gaps are as short as they can be. */
function matched(phrase: Phrase, units: readonly Unit[], start: number, claimed?: Set<Unit>): boolean {
  let at = start;
  let gap = false;
  for (const part of phrase.parts) {
    if (part === "…") {
      gap = true;
      continue;
    }
    if (gap) while (at < units.length && !units[at]!.keys.includes(part)) at += 1;
    const unit = units[at];
    if (!unit?.keys.includes(part)) return false;
    claimed?.add(unit);
    at += 1;
    gap = false;
  }
  return true;
}

/** The fullest phrase that the units hold, with those that it claims. */
export function best(units: readonly Unit[], cue: boolean): { phrase: Phrase; claimed: Set<Unit> } | null {
  let found: { phrase: Phrase; claimed: Set<Unit> } | null = null;
  let most = 0;
  const parts = partsOfPhrases();
  const known = units.map(({ keys }) => keys.map((key) => parts.get(key)));
  let sieve = 0;
  for (const ofUnit of known) for (const part of ofUnit) sieve |= part?.bit ?? 0;
  const topics = units.some((unit) => TOPICS.has(unit.keys[0]!));
  for (let start = 0; start < units.length; start += 1) {
    for (const part of known[start]!) {
      for (const phrase of part?.opens ?? NO_PHRASES) {
        const weight = topics ? phrase.weightBesideTopic : phrase.weight;
        if (weight <= most || (phrase.sieve & ~sieve) !== 0 || !matched(phrase, units, start)) continue;
        const isPieceAlone = phrase.whole && phrase.parts.length === 1 && phrase.parts[0] === "{piece}";
        if (isPieceAlone && !cue) continue;
        const claimed = new Set<Unit>();
        matched(phrase, units, start, claimed);
        if ((phrase.whole || !cue) && !units.every((other) => claimed.has(other) || isLoose(other, cue)))
          continue;
        found = { phrase, claimed };
        most = weight;
      }
    }
  }
  return found;
}

const NO_PHRASES: readonly Phrase[] = [];

function isLoose({ keys }: Unit, cue: boolean): boolean {
  const word = keys[0]!;
  return (
    BESIDE_PHRASE.has(word) ||
    (cue && ASKING.has(word)) ||
    keys.includes("{month}") ||
    keys.includes("{year}")
  );
}

/** Whether one of them is said so. */
export function isKeyed(units: readonly Unit[], key: string): boolean {
  return units.some((unit) => unit.keys.includes(key));
}

/** Every plain word that stands in a question's phrases. */
export function questionWords(): string[] {
  return [...partsOfPhrases().keys()].filter((part) => !/[{…]/.test(part));
}
