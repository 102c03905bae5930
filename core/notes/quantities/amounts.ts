import type { Cents } from "../../money.ts";
import { AMOUNT_CENTS_MAX } from "../../money.ts";

/** An exact decimal: `digits` ÷ 10^`scale`. */
export interface Exact {
  digits: number;
  scale: number;
}

/** Why a number is no amount that may be written down. */
type Flaw = "decimals" | "negative" | "large" | "range" | "vague";

/** A number as said. `exact` is null where a flaw leaves none. */
export interface Amount {
  exact: Exact | null;
  flaw?: Flaw;
  /** It is money beyond doubt: a currency sign or word, "k", or two decimals. */
  money: boolean;
  /** The factors of a product, count and price in the order typed. */
  factors?: [Exact, Exact];
  sum?: true;
  /** Said so that one of these may be meant, in whole cents, likelier first. */
  either?: readonly number[];
}

const PLAIN = /^(?:\d{1,3}(?:,\d{3}){1,4}|\d{1,12})?(?:\.\d{1,9})?$/;

/** "1,250.75" to an exact decimal; null for anything else. */
export function exactOf(text: string): Exact | null {
  if (!PLAIN.test(text) || text === "" || text === ".") return null;
  const plain = text.includes(",") ? text.replaceAll(",", "") : text;
  const point = plain.indexOf(".");
  const digits = point < 0 ? plain : plain.slice(0, point) + plain.slice(point + 1);
  if (digits.length > 15) return null;
  return { digits: Number(digits), scale: point < 0 ? 0 : plain.length - point - 1 };
}

export function times(a: Exact, b: Exact): Exact {
  return { digits: a.digits * b.digits, scale: a.scale + b.scale };
}

export function plus(a: Exact, b: Exact): Exact {
  const scale = Math.max(a.scale, b.scale);
  return { digits: a.digits * 10 ** (scale - a.scale) + b.digits * 10 ** (scale - b.scale), scale };
}

export function wholeOf(exact: Exact | null): number | null {
  if (!exact) return null;
  const value = exact.digits / 10 ** exact.scale;
  return Number.isSafeInteger(value) ? value : null;
}

/** A plain decimal without needless zeros: "31.5", "24". */
export function decimalText(exact: Exact): string {
  const digits = String(exact.digits).padStart(exact.scale + 1, "0");
  if (exact.scale === 0) return digits;
  const fraction = digits.slice(-exact.scale).replace(/0+$/, "");
  return digits.slice(0, -exact.scale) + (fraction ? `.${fraction}` : "");
}

/** Whole cents of an exact amount, or why there are none. */
export function centsOfExact(exact: Exact): { cents: Cents } | { flaw: Flaw } {
  const cents = (exact.digits * 100) / 10 ** exact.scale;
  if (cents > AMOUNT_CENTS_MAX) return { flaw: "large" };
  if (exact.scale > 2 && (exact.digits * 100) % 10 ** exact.scale !== 0) return { flaw: "decimals" };
  return Number.isSafeInteger(Math.round(cents)) ? { cents: Math.round(cents) } : { flaw: "large" };
}

const SIGN = "[$€£]?";
const NUMBER = "[\\d,]{0,15}\\d(?:\\.\\d{1,9})?|\\.\\d{1,9}";
const SIMPLE = new RegExp(`^(-?)(${SIGN})(-?)(${NUMBER})([$€£]|k|usd|bucks?|bux)?$`);
const PRODUCT = new RegExp(`^(${SIGN})(${NUMBER})[x×*@](${SIGN})(${NUMBER})$`);
const SUM = new RegExp(`^${SIGN}(?:${NUMBER})(?:\\+${SIGN}(?:${NUMBER})){1,9}[$€£]?$`);
const RANGE = new RegExp(`^${SIGN}(?:${NUMBER})[-/]${SIGN}(?:${NUMBER})[$€£k]?$`);

function simpleAmount(match: RegExpExecArray): Amount {
  const [, minus, sign, innerMinus, digits = "", unit] = match;
  const money = Boolean(sign || unit) || /^[^.]*\.\d{2}$/.test(digits);
  if (minus || innerMinus) return { exact: null, flaw: "negative", money };
  const exact = exactOf(digits);
  // The books are in one currency: the sign of another says that it is not that one, or nothing.
  if (/[€£]/.test(`${sign}${unit}`)) return exact ? foreign(exact) : { exact, flaw: "vague", money };
  if (!exact) return { exact: null, flaw: /^\d{13,}/.test(digits) ? "large" : "vague", money };
  if (unit === "k") return { exact: { digits: exact.digits * 1000, scale: exact.scale }, money: true };
  if (exact.scale > 2) return { exact, flaw: "decimals", money };
  return { exact, money };
}

/** So much of another money, or of this one in the words of another country. */
export function foreign(exact: Exact | null): Amount {
  const said = exact && centsOfExact(exact);
  const isWhole = said && "cents" in said;
  return { exact: null, flaw: "vague", money: true, ...(isWhole ? { either: [said.cents] } : {}) };
}

function productAmount(match: RegExpExecArray): Amount {
  const left = exactOf(match[2]!);
  const right = exactOf(match[4]!);
  if (!left || !right || left.digits > 1e8 || right.digits > 1e8)
    return { exact: null, flaw: "vague", money: true };
  const exact = times(left, right);
  return { exact, money: true, factors: [left, right], ...(exact.scale > 4 ? { flaw: "decimals" } : {}) };
}

/** Reads a number as typed ("$30", "1.2k", "6x2.50", "20+15"); null where the text is no number. */
export function amountOf(text: string): Amount | null {
  const simple = SIMPLE.exec(text);
  if (simple) return simpleAmount(simple);
  const product = PRODUCT.exec(text);
  if (product) return productAmount(product);
  if (SUM.test(text)) {
    const parts = text.replace(/[$€£]/g, "").split("+").map(exactOf);
    if (parts.some((part) => !part || part.scale > 2)) return { exact: null, flaw: "decimals", money: true };
    return { exact: (parts as Exact[]).reduce(plus), money: true, sum: true };
  }
  if (RANGE.test(text)) return { exact: null, flaw: "range", money: false };
  return null;
}
