import type { Fact, FactOf } from "../../core/books/facts.ts";
import type { Problem } from "../../core/books/problem.ts";
import type { LoanLine, MonthLine, PieceLine, Statement } from "../../core/books/statement.ts";

/**
 * The books a second time, in another shape and sharing no code with the first: nothing is kept but the facts,
 * every figure is found anew by reading back through them, and interest is added up a day at a time in whole
 * fractions. Slow, and meant to be plain enough to check by eye against the description of the books.
 */

/** By day; on a day first what recorded itself, the older standing note first; then as first recorded. */
const order = (a: Fact, b: Fact): number => {
  if (a.day !== b.day) return a.day.localeCompare(b.day);
  if ((a.repeat === undefined) !== (b.repeat === undefined)) return a.repeat === undefined ? 1 : -1;
  return (a.repeat ?? 0) - (b.repeat ?? 0) || a.place - b.place || a.id - b.id;
};

/** Shares by largest remainder: whole parts first, then a unit at a time to the largest remainder, earliest first. */
function deal(total: number, weights: (number | bigint)[]): number[] {
  const sum = weights.reduce((a: bigint, b) => a + BigInt(b), 0n);
  if (sum === 0n)
    return deal(
      total,
      weights.map(() => 1),
    );
  const rests = weights.map((weight) => (BigInt(total) * BigInt(weight)) % sum);
  const shares = weights.map((weight) => Number((BigInt(total) * BigInt(weight)) / sum));
  for (let left = total - shares.reduce((a, b) => a + b, 0); left > 0; left--) {
    let best = 0;
    for (let index = 1; index < rests.length; index++) if (rests[index]! > rests[best]!) best = index;
    shares[best]! += 1;
    rests[best] = -1n;
  }
  return shares;
}

const text = (cents: number): string => {
  const sign = cents < 0 ? "-" : "";
  const whole = Math.trunc(Math.abs(cents) / 100);
  return `${sign}${whole}.${`${Math.abs(cents) % 100}`.padStart(2, "0")}`;
};

const tomorrow = (day: string): string => {
  const date = new Date(`${day}T12:00:00Z`);
  date.setUTCDate(date.getUTCDate() + 1);
  return date.toISOString().slice(0, 10);
};

/** A plain decimal as a whole number of 10^-15. */
const PLACES = 15;
const ONE = 10n ** BigInt(PLACES);
const scaled = (decimal: string): bigint => {
  const [whole, fraction = ""] = decimal.split(".") as [string, string?];
  return BigInt(whole + fraction.padEnd(PLACES, "0"));
};
const roundedQuotient = (top: bigint, bottom: bigint): bigint => (2n * top + bottom) / (2n * bottom);

/** A trade gives its first pieces and brings the rest, which it describes. */
const gives = (fact: Fact, piece: number): boolean =>
  fact.kind === "trade" && fact.pieces.indexOf(piece) < fact.pieces.length - fact.data.made.length;
const brings = (fact: Fact, piece: number): boolean => fact.kind === "trade" && !gives(fact, piece);
const isSale = (fact: Fact | null): boolean => fact?.kind === "sell" || fact?.kind === "trade";

/** Pieces: every question is answered for the moment just before fact number `at` of the ordered facts. */
class PieceReader {
  constructor(readonly facts: Fact[]) {}

  before(at: number, piece: number): { fact: Fact; at: number }[] {
    const found: { fact: Fact; at: number }[] = [];
    for (let i = 0; i < at; i++) {
      if (this.facts[i]!.pieces.includes(piece)) found.push({ fact: this.facts[i]!, at: i });
    }
    return found;
  }

  /** One piece's share of an even split. */
  even(fact: Fact, piece: number, total = fact.amount ?? 0): number {
    return deal(
      total,
      fact.pieces.map(() => 1),
    )[fact.pieces.indexOf(piece)]!;
  }

  exists(at: number, piece: number): boolean {
    return this.before(at, piece).some(({ fact }) => fact.kind === "buy" || brings(fact, piece));
  }

