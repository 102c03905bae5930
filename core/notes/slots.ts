import { addDays } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { centsOfExact, wholeOf } from "./amounts.ts";
import type { Clause, Tok } from "./clause.ts";
import { asMeant, asSaid, claim, claimWords, firstFree, freeTokens, isMark } from "./clause.ts";
import { comingDay } from "./days.ts";
import type { Slot, Trouble } from "./grammar.ts";
import { unlistedMention } from "./mentions.ts";
import type { Category, Mention } from "./reading.ts";
import { HINTS } from "./signs.ts";
import { LABOR_NAMES } from "./words/labors.ts";
import { EACH_WORDS } from "./words/numbers.ts";
import { CONTAINERS } from "./words/supplies.ts";

/** What a slot gives: its value, a trouble that makes the clause unclear, or nothing. */
export type Filled =
  | { value: unknown; each?: true; follows?: true; several?: true; pending?: true }
  | { trouble: Trouble }
  | null;

type Fill = (clause: Clause) => Filled;

const trouble = (kind: Trouble["kind"]): { trouble: Trouble } => ({ trouble: { kind } });

/** Whole cents of an amount token, or what is wrong with it. */
export function centsOfToken(token: Tok): { cents: Cents } | { trouble: Trouble } {
  const amount = token.amount!;
  if (amount.flaw) {
    const kinds = {
      decimals: "decimals",
      negative: "negative",
      large: "large",
      range: "range",
      vague: "vagueAmount",
    } as const;
    return trouble(kinds[amount.flaw]);
  }
  const found = centsOfExact(amount.exact!);
  return "flaw" in found ? trouble(found.flaw === "large" ? "large" : "decimals") : found;
}

/** How many pieces the clause names in all; null where that is not said. */
export function pieceCount(pieces: readonly Mention[]): number | null {
  let sum = 0;
  for (const { count } of pieces) {
    if (count === undefined) return null;
    sum += count;
  }
  return sum > 0 ? sum : null;
}

function timesCount(cents: Cents, clause: Clause): Filled {
  const pieces = clause.tokens.filter((token) => token.kind === "piece").map((token) => token.mention!);
  const named = pieces.length > 0 ? pieces : unlisted(clause);
  // "listed them for 40 each": how many they are, the clause before says.
  if (named.length === 0) return { value: cents, each: true, pending: true };
  const count = pieceCount(named);
  if (count === null) return trouble("eachOfUnknown");
  const whole = centsOfExact({ digits: cents * count, scale: 2 });
  return "flaw" in whole ? trouble("large") : { value: whole.cents, each: true };
}

/** "on the 28" could be the day or the price. */
function couldBeDay(clause: Clause, token: Tok): boolean {
  const at = clause.tokens.indexOf(token);
  const whole = wholeOf(token.amount?.exact ?? null);
  if (token.amount?.money || token.each || whole === null) return false;
  const [before, last] = [clause.tokens[at - 2]?.text, clause.tokens[at - 1]?.text];
  // "on the 28" could be a day, "at 5" an hour.
  return (whole <= 31 && last === "the" && before === "on") || (whole <= 12 && last === "at");
}

/** The one amount of a clause. Two of them, or one that could be something else, settle nothing. */
export const money: Fill = (clause) => {
  const amounts = freeTokens(clause, "amount");
  const [first, second] = amounts;
  if (!first) return isTwoForFifteen(clause) ? trouble("twoNumbers") : null;
  if (second) {
    const flawed = amounts.map(centsOfToken).find((found) => "trouble" in found);
    return flawed && "trouble" in flawed ? flawed : trouble("twoNumbers");
  }
  if (couldBeDay(clause, first)) return trouble("twoNumbers");
  claim(first);
  const found = centsOfToken(first);
  if ("trouble" in found) return found;
  if (isPerContainer(clause, first)) return trouble("vagueAmount");
  if (couldBeCount(clause, first) || countsOtherThings(clause, first)) return trouble("twoNumbers");
  if (first.each) return timesCount(found.cents, clause);
  if (isAtSign(clause, first) && countsMoreThanOne(clause)) return trouble("twoNumbers");
  return { value: found.cents };
};

