import { Decimal } from "decimal.js";
import { type Month, monthOf } from "../calendar.ts";
import { assertCents, type Cents, WideDecimal } from "../money.ts";
import type { PaymentOrder } from "../notes/reading.ts";
import type { Books, Goal, Loan, MonthSums, Piece, Standing } from "./books.ts";
import type { Fact } from "./facts.ts";
import { emptyMonth } from "./month.ts";
import type { Account, Posting } from "./postings.ts";
import type { Problem } from "./problem.ts";

/** Places after the point to which a piece's miles are shown; what is kept has more. */
const MILES_PLACES = 10;

/** What the facts recorded since the last look have touched: for a writer that stores derived books. */
export interface Changes {
  pieces: number[];
  loans: string[];
  /** Ids of the facts whose postings changed; those that have any now are in `books.postings`. */
  facts: number[];
  /** These facts may have had other postings before. */
  mayReplace?: true;
}

/**
 * Adds one posting to the sums of its month, or takes it out again; cash that pays a loan is counted as such and
 * nowhere else.
 */
export function addToMonth(sums: MonthSums, leg: Posting, kind: Fact["kind"], times: 1 | -1 = 1): void {
  const { account } = leg;
  const cents = times * leg.cents;
  if (account === "sales" || account === "deposits kept" || account === "refunds") sums.proceeds -= cents;
  else if (account === "cost of pieces sold") sums.costOfSold += cents;
  else if (account === "selling fees") sums.fees += cents;
  else if (account === "overhead") sums.overhead += cents;
  else if (account === "written off") sums.writtenOff += cents;
  else if (account === "other income") sums.otherIncome -= cents;
  else if (account === "buyers owe") sums.buyersOwe += cents;
  else if (account === "cash" && kind === "pay") sums.paidToLoan -= cents;
  else if (account === "cash" && leg.cents > 0) sums.cashIn += cents;
  else if (account === "cash") sums.cashOut -= cents;
}

/**
 * The books while facts are applied to them. A verb's rules check everything first and then change pieces and
 * loans through `piece` and `loan` (which keep track of what is touched) and money through `post`.
 */
export class BooksInHand implements Books {
  readonly facts: Fact[] = [];
  readonly pieces = new Map<number, Piece>();
  readonly loans = new Map<string, Loan>();
  readonly months = new Map<Month, MonthSums>();
  readonly postings = new Map<number, Posting[]>();
  readonly story = new Map<number, number[]>();
  readonly taxRates: { day: string; percent: string }[] = [];
  readonly goals: Goal[] = [];
  readonly standing = new Map<number, Standing>();
  readonly buyers = new Map<string, number>();
  order: PaymentOrder = "highest";
  declaredSent: Cents = 0;

  // Kept for whoever changes a part of the books (exchange.ts); not for readers.
  /** Miles as they add up, before they are shown. */
  readonly exactMiles = new Map<number, Decimal>();
  readonly byId = new Map<number, Fact>();
  /** By how much each fact changed its month's count of pieces flipped, where it did. */
  readonly flipped = new Map<number, number>();

  #fact: Fact | null = null;
  #legs: Posting[] = [];
  #touchedPieces = new Set<number>();
  #touchedLoans = new Set<string>();
  #recordedFacts: number[] = [];

  /** Applies one fact by its kind's rules and keeps it; on a problem nothing has changed. */
  record(fact: Fact, apply: (books: BooksInHand, fact: Fact) => Problem | null): Problem | null {
    if (new Set(fact.pieces).size !== fact.pieces.length)
      throw new Error(`fact ${fact.id} names a piece twice`);
    this.#fact = fact;
    this.#legs = [];
    const month = monthOf(fact.day);
    const flippedBefore = this.months.get(month)?.flipped ?? 0;
    const problem = apply(this, fact);
    const flipped = (this.months.get(month)?.flipped ?? 0) - flippedBefore;
    if (flipped !== 0) this.flipped.set(fact.id, flipped);
    this.#fact = null;
    if (problem) {
      if (this.#legs.length > 0) throw new Error(`fact ${fact.id} was posted and refused`);
      return problem;
    }
    this.#keep(fact);
    return null;
  }

