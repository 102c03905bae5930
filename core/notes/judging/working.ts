import type { Clause, Tok } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { isCommon } from "../words/daily.ts";
import { LABOR_NAMES } from "../words/labors.ts";
import { ARTICLES_WIDE, OPENS_ASIDE, SPENT_AT } from "../words/links.ts";

/** "9 hours of sleep", "12 hours of meetings": a time of something else, where no work and no piece is named. */
function isOfLife({ kind, text, claimed, roles }: Tok, at: number, tokens: readonly Tok[]): boolean {
  if (kind !== "word" || claimed || roles.filler || !(roles.plain || isCommon(text))) return false;
  // "another hour after"
  if (OPENS_ASIDE.has(text)) return false;
  let before = at - 1;
  while (ARTICLES_WIDE.has(tokens[before]?.text ?? "")) before -= 1;
  return tokens[before]?.kind === "duration" || SPENT_AT.has(tokens[before]?.text ?? "");
}

/** "painted bookcase 90 minutes": the word before the noun is what was done to it. */
export function judgeWork(fields: ReadingFields["work"], clause: Clause): Trouble | null {
  if (!fields.pieces && !clause.head && !clause.signs.has("labor") && clause.tokens.some(isOfLife))
    return { kind: "left" };
  const first = fields.pieces?.[0];
  const labor = first?.traits?.[0];
  if (
    fields.what !== undefined ||
    fields.minutes === undefined ||
    !first ||
    !labor ||
    !LABOR_NAMES.has(labor)
  )
    return null;
  fields.what = LABOR_NAMES.get(labor)!;
  const traits = first.traits!.slice(1);
  const { traits: _, ...rest } = first;
  fields.pieces = [{ ...rest, ...(traits.length > 0 ? { traits } : {}) }, ...fields.pieces!.slice(1)];
  return null;
}
