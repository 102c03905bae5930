import type { Books, Piece } from "../books/books.ts";
import { firstIndex } from "../books/exchange.ts";
import type { Fact, FactOf } from "../books/facts.ts";
import type { Posting } from "../books/postings.ts";
import { shareOfMiles } from "../books/shares.ts";
import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { splitEvenly } from "../split.ts";
import { sidesOf } from "../verbs/trade.ts";
import { LedgerWords } from "./ledger-words.ts";

/** What one fact did to one piece (or to none), in the unit of the journal it stands in. */
export interface Entry {
  fact: Fact;
  day: Day;
  piece: number | null;
  /** Cents, whole minutes or pieces; miles are in `miles`. */
  units: number;
  miles?: string;
  /** The loan of a payment. */
  loan?: string;
  /** Who paid, as the note or the one before it says. */
  payer?: string | null;
}

/** Entries of one sort in the order of their days. */
export type Journal =
  | "spent"
  | "fees"
  | "miles"
  | "minutes"
  | "income"
  | "paid"
  | "interest"
  | "proceeds"
  | "net"
  | "sold"
  | "cuts"
  | "received";

/** The facts of a piece that questions ask for again and again: the latest of each sort. */
export interface PieceFacts {
  buy: Fact | null;
  sell: Fact | null;
  list: Fact | null;
  /** The last day it came back; null: never. */
  returned: Day | null;
  /** The first listing since it was bought or last came back. */
  listedSince: Day | null;
  /** What was asked for it from which day on. */
  prices: { day: Day; cents: Cents; fact: Fact }[];
  /** Whom it is held for. */
  holder: string | null;
  /** The last day its list price was changed; null: never. */
  repriced: Day | null;
  /** The last day a deposit was put on it; null: never. */
  deposited: Day | null;
}

const NET_ACCOUNTS: Readonly<Partial<Record<Posting["account"], true>>> = {
  sales: true,
  "deposits kept": true,
  refunds: true,
  "cost of pieces sold": true,
  "selling fees": true,
  overhead: true,
  "written off": true,
};

/** What moves with a buyer's money: the rest of it is cash. */
const BUYERS_MONEY: Readonly<Partial<Record<Posting["account"], true>>> = {
  sales: true,
  "deposits kept": true,
  refunds: true,
  "deposits held": true,
  "buyers owe": true,
};

/**
 * The facts sorted for asking. It grows with the ledger: what was indexed before is kept as long as the facts
 * before it stand as they stood.
 */
export class LedgerIndex {
  readonly journals: Record<Journal, Entry[]> = {
    spent: [],
    fees: [],
    miles: [],
    minutes: [],
    income: [],
    paid: [],
    interest: [],
    proceeds: [],
    net: [],
    sold: [],
    cuts: [],
    received: [],
  };
  /** The place of each fact in the order of recording, kept apart: looking through all facts for it is slow. */
  readonly places: number[] = [];
  /** Whom a piece was held for when it was sold, by sale and piece. */
  readonly heldFor = new Map<string, string>();
  /** The sale that a refund goes back on, by refund and piece. */
  readonly undone = new Map<string, Fact>();
  /** By how much in all a fact lowered list prices. */
  readonly cutBy = new Map<number, Cents>();
  readonly pieceFacts = new Map<number, PieceFacts>();
  readonly words = new LedgerWords();
  /** Answers worked out since the last note. */
  readonly results = new Map<string, unknown>();
  readonly #sums = new Map<Journal, number[]>();
  readonly #facts: Fact[] = [];

  /** The sum of the first so many entries of a journal, for every count of them. */
  sumsOf(journal: Journal): readonly number[] {
    const entries = this.journals[journal];
    let sums = this.#sums.get(journal);
    if (!sums) {
      sums = [0];
      this.#sums.set(journal, sums);
    }
    for (let at = sums.length - 1; at < entries.length; at += 1) sums.push(sums[at]! + entries[at]!.units);
    return sums;
  }

