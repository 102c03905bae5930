import type { Tok } from "../clause.ts";
import { firstWord, type Word } from "../tokens/text.ts";
import { BEFORE_PERIOD, BEHIND_PERIOD, SPOKEN_MARKS } from "../words/dictated.ts";
import { BEFORE_KNOW, BEFORE_LIKE, BEHIND_KNOW, FILLER, HESITATES } from "../words/filler.ts";

/**
 * The words of a line without the pauses of who dictates it ("twelve dollars and uh fifty cents"), and with the marks said
 * out loud; the same list where there are none.
 */
export function spokenWords(words: readonly Word[]): readonly Word[] {
  const spoken: Word[] = [];
  let isTyped = true;
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at]!;
    const mark = HESITATES.has(word.norm) ? undefined : markAt(words, at);
    isTyped &&= mark === null;
    if (mark === undefined) continue;
    spoken.push(
      mark ? { ...word, kind: "mark", norm: mark.norm, end: words[at + mark.words - 1]!.end } : word,
    );
    if (mark) at += mark.words - 1;
  }
  return !isTyped && spoken.some(({ kind }) => kind !== "mark") ? spoken : words;
}

/** The words that begin what only a speaker says: the lexicon notes them, so that nearly every line is not looked through. */
export const SPOKEN: readonly string[] = [...HESITATES, ...Object.keys(SPOKEN_MARKS)];

/** "comma", "question mark", "period" where it is no time and no style. */
function markAt(words: readonly Word[], at: number): { norm: string; words: number } | null {
  const { norm, kind } = words[at]!;
  const mark = kind === "letters" && at > 0 ? SPOKEN_MARKS[norm] : undefined;
  if (mark === undefined) return null;
  const next = words[at + 1]?.norm ?? "";
  if (typeof mark !== "string") return mark[next] === undefined ? null : { norm: mark[next], words: 2 };
  const isWord = norm === "period" && (BEFORE_PERIOD.has(words[at - 1]!.norm) || BEHIND_PERIOD.has(next));
  return isWord ? null : { norm: mark, words: 1 };
}

/** Words that a line holds in which something may be said while one thinks, unless a word of it is said twice over. */
export const PAUSES: readonly string[] = [
  ...["know", "you", "like"],
  ...HESITATES,
  ...FILLER.filter((phrase) => phrase.includes(" ")).map(firstWord),
];

/**
 * The tokens of a line as it was meant, where it was spoken: "the desk is spoken for uh woman named carla", "sold it to
 * to dana". What says nothing and is said while one thinks, and a small word said twice over stand in no name.
 */
export function withoutHesitations(tokens: Tok[]): Tok[] {
  let isSpoken = false;
  for (let at = 0; at < tokens.length && !isSpoken; at += 1) isSpoken = isHesitation(tokens, at);
  if (!isSpoken) return tokens;
  const said = tokens.filter((_, at) => !isHesitation(tokens, at));
  return said.length > 0 ? said : tokens;
}

function isHesitation(tokens: readonly Tok[], at: number): boolean {
  const { kind, roles, text } = tokens[at]!;
  if (kind !== "word") return false;
  const before = at > 0 ? tokens[at - 1]! : undefined;
  if (text === "know") return before?.text === "you" && isSaidByTheWay(tokens, at - 1);
  if (text === "you") return tokens[at + 1]?.text === "know" && isSaidByTheWay(tokens, at);
  if (text === "like") return isLikeAlone(tokens, at);
  if (roles.filler !== true || roles.heads !== undefined) return false;
  return HESITATES.has(text) || before?.text === text;
}

/** "you know" of nothing that is asked or known. */
const isSaidByTheWay = (tokens: readonly Tok[], you: number): boolean =>
  !BEFORE_KNOW.has(tokens[you - 1]?.text ?? "") && !BEHIND_KNOW.has(tokens[you + 2]?.text ?? "");

/** "so like i finished it": before a number it says "about". */
const isLikeAlone = (tokens: readonly Tok[], at: number): boolean =>
  tokens[at + 1]?.kind === "word" && BEFORE_LIKE.has(tokens[at - 1]?.text ?? "");
