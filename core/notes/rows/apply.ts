import { type Head, isAmount, type Tok, textOf } from "../clause.ts";
import { centsIn } from "../slots/money.ts";
import { isTurned, type Roles, rolesOf, turnedRoles } from "../tokens/roles.ts";
import { NO_ROLES } from "../tokens/token.ts";
import { NOBODY } from "../words/deals.ts";
import type { TurnEffect } from "./afterwards.ts";
import { type AsideEffect, asides } from "./asides.ts";
import { type DayEffect, days } from "./days.ts";
import type { OwnerEffect } from "./hands.ts";
import { joined, meaning, PASSING, saidBy } from "./joined.ts";
import { standingIn } from "./lookup.ts";
import { numbers } from "./numbers.ts";
import { ofNumber } from "./of-numbers.ts";
import { owners } from "./owners.ts";
import type { Fired, Table } from "./table.ts";
import type { Trace } from "./trace.ts";
import { unfinished } from "./unfinished.ts";
import { type Units, unitsOf } from "./units.ts";

/** Every table in the order in which it runs over a line. */
export const TABLES = { numbers, days, owners, unfinished, asides } as const;

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
  "by card": rolesOf<Head>({ method: "card" }),
  "by check": rolesOf<Head>({ method: "check" }),
  stream: NO_ROLES,
  scrap: rolesOf<Head>({ stream: "scrap" }),
  rental: rolesOf<Head>({ stream: "rental" }),
  job: rolesOf<Head>({ stream: "odd job" }),
  "job?": turnedRoles<Head>({ stream: "odd job", hedge: "money in" }),
  delivery: rolesOf<Head>({ stream: "delivery" }),
  tip: rolesOf<Head>({ stream: "tips" }),
  labor: LABOR,
  underway: NO_ROLES,
  word: PASSING,
};

const OPENING_ARTICLE = /^(?:a|an|the|my|our|some) /;

/** "the neighbor gave me a bench" tells where it came from, "he gave me a bench" does not. */
function rolesOfGiver(said: string): Roles<Head> {
  const place = said.replace(OPENING_ARTICLE, "");
  return NOBODY.has(place) ? PASSING : rolesOf<Head>({ place });
}

const ANYBODYS = new Set(["some", "a", "an", "another"]);

const isIt = ({ text }: Tok): boolean => text === "it";

function ofOwner(told: OwnerEffect, tokens: readonly Tok[], fired: Fired): Tok {
  // "some mom put 40 down" is no mom of ours.
  const effect = told === "ours" && ANYBODYS.has(tokens[fired.from]!.text) ? "buyer" : told;
  if (effect === "listed") return saidBy("listed", tokens, fired);
  if (effect === "held") return saidBy("holding", tokens, fired);
  if (effect === "gifted") return saidBy("donated", tokens, fired);
  if (effect === "scrapped") return saidBy("scrapped", tokens, fired);
  const said = textOf(tokens.slice(fired.from, fired.to));
  // "#5 hinges" are hinges, and #5 no part of their name.
  const text = effect === "help" ? effect : effect === "part" ? said.replace(/^# \d+ /, "") : said;
  const token = joined(tokens, fired, effect === "giver" ? rolesOfGiver(said) : OWNER_ROLES[effect], text);
  if (effect === "name") token.unknown = true;
  // "the lady saw the crib and": what she then bought; a "lamp guy" is no lamp.
  if (effect === "buyer")
    token.mention = tokens.slice(fired.from + 2, fired.to).findLast(({ mention }) => mention)?.mention;
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
  if (effect === "underway") token.kind = "grain";
  return token;
}

function ofTurn(effect: TurnEffect, tokens: readonly Tok[], fired: Fired): Tok {
  // "plumber spotted the sofa and bought it": who did it is no aside.
  const [only, ...more] = tokens.slice(fired.from, fired.to);
  if (effect === "word" && only!.roles.actor !== undefined && more.length === 0) return only!;
  if (effect === "word") return joined(tokens, fired, PASSING);
  if (effect === "for") return joined(tokens, fired, rolesOf<Head>({ filler: true }), "for");
  // When it is fetched, in the word behind which a hold looks for its day.
  if (effect === "fetch") return joined(tokens, fired, PASSING, "pickup");
  if (effect === "sold both") return soldBoth(tokens, fired);
  if (effect === "bought" || effect === "sold" || effect === "drove" || effect === "refunded")
    return meaning(effect, tokens, fired);
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
