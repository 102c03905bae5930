import type { Fact } from "../books/facts.ts";
import type { Looking } from "../decide/decision.ts";
import type { Misnoted } from "../notes/misnoted/misnoted-said.ts";
import type { Reading, ReadingOf } from "../notes/reading.ts";
import { eitherOf } from "../notes/unclear.ts";
import { isMeant, isOfWhat, newestFirst, withPlaces } from "./meant.ts";
import { hasOld, hasValue } from "./misnoted-facts.ts";
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
  const { now, old, what } = said;
  // "full refund on those knobs": what came back is of no note of its own.
  const kinds = what === undefined ? said.kinds : said.kinds.filter((kind) => kind !== "refund");
  const isAnyNamed =
    kinds.length > 0 ||
    what !== undefined ||
    now.who !== undefined ||
    [...now.pieces, ...old.pieces].length > 0 ||
    hasValue(now) ||
    hasValue(old);
  const asOut = (fact: Fact): Mend => ({
    kind: "mend",
    of: { fact: fact.id },
    removed: true,
    ...at,
    label: `Take out: ${past.echo(fact)}`,
  });
  if (said.undoes > 1) return past.replied === null ? newestNotes(said.undoes, desk, past).map(asOut) : null;
  // "remove b" is of a list.
  const isOther = said.out === "maybe" || (now.name !== undefined && said.undoes === 0);
  if (!isAnyNamed && !said.isAgain) return isOther ? null : [{ kind: "undo", ...at }];
  const touched = past.touched();
  // What was sent twice is asked about already: that question is dropped. "put 40 down already" tells of something new.
  const isOfQuestion = touched !== null && !books.facts.some(({ root }) => root === touched);
  if (said.isAgain && isOfQuestion) return hasValue(now) || hasValue(old) ? null : [{ kind: "undo", ...at }];
  const pieces = withPlaces([...now.pieces, ...old.pieces], books);
  const isDenied = said.out === "denied";
  const isNear = isDenied && pieces.length === 0;
  const facts = newestFirst(books, (fact) => {
    const { buyer } = fact.data as { buyer?: string };
    return (
      (past.replied === null || fact.root === past.replied) &&
      ((isAnyNamed && !isNear) || fact.root === touched) &&
      (kinds.length === 0 || kinds.some((kind) => kind === fact.kind)) &&
      isOfWhat(fact, what) &&
      (now.who === undefined || buyer === now.who) &&
      hasOld(fact, { ...said, old: { ...now, ...old } }) &&
      pieces.every((mention) => fact.pieces.some((number) => isMeant(mention, books.pieces.get(number)!)))
    );
  });
  const own =
    kinds.length === 0 && what === undefined && pieces.length > 0 && !hasValue(now) && !said.isOfTalk
      ? facts.filter(({ kind }) => kind === "buy")
      : facts;
  const [only, ...others] = own;
  if (!only) return null;
  const twins =
    others.length > 0 &&
    others.every((fact) => fact.kind === only.kind && fact.amount === only.amount && fact.day === only.day);
  // What was noted just now has not happened; of what stands longer it is asked.
  const isSure = isDenied
    ? only.root === touched && past.isToday(only)
    : (said.out === "sure" && !(said.isOfTalk && only.kind === "buy" && only.root !== touched)) ||
      (said.out === "maybe" && said.isNoun);
  const isTwice = said.isAgain && hasTwin(only, desk);
  if (((others.length === 0 || twins || isDenied) && isSure && !said.isTurned) || isTwice)
    return [asOut(only)];
  return [eitherOf(own.slice(0, OFFERED_MAX).map(asOut), at)];
}

/** The facts of this person's last notes, the newest first. */
function newestNotes(count: number, { books }: Looking, { person }: Past): Fact[] {
  const own = newestFirst(books, ({ author }) => author === person);
  const roots = [...new Set(own.map(({ root }) => root))].slice(0, count);
  return own.filter(({ root }) => roots.includes(root));
}

/** Whether the same was noted twice on one day: of the same kind, for as much. */
const hasTwin = ({ id, kind, amount, day, data }: Fact, { books }: Looking): boolean =>
  books.facts.some(
    (fact) =>
      fact.id !== id &&
      fact.kind === kind &&
      fact.amount === amount &&
      fact.day === day &&
      JSON.stringify(fact.data) === JSON.stringify(data),
  );
