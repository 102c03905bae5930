import type { Day } from "../calendar.ts";
import type { Kind, Mention } from "./reading.ts";
import type { Signs } from "./tokens/sign-bits.ts";
import type { Token } from "./tokens/token.ts";

/** One saying of a kind, ready to be held against what a clause holds. */
export interface Said {
  kind: Kind;
  /** Fields that the words themselves settle. */
  means: Readonly<Record<string, unknown>>;
  /** The signs it needs and those it rules out, as bits. */
  needs: number;
  rulesOut: number;
  /** How much it says beside its words. */
  weight: number;
}

/** A verb's words found in a line: which saying of which kind, and the words that must follow further on. */
export interface Head {
  kind: Kind;
  said: Said;
  /** What must follow further on; null where nothing must. */
  tails: Tails | null;
  light: boolean;
}

/** The ends that a verb's first words may have ("took … to the dump", "took … to the tip"): any one of them. */
export interface Tails {
  /** Each with blanks between its words. */
  endings: ReadonlySet<string>;
  all: readonly (readonly string[])[];
  /** Every word of any. */
  words: ReadonlySet<string>;
}

export type Tok = Token<Head>;

export const isPiece = ({ kind }: Tok): boolean => kind === "piece";
export const isAmount = ({ kind }: Tok): boolean => kind === "amount";

/** What says how much, how long or how far; beside it a rate, or the piece that it is told of. */
export const MEASURES: ReadonlySet<Tok["kind"]> = new Set(["amount", "duration", "miles"]);
export const MEASURES_OR_RATE: ReadonlySet<Tok["kind"]> = new Set([...MEASURES, "percent"]);
export const MEASURES_OR_PIECE: ReadonlySet<Tok["kind"]> = new Set([...MEASURES, "piece"]);

/** One clause in hand: its tokens are claimed one by one, each at most once. */
export interface Clause {
  tokens: Tok[];
  /** The clause as typed, and the line it stands in. */
  text: string;
  line: string;
  /** Where a word of the line starts and ends, for names kept as said. */
  spans: readonly { start: number; end: number }[];
  signs: Signs;
  today: Day;
  /** The token of the words that said the verb; absent where what it holds said it. */
  head?: Tok;
  /** Pieces nobody listed, once that slot has claimed their words. */
  unlisted?: readonly Mention[];
  /** The words that say what was spent on, once that slot has claimed them. */
  what?: Tok[];
}

/** Takes a token for a slot, so that no other slot reads it too. */
export function claim(...tokens: Tok[]): void {
  for (const token of tokens) token.claimed = true;
}

/** The first unclaimed token of a kind, claimed or not by the caller. */
export function firstFree(clause: Clause, kind: Tok["kind"]): Tok | undefined {
  return clause.tokens.find((token) => token.kind === kind && !token.claimed);
}

export function freeTokens({ tokens }: Clause, kind: Tok["kind"]): Tok[] {
  const free: Tok[] = [];
  for (const token of tokens) if (token.kind === kind && !token.claimed) free.push(token);
  return free;
}

/** Whether the clause says any of these words (each one token). Claims nothing. */
export function says(clause: Clause, pattern: RegExp): boolean {
  return clause.tokens.some((token) => pattern.test(token.text));
}

/** Whether the clause says any of some words, each one token. Claims nothing. */
export function saysOneOf({ tokens }: Clause, words: ReadonlySet<string>): boolean {
  for (let at = 0; at < tokens.length; at += 1) if (words.has(tokens[at]!.text)) return true;
  return false;
}

/** Claims every token whose text matches and tells whether there was one. */
export function claimWords(clause: Clause, pattern: RegExp): boolean {
  const found = clause.tokens.filter((token) => token.kind === "word" && pattern.test(token.text));
  claim(...found);
  return found.length > 0;
}

/** The place of the first token from `start` on that is none of some words; past the end where there is none. */
export function placeAfter(tokens: readonly Tok[], start: number, words: ReadonlySet<string>): number {
  let at = start;
  while (at < tokens.length && words.has(tokens[at]!.text)) at += 1;
  return at;
}

/** The place of the last token up to `end` that is none of some words; -1 where there is none. */
export function placeBefore(tokens: readonly Tok[], end: number, words: ReadonlySet<string>): number {
  let at = end;
  while (at >= 0 && words.has(tokens[at]!.text)) at -= 1;
  return at;
}

/** The token before a place; asking an array for its place -1 takes the engine a hundred times as long. */
export const tokenBefore = (tokens: readonly Tok[], at: number): Tok | undefined =>
  at > 0 ? tokens[at - 1] : undefined;

/** The words of some tokens as the lexicon has them, single blanks. */
export function textOf(tokens: readonly Tok[]): string {
  let text = "";
  for (const token of tokens) text = text === "" ? token.text : `${text} ${token.text}`;
  return text;
}

/** The words of some tokens as said: lower case, single blanks. */
export function asSaid(clause: Clause, tokens: readonly Tok[]): string {
  const first = tokens[0];
  const last = tokens.at(-1);
  if (!first || !last) return "";
  const start = clause.spans[first.from]!.start;
  const end = clause.spans[last.to - 1]!.end;
  const said = clause.line.slice(start, end).toLowerCase();
  return /\s/.test(said) ? said.replace(/\s+/g, " ").trim() : said;
}

/** The words of some tokens as said, slips put right. */
export function asMeant(clause: Clause, tokens: readonly Tok[]): string {
  const [only] = tokens;
  if (tokens.length === 1 && only!.kind === "word" && only!.text === asSaid(clause, tokens))
    return only!.text;
  return tokens
    .map((token) => {
      const said = asSaid(clause, [token]);
      if (said === token.text) return said;
      return token.kind === "mark" ||
        said.replace(/['’-]/g, "") === token.text.replace(/ /g, "") ||
        said.includes("'")
        ? said
        : token.text;
    })
    .join(" ")
    .replace(/ ,/g, ",");
}

export function isMark(token: Tok | undefined, ...marks: string[]): boolean {
  return token !== undefined && token.kind === "mark" && marks.includes(token.text);
}
