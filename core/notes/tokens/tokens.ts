import type { DaySaid } from "../quantities/days.ts";
import { dayAt, isDayBehindThe } from "../quantities/days.ts";
import { bareAmountAt, numericAt } from "../quantities/quantities.ts";
import { smallNumberAt } from "../quantities/spelled.ts";
import { MONTHS, WEEKDAYS } from "../words/calendar.ts";
import { ARTICLES_WIDE } from "../words/links.ts";
import { BEHIND_ONE, OF_THINGS } from "../words/numbers.ts";
import { DAY_STARTERS, NUMBER_STARTERS, STARTERS } from "../words/starters.ts";
import { BEFORE_DAY } from "../words/times.ts";
import { AFTER_DAYS, FRACTIONS, HOURS, NUMBER_WORDS } from "../words/units.ts";
import type { Entry, Found } from "./lexicon.ts";
import { longestFrom, opensOther } from "./lexicon.ts";
import type { Lexer, Meant } from "./meant.ts";
import { HINTS } from "./sign-bits.ts";
import type { Word } from "./text.ts";
import type { Part, Token } from "./token.ts";
import { NO_ROLES, partToken, phraseToken, wordToken } from "./token.ts";

/** Words to typed tokens, left to right, the longest meaning first. Linear: every look ahead is bounded. */
export function tokensOf<Head>(meant: Meant<Head>, lexer: Lexer<Head>): Token<Head>[] {
  const tokens: Token<Head>[] = [];
  let at = 0;
  while (at < meant.words.length) {
    const token = tokenAt(meant, at, lexer);
    const before = tokens.at(-1);
    // "3 desks each 40" is 40 for one, as "40 each" is.
    if (token.kind === "amount" && before?.kind === "word" && (before.hints & HINTS.each) !== 0)
      token.each = true;
    tokens.push(token);
    at = token.to;
  }
  return tokens;
}

/** A token of one kind from its part of the line. */
function made<Head>(part: Part, norms: readonly string[], at: number): Token<Head> {
  return partToken(part, textOf(norms, at, part.words), at) as Token<Head>;
}

function textOf(norms: readonly string[], from: number, words: number): string {
  let text = norms[from]!;
  for (let at = from + 1; at < from + words; at += 1) text += ` ${norms[at]!}`;
  return text;
}

const DOUBTFUL: Part = { kind: "amount", amount: { exact: null, flaw: "vague", money: false }, words: 1 };

/** Words that may open something else than a phrase of the lexicon; any other is looked up and done with. */
export const OPENINGS: readonly string[] = [...STARTERS, "x", "no", "number", "num", "nbr"];

function tokenAt<Head>({ words, norms, entries }: Meant<Head>, at: number, lexer: Lexer<Head>): Token<Head> {
  const word = words[at]!;
  const norm = norms[at]!;
  if (word.kind === "letters") {
    const entry = entries[at];
    if (!entry) return unlisted(word, norms, at, lexer);
    // "paid on monday" is paid that day, and nothing on a loan.
    const isPaidThen =
      norm === "paid" && norms[at + 1] === "on" && dayAt(norms.slice(at + 2, at + 8)) !== null;
    if (isPaidThen || isOfIt(norms, at) || opensChestOf(norms, at))
      return wordOrPhrase(norms, at, lexer.lexicon.longest([norm], 0));
    if (!opensOther(entry)) {
      const found = longestFrom(entry, norms, at);
      return found ? phraseToken(found, at) : unlisted(word, norms, at, lexer);
    }
    return openingToken(word, norms, at, entry, lexer);
  }
  if (word.doubtful && !isPlainlyApart(norms, at, lexer)) return made(DOUBTFUL, norms, at);
  if (word.kind === "mark") {
    if (norm === "#" && /^\d{1,9}$/.test(norms[at + 1] ?? ""))
      return made({ kind: "number", value: Number(norms[at + 1]), words: 2 }, norms, at);
    if (norm !== "$") return wordToken<Head>("mark", norm, at, at + 1, NO_ROLES);
  }
  const timed = timedAt(word, norms, at, lexer);
  if (timed) return made(timed, norms, at);
  return word.kind === "mark"
    ? wordToken<Head>("mark", norm, at, at + 1, NO_ROLES)
    : wordToken<Head>("word", norm, at, at + 1, NO_ROLES, true);
}