  /** Whether all that was indexed still stands at the head of these facts. */
  isHeadOf(facts: readonly Fact[]): boolean {
    const own = this.#facts;
    if (own.length > facts.length) return false;
    for (let at = own.length - 1; at >= 0; at -= 1) if (own[at] !== facts[at]) return false;
    return true;
  }

  /** Takes in the facts that came since. */
  follow(books: Books): void {
    for (let at = this.#facts.length; at < books.facts.length; at += 1) this.#take(books, books.facts[at]!);
  }

  /** What is known of a piece's own facts. */
  of(piece: number): PieceFacts {
    let facts = this.pieceFacts.get(piece);
    if (!facts) {
      facts = {
        buy: null,
        sell: null,
        list: null,
        returned: null,
        listedSince: null,
        prices: [],
        holder: null,
        deposited: null,
        repriced: null,
      };
      this.pieceFacts.set(piece, facts);
    }
    return facts;
  }

  #take(books: Books, fact: Fact): void {
    this.#facts.push(fact);
    this.places.push(fact.place);
    this.words.learn(books, fact);
    const payers = fact.pieces.map((number) => this.#payerOf(fact, number));
    for (const [place, number] of fact.pieces.entries()) this.#note(number, fact, place);
    const postings = books.postings.get(fact.id) ?? [];
    for (const posting of postings) {
      this.#post(fact, posting);
      const { account, cents, piece } = posting;
      if (!BUYERS_MONEY[account] || piece === null || fact.kind === "trade") continue;
      this.#add("received", fact, {
        piece,
        units: -cents,
        payer: payers[fact.pieces.indexOf(piece)] ?? null,
      });
    }
    this.#count(fact, postings);
  }

  /** Whose money a fact moves: whoever it names, else who holds the piece, else who bought it. */
  #payerOf({ data }: Fact, number: number): string | null {
    const { holder, sell } = this.of(number);
    const sold = sell?.kind === "sell" ? sell.data.buyer : undefined;
    return (data as { buyer?: string }).buyer ?? holder ?? sold ?? null;
  }

  #add(journal: Journal, fact: Fact, entry: Omit<Entry, "fact" | "day">): void {
    this.journals[journal].push({ fact, day: fact.day, ...entry });
  }

  #post(fact: Fact, { account, cents, piece, detail }: Posting): void {
    if (NET_ACCOUNTS[account]) this.#add("net", fact, { piece, units: -cents });
    if (account === "sales" || account === "deposits kept" || account === "refunds")
      this.#add("proceeds", fact, { piece, units: -cents });
    else if (account === "selling fees") this.#add("fees", fact, { piece, units: cents });
    else if (account === "overhead" && detail === "fees") this.#add("fees", fact, { piece, units: cents });
    else if (account === "other income") this.#add("income", fact, { piece, units: -cents });
    if (fact.kind !== "pay" || detail === null) return;
    if (account === "loan interest") this.#add("interest", fact, { piece: null, units: cents, loan: detail });
    if (account === "loan" || account === "loan interest")
      this.#add("paid", fact, { piece: null, units: cents, loan: detail });
  }

  #count(fact: Fact, postings: readonly Posting[]): void {
    const { pieces } = fact;
    switch (fact.kind) {
      case "spend":
        if (pieces.length === 0) this.#add("spent", fact, { piece: null, units: fact.amount ?? 0 });
        for (const { account, cents, piece } of postings)
          if (account !== "cash" && piece !== null) this.#add("spent", fact, { piece, units: cents });
        return;
      case "work":
        splitEvenly(fact.data.minutes, Math.max(1, pieces.length)).forEach((units, index) => {
          this.#add("minutes", fact, { piece: pieces[index] ?? null, units });
        });
        return;
      case "drive":
        this.#drive(fact);
        return;
      case "trade":
        for (const piece of sidesOf(fact).gave) this.#add("sold", fact, { piece, units: 1 });
        return;
      case "sell":
        for (const piece of pieces) this.#add("sold", fact, { piece, units: 1 });
        return;
      case "refund":
        if (fact.data.returned) for (const piece of pieces) this.#add("sold", fact, { piece, units: -1 });
    }
  }

  #drive(fact: FactOf<"drive">): void {
    const { pieces, data } = fact;
    if (pieces.length < 2) {
      this.#add("miles", fact, { piece: pieces[0] ?? null, units: 0, miles: data.miles });
      return;
    }
    const share = shareOfMiles(data.miles, pieces.length).toString();
    for (const piece of pieces) this.#add("miles", fact, { piece, units: 0, miles: share });
  }

  /** Keeps the latest fact of each sort that a piece has. */
  #note(number: number, fact: Fact, place: number): void {
    const of = this.of(number);
    switch (fact.kind) {
      case "buy":
        of.buy = fact;
        return;
      case "trade":
        if (sidesOf(fact).got.includes(number)) of.buy = fact;
        else of.sell = fact;
        return;
      case "hold":
        of.holder = fact.data.buyer ?? of.holder;
        if (fact.amount) of.deposited = fact.day;
        return;
      case "fallthrough":
        of.holder = null;
        return;
      case "sell":
        of.sell = fact;
        if (of.holder !== null) this.heldFor.set(`${fact.id} ${number}`, of.holder);
        of.holder = null;
        return;
      case "list":
        of.list = fact;
        of.listedSince ??= fact.day;
        of.prices.push({ day: fact.day, cents: shareAt(fact, place), fact });
        return;
      case "reprice": {
        of.repriced = fact.day;
        const before = of.prices.at(-1)?.cents ?? 0;
        const cents = fact.data.cut ? before - shareAt(fact, place) : shareAt(fact, place);
        of.prices.push({ day: fact.day, cents, fact });
        if (cents >= before) return;
        this.#add("cuts", fact, { piece: number, units: before - cents });
        this.cutBy.set(fact.id, (this.cutBy.get(fact.id) ?? 0) + before - cents);
        return;
      }
      case "refund":
        if (of.sell) this.undone.set(`${fact.id} ${number}`, of.sell);
        if (!fact.data.returned) return;
        of.returned = fact.day;
        of.listedSince = null;
    }
  }
}

