import { type Fact, type NewFact, newPiecesOf } from "../books/facts.ts";
import type { Desk } from "../decide/decision.ts";
import { asNew } from "./changed.ts";

/** What no longer stands, and what stands in the place of some of it. */
export interface Amendment {
  voids: Fact[];
  facts: { fact: NewFact; replaces: number }[];
}

/** Takes pieces off the books: facts on them alone go, from the others they only leave. */
export function withoutPieces(numbers: readonly number[], { books }: Desk): Amendment {
  const voids = books.facts.filter((fact) => fact.pieces.some((each) => numbers.includes(each)));
  const facts = voids.flatMap((fact) => {
    const rest = without(fact, numbers);
    return rest ? [{ fact: rest, replaces: fact.id }] : [];
  });
  return { voids, facts };
}

/** A fact without some of its pieces, its amount shared anew; null where nothing is left that it is about. */
function without(fact: Fact, numbers: readonly number[]): NewFact | null {
  const pieces = fact.pieces.filter((each) => !numbers.includes(each));
  if (pieces.length === 0) return null;
  const next = { ...asNew(fact), pieces } as NewFact;
  if (next.kind !== "buy" && next.kind !== "trade") return next;
  const made = newPiecesOf(fact);
  const kept = next.data.made.filter((_, index) => !numbers.includes(made[index]!));
  // A trade of which one side is gone was none.
  const given = pieces.length - kept.length;
  if (kept.length === 0 || (fact.kind === "trade" && given === 0)) return null;
  return { ...next, data: { ...next.data, made: kept } } as NewFact;
}
