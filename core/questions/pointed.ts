import { pluralOf } from "../notes/mentions/plural.ts";
import { type Desk, NOTHING_SPOKEN, type Spoken } from "./desk.ts";
import { featuresOf } from "./features.ts";
import { type Mark, plainWords } from "./marks.ts";
import { cutsOf, type Parts } from "./parts.ts";

/*
 * "It", "those", "both": words of a question that stand for what was spoken of right before it. They are put into words
 * ("profit on those" is "profit on #2 and #3"); where nothing was spoken of, or not so many, the word is named and the
 * question never answered as if it had not been said.
 */

/** A word that points out of its question, and the question with what it means; null: nobody knows what that is. */
export interface Pointed {
  word: string;
  question: string | null;
}

const SEVERAL = wordsOf(
  "(?:all|both|each|any|either) of (?:them|those|these)",
  "(?:all )?(?:those|these|the|them) (?:two|2)(?: of (?:them|those|these))?",
  "the last (?:two|2)(?= (?:did|make|cost|bring|sell|go)\\b|$)",
  "(?:they|them|those|these) both",
  "both(?: of (?:those|these|them))?",
  "the (?:pair|set)(?: of (?:those|these|them))?",
  "(?:those|these) ones",
  "(?:all )?(?:those|these)",
  "(?:all )?(?:they|them|em)",
  "theyre",
);

const ONE = wordsOf(
  "(?:that|this|the last|the latest) one",
  "(?:that|this) (?:piece|thing|item)",
  "it",
  "its",
  "that",
  "this",
);

/** Two are meant, no more and no less. */
const TWO = /\b(?:both|pair|two|2|either)\b/;

/** What "it" and "they" are part of where they mean nothing that was spoken of. */
const IDIOMS =
  /\b(?:worth it|it cost (?:me|us) in|is it (?:worth|me|true|ok|okay|too|time|possible|better|bad|good to|likely)|as it stands|how(?:s| is| does) it (?:going|looking|look|go|been)|(?:does|do|would|will) it (?:usually |normally |typically |really |generally )?(?:take|cost to)|(?:would|will) it be|it (?:usually |normally |typically )?takes|(?:to|gonna|we|ill) make it$|(?:call|keep) it(?: up)?$|it that|how long has it been since|(?:all|most|rest|any|some|much|half) of it|(?:break|split|chart|graph|sort|order|sum|add|tally|total|divide|group|broken|sorted) (?:it|that|this|them)|(?:what|which) (?:is|was) (?:that|this)$|all that|it all (?:bring|sell|go|fetch|make|come|add)|like (?:that|this)|after that|before that|how many did they|do they (?:pay|want)|they (?:pay|paid|want|wanted|need|offer|buy|come|came|owe|say|said|are asking)|did they (?:pay|want|offer|buy|come)|owe (?:them|it)|(?:before|until|till|once) (?:it|they|i \w+ (?:it|them)))\b/;

/** Right behind "that" and "this" where they stand for a thing: what it did, or the end. */
const BEHIND_THAT =
  /^(?:cost|costs|go|went|did|do|make|made|sell|sold|bring|brought|run|take|took|earn|net|clear|listed|at|worth|still|for|set|been|gone|with|after|minus|so far|now|yet|total|today|all told|in all|$)/;

/** Right before them: a preposition, a helping verb, or the figure asked of it. */
const BEFORE_THAT =
  /(?:^| )(?:on|for|in|into|of|from|with|at|about|did|does|is|was|has|have|will|would|whats|how much|profit|made|make|get|clear|bought|sold|found|listed)$/;

function wordsOf(...ways: string[]): RegExp {
  return new RegExp(`(?<![\\w#])(?:${ways.join("|")})(?![\\w])`, "g");
}

/** "How much left", "whats left on it": of the loan, where that was spoken of. */
const LEFT =
  /^(?:so |and |ok |then )?(?:(?:how much|whats|what is|what do i have)(?: (?:more|still|is|there|do i (?:still )?(?:have|owe)|i have))* ?)?(?:left|to go|remaining|left to (?:pay|go)|more to go|to pay)(?: (?:on|of) (?:it|that|this))?(?: now)?$/;

