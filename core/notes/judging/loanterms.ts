import type { Clause } from "../clause.ts";
import { freeTokens } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";

/** The days in a loan's year, where the clause names them: "365", "365.25", "actual". */
export function judgeTerms(fields: ReadingFields["terms"], clause: Clause): Trouble | null {
  for (const token of clause.tokens) {
    if (token.kind === "span" && token.days === 365) {
      token.claimed = true;
      fields.days = "365";
    }
  }
  for (const token of freeTokens(clause, "amount")) {
    if (token.text !== "365" && token.text !== "365.25") return { kind: "unclaimed" };
    token.claimed = true;
    fields.days = token.text;
  }
  if (
    fields.days === undefined &&
    clause.tokens.some((token) => token.kind === "word" && /^actual/.test(token.text))
  )
    fields.days = "actual";
  if (fields.rate === undefined && fields.days === undefined && fields.order === undefined)
    return { kind: "percentUnsaid" };
  return null;
}
