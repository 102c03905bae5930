import { type Clause, placeBefore, type Tok } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { isKin } from "../mentions/kin.ts";
import { passingIn } from "../passed-over/passing.ts";
import type { Kind } from "../reading.ts";
import { isTurned } from "../tokens/roles.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { NO_ROLES } from "../tokens/token.ts";
import { bears, language } from "../verbs.ts";
import { isCommon, TURNS_FACT } from "../words/daily.ts";
import { NEAR_AMOUNT, PLANS, WISHES } from "../words/doubts.ts";
import { VISITED } from "../words/hedges.ts";
import { AND, ARTICLES_WIDE, INTERJECTIONS, JOINS_THINGS, THEY } from "../words/links.ts";
import { ASKS_FOR } from "../words/money.ts";
import { DETERMINERS, WITH } from "../words/names.ts";
import { ONE_OF_US } from "../words/people.ts";
import { NEARLY } from "../words/replies.ts";
import { MONTHS_ALONE } from "../words/times.ts";
import { couldCount } from "./price-parts.ts";

/*
 * What is enough to record, what is asked, and what is unclear. In this order, so that of two reasons the
 * same one is always given:
 *
 *  1. A word that makes it no fact (intention, offer, appointment, denial, doubt, "about 40"): unclear.
 *  2. A slot that found a number it may not trust (three decimals, negative, over 1,000,000, a range, two
 *     amounts for one field, "each" of nobody knows how many, a day to come or too wide): unclear.
 *  3. A number, duration, distance or percent that no slot took: unclear, it must have meant something.
 *  4. A thing of another kind in the same clause (a supply in a sale, a stream in a purchase): unclear.
 *  5. Someone else as the one who bought or paid: unclear.
 *  6. A word that nobody listed and no slot took: unclear, with what the rest would be.
 *  7. A needed field that is not there: missing, and asked for.
 *  8. Anything else is recorded as read.
 */

/** Rule 1. */
export function hedgeTrouble(clause: Clause, kind?: Kind): Trouble | null {
  const { tokens } = clause;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (token.kind === "mark" && token.text === "~") return { kind: "vagueAmount" };
    // "desk took 3 hours so far": how much of it is of this note?
    if (token.kind === "duration" && token.roles.hedge)
      return { kind: token.roles.hedge === "vague" ? "vagueAmount" : token.roles.hedge };
    if (token.kind !== "word") continue;
    if (tokens[at + 1]?.kind === "amount") {
      // "mar 40" is no day, and 40 no price.
      if (MONTHS_ALONE.has(token.text)) return { kind: "unrealDay" };
      // "like 40" is not 40.
      if (token.text === "like") return { kind: "vagueAmount" };
    }
    const { hedge, heads } = token.roles;
    if (!hedge) continue;
    if (kind !== undefined && bears(kind, "wish") && WISHES.has(token.text)) continue;
    // "100 now 40 later" of 140: both parts are settled.
    if (hedge === "part paid" && token.claimed) continue;
    if (isTurned(token.roles)) return { kind: hedge === "vague" ? "vagueAmount" : hedge };
    if (
      token.claimed ||
      heads ||
      isHarmless(clause, token, kind) ||
      (kind === "buy" && isPlanForIt(tokens, at, "amount")) ||
      (kind === "finish" && isPlanForIt(tokens, at, "word"))
    )
      continue;
    if (hedge === "offer" && isOurAsking(clause, at)) return { kind: "asking" };
    // "offered 100 for the desk. declined": it is known what became of it.
    if (hedge === "offer" && tokens.some(({ roles }) => isTurned(roles) && roles.hedge === "denial"))
      return { kind: "denial" };
    // "guy came to look at the hutch, didn't buy": they have been.
    if (hedge === "appointment" && tokens.some(({ text }) => VISITED.has(text)) && tokens.some(isDenied))
      return { kind: "denial" };
    return { kind: hedge === "vague" ? "vagueAmount" : hedge };
  }
  return null;
}

const isDenied = ({ roles }: Tok): boolean => roles.hedge === "denial";

/** "desk done, asking 120 for it": nobody else who asks stands before it, or pays. */
function isOurAsking({ tokens, signs }: Clause, at: number): boolean {
  if (!ASKS_FOR.has(tokens[at]!.text) || tokens[at + 1]?.kind !== "amount" || signs.has("person"))
    return false;
  const isBare = ({ kind, text }: Tok) => kind === "mark" || INTERJECTIONS.has(text) || AND.has(text);
  const isBehind = ({ kind, text, roles }: Tok) =>
    kind === "piece" || kind === "mark" || (kind === "word" && roles.filler === true && !THEY.has(text));
  return tokens.slice(0, at).every(isBare) && tokens.slice(at + 2).every(isBehind);
}

