import type { Part } from "../tokens/token.ts";
import {
  BEFORE_HUNDREDS,
  BEHIND_NO_DOLLAR,
  CURRENCY_WORDS,
  NOTE_WORDS,
  PART_OF_ELSE,
  SCALES,
  SLANG_SUMS,
  TENS,
  UNITS,
} from "../words/numbers.ts";
import type { Exact } from "./amounts.ts";
import { smallNumberAt } from "./spelled.ts";

/*
 * Amounts as people say them: in notes of money ("three twenties"), in halves and quarters ("twelve and a half",
 * "a hundred and a quarter"), in parts of a thousand ("half a grand"), in dollars and cents ("a buck fifty",
 * "two fifty"). What two people would take for two amounts carries both.
 */

const cents = (value: number): Exact => ({ digits: value, scale: 2 });

function money(value: number, words: number): Part {
  return { kind: "amount", amount: { exact: cents(Math.round(value * 100)), money: true }, words };
}

/** A small count at a place, typed or spelled: "2", "three", "a", "a couple of". */
function countAt(norms: readonly string[], at: number): { value: number; words: number } | null {
  const word = norms[at] ?? "";
  if (/^\d{1,3}$/.test(word)) return { value: Number(word), words: 1 };
  if (word === "couple") return { value: 2, words: norms[at + 1] === "of" ? 2 : 1 };
  if (word === "a" && norms[at + 1] === "couple") return { value: 2, words: norms[at + 2] === "of" ? 3 : 2 };
  if (word === "a" || word === "an") return { value: 1, words: 1 };
  return smallNumberAt(norms, at);
}

/** "three twenties", "2 20s", "a fifty": so many notes of a worth. */
function notesAt(norms: readonly string[], at: number): Part | null {
  const count = countAt(norms, at);
  if (!count) return null;
  const word = norms[at + count.words] ?? "";
  const worth =
    NOTE_WORDS[word] ?? (/^(?:1|2|5|10|20|50|100)s$/.test(word) ? Number(word.slice(0, -1)) : undefined);
  return worth === undefined ? null : money(count.value * worth, count.words + 1);
}

/** "for a score": a sum by its name, if it is one. */
function slangAt(norms: readonly string[], at: number): Part | null {
  const worth = norms[at] === "a" ? SLANG_SUMS[norms[at + 1] ?? ""] : undefined;
  const isPrice = BEFORE_HUNDREDS.has(norms[at - 1] ?? "") && norms[at + 2] !== "of";
  if (worth === undefined || !isPrice) return null;
  const amount = { exact: null, flaw: "vague", money: true, either: [worth * 100] } as const;
  return { kind: "amount", amount, words: 2 };
}

const PARTS: Readonly<Record<string, number>> = { half: 0.5, quarter: 0.25 };

/** "half a grand", "half a hundred", "quarter of a grand". */
function partOfScaleAt(norms: readonly string[], at: number): Part | null {
  const part = PARTS[norms[at] ?? ""];
  if (part === undefined) return null;
  let next = at + 1;
  if (norms[next] === "of") next += 1;
  if (norms[next] !== "a") return null;
  const scale = SCALES[norms[next + 1] ?? ""];
  return scale === undefined ? null : money(part * scale, next + 2 - at);
}

/** "twelve and a half" is 12.50, "a hundred and a quarter" 125; "a grand and a half" could be either. */
function andPartAt(norms: readonly string[], at: number): Part | null {
  const typed = /^\d{1,6}$/.test(norms[at] ?? "") ? Number(norms[at]) : null;
  const article = norms[at] === "a" || norms[at] === "one" ? 1 : 0;
  const scale = article ? SCALES[norms[at + 1] ?? ""] : undefined;
  const small = typed === null && scale === undefined ? smallNumberAt(norms, at) : null;
  const value = typed ?? scale ?? small?.value;
  const words = typed !== null ? 1 : scale !== undefined ? 2 : (small?.words ?? 0);
  if (value === undefined || norms[at + words] !== "and" || norms[at + words + 1] !== "a") return null;
  const part = PARTS[norms[at + words + 2] ?? ""];
  if (part === undefined || PART_OF_ELSE.has(norms[at + words + 3] ?? "")) return null;
  const spoken = Math.round((value + part) * 100);
  // "two and a quarter" of a hutch is more likely 225.
  if (CURRENCY_WORDS.has(norms[at + words + 3] ?? "")) return money(value + part, words + 4);
  if (typed === null && value < 10) return eitherOf(spoken, [spoken * 100, spoken], words + 3);
  if (scale === undefined) return money(value + part, words + 3);
  // A quarter beside a hundred is one of its own: 25.
  return part === 0.25 && scale === 100 ? money(125, words + 3) : vague(words + 3);
}

