import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Tok } from "./clause.ts";
import { lexed } from "./lexed.ts";
import { passingIn, saysNothing } from "./passed-over/passing.ts";
import { comingDay, pastDay } from "./quantities/days.ts";
import { readPart } from "./read.ts";
import type { Mention, Reading } from "./reading.ts";
import { settlings } from "./rows/settling.ts";
import { centsIn } from "./slots/money.ts";
import { isWholeNote } from "./unclear.ts";
import { INTERJECTIONS } from "./words/links.ts";
import { ALSO_NAMED, BEFORE_NAMES, LIKE_SOMEBODY, PLACING, SOMEBODY_NAMED } from "./words/names.ts";
import { ANYBODYS, HOUSEHOLD } from "./words/people.ts";
import {
  BEFORE_SUM,
  BESIDE_HOME,
  BESIDE_SETTLING,
  COMES_HOME,
  COMES_OR_GOES,
  GOES_BACK,
  RETURNED,
  type Says,
  saysOf,
  TO_WHOM,
} from "./words/settling.ts";
import { RIDES } from "./words/visits.ts";
import { saysAny } from "./words/words.ts";

/*
 * Messages that settle what stands: about somebody who owes or who holds a piece, or a thing that was lent. They are told
 * by names that are known, which may be any words; every other word has to be of one of a few kinds.
 */

/** What a message of such words says. */
export interface Told {
  who?: string;
  /** "he", "the buyer", or that money came in: somebody other than us. */
  isTheirs: boolean;
  says: Set<Says>;
  amounts: Cents[];
  mention?: Mention;
  method?: string;
  date?: Day;
  /** The day on which they come. */
  until?: Day;
  /** Words that are of none of the kinds. */
  left: string[];
  /** One of them turns what is told: "says", "will". */
  isDoubtful?: boolean;
}

/** What is told, in which words, and what became of the piece then. */
export interface Settling {
  told: Told;
  text: string;
  after: readonly Reading[];
}

const LENGTH_MAX = 120;

/** "so sam who put 40 down on the desk? flaked": it is asked of nobody. */
export const WHO_IS_MEANT = /^[^?]*\b(?:who|guy|lady|one)\b[^?]*\?[^?]*\w[^?]*$/i;

/** Where a message may go on with what became of the piece then: "…, gave him his 25 back and sold it to a student 150". */
const JOINT = /(?:,? and|,|[.;!]+)(?: then| so)? /gi;

/** A whole note of the piece, or of one that it names. */
const isWhole = (reading: Reading): boolean => {
  // "then another guy bought the desk 150": a sale, as the books tell.
  if (reading.kind === "unclear")
    return reading.byBooks === true && reading.could?.length === 1 && reading.could.every(isWhole);
  return NEXT_KINDS.has(reading.kind) && (reading.follows === true || reading.missing === undefined);
};

const NEXT_KINDS: ReadonlySet<Reading["kind"]> = new Set([
  "sell",
  "list",
  "reprice",
  "spend",
  "hold",
  "pay",
  "drive",
  "income",
]);

/** The words of a message, and those beside the first of the names that stands in it. */
export function besideName(text: string, names: readonly string[]): { who?: string; rest: string } {
  const said = ` ${text
    .toLowerCase()
    .replace(/['’]s\b/g, "")
    .replace(/[.!,]+(?= |$)/g, " ")
    .replace(/\s+/g, " ")} `;
  for (const who of names)
    for (const called of [who, `${who}s`, ...calledElse(who, names)])
      if (said.includes(` ${called} `)) return { who, rest: said.replace(moreOf(said, called), " ") };
  return { rest: said };
}

/** Somebody with what they are like and where they are: "the lady down the street" where "lady" is known. */
function moreOf(said: string, called: string): string {
  if (!isAnybody(called)) return ` ${called} `;
  const [before, behind] = said.split(` ${called} `, 2) as [string, string];
  const [ahead, place] = [before.split(" "), behind.split(" ")];
  let from = ahead.length;
  while (from > 0 && LIKE_SOMEBODY.has(ahead[from - 1]!)) from -= 1;
  if (from > 0 && ANYBODYS.has(ahead[from - 1]!)) from -= 1;
  const isPlaced = PLACING.has(place[0]!) && place.length > 1;
  const to = isPlaced ? (BEFORE_NAMES.has(place[1]!) ? 3 : 2) : 0;
  return ` ${[...ahead.slice(from), called, ...place.slice(0, to)].join(" ")} `;
}

