import type { Clause } from "../clause.ts";
import { type Draft, draft } from "../interpreting/draft.ts";
import { slippedIn } from "../interpreting/slipped.ts";
import { pastDay } from "../quantities/days.ts";
import type { Kind, Mention } from "../reading.ts";
import { centsIn, pieceCount } from "../slots/money.ts";
import { language } from "../verbs.ts";

/*
 * What a clause in trouble holds, and how whole readings are put together from it.
 */

/** What a clause holds, for putting a reading together. */
export interface Held {
  pieces: Mention[] | undefined;
  amounts: number[];
  made: Draft | undefined;
  clause: Clause;
}

export function heldIn(clause: Clause, made: Draft | undefined): Held {
  const pieces = clause.tokens.flatMap(({ kind, mention }) => (kind === "piece" && mention ? [mention] : []));
  const slipped = slippedIn(clause);
  const amounts = clause.tokens
    .filter((token) => token.kind === "amount" && token.amount !== undefined && !slipped.includes(token))
    .flatMap((token) => {
      const cents = centsIn(token);
      // "gone, 85 each" of two is 170; of nobody knows how many it is no amount.
      const count = token.each ? pieceCount(pieces) : 1;
      return cents === null || count === null ? [] : cents * count;
    });
  return { pieces: pieces.length > 0 ? pieces : undefined, amounts, made, clause };
}

/** "lamps 25 each" of pieces that only the books can count: the price of one. */
export function eachIn({ clause, pieces }: Held): number | null {
  const [token, ...others] = clause.tokens.filter(({ kind, amount }) => kind === "amount" && amount);
  if (!token?.each || others.length > 0 || pieceCount(pieces ?? []) !== null) return null;
  return centsIn(token);
}

export type Offer = (held: Held) => Draft[];

/** A draft of a kind with the pieces of the clause and what the reading at hand says of day, method and people. */
export function as(kind: Kind, fields: Record<string, unknown>, { clause, made, pieces }: Held): Draft {
  const grammar = language().grammars.get(kind) ?? null;
  const kept = Object.fromEntries(
    ["date", "method", "buyer", "by"].flatMap((field) => {
      const value = made?.fields[field] ?? unmade(field, clause, made);
      const isOfOthers =
        (field === "method" && !grammar?.fields.some(({ name }) => name === "method")) ||
        (field === "buyer" && kind !== "sell" && kind !== "hold");
      return value === undefined || isOfOthers ? [] : [[field, value]];
    }),
  );
  return draft(
    kind,
    { ...(pieces ? { pieces: pieces.map((each) => ({ ...each })) } : {}), ...kept, ...fields },
    clause,
    grammar,
  );
}

/** What a clause without a reading at hand says by itself. */
function unmade(field: string, clause: Clause, made: Draft | undefined): string | undefined {
  if (field === "method") return methodIn(clause);
  return field === "date" && !made ? dayIn(clause) : undefined;
}

/** "dresser 30 yesterday": whatever was done with it was done then. */
function dayIn({ tokens, today }: Clause): string | undefined {
  const [day, ...others] = tokens.filter(({ kind }) => kind === "day");
  if (!day || others.length > 0 || TO_COME.test(tokens[tokens.indexOf(day) - 1]?.text ?? ""))
    return undefined;
  const found = pastDay(day.said!, today);
  return "day" in found ? found.day : undefined;
}

const TO_COME = /^(?:by|until|till|til|before|for|comes?|coming)$/;

/** "moved the bookcase, 55 cash": how it was paid, where no verb has taken it. */
function methodIn({ tokens }: Clause): string | undefined {
  const [method, ...others] = new Set(tokens.flatMap(({ roles }) => roles.method ?? []));
  return others.length === 0 ? method : undefined;
}

/** The reading at hand with other amounts. */
export const changed = (made: Draft, fields: Record<string, unknown>): Draft => ({
  ...made,
  fields: { ...made.fields, ...fields },
});

export const itself: Offer = ({ made }) => (made ? [made] : []);

/** Amounts on the tokens that a row has set aside ("20 down", "126 after fees"). */
export function amountOf(clause: Clause, hedge: string): number | undefined {
  const token = clause.tokens.find(
    ({ kind, roles, amount }) => kind === "word" && roles.hedge === hedge && amount,
  );
  return token ? (centsIn(token) ?? undefined) : undefined;
}
