import type { Clause } from "../clause.ts";
import { freeTokens } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";

/** A correction is one amount; "35 not 53" names the wrong one too, and then it is read again. */
export function judgeFix(fields: ReadingFields["fix"], clause: Clause): Trouble | null {
  if (fields.amount === undefined) return { kind: "loneNumber" };
  return freeTokens(clause, "amount").length > 0 ? { kind: "twoNumbers" } : null;
}
