import { type Head, type Tok, textOf } from "../clause.ts";
import { decimalText, type Exact, exactOf, plus, wholeOf } from "../quantities/amounts.ts";
import { minutesBetween } from "../quantities/clocks.ts";
import { centsIn } from "../slots/money.ts";
import { isTurned, type Roles, rolesOf, turnedRoles } from "../tokens/roles.ts";
import { NO_ROLES, wordToken } from "../tokens/token.ts";
import { language } from "../verbs.ts";
import { NOBODY } from "../words/deals.ts";
import type { Hedge } from "../words/hedges.ts";
import type { TurnEffect } from "./afterwards.ts";
import { type AsideEffect, asides } from "./asides.ts";
import { type DayEffect, days } from "./days.ts";
import type { OwnerEffect } from "./hands.ts";
import { standingIn } from "./lookup.ts";
import { numbers } from "./numbers.ts";
import type { NumberEffect } from "./owed.ts";
import { owners } from "./owners.ts";
import type { Fired, Table } from "./table.ts";
import type { Trace } from "./trace.ts";
import { unfinished } from "./unfinished.ts";
import { type Units, unitsOf } from "./units.ts";

/** Every table in the order in which it runs over a line. */
export const TABLES = { numbers, days, owners, unfinished, asides } as const;

/** Words with one meaning given by a row: one token in place of those of its bracket, of the same shape as any. */
function joined(
  tokens: readonly Tok[],
  { from, to }: Fired,
  roles: Roles<Head> = NO_ROLES,
  text = textOf(tokens.slice(from, to)),
): Tok {
  return wordToken("word", text, tokens[from]!.from, tokens[to - 1]!.to, roles);
}

const PASSING = rolesOf<Head>({ plain: true });

const WHOLE = turnedRoles<Head>({ plain: true, whole: true });

const ASKING = turnedRoles<Head>({ plain: true, asking: true });

const HALF = "50";

function ofNumber(effect: NumberEffect, tokens: readonly Tok[], fired: Fired): Tok {
  if (effect === "passing" || effect === "beside" || effect === "amount") {
    const token = joined(tokens, fired);
    token.kind = "grain";
    return token;
  }
  // "sold desk 140, he pays the 140 friday": pays the money.
  if (effect === "again") return joined(tokens, fired, NO_ROLES, "money");
  if (effect === "asking") return joined(tokens, fired, ASKING);
  if (effect === "whole") return joined(tokens, fired, WHOLE);
  if (effect === "miles" || effect === "miles?") return driven(tokens, fired, effect === "miles?");
  if (effect === "odometer" || effect === "both ways") return drivenFor(effect, tokens, fired);
  if (effect === "legs" || effect === "trips") return drivenInAll(effect, tokens, fired);
  if (effect === "hours") return workedBetween(tokens, fired);
  if (effect === "sum") return summed(tokens, fired);
  if (effect === "heads") return paidByHead(tokens, fired);
  if (effect === "between us") return workedTogether(tokens, fired);
  if (effect === "minutes") return timed(tokens, fired);
  if (effect === "percent") return rated(tokens, fired);
  if (effect === "piece") return numbered(tokens, fired);
  if (effect === "all") return countedAll(tokens, fired);
  if (effect === "hands") return handsPaid(tokens, fired);
  if (effect === "times") return timesEach(tokens, fired);
  if (effect === "down") return meaning("deposit", tokens, fired);
  if (effect === "drove") return meaning("drove", tokens, fired);
  const token =
    effect === "fee"
      ? joined(tokens, fired, FEE, effect)
      : joined(tokens, fired, rolesOfNumber(isOneOfTimes(effect, tokens) ? "vague" : effect));
  if (effect === "half owed" || effect === "half paid") token.percent = HALF;
  else if (effect !== "all owed") withAmount(token, tokens.slice(fired.from, fired.to));
  const time =
    effect === "vague" || effect === "so far" ? tokens.slice(fired.from, fired.to).find(isTime) : undefined;
  const drive =
    effect === "vague" ? tokens.slice(fired.from, fired.to).find(({ kind }) => kind === "miles") : undefined;
  if (drive) {
    token.kind = drive.kind;
    token.miles = drive.miles;
  }
  // "30 min on the desk, so 2h total": the total is no time of its own.
  if (time && tokens.filter(isTime).length === 1) {
    token.kind = time.kind;
    token.minutes = time.minutes;
  }
  return token;
}