/** The part of a fact's amount that falls to the piece at a place among its pieces. */
const shareAt = ({ amount = 0, pieces }: Fact, place: number): Cents =>
  splitEvenly(amount, pieces.length)[place]!;

/** One index for each books in hand; it goes when they go. */
const indexes = new WeakMap<Books, LedgerIndex>();

/** The index of these books, brought up to date. */
export function indexOf(books: Books): LedgerIndex {
  const before = indexes.get(books);
  const index = before?.isHeadOf(books.facts) ? before : new LedgerIndex();
  index.follow(books);
  indexes.set(books, index);
  return index;
}

/** The entries from one day through another, both counted: they stand in the order of their days. */
export function entriesIn(entries: readonly Entry[], from: Day | null, to: Day | null): readonly Entry[] {
  if (from === null && to === null) return entries;
  const { start, end } = placesIn(entries, from, to);
  return entries.slice(start, end);
}

/** Where the entries of a stretch of days begin and end. */
export function placesIn(
  entries: readonly Entry[],
  from: Day | null,
  to: Day | null,
): { start: number; end: number } {
  const start = from === null ? 0 : firstIndex(entries, ({ day }) => day >= from);
  const end = to === null ? entries.length : firstIndex(entries, ({ day }) => day > to);
  return { start, end };
}

/** What the last sale of a sold piece brought in, its share of the price, in cents; null where it is not sold. */
export function salePriceOf(books: Books, index: LedgerIndex, piece: Readonly<Piece>): Cents | null {
  const sell = piece.sold === null ? null : index.of(piece.number).sell;
  if (!sell) return null;
  let cents = 0;
  for (const posting of books.postings.get(sell.id) ?? [])
    if (posting.account === "sales" && posting.piece === piece.number) cents -= posting.cents;
  return cents;
}
