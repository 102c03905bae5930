import type { Day } from "../calendar.ts";
import { addMonths, monthOf } from "../calendar.ts";
import type { Clause, Tok } from "./clause.ts";
import type { QuestionGrammar } from "./grammar.ts";
import { wholeOf } from "./quantities/amounts.ts";
import type { Mention, Question } from "./reading.ts";
import { centsOfToken } from "./slots/money.ts";
import { HINTS } from "./tokens/sign-bits.ts";
import { firstWord } from "./tokens/text.ts";
import { ASKING, BESIDE_PHRASE, ROUGHLY, SHORT_PERIODS, TOPICS } from "./words/asking.ts";
import { MONTHS } from "./words/calendar.ts";
import { BOUNCED } from "./words/deals.ts";

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

/** What was asked, before it becomes a reading. */
interface AskedFields {
  about: Question;
  month?: string;
  year?: string;
  pieces?: Mention[];
  price?: number;
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
interface Unit {
  keys: readonly string[];
  token: Tok;
}

/** Questions are short; what lies beyond this many words is not looked at, so matching stays linear. */
const UNITS_MAX = 40;

/** Whether a clause sounds like a question: it begins like one, or ends with the mark. */
export function isQuestion(tokens: readonly Tok[]): boolean {
  let first: Tok | undefined;
  let next: Tok | undefined;
  for (const token of tokens) {
    if (token.kind === "mark") {
      if (token.text === "?") return true;
    } else if (first) next ??= token;
    else if ((token.hints & HINTS.beforeAsking) === 0) first = token;
  }
  if (first?.kind !== "word" || (first.hints & HINTS.asks) === 0 || isDoing(first, next, tokens))
    return false;
  return !first.roles.heads?.length || /^(?:list|show|how|what|is|are|do|did)/.test(first.text);
}

/** "what a day", "did 50 mins on the buffet" and "we're keeping it" (typed "were") tell, they do not ask. */
function isDoing(first: Tok, next: Tok | undefined, tokens: readonly Tok[]): boolean {
  // "what a day" asks nothing.
  if (first.text === "what") return /^an?(?: |$)/.test(next?.text ?? "");
  if (first.text.startsWith("what a ")) return true;
  // "check bounced!", "check came back"
  if (first.text === "check")
    return BOUNCED.has(next?.text ?? "") || /^(?:came|was|got)\b/.test(next?.text ?? "");
  // "can of wax 11"
  if (first.text === "can" && next?.text === "of") return true;
  // "did the first coat" is no question, "did the hutch sell" one.
  if (first.text === "did")
    return (
      (next !== undefined && ((next.kind !== "word" && next.kind !== "piece") || ROUGHLY.has(next.text))) ||
      namesJob(tokens)
    );
  // "was 19 miles round trip", "was on the desk for 2 hours"
  if (first.text === "was" || first.text === "was on" || first.text === "was at")
    return (
      (next !== undefined && MEASURES.has(next.kind)) ||
      (/^(?:was )?(?:on|at)$/.test(first.text === "was" ? (next?.text ?? "") : first.text) &&
        tokens.some(({ kind }) => kind === "duration" || kind === "clock"))
    );
  return first.text === "were" && next?.kind === "word" && next.roles.heads !== undefined;
}

const MEASURES: ReadonlySet<Tok["kind"]> = new Set(["miles", "duration", "amount"]);

/** How far behind "did" the work may stand that was done. */
const JOB_WITHIN = 6;

/** "did the first coat", "did some sanding on the desk", "did the hardware on it, 25 min" tell; "did the hutch take 2h" asks. */
function namesJob(tokens: readonly Tok[]): boolean {
  const near = tokens.slice(0, JOB_WITHIN);
  if (near.some(({ text, roles }) => /coats?$/.test(text) || (roles.labor && text.endsWith("ing"))))
    return true;
  const isAsked = near.some(({ text }) => /^(?:i|we|you|he|she|they|it|take|need|go|get)$/.test(text));
  return !isAsked && tokens.some(({ kind }) => kind === "duration");
}

function unitsOf(tokens: readonly Tok[]): Unit[] {
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
function best(units: readonly Unit[], cue: boolean): { phrase: Phrase; claimed: Set<Unit> } | null {
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

/** The month or year that a question names, where it is not the running one. */
function timeOf(units: readonly Unit[], today: Day): { month?: string; year?: string } {
  for (let at = 0; at < units.length; at += 1) {
    const unit = units[at]!;
    const word = unit.keys[0]!;
    if (word === "last month") return { month: addMonths(monthOf(today), -1) };
    if (word === "last year") return { year: String(Number(today.slice(0, 4)) - 1) };
    const month = MONTHS[word];
    if (month !== undefined && unit.keys.includes("{month}") && isMonthHere(units, at)) {
      const year = [units[at + 1], units[at + 2]].find((next) => next?.keys.includes("{year}"));
      return { month: monthNamed(month, year ? yearOf(year, today) : null, today) };
    }
  }
  const year = units.find((unit) => unit.keys.includes("{year}") && unit.token.kind === "amount");
  return year ? { year: String(wholeOf(year.token.amount!.exact)) } : {};
}

/** "2025", or "last year" behind a month. */
function yearOf({ keys, token }: Unit, today: Day): number {
  if (token.kind === "amount") return wholeOf(token.amount!.exact)!;
  return Number(today.slice(0, 4)) - (keys[0] === "last year" ? 1 : 0);
}

/** "may" and "march" are months only after "in", "of", "for", or at the end. */
function isMonthHere(units: readonly Unit[], at: number): boolean {
  const word = units[at]!.keys[0]!;
  if (word !== "may" && word !== "march" && word !== "mar") return true;
  return (
    at === units.length - 1 ||
    (at === 0 && /^(?:numbers|totals?|profit|recap|sales)$/.test(units[1]?.keys[0] ?? "")) ||
    /^(?:in|of|for|since|this|last)$/.test(units[at - 1]?.keys[0] ?? "") ||
    units[at + 1]?.keys.includes("{year}") === true
  );
}

function monthNamed(month: number, year: number | null, today: Day): string {
  const text = String(month).padStart(2, "0");
  if (year !== null) return `${year}-${text}`;
  const thisYear = Number(today.slice(0, 4));
  return `${thisYear}-${text}` <= monthOf(today) ? `${thisYear}-${text}` : `${thisYear - 1}-${text}`;
}

/** "how am i doing this year" asks about the year, whichever words of the month it uses. */
function withYear(about: Question, units: readonly Unit[]): { about: Question } {
  const year = about === "month" && isKeyed(units, "{year}") && !isKeyed(units, "{month}");
  return { about: year ? "year" : about };
}

function isKeyed(units: readonly Unit[], key: string): boolean {
  return units.some((unit) => unit.keys.includes(key));
}

/** Every plain word that stands in a question's phrases. */
export function questionWords(): string[] {
  return [...partsOfPhrases().keys()].filter((part) => !/[{…]/.test(part));
}

/** Words that may stand in a question beside its phrase, and words of phrases: a clause of others asks nothing. */
let askingWords: Set<string> | undefined;

/** Tells at the first word that no question has: without a cue, every word of a question belongs to its phrase. */
function cannotAsk(tokens: readonly Tok[]): boolean {
  askingWords ??= new Set([...questionWords(), ...BESIDE_PHRASE, ...Object.keys(MONTHS)]);
  for (const token of tokens) {
    if (token.kind === "mark" || token.kind === "piece") continue;
    if (token.kind === "amount") {
      if (token.to - token.from > 1 || token.amount?.money)
        return !tokens.some((word) => word.text === "worth");
      continue;
    }
    if (token.roles.vagueTime) continue;
    if (token.kind !== "word") return true;
    const first = token.to - token.from === 1 ? token.text : firstWord(token.text);
    if (!askingWords.has(first)) return true;
  }
  return false;
}

/** "listed it" tells what was done to it. */
const isThing = ({ text }: Tok): boolean => text === "it" || text === "them";

/** "what if i sold the desk for 90" asks nothing of the books, nor does "check on the desk". */
function isSupposed(tokens: readonly Tok[]): boolean {
  return tokens.some(({ text }, at) => {
    const next = tokens[at + 1]?.text;
    return (text === "what" && next === "if") || (text === "check" && next === "on" && at === 0);
  });
}

/** "sold chest for", "sold the dresser for $": the price was left off, as of many it would hardly be. */
function isBrokenOff(tokens: readonly Tok[]): boolean {
  const said = tokens.filter(({ text }) => text !== "$");
  const pieces = said.filter(({ kind }) => kind === "piece");
  return said.at(-1)?.text === "for" && pieces.length === 1 && !pieces[0]!.mention!.plural;
}

/** What a question begins or ends with. */
const SOUNDS_ASKED = HINTS.asks | HINTS.questionMark;

/** What a clause asks; null where it asks nothing that is known. */
export function questionOf({ tokens, signs, today }: Clause): AskedFields | null {
  const cue = (signs.hints & SOUNDS_ASKED) !== 0 && isQuestion(tokens);
  if (!cue && (cannotAsk(tokens) || tokens.some(isThing))) return null;
  if (isSupposed(tokens)) return null;
  const units = unitsOf(tokens);
  const found = best(units, cue);
  if (!found || (!cue && isBrokenOff(tokens))) return null;
  const { about } = withYear(found.phrase.about, units);
  const fields: AskedFields = { about };
  const time = timeOf(units, today);
  if (time.month && about !== "year") fields.month = time.month;
  if (time.year) {
    fields.year = time.year;
    if (about === "month") fields.about = "year";
  }
  const pieces = units.filter((unit) => unit.token.kind === "piece").map((unit) => unit.token.mention!);
  if (pieces.length > 0 && (about === "piece" || about === "price" || about === "worth"))
    fields.pieces = pieces;
  if (about !== "worth") return fields;
  const amounts = units.filter((unit) => unit.token.kind === "amount");
  if (amounts.length !== 1) return null;
  const cents = centsOfToken(amounts[0]!.token);
  return "cents" in cents ? { ...fields, price: cents.cents } : null;
}
