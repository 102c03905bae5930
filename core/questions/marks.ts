import type { Day } from "../calendar.ts";
import { withLapse } from "./lapses.ts";
import { formOf, fullFormOf, ORDINALS, type Speller, slipsBetween, spellerOf, WEEKDAYS } from "./lexicon.ts";
import { periodAt } from "./periods.ts";
import { commonPhrases, type Phrases, type Senses } from "./phrases.ts";
import { plainerBy, type Way, wayOf } from "./plainer.ts";
import type { Period } from "./query.ts";
import { MONTH_NAMES, SMALL_NUMBERS, UNITS } from "./words/periods.ts";
import { TEXTED } from "./words/texted.ts";
import { WAYS_OF_ASKING } from "./words/ways-of-asking.ts";

/** Words of a question with one meaning each: a phrase, a period, a number, or a word that nobody knows. */
export interface Mark {
  /** The place of its first word. */
  at: number;
  words: number;
  /** As typed, and as meant. */
  typed: string;
  text: string;
  /** The word was taken for another one. */
  corrected?: true;
  senses: Senses;
  period?: Period;
  /** A bare number, in hundredths; `money` where a sign or word says so. */
  amount?: { cents: number; money: boolean };
  /** A piece's own number. */
  number?: number;
  unknown?: true;
}

/** What reading may know of the ledger: its own words, and the speller over them. */
export interface Vocabulary {
  own: Phrases;
  speller: Speller;
}

