import type { Reading } from "../notes/reading.ts";

/*
 * How a question sounds before any of it is read: its mark, its opening, its end.
 */

/** Words that only a question begins with, and those that ask for something to be shown. */
const OPENERS = new Set(
  (
    "how hows howd howmuch howmany what whats whatre whatd when whens where wheres which who whos whose whom why is are was were am do does did has have any " +
    "show list should can could would will total average median tell gimme"
  ).split(" "),
);
const BEFORE = new Set("hey hi so ok okay and um uh well please pls just also yo oh hmm now".split(" "));

const firstWord = (text: string): string | undefined =>
  text
    .trim()
    .toLowerCase()
    .replace(/[’']/g, "")
    .split(/[^\p{L}\p{N}]+/u)
    .find((word) => word !== "" && !BEFORE.has(word));

/** Whether a message opens with a word that only asks: "how many", "which of". */
export const opensWithAsking = (text: string): boolean =>
  /^(?:how|howmany|howmuch|hows|whats?|which|when|where|wheres|who|whos|whose|why)$/.test(
    firstWord(text) ?? "",
  );

/** "When does sam pick up", "who is coming": only a question turns its words so. */
export const asksPlainly = (text: string): boolean =>
  /^\W*(?:(?:so|and|hey|ok|okay) )?(?:(?:when|where|why|how|who|whose|what|which) (?:do|does|did|is|are|will|would|should|can)|what (?:time|day)|(?:has|does|will) (?!been|to|not|now|just|already|also|need|got|gone|sold)\w+) /i.test(
    text,
  );

/** Whether a message sounds like a question: it ends with the mark or begins like one. */
export function soundsAsked(text: string): boolean {
  if (/\?\s*$/.test(text)) return true;
  const first = firstWord(text);
  return first !== undefined && OPENERS.has(first);
}

/** "fees in 2026", "gas 2026": the one number is a year, and no amount. */
export function isYearAlone(text: string): boolean {
  return /(?:^|\s)20[12]\d(?:$|[\s?!.,])/.test(text) && text.replace(/\b20[12]\d\b/, "").search(/[\d$]/) < 0;
}

/** Kinds whose one amount a bare year is not: a piece may go for two thousand. */
const OF_YEARS: ReadonlySet<Reading["kind"]> = new Set(["spend", "income", "drive", "work"]);

/** "Gas 2026" asks for that year, whether or not there was any; "paid 2024 to the loan" tells an amount. */
export function asksYear(text: string, readings: readonly Reading[]): boolean {
  const isLed = /\b(?:in|of|during) 20[12]\d\b/i.test(text);
  const isNamed = /\s20[12]\d[\s?!.]*$/.test(text) && !TELLS.test(text);
  return isYearAlone(text) && (isLed || isNamed) && readings.every(({ kind }) => OF_YEARS.has(kind));
}

const TELLS = /^(?:i |we |just )*(?:paid|spent|drove|worked|got|sent|earned|put|received|made|threw)\b/i;

/** "Everything mom brought home", "put 1000 on the loan, what do i save": asked for, if there is an answer to it. */
export function opensAsking(text: string): boolean {
  const isInside =
    /\S\s.*\b(?:what|when|how (?:much|many|long|soon)) (?:do|does|would|will|did|is|am|are|can) (?:i|we|it|that|this|they|the)\b/i;
  if (isInside.test(text)) return true;
  const isDone =
    /^(?:everything|stuff|things|anything|all) (?:that )?\w+ (?:bought|sold|listed|finished|brought|got|picked)\b/i;
  // "Sold any lamps", "kept anything"
  const isAny =
    /^(?:sold|bought|listed|finished|started|kept|trashed|scrapped|donated|tossed|given|gave) any(?:thing|one)?\b/i;
  // "Hours on the hutch": no note without a number.
  const isCounted =
    /^(?:my |our |the |total )*(?:time|hours|hrs|money|miles) (?:spent|put|driven|worked|made|logged|on|for|in)\b/i;
  const isRate = /^(?:per|average|avg|median) \w/i;
  return !/\d/.test(text) && [isRate, isDone, isAny, isCounted].some((opening) => opening.test(text.trim()));
}

/** "Hold #47 for who", "sold #22 for how much": what ends on a question word and tells no amount is no note. */
export function endsAsking(text: string): boolean {
  const isOpen =
    /\s(?:who|whom|how much(?: so far| all told| in all)?|how many|for what|when|where)[\s?.!]*$/i.test(text);
  const isTold =
    /\d/.test(text.replace(/#\d+|^\s*\d{1,4}(?=\s)/g, "")) ||
    /\b(?:know\w*|idea|sure|remember|forg\w+)\b/i.test(text);
  return isOpen && !isTold;
}

/** "and what did i get for it": of the question before it. */
export const speaksOfIt = (text: string): boolean => /\b(?:it|them|that|those|these)\b/i.test(text);