  /** The fact by which the piece went, where it is gone. */
  gone(at: number, piece: number): FactOf<"sell"> | FactOf<"retire"> | FactOf<"trade"> | null {
    for (const { fact } of this.before(at, piece).reverse()) {
      if (fact.kind === "sell" || fact.kind === "retire" || gives(fact, piece)) return fact as FactOf<"sell">;
      if (fact.kind === "refund" && fact.data.returned) return null;
    }
    return null;
  }

  /** Facts of its present stay: since it was bought or last came back. */
  stay(at: number, piece: number): { fact: Fact; at: number }[] {
    const all = this.before(at, piece);
    const cameBack = all.findLastIndex(({ fact }) => fact.kind === "refund" && fact.data.returned);
    return all.slice(cameBack + 1);
  }

  listed(at: number, piece: number): string | null {
    return this.stay(at, piece).findLast(({ fact }) => fact.kind === "list")?.fact.day ?? null;
  }

  listPrice(at: number, piece: number): number | null {
    let price: number | null = null;
    for (const { fact } of this.stay(at, piece)) {
      if (fact.kind === "list") price = this.even(fact, piece);
      if (fact.kind === "reprice")
        price = fact.data.cut ? price! - this.even(fact, piece) : this.even(fact, piece);
    }
    return price;
  }

  /** The first day said, or that on which it came back before anybody had said so; a later word is the latest. */
  finished(at: number, piece: number): string | null {
    let day: string | null = null;
    for (const { fact } of this.before(at, piece)) {
      if (fact.kind === "finish") day = fact.day;
      if (fact.kind === "refund" && fact.data.returned && day === null) day = fact.day;
    }
    return day;
  }

  /** Holds that no sale, fall-through or retiring has ended. */
  openHolds(at: number, piece: number): Fact[] {
    const all = this.before(at, piece);
    const ends = ["sell", "fallthrough", "retire"];
    const lastEnd = all.findLastIndex(({ fact }) => ends.includes(fact.kind) || gives(fact, piece));
    return all.slice(lastEnd + 1).flatMap(({ fact }) => (fact.kind === "hold" ? [fact] : []));
  }

  /** Its share of the last price agreed on with whoever holds it now. */
  agreed(at: number, piece: number): number | null {
    const holds = this.openHolds(at, piece) as FactOf<"hold">[];
    const last = holds.findLastIndex(({ data }) => data.agreed !== undefined);
    if (last < 0) return null;
    const buyers = new Set(holds.slice(last + 1).flatMap(({ data }) => data.buyer ?? []));
    const whose = holds
      .slice(0, last + 1)
      .flatMap(({ data }) => data.buyer ?? [])
      .at(-1);
    const isAnothers = [...buyers].some((buyer) => whose !== undefined && buyer !== whose) || buyers.size > 1;
    return isAnothers ? null : this.even(holds[last]!, piece, holds[last]!.data.agreed);
  }

  deposit(at: number, piece: number): number {
    return this.openHolds(at, piece).reduce((sum, fact) => sum + this.even(fact, piece), 0);
  }

  /** By list price; an unlisted piece by what it cost, at the listed ones' prices for their cost. */
  saleShare(at: number, piece: number, total: number): number {
    const fact = this.facts[at]!;
    const pieces = fact.kind === "trade" ? fact.pieces.filter((each) => gives(fact, each)) : fact.pieces;
    const listed = pieces.filter((each) => (this.listPrice(at, each) ?? 0) > 0);
    const asked = listed.reduce((sum, each) => sum + BigInt(this.listPrice(at, each)!), 0n);
    const spent = listed.reduce((sum, each) => sum + BigInt(this.cost(at, each)), 0n);
    const isEven = listed.length < pieces.length && (listed.length === 0 || spent === 0n);
    const one = listed.length === pieces.length ? 1n : spent;
    const weights = pieces.map((each) => {
      if (isEven) return 1n;
      const price = BigInt(this.listPrice(at, each) ?? 0);
      return price > 0n ? price * one : BigInt(this.cost(at, each)) * asked;
    });
    return deal(total, weights)[pieces.indexOf(piece)]!;
  }

