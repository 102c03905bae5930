import type { Clause, Tok } from "../clause.ts";
import { claim, freeTokens } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { centsOfToken } from "../slots/money.ts";
import { GIVEN_BACK, KEPT } from "../words/verbs.ts";

/** The last of the words before `token` that says what became of the deposit. */
function fate(clause: Clause, pattern: RegExp): boolean {
  return clause.tokens.some((token: Tok) => token.kind === "word" && pattern.test(token.text));
}

/** "15 back to him" */
const isBackToThem = ({ tokens }: Clause): boolean =>
  tokens.some(
    ({ text }, at) =>
      text === "back" &&
      tokens[at - 1]?.kind === "amount" &&
      /^(?:to|him|her|them)$/.test(tokens[at + 1]?.text ?? ""),
  );

/** What became of the deposit: an amount refunded or kept; kept whole is a refund of nothing. */
export function judgeFallthrough(fields: ReadingFields["fallthrough"], clause: Clause): Trouble | null {
  // "backed out of the driveway": no piece that is known, and nobody who could back out of it.
  const isSaid = clause.signs.has("piece") || clause.signs.has("person") || clause.signs.has("pronoun");
  if (fields.pieces !== undefined && !isSaid && /^back/.test(clause.head?.text ?? ""))
    return { kind: "unknown" };
  const refunded = fate(clause, GIVEN_BACK) || isBackToThem(clause);
  const kept = fate(clause, KEPT);
  const [amount, second] = freeTokens(clause, "amount");
  if (second) return { kind: "twoNumbers" };
  if (!amount) {
    if (kept && !refunded && !fate(clause, /^(?:half|part|some)$/)) fields.refunded = 0;
    return null;
  }
  if (refunded === kept) return { kind: "unclaimed" };
  claim(amount);
  const found = centsOfToken(amount);
  if ("trouble" in found) return found.trouble;
  if (refunded) fields.refunded = found.cents;
  else fields.kept = found.cents;
  return null;
}
