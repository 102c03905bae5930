import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";

/** Something has to be lent; "mom borrowed the sander" says to whom before the verb. */
export function judgeLending(fields: ReadingFields["lent"], { tokens, head }: Clause): Trouble | null {
  if (fields.what === undefined && fields.pieces === undefined) return { kind: "unknown" };
  const actor = tokens.find(({ roles }) => roles.actor === "ours");
  if (fields.to === undefined && actor && head?.text.includes("borrow")) fields.to = actor.text;
  return null;
}