  /** What is owed on a piece: its share of the sale's, less what came in, what never came, and all where it came back. */
  owed(at: number, piece: number): number {
    const key = `${at} ${piece}`;
    const known = this.#owed.get(key);
    if (known !== undefined) return known;
    const owed = this.before(at, piece).reduce(
      (sum, { fact, at: i }) => sum + this.owing(fact, i, piece, sum),
      0,
    );
    this.#owed.set(key, owed);
    return owed;
  }

  readonly #owed = new Map<string, number>();

  /** How much a fact adds to what is owed on a piece, on which `now` is owed just before it. */
  owing(fact: Fact, at: number, piece: number, now: number): number {
    if (fact.kind === "sell") return this.owedShare(at, piece);
    if (fact.kind === "refund" && fact.data.returned) return -now;
    if (fact.kind === "collect") return -this.shareOfOwed(at, piece, fact.amount!);
    if (fact.kind === "refund" && fact.data.unpaid) return -this.neverCame(at, piece);
    return 0;
  }

  /** What is left to pay of a piece's price after its deposit, as the sale's owed amount is dealt out. */
  owedShare(at: number, piece: number): number {
    const fact = this.facts[at] as FactOf<"sell">;
    const isPart = fact.data.deposit === undefined || fact.data.deposit === "applied";
    const left = fact.pieces.map((each) => {
      const price = this.saleShare(at, each, fact.amount!);
      return Math.max(price - (isPart ? this.deposit(at, each) : 0), 0);
    });
    return deal(fact.data.owed ?? 0, left)[fact.pieces.indexOf(piece)]!;
  }

  shareOfOwed(at: number, piece: number, total: number): number {
    const { pieces } = this.facts[at]!;
    return deal(
      total,
      pieces.map((each) => this.owed(at, each)),
    )[pieces.indexOf(piece)]!;
  }

  neverCame(at: number, piece: number): number {
    const { pieces, amount } = this.facts[at]!;
    const all = pieces.reduce((sum, each) => sum + this.owed(at, each), 0);
    return this.shareOfOwed(at, piece, amount ?? all);
  }

  /** What a refund takes off a piece's proceeds. */
  takenOff(at: number, piece: number): number {
    const fact = this.facts[at] as FactOf<"refund">;
    if (fact.data.unpaid) return this.neverCame(at, piece);
    return this.even(fact, piece) + (fact.data.returned ? this.owed(at, piece) : 0);
  }

  /** What a fall-through gives back for one piece. */
  givenBack(at: number, piece: number): number {
    const fact = this.facts[at] as FactOf<"fallthrough">;
    const deposits = fact.pieces.map((each) => this.deposit(at, each));
    const held = deposits.reduce((a, b) => a + b, 0);
    const back = fact.data.kept ? held - (fact.amount ?? 0) : (fact.amount ?? 0);
    return deal(back, deposits)[fact.pieces.indexOf(piece)]!;
  }

  sum(at: number, piece: number, share: (fact: Fact, at: number) => number): number {
    return this.before(at, piece).reduce((sum, entry) => sum + share(entry.fact, entry.at), 0);
  }

  price(at: number, piece: number): number {
    return this.sum(at, piece, (fact) => {
      if (fact.kind === "buy") return this.even(fact, piece);
      if (fact.kind !== "trade" || gives(fact, piece)) return 0;
      const got = fact.pieces.filter((each) => !gives(fact, each));
      const cost = fact.amount! + (fact.data.paid ?? 0) - (fact.data.received ?? 0);
      return deal(
        cost,
        got.map(() => 1),
      )[got.indexOf(piece)]!;
    });
  }

  materials(at: number, piece: number): number {
    return this.sum(at, piece, (fact) =>
      fact.kind === "spend" && fact.data.category !== "fees" ? this.even(fact, piece) : 0,
    );
  }

  cost(at: number, piece: number): number {
    return this.price(at, piece) + this.materials(at, piece);
  }

  fees(at: number, piece: number): number {
    return this.sum(at, piece, (fact, i) => {
      if (fact.kind === "sell") return this.saleShare(i, piece, fact.data.fee ?? 0);
      return fact.kind === "spend" && fact.data.category === "fees" ? this.even(fact, piece) : 0;
    });
  }