function withAmount(token: Tok, said: readonly Tok[]): void {
  const number = said.find(({ kind }) => kind === "amount");
  token.amount = number?.amount;
  if (token.roles.agreed) token.each = number?.each;
  token.said = said.find(({ kind }) => kind === "day")?.said;
}

/** "settled at 140 for the desk, he left 40": says a deposit, as no other word does. */
function meaning(word: "deposit" | "bought" | "sold" | "drove", tokens: readonly Tok[], fired: Fired): Tok {
  const heads = language().lexer.lexicon.entry(word)?.said?.heads;
  const text = word === "drove" ? word : undefined;
  return joined(tokens, fired, rolesOf<Head>(heads ? { heads } : {}), text);
}

/** "another 30 min on the desk, so 2h total": how much of it is of this note, no books tell. */
const isOneOfTimes = (effect: NumberEffect, tokens: readonly Tok[]): boolean =>
  effect === "so far" && tokens.filter(isTime).length > 1;

const isTime = ({ kind }: Tok): boolean => kind === "duration";

const PRICE_PARTS: Readonly<Partial<Record<NumberEffect, Roles<Head>>>> = {
  owed: { owed: true },
  "half owed": { owed: true },
  "rest owed": { owed: true, rest: true },
  agreed: { agreed: true },
  "all owed": { owed: true },
  "part paid": { hedge: "part paid" },
  "half paid": { hedge: "part paid" },
  extra: { hedge: "extra" },
  less: { hedge: "less" },
  "after fee": { hedge: "after fee" },
};

const FEE = rolesOf<Head>({ supply: "fees" });

/** What is a part of the price no later row reads once more. */
function rolesOfNumber(effect: NumberEffect): Roles<Head> {
  const part = PRICE_PARTS[effect];
  return part ? turnedRoles<Head>(part) : rolesOf<Head>({ hedge: effect as Hedge });
}

/** "the stools 65 all 3": three stools. */
function countedAll(tokens: readonly Tok[], fired: Fired): Tok {
  const pieces =
    tokens.slice(0, fired.from).findLast(({ kind }) => kind === "piece") ??
    tokens.slice(fired.to).find(({ kind }) => kind === "piece");
  const number = tokens.slice(fired.from, fired.to).find(({ amount, mention }) => amount ?? mention);
  const count = number?.mention?.count ?? wholeOf(number?.amount?.exact ?? null);
  if (pieces?.mention?.plural && count !== null) {
    const { plural: _, ...mention } = pieces.mention;
    pieces.mention = { ...mention, count };
  }
  const token = joined(tokens, fired);
  token.kind = "grain";
  return token;
}

/** "paid two guys 30 each": sixty for both, if each got it. */
function handsPaid(tokens: readonly Tok[], fired: Fired): Tok {
  const [count, price] = tokens.slice(fired.from, fired.to).flatMap(({ amount }) => amount ?? []);
  const [times, one] = [count!.exact!, price!.exact!];
  const token = joined(tokens, fired, rolesOf<Head>({ hedge: "vague" }));
  const exact = { digits: times.digits * one.digits, scale: times.scale + one.scale };
  token.amount = { exact, money: true, factors: [times, one] };
  return token;
}