  #keep(fact: Fact): void {
    const sum = this.#legs.reduce((total, leg) => total + leg.cents, 0);
    if (sum !== 0) throw new Error(`the postings of fact ${fact.id} sum to ${sum}`);
    this.facts.push(fact);
    this.byId.set(fact.id, fact);
    this.countBuyer(fact);
    this.#recordedFacts.push(fact.id);
    if (this.#legs.length > 0) this.postings.set(fact.id, this.#legs);
    for (const number of fact.pieces) {
      const story = this.story.get(number);
      if (story) story.push(fact.id);
      else this.story.set(number, [fact.id]);
    }
  }

  /** Counts the buyer that a fact names, or takes that out again. */
  countBuyer({ data }: Fact, times: 1 | -1 = 1): void {
    const { buyer } = data as { buyer?: string };
    if (buyer === undefined) return;
    const count = (this.buyers.get(buyer) ?? 0) + times;
    if (count > 0) this.buyers.set(buyer, count);
    else this.buyers.delete(buyer);
  }

  /** A leg of the fact in hand, in cents: debit positive, credit negative. Nothing is posted for zero. */
  post(account: Account, cents: Cents, of: { piece?: number | undefined; detail?: string } = {}): void {
    if (!this.#fact) throw new Error("no fact in hand");
    assertCents(cents);
    if (cents === 0) return;
    const { id, day, kind } = this.#fact;
    const leg = { fact: id, day, account, cents, piece: of.piece ?? null, detail: of.detail ?? null };
    this.#legs.push(leg);
    addToMonth(this.month(monthOf(day)), leg, kind);
  }

  /** A piece to change. A piece that is not there is a bug: the rules check first. */
  piece(number: number): Piece {
    const piece = this.pieces.get(number);
    if (!piece) throw new Error(`no piece ${number} on the books`);
    this.#touchedPieces.add(number);
    return piece;
  }

  /** Miles of a drive for a piece. Kept exact beside the piece, so that three thirds make a whole. */
  addMiles(number: number, miles: Decimal): void {
    const sum = (this.exactMiles.get(number) ?? new WideDecimal(0)).plus(miles);
    this.exactMiles.set(number, sum);
    this.piece(number).miles = sum.toDecimalPlaces(MILES_PLACES, Decimal.ROUND_HALF_UP).toFixed();
  }

  addPiece(piece: Piece): void {
    if (this.pieces.has(piece.number)) throw new Error(`piece number ${piece.number} was given before`);
    this.pieces.set(piece.number, piece);
    this.#touchedPieces.add(piece.number);
  }

  /** A loan to change. A loan that is not there is a bug: the rules check first. */
  loan(name: string): Loan {
    const loan = this.loans.get(name);
    if (!loan) throw new Error(`no loan "${name}" on the books`);
    this.#touchedLoans.add(name);
    return loan;
  }

  addLoan(loan: Loan): void {
    this.loans.set(loan.name, loan);
    this.#touchedLoans.add(loan.name);
  }

  /** The sums of a month to change. */
  month(month: Month): MonthSums {
    let sums = this.months.get(month);
    if (!sums) {
      sums = emptyMonth();
      this.months.set(month, sums);
    }
    return sums;
  }

  /** What changed since the last call, each once, in the order first touched. */
  takeChanges(): Changes {
    const changes = {
      pieces: [...this.#touchedPieces],
      loans: [...this.#touchedLoans],
      facts: this.#recordedFacts,
    };
    this.#touchedPieces = new Set();
    this.#touchedLoans = new Set();
    this.#recordedFacts = [];
    return changes;
  }
}
