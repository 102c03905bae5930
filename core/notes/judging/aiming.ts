import type { Clause } from "../clause.ts";
import { claim, freeTokens, says } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { wholeOf } from "../quantities/amounts.ts";
import type { ReadingFields } from "../reading.ts";
import { centsOfToken } from "../slots/money.ts";
import { AIM_MONTH, AIM_PIECES, AIM_YEAR } from "../words/aims.ts";

/** Below this a goal without "$" could as well be pieces. */
const PLAIN_MONEY_CENTS_MIN = 20_000;

function periodOf(clause: Clause): "month" | "year" | undefined {
  let per: "month" | "year" | undefined;
  for (const token of clause.tokens) {
    const word = token.text.split(" ").at(-1)!;
    if (token.kind === "span" && (token.days === 30 || /year/.test(token.text))) per = "month";
    else if (token.kind === "word" && (AIM_MONTH.has(token.text) || AIM_MONTH.has(word))) per = "month";
    else if (token.kind === "word" && (AIM_YEAR.has(token.text) || AIM_YEAR.has(word))) per = "year";
    else continue;
    claim(token);
  }
  return per;
}

/** A goal in pieces or in money, for a month or a year. */
export function judgeGoal(fields: ReadingFields["goal"], clause: Clause): Trouble | null {
  const per = periodOf(clause);
  if (per) fields.per = per;
  if (says(clause, /^(?:week|weekly|day|daily|quarter|this week|a week|per week)$/))
    return { kind: "goalUnsaid" };
  const counted = clause.tokens.find(
    (token) => token.kind === "piece" && token.mention?.number === undefined,
  );
  if (counted) return { kind: "goalUnsaid" };
  const [amount, second] = freeTokens(clause, "amount");
  if (!amount || second) return { kind: amount ? "twoNumbers" : "goalUnsaid" };
  claim(amount);
  const pieces = clause.tokens.find((token) => token.kind === "word" && AIM_PIECES.has(token.text));
  if (pieces && !amount.amount?.money) return piecesGoal(fields, wholeOf(amount.amount?.exact ?? null));
  const found = centsOfToken(amount);
  if ("trouble" in found) return found.trouble;
  if (!amount.amount?.money && found.cents < PLAIN_MONEY_CENTS_MIN) return { kind: "goalUnsaid" };
  fields.amount = found.cents;
  return null;
}

function piecesGoal(fields: ReadingFields["goal"], pieces: number | null): Trouble | null {
  if (pieces === null || pieces < 1) return { kind: "goalUnsaid" };
  fields.pieces = pieces;
  return null;
}