/** "chairs 2/15" could be two of them for fifteen. */
function isTwoForFifteen(clause: Clause): boolean {
  const day = clause.tokens.find((token) => token.kind === "day" && /^\d{1,2}\/\d{1,2}$/.test(token.text));
  if (!day) return false;
  const count = Number(day.text.split("/")[0]);
  return clause.tokens.some(
    ({ mention }) =>
      mention !== undefined && (mention.plural === true || (count > 1 && mention.count === count)),
  );
}

/** "sold 8 lamp": eight lamps, or one for eight? */
function couldBeCount({ tokens }: Clause, token: Tok): boolean {
  const next = tokens[tokens.indexOf(token) + 1];
  const whole = wholeOf(token.amount?.exact ?? null);
  return next?.kind === "piece" && !token.amount?.money && whole !== null && whole <= 12;
}

const OTHER_THINGS =
  /^(?:times|people|guys|buyers|offers|messages|kids|years?|yrs?|old|in|inches|inch|feet|ft|foot|drawers?|doors?|shelves|legs|percent|degrees|pounds|lbs|blocks|min away|away|am|pm|oclock)$/;

/** "sold desk 2 times": a number that counts something else. "40 in cash" is money. */
function countsOtherThings({ tokens }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  const next = tokens[at + 1]?.text ?? "";
  if (token.amount?.money || next === "in") return false;
  return OTHER_THINGS.test(next);
}

/** "20 a can": how many cans? */
function isPerContainer({ tokens }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  return /^(?:a|per)$/.test(tokens[at + 1]?.text ?? "") && isContainer(tokens[at + 2]);
}

/** "4 chairs @ 15": the price of one, or of all? */
function isAtSign(clause: Clause, token: Tok): boolean {
  return isMark(clause.tokens[clause.tokens.indexOf(token) - 1], "@");
}

function countsMoreThanOne(clause: Clause): boolean {
  return clause.tokens.some((token) => token.kind === "piece" && (token.mention?.count ?? 2) > 1);
}

const FEE =
  /^(?:fees?|listing fees?|selling fees?|sale fees?|final value fees?|platform fees?|commission|transaction fees?|processing fees?|payment fees?|card fees?|service fees?|market fees?|booth fees?)$/;

/** "fee 6.60", "minus 5.25 fee": an amount beside the word. */
const fee: Fill = (clause) => {
  const at = clause.tokens.findIndex(
    (token) => token.kind === "word" && FEE.test(token.text) && !token.claimed,
  );
  if (at < 0) return null;
  let nextAt = at + 1;
  while (/^(?:of|was|were|is|are|:|-|=|came to|total)$/.test(clause.tokens[nextAt]?.text ?? "")) nextAt += 1;
  const after = clause.tokens[nextAt];
  const before = clause.tokens[at - 1];
  // "sold hutch 220 fee 6.60" names the fee after the word; "220 minus 6.60 fee" before it.
  const token = after?.kind === "amount" ? after : before?.kind === "amount" ? before : undefined;
  claim(clause.tokens[at]!);
  if (!token || (freeTokens(clause, "amount").length < 2 && before === token)) return trouble("unclaimed");
  claim(token);
  claimWords(clause, /^(?:minus|less)$/);
  const found = centsOfToken(token);
  return "trouble" in found ? found : { value: found.cents };
};

const STOP_WORD =
  /^(?:for|until|till|til|thru|through|via|by|today|fee|fees|minus|each|plus|sold|now|because|bc|cuz|and|then)$/;