/** "bought desk 40 needs paint": what is to become of it takes nothing from the purchase, or from its being done. */
function isPlanForIt(tokens: readonly Tok[], at: number, said: "amount" | "word"): boolean {
  if (!PLANS.has(tokens[at]!.text)) return false;
  const before = tokens.slice(0, at);
  return (
    before.some((token) => token.kind === "piece") &&
    before.some((token) =>
      said === "amount" ? token.kind === said || token.text === "free" : token.roles.heads !== undefined,
    )
  );
}

/** "about 40" is not 40; "changed her mind about the hutch" says nothing of amounts. */
function isHarmless(clause: Clause, token: Tok, kind: Kind | undefined): boolean {
  // "sandpaper 8 for later"
  if (token.text === "later") return clause.tokens[clause.tokens.indexOf(token) - 1]?.text === "for";
  // "drove 15 miles, nothing good out there"
  if (token.text === "nothing") return clause.tokens[clause.tokens.indexOf(token) - 1]?.kind === "mark";
  if (token.text === "half off") return isPriceAfter(clause, token);
  if (!NEAR_AMOUNT.test(token.text)) return false;
  // "about 2 hours on the desk": nobody counts the minutes.
  if (
    kind === "work" &&
    NEARLY.has(token.text) &&
    clause.tokens[clause.tokens.indexOf(token) + 1]?.kind === "duration"
  )
    return true;
  const next = clause.tokens
    .slice(clause.tokens.indexOf(token) + 1)
    .find((word) => !/^(?:the|a|an|maybe|like)$/.test(word.text));
  return next?.kind !== "amount" && next?.kind !== "duration" && next?.kind !== "miles";
}

/** "bought desk half off for 40": 40 is what it came to. */
function isPriceAfter({ tokens }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  return tokens[at + 1]?.text === "for" && tokens[at + 2]?.kind === "amount";
}

/** Rules 3 to 6. */
export function leftoverTrouble(kind: Kind, clause: Clause): Trouble | null {
  let found: Trouble["kind"] | null = null;
  for (const token of clause.tokens) {
    if (token.claimed || token.kind === "mark") continue;
    const trouble = leftover(kind, clause, token);
    if (trouble && (!found || RANK.indexOf(trouble) < RANK.indexOf(found))) found = trouble;
  }
  if (found) return { kind: found };
  if (
    clause.signs.has("person") &&
    !bears(kind, "others act") &&
    !isMyself(clause) &&
    somebodyElse(kind, clause)
  )
    return { kind: "anotherPerson" };
  return leftTokens(kind, clause).length > 0 ? { kind: "left" } : null;
}

/** The words of a clause that no slot took and nobody knows. */
export function leftWords(kind: Kind, clause: Clause): string[] {
  return leftTokens(kind, clause).map(({ text }) => text);
}

function leftTokens(kind: Kind, { tokens, head }: Clause): Tok[] {
  const left = tokens.filter(isLeft);
  if (left.length === 0) return left;
  const passing = passingIn(tokens, bears(kind, "things beside"));
  const verb = head && bears(kind, "everyday words") ? tokens.indexOf(head) : tokens.length;
  return left.filter((token) => {
    const at = tokens.indexOf(token);
    return !passing.has(token) && !(at > verb && saysNothingAt(tokens, at));
  });
}

const isLeft = ({ kind, claimed, unknown }: Tok): boolean => kind === "word" && !claimed && unknown === true;

/**
 * "sold the console 140, the machine died"; "sold the desk and the churn" may be of two, "60 on tick" is not paid. What was
 * bought, paid for or lent may be any word, and fates have figures of speech: of those kinds none is asked.
 */
function saysNothingAt(tokens: readonly Tok[], at: number): boolean {
  const { text } = tokens[at]!;
  if (!isCommon(text) || TURNS_FACT.has(text)) return false;
  const before = tokens[placeBefore(tokens, at - 1, ARTICLES_WIDE)];
  const next = tokens[at + 1];
  return !(before && JOINS_THINGS.has(before.text)) && !(next?.unknown && next.claimed);
}

/** Of two things left over the same one is always named. */
const RANK: readonly Trouble["kind"][] = [
  "unreadNumber",
  "unclaimed",
  "eachOfUnknown",
  "twoKinds",
  "vagueTime",
  "future",
  "whichDay",
];