const vague = (words: number): Part => ({
  kind: "amount",
  amount: { exact: null, flaw: "vague", money: true },
  words,
});

/** "a buck fifty", "two bucks fifty", "buck twenty five": dollars and cents. */
function bucksAt(norms: readonly string[], at: number): Part | null {
  const isAlone = norms[at] === "buck";
  const count = isAlone ? { value: 1, words: 0 } : countAt(norms, at);
  if (!count || !CURRENCY_WORDS.has(norms[at + count.words] ?? "")) return null;
  const next = at + count.words + 1;
  const isBuck = count.value === 1 && norms[next - 1] === "buck";
  const typed = isBuck && /^\d\d$/.test(norms[next] ?? "") ? { value: Number(norms[next]), words: 1 } : null;
  const small = typed ?? smallNumberAt(norms, next);
  // "for a dollar", and no "dollar store" or "a dollar or two"
  const isOne = norms[at] === "a" && norms[at - 1] === "for" && !BEHIND_NO_DOLLAR.has(norms[next] ?? "");
  if (!small && isOne) return money(1, 2);
  // "forty dollars forty bucks": no cents.
  if (!small || small.value < 5 || small.value > 99 || CURRENCY_WORDS.has(norms[next + small.words] ?? ""))
    return null;
  const words = count.words + 1 + small.words;
  const whole = count.value * 100 + small.value;
  return isBuck ? eitherOf(whole, [whole * 100, whole], words) : money(whole / 100, words);
}

/** What is said of cents where small things are bought, and of a hundred times as much where furniture is. */
const eitherOf = (exact: number, either: [number, number], words: number): Part => ({
  kind: "amount",
  amount: { exact: cents(exact), money: true, either },
  words,
});

/** "thirty one fifty": dollars and cents, of paint. */
function fortyAt(norms: readonly string[], at: number): Part | null {
  const whole = TENS[norms[at] ?? ""] === undefined ? null : smallNumberAt(norms, at);
  const next = at + 2;
  if (whole?.words !== 2 || TENS[norms[next] ?? ""] === undefined) return null;
  const small = smallNumberAt(norms, next)!;
  const after = norms[next + small.words] ?? "";
  if (SCALES[after] !== undefined || CURRENCY_WORDS.has(after)) return null;
  const digits = whole.value * 100 + small.value;
  return eitherOf(digits, [digits, digits * 100], 2 + small.words);
}

/** "two fifty", "one twenty": dollars and cents, or hundreds; "twelve fifty" of paint is 12.50. */
function eitherAt(norms: readonly string[], at: number): Part | null {
  // "listed the desk for 1 forty"
  const typed = /^[1-9]$/.test(norms[at]!) && BEFORE_HUNDREDS.has(norms[at - 1] ?? "");
  const unit = typed ? Number(norms[at]) : UNITS[norms[at] ?? ""];
  if (unit === undefined) return fortyAt(norms, at);
  if (unit < 1) return null;
  const second = norms[at + 1] ?? "";
  const few = second === "oh" ? UNITS[norms[at + 2] ?? ""] : undefined;
  // "one oh five": 105 of a desk, 1.05 of screws.
  if (few !== undefined && few > 0 && few < 10) {
    const whole = unit * 100 + few;
    return unit > 9
      ? eitherOf(whole, [whole, whole * 100], 3)
      : eitherOf(whole * 100, [whole * 100, whole], 3);
  }
  const isSmall = TENS[second] !== undefined || (unit < 10 && (UNITS[second] ?? 0) > 9);
  const small = isSmall ? smallNumberAt(norms, at + 1) : null;
  if (!small || SCALES[norms[at + 1 + small.words] ?? ""] !== undefined) return null;
  if (CURRENCY_WORDS.has(norms[at + 1 + small.words] ?? "")) return null;
  const whole = unit * 100 + small.value;
  if (unit > 9) return eitherOf(whole, [whole, whole * 100], 1 + small.words);
  return {
    kind: "amount",
    amount: { exact: null, flaw: "vague", money: true, either: [whole * 100, whole] },
    words: 1 + small.words,
  };
}

/** "150 to 160" of notes and "paint 1 twenty" keep their own readings; null where nothing is said so. */
export function spokenAt(norms: readonly string[], at: number): Part | null {
  return (
    notesAt(norms, at) ??
    slangAt(norms, at) ??
    partOfScaleAt(norms, at) ??
    andPartAt(norms, at) ??
    bucksAt(norms, at) ??
    eitherAt(norms, at)
  );
}
