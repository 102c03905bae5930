import { TITLES } from "../words/people.ts";
import { SOUNDS } from "../words/shorthand.ts";
import { GLUED } from "../words/units.ts";

/** A word, a number as typed, or a mark, with where it stood in the line. */
export interface Word {
  kind: "letters" | "digits" | "mark";
  /** Lower case, without accents and apostrophes. */
  norm: string;
  start: number;
  end: number;
  /** A blank stood before it. */
  apart: boolean;
  /** A number glued to a word by a point: "screws.75" may be 75 or 0.75. */
  doubtful?: true;
}

// Every repeat is bounded or over one class of characters, so that reading stays linear in the line's length.
const BLANK = /(?:\s|\u200b|\u200c|\u200d|\ufe0f)+/uy;
/** No number has more characters than this; what goes on is cut there. */
const DIGITS_MAX = 32;
const DIGITS = /[-−]?[$€£]?[-−]?(?:\d|\.\d|[½¼¾])[\da-z.,:/×*+$€£%½¼¾"'@-]{0,31}/iuy;
const COUNT_X = /x\d{1,3}(?![\p{L}\d.])/iuy;
/** "b4", "2day": a digit that sounds like a part of a word. */
const SOUNDED = /(?:b4|2day|2nite|2night|2moro|2morrow|l8r|gr8)(?![\p{L}\d])/iuy;
/** What these begin with. */
const SOUNDED_FIRST = "b2lg";
const LETTERS = /\p{L}[\p{L}\p{M}'’‘]{0,47}/uy;
const MARK = /->|=>|[→≈<>,.;:!?&+*×\-–—@#()~=/$|…%]/uy;

function normalize(text: string): string {
  const lower = text.toLowerCase().replace(/['’‘]/g, "");
  // "we'd bought it" is no Wednesday, and says what "i'd" does.
  if (lower === "wed" && text.length > lower.length) return "id";
  // Plain ASCII, nearly always, needs no taking apart of accents.
  return /^[a-z]*$/.test(lower) ? lower : lower.normalize("NFD").replace(/\p{M}/gu, "");
}

function matchAt(pattern: RegExp, line: string, at: number): string | null {
  pattern.lastIndex = at;
  const match = pattern.exec(line);
  return match ? match[0] : null;
}

/** How much of a chunk that begins like a number is one: the rest is read on its own ("30,drove", "3chairs"). */
function numberLength(chunk: string, after: string): number {
  let length = chunk.length;
  while (length > 1 && ".,:/-+*@'×".includes(chunk[length - 1]!)) length -= 1;
  // Inches only where what they measure follows: '60" desk'.
  if (chunk[length - 1] === '"' && !/^ \p{L}/u.test(after)) length -= 1;
  const trimmed = chunk.slice(0, length);
  // A comma is part of a number only between digits; a full stop only before a digit.
  const stop = /,(?!\d)|\.(?!\d)|[+*/:@×-](?![\d.$])/.exec(trimmed.slice(1));
  if (stop) length = stop.index + 1;
  const glued = /^([$€£]?[\d,.]+)([a-z]+)$/i.exec(chunk.slice(0, length));
  // One stray letter ("2O") is a slip inside the number, and nobody can say which.
  return glued && glued[2]!.length > 1 && !GLUED.test(glued[2]!) ? glued[1]!.length : length;
}

export const isDigit = (code: number): boolean => code >= 48 && code <= 57;

/** The length of plain digits with a blank behind them ("35", "12.50"), by far the commonest number; else 0. */
function plainDigits(line: string, at: number): number {
  let end = at;
  while (isDigit(line.charCodeAt(end))) end += 1;
  if (end === at) return 0;
  if (line.charCodeAt(end) === 46 && isDigit(line.charCodeAt(end + 1))) {
    end += 1;
    while (isDigit(line.charCodeAt(end))) end += 1;
  }
  const isWhole = end === line.length || line.charCodeAt(end) === 32;
  return isWhole && end - at <= DIGITS_MAX ? end - at : 0;
}

/** "28.04.: sold …", "28.04. sold …", "on 28.4.2026": a day with the point behind it that an amount never has there. */
const DOTTED_DAY = /^(?:0?[1-9]|[12]\d|3[01])\.(?:0?[1-9]|[12]\d|3[01])\.(?:20\d\d)?(?=:|$)/;
const BEFORE_DAY = /(?:^|;|\bon)\s{0,9}$/i;

function digitsAt(line: string, at: number): number {
  const plain = plainDigits(line, at);
  if (plain > 0) return plain;
  const previous = at > 0 ? line[at - 1]! : " ";
  const chunk = matchAt(DIGITS, line, at);
  if (!chunk) return 0;
  // "dresser-45" is a dash; only a minus after a blank is a sign.
  if (/[-−]/.test(chunk[0]!) && !/[\s(=:]/.test(previous)) return 0;
  // "desk...90" and "screws.75": only after a blank or a sign does a number begin with its point.
  if (chunk[0] === "." && !/[\s(=:$]/.test(previous)) return 0;
  const dotted = DOTTED_DAY.exec(chunk);
  if (dotted && (/^:/.test(chunk.slice(dotted[0].length)) || BEFORE_DAY.test(line.slice(0, at))))
    return dotted[0].length;
  return numberLength(chunk, line.slice(at + chunk.length, at + chunk.length + 2));
}

/** "screws.75", "l5": a number that grows out of a word may be another number. */
function isGlued(words: readonly Word[], apart: boolean): boolean {
  if (!apart && words.at(-1)?.kind === "letters") return true;
  const point = words.at(-1);
  return !apart && point?.norm === "." && !point.apart && words.at(-2)?.kind === "letters";
}

/** The next word of a line at a place that is no blank; null where what stands there is dropped. */
function wordAt(
  line: string,
  lower: string,
  at: number,
  words: readonly Word[],
  apart: boolean,
): Word | null {
  const plain = asciiLetters(line, at);
  if (plain > 0)
    return { kind: "letters", norm: lower.slice(at, at + plain), start: at, end: at + plain, apart };
  const sounded = SOUNDED_FIRST.includes(lower[at]!) ? matchAt(SOUNDED, line, at) : null;
  if (sounded) {
    const norm = SOUNDS[sounded.toLowerCase()]!;
    return { kind: "letters", norm, start: at, end: at + sounded.length, apart };
  }
  const digits = digitsAt(line, at);
  if (digits > 0) {
    const typed = lower.slice(at, at + digits);
    const norm = typed.startsWith("−") ? typed.replaceAll("−", "-") : typed;
    const word: Word = { kind: "digits", norm, start: at, end: at + digits, apart };
    return isGlued(words, apart) ? { ...word, doubtful: true } : word;
  }
  const count = matchAt(COUNT_X, line, at);
  const text = count ?? matchAt(LETTERS, line, at);
  if (text)
    return {
      kind: count ? "digits" : "letters",
      norm: normalize(text),
      start: at,
      end: at + text.length,
      apart,
    };
  const mark = matchAt(MARK, line, at);
  if (
    mark === "." &&
    !apart &&
    TITLES.has(words.at(-1)?.norm ?? "") &&
    /^ \p{L}/u.test(line.slice(at + 1, at + 3))
  )
    return null;
  // "w/" is "with".
  if (
    !mark ||
    isHyphen(mark, line, at, words, apart) ||
    (mark === "/" && !apart && words.at(-1)?.norm === "w")
  )
    return null;
  return { kind: "mark", norm: PLAIN_MARKS[mark] ?? mark, start: at, end: at + mark.length, apart };
}

const PLAIN_MARKS: Readonly<Record<string, string>> = {
  "–": "-",
  "—": "-",
  "…": ".",
  "->": "→",
  "=>": "→",
  "≈": "~",
  "<": "~",
  ">": "~",
};

/** "mid-century" is two words. */
function isHyphen(mark: string, line: string, at: number, words: readonly Word[], apart: boolean): boolean {
  return mark === "-" && !apart && words.at(-1)?.kind === "letters" && /\p{L}/u.test(line[at + 1] ?? "");
}

const isAsciiLetter = (code: number): boolean => (code >= 97 && code <= 122) || (code >= 65 && code <= 90);

/** The length of a word of plain letters, by far the commonest kind; 0 where a slower look is needed. */
function asciiLetters(line: string, at: number): number {
  let end = at;
  while (end < line.length && isAsciiLetter(line.charCodeAt(end))) end += 1;
  const next = line.charCodeAt(end);
  const length = end - at;
  // An accent, an apostrophe or a digit right behind it: "étagère", "what's", "x4".
  const goesOn = next > 127 || next === 39 || (next >= 48 && next <= 57);
  return length === 0 || length > 48 || goesOn ? 0 : length;
}

/** The first of some words with single blanks between; splitting them costs many times as much. */
export function firstWord(text: string): string {
  const blank = text.indexOf(" ");
  return blank < 0 ? text : text.slice(0, blank);
}

/** The last of them; the engine looks for the last blank in code of its own, outside of what it compiled. */
export function lastWord(text: string): string {
  let from = text.length;
  while (from > 0 && text.charCodeAt(from - 1) !== 32) from -= 1;
  return from === 0 ? text : text.slice(from);
}

/** "re-glued", "un-nailing" are one word. */
const isAgainPart = (before: Word, { kind, start }: Word, line: string): boolean =>
  kind === "letters" &&
  /^(?:re|un|de)$/.test(before.norm) &&
  start === before.end + 1 &&
  line[before.end] === "-";

const again = (before: Word, word: Word): Word => ({
  ...word,
  norm: before.norm + word.norm,
  start: before.start,
  apart: before.apart,
});

/** The words, numbers and marks of one line, in order; anything else (emoji, other signs) is dropped. */
export function wordsOf(line: string): Word[] {
  const words: Word[] = [];
  // Only some letters beyond ASCII change their length in lower case ("İ"); plain words are lowered all at once.
  const lowered = line.toLowerCase();
  const lower =
    lowered.length === line.length ? lowered : line.replace(/[A-Z]+/g, (plain) => plain.toLowerCase());
  let at = 0;
  let apart = true;
  while (at < line.length) {
    const code = line.charCodeAt(at);
    const blank = code === 32 ? 1 : code > 127 || code < 32 ? (matchAt(BLANK, line, at)?.length ?? 0) : 0;
    if (blank > 0) {
      at += blank;
      apart = true;
      continue;
    }
    const word = wordAt(line, lower, at, words, apart);
    if (word) {
      const before = words.at(-1);
      if (before && isAgainPart(before, word, line)) words[words.length - 1] = again(before, word);
      else words.push(word);
      at = word.end;
      apart = false;
      continue;
    }
    // A hyphen and a stroke join; an emoji parts.
    apart = (code !== 45 && code !== 47) || apart;
    at += (line.codePointAt(at) ?? 0) > 0xffff ? 2 : 1;
  }
  return words;
}