  kept(at: number, piece: number): number {
    return this.sum(at, piece, (fact, i) => {
      if (fact.kind === "sell" && fact.data.deposit === "kept") return this.deposit(i, piece);
      return fact.kind === "fallthrough" ? this.deposit(i, piece) - this.givenBack(i, piece) : 0;
    });
  }

  proceeds(at: number, piece: number): number {
    const sales = this.sum(at, piece, (fact, i) => {
      if (fact.kind === "sell" || gives(fact, piece)) return this.saleShare(i, piece, fact.amount!);
      return fact.kind === "refund" ? -this.takenOff(i, piece) : 0;
    });
    return sales + this.kept(at, piece);
  }

  profit(at: number, piece: number): number | null {
    const gone = this.gone(at, piece);
    const proceeds = this.proceeds(at, piece);
    if (!gone && proceeds === 0) return null;
    const ownUse = gone?.kind === "retire" && gone.data.how === "kept";
    return proceeds - this.fees(at, piece) - (ownUse ? 0 : this.cost(at, piece));
  }

  /** Which problem keeps fact number `at` from standing, as far as pieces go. */
  problem(at: number): Problem["kind"] | null {
    const fact = this.facts[at]!;
    if (fact.kind === "buy") return null;
    if (fact.kind === "trade") return this.tradeProblem(fact, at);
    if (fact.pieces.some((piece) => !this.exists(at, piece))) return "no such piece";
    const needsHere = ["start", "finish", "list", "reprice", "hold", "sell", "retire"];
    if (needsHere.includes(fact.kind) && fact.pieces.some((piece) => this.gone(at, piece)))
      return "piece gone";
    for (const piece of fact.pieces) {
      const problem = this.pieceProblem(fact, at, piece);
      if (problem) return problem;
    }
    const held = fact.pieces.reduce((sum, piece) => sum + this.deposit(at, piece), 0);
    const owed = fact.pieces.reduce((sum, piece) => sum + this.owed(at, piece), 0);
    if (fact.kind === "sell") {
      const isPart = fact.data.deposit === undefined || fact.data.deposit === "applied";
      const due = Math.max(0, fact.amount! - (isPart ? held : 0));
      return (fact.data.owed ?? 0) > due ? "more owed than due" : null;
    }
    if (fact.kind === "collect" || (fact.kind === "refund" && fact.data.unpaid)) {
      if (owed === 0) return "nothing owed";
      return (fact.amount ?? 0) > owed ? "more than buyers owe" : null;
    }
    return fact.kind === "fallthrough" && (fact.amount ?? 0) > held ? "more than held" : null;
  }

  tradeProblem(fact: FactOf<"trade">, at: number): Problem["kind"] | null {
    const gave = fact.pieces.filter((piece) => gives(fact, piece));
    if (gave.some((piece) => !this.exists(at, piece))) return "no such piece";
    if (gave.some((piece) => this.gone(at, piece))) return "piece gone";
    if (gave.some((piece) => this.deposit(at, piece) > 0)) return "deposit held";
    return fact.amount! + (fact.data.paid ?? 0) < (fact.data.received ?? 0) ? "trade below zero" : null;
  }

  pieceProblem(fact: Fact, at: number, piece: number): Problem["kind"] | null {
    if (fact.kind === "fallthrough") return this.openHolds(at, piece).length === 0 ? "piece not held" : null;
    if (fact.kind === "retire") return this.deposit(at, piece) > 0 ? "deposit held" : null;
    if (fact.kind === "reprice") {
      const price = this.listPrice(at, piece);
      if (price === null) return "piece not listed";
      return fact.data.cut && this.even(fact, piece) > price ? "cut below zero" : null;
    }
    if (fact.kind === "refund" && !fact.data.unpaid) {
      const broughtIn = this.proceeds(at, piece);
      const isSold = isSale(this.gone(at, piece));
      if (!isSold && (fact.data.returned || broughtIn === 0)) return "piece not sold";
      return this.even(fact, piece) > broughtIn - this.owed(at, piece) ? "more than brought in" : null;
    }
    return null;
  }

