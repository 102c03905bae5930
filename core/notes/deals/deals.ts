import type { Day } from "../../calendar.ts";
import { placeBefore, type Tok, textOf } from "../clause.ts";
import { pastDay } from "../quantities/days.ts";
import type { Reading } from "../reading.ts";
import { type Dealt, deals } from "../rows/deals.ts";
import type { Fired } from "../rows/table.ts";
import type { Trace } from "../rows/trace.ts";
import type { Units } from "../rows/units.ts";
import { centsIn } from "../slots/money.ts";
import { apart } from "../tokens/apart.ts";
import { COLLECT_WORDS, COMMISSION_WORDS, SHARE_WORDS, TRADE_WORDS, UNPAID_WORDS } from "../words/deals.ts";
import { ARTICLES } from "../words/filler.ts";
import { BETWEEN_CLAUSES } from "../words/links.ts";
import { BEFORE_PLACE } from "../words/places.ts";
import { WORTH } from "../words/trading.ts";
import { dealReading } from "./dealt.ts";
import { isSomebody, whoIn } from "./somebody.ts";
import type { Taken } from "./taken.ts";

/*
 * Deals that a clause tells in any order of words: a row tells which, and every other word from one joint of the line
 * to another has to be taken by it. Where one is not, the clause is left to the verbs.
 */

/** A deal and the words of the line that tell it: `from` up to `to`. */
interface Deal {
  from: number;
  to: number;
  reading: Reading;
}

const WORDS: Readonly<Record<Dealt, ReadonlySet<string>>> = {
  collect: COLLECT_WORDS,
  "collect part": COLLECT_WORDS,
  "collect or sell": COLLECT_WORDS,
  "collect or buy": COLLECT_WORDS,
  unpaid: UNPAID_WORDS,
  share: SHARE_WORDS,
  commission: COMMISSION_WORDS,
  trade: TRADE_WORDS,
  "trade back": TRADE_WORDS,
};

const STOPS = new Set([".", ";", "!", "?"]);

/** The first deal of the table that a line's words tell as a whole; null where there is none. */
export function dealOf(line: readonly Tok[], units: Units, today: Day, trace?: Trace[]): Deal | null {
  if (!deals.mayFire(units)) return null;
  const tokens = apart(line);
  const found = deals.every(tokens, tokens === line ? units : undefined);
  if (found.length === 0 || found.some(({ effect }) => effect === "none")) return null;
  // "check bounced!!"
  const end = tokens.findLastIndex((token) => !isStop(token)) + 1;
  for (const fired of found) {
    const effect = fired.effect as Dealt;
    for (const run of runsOf(tokens, fired, effect)) {
      const taken = takenOf(tokens.slice(run.from, run.to), fired, run.from, effect, today);
      const reading = taken && dealReading(effect, taken);
      if (!reading || !standsAlone(reading, run, end)) continue;
      trace?.push({ table: "deals", row: fired.row, words: textOf(tokens.slice(fired.from, fired.to)) });
      return { from: tokens[run.from]!.from, to: tokens[run.to - 1]!.to, reading };
    }
  }
  return null;
}

/** A deal that names no piece belongs to the clause beside it, if there is one; a share is of what was told before it. */
function standsAlone(reading: Reading, { from, to }: Run, end: number): boolean {
  if (reading.kind === "share" && !reading.pieces) return from > 0;
  return (
    (from === 0 && to >= end) ||
    ("pieces" in reading && reading.pieces !== undefined) ||
    reading.kind === "trade"
  );
}

interface Run {
  from: number;
  to: number;
}

/** The words that a deal takes, or those of them up to the last joint, where more are too much for it. */
function runsOf(tokens: readonly Tok[], fired: Fired, effect: Dealt): Run[] {
  const run = runOf(tokens, fired, effect);
  if (!run) return [];
  const to = run.to < tokens.length ? -1 : jointTo(tokens, run.to - 1, fired.to);
  return to > fired.to ? [run, { from: run.from, to }] : [run];
}

