import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Books } from "../../core/books/books.ts";
import { booksThrough, changeFacts } from "../../core/books/change.ts";
import { type Fact, inFoldOrder } from "../../core/books/facts.ts";
import { emptyBooks, factsThrough, foldFacts, foldsLast, recordFact } from "../../core/books/fold.ts";
import type { BooksInHand } from "../../core/books/hand.ts";
import { proceedsOf } from "../../core/books/piece.ts";
import { statementOf } from "../../core/books/statement.ts";
import { addDays } from "../../core/calendar.ts";
import { runsOf, SEED, SHRINKS } from "../runs.ts";
import { histories, type Step, Teller } from "./histories.ts";
import { modelAgreed, modelProblem, modelStatement } from "./model.ts";

const RUNS = runsOf({ short: 16, long: 3000 });
const parameters = { seed: SEED, numRuns: RUNS, endOnFailure: !SHRINKS };
const TIMEOUT_MS = 60_000 + RUNS * 200;

function folded(facts: readonly Fact[]): BooksInHand {
  return foldedBooks(foldFacts(facts));
}

function productionProblem(facts: readonly Fact[]): { fact: number; problem: string } | null {
  const result = foldFacts(facts);
  return result.kind === "impossible" ? { fact: result.fact.id, problem: result.problem.kind } : null;
}

/** The facts left standing by a history; `judge` says whether facts can stand together. */
function standingOf(steps: readonly Step[], judge = (facts: Fact[]) => foldFacts(facts).kind === "folded") {
  const teller = new Teller();
  let standing: Fact[] = [];
  for (const step of steps) {
    const told = teller.tell(step, standing);
    if (told && judge(told.facts)) standing = told.facts;
  }
  return { standing, last: teller.today };
}

/** Everything that the books hold, as plain data. */
function contentOf(books: Books): unknown {
  const { facts, pieces, loans, months, postings, story, order, taxRates, goals, declaredSent, standing } =
    books;
  const maps = [pieces, loans, months, postings, story, standing].map((map) => [...map]);
  return structuredClone({ facts, maps, order, taxRates, goals, declaredSent });
}

/** The same with what has no order of its own sorted: the order of pieces and loans is told, that of the rest is not. */
function unorderedContentOf(books: Books): unknown {
  const byKey = (map: ReadonlyMap<string | number, unknown>) =>
    [...map].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  const { pieces, loans, months, postings, story, ...rest } = books as BooksInHand;
  const { exactMiles, byId, flipped, ...plain } = rest;
  const maps = [months, postings, story, exactMiles, byId, flipped].map(byKey);
  return JSON.parse(JSON.stringify({ ...plain, pieces: [...pieces], loans: [...loans], maps }));
}

/** What was taken out and put in between two lists of standing facts. */
function changeBetween(before: readonly Fact[], after: readonly Fact[]) {
  return {
    removed: before.filter((fact) => !after.includes(fact)),
    added: after.filter((fact) => !before.includes(fact)),
  };
}

function keep(map: Map<number, unknown>, key: number, value: unknown): void {
  if (value === undefined) map.delete(key);
  else map.set(key, structuredClone(value));
}

function foldedBooks(result: ReturnType<typeof foldFacts>): BooksInHand {
  if (result.kind === "impossible") throw new Error(JSON.stringify(result));
  return result.books;
}