  line(piece: number): PieceLine {
    const end = this.facts.length;
    const all = this.before(end, piece).map(({ fact }) => fact);
    const buy = all.find((fact) => fact.kind === "buy" || brings(fact, piece)) as FactOf<"buy">;
    const came = buy.pieces.slice(-buy.data.made.length);
    const made = buy.data.made[came.indexOf(piece)]!;
    const gone = this.gone(end, piece);
    const started = all.find((fact) => fact.kind === "start")?.day ?? null;
    const finished = this.finished(end, piece);
    const listed = this.listed(end, piece);
    const isHeld = this.openHolds(end, piece).length > 0;
    const states = [gone && (gone.kind === "retire" ? gone.data.how : "sold"), isHeld && "held"];
    const earlier = [listed && "listed", finished && "finished", started && "started", "bought"];
    const profit = this.profit(end, piece);
    const listPrice = this.listPrice(end, piece);
    return {
      number: piece,
      name: made.name,
      traits: made.traits,
      status: [...states, ...earlier].find((state) => state) as PieceLine["status"],
      lot: came.length > 1 ? Math.min(...came) : null,
      bought: buy.day,
      started,
      finished,
      listed,
      listPrice: listPrice === null ? null : text(listPrice),
      sold: isSale(gone) ? gone!.day : null,
      price: text(this.price(end, piece)),
      materials: text(this.materials(end, piece)),
      fees: text(this.fees(end, piece)),
      deposit: text(this.deposit(end, piece)),
      depositsKept: text(this.kept(end, piece)),
      proceeds: text(this.proceeds(end, piece)),
      profit: profit === null ? null : text(profit),
      minutes: this.sum(end, piece, (fact) =>
        fact.kind === "work" ? this.even(fact, piece, fact.data.minutes) : 0,
      ),
      miles: this.miles(all),
      owed: text(this.owed(end, piece)),
    };
  }

  /** Whole fractions added up, and only then turned into ten places. */
  miles(facts: Fact[]): string {
    let top = 0n;
    let bottom = 1n;
    for (const fact of facts) {
      if (fact.kind !== "drive") continue;
      const parts = BigInt(fact.pieces.length);
      top = top * parts + scaled(fact.data.miles) * bottom;
      bottom *= parts;
    }
    const shown = roundedQuotient(top * 10n ** 10n, bottom * ONE)
      .toString()
      .padStart(11, "0");
    return `${shown.slice(0, -10)}.${shown.slice(-10)}`.replace(/\.?0+$/, "");
  }
}

/** A year in parts that every day count divides into whole days. */
const YEAR = 365n * 366n * 1461n;
/** What a cent of interest counts, in principal cents times rate times parts of a year. */
const WHOLE = 100n * ONE * YEAR;

interface ModelLoan {
  name: string;
  rate: string;
  days: string;
  principal: bigint;
  due: bigint;
  /** Interest since the last posting, in cents times WHOLE. */
  running: bigint;
  paid: bigint;
  interestPaid: bigint;
}

const dueOn = (loan: ModelLoan): bigint => loan.due + roundedQuotient(loan.running, WHOLE);
const least = (a: bigint, b: bigint): bigint => (a < b ? a : b);

/** Loans: walked through a day at a time, each night adding that day's interest. */
class LoanWalk {
  loans: ModelLoan[] = [];
  prorata = false;
  day: string | null = null;

  goTo(day: string): void {
    this.day ??= day;
    for (; this.day < day; this.day = tomorrow(this.day)) for (const loan of this.loans) this.night(loan);
  }

  night(loan: ModelLoan): void {
    const year = Number(this.day!.slice(0, 4));
    const isLeap = new Date(Date.UTC(year, 1, 29)).getUTCMonth() === 1;
    const wholeDay = YEAR / (loan.days === "actual" && isLeap ? 366n : 365n);
    const part = loan.days === "365.25" ? (YEAR * 4n) / 1461n : wholeDay;
    loan.running += loan.principal * scaled(loan.rate) * part;
  }

  settle(loan: ModelLoan): void {
    loan.due = dueOn(loan);
    loan.running = 0n;
  }

