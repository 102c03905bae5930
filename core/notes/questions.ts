import type { Day } from "../calendar.ts";
import { addMonths, monthOf } from "../calendar.ts";
import { type Clause, MEASURES, type Tok } from "./clause.ts";
import { best, isKeyed, questionWords, type Unit, unitsOf } from "./phrases.ts";
import { wholeOf } from "./quantities/amounts.ts";
import type { Mention, Question } from "./reading.ts";
import { centsOfToken } from "./slots/money.ts";
import { HINTS } from "./tokens/sign-bits.ts";
import { firstWord } from "./tokens/text.ts";
import { BESIDE_PHRASE, ROUGHLY } from "./words/asking.ts";
import { MONTHS } from "./words/calendar.ts";
import { BOUNCED } from "./words/deals.ts";

/** What was asked, before it becomes a reading. */
interface AskedFields {
  about: Question;
  month?: string;
  year?: string;
  pieces?: Mention[];
  price?: number;
}

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

/** "has she paid the rest", "did he bring the other half": asked of somebody, in the words of what is told of them. */
export function asksOfThem(tokens: readonly Tok[]): boolean {
  const at = tokens.slice(0, ASKS_WITHIN).findIndex(({ text }) => ASKS_OF.test(text));
  return at >= 0 && /^(?:he|she|they)$/.test(tokens[at + 1]?.text ?? "");
}
/** "hey, so did she": how far in it may be asked. */
const ASKS_WITHIN = 4;
const ASKS_OF = /^(?:did|has|have|is|are|was|were|does|do|will|would|can|could)$/;

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
  if (/^did(?: |$)/.test(first.text))
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

/** How far behind "did" the work may stand that was done. */
const JOB_WITHIN = 6;

/** "did the first coat", "did some sanding on the desk", "did the hardware on it, 25 min", "did a dump run, 9 miles" tell; "did the hutch take 2h" asks. */
function namesJob(tokens: readonly Tok[]): boolean {
  const near = tokens.slice(0, JOB_WITHIN);
  if (near.some(({ text, roles }) => /coats?$/.test(text) || (roles.labor && text.endsWith("ing"))))
    return true;
  const isAsked = near.some(({ text }) => /^(?:i|we|you|he|she|they|it|take|need|go|get)$/.test(text));
  return !isAsked && tokens.some(({ kind }) => kind === "duration" || kind === "miles");
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

/** "did the delivery, 12 miles": how far it was, and no question about that. */
const isDriven = ({ kind }: Tok): boolean => kind === "miles";

/** "what if i sold the desk for 90", "what would i owe if it all sold" ask nothing of the books, nor does "check on the desk". */
function isSupposed(tokens: readonly Tok[]): boolean {
  return tokens.some(({ text }, at) => {
    const next = tokens[at + 1]?.text;
    return (
      (next === "if" && (text === "what" || tokens[0]?.text.startsWith("how"))) ||
      (text === "check" && next === "on" && at === 0)
    );
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
  if (!cue && (cannotAsk(tokens) || tokens.some(isThing) || tokens.some(isDriven))) return null;
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
