import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { LABOR_NAMES } from "../words/labors.ts";

/** "painted bookcase 90 minutes": the word before the noun is what was done to it. */
export function judgeWork(fields: ReadingFields["work"], _clause: Clause): Trouble | null {
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
