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

/**
 * "Have i driven 100 miles yet", "did anybody pay 60": the verb stands before who did it, and no note does so; but
 * "did i mention i sold it" only leads to one, and a note may stand behind a mark.
 */
export const asksTurned = (text: string): boolean =>
  /^\W*(?:(?:so|and|hey|ok|okay) )?(?:(?:have|did|do|am|are|was|were) (?:i|we)|did (?:he|she|they|any(?:one|body|thing)|(?:my |our )?(?:mom|dad|wife|husband)))\b(?! (?:mention|tell|say|forget|ever tell)\b)(?!.*[,;:.!-] +\w)/i.test(
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

/** What is asked for: "what marcus bought", "things i sold", "the last thing ellen bought". */
const ASKED_FOR = "what|everything|whatever|who|which|how|the last|things|stuff|anything|whats";
/** What the books have many of, and no note begins with. */
const SUMS =
  "sales|purchases|profits?|revenue|expenses|spending|earnings|takings|deposits|loan payments|price (?:drops|cuts)|(?:held|scrapped|listed|returned|trashed) pieces|cost of (?:goods|sales)|cogs";

/** Messages that ask by how they begin, where no amount stands in them. */
const OPENINGS: readonly RegExp[] = [
  // "Per piece", "average a month"
  /^(?:per|average|avg|median|hourly|margin|roi) \w/i,
  // "Everything mom brought home"
  /^(?:everything|stuff|things|anything|all) (?:that )?\w+ (?:bought|sold|listed|finished|brought|got|picked)\b/i,
  // "Sold any lamps", "kept anything"
  /^(?:sold|bought|listed|finished|started|kept|trashed|scrapped|donated|tossed|given|gave) any(?:thing|one)?\b/i,
  // "Hours on the hutch": no note without a number.
  /^(?:my |our |the |total )*(?:time|hours|hrs|money|miles) (?:spent|put|driven|worked|made|logged|on|for|in)\b/i,
  // "Sales not to ellen", "price drops in october"
  new RegExp(`^(?:(?:list|my|our|the|all|any|total) )*(?:${SUMS})\\b`, "i"),
  // "Bought vs sold"
  /^\w+(?: \w+)? (?:vs|versus) \w/i,
  // "Spent last friday", "sold this week"
  /^(?:spent|made|earned|cleared|drove|worked) (?:this|last|in) \w+$|^(?:sold|bought|listed|finished) (?:this|last) (?:week|month|quarter|year)$/i,
  // "Cheapest thing i bought that made money", "stuff ready to sell"
  /^(?:the |my )?(?:cheapest|priciest|best|worst|biggest|highest|lowest|most|least|longest|oldest|newest|fastest|slowest|first|last|very) \w+ .*\b(?:i|we|that|ever)\b/i,
  /^(?:stuff|things|pieces|anything|everything) (?:that|thats|ready|done|left|still|listed|unsold|i|we)\b/i,
  // "Best one by the hour", "lowest price i sold at"
  /^(?:the |my )?(?:cheapest|priciest|best|worst|biggest|highest|lowest|longest|fastest|slowest) (?!buy\b)\w/i,
  // "Paid towards the van loan so far"
  /\w (?:so far|to date|all told|altogether|in all|ytd)[\s?.!]*$/i,
  // "Oak pieces sold", "value of everything listed", "free stuff i picked up"
  /^(?:the |my |all )?(?:\w+ )?(?:pieces|things|stuff|ones) (?:sold|bought|listed|finished|i|we)\b/i,
  /^(?:value|worth|total|count|number|break ?down) (?:of|by|for)?\b/i,
  // "Sold at a loss", "sold below cost"
  /^sold (?:at a loss|(?:below|under|above) (?:cost|asking|list)|same \w+)\b/i,
];

/** "Pieces bought under 20", "sales to ellen over 100": some of many, and no amount of a note. */
const LIMITED = new RegExp(
  `^(?:(?:list|show|all|any|the|my) )*(?:pieces|things|stuff|items|anything|everything|ones|tips|supplies|materials|tools|bought for|sold for|${SUMS})\\b(?=.* (?:over|under|below|above|less than|more than) \\$?\\d)`,
  "i",
);

/** "Everything mom brought home", "put 1000 on the loan, what do i save": asked for, if there is an answer to it. */
export function opensAsking(text: string): boolean {
  const isInside =
    /\S\s.*\b(?:what|when|how (?:much|many|long|soon)) (?:do|does|would|will|did|is|am|are|can) (?:i|we|it|that|this|they|the)\b/i;
  const said = text.trim();
  if (isInside.test(said) || LIMITED.test(said)) return true;
  return !/\d/.test(said) && (isCommanded(said) || OPENINGS.some((opening) => opening.test(said)));
}

const POLITE = "(?:(?:please|pls|hey|ok|so|and|just) )*";
/** "Give me the sales to ellen": asked for, if there is an answer to it. */
const isCommanded = (said: string): boolean => COMMANDS.test(said);
const COMMANDS = new RegExp(
  `^${POLITE}(?:(?:show|tell|give|remind) (?:me|us)|gimme|pull up|bring up|let me see)\\b(?! to\\b)`,
  "i",
);

/** "List what marcus bought": asked for, whether or not there is an answer. */
export const asksForIt = (text: string): boolean => !/\d/.test(text) && ASKS_FOR_IT.test(text.trim());
const ASKS_FOR_IT = new RegExp(
  `^${POLITE}(?:list|check|find|show|tell|give|remind|pull up|bring up|let me see) (?:me |us |out )?(?:all )?(?:${ASKED_FOR})\\b`,
  "i",
);

/** "Hold #47 for who", "sold #22 for how much": what ends on a question word and tells no amount is no note. */
export function endsAsking(text: string): boolean {
  const isOpen =
    /\s(?:who|whom|how much(?: so far| all told| in all)?|how many|how long|for what|when|where)[\s?.!]*$/i.test(
      text,
    );
  const isTold =
    /\d/.test(text.replace(/#\d+|^\s*\d{1,4}(?=\s)/g, "")) ||
    /\b(?:know\w*|idea|sure|remember|forg\w+)\b/i.test(text);
  return isOpen && !isTold;
}

/** "and what did i get for it": of the question before it. */
export const speaksOfIt = (text: string): boolean => /\b(?:it|them|that|those|these)\b/i.test(text);
