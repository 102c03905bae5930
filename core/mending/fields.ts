import type { FactKind, NewFact } from "../books/facts.ts";
import type { ReadingOf } from "../notes/reading.ts";

export type MendTo = NonNullable<ReadingOf<"mend">["to"]>;
export type MendOf = NonNullable<ReadingOf<"mend">["of"]>;
export type MendField = keyof MendTo;

/** A fact as it should have been, why it cannot be, or the pieces that one word for them may mean. */
export type Changed = { fact: NewFact } | { why: string } | { several: number[][] };

const PLACED = ["date", "pieces"] as const;
const PAID = ["amount", "date", "method"] as const;
const MADE = ["name", "traits", "pieces"] as const;

/** What of a fact of each kind can be corrected. `amount` is its main one: of a sale the price, of a trade the worth; a kind that is not
 * listed moves to another day or other pieces. */
export const MENDABLE: Readonly<Partial<Record<FactKind, readonly MendField[]>>> = {
  buy: [...PAID, "source", ...MADE],
  spend: [...PAID, "pieces"],
  work: ["minutes", ...PLACED],
  start: PLACED,
  finish: PLACED,
  list: ["amount", ...PLACED],
  reprice: ["amount", ...PLACED],
  hold: [...PAID, "buyer", "pieces"],
  fallthrough: ["amount", ...PLACED],
  sell: [...PAID, "buyer", "fee", "owed", "pieces"],
  collect: [...PAID, "buyer", "pieces"],
  trade: ["amount", "date", "paid", "received", ...MADE],
  refund: ["amount", ...PLACED],
  retire: PLACED,
  income: PAID,
  pay: ["amount", "date"],
  loan: ["amount", "date"],
  terms: ["date"],
  statement: ["amount", "date"],
  drive: ["miles", ...PLACED],
  goal: ["amount", "date"],
  taxrate: ["date"],
  repeat: ["amount"],
  sent: [],
};

/** Whether all that is to be changed belongs to facts of that kind. */
export function canMend(kind: FactKind, to: MendTo): boolean {
  const fields = MENDABLE[kind] ?? PLACED;
  return Object.keys(to).every((field) => field === "by" || fields.includes(field as MendField));
}