/** Where a name after a preposition ends: before a number, a day, a way of paying, a mark or another verb. */
function nameEnd(clause: Clause, start: number): number {
  let at = start;
  for (; at < clause.tokens.length; at += 1) {
    const token = clause.tokens[at]!;
    if (token.claimed || (token.kind === "mark" && token.text !== "-" && token.text !== ".")) break;
    if (token.kind === "mark" || (token.kind !== "word" && token.kind !== "piece")) break;
    if (token.kind === "piece" && !isInName(clause, at)) break;
    if (token.roles.method && at > start) break;
    if (STOP_WORD.test(token.text)) break;
    if (/^(?:at|on|in|with|from|to)$/.test(token.text) && isEndAfter(clause, at)) break;
    if (token.roles.heads?.some((head) => !head.light) && at > start) break;
    if (token.roles.hedge && at > start) break;
  }
  return at;
}

/** The desk of "lady with the desk". */
function isInName(clause: Clause, at: number): boolean {
  let before = at - 1;
  while (ARTICLE.test(clause.tokens[before]?.text ?? "")) before -= 1;
  return /^(?:with|in|by|near)$/.test(clause.tokens[before]?.text ?? "");
}

/** A preposition followed by a number, a day, a piece or a way of paying is no part of a name. */
function isEndAfter(clause: Clause, at: number): boolean {
  let after = at + 1;
  while (ARTICLE.test(clause.tokens[after]?.text ?? "")) after += 1;
  const next = clause.tokens[after];
  if (!next || (next.kind === "piece" && /^(?:on|at|from|to)$/.test(clause.tokens[at]!.text))) return true;
  return (next.kind !== "word" && next.kind !== "piece") || next.roles.method !== undefined;
}

const ARTICLE = /^(?:the|a|an|my|our|this|that|some)$/;

function nameAfter(clause: Clause, preposition: RegExp): string | null {
  const { tokens } = clause;
  for (let at = 0; at < tokens.length - 1; at += 1) {
    const token = tokens[at]!;
    if (token.claimed || token.kind !== "word" || !preposition.test(token.text)) continue;
    let start = at + 1;
    while (ARTICLE.test(tokens[start]?.text ?? "")) start += 1;
    const first = tokens[start];
    if (first?.kind !== "word" || first.claimed || first.roles.pronoun || first.roles.method) continue;
    const end = nameEnd(clause, start);
    if (end <= start) continue;
    const name = tokens.slice(start, end);
    if (
      name.every((word) => word.roles.filler && !word.roles.place) ||
      /^(?:sale|free|parts|now|today)$/.test(first.text)
    )
      continue;
    claim(token, ...tokens.slice(at + 1, end));
    return asSaid(clause, name);
  }
  return null;
}

/** "neighbor bought the desk": a person before the verb is no place. */
function isActor(clause: Clause, token: Tok, at: number): boolean {
  return token.roles.person === true && clause.head !== undefined && at < clause.tokens.indexOf(clause.head);
}

/** A place known on its own: "yard sale", with the words before it that are part of its name. */
function knownPlace(clause: Clause): string | null {
  const at = clause.tokens.findIndex(
    (token, index) =>
      token.kind === "word" &&
      token.roles.place !== undefined &&
      !token.claimed &&
      !isActor(clause, token, index),
  );
  if (at < 0) return null;
  const token = clause.tokens[at]!;
  claim(token);
  return token.roles.place!;
}

const source: Fill = (clause) => {
  const name = nameAfter(clause, /^(?:from|at|off|off of|outta|out of)$/) ?? knownPlace(clause);
  return name ? { value: name } : null;
};

const buyer: Fill = (clause) => {
  const name = nameAfter(clause, /^(?:to|for|from)$/);
  return name ? { value: name } : null;
};

const place: Fill = (clause) => {
  const name = nameAfter(clause, /^(?:on|in|at)$/) ?? knownPlace(clause);
  return name ? { value: name } : null;
};

const UNTIL = /^(?:until|till|til|thru|through|by|before)$/;
const PICKUP = /^(?:pickup|pick up|picking up|coming|collecting|picks up)$/;