/** Called by what they are, and by no name. */
function isAnybody(called: string): boolean {
  const head = called.split(" ").at(-1)!;
  return SOMEBODY_NAMED.has(head) || ALSO_NAMED.has(head);
}

/**
 * "lady in the red truck" is also "red truck lady" and "truck lady", "girl named tess" is "tess", and "big mike" is "mike"
 * where nobody else is.
 */
function calledElse(name: string, names: readonly string[]): string[] {
  // "rays wife" is typed "ray's wife" as well, and "ray" may come in her place.
  const [, whose, kin] = /^(\S{2,})s (\S+)$/.exec(name) ?? [];
  if (whose && kin && HOUSEHOLD.has(kin)) return [`${whose} ${kin}`, whose];
  const [, last] = /^\S+ (\S{3,})$/.exec(name) ?? [];
  if (last) return names.some((other) => other !== name && other.split(" ").includes(last)) ? [] : [last];
  const [, given] = / (?:named|called) (\S+)$/.exec(name) ?? [];
  if (given) return [given, `${given}s`];
  const [, head, of] = /^(\S+) (?:in|with|from|at|of|w) (?:the |a |an |my |her |his )?(.+)$/.exec(name) ?? [];
  return head && of ? [`${of} ${head}`, `${of.split(" ").at(-1)} ${head}`] : [];
}

/** Where whole notes stand behind a joint of a message: what is said before, and those notes. */
export function partedIn(text: string, today: Day): { said: string; after: readonly Reading[] }[] {
  return [...text.matchAll(JOINT)].reverse().flatMap(({ 0: joint, index }) => {
    const after = readPart(text.slice(index + joint.length), today);
    return after.length > 0 && after.every(isWhole) ? [{ said: text.slice(0, index), after }] : [];
  });
}

/** "dana didn't back out": still there. */
const STAYS_IN =
  /\b(?:didn['’]?t|did not|hasn['’]?t|has not|never|not)\s+(?:back|bail|flak|drop|cancel|ghost|pull)\w*\s?(?:out|off)?\b/i;

/**
 * What a message about one of the names, or about a buyer who needs none, may tell: all of it together, or up to a joint
 * with a whole note behind. None where it may say anything else.
 */
export function settlingsIn(text: string, names: readonly string[], today: Day): Settling[] {
  if (text.length > LENGTH_MAX || (text.includes("?") && !WHO_IS_MEANT.test(text)) || STAYS_IN.test(text))
    return [];
  if (asksOf(text, names)) return [];
  const told = toldIn(text, names, today);
  const whole = told ? [{ told, text, after: [] }] : [];
  if (told && told.left.length === 0 && told.amounts.length < 2) return whole;
  const parted = partedIn(text, today).flatMap(({ said, after }) => {
    const before = toldIn(said, names, today);
    return before && before.left.length === 0 ? [{ told: before, text: said, after }] : [];
  });
  return told && told.left.length === 0 ? [...whole, ...parted] : [...parted, ...whole];
}

/** "ben did fetch it" tells, "did ben fetch it" and "is carol paid up" ask. */
function asksOf(text: string, names: readonly string[]): boolean {
  const asked = ASKS_OF.exec(text.toLowerCase());
  if (!asked) return false;
  const behind = `${text.slice(asked[0].length).toLowerCase()} `;
  return (
    asked[1] === "did" ||
    /^(?:he|she|they|everybody|everyone|the) /.test(behind) ||
    names.some((name) => behind.startsWith(`${name} `))
  );
}
const ASKS_OF =
  /^\s*(?:(?:hey|hi|so|and|but|ok|okay|um|wait|well),? )*(did|is|are|does|do|has|have|was|were|will|would|can|could) /;