/** "knobs, 8 of em at 2.25 each": what they come to. */
function timesEach(tokens: readonly Tok[], fired: Fired): Tok {
  const said = tokens.slice(fired.from, fired.to);
  const one = said.find(({ kind }) => kind === "amount")!.amount!.exact!;
  const times = { digits: said.find(({ mention }) => mention)!.mention!.count!, scale: 0 };
  const token = joined(tokens, fired);
  token.kind = "amount";
  token.amount = {
    exact: { digits: times.digits * one.digits, scale: one.scale },
    money: true,
    factors: [times, one],
  };
  return token;
}

const UNSAID = rolesOf<Head>({ hedge: "doubt" });

/** "drove 24": how far it was. */
function driven(tokens: readonly Tok[], fired: Fired, isUnsaid: boolean): Tok {
  const token = joined(tokens, fired, isUnsaid ? UNSAID : NO_ROLES);
  token.kind = "miles";
  const said = tokens.slice(fired.from, fired.to).find(({ kind }) => kind === "amount");
  token.miles = decimalText(said!.amount!.exact!);
  return token;
}

/** No trip of one note is longer; two numbers farther apart are no readings of it. */
const TRIP_MILES_MAX = 2_000;

/** "40210 to 40252", "18 miles there and 18 back": how far it was; without miles where the numbers say none. */
function drivenFor(effect: "odometer" | "both ways", tokens: readonly Tok[], fired: Fired): Tok {
  const token = joined(tokens, fired);
  token.kind = "miles";
  const [from, to] = tokens.slice(fired.from, fired.to).flatMap(distances);
  if (!from || !to) return token;
  const value = effect === "both ways" ? plus(from, to) : plus(to, { ...from, digits: -from.digits });
  if (value.digits > 0 && value.digits <= TRIP_MILES_MAX * 10 ** value.scale)
    token.miles = decimalText(value);
  return token;
}

/** "8 mi to the store then 11 more then 6 home", "2 trips, 5 miles each". */
function drivenInAll(effect: "legs" | "trips", tokens: readonly Tok[], fired: Fired): Tok {
  const token = joined(tokens, fired);
  token.kind = "miles";
  const [first, ...others] = tokens.slice(fired.from, fired.to).flatMap(distances);
  const all = others.reduce(
    (sum, one) =>
      effect === "legs" ? plus(sum, one) : { digits: sum.digits * one.digits, scale: sum.scale + one.scale },
    first!,
  );
  if (all.digits <= TRIP_MILES_MAX * 10 ** all.scale) token.miles = decimalText(all);
  return token;
}

/** The numbers of a token: one, or both of "40210-40252". */
function distances({ kind, miles, amount, text }: Tok): Exact[] {
  if (kind !== "amount" && kind !== "miles") return [];
  const said = amount?.exact ? [amount.exact] : (miles ?? text).split("-").map(exactOf);
  return said.filter((exact) => exact !== null);
}

/** "started at 9 finished at 11:30": how long it went on; no time where those are no hours of a clock. */
function workedBetween(tokens: readonly Tok[], fired: Fired): Tok {
  const token = joined(tokens, fired);
  const hours = tokens.slice(fired.from, fired.to).filter(({ kind }) => kind !== "word" && kind !== "mark");
  token.kind = "duration";
  token.minutes = minutesBetween(hours[0]!.text, hours[1]!.text) ?? undefined;
  return token;
}

/** "200 plus 50 extra": what was paid in all. */
function summed(tokens: readonly Tok[], fired: Fired): Tok {
  const [one, other] = tokens.slice(fired.from, fired.to).flatMap(({ amount }) => amount?.exact ?? []);
  return amountOf(tokens, fired, plus(one!, other!));
}

/** "3 people 40 each": what came in of all of them. */
function paidByHead(tokens: readonly Tok[], fired: Fired): Tok {
  const [count, price] = tokens.slice(fired.from, fired.to).flatMap(({ amount }) => amount?.exact ?? []);
  return amountOf(tokens, fired, {
    digits: count!.digits * price!.digits,
    scale: count!.scale + price!.scale,
  });
}

