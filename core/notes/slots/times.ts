import { addDays } from "../../calendar.ts";
import type { Clause, Tok } from "../clause.ts";
import { claim, firstFree, placeAfter } from "../clause.ts";
import { comingDay } from "../quantities/days.ts";
import { LABOR_NAMES } from "../words/labors.ts";
import { EACH_WORDS } from "../words/numbers.ts";
import { BEFORE_PICKUP_DAY, PICKUP, UNTIL } from "../words/times.ts";
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
  const token = tokens[at + 1]!;
  claim(tokens[at]!, token);
  if (token.kind === "amount" || token.roles.vagueTime) return trouble("vagueTime");
  if (token.kind !== "day") return { value: clause.today };
  const day = comingDay(token.said!, clause.today);
  return day ? { value: day } : trouble("unrealDay");
};

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
  const day = comingDay(token.said!, clause.today);
  return day ? { value: day } : trouble("unrealDay");
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
  // "3 times 20 min each", "we both sanded it, 1h each": each of something that is no piece.
  return count === null || count === 1 ? trouble("eachOfUnknown") : { value: token.minutes * count };
};

export const labor: Fill = (clause) => {
  const token =
    clause.tokens.find(
      (word) => word.kind === "word" && word.roles.labor && !word.claimed && /ing$/.test(word.text),
    ) ?? clause.tokens.find((word) => word.kind === "word" && word.roles.labor && !word.claimed);
  if (!token) return null;
  claim(token);
  return { value: LABOR_NAMES.get(token.text) ?? token.text };
};

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