describe("random histories", () => {
  it(
    "give the same statement, on any day, as the model, and the same refusals",
    () => {
      let refused = 0;
      let stood = 0;
      const judge = (facts: Fact[]): boolean => {
        const problem = productionProblem(facts);
        expect(problem).toEqual(modelProblem(facts));
        if (problem) refused += 1;
        else stood += 1;
        return !problem;
      };
      const property = fc.property(histories, fc.nat(80), (steps, daysBefore) => {
        const { standing, last } = standingOf(steps, judge);
        for (const through of [addDays(last, 40), addDays(last, -daysBefore)]) {
          const books = folded(factsThrough(standing, through));
          const ours = statementOf(books, { through, currency: "USD" });
          expect(ours).toEqual(modelStatement(standing, through));
          const agreed = [...books.pieces].flatMap(([number, { hold }]) =>
            hold === null || hold.agreed === null ? [] : [[number, hold.agreed]],
          );
          expect(agreed.sort(([a], [b]) => a! - b!)).toEqual(modelAgreed(standing, through));
        }
      });
      fc.assert(property, parameters);
      // A run in which hardly anything is refused, or hardly anything stands, would prove little.
      expect(refused).toBeGreaterThan(RUNS);
      expect(stood).toBeGreaterThan(RUNS * 5);
    },
    TIMEOUT_MS,
  );

  it(
    "keep the accounting identities",
    () => {
      const property = fc.property(histories, (steps) => {
        const { standing } = standingOf(steps);
        const books = folded(standing);
        let cash = 0;
        for (const legs of books.postings.values()) {
          expect(legs.reduce((sum, leg) => sum + leg.cents, 0)).toBe(0);
          for (const leg of legs) if (leg.account === "cash") cash += leg.cents;
        }
        const months = [...books.months.values()];
        const sumOf = (amount: (month: (typeof months)[number]) => number) =>
          months.reduce((sum, month) => sum + amount(month), 0);
        expect(cash).toBe(sumOf((month) => month.cashIn - month.cashOut - month.paidToLoan));
        const pieces = [...books.pieces.values()];
        expect(sumOf((month) => month.proceeds)).toBe(
          pieces.reduce((sum, piece) => sum + proceedsOf(piece), 0),
        );
        expect(sumOf((month) => month.fees)).toBe(pieces.reduce((sum, piece) => sum + piece.fees, 0));
        expect(sumOf((month) => month.flipped)).toBe(pieces.filter((piece) => piece.gone === "sold").length);
        const held = pieces.reduce((sum, piece) => sum + piece.deposit, 0);
        expect(balanceOf(books, "deposits held") + held).toBe(0);
        expect(balanceOf(books, "unsold pieces")).toBe(
          pieces.reduce((sum, piece) => sum + (piece.gone ? 0 : piece.price + piece.materials), 0),
        );
        for (const loan of books.loans.values()) {
          expect(balanceOf(books, "loan", loan.name) + loan.principal).toBe(0);
          expect(balanceOf(books, "loan interest", loan.name)).toBe(loan.interestPaid);
          expect(Math.min(loan.principal, loan.accrued)).toBeGreaterThanOrEqual(0);
        }
      });
      fc.assert(property, parameters);
    },
    TIMEOUT_MS,
  );

  it(
    "recorded one by one give the books of a whole fold, and a refusal changes nothing",
    () => {
      const property = fc.property(histories, (steps) => {
        const teller = new Teller();
        const books = emptyBooks();
        const mirror = new Map<number, unknown>();
        for (const step of steps) {
          const told = teller.tell(step, books.facts);
          if (!told?.added || step.does !== "add" || !foldsLast(books, told.added)) continue;
          const before = contentOf(books);
          if (recordFact(books, told.added)) expect(contentOf(books)).toEqual(before);
          for (const number of books.takeChanges().pieces)
            mirror.set(number, { ...books.pieces.get(number) });
        }
        expect(contentOf(books)).toEqual(contentOf(folded(books.facts)));
        expect(mirror).toEqual(new Map(books.pieces));
      });
      fc.assert(property, parameters);
    },
    TIMEOUT_MS,
  );

  it(
    "changed one by one, wherever in the order, give the books of a whole fold, and a refusal changes nothing",
    () => {
      let changed = 0;
      let refused = 0;
      const property = fc.property(histories, fc.nat(200), (steps, daysBefore) => {
        const teller = new Teller();
        const books = emptyBooks();
        const mirror = { pieces: new Map<number, unknown>(), postings: new Map<number, unknown>() };
        for (const step of steps) {
          const told = teller.tell(step, books.facts);
          if (!told) continue;
          const change = changeBetween(books.facts, told.facts);
          const whole = foldFacts(told.facts);
          const before = JSON.stringify(unorderedContentOf(books));
          const result = changeFacts(books, change);
          if (whole.kind === "impossible") {
            expect(result).toEqual(whole);
            expect(JSON.stringify(unorderedContentOf(books))).toBe(before);
            refused += 1;
            continue;
          }
          if (result.kind === "impossible") throw new Error(JSON.stringify(result));
          expect(unorderedContentOf(books)).toEqual(unorderedContentOf(whole.books));
          changed += 1;
          for (const name of ["pieces", "postings"] as const) {
            const keys = name === "pieces" ? result.changes.pieces : result.changes.facts;
            for (const key of keys) keep(mirror[name], key, books[name].get(key));
            expect(mirror[name]).toEqual(books[name]);
          }
        }
        const through = addDays(teller.today, -daysBefore);
        const then = booksThrough(books, through);
        expect(unorderedContentOf(foldedBooks(then))).toEqual(
          unorderedContentOf(folded(factsThrough(books.facts, through))),
        );
      });
      // Everything is compared after every step, which makes this the slowest of them.
      fc.assert(property, { ...parameters, numRuns: RUNS / 4 });
      expect(changed).toBeGreaterThan(RUNS);
      expect(refused).toBeGreaterThan(RUNS / 8);
    },
    TIMEOUT_MS,
  );

  it(
    "do not depend on the order of unrelated facts of one day",
    () => {
      const property = fc.property(histories, fc.nat(1000), (steps, pick) => {
        const { standing, last } = standingOf(steps);
        const ordered = [...standing].sort(inFoldOrder);
        const pairs = ordered.flatMap((fact, index) => {
          const next = ordered[index + 1];
          return next && areUnrelated(fact, next) ? [[fact, next] as const] : [];
        });
        const pair = pairs[pick % Math.max(pairs.length, 1)];
        if (!pair) return;
        const [a, b] = pair;
        const swapped = standing.map((fact) => {
          if (fact === a) return { ...fact, place: b.place };
          return fact === b ? { ...fact, place: a.place } : fact;
        });
        const on = { through: last, currency: "USD" };
        expect(statementOf(folded(swapped), on)).toEqual(statementOf(folded(standing), on));
      });
      fc.assert(property, parameters);
    },
    TIMEOUT_MS,
  );
});

function balanceOf(books: Books, account: string, detail?: string): number {
  return [...books.postings.values()]
    .flat()
    .filter((leg) => leg.account === account && (detail === undefined || leg.detail === detail))
    .reduce((sum, leg) => sum + leg.cents, 0);
}

/** Facts of one day that share no piece and are not both about loans or the tax percent. */
function areUnrelated(a: Fact, b: Fact): boolean {
  const onLoans = ["loan", "pay", "terms", "statement"];
  if (a.day !== b.day || a.place === b.place) return false;
  if (a.kind === b.kind && (a.kind === "taxrate" || a.kind === "repeat")) return false;
  if (onLoans.includes(a.kind) && onLoans.includes(b.kind)) return false;
  return !a.pieces.some((piece) => b.pieces.includes(piece));
}
