import type { Amount } from "../quantities/amounts.ts";
import type { DaySaid } from "../quantities/days.ts";
import type { Mention } from "../reading.ts";
import type { Found } from "./lexicon.ts";
import { hintsOf, ownOf } from "./own-signs.ts";
import { type Roles, rolesOf } from "./roles.ts";
import { HINTS } from "./sign-bits.ts";
import { isDigit } from "./text.ts";

export type TokenKind =
  | "word"
  | "mark"
  | "amount"
  | "count"
  | "number"
  | "duration"
  | "miles"
  | "percent"
  | "clock"
  | "day"
  | "span"
  /** "220 grit", "2 quarts": how fine or how much of a supply. */
  | "grain"
  | "piece";

/** Words of a line with one meaning. `text` is their normal form; `from` and `to` are word places. */
export interface Token<Head = unknown> {
  kind: TokenKind;
  text: string;
  from: number;
  to: number;
  roles: Roles<Head>;
  /** What its words are for those who look for them (`HINTS` of `sign-bits.ts`). */
  hints: number;
  /** The word was corrected or is known to nobody. */
  unknown?: true;
  amount?: Amount;
  /** The amount was said of each. */
  each?: true;
  /** Of a "count" ("x4") or a piece number ("#12"). */
  value?: number;
  minutes?: number;
  miles?: string;
  percent?: string;
  /** "18:30", or null where morning and evening are both meant. */
  at?: string | null;
  said?: DaySaid;
  days?: number;
  mention?: Mention;
  claimed: boolean;
}

export const NO_ROLES: Roles<never> = rolesOf({});

/*
 * Every token has every field, absent ones undefined: tokens all of one shape are read several times faster
 * than tokens of as many shapes as there are kinds.
 */

export function wordToken<Head>(
  kind: TokenKind,
  text: string,
  from: number,
  to: number,
  roles: Roles<Head>,
  unknown?: true,
): Token<Head> {
  const hints = hintsOf(text, roles);
  return tokenOf(kind, text, from, to, roles, kind === "mark" ? hints | HINTS.mark : hints, unknown);
}

/** A token of a phrase of the lexicon. */
export function phraseToken<Head>({ phrase, roles, words }: Found<Head>, from: number): Token<Head> {
  roles.own ??= ownOf(phrase, roles);
  return tokenOf("word", phrase, from, from + words, roles, roles.own.hints, undefined);
}

function tokenOf<Head>(
  kind: TokenKind,
  text: string,
  from: number,
  to: number,
  roles: Roles<Head>,
  hints: number,
  unknown: true | undefined,
): Token<Head> {
  return {
    kind,
    text,
    from,
    to,
    roles,
    hints,
    unknown,
    amount: undefined,
    each: undefined,
    value: undefined,
    minutes: undefined,
    miles: undefined,
    percent: undefined,
    at: undefined,
    said: undefined,
    days: undefined,
    mention: undefined,
    claimed: false,
  };
}

/** A token of pieces in place of the words that name them. */
export function pieceToken(text: string, from: number, to: number, mention: Mention): Token<never> {
  const token = tokenOf<never>("piece", text, from, to, NO_ROLES, 0, undefined);
  token.mention = mention;
  return token;
}

/** A token of a number, a measure or a day. Each kind fills the fields that are its own. */
export function partToken(part: Part, text: string, from: number): Token<never> {
  // An amount in digits says nothing else; "one" and "2nd" may stand for pieces.
  const isInDigits = part.kind === "amount" && isDigit(text.charCodeAt(0));
  const hints = isInDigits ? 0 : hintsOf(text, NO_ROLES);
  const token = tokenOf<never>(part.kind, text, from, from + part.words, NO_ROLES, hints, undefined);
  switch (part.kind) {
    case "amount":
      token.amount = part.amount;
      token.each = part.each;
      break;
    case "day":
      token.said = part.said;
      break;
    case "count":
    case "number":
      token.value = part.value;
      break;
    case "duration":
      token.minutes = part.minutes;
      break;
    case "miles":
      token.miles = part.miles;
      break;
    case "percent":
      token.percent = part.percent;
      break;
    case "clock":
      token.hints |= HINTS.clock;
      token.at = part.at;
      token.minutes = part.minutes;
      break;
    case "span":
      token.days = part.days;
  }
  return token;
}

export interface Cursor {
  norms: readonly string[];
  at: number;
}

export type Part = Omit<Token, "text" | "from" | "to" | "roles" | "hints" | "claimed"> & { words: number };