  apply(fact: Fact): Problem["kind"] | null {
    this.goTo(fact.day);
    const named = (name: string) => this.loans.find((loan) => loan.name === name);
    if (fact.kind === "loan") {
      const { loan: name, rate } = fact.data;
      if (named(name)) return "loan name taken";
      const start = { due: 0n, running: 0n, paid: 0n, interestPaid: 0n };
      this.loans.push({ name, rate, days: "365", principal: BigInt(fact.amount!), ...start });
    }
    if (fact.kind === "terms") {
      const loan = fact.data.loan === undefined ? null : named(fact.data.loan);
      if (loan === undefined) return "no such loan";
      if (loan && fact.data.rate !== undefined) loan.rate = fact.data.rate;
      if (loan && fact.data.days !== undefined) loan.days = fact.data.days;
      if (fact.data.order) this.prorata = fact.data.order === "prorata";
    }
    if (fact.kind === "statement") {
      const loan = named(fact.data.loan);
      if (!loan) return "no such loan";
      if (BigInt(fact.amount!) < dueOn(loan)) return "below interest due";
      this.settle(loan);
      loan.principal = BigInt(fact.amount!) - loan.due;
    }
    return fact.kind === "pay" ? this.pay(fact) : null;
  }

  pay(fact: FactOf<"pay">): Problem["kind"] | null {
    const { loan: name } = fact.data;
    if (name !== undefined && !this.loans.some((loan) => loan.name === name)) return "no such loan";
    if (this.loans.length === 0) return "no loan";
    let left = BigInt(fact.amount!);
    if (left > this.loans.reduce((sum, loan) => sum + loan.principal + dueOn(loan), 0n))
      return "more than owed";
    const give = (loan: ModelLoan, interest: bigint, principal: bigint): void => {
      if (interest + principal === 0n) return;
      this.settle(loan);
      loan.due -= interest;
      loan.principal -= principal;
      loan.interestPaid += interest;
      loan.paid += interest + principal;
      left -= interest + principal;
    };
    for (const loan of this.loans.filter((each) => each.name === name)) {
      const interest = least(left, dueOn(loan));
      give(loan, interest, least(left - interest, loan.principal));
    }
    const rest = this.loans.filter((loan) => loan.name !== name);
    const highest = rest.map((loan, index) => ({ loan, index }));
    highest.sort((a, b) => {
      const difference = scaled(b.loan.rate) - scaled(a.loan.rate);
      return difference > 0n ? 1 : difference < 0n ? -1 : a.index - b.index;
    });
    for (const { loan } of highest) give(loan, least(left, dueOn(loan)), 0n);
    if (!this.prorata) for (const { loan } of highest) give(loan, 0n, least(left, loan.principal));
    else if (rest.length > 0) {
      const principals = rest.map((loan) => Number(loan.principal));
      const whole = principals.reduce((a, b) => a + b, 0);
      const parts = deal(Math.min(Number(left), whole), principals);
      rest.forEach((loan, index) => {
        give(loan, 0n, least(BigInt(parts[index]!), loan.principal));
      });
    }
    return null;
  }

  line(loan: ModelLoan): LoanLine {
    const cents = (amount: bigint): string => text(Number(amount));
    return {
      name: loan.name,
      rate: loan.rate,
      principal: cents(loan.principal),
      accruedInterest: cents(dueOn(loan)),
      balance: cents(loan.principal + dueOn(loan)),
      paid: cents(loan.paid),
      interestPaid: cents(loan.interestPaid),
    };
  }
}

type Sums = Record<
  | "flipped"
  | "proceeds"
  | "costOfSold"
  | "fees"
  | "overhead"
  | "writtenOff"
  | "otherIncome"
  | "paid"
  | "in"
  | "out",
  number
>;

