import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";

/** "guy sold me a desk for 40" is a purchase told backwards: asked, never guessed. */
export function judgeSale(_fields: ReadingFields["sell"], clause: Clause): Trouble | null {
  const { tokens, head } = clause;
  const next = head ? tokens[tokens.indexOf(head) + 1]?.text : undefined;
  return next === "me" || next === "us" ? { kind: "anotherPerson" } : null;
}
