import type { Tok } from "../clause.ts";
import { lexed } from "../lexed.ts";
import { wordsOf } from "../tokens/text.ts";
import { TURNS_HEARD } from "../words/dealt.ts";
import { saysAny } from "../words/words.ts";

/*
 * The tokens of a message for whoever wants to account for each of its words. Several look at the same message one after
 * another: it is taken apart once.
 */

const LENGTH_MAX = 120;

let last: { text: string; tokens: readonly Tok[] | null } | null = null;

/** The tokens of a message that tells what has happened; null where it asks, quotes, or turns what it tells. */
export function heard(text: string): readonly Tok[] | null {
  if (last?.text !== text) last = { text, tokens: takenApart(text) };
  return last.tokens;
}

function takenApart(text: string): readonly Tok[] | null {
  if (text.length > LENGTH_MAX || /[?"“”\n]/.test(text) || saysAny(text, TURNS_HEARD)) return null;
  const tokens = lexed(text);
  // What was left out of them ("tomorrow: …") would be passed over.
  const isWhole = tokens.every(({ from }, at) => from === (tokens[at - 1]?.to ?? 0));
  return isWhole && tokens.at(-1)?.to === wordsOf(text).length ? tokens : null;
}