/** A word of no list; "her kitchen's tiny": one that says nothing by itself says no more so. */
function unlisted<Head>(
  { start, end }: Word,
  norms: readonly string[],
  at: number,
  { lexicon }: Lexer<Head>,
): Token<Head> {
  const norm = norms[at]!;
  const isContracted = end - start === norm.length + 1 && norm.endsWith("s");
  const next = isContracted ? lexicon.longest(norms, at + 1)?.roles : undefined;
  // "somebody else's dresser" is whose it is.
  const roles =
    isContracted && !(next?.noun ?? next?.supply)
      ? lexicon.longest([norm.slice(0, -1)], 0)?.roles
      : undefined;
  const isPlain =
    roles?.plain &&
    Object.entries(roles).every(
      ([role, value]) => value === undefined || role === "plain" || role === "trait" || role === "own",
    );
  return isPlain
    ? wordToken<Head>("word", norm, at, at + 1, { plain: true })
    : wordToken<Head>("word", norm, at, at + 1, NO_ROLES, true);
}

/** "brushes for it cost 7": of that piece, and no "it cost 7", which corrects a note. */
const isOfIt = (norms: readonly string[], at: number): boolean =>
  (norms[at] === "it" || norms[at] === "that") &&
  /^(?:cost|was|came|ran|is)$/.test(norms[at + 1] ?? "") &&
  /^(?:for|on|of|in|into)$/.test(norms[at - 1] ?? "");

/** "cedar chest of drawers": no cedar chest. */
const opensChestOf = (norms: readonly string[], at: number): boolean =>
  norms[at + 1] === "chest" && norms[at + 2] === "of" && norms[at] !== "chest";

/**
 * "paid$45", "drove15mi", "gas20", "paint12.50": no sign, no verb and no cost of the road grows into a number, and two
 * decimals are money; but a piece's name may ("dresser14"), and a supply's ("grit120").
 */
function isPlainlyApart<Head>(norms: readonly string[], at: number, { lexicon }: Lexer<Head>): boolean {
  const { heads, noun, stream, supply } = lexicon.entry(norms[at - 1] ?? "")?.said ?? {};
  const isOfThing = stream !== undefined || supply === "vehicle";
  if (norms[at]!.startsWith("$") || (heads !== undefined && noun === undefined) || isOfThing) return true;
  return (noun !== undefined || supply !== undefined) && /^\d+\.\d\d$/.test(norms[at]!);
}

/** A word that may open a number, a count or a day: whichever of that and the lexicon's phrase says more. */
function openingToken<Head>(
  word: Word,
  norms: readonly string[],
  at: number,
  entry: Entry<Head>,
  lexer: Lexer<Head>,
): Token<Head> {
  const norm = norms[at]!;
  if (norm === "x" && /^\d{1,3}$/.test(norms[at + 1] ?? ""))
    return made({ kind: "count", value: Number(norms[at + 1]), words: 2 }, norms, at);
  const named = NUMBER_WORDS.has(norm) ? pieceNumberAt(norms, at) : null;
  if (named) return made(named, norms, at);
  if (norm === "one" && norms[at + 1] === "of" && isSomebodyOfMany(norms, at, lexer)) {
    const article = lexer.lexicon.longest([norms[at + 2]!], 0)!;
    return phraseToken({ ...article, words: 3 }, at);
  }
  // "one forty no one thirty five": a number, and nobody.
  const isBeforeNumber = norm === "no" && norms[at + 1] === "one" && BEHIND_ONE.has(norms[at + 2] ?? "");
  const found = isBeforeNumber ? lexer.lexicon.longest([norm], 0) : longestFrom(entry, norms, at);
  const isArticle = norm === "a" || norm === "an";
  const opensNoun = isArticle && isLongNoun(lexer.lexicon.longest(norms, at + 1));
  if (!isLongNoun(found) && !opensNoun && STARTERS.has(norm)) {
    const timed = timedAt(word, norms, at, lexer);
    const least = found?.roles.vagueTime || found?.roles.hedge ? found.words : 0;
    if (timed && timed.words >= least) return made(timed, norms, at);
  }
  return wordOrPhrase(norms, at, found);
}

