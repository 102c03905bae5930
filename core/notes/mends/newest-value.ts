import { MEASURES, type Tok, textOf } from "../clause.ts";
import type { ReadingFields } from "../reading.ts";
import { centsIn } from "../slots/money.ts";
import {
  BESIDE_EXACT,
  COMES_TO,
  EXACT,
  EXTRAS,
  MEASURE_TOLD,
  OPENS_EXACT,
  TELLS_TOTAL,
  TOTAL_SAID,
  VALUE_TOLD,
} from "../words/mending.ts";
import { isOpening } from "./left-out.ts";

const VALUE_TOKENS_MAX = 9;
/** What is in a value is said in so many words. */
const IN_IT_MAX = 3;

const isValue = ({ kind }: Tok): boolean => MEASURES.has(kind);

const isWordOrValue = (token: Tok): boolean =>
  token.kind === "word" || token.kind === "mark" || isValue(token);

/** "i paid 25", "it took 2 hours", "plus tax so 21.35 all in" as the whole line: the value of the newest note; null where it says anything else. */
export function valueSaid(said: readonly Tok[]): ReadingFields["fix"] | null {
  if (!mayBeValue(said)) return null;
  const line = withoutTail(said);
  if (line.length > VALUE_TOKENS_MAX) return null;
  // "*34.15": what was typed wrong, put right.
  if (line.length === 2 && line[0]!.text === "*" && !line[1]!.each) return valueIn(line[1]!);
  const [value, ...others] = withoutExtra(line).filter(isValue);
  if (!value || others.length > 0 || value.each) return null;
  const rest = line.filter(({ kind }) => kind === "word");
  const isTotal = value.kind === "amount" && isOfTotal(rest) && rest.length + 3 >= line.length;
  const isExact = line.length < said.length && rest.every(isOpening);
  const words = textOf(rest);
  // "it's 165" may be a price tag, "it's 20 miles" is the drive that was told.
  const isTold = VALUE_TOLD.has(words) || (value.kind !== "amount" && MEASURE_TOLD.has(words));
  return isTotal || isExact || isTold ? valueIn(value) : null;
}

/** Nothing but words and values: far cheaper to tell than what they say. */
function mayBeValue(said: readonly Tok[]): boolean {
  let hasValue = false;
  for (let at = 0; at < said.length; at += 1) {
    if (!isWordOrValue(said[at]!)) return false;
    hasValue ||= isValue(said[at]!);
  }
  return hasValue;
}

/** What a value puts right: money, or minutes and miles, which may be a note of their own. */
function valueIn(value: Tok): ReadingFields["fix"] | null {
  if (value.kind === "duration")
    return value.minutes === undefined ? null : { minutes: value.minutes, isTold: true };
  if (value.kind === "miles") return value.miles === undefined ? null : { miles: value.miles, isTold: true };
  const amount = value.kind === "amount" ? centsIn(value) : null;
  return amount === null ? null : { amount };
}

/** "33.40 to be exact", "more like 2 if i'm honest", "closer to 3 with the drawers": how well it is known, or what is in it. */
function withoutTail(line: readonly Tok[]): readonly Tok[] {
  const at = line.findLastIndex(({ text }, place) => place > 0 && OPENS_EXACT.has(text));
  const tail = line.slice(at + 1);
  if (at < 0 || !tail.every(({ kind }) => kind === "word")) return line;
  const isExact =
    tail.some(({ text }) => EXACT.has(text)) &&
    tail.every(({ text }) => BESIDE_EXACT.has(text) || EXACT.has(text));
  const told = textOf(line.slice(0, at).filter(({ kind }) => kind === "word"));
  const isIn =
    line[at]!.text === "with" && tail.length > 0 && tail.length <= IN_IT_MAX && VALUE_TOLD.has(told);
  return isExact || isIn ? line.slice(0, at) : line;
}

/** "plus 3 tax so 43 all in": 43. */
const withoutExtra = (line: readonly Tok[]): readonly Tok[] =>
  line.filter(({ kind }, at) => kind !== "amount" || !EXTRAS.has(line[at + 1]?.text ?? ""));

/** What it came to in the end, in words of nothing else. */
const isOfTotal = (rest: readonly Tok[]): boolean => {
  if (!rest.every(({ text }) => text.includes(" ") || isSaidOfTotal(text))) return false;
  const words = rest.flatMap(({ text }) => text.split(" "));
  const isTold = words.some((word) => TELLS_TOTAL.has(word));
  // "plus tax 2" is no total.
  const isWithExtra = words.some((word) => EXTRAS.has(word)) && words.some((word) => COMES_TO.has(word));
  return words.every(isSaidOfTotal) && (isTold || isWithExtra);
};

const isSaidOfTotal = (word: string): boolean => TOTAL_SAID.has(word) || EXTRAS.has(word);