/** Whether "left" is asked of nothing that the question names. */
export const isLeftOfWhat = (text: string): boolean => {
  const said = plainWords(text).join(" ");
  return LEFT.test(said) && /\b(?:left|remaining)\b/.test(said) && !/^(?:so )?(?:whats|what)\b/.test(said);
};

/** What is asked of the loan just spoken of, by "it" or by "left"; null where it is none. */
function ofLoan(words: readonly string[], parts: Parts): Pointed | null {
  const said = words.join(" ");
  if (LEFT.test(said)) return { word: "left", question: "loan" };
  const f = featuresOf(parts);
  const at = words.findLastIndex((word) => word === "it" || word === "that");
  if (at < 0 || f.loan || f.piece || !f.has("owe", "payoff", "rate", "interest", "principal", "ends", "paid"))
    return null;
  if (f.has("earn")) return null;
  return {
    word: words[at]!,
    question: [...words.slice(0, at), "the loan", ...words.slice(at + 1)].join(" "),
  };
}

/** What a question points at outside itself; null where it holds all that it speaks of. */
export function pointedIn(text: string, parts: Parts, desk: Desk): Pointed | null {
  const words = plainWords(text);
  const said = words.join(" ");
  const loan = desk.spoken?.loan ? ofLoan(words, parts) : null;
  if (loan) return loan;
  if (
    !/\b(?:it|its|that|this|th[eo]se|they|theyre|them|em|both|the (?:pair|set|last|latest|two))\b/.test(said)
  )
    return null;
  if (!isOpen(said, parts)) return null;
  const spoken = desk.spoken ?? NOTHING_SPOKEN;
  for (const [pattern, several] of [
    [SEVERAL, true],
    [ONE, false],
  ] as const) {
    for (const match of said.matchAll(pattern)) {
      const [word] = match;
      const at = said.slice(0, match.index).split(" ").length - 1;
      const end = at + word.split(" ").length;
      const noun = nounAt(parts, end);
      const named = noun === null ? null : namedBy(noun, spoken, desk, several);
      if (noun !== null && named === null) continue;
      if (noun === null && (isGrouped(parts, at) || !standsForThing(word, said, { at, end }, parts)))
        continue;
      if (noun === null && (isBound(parts, at) || (several && isLed(parts, at)))) continue;
      const numbers = named ?? (several ? severalOf(word, spoken) : spoken.it);
      const meant = numbers.length === 0 ? null : wordsFor(numbers, said, desk);
      // "All together" of nothing spoken of are all there are.
      if (meant === null && /\b(?:together|altogether|combined|all told)\b/.test(said)) return null;
      const to = noun === null ? end : end + noun.words;
      const question = meant && [...words.slice(0, at), meant, ...words.slice(to)].join(" ");
      return { word, question };
    }
  }
  return null;
}

/** "When did the one that went for 178 sell": the piece put in by what it went for, and the question without it. */
export function pricedOne(
  text: string,
): { asked: string; with: (numbers: readonly number[]) => string } | null {
  const said = plainWords(text).join(" ");
  const [one, told] = PRICED_ONE.exec(said) ?? [];
  if (one === undefined || one === said) return null;
  return {
    asked: `which ${told}`,
    with: (numbers) => said.replace(one, numbers.map((number) => `#${number}`).join(" and ")),
  };
}
const PRICED_ONE =
  /\b(?:the |that )?(?:one|piece|thing|item)s? (?:that |which )?((?:(?:i|we) )?(?:sold|went|got|bought|paid|found|listed)(?: it)?(?: for| at)? \$?\d[\d.]*(?: for)?)\b/;

/** Questions of loans, of what would be and of many alike speak of those. */
function isOpen(said: string, parts: Parts): boolean {
  const f = featuresOf(parts);
  if (f.loan || f.has("payoff", "suppose", "owe", "rate", "principal")) return false;
  if (f.has("ends") && !f.has("earn")) return false;
  const isOfMany = parts.marks.some(
    ({ senses, text }, at) =>
      senses.flags.has("generic") &&
      !/^(?:it|that|this|them|those|these|they|one|ones|all of them)\b/.test(text) &&
      !/^(?:that|this|those|these)$/.test(parts.marks[at - 1]?.text ?? ""),
  );
  return !isOfMany && !IDIOMS.test(said);
}