const until: Fill = (clause) => {
  const { tokens } = clause;
  const at = tokens.findIndex((token, index) => {
    const next = tokens[index + 1];
    return (
      token.kind === "word" &&
      UNTIL.test(token.text) &&
      next !== undefined &&
      (next.kind === "day" ||
        next.kind === "clock" ||
        next.kind === "amount" ||
        next.roles.vagueTime === true ||
        isMoment(next))
    );
  });
  if (at < 0) return span(clause) ?? pickupDay(clause);
  const token = tokens[at + 1]!;
  claim(tokens[at]!, token);
  if (token.kind === "amount" || token.roles.vagueTime) return trouble("vagueTime");
  if (token.kind !== "day") return { value: clause.today };
  const day = comingDay(token.said!, clause.today);
  return day ? { value: day } : trouble("unrealDay");
};

function isMoment(token: Tok): boolean {
  return /^(?:tonight|this evening|this afternoon|noon|today)$/.test(token.text);
}

/** "hold for 2 days" */
function span(clause: Clause): Filled {
  const token = firstFree(clause, "span");
  if (!token) return null;
  claim(token);
  return { value: addDays(clause.today, token.days!) };
}

/** "pickup sat" */
function pickupDay(clause: Clause): Filled {
  const at = clause.tokens.findIndex(
    (token, index) => PICKUP.test(token.text) && clause.tokens[index + 1]?.kind === "day",
  );
  if (at < 0) return null;
  const token = clause.tokens[at + 1]!;
  claim(clause.tokens[at]!, token);
  const day = comingDay(token.said!, clause.today);
  return day ? { value: day } : trouble("unrealDay");
}

/** Cash, card, check, transfer; or any one word after "via", or after "by" where no date follows. */
const method: Fill = (clause) => {
  const { tokens } = clause;
  const said: string[] = [];
  tokens.forEach((token, at) => {
    if (token.claimed || token.kind !== "word") return;
    if (token.roles.method) {
      claim(token);
      said.push(token.roles.method);
    } else if (/^(?:via|by)$/.test(token.text)) {
      const next = tokens[at + 1];
      if (!next || next.claimed || next.kind !== "word" || next.roles.method || ARTICLE.test(next.text))
        return;
      if (next.text.includes(" ")) return;
      if (token.text === "by" && (next.roles.filler || next.roles.person)) return;
      claim(token, next);
      said.push(next.text);
    }
  });
  const [first, ...others] = said;
  if (!first) return null;
  return others.some((other) => other !== first) ? null : { value: first };
};

const minutes: Fill = (clause) => {
  const token = firstFree(clause, "duration");
  if (!token) return null;
  claim(token);
  if (token.minutes === undefined || token.minutes <= 0) return trouble("unclaimed");
  const next = clause.tokens[clause.tokens.indexOf(token) + 1];
  if (!next || !EACH_WORDS.has(next.text)) return { value: token.minutes };
  // "30 min each on both nightstands" is an hour.
  const count = pieceCount(clause.tokens.flatMap(({ mention }) => (mention ? [mention] : [])));
  return count === null ? trouble("eachOfUnknown") : { value: token.minutes * count };
};

const labor: Fill = (clause) => {
  const token =
    clause.tokens.find(
      (word) => word.kind === "word" && word.roles.labor && !word.claimed && /ing$/.test(word.text),
    ) ?? clause.tokens.find((word) => word.kind === "word" && word.roles.labor && !word.claimed);
  if (!token) return null;
  claim(token);
  return { value: LABOR_NAMES.get(token.text) ?? token.text };
};

const miles: Fill = (clause) => {
  const token = firstFree(clause, "miles");
  if (!token) return null;
  claim(token);
  return token.miles === undefined ? trouble("unclaimed") : { value: token.miles };
};

const percent: Fill = (clause) => {
  const token = firstFree(clause, "percent");
  if (!token) return null;
  claim(token);
  return Number(token.percent) > 100 ? trouble("large") : { value: token.percent };
};

const NO_LOAN_NAME = // words around a loan that name none
  /^(?:new|the|my|our|a|an|to|on|toward|towards|for|of|at|balance|payment|payments|rate|extra|is|now|this|that|all|old|from|into|in|and|principal|interest|owe|owed|still|left|pay|paid|made|make|sent|send|put|add|added|opened|open|statement|says|uses|use|using|has|with|remaining|current|got|took|took out|out|another|split|over|across|big|only|one)$/;

