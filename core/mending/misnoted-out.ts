import type { Fact } from "../books/facts.ts";
import type { Misnoted } from "../notes/misnoted-said.ts";
import type { Reading, ReadingOf } from "../notes/reading.ts";
import { whyOf } from "../notes/unclear.ts";
import { isMeant, isOfWhat, newestFirst } from "./meant.ts";
import { hasOld, hasValue, type Looking } from "./misnoted-facts.ts";
import type { Past } from "./past.ts";

type Mend = ReadingOf<"mend">;

/** So many notes fit on buttons, with one more for none of them. */
export const OFFERED_MAX = 3;

/** What is to go: what was said last, or the note that has all that is told. */
export function takenOut(
  said: Misnoted,
  desk: Looking,
  past: Past,
  at: { text: string; line: number },
): Reading[] | null {
  const { books } = desk;
  const { now, old, kinds, what } = said;
  const isAnyNamed =
    kinds.length > 0 ||
    what !== undefined ||
    now.who !== undefined ||
    [...now.pieces, ...old.pieces].length > 0 ||
    hasValue(now) ||
    hasValue(old);
  // "remove b" is of a list.
  const isOther = said.out === "maybe" || now.name !== undefined;
  if (!isAnyNamed && !said.isAgain) return isOther ? null : [{ kind: "undo", ...at }];
  const touched = past.touched();
  const pieces = [...now.pieces, ...old.pieces];
  const facts = newestFirst(books, (fact) => {
    const { buyer } = fact.data as { buyer?: string };
    return (
      (past.replied === null || fact.root === past.replied) &&
      (isAnyNamed || fact.root === touched) &&
      (kinds.length === 0 || kinds.some((kind) => kind === fact.kind)) &&
      isOfWhat(fact, what) &&
      (now.who === undefined || buyer === now.who) &&
      hasOld(fact, { ...said, old: { ...now, ...old } }) &&
      pieces.every((mention) => fact.pieces.some((number) => isMeant(mention, books.pieces.get(number)!)))
    );
  });
  const own =
    kinds.length === 0 && what === undefined && pieces.length > 0 && !hasValue(now)
      ? facts.filter(({ kind }) => kind === "buy")
      : facts;
  const [only, ...others] = own;
  if (!only) return null;
  const twins =
    others.length > 0 &&
    others.every((fact) => fact.kind === only.kind && fact.amount === only.amount && fact.day === only.day);
  const asOut = (fact: Fact): Mend => ({
    kind: "mend",
    of: { fact: fact.id },
    removed: true,
    ...at,
    label: `Take out: ${past.echo(fact)}`,
  });
  if ((others.length === 0 || twins) && said.out === "sure" && !said.isTurned) return [asOut(only)];
  return [
    { kind: "unclear", why: whyOf({ kind: "eitherOf" }), could: own.slice(0, OFFERED_MAX).map(asOut), ...at },
  ];
}