/** "i", "we" but for what became of their money, and "she paid 12 for it", a price of what was spoken of. */
const OUR_OWN =
  /\b(?:i|we)\b(?! (?:(?:am |m )?(?:never|not) |(?:had |did )?(?:warn(?:ed)?|told|said)|kept|keep|gave|sent|refunded|returned|handed|let|still have)\b)|\bfor (?:it|that|them)\b/;

/** Whose money it was that stays here: "keeping his 50". */
const THEIR_OWN = /\b(?:his|her|their|him|them|he|she|they)\b/;

function toldIn(text: string, names: readonly string[], today: Day): Told | null {
  const { who, rest } = besideName(text, names);
  const told: Told = {
    ...(who ? { who } : {}),
    isTheirs: who !== undefined,
    says: new Set(),
    amounts: [],
    left: [],
  };
  const tokens = lexed(rest);
  const fired = settlings.fired(tokens);
  for (const { effect, from, to } of fired) {
    const isOfDay = effect === "comes" || effect === "moved";
    const day = isOfDay ? tokens.slice(from, to).findLast(({ kind }) => kind === "day") : undefined;
    const until = day && comingDay(day.said!, today);
    // The day behind: "cant do monday, wants thursday".
    if (until) told.until = until;
  }
  // In their order: "returned 30 of the 40, held on to 10" tells first what of it went back.
  const isRead = tokens.every((_, at) => {
    const row = fired.find(({ from, to }) => at >= from && at < to);
    if (row) told.says.add(row.effect);
    return row !== undefined || takes(told, tokens, at, today);
  });
  if (told.left.length > 0) withoutAsides(told, tokens, text);
  const { says, amounts } = told;
  if (
    !isRead ||
    (says.has("theirs") && who === undefined) ||
    (says.has("wants") && !(["out", "comes", "back"] as const).some((each) => says.has(each)))
  )
    return null;
  if (who === undefined && saysAny(text, TO_WHOM)) return null;
  if (who === undefined && (told.left.length > 0 || (!says.has("moved") && OUR_OWN.test(rest)))) return null;
  told.isTheirs ||=
    says.has("payer") ||
    says.has("fetched") ||
    says.has("moved") ||
    (says.has("comes") && amounts.length === 1) ||
    (says.has("kept") && THEIR_OWN.test(rest)) ||
    amounts.length === (says.has("never") ? 1 : 2);
  return told;
}

/** "omar gave me his 60 at yoga, sweet boy": where is told beside it, and what is thought of it behind. */
function withoutAsides(told: Told, tokens: readonly Tok[], text: string): void {
  const said = text.replace(/[\s.!]+$/, "");
  const behind = lexed(said.slice(said.search(/[,.;!-]+ [^,.;!]*$/) + 1));
  // "another 30 in paint for the desk": what was bought is no place.
  const aside = [...passingIn(tokens), ...(behind.every(saysNothing) ? behind : [])]
    .filter(({ roles, text: word }) => !roles.supply || RIDES.has(word))
    .map((token) => token.text);
  told.left = told.left.filter((word) => !aside.includes(word));
}

/** Notes what a token tells; false where a message with it may say anything else. */
function takes(told: Told, tokens: readonly Tok[], at: number, today: Day): boolean {
  const token = tokens[at]!;
  const { kind, text: word, roles } = token;
  if (kind === "mark") return true;
  // "kept the other 20": of money, as often as of a piece.
  if (kind === "piece" && token.mention!.other && token.mention!.name === undefined) told.says.add("all");
  else if (kind === "piece" && !told.mention && !token.mention!.it) told.mention = token.mention!;
  else if (kind === "amount" && !token.each) {
    const cents = centsIn(token);
    if (cents === null) return false;
    told.amounts.push(cents);
  } else if (kind === "day") {
    const found = pastDay(token.said!, today);
    if (!("day" in found)) return false;
    told.date = found.day;
  } else if (kind !== "word") return false;
  else if (roles.method !== undefined) told.method = roles.method;
  // "settled up via paybee": any word behind it is how.
  else if (word === "via" || tokens[at - 1]?.text === "via") told.method = word;
  // "oscar wired me the 10": sent in some way or other.
  else if (told.who && token.unknown && isSentSomehow(tokens, at)) told.says.add("paid");
  else if (COMES_OR_GOES.has(word) && !isMoneyBack(tokens, at)) return true;
  else if (!takesWord(told, word) && !roles.opinion) {
    if (told.who === undefined) return false;
    told.left.push(word);
    told.isDoubtful ||= roles.hedge !== undefined;
  }
  return true;
}

