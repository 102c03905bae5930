import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { Tok } from "./clause.ts";
import { withMentions } from "./mentions/mentions.ts";
import { wholeOf } from "./quantities/amounts.ts";
import { comingDay, pastDay } from "./quantities/days.ts";
import type { Kind, Mention } from "./reading.ts";
import { centsIn } from "./slots/money.ts";
import { meantBy } from "./tokens/meant.ts";
import { wordsOf } from "./tokens/text.ts";
import { tokensOf } from "./tokens/tokens.ts";
import { language } from "./verbs.ts";
import { THE_OTHER } from "./words/again.ts";
import { NEVER_MIND, NO, OF_ASKING, YES } from "./words/replies.ts";

/*
 * Answers to an open question. Each reader claims the whole text, fillers aside, or gives null: then the text
 * is a note of its own.
 */

const isFilling = (token: Tok): boolean =>
  (token.kind === "mark" && token.text !== "-" && token.text !== "~") ||
  (token.kind === "word" &&
    !token.roles.hedge &&
    (token.roles.filler === true ||
      token.roles.opinion === true ||
      /^(?:paid|about it|it was|that was|it is|actually|it cost|cost me|i paid)$/.test(token.text)));

function tokensOfAnswer(text: string): Tok[] {
  const { lexer } = language();
  return withMentions(tokensOf(meantBy(text, wordsOf(text), lexer), lexer));
}

/** "and the other 20": the price of the other one. */
const isOfOther = ({ text }: Tok): boolean => THE_OTHER.has(text);

/** The one token that is no filler and fits; null where anything else is said. */
function onlyToken(
  text: string,
  kind: Tok["kind"],
  aside: (token: Tok) => boolean = () => false,
): Tok | null {
  const said = tokensOfAnswer(text);
  if (kind === "amount" && said.some(isOfOther)) return null;
  const tokens = said.filter((token) => !isFilling(token) && !aside(token));
  const [token] = tokens;
  return tokens.length === 1 && token!.kind === kind ? token! : null;
}

/** "35", "$35", "35 bucks", "thirty five", "12.50 cash": whole cents; "free" is 0 only where that is offered. */
export function readBareMoney(text: string): Cents | null {
  if (tokensOfAnswer(text).some((word) => OF_ASKING.has(word.text))) return null;
  const token = onlyToken(text, "amount", (word) => word.kind === "word" && word.roles.method !== undefined);
  if (!token || token.each) return null;
  return centsIn(token);
}

/** "lamp 6", "the hutch was 180 cash": a piece and its money, and nothing else that could turn them. */
export function isNamedMoney(text: string): boolean {
  const said = tokensOfAnswer(text).filter(
    (token) => !isFilling(token) && !(token.kind === "word" && token.roles.method),
  );
  return (
    said.length === 2 &&
    said.some(({ kind }) => kind === "piece") &&
    said.some(({ kind }) => kind === "amount")
  );
}

/** How it was paid, where a bare amount says so: "12.50 cash". */
export function readBareMethod(text: string): string | null {
  const said = tokensOfAnswer(text).flatMap((token) =>
    token.kind === "word" && token.roles.method ? [token.roles.method] : [],
  );
  return said.length === 1 ? said[0]! : null;
}

/** The pieces that a text names, whatever it says of them. */
export const mentionsSaid = (text: string): Mention[] =>
  tokensOfAnswer(text).flatMap(({ mention }) => (mention && !mention.it ? [mention] : []));

/** "#4", "dresser", "the white dresser", "the tall one" (traits alone). */
export function readBareMention(text: string): Mention | null {
  const tokens = tokensOfAnswer(text);
  const pieces = tokens.filter((token) => token.kind === "piece");
  const others = tokens.filter(
    (token) => token.kind !== "piece" && !isFilling(token) && token.text !== "one",
  );
  if (pieces.length === 1 && others.length === 0) return pieces[0]!.mention!;
  if (pieces.length > 0) return null;
  return traitsAlone(tokens);
}

function traitsAlone(tokens: readonly Tok[]): Mention | null {
  const words = tokens.filter((token) => token.kind === "word" && (token.roles.trait || token.unknown));
  const known = words.filter((token) => token.roles.trait);
  const pointed =
    tokens.some((token) => token.kind === "amount" && token.text === "one") ||
    tokens.some((token) => /^ones?$/.test(token.text));
  const rest = tokens.filter(
    (token) => !words.includes(token) && !isFilling(token) && !/^ones?$/.test(token.text),
  );
  if (rest.length > 0 || words.length === 0 || (!pointed && known.length !== words.length)) return null;
  return { traits: words.map((token) => token.text) };
}

/** Whether a text says what a kind of note says, or no verb at all: "pending at 180" gives no price to a purchase. */
export function saysNoOther(text: string, kind: Kind): boolean {
  return tokensOfAnswer(text).every(
    ({ roles: { heads } }) => !heads || heads.some((head) => head.kind === kind),
  );
}