function amountOf(tokens: readonly Tok[], fired: Fired, exact: Exact): Tok {
  const token = joined(tokens, fired);
  token.kind = "amount";
  token.amount = { exact, money: true };
  return token;
}

/** "45 min me, 45 min mom": both together, if theirs counts as well. */
function workedTogether(tokens: readonly Tok[], fired: Fired): Tok {
  const token = joined(tokens, fired, rolesOf<Head>({ hedge: "vague" }));
  token.kind = "duration";
  token.minutes = tokens
    .slice(fired.from, fired.to)
    .filter(isTime)
    .reduce((sum, { minutes = 0 }) => sum + minutes, 0);
  return token;
}

const HOURS_MAX = 12;
const MINUTES_MIN = 5;
const MINUTES_MAX = 120;

/** "20 min on #1, 40 on #4": in the unit of the time before it, where so many of them are likely. */
function timed(tokens: readonly Tok[], { from }: Fired): Tok {
  const token = tokens[from]!;
  const before = tokens.slice(0, from).findLast(({ kind }) => kind === "duration")!;
  const { digits, scale } = token.amount!.exact!;
  const value = digits / 10 ** scale;
  const isHours = /h/.test(before.text) && value <= HOURS_MAX;
  if (!isHours && (value < MINUTES_MIN || value > MINUTES_MAX || scale > 0)) return token;
  return { ...token, kind: "duration", amount: undefined, minutes: Math.round(isHours ? value * 60 : value) };
}

const isAtRate = (token: Tok | undefined): boolean => token?.text === "at" || token?.text === "@";

const OF_RATES = /\b(?:rate|rates|interest|apr|fixed|variable|percent|percentage|set aside)\b/;

/** No loan that a private person has costs more in a year. */
const RATE_MAX = 40;

/**
 * "loan 9200 at 6.4": a number that may be the rate is. A whole one may be a day, an hour or a number of months as well,
 * unless a rate is spoken of.
 */
function rated(tokens: readonly Tok[], { from }: Fired): Tok {
  const token = tokens[from]!;
  const { exact, factors, flaw } = token.amount!;
  const isNewAt = isAtRate(tokens[from - 1]) && tokens.some(({ text }) => /^new\b/.test(text));
  if (exact?.scale === 0 && !isNewAt && !tokens.some(({ text }) => OF_RATES.test(text))) return token;
  if (!exact || factors || flaw || exact.digits > RATE_MAX * 10 ** exact.scale) return token;
  return { ...token, kind: "percent", amount: undefined, percent: decimalText(exact) };
}

/** "dresser 47": the piece of that number. */
function numbered(tokens: readonly Tok[], fired: Fired): Tok {
  const token = joined(tokens, fired);
  const [piece, number] = [tokens[fired.from]!, tokens[fired.to - 1]!];
  token.kind = "piece";
  token.mention = { ...piece.mention!, number: wholeOf(number.amount!.exact)! };
  return token;
}

const NO_DAY = rolesOf<Head>({ plain: true, trait: true });
const WIDE = turnedRoles<Head>({ vagueTime: true });

function ofDay(effect: DayEffect, tokens: readonly Tok[], fired: Fired): Tok {
  if (effect !== "place") return joined(tokens, fired, effect === "word" ? NO_DAY : WIDE);
  return joined(
    tokens,
    fired,
    rolesOf<Head>({ place: textOf(tokens.slice(fired.from, fired.to)), plain: true }),
  );
}

const LABOR = rolesOf<Head>({ labor: true });

/** What each effect makes of its words; a "name" stays a word that nobody knows. */
const OWNER_ROLES: Readonly<
  Record<Exclude<OwnerEffect, "listed" | "gifted" | "scrapped" | "held">, Roles<Head>>
