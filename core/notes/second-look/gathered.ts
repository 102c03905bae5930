import type { Day } from "../../calendar.ts";
import type { Cents } from "../../money.ts";
import type { Tok } from "../clause.ts";
import { lexed } from "../lexed.ts";
import { comingDay, pastDay } from "../quantities/days.ts";
import { smallNumberAt } from "../quantities/spelled.ts";
import type { Category, Mention } from "../reading.ts";
import { type TurnTold, telling } from "../rows/telling.ts";
import { centsIn } from "../slots/money.ts";
import { COUNTED_THINGS } from "../words/money.ts";
import { HOUSEHOLD } from "../words/people.ts";
import { BEFORE_NAME, BETWEEN, POLITE, SENT_BY, SOMEBODY, type Tells, tellsOf } from "../words/telling.ts";

/*
 * What is recognised in a message that nobody could read as a whole: its things, numbers and names, and what its words
 * tell one by one. Good for proposals, never for a record.
 */

export interface Gathered {
  text: string;
  line: number;
  tells: ReadonlySet<Tells | TurnTold>;
  words: readonly string[];
  /** Pieces named, "it" left out. */
  mentions: Mention[];
  /** In the order said, each way in which a torn one can be read. */
  amounts: Cents[];
  minutes: number[];
  miles: string[];
  supply?: { what: string; category: Category };
  /** What was done: "sanding". */
  labor?: string;
  method?: string;
  /** Who of the household did it, and whether anybody else is spoken of. */
  by?: string;
  isOthers: boolean;
  /** From whom or where it came, as said. */
  source?: string;
  /** "it", "that one": what was spoken of before. */
  isOfIt: boolean;
  /** A day gone by, and one to come. */
  date?: Day;
  until?: Day;
  /** A weekday alone, as one gone by: it may be the next as well. */
  weekday?: Day;
  /** Words that may be somebody's name, likeliest first. */
  names: string[];
  /** Which token an amount is, for what stands beside it. */
  tokens: readonly Tok[];
}

/** Whether a text asks something of the bot, rather than about the books. */
export const asksOfBot = (text: string): boolean => POLITE.test(text.trim());

export function gathered(asked: string, line: number, today: Day): Gathered {
  const text = asked.trim().replace(POLITE, "");
  const words =
    text
      .toLowerCase()
      .replace(/['’]/g, "")
      .match(/[\p{L}\p{N}]+/gu) ?? [];
  const tokens = lexed(text);
  const tells = new Set<Tells | TurnTold>(tellsOf(words));
  for (const { effect } of telling.every(tokens)) tells.add(effect);
  const found: Gathered = {
    text: asked,
    line,
    isOthers: false,
    isOfIt: false,
    tells,
    words,
    mentions: [],
    amounts: [],
    minutes: [],
    miles: [],
    names: [],
    tokens,
  };
  for (let at = 0; at < tokens.length; at += 1) gather(found, at, today);
  return found;
}

function gather(found: Gathered, at: number, today: Day): void {
  const { tokens } = found;
  const token = tokens[at]!;
  const { kind, mention, minutes, miles, roles, said } = token;
  if (kind === "piece" && (mention!.it || mention!.other)) found.isOfIt = true;
  else if (kind === "piece") found.mentions.push(mention!);
  else if (
    kind === "amount" &&
    token.text !== "one" &&
    !isCounted(token, tokens[at + 1]) &&
    !isHour(tokens, at)
  )
    found.amounts.push(...centsMeant(token));
  else if (kind === "duration" && minutes !== undefined) found.minutes.push(minutes);
  else if (kind === "miles" && miles !== undefined) found.miles.push(miles);
  else if (kind === "day") {
    const past = pastDay(said!, today);
    const coming = comingDay(said!, today);
    const isEither = said!.form === "weekday" && said!.which === undefined;
    if ("day" in past && past.day !== today) found[isEither ? "weekday" : "date"] = past.day;
    if (coming && coming !== today) found.until = coming;
  }
  if (kind !== "word") return;
  const before = tokens[at - 1]?.text ?? "";
  if (roles.method !== undefined) found.method = roles.method;
  if (roles.labor || roles.service || tellsOf([token.text]).has("served")) found.labor ??= token.text;
  const isFirst = found.mentions.length === 0 && found.amounts.length === 0;
  if (HOUSEHOLD.has(token.text) && isFirst && !BEFORE_NAME.has(before)) found.by ??= token.text;
  else if (roles.person) found.isOthers ||= isFirst;
  if (before === "from" && !SOMEBODY.has(token.text)) found.source ??= sourceAt(tokens, at);
  if (token.unknown && SENT_BY.has(before)) found.method ??= token.text;
  if (roles.supply && !roles.filler && !roles.heads) {
    const what = found.supply ? `${found.supply.what} and ${token.text}` : token.text;
    found.supply = { what, category: found.supply?.category ?? roles.supply };
  }
  if (token.unknown && /^\p{L}{2,}$/u.test(token.text)) {
    if (BEFORE_NAME.has(before)) found.names.unshift(token.text);
    else if (at === 0 || tokens[at - 1]!.roles.person) found.names.push(token.text);
  }
}

const SOURCE_WORDS = 3;

/** "from old woman", "from the thrift store". */
function sourceAt(tokens: readonly Tok[], from: number): string {
  const first = BETWEEN.has(tokens[from]!.text) ? from + 1 : from;
  const end = tokens.findIndex(({ kind }, at) => at >= first && kind !== "word");
  const words = tokens.slice(first, end < 0 ? undefined : end).slice(0, SOURCE_WORDS);
  return words.map(({ text }) => text).join(" ");
}

/** "viewing saturday at four" */
const isHour = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at - 1]?.text === "at" && tokens[at - 2]?.kind === "day" && (centsIn(tokens[at]!) ?? 0) <= HOUR_MAX;

const HOUR_MAX = 12_00;

/** "3 no shows", "14 views": what it counts is no money. */
const isCounted = (token: Tok, next: Tok | undefined): boolean =>
  !token.amount?.money &&
  next?.kind === "word" &&
  (COUNTED_THINGS.has(next.text) ||
    ((next.unknown === true || next.roles.plain === true) && next.text.endsWith("s")));

/** Each amount that a token can mean: 175 of "one seventy five", 40 of "40 euro". */
function centsMeant(token: Tok): Cents[] {
  const { amount, each, text } = token;
  if (each) return [];
  if (amount?.either) return [...amount.either];
  const cents = centsIn(token);
  if (cents !== null) return cents > 0 ? [cents] : [];
  // Of "12.505" no part is the amount.
  const said = text.replaceAll(",", "");
  const digits = /\d\.\d{3}/.test(said) ? undefined : /\d+(?:\.\d{1,2})?(?!\S*\d)/.exec(said)?.[0];
  if (digits !== undefined) return [Math.round(Number(digits) * 100)];
  const spoken = spokenIn(text.split(/[ -]/));
  return spoken === null ? [] : [spoken * 100];
}

/** "one seventy five", "two twenty": hundreds, as prices are told. */
function spokenIn(norms: readonly string[]): number | null {
  const first = smallNumberAt(norms, 0);
  if (!first) return null;
  const next = smallNumberAt(norms, first.words);
  return next && next.value >= 10 ? first.value * 100 + next.value : first.value;
}
