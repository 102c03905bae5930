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
const DIGITS = /[-−]?[$€£]?[-−]?(?:\d|\.\d|[½¼¾])[\da-z.,:/×*+$€£%½¼¾"'@-]{0,31}/iuy;
const COUNT_X = /x\d{1,3}(?![\p{L}\d.])/iuy;
const LETTERS = /\p{L}[\p{L}\p{M}'’‘]{0,47}/uy;
const MARK = /[,.;:!?&+*×\-–—@#()~=/$|…%]/uy;

function normalize(text: string): string {
  const lower = text.toLowerCase().replace(/['’‘]/g, "");
  // Plain ASCII, nearly always, needs no taking apart of accents.
  return /^[a-z]*$/.test(lower) ? lower : lower.normalize("NFD").replace(/\p{M}/gu, "");
}

/** Letters that belong to the number before them; any others are a word of their own ("3chairs", "40cash"). */
const GLUED =
  /^(?:k|h|hr|hrs|hour|hours|m|min|mins|minute|minutes|mi|mile|miles|rt|am|pm|a|p|st|nd|rd|th|ft|in|inch|s|x|usd|bucks?|bux)$/i;

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

function digitsAt(line: string, at: number): number {
  const previous = at > 0 ? line[at - 1]! : " ";
  const chunk = matchAt(DIGITS, line, at);
  if (!chunk) return 0;
  // "dresser-45" is a dash; only a minus after a blank is a sign.
  if (/[-−]/.test(chunk[0]!) && !/[\s(=:]/.test(previous)) return 0;
  // "desk...90" and "screws.75": only after a blank or a sign does a number begin with its point.
  if (chunk[0] === "." && !/[\s(=:$]/.test(previous)) return 0;
  return numberLength(chunk, line.slice(at + chunk.length, at + chunk.length + 2));
}

/** "screws.75", "l5": a number that grows out of a word may be another number. */
function isGlued(words: readonly Word[], apart: boolean): boolean {
  if (!apart && words.at(-1)?.kind === "letters") return true;
  const point = words.at(-1);
  return !apart && point?.norm === "." && !point.apart && words.at(-2)?.kind === "letters";
}

/** The words, numbers and marks of one line, in order; anything else (emoji, other signs) is dropped. */
export function wordsOf(line: string): Word[] {
  const words: Word[] = [];
  let at = 0;
  let apart = true;
  const push = (kind: Word["kind"], length: number, norm: string): void => {
    words.push({ kind, norm, start: at, end: at + length, apart });
    at += length;
    apart = false;
  };
  while (at < line.length) {
    const blank = matchAt(BLANK, line, at);
    if (blank) {
      at += blank.length;
      apart = true;
      continue;
    }
    const digits = digitsAt(line, at);
    if (digits > 0 && isGlued(words, apart)) {
      push("digits", digits, line.slice(at, at + digits).toLowerCase());
      words.at(-1)!.doubtful = true;
      continue;
    }
    if (digits > 0) {
      push(
        "digits",
        digits,
        line
          .slice(at, at + digits)
          .toLowerCase()
          .replaceAll("−", "-"),
      );
      continue;
    }
    const text = matchAt(COUNT_X, line, at) ?? matchAt(LETTERS, line, at);
    if (text) {
      push(/\d/.test(text) ? "digits" : "letters", text.length, normalize(text));
      continue;
    }
    const mark = matchAt(MARK, line, at);
    if (mark === "-" && !apart && words.at(-1)?.kind === "letters" && /\p{L}/u.test(line[at + 1] ?? "")) {
      // "mid-century" is two words.
      at += 1;
    } else if (mark) push("mark", 1, mark === "–" || mark === "—" ? "-" : mark === "…" ? "." : mark);
    else {
      at += (line.codePointAt(at) ?? 0) > 0xffff ? 2 : 1;
      apart = true;
    }
  }
  return words;
}
