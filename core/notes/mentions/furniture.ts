import { lastWord } from "../tokens/text.ts";
import { FURNITURE, SET_WORDS } from "../words/furniture.ts";

/** Whether a name means pieces that go together: "dining set", "bedroom suite". */
export function isSetName(name: string): boolean {
  return SET_WORDS.has(lastWord(name));
}

/** The nouns that names of two words end with: a "desk lamp" is no desk, but "rolltop" is said of a rolltop desk alone. */
const HEADS: ReadonlySet<string> = new Set(
  FURNITURE.flatMap(([name]) => (name.includes(" ") ? [name.slice(name.lastIndexOf(" ") + 1)] : [])),
);

/** Whether a word says what kind of thing a piece is, where it stands at the end of a name. */
export const isHeadNoun = (word: string): boolean => HEADS.has(word);
