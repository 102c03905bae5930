import type { Day } from "../calendar.ts";
import { allAtOnce, type Steps } from "../steps.ts";
import type { Books } from "./books.ts";
import { copyOf, type Exchange, exchange, firstIndex } from "./exchange.ts";
import { type Fact, inFoldOrder } from "./facts.ts";
import { type Folded, foldFacts, folding, rulesOf } from "./fold.ts";
import { BooksInHand, type Changes } from "./hand.ts";
import type { Problem } from "./problem.ts";

/** Facts that no longer stand, by ids that do, and facts that do from now on, wherever in the order they fold. */
export interface Change {
  removed: readonly Fact[];
  added: readonly Fact[];
}

/** The first fact in fold order that cannot stand then, and why: nothing was changed. */
type Impossible = { kind: "impossible"; fact: Fact; problem: Problem };

type Changed =
  /** The books are as a fold of all facts would give them; `changes`: what is not the same any more. */
  { kind: "changed"; changes: Changes } | Impossible;

/** A change that was worked out and not made yet. Good as long as the books stay as they are. */
export type Worked = ({ kind: "worked" } & Exchange) | Impossible;

/**
 * Changes the history under the books. A fact leans on the facts of its pieces and on nothing else, or, where it
 * names none, on the others that name none: so only the facts that hang together with the changed ones are folded
 * anew, whatever the age of either. Ten years of notes cost no more than one.
 */
export function changeFacts(books: BooksInHand, change: Change): Changed {
  return makeChange(books, allAtOnce(working(books, change)));
}

/** Works out a change, a fact at each step. */
export function* working(books: BooksInHand, change: Change): Steps<Worked> {
  const { facts, pieces, isLedgerWide } = reachOf(books, change);
  const folded = yield* folding(facts);
  if (folded.kind === "impossible") return folded;
  return { kind: "worked", removed: change.removed, part: folded.books, pieces, isLedgerWide };
}

/** Makes a change that was worked out on these books. */
export function makeChange(books: BooksInHand, worked: Worked): Changed {
  if (worked.kind === "impossible") return worked;
  return { kind: "changed", changes: exchange(books, worked) };
}

/** The books without some of their facts, to be changed at will. Impossible where a later fact leans on one. */
export function booksWithout(books: Books, removed: readonly Fact[]): Folded {
  if (removed.length * 2 > books.facts.length || !(books instanceof BooksInHand)) {
    const gone = new Set(removed.map((fact) => fact.id));
    return foldFacts(books.facts.filter((fact) => !gone.has(fact.id)));
  }
  const copy = copyOf(books);
  const changed = changeFacts(copy, { removed, added: [] });
  return changed.kind === "impossible" ? changed : { kind: "folded", books: copy };
}

/** The books as they stood at the end of a day. */
export function booksThrough(books: Books, day: Day): Folded {
  return booksWithout(books, books.facts.slice(firstIndex(books.facts, (fact) => fact.day > day)));
}

/** The books as they stood before a fact, in the order in which facts fold. */
export function booksBefore(books: Books, fact: Fact): Folded {
  const from = firstIndex(books.facts, (other) => inFoldOrder(other, fact) >= 0);
  return booksWithout(books, books.facts.slice(from));
}

interface Reach {
  /** All facts that will stand and hang together with the changed ones. */
  facts: Fact[];
  pieces: Set<number>;
  isLedgerWide: boolean;
}

function reachOf(books: BooksInHand, { removed, added }: Change): Reach {
  const gone = new Set(removed.map((fact) => fact.id));
  const facts = new Map<number, Fact>(added.map((fact) => [fact.id, fact]));
  const pieces = new Set([...removed, ...added].flatMap((fact) => fact.pieces));
  // A set goes on with what is added to it while it is walked through.
  for (const number of pieces) {
    for (const id of books.story.get(number) ?? []) {
      if (gone.has(id) || facts.has(id)) continue;
      const fact = books.byId.get(id)!;
      facts.set(id, fact);
      for (const mate of fact.pieces) pieces.add(mate);
    }
  }
  const isWide = [...removed, ...added].some(isLedgerWide);
  if (isWide) {
    for (const fact of books.facts) if (isLedgerWide(fact) && !gone.has(fact.id)) facts.set(fact.id, fact);
  }
  return { facts: [...facts.values()], pieces, isLedgerWide: isWide };
}

function isLedgerWide(fact: Fact): boolean {
  return fact.pieces.length === 0 && rulesOf(fact.kind).alone !== true;
}