/** What fact number `at` adds to the totals of its month. */
function addedTo(sums: Sums, reader: PieceReader, at: number): void {
  const fact = reader.facts[at]!;
  const amount = fact.amount ?? 0;
  const costs = fact.pieces.reduce((sum, piece) => sum + reader.cost(at, piece), 0);
  const held = fact.pieces.reduce((sum, piece) => sum + reader.deposit(at, piece), 0);
  if (fact.kind === "buy") sums.out += amount;
  if (fact.kind === "spend") addSpending(sums, reader, fact, at);
  if (fact.kind === "hold") sums.in += amount;
  if (fact.kind === "fallthrough") {
    const back = fact.data.kept ? held - amount : amount;
    sums.out += back;
    sums.proceeds += held - back;
  }
  if (fact.kind === "sell") {
    const how = fact.data.deposit ?? "applied";
    const today = (how === "applied" ? amount - held : amount) - (fact.data.owed ?? 0);
    sums.flipped += fact.pieces.length;
    sums.proceeds += amount + (how === "kept" ? held : 0);
    sums.costOfSold += costs;
    sums.fees += fact.data.fee ?? 0;
    sums.in += Math.max(today, 0);
    sums.out += Math.max(-today, 0) + (how === "refunded" ? held : 0) + (fact.data.fee ?? 0);
  }
  if (fact.kind === "collect") sums.in += amount;
  if (fact.kind === "trade") {
    sums.flipped += fact.pieces.filter((piece) => gives(fact, piece)).length;
    sums.proceeds += amount;
    sums.costOfSold += costs;
    sums.in += fact.data.received ?? 0;
    sums.out += fact.data.paid ?? 0;
  }
  if (fact.kind === "refund") {
    for (const piece of fact.pieces) sums.proceeds -= reader.takenOff(at, piece);
    if (!fact.data.unpaid) sums.out += amount;
    if (fact.data.returned) {
      sums.flipped -= fact.pieces.length;
      sums.costOfSold -= costs;
    }
  }
  if (fact.kind === "retire" && fact.data.how !== "kept") sums.writtenOff += costs;
  if (fact.kind === "income") {
    sums.otherIncome += amount;
    sums.in += amount;
  }
  if (fact.kind === "pay") sums.paid += amount;
}

function addSpending(sums: Sums, reader: PieceReader, fact: FactOf<"spend">, at: number): void {
  sums.out += fact.amount!;
  if (fact.pieces.length === 0) sums.overhead += fact.amount!;
  for (const piece of fact.pieces) {
    const share = reader.even(fact, piece);
    const gone = reader.gone(at, piece);
    if (fact.data.category === "fees") sums.fees += share;
    else if (isSale(gone)) sums.costOfSold += share;
    else if (gone?.kind === "retire" && gone.data.how !== "kept") sums.writtenOff += share;
  }
}

function monthLine(reader: PieceReader, month: string, through: string): { line: MonthLine; ready: number } {
  const sums: Sums = {
    flipped: 0,
    proceeds: 0,
    costOfSold: 0,
    fees: 0,
    overhead: 0,
    writtenOff: 0,
    otherIncome: 0,
    paid: 0,
    in: 0,
    out: 0,
  };
  reader.facts.forEach((fact, at) => {
    if (fact.day.startsWith(month)) addedTo(sums, reader, at);
  });
  const flip = sums.proceeds - sums.costOfSold - sums.fees - sums.overhead - sums.writtenOff;
  const rates = reader.facts.filter((fact) => fact.kind === "taxrate" && fact.day <= through);
  const rate = rates.filter((fact) => fact.day.slice(0, 7) <= month).at(-1) as FactOf<"taxrate"> | undefined;
  const income = flip + sums.otherIncome;
  const percent = scaled(rate?.data.percent ?? "0");
  const tax = income <= 0 ? 0 : Number(roundedQuotient(BigInt(income) * percent, 100n * ONE));
  const line: MonthLine = {
    month,
    flipped: sums.flipped,
    proceeds: text(sums.proceeds),
    costOfSold: text(sums.costOfSold),
    fees: text(sums.fees),
    overhead: text(sums.overhead),
    writtenOff: text(sums.writtenOff),
    flipProfit: text(flip),
    otherIncome: text(sums.otherIncome),
    taxSetAside: text(tax),
    forLoan: text(income - tax),
    paidToLoan: text(sums.paid),
    cashIn: text(sums.in),
    cashOut: text(sums.out),
  };
  return { line, ready: income - tax - sums.paid };
}

/** The id of the first fact that cannot stand and why, or null. */
export function modelProblem(facts: readonly Fact[]): { fact: number; problem: Problem["kind"] } | null {
  const ordered = [...facts].sort(order);
  const reader = new PieceReader(ordered);
  const walk = new LoanWalk();
  for (const [at, fact] of ordered.entries()) {
    const problem = reader.problem(at) ?? walk.apply(fact) ?? repeatProblem(ordered, at);
    if (!problem) continue;
    const comesLater = problem === "no such piece" && buysAll(ordered, reader, at);
    return { fact: fact.id, problem: comesLater ? "not bought yet" : opensLater(ordered, fact, problem) };
  }
  return null;
}

