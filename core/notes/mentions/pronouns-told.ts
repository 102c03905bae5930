import type { Tok } from "../clause.ts";
import type { Mention } from "../reading.ts";
import { bears } from "../verbs.ts";
import { TELLS_ITSELF } from "../words/dictated.ts";
import { BEFORE_PRICE } from "../words/links.ts";
import { PAID_WORDS } from "../words/pieces.ts";

/* What stands around a mention without its noun. */

/** A mention, and where it ends. */
export interface Found {
  mention: Mention;
  /** One behind its last token. */
  to: number;
}

/** A price comes next. */
export function isPriced(tokens: readonly Tok[], from: number): boolean {
  let at = from;
  while (tokens[at]?.kind === "mark" || BEFORE_PRICE.has(tokens[at]?.text ?? "")) at += 1;
  return tokens[at]?.kind === "amount";
}

/** It is a verb of such a kind. */
export const isHeadOf = (token: Tok | undefined, is: (kind: string) => boolean): boolean =>
  token?.roles.heads?.some(({ kind }) => is(kind)) === true;

/** The word at that place, or the one behind who does it: "the last one i'm keeping", "both we gave away". */
export const verbAt = (tokens: readonly Tok[], at: number): Tok | undefined =>
  tokens[TELLS_ITSELF.has(tokens[at]?.text ?? "") ? at + 1 : at];

/** A verb of what becomes of a piece, and no word of paying. */
export const isToldOf = (token: Tok): boolean => isOfStanding(token) && !PAID_WORDS.has(token.text);

/** A verb of pieces that stand here. */
export const isOfStanding = ({ roles }: Tok): boolean =>
  roles.heads?.some(({ kind }) => bears(kind, "standing pieces")) === true;