/** What one token that no slot took makes of the clause. */
function leftover(kind: Kind, clause: Clause, token: Tok): Trouble["kind"] | null {
  if (token.kind === "piece") return "twoKinds";
  if (token.kind === "grain") return null;
  // "sold bookshelf 55 at 3pm": the hour of a fact is kept nowhere.
  if (token.kind === "clock" && (clause.head || kind === "spend" || kind === "work") && kind !== "nudge")
    return null;
  // What is still to pay, or was agreed on, of no sale and of nothing held; "finished the desk, 2 to go" counts others.
  const isSum = token.roles.agreed || (token.roles.owed && token.amount && !couldCount(token));
  if (isSum && language().grammars.get(kind)!.main !== null) return "unclaimed";
  if (token.kind !== "word") return token.kind === "day" ? "vagueTime" : "unclaimed";
  if (token.roles === NO_ROLES && isUnreadNumber(token.text)) return "unreadNumber";
  if ((token.hints & HINTS.each) !== 0 && !isEachOfAmount(clause, token)) return "eachOfUnknown";
  if (isAnotherThing(token) && !bears(kind, "things beside") && !isDescription(clause, token))
    return "twoKinds";
  if (token.roles.vagueTime && token.text.includes("weekend") && saysWeekendDay(clause)) return null;
  if (token.roles.vagueTime && token.text.startsWith("next ")) return "future";
  return token.roles.vagueTime || isMonthAlone(clause, token) ? "whichDay" : null;
}

/** "over the weekend, on saturday": the day is said. */
function saysWeekendDay({ tokens }: Clause): boolean {
  return tokens.some(
    ({ said }) =>
      said?.form === "weekday" && said.which === undefined && (said.weekday === 0 || said.weekday === 6),
  );
}

/** "each" beside an amount has been read with it. */
function isEachOfAmount({ tokens }: Clause, token: Tok): boolean {
  return tokens[tokens.indexOf(token) + 1]?.each === true;
}

/** "ads 240 june": a month is no day; "may" and "march" are months only after "in" and the like. */
function isMonthAlone({ tokens }: Clause, token: Tok): boolean {
  if ((token.hints & HINTS.month) === 0) return false;
  return (
    !/^(?:may|mar|march|sep|dec|jan)$/.test(token.text) ||
    /^(?:in|for|of|since|during|from)$/.test(tokens[tokens.indexOf(token) - 1]?.text ?? "")
  );
}

/** A number nobody could read ("1.2.3"); sizes and decades ("6ft", "1950s") say nothing about money. */
export function isUnreadNumber(text: string): boolean {
  return /\d/.test(text) && !/^\d{1,4}(?:s|ft|in|inch|'|")$/.test(text);
}

/** "bought desk 20, missing a drawer": after the price, and not joined on by "and". */
function isDescription({ tokens }: Clause, token: Tok): boolean {
  const at = tokens.indexOf(token);
  let before = at - 1;
  while (before >= 0 && /^(?:a|an|the|some|my|new|more)$/.test(tokens[before]!.text)) before -= 1;
  const joined = /^(?:and|&|\+|,|plus)$/.test(tokens[before]?.text ?? "");
  const price = tokens.findIndex((other) => other.kind === "amount");
  const piece = tokens.findIndex((other) => other.kind === "piece");
  return !joined && piece >= 0 && piece < price && price < at;
}

function isAnotherThing(token: Tok): boolean {
  if (token.kind !== "word") return false;
  const { supply, stream, trait, filler, heads, method, person, noun } = token.roles;
  return (
    (supply !== undefined || stream !== undefined) &&
    !trait &&
    !filler &&
    !heads &&
    !method &&
    !person &&
    !noun
  );
}

/** "our neighbor is moving, so i bought his bureau", "a neighbor gave me a washstand". */
function isMyself({ tokens, head }: Clause): boolean {
  if (!head) return false;
  const before = tokens[tokens.indexOf(head) - 1]?.text;
  return (
    before === "i" ||
    before === "we" ||
    /^(?:gave (?:me|us)|let (?:me|us) have|threw(?: in)?|tossed(?: in)?)$/.test(head.text)
  );
}

/**
 * "lady bought the hutch", "he paid 40": before the verb, or the time or the way where there is none, stands someone who
 * is not the owner.
 */
function somebodyElse(kind: Kind, { tokens, head }: Clause): boolean {
  const at = head ? tokens.indexOf(head) : tokens.findIndex(({ kind: told }) => NUMBERS.has(told));
  const before = tokens.slice(0, at < 0 ? tokens.length : at);
  const isOfShop = (token: Tok): boolean =>
    (bears(kind, "ours to do") && ONE_OF_US.has(token.text)) || isAlong(tokens, tokens.indexOf(token));
  return before.some(
    (token) =>
      token.kind === "word" &&
      token.roles.person &&
      !token.claimed &&
      !token.roles.filler &&
      !isOfShop(token),
  );
}

/** "sanded the desk with mom, 2 hours" */
const isAlong = (tokens: readonly Tok[], at: number): boolean =>
  isKin(tokens[at]!) && WITH.has(tokens[placeBefore(tokens, at - 1, DETERMINERS)]?.text ?? "");

const NUMBERS: ReadonlySet<Tok["kind"]> = new Set(["duration", "miles"]);