const LOAN = /(?:^| )loans?(?: |$)/;

/** "grad loan", "new loan grad 4100": the words that tell loans apart. */
const loan: Fill = (clause) => {
  const { tokens } = clause;
  const at = tokens.findIndex((token) => token.kind === "word" && LOAN.test(token.text));
  if (at < 0) return null;
  claim(tokens[at]!);
  let start = at;
  while (start > 0 && isLoanName(tokens[start - 1]!)) start -= 1;
  let name = tokens.slice(start, at);
  if (name.length === 0) {
    let end = at + 1;
    while (end < tokens.length && isLoanName(tokens[end]!)) end += 1;
    name = tokens.slice(at + 1, end);
  }
  claim(...name);
  return name.length > 0 ? { value: asSaid(clause, name) } : null;
};

function isLoanName(token: Tok): boolean {
  if (token.kind !== "word" || token.claimed || token.roles.heads || token.roles.hedge || token.roles.method)
    return false;
  if (NO_LOAN_NAME.test(token.text)) return false;
  return !token.roles.filler && !token.roles.opinion;
}

const stream: Fill = (clause) => {
  const token = clause.tokens.find((word) => word.kind === "word" && word.roles.stream && !word.claimed);
  if (token) {
    claim(token);
    return { value: token.roles.stream };
  }
  const name = nameAfter(clause, /^(?:from|for)$/);
  return name ? { value: name } : null;
};

/** All pieces named; where none is, words nobody listed, or "it". */
const pieces: Fill = (clause) => {
  const tokens = freeTokens(clause, "piece");
  if (tokens.length > 0) {
    claim(...tokens);
    if (areSideBySide(tokens)) return trouble("twoNouns");
    if (isNumberRange(clause, tokens)) return trouble("range");
    return withJoinedNouns(clause, withoutParts(clause, tokens));
  }
  const pronoun = clause.tokens.find(
    (token) => token.kind === "word" && token.roles.pronoun && !token.claimed && isPronounHere(clause, token),
  );
  if (pronoun) {
    claim(pronoun);
    return { value: [], follows: true, ...(SEVERAL.test(pronoun.text) ? { several: true } : {}) };
  }
  const found = unlisted(clause, true);
  return found.length > 0 ? { value: found } : null;
};

const SEVERAL = /^(?:them|those|these|em|both of them)$/;

/** Pieces of other kinds of note that only help to place it: none is made up from unknown words. */
export const knownPieces: Fill = (clause) => {
  const tokens = freeTokens(clause, "piece");
  if (tokens.length > 0) {
    claim(...tokens);
    return { value: tokens.map((token) => token.mention!) };
  }
  const pronoun = clause.tokens.find(
    (token) => token.kind === "word" && /^(?:it|them|those|these)$/.test(token.text) && !token.claimed,
  );
  if (!pronoun) return null;
  claim(pronoun);
  return { value: [], follows: true };
};

/** "that desk" points at the desk; "that" alone at the clause before. */
function isPronounHere(clause: Clause, token: Tok): boolean {
  if (/^(?:it|them|em|both of them)$/.test(token.text)) return true;
  const next = clause.tokens[clause.tokens.indexOf(token) + 1];
  return next?.kind !== "word" || (!next.unknown && !next.roles.trait && !next.roles.opinion);
}

/** "vanity dresser": one piece by two names, or two? */
function areSideBySide(tokens: readonly Tok[]): boolean {
  if (tokens.length < 2) return false;
  return tokens.some((token, at) => {
    const next = tokens[at + 1];
    const adjacent = next !== undefined && next.from === token.to;
    return (
      adjacent &&
      token.mention?.number === undefined &&
      next.mention?.number === undefined &&
      next.mention?.traits === undefined &&
      !/\d|^(?:a|an|the|both|pair|two|three|four)\b/.test(next.text)
    );
  });
}

