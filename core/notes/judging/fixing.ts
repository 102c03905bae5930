import type { Clause } from "../clause.ts";
import { freeTokens } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { WORTH } from "../words/mending.ts";

/** A correction is one value, or a day; "35 not 53" names the wrong one too, and is read as a mend. */
export function judgeFix(fields: ReadingFields["fix"] & { date?: string }, clause: Clause): Trouble | null {
  const given = [fields.amount, fields.minutes, fields.miles, fields.percent, fields.date];
  if (given.every((value) => value === undefined)) return { kind: "loneNumber" };
  // "it was worth 28": what it would bring is not what was paid.
  if (clause.tokens.some(({ text }) => WORTH.has(text))) return { kind: "loneNumber" };
  return freeTokens(clause, "amount").length > 0 ? { kind: "twoNumbers" } : null;
}
