import type { Clause } from "../notes/clause.ts";
import type { Trouble } from "../notes/grammar.ts";
import type { Mention, ReadingFields } from "../notes/reading.ts";

/** What stands before "for" was given, what stands behind it was got; cash that was got came back. */
export function judgeTrade(fields: ReadingFields["trade"], { tokens }: Clause): Trouble | null {
  const parting = tokens.findIndex((token) => token.text === "for" || token.text === "to get");
  if (parting < 0) return { kind: "unclaimed" };
  const sides: { gave: Mention[]; got: Mention[] } = { gave: [], got: [] };
  tokens.forEach((token, at) => {
    if (token.mention) sides[at < parting ? "gave" : "got"].push(token.mention);
  });
  if (sides.gave.length === 0 || sides.got.length === 0) return { kind: "unclaimed" };
  Object.assign(fields, sides);
  const cash = tokens.findIndex((token) => token.kind === "amount");
  const before = tokens
    .slice(0, cash)
    .findLast(({ text }) => /^(?:got|plus|and|received|gave|paid)$/.test(text));
  const isBack = before !== undefined && /^(?:got|plus|and|received)$/.test(before.text);
  if (fields.paid !== undefined && cash > parting && isBack) {
    fields.received = fields.paid;
    delete fields.paid;
  }
  return null;
}