> = {
  part: rolesOf<Head>({ supply: "materials" }),
  supply: rolesOf<Head>({ supply: "materials" }),
  fee: rolesOf<Head>({ supply: "fees" }),
  service: rolesOf<Head>({ supply: "help", service: true }),
  cost: rolesOf<Head>({ supply: "other" }),
  carried: rolesOf<Head>({ supply: "other", service: true }),
  help: rolesOf<Head>({ supply: "help", service: true }),
  name: NO_ROLES,
  giver: NO_ROLES,
  given: rolesOf<Head>({ hedge: "money in" }),
  buyer: rolesOf<Head>({ actor: "buyer" }),
  sold: rolesOf<Head>({ actor: "nobody" }),
  left: rolesOf<Head>({ actor: "nobody" }),
  ours: rolesOf<Head>({ actor: "ours" }),
  worker: rolesOf<Head>({ hedge: "other" }),
  asked: rolesOf<Head>({ hedge: "doubt" }),
  stream: NO_ROLES,
  scrap: rolesOf<Head>({ stream: "scrap" }),
  rental: rolesOf<Head>({ stream: "rental" }),
  job: rolesOf<Head>({ stream: "odd job" }),
  "job?": turnedRoles<Head>({ stream: "odd job", hedge: "money in" }),
  delivery: rolesOf<Head>({ stream: "delivery" }),
  tip: rolesOf<Head>({ stream: "tips" }),
  labor: LABOR,
  word: PASSING,
};

const OPENING_ARTICLE = /^(?:a|an|the|my|our|some) /;

/** "the neighbor gave me a bench" tells where it came from, "he gave me a bench" does not. */
function rolesOfGiver(said: string): Roles<Head> {
  const place = said.replace(OPENING_ARTICLE, "");
  return NOBODY.has(place) ? PASSING : rolesOf<Head>({ place });
}

/** "threw the desk on swapboard for 145" says a listing, "lamp went to the church, no charge" a gift, as no other word does. */
function saidBy(verb: string, tokens: readonly Tok[], fired: Fired): Tok {
  const heads = language().lexer.lexicon.entry(verb)?.said?.heads;
  return joined(tokens, fired, rolesOf<Head>(heads ? { heads } : {}), verb);
}

const isIt = ({ text }: Tok): boolean => text === "it";

