import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { couldBeCountAlone } from "./buying.ts";

/** "guy sold me a desk for 40" is a purchase told backwards: asked, never guessed. */
export function judgeSale(fields: ReadingFields["sell"], clause: Clause): Trouble | null {
  const { tokens, head } = clause;
  const next = head ? tokens[tokens.indexOf(head) + 1]?.text : undefined;
  if (next === "me" || next === "us") return { kind: "anotherPerson" };
  return isAskingPrice(clause) || couldBeCountAlone(fields, clause) ? { kind: "twoNumbers" } : null;
}

/** "sold desk listed 120": what it was listed at is not what it sold for. */
function isAskingPrice({ tokens }: Clause): boolean {
  return tokens.some((token, at) => {
    const after =
      tokens[at + 1]?.text === "at" || tokens[at + 1]?.text === "for" ? tokens[at + 2] : tokens[at + 1];
    return token.text === "listed" && after?.kind === "amount";
  });
}
