import { type Tok, textOf } from "../clause.ts";
import type { ReadingFields } from "../reading.ts";
import { centsIn } from "../slots/money.ts";
import { COMES_TO, EXTRAS, TELLS_TOTAL, TOTAL_SAID, VALUE_TOLD } from "../words/mending.ts";

const VALUE_TOKENS_MAX = 9;

const isValue = ({ kind }: Tok): boolean => kind === "amount" || kind === "duration";

const isWordOrValue = ({ kind }: Tok): boolean =>
  kind === "word" || kind === "mark" || kind === "amount" || kind === "duration";

/** "i paid 25", "it took 2 hours", "plus tax so 21.35 all in" as the whole line: the value of the newest note; null where it says anything else. */
export function valueSaid(line: readonly Tok[]): ReadingFields["fix"] | null {
  if (line.length > VALUE_TOKENS_MAX) return null;
  // "*34.15": what was typed wrong, put right.
  if (line.length === 2 && line[0]!.text === "*" && line[1]!.kind === "amount" && !line[1]!.each) {
    const meant = centsIn(line[1]!);
    return meant === null ? null : { amount: meant };
  }
  if (!line.every(isWordOrValue)) return null;
  const [value, ...others] = withoutExtra(line).filter(isValue);
  if (!value || others.length > 0 || value.each) return null;
  const rest = line.filter(({ kind }) => kind === "word");
  const isTotal = value.kind === "amount" && isOfTotal(rest) && rest.length + 3 >= line.length;
  if (!isTotal && !VALUE_TOLD.has(textOf(rest))) return null;
  if (value.kind === "duration")
    return value.minutes === undefined ? null : { minutes: value.minutes, isTold: true };
  const amount = centsIn(value);
  return amount === null ? null : { amount };
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