/** "By where it came from": what rows go by. */
function isGrouped({ marks, groups }: Parts, at: number): boolean {
  const within = marks.findIndex((mark) => mark.at <= at && at < mark.at + mark.words);
  return groups.some((group) => group.at === within) && marks.length > 1;
}

/** "Those chairs", "that dresser": the noun behind, as one mark. */
function nounAt({ marks }: Parts, at: number): Mark | null {
  const mark = marks.find((each) => each.at === at);
  const isNoun =
    mark?.senses.thing?.noun !== undefined ||
    mark?.senses.own.some(({ dimension }) => dimension === "kind") === true;
  return isNoun ? mark! : null;
}

/** Of what was spoken of, that of the name; null where there is none of it. */
function namedBy(
  { text, senses }: Mark,
  { it, all }: Spoken,
  { books }: Desk,
  several: boolean,
): readonly number[] | null {
  const name = senses.thing?.noun ?? text;
  const found = (several ? all : it).filter((number) => {
    const piece = books.pieces.get(number);
    return piece !== undefined && (piece.name === name || pluralOf(piece.name) === text);
  });
  return found.length > (several ? 1 : 0) ? found : null;
}

/** Whether "that" and "this" are no word before another one ("that month", "chairs that sold"). */
function standsForThing(
  word: string,
  said: string,
  { at, end }: { at: number; end: number },
  { marks }: Parts,
): boolean {
  const behind = marks.find((mark) => mark.at === end);
  // "These last 3 months", "both loans"
  if (/(?:th[eo]se|both|two|2)$/.test(word) && behind && (behind.period || behind.amount)) return false;
  if (/(?:both|two|2)$/.test(word) && behind && (behind.senses.thing || behind.senses.group)) return false;
  if (word !== "that" && word !== "this") return true;
  if (behind?.period) return false;
  const words = said.split(" ");
  return BEFORE_THAT.test(words.slice(0, at).join(" ")) && BEHIND_THAT.test(words.slice(end).join(" "));
}

/** Whether the question itself names what the word stands for: a piece anywhere, or what was spent on before it. */
function isBound(parts: Parts, at: number): boolean {
  if (cutsOf(parts).length > 0 && parts.besideAt.some((cut) => parts.marks[cut]!.at > at)) return false;
  return parts.items.some(({ mark }) => {
    const { thing, own } = mark.senses;
    const isPiece =
      mark.number !== undefined ||
      thing?.noun !== undefined ||
      own.some(({ dimension }) => dimension === "kind");
    if (isPiece) return true;
    const isSupply = thing?.supply !== undefined || own.some(({ dimension }) => dimension === "what");
    const before = parts.marks.find((each) => each.at + each.words === mark.at)?.text ?? "";
    return isSupply && mark.at < at && !/(?:much|many|what|which|any|the)$/.test(before);
  });
}

/** "Curb freebies, total made off them", "sold on card, money in from those": what was named before by where or how. */
function isLed({ marks, items, said }: Parts, at: number): boolean {
  // "How many are left of those" counts what was spoken of.
  if (/\bhow many\b.* of (?:them|those|these)$/.test(said)) return false;
  const isCut = items.some(
    ({ mark }) =>
      mark.at < at && (mark.senses.thing?.place !== undefined || mark.senses.thing?.method !== undefined),
  );
  const isState = marks.some(
    ({ at: place, senses }) =>
      place < at &&
      senses.cues.some((cue) => cue === "free" || cue === "unsold" || cue === "inProgress" || cue === "held"),
  );
  return isCut || isState;
}

/** The pieces that a word for several means; none where they are not so many. */
function severalOf(word: string, { all, lastTwo }: Spoken): readonly number[] {
  if (/^the last/.test(word)) return lastTwo;
  if (TWO.test(word)) return all.length === 2 ? all : all.length < 2 ? lastTwo : [];
  return all.length > 1 ? all : [];
}

/** Pieces as a question names them: by number; by their one name where they are counted. */
function wordsFor(numbers: readonly number[], said: string, { books }: Desk): string {
  const [name, ...names] = new Set(numbers.map((number) => books.pieces.get(number)?.name));
  if (name !== undefined && names.length === 0 && /\bhow many\b/.test(said) && numbers.length > 1)
    return /\bhow many of\b/.test(said) ? `my ${pluralOf(name)}` : pluralOf(name);
  return numbers.map((number) => `#${number}`).join(" and ");
}