/** "a day bed" is no day long. */
const isLongNoun = <Head>(found: Found<Head> | null): boolean =>
  found !== null && found.words > 1 && found.roles.noun !== undefined;

function wordOrPhrase<Head>(norms: readonly string[], at: number, found: Found<Head> | null): Token<Head> {
  if (!found) return wordToken<Head>("word", norms[at]!, at, at + 1, NO_ROLES, true);
  return phraseToken(found, at);
}

/** "no. 12", "number 12", "num 12", "on no 12": the bot's own numbers in words. */
function pieceNumberAt(norms: readonly string[], at: number): Part | null {
  const word = norms[at]!;
  const dotted = word === "no" && norms[at + 1] === "." ? 2 : 0;
  const isBehind = word === "no" && /^(?:on|for)$/.test(norms[at - 1] ?? "");
  const skip = dotted || (isBehind || /^(?:number|num|nbr|nr)$/.test(word) ? 1 : 0);
  if (skip === 0) return null;
  const sharp = norms[at + skip] === "#" ? 1 : 0;
  const typed = norms[at + skip + sharp] ?? "";
  if (/^\d{1,6}$/.test(typed)) return { kind: "number", value: Number(typed), words: skip + sharp + 1 };
  if (word !== "number") return null;
  const spelled = smallNumberAt(norms, at + skip);
  return spelled ? { kind: "number", value: spelled.value, words: skip + spelled.words } : null;
}

/** A day or a number at this place, whichever the words are. */
function timedAt<Head>(word: Word, norms: readonly string[], at: number, lexer: Lexer<Head>): Part | null {
  const norm = norms[at]!;
  const digits = word.kind === "digits";
  const bare = digits && !isDayBeforeMonth(norms, at) ? bareAmountAt(norms, at) : null;
  if (bare) return bare;
  const mayBeDay = norm === "the" ? isDayBehindThe(norms[at + 1]) : DAY_STARTERS.has(norm);
  if (digits ? couldBeDay(norms, at) : mayBeDay) {
    const ahead = norms.slice(at, at + 6);
    const isFraction = slashIsFraction(norms, at, lexer);
    if (isFraction && isOfSupply(norms, at, lexer))
      return { kind: "grain", words: /^inch(?:es)?$/.test(norms[at + 1] ?? "") ? 2 : 1 };
    const found = isFraction ? null : dayAt(ahead);
    if (found && !isRankOfNoun(found, norms, at, lexer))
      return { kind: "day", said: found.said, words: found.words };
  }
  if (!digits && !NUMBER_STARTERS.has(norm)) return null;
  const part = numericAt({ norms, at });
  return part && norm === "one" && part.words === 1 && !countsSomething(norms, at, lexer) ? null : part;
}

/** The first letters of "st", "nd", "rd" and "th". */
const ORDINAL_LETTERS = "snrt";

/** Digits are a day only with a slash, a dash, two points or an ordinal's letters in them ("3rd"), or before "days ago". */
function couldBeDay(norms: readonly string[], at: number): boolean {
  const word = norms[at]!;
  let points = 0;
  for (let place = 1; place < word.length; place += 1) {
    const code = word.charCodeAt(place);
    if (code === 46) points += 1;
    if (code === 47 || code === 45 || points === 2 || ORDINAL_LETTERS.includes(word[place]!)) return true;
  }
  return AFTER_DAYS.has(norms[at + 1] ?? "") || norms[at + 2] === "ago" || isDayBeforeMonth(norms, at);
}

/** "on 9 april", "9 april 2026", "tue, 9 april": the day before its month; the 22 of "sold desk 22 april 9" is a price. */
function isDayBeforeMonth(norms: readonly string[], at: number): boolean {
  const [next, year] = [norms[at + 1], norms[at + 2]];
  if (next === undefined || norms[at]!.length > 2 || MONTHS[next] === undefined) return false;
  if (at === 0 || BEFORE_DAY.has(norms[at - 1]!) || OPENS_NOTE.has(norms[at - 1]!)) return true;
  if (year?.length === 4 && /^20\d{2}$/.test(year)) return true;
  const weekday = norms[at - 1] === "," ? at - 2 : at - 1;
  if (WEEKDAYS[norms[weekday] ?? ""] === undefined) return isDayBesideNumber(norms, at);
  // "sold desk tue 22 april 9" may be either.
  return weekday === 0 || OPENS_NOTE.has(norms[weekday - 1]!) || !/^\d{1,2}$/.test(year ?? "");
}