/** The words around a bracket that the deal takes, from one joint or end to another; null where a word is left over. */
function runOf(tokens: readonly Tok[], fired: Fired, effect: Dealt): Run | null {
  let { from, to } = fired;
  const isTaken = (at: number) => !isStop(tokens[at]!) && isTakeable(tokens, at, effect);
  while (from > 0 && isTaken(from - 1)) from -= 1;
  while (to < tokens.length && (isTaken(to) || isOfWorth(tokens, to, effect))) to += 1;
  if (from > 0 && !isStop(tokens[from - 1]!)) from = jointFrom(tokens, from, fired.from);
  if (to < tokens.length && !isStop(tokens[to]!)) to = jointTo(tokens, to, fired.to);
  return from < 0 || to < 0 ? null : { from, to };
}

/** "…, mirror for a table. mirror is worth 40": what is said behind the end of a sentence, of the trade in it. */
function isOfWorth(tokens: readonly Tok[], at: number, effect: Dealt): boolean {
  if (!effect.startsWith("trade") || !isStop(tokens[at]!)) return false;
  const rest = tokens.slice(at + 1);
  return (
    rest.some(({ text }) => WORTH.has(text)) &&
    rest.every((token, place) => !isStop(token) && isTakeable(tokens, at + 1 + place, effect))
  );
}

const isStop = ({ kind, text }: Tok): boolean => kind === "mark" && STOPS.has(text);
const isJoint = ({ kind, text }: Tok): boolean =>
  (kind === "mark" || kind === "word") && BETWEEN_CLAUSES.has(text);

/** The first joint from `at` on, before the bracket; what it joins to is another clause. */
function jointFrom(tokens: readonly Tok[], at: number, bracket: number): number {
  for (let place = at - 1; place < bracket; place += 1) if (isJoint(tokens[place]!)) return place + 1;
  return -1;
}

function jointTo(tokens: readonly Tok[], at: number, bracket: number): number {
  for (let place = at; place >= bracket; place -= 1) if (isJoint(tokens[place]!)) return place;
  return -1;
}

const VALUES: ReadonlySet<Tok["kind"]> = new Set(["piece", "amount", "percent", "mark"]);

function isTakeable(tokens: readonly Tok[], at: number, effect: Dealt): boolean {
  const token = tokens[at]!;
  const { kind, text, roles } = token;
  if (VALUES.has(kind) || WORDS[effect].has(text)) return true;
  if (kind === "day") return true;
  if (kind !== "word") return false;
  // "got the other 30 at church"
  const isWhere =
    (roles.place !== undefined || roles.plain === true) &&
    BEFORE_PLACE.has(tokens[placeBefore(tokens, at - 1, ARTICLES)]?.text ?? "");
  return roles.filler === true || roles.method !== undefined || isWhere || isSomebody(tokens, at);
}

/** What a run of words holds, each taken once; null where it holds what no deal can say. */
function takenOf(run: readonly Tok[], fired: Fired, from: number, effect: Dealt, today: Day): Taken | null {
  const taken: Taken = { tokens: run, pieces: [], amounts: [], bracket: [], who: whoIn(run) };
  for (const [at, token] of run.entries()) {
    if (token.kind === "piece") taken.pieces.push(token.mention!);
    else if (token.kind === "amount") {
      const cents = centsIn(token);
      // "each worth 20" in a trade: so much on either side.
      if (cents === null || (token.each && !effect.startsWith("trade"))) return null;
      const isInside = at + from >= fired.from && at + from < fired.to;
      (isInside ? taken.bracket : taken.amounts).push(cents);
    } else if (token.kind === "percent") taken.percent = token.percent!;
    else if (token.kind === "day" && !WORDS[effect].has(token.text)) {
      const found = pastDay(token.said!, today);
      if (!("day" in found)) return null;
      taken.date = found.day;
    } else if (token.roles.method !== undefined && effect !== "unpaid") taken.method = token.roles.method;
  }
  return taken;
}
