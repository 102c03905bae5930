import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { METHODS } from "../words/methods.ts";
import { couldBeCountAlone } from "./buying.ts";

/** "guy sold me a desk for 40" is a purchase told backwards: asked, never guessed. */
export function judgeSale(fields: ReadingFields["sell"], clause: Clause): Trouble | null {
  const { tokens, head } = clause;
  const next = head ? tokens[tokens.indexOf(head) + 1]?.text : undefined;
  if (next === "me" || next === "us") return { kind: "anotherPerson" };
  methodOfFee(fields, clause);
  return isAskingPrice(clause) || couldBeCountAlone(fields, clause) ? { kind: "twoNumbers" } : null;
}

/** "sold dresser 165 transfer fee 4.95": the fee says how it was paid. */
function methodOfFee(fields: ReadingFields["sell"], { tokens }: Clause): void {
  if (fields.fee === undefined || fields.method !== undefined) return;
  const named = tokens.find(({ text }) => /^\w+ fees?$/.test(text));
  const method = named ? METHODS[named.text.split(" ")[0]!] : undefined;
  if (method !== undefined) fields.method = method;
}

/** "sold desk listed 120": what it was listed at is not what it sold for. */
function isAskingPrice({ tokens }: Clause): boolean {
  return tokens.some((token, at) => {
    const after =
      tokens[at + 1]?.text === "at" || tokens[at + 1]?.text === "for" ? tokens[at + 2] : tokens[at + 1];
    return token.text === "listed" && after?.kind === "amount";
  });
}
