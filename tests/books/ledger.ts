import type { Books, Piece } from "../../core/books/books.ts";
import type { Fact, FactKind, FactOf } from "../../core/books/facts.ts";
import { foldFacts } from "../../core/books/fold.ts";
import type { Problem } from "../../core/books/problem.ts";
import { type Statement, statementOf } from "../../core/books/statement.ts";
import type { Day } from "../../core/calendar.ts";
import type { Cents } from "../../core/money.ts";

/** A list of facts being written by a test: ids, places and piece numbers are given in order. */
export class Ledger {
  readonly facts: Fact[] = [];
  #nextPiece = 1;

  /** Adds a fact; `amount` in cents. */
  add<K extends FactKind>(kind: K, day: Day, fact: Partial<FactOf<K>> & { data?: FactOf<K>["data"] }): Fact {
    const id = this.facts.length + 1;
    const whole = { id, kind, day, place: id, author: 1, note: id, root: id, pieces: [], data: {}, ...fact };
    this.facts.push(whole as unknown as Fact);
    return whole as unknown as Fact;
  }

  /** A buy of pieces of these names; gives their numbers. */
  buy(day: Day, names: string[], amount: Cents, more: { set?: true; source?: string } = {}): number[] {
    const pieces = names.map(() => this.#nextPiece++);
    this.add("buy", day, {
      pieces,
      amount,
      data: { made: names.map((name) => ({ name, traits: [] })), ...more },
    });
    return pieces;
  }

  books(): Books {
    const folded = foldFacts(this.facts);
    if (folded.kind === "impossible") throw new Error(JSON.stringify(folded));
    return folded.books;
  }

  /** Why the facts cannot all stand, or null. */
  problem(): Problem | null {
    const folded = foldFacts(this.facts);
    return folded.kind === "impossible" ? folded.problem : null;
  }

  piece(number: number): Readonly<Piece> {
    const piece = this.books().pieces.get(number);
    if (!piece) throw new Error(`no piece ${number}`);
    return piece;
  }

  statement(through: Day): Statement {
    return statementOf(this.books(), { through, currency: "USD" });
  }
}