/** "#4 to #6" may be two pieces or three. */
function isNumberRange(clause: Clause, tokens: readonly Tok[]): boolean {
  return tokens.some((token, at) => {
    const next = tokens[at + 1];
    if (token.mention?.number === undefined || next?.mention?.number === undefined) return false;
    return /^(?:to|-|thru|through)$/.test(clause.tokens[clause.tokens.indexOf(token) + 1]?.text ?? "");
  });
}

/** "dresser and whatnot 40", "whatnot and dresser 40": a noun nobody listed, joined to one that is known, is a piece too. */
function withJoinedNouns(clause: Clause, tokens: readonly Tok[]): Filled {
  const mentions = tokens.map((token) => ({ at: token.from, mention: token.mention! }));
  if (clause.signs.has("unknown")) {
    clause.tokens.forEach((token, at) => {
      if (!/^(?:and|&|\+|,)$/.test(token.text)) return;
      const run = joinedAfter(clause.tokens, at) ?? joinedBefore(clause, at);
      const mention = run ? unlistedMention(run, null) : null;
      if (!run || !mention) return;
      claim(...run);
      mentions.push({ at: run[0]!.from, mention });
    });
  }
  return { value: mentions.sort((a, b) => a.at - b.at).map(({ mention }) => mention) };
}

const JOINED_WORDS_MAX = 2;

/** The unlisted noun between "and" and the price. */
function joinedAfter(tokens: readonly Tok[], and: number): Tok[] | null {
  let start = and + 1;
  while (ARTICLE.test(tokens[start]?.text ?? "")) start += 1;
  let end = start;
  while (tokens[end]?.unknown && isUnlistedNoun(tokens[end]!)) end += 1;
  const fits = end > start && end - start <= JOINED_WORDS_MAX && tokens[end]?.kind === "amount";
  return fits && tokens[and]!.text !== "," ? tokens.slice(start, end) : null;
}

/** The unlisted noun between the verb and "and" with a piece behind it. */
function joinedBefore({ tokens, head }: Clause, and: number): Tok[] | null {
  let piece = and + 1;
  while (ARTICLE.test(tokens[piece]?.text ?? "")) piece += 1;
  if (tokens[piece]?.kind !== "piece") return null;
  let start = and;
  while (start > 0 && tokens[start - 1]!.unknown && isUnlistedNoun(tokens[start - 1]!)) start -= 1;
  let before = start - 1;
  while (ARTICLE.test(tokens[before]?.text ?? "")) before -= 1;
  const fits =
    start < and && and - start <= JOINED_WORDS_MAX && head !== undefined && tokens[before] === head;
  return fits ? tokens.slice(start, and) : null;
}

const WITH_PARTS = /^(?:mirror|hutch|headboard|footboard|shelf)$/;

/** "dresser with mirror" is one piece; "shelves for hutch" are no hutch. */
function withoutParts(clause: Clause, tokens: readonly Tok[]): Tok[] {
  return tokens.filter((token) => {
    const at = clause.tokens.indexOf(token);
    let before = at - 1;
    while (ARTICLE.test(clause.tokens[before]?.text ?? "")) before -= 1;
    const joined =
      /^(?:with|w)$/.test(clause.tokens[before]?.text ?? "") && clause.tokens[before - 1]?.kind === "piece";
    const purpose =
      clause.tokens[before]?.text === "for" &&
      clause.tokens.some((other, place) => place < before && other.kind === "piece");
    return !(joined && WITH_PARTS.test(token.mention?.name ?? "")) && !purpose;
  });
}

const NO_NOUN =
  /^(?:pieces?|pcs?|set|lot|bunch|group|x|something|anything|everything|stuff|someone|yesterday|trip|deposit|loan|money|dollars|bucks|wow|what|who|how|why|when|where)$/;

function isUnlistedNoun(token: Tok): boolean {
  if (token.kind !== "word" || token.claimed || NO_NOUN.test(token.text)) return false;
  if (token.unknown) return token.text.length > 1;
  const { trait, opinion, heads, filler } = token.roles;
  return (trait === true || opinion === true) && !heads && !filler;
}

