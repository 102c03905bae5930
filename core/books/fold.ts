import type { Day } from "../calendar.ts";
import { allAtOnce, type Steps } from "../steps.ts";
import { type Fact, type FactKind, inFoldOrder, newPiecesOf } from "./facts.ts";
import { BooksInHand } from "./hand.ts";
import type { Problem } from "./problem.ts";
import type { FactRules } from "./rules.ts";
import { sent } from "./sent.ts";

/** What the fold needs of a verb: what its facts do, where it records any. */
interface Ruled {
  readonly kind: string;
  readonly books?: unknown;
}

const rulesByKind = new Map<string, FactRules<FactKind>>([["sent", sent as unknown as FactRules<FactKind>]]);

/** Hands in the verbs, once, before anything is folded. */
export function handInRules(list: readonly Ruled[]): void {
  for (const { kind, books } of list) if (books) rulesByKind.set(kind, books as FactRules<FactKind>);
}

/** What facts of a kind hold and do: from the verb of that kind. */
export function rulesOf<K extends FactKind>(kind: K): FactRules<K> {
  const rules = rulesByKind.get(kind);
  if (!rules) throw new Error(`no rules for facts of kind ${kind}`);
  return rules as unknown as FactRules<K>;
}

/** Whether facts of that name tell of the loan or of other income; false for a name of no fact. */
export const isOwnersAlone = (kind: string): boolean => rulesByKind.get(kind)?.ownersAlone === true;

/** The books before the first fact. */
export function emptyBooks(): BooksInHand {
  return new BooksInHand();
}

function applyByKind(books: BooksInHand, fact: Fact): Problem | null {
  return (rulesOf(fact.kind) as unknown as FactRules<FactKind>).apply(books, fact);
}

/** Whether a fact folds after all that stand, so that it can be recorded without folding anew. */
export function foldsLast(books: Pick<BooksInHand, "facts">, fact: Fact): boolean {
  const last = books.facts.at(-1);
  return last === undefined || inFoldOrder(last, fact) < 0;
}

/**
 * Records a fact that folds after all that stand. A fact that cannot stand gives its problem and changes
 * nothing; one that does not fold last is a bug and throws.
 */
export function recordFact(books: BooksInHand, fact: Fact): Problem | null {
  if (!foldsLast(books, fact)) throw new Error(`fact ${fact.id} does not fold last`);
  return books.record(fact, applyByKind);
}

export type Folded =
  | { kind: "folded"; books: BooksInHand }
  /** The first fact in fold order that cannot stand, and why. */
  | { kind: "impossible"; fact: Fact; problem: Problem };

/** Folds standing facts, in whatever order they are given, into the books. */
export function foldFacts(facts: readonly Fact[]): Folded {
  return allAtOnce(folding(facts));
}

/** The same, a fact at each step. */
export function* folding(facts: readonly Fact[]): Steps<Folded> {
  const books = emptyBooks();
  const ordered = [...facts].sort(inFoldOrder);
  for (const fact of ordered) {
    const problem = recordFact(books, fact);
    if (problem) return { kind: "impossible", fact, problem: explainEarly(problem, ordered) };
    yield;
  }
  return { kind: "folded", books };
}

/** A piece or loan that is missing because it comes only later in the fold is a plainer problem than none. */
function explainEarly(problem: Problem, facts: readonly Fact[]): Problem {
  if (problem.kind === "no such piece") {
    const { number } = problem;
    const buy = facts.find((fact) => newPiecesOf(fact).includes(number));
    return buy ? { kind: "not bought yet", number, bought: buy.day } : problem;
  }
  if (problem.kind === "no such loan" || problem.kind === "no loan") {
    const name = problem.kind === "no such loan" ? problem.name : null;
    for (const fact of facts) {
      if (fact.kind !== "loan" || (name !== null && fact.data.loan !== name)) continue;
      return { kind: "loan not open yet", name: fact.data.loan, opened: fact.day };
    }
  }
  return problem;
}

/** The facts dated on a day or before it. */
export function factsThrough(facts: readonly Fact[], day: Day): Fact[] {
  return facts.filter((fact) => fact.day <= day);
}
