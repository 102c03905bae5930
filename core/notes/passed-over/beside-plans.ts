import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import type { Kind } from "../reading.ts";
import { firstWord } from "../tokens/text.ts";
import { PIECE_PARTS } from "../words/parts.ts";
import {
  AHEAD,
  BEFORE_HOPED,
  DEALT_WITH,
  HOLDS,
  ITS,
  OF_HANDOVER,
  UNTIL,
  WEATHER,
} from "../words/to-come.ts";

/* Whether what is still to come turns nothing of what was done: "sold the desk 90, ill drop it off friday" may. */

/** A stretch of a line's tokens, `from` up to `to`; its words begin at `said`. */
export interface Plan {
  from: number;
  said: number;
  to: number;
  isOurs: boolean;
}

export const isAhead = ({ text }: Tok): boolean => AHEAD.has(text);

/** The kinds that the verbs of some tokens say; those of verbs that could be any only where there are no others. */
function kindsIn(tokens: readonly Tok[]): Set<Kind> {
  const strong = tokens.flatMap((token) => kindsOf(token, false));
  return new Set(strong.length > 0 ? strong : tokens.flatMap((token) => kindsOf(token, true)));
}

/** Those of one verb; "put" and "dropped" are no deal by themselves. */
function kindsOf(token: Tok, light: boolean): Kind[] {
  const kinds = headsOf(token)
    .filter((head) => light || (!head.light && head.tails === null))
    .map(({ kind }) => kind);
  if (DEALT_WITH.has(firstWord(token.text))) return kinds;
  const anyWay = kinds.filter((kind) => ANY_WAY.has(kind));
  return anyWay.length > 0 ? anyWay : kinds;
}

/** Of these what will be done, or what anybody else will do, turns nothing. */
const ANY_WAY: ReadonlySet<Kind> = new Set([
  "work",
  "start",
  "finish",
  "list",
  "reprice",
  "drive",
  "spend",
  "lent",
]);
/** Of these what we will do ourselves turns nothing, but where it is to hand over or to pay. */
const BY_OURSELVES: ReadonlySet<Kind> = new Set([
  "buy",
  "retire",
  "fallthrough",
  "refund",
  "trade",
  "income",
]);

/** Whether what is to come turns nothing of what else is told. */
export function isBeside(tokens: readonly Tok[], plan: Plan, told: readonly Tok[]): boolean {
  const words = tokens.slice(plan.from, plan.to);
  if (!words.every((token, at) => isHoped(words, token, at))) return false;
  const kinds = kindsIn(told);
  if (isWeather(words)) return true;
  if (!isOfDealBeside(words, plan, kinds, told)) return false;
  const named = words.some(({ mention }) => mention && !mention.it);
  // "and thinking of dropping the hutch to 200": asked.
  if (named && words.some(({ kind }) => kind === "amount")) return false;
  if (kinds.has("finish") && !told.some(isTimed) && isUnfinished(words, named)) return false;
  // "tossed most of it, ill toss the rest tomorrow"
  const done = kindsIn(told.filter((token) => headsOf(token).length <= PLAIN_MAX));
  const same = [...kindsIn(words)].filter((kind) => done.has(kind) && !AS_OFTEN.has(kind));
  const isAgain = words.some(({ text }) => /\b(?:again|another|next)\b/.test(text));
  return same.length === 0 || named || isAgain;
}

/** A verb of more kinds ("put") says none of them by itself. */
const PLAIN_MAX = 3;

/** Done as often as one likes. */
const AS_OFTEN: ReadonlySet<Kind> = new Set(["work", "spend", "start", "drive"]);

const isWeather = (words: readonly Tok[]): boolean =>
  ITS.has(words[0]!.text) && words.some(({ text }) => WEATHER.has(text));

/** Whether it turns no deal that is told. */
function isOfDealBeside(
  words: readonly Tok[],
  plan: Plan,
  kinds: ReadonlySet<Kind>,
  told: readonly Tok[],
): boolean {
  if ([...kinds].every((kind) => ANY_WAY.has(kind)) || kinds.has("lent")) return true;
  // "holding it til tuesday, hes coming after work": held it stays.
  const isHeld = kinds.has("hold") && told.some(({ text }) => HOLDS.has(text));
  if (isHeld) return told.some(({ kind }, at) => kind === "day" && UNTIL.has(told[at - 1]?.text ?? ""));
  if (!plan.isOurs) return false;
  if (isOfOther(words, told)) return true;
  const isHandedOver = words.some((token, at) => isHandover(words, token, at));
  if (isHandedOver) return false;
  return [...kinds].every((kind) => ANY_WAY.has(kind) || BY_OURSELVES.has(kind)) || !words.some(isOfIt);
}

/** "get it tomorrow", "pay her friday", and no "get 40 for it", "taking tomorrow off". */
function isHandover(words: readonly Tok[], { text }: Tok, at: number): boolean {
  if (!text.split(" ").some((word) => OF_HANDOVER.has(word))) return false;
  const next = words[at + 1];
  return !(next?.kind === "amount" || next?.kind === "day" || (next && isAhead(next)));
}

const isOfIt = ({ roles, text }: Tok): boolean => roles.pronoun === true || PERSONAL.test(text);
const PERSONAL = /^(?:him|her|them|he|she|they|his|their)$/;

/** What is to come is of something else: of another piece, or of a place to go to. */
const isOfOther = (words: readonly Tok[], told: readonly Tok[]): boolean =>
  !words.some(isOfIt) &&
  words.some(
    ({ text, mention, roles }) =>
      text.startsWith("another") ||
      roles.place !== undefined ||
      (mention && !told.some((other) => other.mention?.name === mention.name)),
  );

/** "finished the desk, just need to put the knobs on": part of it is still to do. */
const isUnfinished = (words: readonly Tok[], named: boolean): boolean =>
  !named && words.some(({ roles, text }) => roles.labor || roles.supply || PIECE_PARTS.has(text));

const isTimed = ({ kind }: Tok): boolean => kind === "duration";

/** A sum of what is to come is one that is hoped or asked for; a time or a way stands for what was done. */
function isHoped(words: readonly Tok[], { kind }: Tok, at: number): boolean {
  if (kind === "duration" || kind === "miles" || kind === "percent") return false;
  if (kind !== "amount") return true;
  const before = words[at - 1];
  return (
    before !== undefined &&
    (BEFORE_HOPED.has(before.text) || BEFORE_HOPED.has(before.text.split(" ").at(-1)!))
  );
}