/** The word before a place, articles aside. */
function wordBefore(tokens: readonly Tok[], at: number): string {
  let before = at - 1;
  while (ARTICLE.test(tokens[before]?.text ?? "")) before -= 1;
  return tokens[before]?.text ?? "";
}

/** The first run of words that nobody listed, after the verb where there is one there, else before it. */
function unlistedRun(clause: Clause): { run: Tok[]; count: number | null } | null {
  const { tokens, head } = clause;
  const from = head ? tokens.indexOf(head) + 1 : 0;
  for (const [start, end] of [
    [from, tokens.length],
    [0, Math.max(0, from - 1)],
  ] as const) {
    for (let at = start; at < end; at += 1) {
      if (!isUnlistedNoun(tokens[at]!)) continue;
      let to = at;
      while (to < end && isUnlistedNoun(tokens[to]!)) to += 1;
      const run = tokens.slice(at, to);
      const named = !/^(?:from|to|at|in|off|with|w|by|via)$/.test(wordBefore(tokens, at));
      if (named && run.some((token) => token.unknown)) {
        const before = tokens[at - 1];
        const whole =
          before?.kind === "amount" && !before.amount?.money && !before.each
            ? wholeOf(before.amount?.exact ?? null)
            : null;
        return { run, count: whole };
      }
      at = to;
    }
  }
  return null;
}

const UNLISTED_WORDS_MAX = 4;

function unlisted(clause: Clause, taking = false): Mention[] {
  const found = unlistedRun(clause);
  if (!found || found.run.length > UNLISTED_WORDS_MAX) return [];
  const plural = /[^s]s$/.test(found.run.at(-1)!.text);
  const counted =
    found.count !== null &&
    found.count >= 1 &&
    (plural || found.count <= 12) &&
    freeTokens(clause, "amount").length > 1;
  const mention = unlistedMention(found.run, counted ? found.count : null);
  if (!mention) return [];
  if (taking) {
    claim(...found.run);
    if (counted) claim(clause.tokens[clause.tokens.indexOf(found.run[0]!) - 1]!);
  }
  return [mention];
}

function isWhatWord(token: Tok | undefined): boolean {
  if (token?.kind !== "word" || token.roles.heads?.some((head) => !head.light)) return false;
  if (token.roles.supply || token.roles.trait || token.roles.stream) return true;
  return (token.unknown === true || token.roles.person === true) && !token.claimed;
}

/** The supply's own words with those before it that belong to it: "orbital sander", "screws and hinges". */
const what: Fill = (clause) => {
  const { tokens } = clause;
  let first = tokens.findIndex(
    (token) => token.kind === "word" && token.roles.supply !== undefined && !token.claimed,
  );
  if (first < 0) return whatAfterOn(clause);
  let last = first;
  tokens.forEach((token, at) => {
    if (at > first && token.kind === "word" && token.roles.supply && !token.claimed)
      last = joinsSupplies(tokens, last, at) ? at : last;
  });
  countedAfter(clause, last);
  while (isWhatWord(tokens[first - 1]) && !tokens[first - 1]!.roles.person && !isContainer(tokens[first - 1]))
    first -= 1;
  countedSupply(clause, first);
  clause.what = tokens.slice(first, last + 1);
  claim(...clause.what);
  return { value: asMeant(clause, clause.what) };
};

const isContainer = (token: Tok | undefined): boolean => token !== undefined && CONTAINERS.has(token.text);

function joinsSupplies(tokens: readonly Tok[], last: number, at: number): boolean {
  return tokens
    .slice(last + 1, at)
    .every(
      (token) =>
        token.kind === "mark" || /^(?:and|&|,|some|the|a|more)$/.test(token.text) || isWhatWord(token),
    );
}

