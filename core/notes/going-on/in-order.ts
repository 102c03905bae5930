import type { Cents } from "../../money.ts";
import type { Tok } from "../clause.ts";
import type { Back, Reading } from "../reading.ts";
import { centsIn } from "../slots/money.ts";
import { AND } from "../words/links.ts";
import { ALL_SPOKEN, SEVERAL } from "../words/pieces.ts";

/* "posted them, 220 and 60": a price for each of those spoken of, in their order. */

const PRICES_MAX = 4;

const isJoint = ({ kind, text }: Tok): boolean => kind === "mark" || AND.has(text);

/** Whether it tells of several pieces without their names. */
const saysSeveral = ({ text, mention }: Tok): boolean =>
  SEVERAL.has(text) || ALL_SPOKEN.has(text) || (mention?.it === true && (mention.count ?? 0) > 1);

/** What a line says of each of several pieces, with the prices side by side in it; null where it says no such thing. */
export function inOrder(
  tokens: readonly Tok[],
  of: (tokens: Tok[]) => readonly Reading[],
): Extract<Back, { prices: object }> | null {
  const first = tokens.findIndex(({ kind }) => kind === "amount");
  const last = tokens.findLastIndex(({ kind }) => kind === "amount");
  if (first === last || !tokens.some(saysSeveral)) return null;
  const told = tokens.slice(first, last + 1);
  const amounts = told.filter(({ kind }) => kind === "amount");
  const prices = amounts.flatMap((token): Cents[] => {
    const cents = token.each ? null : centsIn(token);
    return cents === null ? [] : [cents];
  });
  const isAside = told.some((token) => token.kind !== "amount" && !isJoint(token));
  if (isAside || amounts.length > PRICES_MAX || prices.length < amounts.length) return null;
  const could = of([...tokens.slice(0, first + 1), ...tokens.slice(last + 1)]);
  const priced = could.filter(
    (reading) => "price" in reading && reading.price === prices[0] && isOfThem(reading),
  );
  return priced.length > 0 ? { could: priced, prices } : null;
}

/** Nothing is missing of it but the pieces, and none of them is named. */
const isOfThem = ({ missing = [], ...reading }: Reading): boolean =>
  missing.every((field) => field === "pieces") &&
  (!("pieces" in reading) || (reading.pieces as { it?: true }[]).every(({ it }) => it === true));
