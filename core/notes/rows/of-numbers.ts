import type { Head, Tok } from "../clause.ts";
import { isAmount } from "../clause.ts";
import { decimalText, type Exact, exactOf, plus, wholeOf } from "../quantities/amounts.ts";
import { minutesBetween } from "../quantities/clocks.ts";
import { type Roles, rolesOf, turnedRoles } from "../tokens/roles.ts";
import { NO_ROLES } from "../tokens/token.ts";
import type { Hedge } from "../words/hedges.ts";
import { joined, meaning } from "./joined.ts";
import type { NumberEffect } from "./owed.ts";
import type { Fired } from "./table.ts";

const WHOLE = turnedRoles<Head>({ plain: true, whole: true });

const ASKING: Readonly<Partial<Record<NumberEffect, Roles<Head>>>> = {
  asking: turnedRoles<Head>({ plain: true, asking: "at" }),
  "off asking": turnedRoles<Head>({ plain: true, asking: "off" }),
  "over asking": turnedRoles<Head>({ plain: true, asking: "over" }),
  "of asking": turnedRoles<Head>({ plain: true, asking: "of" }),
  "beside asking": turnedRoles<Head>({ plain: true, asking: "unsaid" }),
};

const HALF = "50";

/** What a row makes of the numbers of its bracket: one token with the price, time or way that they tell. */
export function ofNumber(effect: NumberEffect, tokens: readonly Tok[], fired: Fired): Tok {
  if (effect === "passing" || effect === "beside" || effect === "amount") {
    const token = joined(tokens, fired);
    token.kind = "grain";
    return token;
  }
  // "sold desk 140, he pays the 140 friday": pays the money.
  if (effect === "again") return joined(tokens, fired, NO_ROLES, "money");
  if (ASKING[effect]) return fromAsking(ASKING[effect], tokens, fired);
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

/** "for 20 under asking", "10 percent off", "half of what i asked" */
function fromAsking(roles: Roles<Head>, tokens: readonly Tok[], fired: Fired): Tok {
  const said = tokens.slice(fired.from, fired.to);
  const token = joined(tokens, fired, roles);
  token.percent = said.find(({ percent }) => percent !== undefined)?.percent;
  token.amount = said.find(isAmount)?.amount;
  if (!token.percent && !token.amount && roles.asking !== "at") token.percent = HALF;
  return token;
}

function withAmount(token: Tok, said: readonly Tok[]): void {
  const number = said.find(({ kind }) => kind === "amount");
  token.amount = number?.amount;
  if (token.roles.agreed) token.each = number?.each;
  token.said = said.find(({ kind }) => kind === "day")?.said;
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
  const amounts = said.flatMap(({ kind, amount }) => (kind === "amount" ? [amount!.exact!] : []));
  const one = amounts.at(-1)!;
  // "8 of em at 2.25 each", "2 cans 6.50 each"
  const of = said.find(({ mention }) => mention)?.mention;
  const times = of ? { digits: of.count!, scale: 0 } : amounts[0]!;
  const token = joined(tokens, fired);
  token.kind = "amount";
  token.amount = {
    exact: { digits: times.digits * one.digits, scale: times.scale + one.scale },
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
