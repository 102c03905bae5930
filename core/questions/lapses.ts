import { type Day, daysBetween } from "../calendar.ts";
import type { Desk } from "./desk.ts";
import type { Lapse, LapseEnd, Query } from "./query.ts";
import { goneBy, ofPieces } from "./subjects.ts";

/*
 * "Days from buying to listing", "how long after finishing did the desk sell": the days between two things done to a
 * piece, in whatever words. They become one word of a question, "bought-to-listed".
 */

/** What is done to a piece in the order of its life, in the words that tell it. */
const ENDS: readonly (readonly [LapseEnd, string])[] = [
  [
    "bought",
    "buy(?:ing)?|bought|purchas(?:e|ing|ed)|pick(?:ing|ed)?[ -]?up|getting|got (?:it|them)|finding|found|acquir(?:ing|ed)|bringing (?:it|them) home",
  ],
  ["started", "start(?:ing|ed)?|beg(?:an|in|inning)"],
  ["finished", "finish(?:ing|ed)?|complet(?:ing|ed|ion)|done|getting (?:it|them) done"],
  [
    "listed",
    "list(?:ing|ed)?|post(?:ing|ed)?|put(?:ting)? (?:(?:it|them|things|pieces) )?up(?: for sale)?|(?:go(?:es|ing)?|went) up(?: for sale)?",
  ],
  ["sold", "s(?:ale|old|ells?|elling)(?: date)?"],
];

const ORDER = ENDS.map(([end]) => end);
const END = `\\b(?:${ENDS.map(([, words]) => words).join("|")})\\b`;
/** What stands around the words of a deed and says nothing: "when i first", "the day it was". */
const SMALL =
  "(?:when|the|a|an|my|our|day|days|date|moment|time|i|we|ive|id|it|its|they|them|one|was|is|were|am|get|gets|got|being|actually|finally|first|that|until|of|been|having|them) ";
/** The piece that it is asked of, in few words. */
const WHOSE = "((?:(?!and |to |till |until |til |before |did |do |does )[#\\w]+ ){0,4}?)";
const TILL = "(?:to|and|&|till|til|until|before|through)";
const AFTER = "(?:after|once|from when|as soon as|from the time|from)";
const TIME =
  /\b(?:how (?:long|many days|quick(?:ly)?|fast|soon)|days?|time|weeks?|wait|gap|lag|longest|shortest|fastest|slowest|quickest|took|takes?)\b/;

const FROM_TO = new RegExp(
  `(?:\\b(?:from|between) |(?<=\\b(?:days|time|weeks|took|takes?|take) )(?=(?:start|buy|list|finish|purchase|pickup)(?:ing|ed)? to ))(?:${SMALL}){0,5}(${END}) ${WHOSE}${TILL} (?:${SMALL}){0,5}(${END})(?! (?:price|prices))(?:(?: on| with| working on)? (?:it|them|one)\\b)?`,
);
const AFTER_THAT = new RegExp(
  `\\b${AFTER} (?:${SMALL}){0,5}(${END}) ${WHOSE}(?:(?:until|till|til|before|and|do|did|does|was|were|to) )?(?:${SMALL}){0,4}(${END})(?:(?: on| with| working on)? (?:it|them|one)\\b)?`,
);
const THAT_AFTER = new RegExp(
  `(?:(?:does |do |did )?(?:it )?(?:usually |normally |typically )?(?:takes?|took) (?:me |us )?(?:to )?|\\b(?:for|does|do|did|i|we|it|to|till|til|until|get|is|was) )(?:${SMALL}){0,3}(${END}) ${WHOSE}${AFTER} (?:${SMALL}){0,5}(${END})(?: (?:it|them|one|a piece)\\b)?`,
);
const SAT_BEFORE = new RegExp(
  `\\b(?:sit|sits|sat|sitting|wait|waits|waited|have|had|lie|lay) ${WHOSE}(?:around )?(?:(done|finished) )?(?:before|until|till|til) (?:${SMALL}){0,5}(${END})(?:(?: on| with| working on)? (?:it|them|one)\\b)?`,
);

function endOf(said: string): LapseEnd {
  return ENDS.find(([, words]) => new RegExp(`^(?:${words})$`).test(said))![0];
}

/** Two deeds in their order as one word; nothing where they are one or stand the other way round. */
function lapseWord(one: string, other: string): string | null {
  const [from, to] = [endOf(one), endOf(other)];
  return ORDER.indexOf(from) < ORDER.indexOf(to) ? `${from}-to-${to}` : null;
}

/** A question with the two deeds between which days are asked for as one word. */
export function withLapse(said: string): string {
  if (!TIME.test(said) || / more than | over | within /.test(said)) return said;
  const fromTo = FROM_TO.exec(said);
  if (fromTo) return put(said, fromTo, lapseWord(fromTo[1]!, fromTo[3]!), fromTo[2]!);
  const after = AFTER_THAT.exec(said);
  const then = after && lapseWord(after[1]!, after[3]!);
  if (after && then) return put(said, after, then, after[2]!);
  const before = THAT_AFTER.exec(said);
  const first = before && lapseWord(before[3]!, before[1]!);
  if (before && first) return put(said, before, first, before[2]!);
  const sat = /^how |^average |^days |\b(?:longest|shortest)\b/.test(said) ? SAT_BEFORE.exec(said) : null;
  // "Before it sold" is how long it took to sell, or was listed.
  if (sat && (sat[2] || endOf(sat[3]!) !== "sold"))
    return put(said, sat, lapseWord(sat[2] ? "finished" : "bought", sat[3]!), sat[1]!);
  return said;
}

function put(said: string, match: RegExpExecArray, word: string | null, whose: string): string {
  if (word === null) return said;
  const behind = said.slice(match.index + match[0].length);
  const lead = said
    .slice(0, match.index)
    .replace(
      /\b(?:the )?(?:gap|wait|lag|interval|delay|stretch|(?:many )?days) (?:passed |went by |there (?:was|is) )?$/,
      (all) => (all.startsWith("many") ? "many days " : ""),
    );
  return `${lead}${word} ${whose}${behind}`.replace(/ +/g, " ").trim();
}

/** The two deeds of such a word. */
export function lapseOf(word: string): Lapse {
  const [from, to] = word.split("-to-") as [LapseEnd, LapseEnd];
  return { from, to };
}

/** What an answer calls them. */
export function lapseTitle(lapse: Lapse): string {
  return lapse.from === "listed" ? "Days listed" : `Days ${lapseWords(lapse)}`;
}

/** "from buying to listing": how a button asks for it. */
export function lapseWords({ from, to }: Lapse): string {
  return `from ${NOUNS[from]} to ${NOUNS[to]}`;
}
const NOUNS: Readonly<Record<LapseEnd, string>> = {
  bought: "buying",
  started: "starting",
  finished: "finishing",
  listed: "listing",
  sold: "sale",
};

/** The days between them of each piece that has both, on the day of the later. */
export const lapseSubjects = (desk: Desk, query: Query) => {
  const { from, to } = query.lapse ?? { from: "bought", to: "sold" };
  return ofPieces((piece) => {
    const dayOf = (end: LapseEnd): Day | null =>
      end === "listed" ? desk.index.of(piece.number).listedSince : piece[end];
    const [first, last] = [dayOf(from), dayOf(to)];
    const days = first === null || last === null ? null : daysBetween(first, last);
    return { day: last, units: days !== null && days >= 0 ? days : null, fact: goneBy(piece, desk) };
  })(desk, query);
};