const OPENS_NOTE: ReadonlySet<string> = new Set([".", ";"]);

/** "sold dresser 12 april for 150": another number is the price; the 12 of "paint 12 may 3" is one, "15 may come" no day. */
function isDayBesideNumber(norms: readonly string[], at: number): boolean {
  const behind = norms[at + 2] ?? "";
  if (/^\d/.test(behind) || (norms[at + 1] === "may" && behind !== "for" && /^\p{L}/u.test(behind)))
    return false;
  return norms.some(
    (norm, place) => place !== at && /^[$]?\d/.test(norm) && MONTHS[norms[place + 1] ?? ""] === undefined,
  );
}

/** "one of my coworkers": as "my coworker", and no number; "one of the two", "one of the oak chairs" count. */
function isSomebodyOfMany<Head>(norms: readonly string[], at: number, { lexicon }: Lexer<Head>): boolean {
  // "bought a pew off one of the barbacks": whom the words name.
  if (!ARTICLES_WIDE.has(norms[at + 2] ?? "") || WHOM.test(norms[at - 1] ?? "")) return false;
  for (let place = at + 3; place < at + 6; place += 1) {
    const word = norms[place];
    if (word === undefined || OF_THINGS.has(word)) return false;
    if (/^\d/.test(word) || smallNumberAt(norms, place)) return place > at + 3;
    const roles = lexicon.longest(norms, place)?.roles;
    if (roles?.noun !== undefined) return false;
    if (roles?.person || roles?.supply || roles?.heads) return true;
  }
  return true;
}

const WHOM = /^(?:off|from|to|by|with)$/;

/** "one dresser", "one of the chairs"; "the last one" counts nothing. */
function countsSomething<Head>(norms: readonly string[], at: number, lexer: Lexer<Head>): boolean {
  if (norms[at + 1] === "of") {
    // "off one of the barbacks": somebody, and no number of pieces.
    return !WHOM.test(norms[at - 1] ?? "") || lexer.lexicon.longest(norms, at + 3)?.roles.noun !== undefined;
  }
  const roles = lexer.lexicon.longest(norms, at + 1)?.roles;
  return roles?.noun !== undefined || roles?.trait === true || roles?.supply !== undefined;
}

/** "1/2 plywood", "plywood 1/2", "1/4 round trim": how thick it is. */
function isOfSupply<Head>(norms: readonly string[], at: number, { lexicon }: Lexer<Head>): boolean {
  const isSupply = (place: number): boolean => lexicon.longest(norms, place)?.roles.supply !== undefined;
  const isDescribed = lexicon.longest(norms, at + 1)?.roles.trait === true && isSupply(at + 2);
  return isSupply(at + 1) || isDescribed || (at > 0 && isSupply(at - 1));
}

/** "1/2 hour" and "1/2 inch" are no first of February. */
function slashIsFraction<Head>(norms: readonly string[], at: number, lexer: Lexer<Head>): boolean {
  if (!FRACTIONS.has(norms[at]!)) return false;
  const next = norms[at + 1] ?? "";
  if (isOfSupply(norms, at, lexer)) return true;
  return (
    HOURS.has(next) ||
    /^(?:an?|of|inch|off|in|gallon|quart|price|pint|yard|done|finished|sanded|painted|stripped|through|full|complete)$/.test(
      next,
    )
  );
}

/** "the 3rd dresser" counts dressers, not days. */
function isRankOfNoun<Head>(
  found: { said: DaySaid; words: number },
  norms: readonly string[],
  at: number,
  lexer: Lexer<Head>,
): boolean {
  if (found.said.form !== "dayOfMonth") return false;
  if (
    /^(?:street|st|ave|avenue|road|rd|grade|floor|time|try|attempt|one|place|owner|offer|buyer|person|customer|guy|lady|week|sale|flip|piece)$/.test(
      norms[at + found.words] ?? "",
    )
  )
    return true;
  return lexer.lexicon.longest(norms, at + found.words)?.roles.noun !== undefined;
}