/** A standing note is changed only where it was set up before. */
function repeatProblem(facts: Fact[], at: number): Problem["kind"] | null {
  const fact = facts[at]!;
  if (fact.kind !== "repeat" || "note" in fact.data) return null;
  const { of } = fact.data;
  const isSetUp = (each: Fact) => each.kind === "repeat" && each.place === of && "note" in each.data;
  return facts.slice(0, at).some(isSetUp) ? null : "no such repeat";
}

/** Whether the first missing piece of a fact is bought by a later one. */
function buysAll(facts: Fact[], reader: PieceReader, at: number): boolean {
  const missing = facts[at]!.pieces.find((piece) => !reader.exists(at, piece))!;
  return facts.some(
    (fact) =>
      (fact.kind === "buy" && fact.pieces.includes(missing)) ||
      (fact.pieces.includes(missing) && brings(fact, missing)),
  );
}

function opensLater(facts: Fact[], fact: Fact, problem: Problem["kind"]): Problem["kind"] {
  if (problem !== "no such loan" && problem !== "no loan") return problem;
  const name =
    fact.kind === "pay" || fact.kind === "terms" || fact.kind === "statement" ? fact.data.loan : undefined;
  const opens = facts.some((each) => each.kind === "loan" && (name === undefined || each.data.loan === name));
  return opens ? "loan not open yet" : problem;
}

/** What was agreed on for each piece that is held, as of a day. */
export function modelAgreed(facts: readonly Fact[], through: string): [number, number][] {
  const ordered = facts.filter((fact) => fact.day <= through).sort(order);
  const reader = new PieceReader(ordered);
  const pieces = [...new Set(ordered.flatMap((fact) => fact.pieces))].sort((a, b) => a - b);
  return pieces.flatMap((piece): [number, number][] => {
    const agreed = reader.agreed(ordered.length, piece);
    return agreed === null ? [] : [[piece, agreed]];
  });
}

/** The statement as of a day, from facts that can stand; facts after the day do not count. */
export function modelStatement(facts: readonly Fact[], through: string): Statement {
  const ordered = facts.filter((fact) => fact.day <= through).sort(order);
  const reader = new PieceReader(ordered);
  const end = ordered.length;
  const bought = ordered
    .flatMap((fact) =>
      fact.kind === "buy" ? fact.pieces : fact.pieces.filter((piece) => brings(fact, piece)),
    )
    .sort((a, b) => a - b);
  const walk = new LoanWalk();
  for (const fact of ordered) walk.apply(fact);
  walk.goTo(through);
  const months: MonthLine[] = [];
  let ready = 0;
  for (const fact of ordered) if (fact.kind === "sent") ready -= fact.amount!;
  const earliest = ordered.find((fact) => fact.kind !== "repeat");
  if (earliest) {
    let [year, month] = earliest.day.split("-").map(Number) as [number, number];
    for (let name = earliest.day.slice(0, 7); name <= through.slice(0, 7); ) {
      const row = monthLine(reader, name, through);
      months.push(row.line);
      ready += row.ready;
      [year, month] = month === 12 ? [year + 1, 1] : [year, month + 1];
      name = `${year}-${`${month}`.padStart(2, "0")}`;
    }
  }
  const total = (amount: (piece: number) => number): number =>
    bought.reduce((sum, piece) => sum + amount(piece), 0);
  return {
    currency: "USD",
    through,
    pieces: bought.map((piece) => reader.line(piece)),
    months,
    loans: walk.loans.map((loan) => walk.line(loan)),
    earmarked: text(ready - total((piece) => reader.owed(end, piece))),
    depositsHeld: text(total((piece) => reader.deposit(end, piece))),
    buyersOwe: text(total((piece) => reader.owed(end, piece))),
    unsoldCost: text(total((piece) => (reader.gone(end, piece) ? 0 : reader.cost(end, piece)))),
  };
}