/** "aug-oct" */
const MONTH_TO_MONTH =
  /\b((?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*)\s?[-–]\s?((?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*)\b/g;

let plainer: readonly Way[] | undefined;

/** Made ready at the first question. */
function plainerWays(): readonly Way[] {
  plainer ??= WAYS_OF_ASKING.map(wayOf);
  return plainer;
}

const NOTHING: Senses = { cues: [], flags: new Set(), own: [] };

let commonSpeller: Speller | undefined;

/** The speller over the words of questions and of the trade, built once: it is large. */
function spellerOfCommon(): Speller {
  commonSpeller ??= spellerOf(commonPhrases().words, [
    ...Object.keys(MONTH_NAMES),
    ...Object.keys(WEEKDAYS),
    ..."yesterday today quarter summer winter spring autumn".split(" "),
  ]);
  return commonSpeller;
}

/** What reading knows of a ledger. */
export function vocabularyOf(own: Phrases): Vocabulary {
  return { own, speller: spellerOf(own.words) };
}

let last: { text: string; words: readonly string[] } | null = null;

/**
 * A question in plain words: lower case, apostrophes and end marks gone, numbers whole. Several look at the same question
 * one after another: it is put into them once.
 */
export function plainWords(text: string): readonly string[] {
  if (last?.text !== text) last = { text, words: wordsInPlain(text) };
  return last.words;
}

function wordsInPlain(text: string): readonly string[] {
  const plain = text
    .toLowerCase()
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[’'`´]/g, "");
  const texted = plain.replace(/[a-z0-9]+/g, (word) => TEXTED[word] ?? word).replace(/ \+ /g, " and ");
  const spelled = plainerWays().reduce((said, way) => plainerBy(way, said), texted.trim());
  const lower = spelled
    .replace(/\bcompare (?!to\b|with\b).*/, (all) =>
      all.replace(/ (?:to|with) (?!sell\b|finish\b|list\b)/g, " versus "),
    )
    .replace(
      /\bthis (month|week|quarter|year)\b(.*\b(?:than|to|vs|versus|against|with)) last(?=$|[,.?!]| on | in | for )/,
      "this $1$2 last $1",
    )
    .replace(/\bdifference in (.{1,40}?) between\b/g, "$1 difference between")
    .replace(/\b(today|yesterday)s\b/g, "$1")
    .replace(MONTH_TO_MONTH, "$1 to $2")
    .replace(/\b(?:wut|whut|wat|wht)\b/g, "what")
    .replace(/\bw\/o\b/g, " without ")
    .replace(/\bw\/|\bw\b(?=$|[ ?.!])/g, " with ")
    .replace(/\b(this|last) (year|month|week|quarter)['’]?s\b(?= \w)/g, "$1 $2")
    .replace(/\b(?:no\.|number|num|nr|piece) ?#? ?(\d{1,5})s?\b(?! ?(?:pieces|chairs|notes))/g, " #$1 ")
    .replace(/\$\$+(?!\d)/g, " money ")
    .replace(/#\s+(\d)/g, "#$1")
    .replace(/(#\d+)s\b/g, "$1")
    .replace(/(\d),(?=\d{3}\b)/g, "$1")
    .replace(/(\d)\s?(?:%|(?:percent|pct)\b)/g, "$1%")
    .replace(/\s[-–—]\s/g, " to ")
    .replace(/([a-z])[-–—](?=[a-z])/g, "$1 ")
    .replace(/([a-z])\/(?=[a-z])/g, "$1 ")
    .replace(/([a-z])(?=#\d)/g, "$1 ")
    .replace(/(\d)\/(?=mo|month|hr|hour|wk|week)/g, "$1 per ");
  return withLapse(lower.trim().replace(/ +/g, " "))
    .split(/[^\p{L}\p{N}#$.%/<>&-]+/u)
    .map((word) => word.replace(/^[.\-/]+(?!\d)|[.\-/]+$/g, ""))
    .filter((word) => word !== "" && word !== "$" && word !== "#");
}

const AMOUNT = /^(\$?)(\d{1,9})(?:\.(\d{1,2}))?(k?)(\$?)$/;
const MONEY_AFTER = new Set(["dollars", "bucks", "usd", "dollar", "buck"]);

function amountMark(words: readonly string[], at: number): Pick<Mark, "amount" | "words"> | null {
  const word = words[at]!;
  const percent = /^(\d{1,3})(?:\.(\d{1,2}))?%$/.exec(word);
  if (percent) return { amount: { cents: hundredths(percent[1]!, percent[2]), money: false }, words: 1 };
  const match = AMOUNT.exec(word);
  if (!match) {
    const small = SMALL_NUMBERS[word];
    const isBound = /^(?:than|over|least|under)$/.test(words[at - 1] ?? "");
    return small !== undefined && (small > 1 || isBound)
      ? { amount: { cents: small * 100, money: false }, words: 1 }
      : null;
  }
  const [, before, whole, fraction, thousand, behind] = match as unknown as string[];
  const cents = hundredths(whole!, fraction) * (thousand === "k" ? 1000 : 1);
  const spelled = MONEY_AFTER.has(words[at + 1] ?? "");
  const money = before !== "" || behind !== "" || thousand === "k" || fraction !== undefined || spelled;
  return { amount: { cents, money }, words: spelled ? 2 : 1 };
}

function hundredths(whole: string, fraction: string | undefined): number {
  return Number(whole) * 100 + Number((fraction ?? "").padEnd(2, "0") || "0");
}

/** Senses of a phrase that the trade and the ledger both know. */
function merged(a: Senses, b: Senses): Senses {
  return {
    ...a,
    ...b,
    cues: [...a.cues, ...b.cues],
    flags: new Set([...a.flags, ...b.flags]),
    own: [...a.own, ...b.own],
  };
}

function phraseMark(
  words: readonly string[],
  at: number,
  { own }: Vocabulary,
): { senses: Senses; words: number } | null {
  const known = commonPhrases().longest(words, at);
  const owned = own.longest(words, at);
  if (!known || !owned) return known ?? owned;
  if (known.words === owned.words) return { senses: merged(known.senses, owned.senses), words: known.words };
  return known.words > owned.words ? known : owned;
}

/** A word nobody knows as the known one that it is a slip of; itself where there is none. */
function meantWord(word: string, { speller, own }: Vocabulary): string {
  const isKnown =
    own.words.has(word) ||
    commonPhrases().words.has(word) ||
    word in SMALL_NUMBERS ||
    word in ORDINALS ||
    word in UNITS;
  // "tuesdays" are no one tuesday.
  if (/\d/.test(word) || isKnown || word.replace(/s$/, "") in WEEKDAYS) return word;
  const form = formOf(word);
  if (form !== undefined) return form;
  const common = spellerOfCommon().meant(word);
  if (common !== null) return isMereFiller(common) && slipsBetween(word, common) > SLIGHT ? word : common;
  if (spellerOfCommon().isSettled(word)) return word;
  const full = fullFormOf(word);
  return speller.meant(word) ?? (full !== undefined && commonPhrases().words.has(full) ? full : word);
}

/** Two letters swapped or a vowel lost: beyond that a word is not taken for one that means nothing. */
const SLIGHT = 9;

/** A word that would only be passed over: taking an unknown one for it could widen the question. */
function isMereFiller(word: string): boolean {
  const found = commonPhrases().longest([word], 0);
  if (!found) return false;
  const { flags, cues, link } = found.senses;
  return flags.has("filler") && cues.length === 0 && link === undefined;
}

/** Questions are short: what lies beyond this many words is refused unread. */
export const WORDS_MAX = 60;

/** The marks of a question, in order. Every word is in one of them. */
export function marksOf(text: string, vocabulary: Vocabulary, today: Day): Mark[] {
  const typed = plainWords(text).slice(0, WORDS_MAX);
  const words = typed.map((word) => meantWord(word, vocabulary));
  const marks: Mark[] = [];
  for (let at = 0; at < words.length; ) {
    const mark = markAt(words, at, vocabulary, today);
    const from = at;
    const said = typed.slice(from, from + mark.words).join(" ");
    const meant = words.slice(from, from + mark.words).join(" ");
    marks.push({
      ...mark,
      at: from,
      typed: said,
      text: meant,
      ...(said === meant ? {} : { corrected: true as const }),
    });
    at += mark.words;
  }
  return marks;
}

function markAt(
  words: readonly string[],
  at: number,
  vocabulary: Vocabulary,
  today: Day,
): Omit<Mark, "at" | "typed" | "text"> {
  const number = /^#(\d{1,6})$/.exec(words[at]!);
  if (number) return { words: 1, senses: NOTHING, number: Number(number[1]) };
  const period = periodAt(words, at, today);
  const found = isOnBench(words, at, vocabulary)
    ? phraseMark(words.slice(0, at + 1), at, vocabulary)
    : phraseMark(words, at, vocabulary);
  const phrase = beforePeriod(words, at, found, { vocabulary, today });
  if (period && period.words >= (phrase?.words ?? 0) && !isAmountYear(words, at))
    return { words: period.words, senses: NOTHING, period: period.period };
  const amount = amountMark(words, at);
  if (amount && amount.words >= (phrase?.words ?? 0)) return { ...amount, senses: NOTHING };
  if (phrase) return { words: phrase.words, senses: phrase.senses };
  return { words: 1, senses: NOTHING, unknown: true };
}

/** "Profit on the bench", where there is one: that piece, and none that is worked on. */
function isOnBench(words: readonly string[], at: number, { own }: Vocabulary): boolean {
  if (words[at] !== "on" || words[at + 1] !== "the" || words[at + 2] !== "bench" || !own.words.has("bench"))
    return false;
  return (
    at > 0 &&
    !/^(?:whats|is|are|pieces|stuff|things|ones|anything|everything|now|currently|still|sitting|have|got)$/.test(
      words[at - 1]!,
    )
  );
}

const LED = /^(?:in|on|for|from|to|at|since)$/;

/** "Took in cash in january": the last word of a phrase that leads to a period belongs to the period. */
function beforePeriod(
  words: readonly string[],
  at: number,
  phrase: { senses: Senses; words: number } | null,
  { vocabulary, today }: { vocabulary: Vocabulary; today: Day },
): { senses: Senses; words: number } | null {
  // "Hows the year going"
  const last = at + (phrase?.words ?? 0) - 1;
  if (phrase && phrase.words > 1 && /^(?:the|my|our|all)$/.test(words[last]!) && periodAt(words, last, today))
    return phraseMark(words.slice(0, last), at, vocabulary) ?? phrase;
  // "Tip total up to august"
  if (
    phrase &&
    phrase.words > 2 &&
    words[last - 1] === "up" &&
    words[last] === "to" &&
    periodAt(words, last - 1, today)
  )
    return phraseMark(words.slice(0, last - 1), at, vocabulary) ?? phrase;
  // "Sold at least 20", "went for a loss"
  const behind = words.slice(last + 1, last + 3).join(" ");
  if (
    phrase &&
    phrase.words > 1 &&
    /^(?:at (?:least|most)|(?:at|for) a loss)\b/.test(`${words[last]} ${behind}`)
  )
    return phraseMark(words.slice(0, last), at, vocabulary) ?? phrase;
  // "Took in june" came in.
  if (
    !phrase ||
    phrase.words < 2 ||
    phrase.senses.cues.includes("revenue") ||
    phrase.senses.flags.has("compare") ||
    !LED.test(words[at + phrase.words - 1]!)
  )
    return phrase;
  if (!periodAt(words, at + phrase.words, today)) return phrase;
  const shorter = phraseMark(words.slice(0, at + phrase.words - 1), at, vocabulary);
  return shorter?.words === phrase.words - 1 ? shorter : phrase;
}

/** "over 2000": an amount, no year. */
function isAmountYear(words: readonly string[], at: number): boolean {
  if (!/^20\d\d$/.test(words[at]!)) return false;
  return (
    /^(?:over|under|than|above|below|least|most)$/.test(words[at - 1] ?? "") ||
    MONEY_AFTER.has(words[at + 1] ?? "")
  );
}
