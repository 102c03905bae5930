import type { Cursor, Part } from "../tokens/token.ts";
import { ACCORDING_TO } from "../words/money.ts";
import { CENT_WORDS, CURRENCY_WORDS, DOLLAR_PARTS, EACH_WORDS, PART_OF_ELSE } from "../words/numbers.ts";
import { PERIODS } from "../words/units.ts";
import type { Amount, Exact } from "./amounts.ts";
import { plus, times } from "./amounts.ts";
import { numberAt, timesAfter, whole } from "./numbers.ts";

/** The money words after a number: "bucks", "dollars and fifty cents", "each". */
export function moneyAfter(number: { amount: Amount; words: number }, { norms, at }: Cursor): Part {
  let { amount } = number;
  let words = number.words;
  const unit = norms[at + words] ?? "";
  if (CENT_WORDS.has(unit) && amount.exact) {
    amount = {
      ...amount,
      exact: { digits: amount.exact.digits, scale: amount.exact.scale + 2 },
      money: true,
    };
    words += 1;
  } else if (CURRENCY_WORDS.has(unit) || unit === "$" || (unit === "k" && amount.exact)) {
    if (unit === "k" && amount.exact) {
      const { flaw: _, ...rest } = amount;
      amount = { ...rest, exact: times(amount.exact, whole(1000)) };
    }
    amount = { ...amount, money: true };
    words += 1;
    const part = partAfter(norms, at + words);
    // "a hundred dollars and a quarter" could be 125 as well.
    if (part && amount.exact) {
      const isRound =
        amount.exact.scale === 0 && amount.exact.digits >= 100 && amount.exact.digits % 100 === 0;
      return isRound
        ? { kind: "amount", amount: { exact: null, flaw: "vague", money: true }, words: words + 3 }
        : { kind: "amount", amount: { ...amount, exact: plus(amount.exact, part) }, words: words + 3 };
    }
    const link = norms[at + words] === "and" ? 1 : 0;
    const cents = at + words + link < norms.length ? numberAt({ norms, at: at + words + link }) : null;
    if (cents?.amount.exact && amount.exact && CENT_WORDS.has(norms[at + words + link + cents.words] ?? "")) {
      const part = { digits: cents.amount.exact.digits, scale: cents.amount.exact.scale + 2 };
      amount = { ...amount, exact: plus(amount.exact, part) };
      words += link + cents.words + 1;
    }
  }
  const each = eachAfter(norms, at + words);
  const often = each > 0 || amount.exact?.scale ? timesAfter(norms, at + words + each) : null;
  // "8 each x 4", "3.50 times 6": so many at that price; but "toll 3.50 twice" may be both together.
  if (
    often &&
    /^(?:[x×*]|times$)/.test(norms[at + words + each]!) &&
    amount.exact &&
    !amount.flaw &&
    !amount.factors
  ) {
    const factors: [Exact, Exact] = [whole(often.times), amount.exact];
    const product = { exact: times(...factors), money: true, factors };
    return { kind: "amount", amount: product, words: words + each + often.words };
  }
  return {
    kind: "amount",
    amount,
    words: words + each,
    ...(each ? { each: true } : {}),
  };
}

/** "six dollars and a quarter", "ten bucks and a half": the parts of a dollar behind whole ones. */
function partAfter(norms: readonly string[], at: number): Exact | null {
  if (norms[at] !== "and" || norms[at + 1] !== "a") return null;
  const cents = DOLLAR_PARTS[norms[at + 2] ?? ""];
  const isElse = PART_OF_ELSE.has(norms[at + 3] ?? "");
  return cents === undefined || isElse ? null : { digits: cents, scale: 2 };
}

function eachAfter(norms: readonly string[], at: number): number {
  const word = norms[at] ?? "";
  if (EACH_WORDS.has(word)) return norms[at + 1] === "way" ? 0 : 1;
  if (word === "a" && /^(?:piece|pop)$/.test(norms[at + 1] ?? "")) return 2;
  // "15/each", "15 / ea"
  if (word === "/")
    return EACH_WORDS.has(norms[at + 1] ?? "") || isSaidBefore(norms, at, norms[at + 1]) ? 2 : 0;
  if (word === "per" && (PERIODS.has(norms[at + 1] ?? "") || ACCORDING_TO.has(norms[at + 1] ?? ""))) return 0;
  if (word === "per") return perUnit(norms[at + 1]);
  if (/^an?$/.test(word) && isSaidBefore(norms, at, norms[at + 1])) return 2;
  return word === "for" && norms[at + 1] === "each" ? 2 : 0;
}

const UNITS =
  /^(?:pieces?|pcs?|item|one|each|unit|set|pair|chair|table|lamp|stool|bench|desk|shelf|frame|mirror|box|can|bag|roll|sheet|pack|gallon|quart|foot|ft|yard|yd|lb|pound|hour|hr|knob|pull|drawer|leg|hinge|night)$/;

/** "15 per chair" is for one; "140 per bob" is whoever said so. */
const perUnit = (unit: string | undefined): number =>
  unit === undefined || !/^[a-z]/.test(unit) ? 1 : UNITS.test(unit) ? 2 : 0;

/** "4 chairs 15 a chair": the same noun again is the price of one. */
function isSaidBefore(norms: readonly string[], at: number, noun: string | undefined): boolean {
  if (noun === undefined) return false;
  for (let back = Math.max(0, at - 8); back < at; back += 1)
    if (norms[back] === `${noun}s` || norms[back] === noun) return true;
  return false;
}

/** "a buck fifty" and "screws.75": money, but how much? */
export function vagueAmount({ norms, at }: Cursor): Part | null {
  const next = at + 1 < norms.length ? numberAt({ norms, at: at + 1 }) : null;
  return next
    ? { kind: "amount", amount: { exact: null, flaw: "vague", money: true }, words: 1 + next.words }
    : null;
}
