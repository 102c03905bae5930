import type { FactKind, NewFact } from "../books/facts.ts";
import { rulesOf } from "../books/fold.ts";
import type { MendField } from "../books/rules.ts";
import type { ReadingOf } from "../notes/reading.ts";

export type MendTo = NonNullable<ReadingOf<"mend">["to"]>;
export type MendOf = NonNullable<ReadingOf<"mend">["of"]>;

/** A fact as it should have been, why it cannot be, or the pieces that one word for them may mean. */
export type Changed = { fact: NewFact } | { why: string } | { several: number[][] };

/** A kind that says nothing of it moves to another day or other pieces. */
const PLACED: readonly MendField[] = ["date", "pieces"];

/** What of a fact of that kind can be corrected. */
export const mendFieldsOf = (kind: FactKind): readonly MendField[] => rulesOf(kind).mends ?? PLACED;

/** What a change of the newest note comes to. */
const MEANS: Readonly<Record<string, MendField>> = { more: "amount", also: "pieces" };

/** Whether all that is to be changed belongs to facts of that kind. */
export function canMend(kind: FactKind, to: MendTo): boolean {
  const fields = mendFieldsOf(kind);
  return Object.keys(to).every(
    (field) => field === "by" || fields.includes((MEANS[field] ?? field) as MendField),
  );
}
