import type { Roles } from "./lexicon.ts";
import { rolesOf } from "./lexicon.ts";
import type { Amount } from "./quantities/amounts.ts";
import type { DaySaid } from "./quantities/days.ts";
import type { Mention } from "./reading.ts";

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

/**
 * A token with every field there, absent ones undefined: tokens all of one shape are read several times faster
 * than tokens of as many shapes as there are kinds.
 */
export function tokenOf<Head>(
  kind: TokenKind,
  text: string,
  place: { from: number; to: number },
  roles: Roles<Head>,
  rest: TokenRest = NOTHING,
): Token<Head> {
  return {
    kind,
    text,
    from: place.from,
    to: place.to,
    roles,
    unknown: rest.unknown,
    amount: rest.amount,
    each: rest.each,
    value: rest.value,
    minutes: rest.minutes,
    miles: rest.miles,
    percent: rest.percent,
    at: rest.at,
    said: rest.said,
    days: rest.days,
    mention: rest.mention,
    claimed: false,
  };
}

type TokenRest = Partial<Omit<Token, "kind" | "text" | "from" | "to" | "roles" | "claimed">>;

export const NOTHING: TokenRest = {};

export const UNKNOWN: TokenRest = { unknown: true };

export interface Cursor {
  norms: readonly string[];
  at: number;
}

export type Part = Omit<Token, "text" | "from" | "to" | "roles" | "claimed"> & { words: number };