/** "2 cans of primer 36", "8 knobs 20": a count of supplies is no amount where an amount stands beside it. */
function countedSupply(clause: Clause, first: number): void {
  let at = first - 1;
  if (clause.tokens[at]?.text === "of") at -= 1;
  if (isContainer(clause.tokens[at])) {
    claim(clause.tokens[at]!);
    at -= 1;
  }
  const token = clause.tokens[at];
  if (token?.kind !== "amount" || token.amount?.money || token.each || token.claimed) return;
  const others = freeTokens(clause, "amount").filter((other) => other !== token);
  if (others.length !== 1) return;
  const other = others[0]!;
  const count = wholeOf(token.amount?.exact ?? null);
  if (count === null) return;
  claim(token);
  if (other.each && other.amount?.exact) multiply(other, count);
}

/** "drawer pulls 6 at 3.50" is six of them; "knobs 6 for 15" is fifteen for all. */
function countedAfter(clause: Clause, last: number): void {
  const [count, link, price] = clause.tokens.slice(last + 1, last + 4);
  if (count?.kind !== "amount" || price?.kind !== "amount" || count.amount?.money) return;
  if (!link || !/^(?:at|@|for)$/.test(link.text)) return;
  const whole = wholeOf(count.amount?.exact ?? null);
  if (whole === null || !price.amount?.exact) return;
  claim(count);
  if (link.text !== "for") multiply(price, whole);
}

/** Makes the price of one into that of all. */
function multiply(token: Tok, count: number): void {
  const { digits, scale } = token.amount!.exact!;
  token.amount = { ...token.amount!, exact: { digits: digits * count, scale } };
  delete token.each;
}

/** "spent 15 on lunch": what is said after "on" or "for". */
function whatAfterOn(clause: Clause): Filled {
  const { tokens } = clause;
  for (let at = 0; at < tokens.length - 1; at += 1) {
    if (tokens[at]!.claimed || !/^(?:on|for|in)$/.test(tokens[at]!.text)) continue;
    let start = at + 1;
    while (ARTICLE.test(tokens[start]?.text ?? "")) start += 1;
    let end = start;
    while (isWhatWord(tokens[end]) && !tokens[end]!.claimed) end += 1;
    if (end === start) continue;
    claim(tokens[at]!, ...tokens.slice(start, end));
    return { value: asSaid(clause, tokens.slice(start, end)) };
  }
  return null;
}

/** The category of the last supply named; `help` where hands are paid; else other. */
const category: Fill = (clause) => {
  const supplies = (clause.what ?? clause.tokens).filter(
    (token) => token.kind === "word" && token.roles.supply !== undefined,
  );
  const joined = supplies.some((token) =>
    clause.tokens[clause.tokens.indexOf(token) + 1]?.text.match(/^(?:and|&|,)$/),
  );
  const last = joined ? supplies[0] : supplies.at(-1);
  const found: Category = clause.signs.has("helper") ? "help" : (last?.roles.supply ?? "other");
  return { value: found };
};

/** Whether a slot has anything to begin from in this clause. Told from its signs, without a search. */
export function hasHintOf(slot: Slot, { signs }: Clause): boolean {
  switch (slot) {
    case "until":
      return (signs.hints & HINTS.until) !== 0;
    case "minutes":
      return signs.has("duration");
    case "miles":
    case "percent":
    case "loan":
    case "labor":
      return signs.has(slot);
    case "fee":
      return (signs.hints & HINTS.fee) !== 0;
    case "method":
      return (signs.hints & HINTS.method) !== 0;
    case "buyer":
      return (signs.hints & HINTS.preposition) !== 0;
    case "source":
    case "place":
      return (signs.hints & (HINTS.preposition | HINTS.on | HINTS.place)) !== 0;
    case "money":
      return signs.has("number") || (signs.hints & HINTS.day) !== 0;
    default:
      return true;
  }
}

/** Every slot by name. */
export const slots: Readonly<Record<Slot, Fill>> = {
  pieces,
  bought: pieces,
  money,
  fee,
  method,
  source,
  buyer,
  until,
  minutes,
  labor,
  miles,
  percent,
  loan,
  what,
  category,
  stream,
  place,
};