function ofOwner(effect: OwnerEffect, tokens: readonly Tok[], fired: Fired): Tok {
  if (effect === "listed") return saidBy("listed", tokens, fired);
  if (effect === "held") return saidBy("holding", tokens, fired);
  if (effect === "gifted") return saidBy("donated", tokens, fired);
  if (effect === "scrapped") return saidBy("scrapped", tokens, fired);
  const said = textOf(tokens.slice(fired.from, fired.to));
  // "#5 hinges" are hinges, and #5 no part of their name.
  const text = effect === "help" ? effect : effect === "part" ? said.replace(/^# \d+ /, "") : said;
  const token = joined(tokens, fired, effect === "giver" ? rolesOfGiver(said) : OWNER_ROLES[effect], text);
  if (effect === "name") token.unknown = true;
  if (effect === "stream") {
    const told = tokens.slice(fired.from, fired.to).find(({ roles }) => roles.stream)?.roles.stream;
    token.roles = rolesOf<Head>({ stream: told ?? token.text });
  }
  if (effect === "part" || effect === "fee" || effect === "left" || effect === "help")
    token.mention = tokens.slice(fired.from, fired.to).find(({ kind }) => kind === "piece")?.mention;
  // "tom helped carry it, gave him 10"
  if (effect === "help" && !token.mention && tokens.slice(fired.from, fired.to).some(isIt))
    token.mention = { it: true };
  if (effect === "left") token.kind = "piece";
  return token;
}

function ofTurn(effect: TurnEffect, tokens: readonly Tok[], fired: Fired): Tok {
  if (effect === "word") return joined(tokens, fired, PASSING);
  // When it is fetched, in the word behind which a hold looks for its day.
  if (effect === "fetch") return joined(tokens, fired, PASSING, "pickup");
  if (effect === "sold both") return soldBoth(tokens, fired);
  if (effect === "bought" || effect === "sold" || effect === "drove") return meaning(effect, tokens, fired);
  if (effect === "all but") return allBut(tokens, fired);
  return joined(tokens, fired, effect === "labor" ? LABOR : turnedRoles({ hedge: effect }));
}

/** "came for one chair and left with both for 80": two of them are sold. */
function soldBoth(tokens: readonly Tok[], fired: Fired): Tok {
  const piece = tokens[fired.from - 1]!;
  piece.mention = { ...piece.mention!, count: 2 };
  return meaning("sold", tokens, fired);
}

/** "everything but the dresser": what that is, the books tell. */
function allBut(tokens: readonly Tok[], fired: Fired): Tok {
  // "all but one nightstand": all of those, and nothing else that is here.
  const { text, mention } = tokens[fired.to - 1]!;
  if ((mention!.count ?? 1) > 1 || /^(?:one|1|an?|another) /.test(text))
    return ofTurn("doubt", tokens, fired);
  const token = joined(tokens, fired);
  token.kind = "piece";
  token.mention = { ...mention!, plural: true, allBut: true };
  return token;
}

const ofAside = (_effect: AsideEffect, tokens: readonly Tok[], fired: Fired): Tok =>
  joined(tokens, fired, PASSING);

type Make<Effect extends string> = (effect: Effect, tokens: readonly Tok[], fired: Fired) => Tok;

function run<Effect extends string>(
  name: keyof typeof TABLES,
  table: Table<Effect>,
  make: Make<Effect>,
  line: Units,
  trace?: Trace[],
): Units {
  const { tokens } = line;
  const all = table.fired(tokens, line);
  if (all.length === 0) return line;
  const fired = all.filter((one) => one.effect !== "amount" && isTaken(one, tokens));
  if (fired.length === 0) return line;
  const left: Tok[] = [];
  let at = 0;
  for (const one of fired) {
    trace?.push({ table: name, row: one.row, words: textOf(tokens.slice(one.from, one.to)) });
    left.push(...tokens.slice(at, one.from), make(one.effect, tokens, one));
    at = one.to;
  }
  return unitsOf([...left, ...tokens.slice(at)]);
}

const isAmount = ({ kind }: Tok): boolean => kind === "amount";

/** The amount of the bracket is the only one that stands before it, and counts nothing. */
function isSameAgain({ from, to }: Fired, tokens: readonly Tok[]): boolean {
  const [first, ...others] = tokens.slice(0, from).filter(isAmount);
  const again = tokens.slice(from, to).find(isAmount);
  const cents = first && again && others.length === 0 ? centsIn(first) : null;
  return cents !== null && cents > COUNTED_MAX && cents === centsIn(again!);
}

/** No more than a dozen may be pieces. */
const COUNTED_MAX = 12_00;

/** "beside": only where an amount stands outside of all brackets is the number within surely none of the note. */
function isTaken(fired: Fired, tokens: readonly Tok[]): boolean {
  for (let at = fired.from; at < fired.to; at += 1) if (isTurned(tokens[at]!.roles)) return false;

  if (fired.effect === "again") return isSameAgain(fired, tokens);
  if (fired.effect !== "beside") return true;
  return tokens.some(
    (token, at) => (isAmount(token) || token.kind === "duration") && (at < fired.from || at >= fired.to),
  );
}

const ALL = Object.values(TABLES).reduce((bits, { bit }) => bits | bit, 0);

/** A line with everything that a row says of it. Rows that fire are told to the trace. */
export function withRows(line: Units, trace?: Trace[]): Units {
  if ((standingIn(line).tables & ALL) === 0) return line;
  let made = run("numbers", numbers, ofNumber, line, trace);
  made = run("days", days, ofDay, made, trace);
  made = run("owners", owners, ofOwner, made, trace);
  made = run("unfinished", unfinished, ofTurn, made, trace);
  return run("asides", asides, ofAside, made, trace);
}