/** "gave him his 25 back", "returned the deposit"; it is they who are "back at noon" and "returned with a van". */
function isMoneyBack(tokens: readonly Tok[], at: number): boolean {
  const isStop = ({ kind }: Tok): boolean => kind === "mark";
  const ahead = tokens.slice(tokens.slice(0, at).findLastIndex(isStop) + 1, at);
  if (ahead.some((token) => token.kind === "amount" || GOES_BACK.has(token.text))) return true;
  const next = tokens[at + 1];
  return next !== undefined && (next.kind === "amount" || RETURNED.has(next.text));
}

/** "… me the 10", behind an unknown verb. */
function isSentSomehow(tokens: readonly Tok[], at: number): boolean {
  if (!/e?d$/.test(tokens[at]!.text)) return false;
  const next = tokens.findIndex(({ text }, place) => place > at && !BEFORE_SUM.has(text));
  return next > at + 1 && tokens[next]?.kind === "amount";
}

/** Notes what a word, or each word of a phrase, tells; false where one is of none of the kinds. */
function takesWord({ says }: Told, word: string): boolean {
  const found = saysOf(word);
  for (const each of found) says.add(each);
  if (found.length > 0 || BESIDE_SETTLING.has(word) || INTERJECTIONS.has(word)) return true;
  const words = word.split(" ");
  return words.length > 1 && words.every((one) => takesWord({ says } as Told, one));
}

const NEXT_NOTE = /^(.+?)(?:,? and|,|[.;])(?: then)? (.+)$/i;

/** Names of a thing that was lent, and of who had it. */
export interface Lent {
  names: readonly string[];
  to: string | undefined;
  /** Nothing was noted since. */
  isNewest?: boolean;
}

/** Which of the things lent, the newest first, is back, and the whole note behind it; null where anything else is said. */
export function homeIn<L extends Lent>(
  text: string,
  lentOut: () => readonly L[],
  today: Day,
): { back: L; text: string; after: readonly Reading[] } | null {
  // Nearly every message says none of these.
  const words = text.toLowerCase().split(/[^a-z]+/);
  if (!words.some((word) => COMES_HOME.has(word))) return null;
  const lent = lentOut();
  const [, first, next] = NEXT_NOTE.exec(text) ?? [];
  const whole = whichIsHome(text, lent);
  if (whole) return { back: whole, text, after: [] };
  const back = first && next ? whichIsHome(first, lent) : null;
  if (!first || !next || !back) return null;
  const after = readPart(next, today);
  const isWhole = after.length > 0 && after.every(isWholeNote);
  return isWhole ? { back, text: first, after } : null;
}

function whichIsHome<L extends Lent>(text: string, lent: readonly L[]): L | null {
  for (const each of lent) {
    const { names, to, isNewest } = each;
    const thing = besideName(text, names);
    // Who had it, by all of the name or its last word: "uncle ray", "ray".
    const { who, rest } = besideName(thing.rest, to === undefined ? [] : [to, to.split(" ").at(-1)!]);
    const words = rest.trim().split(" ");
    // "joe brought it back", where joe has one thing of ours.
    const isAlone = lent.filter((other) => other.to === to).length === 1;
    // "she gave it back" right behind the loan.
    const isTheirs = isNewest && words.some((word) => saysOf(word).includes("payer"));
    const isIt = words.includes("it") && isAlone && (who !== undefined || isTheirs);
    if (thing.who === undefined && !isIt) continue;
    const isHome = words.some((word) => COMES_HOME.has(word));
    if (isHome && words.every((word) => COMES_HOME.has(word) || BESIDE_HOME.has(word))) return each;
  }
  return null;
}
