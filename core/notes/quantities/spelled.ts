import { CURRENCY_WORDS, NOTES_OF, SCALES, TENS, UNITS } from "../words/numbers.ts";

/** "forty five", "two hundred and fifty", "a hundred": value and words used; flawed where it may mean two things. */
export interface Spelled {
  value: number;
  words: number;
  vague?: true;
}

export function smallNumberAt(norms: readonly string[], at: number): Spelled | null {
  const word = norms[at] ?? "";
  const ten = TENS[word];
  if (ten !== undefined) {
    const hyphen = norms[at + 1] === "-" ? 2 : 1;
    const unit = UNITS[norms[at + hyphen] ?? ""];
    return unit !== undefined && unit > 0 && unit < 10
      ? { value: ten + unit, words: hyphen + 1 }
      : { value: ten, words: 1 };
  }
  const unit = UNITS[word];
  return unit === undefined ? null : { value: unit, words: 1 };
}

function startsNumber(norms: readonly string[], at: number): boolean {
  return smallNumberAt(norms, at) !== null;
}

export function spelledAt(norms: readonly string[], start: number): Spelled | null {
  let at = start;
  let value = 0;
  const article = /^an?$/.test(norms[at] ?? "");
  if (article || SCALES[norms[at] ?? ""] === 100) {
    if (!SCALES[norms[article ? at + 1 : at] ?? ""]) return null;
    value = 1;
    if (article) at += 1;
  } else {
    const small = smallNumberAt(norms, at);
    if (!small) return null;
    value = small.value;
    at += small.words;
    // "two forty", "twelve fifty", "twenty twenty": dollars and cents, hundreds, or two numbers.
    if (startsNumber(norms, at)) {
      const dollars = dollarsAt(norms, at, value);
      if (dollars) return { ...dollars, words: at + dollars.words - start };
      let more = smallNumberAt(norms, at);
      while (more) {
        at += more.words;
        more = smallNumberAt(norms, at);
      }
      return { value: 0, words: at - start, vague: true };
    }
  }
  return scaledFrom(norms, start, at, value);
}

/** "one seventy five dollars" says hundreds, as no cents are said so; "six six dollars" is one number said twice. */
function dollarsAt(norms: readonly string[], at: number, first: number): Spelled | null {
  const small = smallNumberAt(norms, at)!;
  const next = at + small.words;
  if (!CURRENCY_WORDS.has(norms[next] ?? "") || NOTES_OF.has(norms[next + 1] ?? "")) return null;
  if (small.value === first) return small;
  const isHundreds = first > 0 && first < 10 && small.value >= 10;
  return isHundreds ? { value: first * 100 + small.value, words: small.words } : null;
}

function scaledFrom(norms: readonly string[], start: number, from: number, first: number): Spelled {
  let at = from;
  let value = first;
  let scale = SCALES[norms[at] ?? ""];
  let scaled = false;
  while (scale !== undefined) {
    value *= scale;
    at += 1;
    scaled = true;
    const link = norms[at] === "and" && startsNumber(norms, at + 1) ? 1 : 0;
    const rest = smallNumberAt(norms, at + link);
    if (!rest) break;
    at += link + rest.words;
    // "one thousand two hundred fifty"
    if (scale === 1000 && SCALES[norms[at] ?? ""] === 100) {
      const tail: Spelled = scaledFrom(norms, at, at, rest.value);
      return {
        value: value + tail.value,
        words: at + tail.words - start,
        ...(tail.vague ? { vague: true } : {}),
      };
    }
    value += rest.value;
    if (startsNumber(norms, at)) return { value: 0, words: at - start, vague: true };
    scale = undefined;
  }
  return { value, words: at - start, ...(scaled || first < 100 ? {} : { vague: true }) };
}
