import { addDays, weekdayOf } from "../../calendar.ts";
import type { Clause, Tok } from "../clause.ts";
import { claim, firstFree, placeAfter } from "../clause.ts";
import { comingDay } from "../quantities/days.ts";
import { smallNumberAt } from "../quantities/spelled.ts";
import { ARTICLES } from "../words/filler.ts";
import { LABOR_NAMES } from "../words/labors.ts";
import { ON_PIECE } from "../words/links.ts";
import { EACH_WORDS } from "../words/numbers.ts";
import { BEFORE_PICKUP_DAY, BETWEEN_DAYS, PICKUP, ROUNDS, UNTIL } from "../words/times.ts";
import { PARTS } from "../words/traits.ts";
import type { Fill, Filled } from "./filled.ts";
import { trouble } from "./filled.ts";
import { pieceCount } from "./money.ts";

export const until: Fill = (clause) => {
  const { tokens } = clause;
  const at = tokens.findIndex((token, index) => {
    const next = tokens[index + 1];
    return (
      token.kind === "word" &&
      (UNTIL.has(token.text) || (token.text === "to" && next?.kind === "day")) &&
      next !== undefined &&
      (next.kind === "day" ||
        next.kind === "clock" ||
        next.kind === "amount" ||
        next.roles.vagueTime === true ||
        isMoment(next))
    );
  });
  if (at < 0) return span(clause) ?? pickupDay(clause);
  // "till payday on the 1st"
  const paid = tokens[at + 1]!.text === "payday" ? placeAfter(tokens, at + 2, BEFORE_PICKUP_DAY) : -1;
  const from = tokens[paid]?.kind === "day" ? paid : at + 1;
  const token = tokens[from]!;
  claim(tokens[at]!, tokens[at + 1]!, token);
  if (token.kind === "amount" || token.roles.vagueTime) return trouble("vagueTime");
  return token.kind === "day" ? dayToCome(clause, from) : { value: clause.today };
};

/** The day to come at a place; "friday the 4th", "fri dec 4": a weekday and a date are one day where they agree. */
function dayToCome({ tokens, today }: Clause, at: number): Filled {
  const said = tokens[at]!.said!;
  const next = tokens[placeAfter(tokens, at + 1, BETWEEN_DAYS)];
  const other = next?.kind === "day" && !next.claimed ? next : undefined;
  const isPair = other !== undefined && (said.form === "weekday") !== (other.said!.form === "weekday");
  if (!isPair) {
    const day = comingDay(said, today);
    return day ? { value: day } : trouble("unrealDay");
  }
  claim(other);
  const [weekday, dated] = said.form === "weekday" ? [said, other.said!] : [other.said!, said];
  const day = comingDay(dated, today);
  if (!day) return trouble("unrealDay");
  return weekday.form === "weekday" && weekdayOf(day) === weekday.weekday
    ? { value: day }
    : trouble("whichDay");
}

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

/** "pickup sat", "coming back on saturday" */
function pickupDay(clause: Clause): Filled {
  const { tokens } = clause;
  const dayAfter = (at: number): Tok | undefined => tokens[placeAfter(tokens, at + 1, BEFORE_PICKUP_DAY)];
  const at = tokens.findIndex(({ text }, index) => PICKUP.has(text) && dayAfter(index)?.kind === "day");
  if (at < 0) return null;
  const token = dayAfter(at)!;
  claim(clause.tokens[at]!, token);
  return dayToCome(clause, tokens.indexOf(token));
}

export const minutes: Fill = (clause) => {
  const token = firstFree(clause, "duration");
  if (!token) return null;
  claim(token);
  if (token.minutes === undefined || token.minutes <= 0) return trouble("unclaimed");
  const next = clause.tokens[clause.tokens.indexOf(token) + 1];
  // "1h on each": how many they are, the talk knows.
  if (clause.tokens.some(({ mention }) => mention?.each)) return { value: token.minutes, each: true };
  const isBehind = next !== undefined && EACH_WORDS.has(next.text);
  if (!isBehind && !token.each) return { value: token.minutes };
  if (isBehind) claim(next);
  const mentions = clause.tokens.flatMap(({ mention }) => (mention ? [mention] : []));
  // "30 min each on the nightstands": how many they are, the books know.
  if (mentions.length === 1 && mentions[0]!.plural && !mentions[0]!.it)
    return { value: token.minutes, each: true };
  // "30 min each on both nightstands" is an hour.
  const count = pieceCount(mentions);
  const rounds = roundsOf(clause);
  if ((count === null || count === 1) && rounds) return { value: token.minutes * rounds };
  // "3 times 20 min each", "we both sanded it, 1h each": each of something that is no piece.
  return count === null || count === 1 ? trouble("eachOfUnknown") : { value: token.minutes * count };
};

