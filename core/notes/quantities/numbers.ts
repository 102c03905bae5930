import type { Cursor } from "../tokens/token.ts";
import { SCALES } from "../words/numbers.ts";
import type { Amount, Exact } from "./amounts.ts";
import { amountOf, exactOf, plus, times } from "./amounts.ts";
import type { Spelled } from "./spelled.ts";
import { smallNumberAt, spelledAt } from "./spelled.ts";

export const whole = (value: number): Exact => ({ digits: value, scale: 0 });

/** A number at a place, typed or spelled, before its unit. */
export function numberAt({ norms, at }: Cursor): { amount: Amount; words: number } | null {
  const word = norms[at]!;
  if (word === "$" && norms[at + 1] !== undefined) {
    const amount = amountOf(norms[at + 1]!);
    return amount ? { amount: { ...amount, money: true }, words: 2 } : null;
  }
  const fraction = /^(\d{0,4})([½¼¾])$/.exec(word);
  if (fraction)
    return { amount: { exact: withFraction(fraction[1]!, fraction[2]!), money: false }, words: 1 };
  const typed = /[\d.]/.test(word) ? amountOf(word) : null;
  if (typed) return scaledDigits(typed, norms, at);
  const spelled = spelledAt(norms, at);
  if (!spelled) return null;
  if (spelled.vague) return { amount: { exact: null, flaw: "vague", money: false }, words: spelled.words };
  return withPoint(spelled, norms, at);
}

function withFraction(digits: string, sign: string): Exact {
  const part = sign === "½" ? 50 : sign === "¼" ? 25 : 75;
  return { digits: Number(digits || "0") * 100 + part, scale: 2 };
}

/** "2 hundred", "2 hundred 50", "3 grand". */
export function scaledDigits(
  amount: Amount,
  norms: readonly string[],
  at: number,
): { amount: Amount; words: number } {
  const scale = SCALES[norms[at + 1] ?? ""];
  if (!scale || !amount.exact || amount.flaw || amount.factors) return { amount, words: 1 };
  const exact = times(amount.exact, whole(scale));
  return { amount: { exact: { digits: exact.digits, scale: exact.scale }, money: true }, words: 2 };
}

/** "twelve point five": dictated decimals. */
function withPoint(
  spelled: Spelled,
  norms: readonly string[],
  at: number,
): { amount: Amount; words: number } {
  let next = at + spelled.words;
  if (norms[next] !== "point")
    return { amount: { exact: whole(spelled.value), money: false }, words: spelled.words };
  let digits = "";
  next += 1;
  for (
    let small = smallNumberAt(norms, next);
    small && digits.length < 6;
    small = smallNumberAt(norms, next)
  ) {
    digits += String(small.value);
    next += small.words;
  }
  const exact = exactOf(`${spelled.value}.${digits}`);
  if (!digits || !exact) return { amount: { exact: null, flaw: "vague", money: false }, words: next - at };
  return {
    amount: { exact, money: false, ...(exact.scale > 2 ? { flaw: "decimals" } : {}) },
    words: next - at,
  };
}

const OFTEN: Readonly<Record<string, number>> = { twice: 2, thrice: 3 };

/** The first letters of these, and of "x3". */
const OPENS_TIMES = "tx×*";

/** How often what stands before was done: "x 3", "x3", "3 times", "twice"; in how many words. */
export function timesAfter(norms: readonly string[], at: number): { times: number; words: number } | null {
  const first = norms[at] ?? "";
  const second = norms[at + 1] ?? "";
  if (second !== "times" && !OPENS_TIMES.includes(first.charAt(0))) return null;
  const often = OFTEN[first];
  if (often !== undefined) return { times: often, words: 1 };
  const glued = /^[x×](\d{1,2})$/.exec(first);
  if (glued) return { times: Number(glued[1]), words: 1 };
  if (/^(?:[x×*]|times)$/.test(first) && /^\d{1,2}$/.test(second)) return { times: Number(second), words: 2 };
  const count = second === "times" ? numberAt({ norms, at }) : null;
  const exact = count?.words === 1 ? count.amount.exact : null;
  return exact?.scale === 0 && exact.digits < 100 ? { times: exact.digits, words: 2 } : null;
}

const isLoan = (word: string): boolean => word === "loan" || word === "loans";

/** "20 + 15" and "6 x 2.50" with blanks between, "2.50 x2". */
export function joinedAmount(
  first: { amount: Amount; words: number },
  { norms, at }: Cursor,
): { amount: Amount; words: number } {
  const sign = norms[at + first.words] ?? "";
  const glued = /^[x×](\d{1,3})$/.exec(sign);
  if (glued && first.amount.exact && !first.amount.factors && first.amount.exact.scale > 0) {
    const pair: [Exact, Exact] = [whole(Number(glued[1])), first.amount.exact];
    return { amount: { exact: times(...pair), money: true, factors: pair }, words: first.words + 1 };
  }
  if (!/^[+x×*@]$/.test(sign) || !first.amount.exact || first.amount.factors) return first;
  const next = at + first.words + 1;
  const second = next < norms.length ? numberAt({ norms, at: next }) : null;
  if (!second?.amount.exact || second.amount.flaw || second.amount.factors) return first;
  const words = first.words + 1 + second.words;
  const pair: [Exact, Exact] = [first.amount.exact, second.amount.exact];
  // "loan 7300 @ 5.9": what is owed, and its rate.
  if (sign === "@" && norms.slice(0, at).some(isLoan)) return first;
  if (sign === "+") {
    // "40 + 5 tip" is two things.
    const next = norms[at + words];
    const ends =
      next === undefined ||
      !/^[a-z]/.test(next) ||
      /^(?:for|at|from|to|on|cash|card|check|transfer|bucks|dollars|each|ea|total|in)$/.test(next);
    return ends ? { amount: { exact: plus(...pair), money: true, sum: true }, words } : first;
  }
  return { amount: { exact: times(...pair), money: true, factors: pair }, words };
}

const WHOLE_DIGITS_MAX = 9;

/** Digits with at most two decimals ("35", "12.50"), by far the commonest number; null for any other. */
export function plainAmount(word: string): Amount | null {
  let digits = 0;
  let point = -1;
  for (let at = 0; at < word.length; at += 1) {
    const code = word.charCodeAt(at);
    if (code === POINT && point < 0) point = at;
    else if (code >= ZERO && code <= NINE) digits = digits * 10 + (code - ZERO);
    else return null;
  }
  const whole = point < 0 ? word.length : point;
  const scale = word.length - whole - (point < 0 ? 0 : 1);
  if (whole === 0 || whole > WHOLE_DIGITS_MAX || scale > 2 || (point >= 0 && scale === 0)) return null;
  return { exact: { digits, scale }, money: scale === 2 };
}

const [POINT, ZERO, NINE] = [46, 48, 57];