/** The same of a verb that may be of several kinds: "took pics" names no piece that money was given back on. */
export function saysOnly(text: string, kind: Kind): boolean {
  return tokensOfAnswer(text).every(
    ({ roles: { heads } }) => !heads || heads.every((head) => head.kind === kind),
  );
}

/** A day as an answer: "yesterday", "sat", "3/14"; the latest not after today, or the one to come where only that fits. */
export function readBareDay(text: string, today: Day): Day | null {
  if (/^\s*(?:today|tdy|tonight|just now|now|this morning)\s*[.!]*\s*$/i.test(text)) return today;
  const token = onlyToken(text, "day");
  if (!token?.said) return null;
  const past = pastDay(token.said, today);
  return "day" in past ? past.day : comingDay(token.said, today);
}

/** "45 min", "2h", "hour and a half": whole minutes. */
export function readBareDuration(text: string): number | null {
  return onlyToken(text, "duration")?.minutes ?? null;
}

/** "24", "24 miles", "18.5 mi": a plain decimal. */
export function readBareMiles(text: string): string | null {
  const measured = onlyToken(text, "miles");
  if (measured) return measured.miles ?? null;
  return plainDecimal(text);
}

/** "5.5", "5.5%", "6 percent": a plain decimal. */
export function readBarePercent(text: string): string | null {
  const said = onlyToken(text, "percent");
  if (said) return said.percent ?? null;
  return plainDecimal(text);
}

/** A rate at the end without its sign. */
const RATE_ALONE = /(?:\bat|@)\s*(\d{1,2}(?:\.\d{1,4})?)\s*$/i;
/** Words around a rate that say nothing beside it. */
const AROUND_RATE =
  /^(?:i|at|on|with|interest|rate|apr|yearly|annual|a year|per year|year|(?:i )?(?:still )?owe|owed|left|loan|%)$/;

/** "14,600 at 5.8%", "5.8 percent on 14600", "14,600": what is owed, and its rate where that is said. */
export function readBareLoan(text: string): { balance: Cents; rate?: string } | null {
  const tokens = tokensOfAnswer(text.replace(RATE_ALONE, "at $1%")).filter(
    (token) => !isFilling(token) && !AROUND_RATE.test(token.text),
  );
  const amounts = tokens.filter(({ kind }) => kind === "amount");
  const percents = tokens.filter(({ kind }) => kind === "percent");
  const [owed] = amounts;
  const [said] = percents;
  if (!owed || owed.each || owed.amount?.factors || amounts.length > 1 || percents.length > 1) return null;
  if (tokens.length !== amounts.length + percents.length) return null;
  const balance = centsIn(owed);
  if (balance === null || said?.percent === null) return null;
  return { balance, ...(said ? { rate: said.percent! } : {}) };
}

function plainDecimal(text: string): string | null {
  const token = onlyToken(text, "amount");
  const amount = token?.amount;
  if (
    !amount?.exact ||
    amount.flaw ||
    amount.factors ||
    token!.each ||
    /[$€£k]|bucks?|dollars?/.test(token!.text)
  )
    return null;
  const { digits, scale } = amount.exact;
  return String(digits / 10 ** scale);
}

const OF_THEM = /\s+of\s+(?:them|em|'em|those|these)\b/i;

const THERE_ARE = /^\s*(?:there|they)\s+(?:are|were)\s+/i;

/** "4", "four", "a pair": a whole number of pieces. */
export function readBareCount(text: string): number | null {
  const tokens = tokensOfAnswer(text.replace(OF_THEM, "").replace(THERE_ARE, ""));
  const words: Readonly<Record<string, number>> = { pair: 2, couple: 2, both: 2, dozen: 12 };
  const named = tokens.filter((token) => words[token.text] !== undefined);
  if (named.length === 1 && tokens.every((token) => token === named[0] || isFilling(token)))
    return words[named[0]!.text]!;
  const token = tokens.filter((other) => !isFilling(other));
  const [only] = token;
  if (token.length !== 1 || !only || tokens.some(isOfOther)) return null;
  if (only.kind === "piece")
    return only.mention?.plural || only.mention?.number !== undefined ? null : (only.mention?.count ?? null);
  if (only.kind === "count") return only.value ?? null;
  const whole =
    only.kind === "amount" && !only.amount?.money && !only.amount?.flaw
      ? wholeOf(only.amount?.exact ?? null)
      : null;
  return whole !== null && whole >= 1 && whole < 1000 ? whole : null;
}

/** A plain yes, no, or "never mind"; null where it is neither. */
export function readYesNo(text: string): "yes" | "no" | "never mind" | null {
  const words = text
    .toLowerCase()
    .replace(/['’]/g, "")
    .replace(/[^a-z0-9 ]+/g, " ")
    .replace(/ {1,50}/g, " ")
    .trim();
  if (words.length > 30) return null;
  if (YES.has(words)) return "yes";
  if (NO.has(words)) return "no";
  return NEVER_MIND.has(words) ? "never mind" : null;
}