/** "2 coats, 40 min each", "4 drawers, 20 min each": how many of what each took so long. */
function roundsOf({ tokens }: Clause): number | null {
  for (const [at, token] of tokens.entries()) {
    if (token.claimed) continue;
    const of = token.kind === "amount" ? tokens.slice(at + 1, at + 2) : [];
    const [said, ...words] = [token, ...of].flatMap(({ text }) => text.split(" "));
    const count = /^\d+$/.test(said!) ? Number(said) : smallNumberAt([said!], 0)?.value;
    if (!count || count > ROUNDS_MAX || !words.some((word) => ROUNDS.has(word) || PARTS.has(word))) continue;
    claim(token, ...of);
    return count;
  }
  return null;
}

const ROUNDS_MAX = 12;

export const labor: Fill = (clause) => {
  const token =
    clause.tokens.find(
      (word) => word.kind === "word" && word.roles.labor && !word.claimed && /ing$/.test(word.text),
    ) ?? clause.tokens.find((word) => word.kind === "word" && word.roles.labor && !word.claimed);
  if (!token) return null;
  claim(token);
  const done = LABOR_NAMES.get(token.text) ?? token.text;
  const what = workedOn(clause.tokens, clause.tokens.indexOf(token) + 1, COLORS.test(done));
  claim(...what);
  return { value: [done, ...what.map(({ text }) => text)].join(" ") };
};

/** "scraping stickers off the desk", "painted the desk sage green": whatever it is, where it can only be what was done. */
function workedOn(tokens: readonly Tok[], from: number, isColor: boolean): readonly Tok[] {
  const piece = tokens.findIndex(({ kind }, at) => kind === "piece" && at >= from);
  if (piece < 0) return [];
  const off = thingsFrom(tokens, ON_PIECE.has(tokens[from]?.text ?? "") ? from + 1 : from);
  const [link, behind] = [tokens[from + off.length], tokens.slice(piece + 1)];
  if (off.some(isNew) && ON_PIECE.has(link?.text ?? "") && piece <= from + off.length + LINK_MAX)
    return off.filter(({ roles }) => !roles.filler);
  const colors = isColor && behind[0]?.text !== "and" ? thingsFrom(behind, 0) : [];
  const next = behind[colors.length];
  const isLast = next === undefined || next.kind === "mark" || next.kind === "duration";
  return isLast && colors.some(isNew) ? colors.filter(({ roles }) => !roles.filler) : [];
}

/** What a thing may be called by, from a place on. */
function thingsFrom(tokens: readonly Tok[], from: number): readonly Tok[] {
  let to = from;
  while (to < from + THING_WORDS_MAX && isOfThing(tokens[to])) to += 1;
  return tokens.slice(from, to);
}

const isNew = ({ unknown }: Tok): boolean => unknown === true;

function isOfThing(token: Tok | undefined): boolean {
  if (token?.kind !== "word" || token.claimed || ON_PIECE.has(token.text)) return false;
  const { plain, opinion, trait, supply, heads } = token.roles;
  const isOfAny = isNew(token) || ARTICLES.has(token.text) || token.text === "and";
  return !heads && Boolean(isOfAny || plain || opinion || trait || supply);
}

const COLORS = /^(?:re)?(?:paint|stain|spray|glaz|dye)ing$/;
const THING_WORDS_MAX = 4;
/** "out of the old kids desk" */
const LINK_MAX = 4;

export const miles: Fill = (clause) => {
  const token = firstFree(clause, "miles");
  if (!token) return null;
  claim(token);
  if (token.miles === undefined) return trouble("unclaimed");
  if (token.roles.hedge) return trouble("milesUnsaid");
  return Number(token.miles) > MILES_MAX ? trouble("tooMuch") : { value: token.miles };
};

/** Nobody drives farther for one note than across a continent and back: more is a slip of the thumb. */
const MILES_MAX = 10_000;

export const percent: Fill = (clause) => {
  const token = firstFree(clause, "percent");
  if (!token) return null;
  claim(token);
  return Number(token.percent) > 100 ? trouble("tooMuch") : { value: token.percent };
};
