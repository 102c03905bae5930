import type { Fact } from "../../core/books/facts.ts";

/*
 * A second query engine, for tests alone: it works the raw facts out for itself and shares no code with the
 * project. A question's meaning is written as a line such as "profit k:dresser p:2026-08-01..2026-08-31 by:month".
 */

interface Piece {
  number: number;
  name: string;
  traits: string[];
  source?: string | undefined;
  bought: string;
  started?: string;
  finished?: string;
  listed?: string | undefined;
  since?: string | undefined;
  ask?: number | undefined;
  first?: number;
  place?: string | undefined;
  held?: string | undefined;
  holder?: string | undefined;
  sold?: string | undefined;
  gone?: string | undefined;
  goneOn?: string | undefined;
  method?: string | undefined;
  buyer?: string | undefined;
  lastSale: number;
  price: number;
  spent: number;
  fees: number;
  deposit: number;
  kept: number;
  sales: number;
  refunds: number;
  minutes: number;
}

/** Something that moved: its day, what it is worth, and all that a question may cut by. */
interface Move {
  day: string;
  units: number;
  piece?: Piece | undefined;
  what?: string;
  category?: string;
  stream?: string;
  loan?: string;
  method?: string | undefined;
  buy?: boolean;
  /** Whose money it is. */
  payer?: string | undefined;
}

export interface Wanted {
  value?: string | null;
  rows?: [label: string, value: string | null][];
  ordered?: boolean;
  numbers?: number[];
}

type World = Record<
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
  | "returned"
  | "lists"
  | "cuts"
  | "received",
  Move[]
> & { pieces: Map<number, Piece> };

/** Whole units by weight; what is left over goes by the largest remainder, the earlier first. */
function share(total: number, weights: number[]): number[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  const even = sum === 0 ? weights.map(() => 1) : weights;
  const whole = even.reduce((a, b) => a + b, 0);
  const exact = even.map((weight) => BigInt(total) * BigInt(weight));
  const parts = exact.map((each) => Number(each / BigInt(whole)));
  let left = total - parts.reduce((a, b) => a + b, 0);
  const byRest = exact
    .map((each, index) => ({ rest: each % BigInt(whole), index }))
    .sort((a, b) => (a.rest === b.rest ? a.index - b.index : a.rest > b.rest ? -1 : 1));
  for (const { index } of byRest) {
    if (left <= 0) break;
    parts[index]! += 1;
    left -= 1;
  }
  return parts;
}

const ones = (count: number): number[] => Array.from({ length: count }, () => 1);
const days = (from: string, to: string): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000);

/** Works all facts through, in the order of their days. */
export function worldOf(facts: readonly Fact[]): World {
  const world: World = {
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
    returned: [],
    lists: [],
    cuts: [],
    received: [],
    pieces: new Map(),
  };
  const loans = new Map<string, { rate: number; principal: number; accrued: number; since: string }>();
  const ordered = [...facts].sort((a, b) => (a.day === b.day ? a.place - b.place : a.day < b.day ? -1 : 1));
  for (const fact of ordered) work(world, loans, fact);
  return world;
}

function accrue(
  loan: { rate: number; principal: number; accrued: number; since: string },
  day: string,
): void {
  loan.accrued += Math.floor((loan.principal * loan.rate * days(loan.since, day)) / 36_500 + 0.5 + 1e-9);
  loan.since = day;
}

type Loans = Map<string, { rate: number; principal: number; accrued: number; since: string }>;

function work(world: World, loans: Loans, fact: Fact): void {
  const { day } = fact;
  const amount = fact.amount ?? 0;
  const pieces = fact.pieces.map((number) => world.pieces.get(number)!);
  const net = (units: number, piece?: Piece): void => void world.net.push({ day, units, piece });
  switch (fact.kind) {
    case "buy": {
      const prices = share(amount, ones(fact.pieces.length));
      fact.pieces.forEach((number, index) => {
        const { name, traits } = fact.data.made[index]!;
        world.pieces.set(number, {
          number,
          name,
          traits,
          source: fact.data.source,
          bought: day,
          price: prices[index]!,
          lastSale: 0,
          spent: 0,
          fees: 0,
          deposit: 0,
          kept: 0,
          sales: 0,
          refunds: 0,
          minutes: 0,
          ...{ buyMethod: fact.data.method },
        } as Piece);
      });
      return;
    }
    case "spend": {
      const { what, category, method } = fact.data;
      if (pieces.length === 0) {
        world.spent.push({ day, units: amount, what, category, method });
        if (category === "fees") world.fees.push({ day, units: amount });
        net(-amount);
        return;
      }
      share(amount, ones(pieces.length)).forEach((units, index) => {
        const piece = pieces[index]!;
        world.spent.push({ day, units, piece, what, category, method });
        if (category === "fees") {
          piece.fees += units;
          world.fees.push({ day, units, piece });
          net(-units, piece);
        } else {
          piece.spent += units;
          if (piece.gone === "sold" || piece.gone === "given" || piece.gone === "scrapped")
            net(-units, piece);
        }
      });
      return;
    }
    case "work":
      share(fact.data.minutes, ones(Math.max(1, pieces.length))).forEach((units, index) => {
        if (pieces[index]) pieces[index]!.minutes += units;
        world.minutes.push({ day, units, piece: pieces[index] });
      });
      return;
    case "drive": {
      const miles = Number(fact.data.miles);
      if (pieces.length === 0) world.miles.push({ day, units: miles });
      for (const piece of pieces) world.miles.push({ day, units: miles / pieces.length, piece });
      return;
    }
    case "start":
      for (const piece of pieces) piece.started ??= day;
      return;
    case "finish":
      for (const piece of pieces) piece.finished = day;
      return;
    case "list":
      share(amount, ones(pieces.length)).forEach((units, index) => {
        const piece = pieces[index]!;
        piece.listed = day;
        piece.since ??= day;
        piece.ask = units;
        piece.first ??= units;
        piece.place = fact.data.place;
        world.lists.push({ day, units: 1, piece });
      });
      return;
    case "reprice":
      share(amount, ones(pieces.length)).forEach((units, index) => {
        const piece = pieces[index]!;
        const before = piece.ask!;
        piece.ask = fact.data.cut ? before - units : units;
        if (piece.ask < before) world.cuts.push({ day, units: before - piece.ask, piece });
      });
      return;
    case "hold":
      share(amount, ones(pieces.length)).forEach((units, index) => {
        const piece = pieces[index]!;
        piece.held = day;
        piece.holder = fact.data.buyer;
        piece.deposit += units;
        world.received.push({ day, units, piece, payer: piece.holder });
      });
      return;
    case "fallthrough":
      for (const piece of pieces) {
        const kept = fact.data.kept ? piece.deposit : 0;
        const keeps = fact.data.kept ? kept : piece.deposit - Math.min(piece.deposit, amount);
        piece.kept += keeps;
        world.received.push({ day, units: keeps - piece.deposit, piece, payer: piece.holder });
        if (keeps > 0) {
          world.proceeds.push({ day, units: keeps, piece });
          net(keeps, piece);
        }
        piece.deposit = 0;
        piece.held = undefined;
        piece.holder = undefined;
      }
      return;
    case "sell":
      sell(world, fact, pieces, net);
      return;
    case "refund":
      share(amount, ones(pieces.length)).forEach((units, index) => {
        const piece = pieces[index]!;
        piece.refunds += units;
        world.received.push({ day, units: -units, piece, payer: piece.buyer });
        world.proceeds.push({ day, units: -units, piece });
        net(-units, piece);
        if (!fact.data.returned) return;
        net(piece.price + piece.spent, piece);
        world.sold.push({ day, units: -1, piece });
        world.returned.push({ day, units: 1, piece });
        Object.assign(piece, {
          gone: undefined,
          goneOn: undefined,
          sold: undefined,
          listed: undefined,
          ask: undefined,
          since: undefined,
          buyer: undefined,
        });
        piece.finished ??= day;
      });
      return;
    case "retire":
      for (const piece of pieces) {
        piece.gone = fact.data.how;
        piece.goneOn = day;
        if (fact.data.how !== "kept") net(-(piece.price + piece.spent), piece);
      }
      return;
    case "income":
      world.income.push({ day, units: amount, stream: fact.data.stream, method: fact.data.method });
      return;
    case "loan":
      loans.set(fact.data.loan, { rate: Number(fact.data.rate), principal: amount, accrued: 0, since: day });
      return;
    case "statement": {
      const loan = loans.get(fact.data.loan)!;
      accrue(loan, day);
      loan.principal = amount - loan.accrued;
      return;
    }
    case "pay":
      pay(world, loans, fact);
  }
}

function sell(
  world: World,
  fact: Fact & { kind: "sell" },
  pieces: Piece[],
  net: (units: number, piece?: Piece) => void,
): void {
  const asked = pieces.map(({ ask }) => ask ?? 0);
  const weights = asked.every((ask) => ask > 0) ? asked : ones(pieces.length);
  const prices = share(fact.amount ?? 0, weights);
  const fees = share(fact.data.fee ?? 0, weights);
  pieces.forEach((piece, index) => {
    const price = prices[index]!;
    const fee = fees[index]!;
    const { holder } = piece;
    const payer = fact.data.buyer ?? holder;
    world.received.push({ day: fact.day, units: price - piece.deposit, piece, payer });
    world.proceeds.push({ day: fact.day, units: price, piece });
    net(price - fee - piece.price - piece.spent, piece);
    if (fee > 0) world.fees.push({ day: fact.day, units: fee, piece });
    Object.assign(piece, {
      sales: piece.sales + price,
      fees: piece.fees + fee,
      lastSale: price,
      deposit: 0,
      held: undefined,
      holder: undefined,
      sold: fact.day,
      gone: "sold",
      goneOn: fact.day,
      method: fact.data.method,
      buyer: fact.data.buyer ?? holder,
    });
    world.sold.push({ day: fact.day, units: 1, piece });
  });
}

function pay(world: World, loans: Loans, fact: Fact & { kind: "pay" }): void {
  const { day, data } = fact;
  let left = fact.amount ?? 0;
  const order = [...loans].sort(
    (a, b) => Number(b[0] === data.loan) - Number(a[0] === data.loan) || b[1].rate - a[1].rate,
  );
  const due = new Map(
    [...loans].map(([name, loan]) => {
      const at = { ...loan };
      accrue(at, day);
      return [name, at.accrued];
    }),
  );
  const gets = new Map<string, { interest: number; principal: number }>(
    [...loans.keys()].map((name) => [name, { interest: 0, principal: 0 }]),
  );
  const serve = (name: string, part: "interest" | "principal", most: number): void => {
    const units = Math.min(left, most);
    gets.get(name)![part] += units;
    left -= units;
  };
  if (data.loan) {
    serve(data.loan, "interest", due.get(data.loan)!);
    serve(data.loan, "principal", loans.get(data.loan)!.principal);
  }
  for (const [name] of order) if (name !== data.loan) serve(name, "interest", due.get(name)!);
  for (const [name, loan] of order) if (name !== data.loan) serve(name, "principal", loan.principal);
  for (const [name, { interest, principal }] of gets) {
    if (interest + principal === 0) continue;
    const loan = loans.get(name)!;
    accrue(loan, day);
    loan.accrued -= interest;
    loan.principal -= principal;
    world.paid.push({ day, units: interest + principal, loan: name });
    world.interest.push({ day, units: interest, loan: name });
  }
}

/* ---- queries ---- */

const MONEY = new Set([
  "cuts",
  "profit",
  "net",
  "netall",
  "proceeds",
  "price",
  "cost",
  "spent",
  "fees",
  "income",
  "paid",
  "interest",
  "tiedup",
  "asking",
  "deposits",
  "refunds",
  "hourly",
  "sale",
  "received",
]);

const money = (cents: number): string =>
  `${cents < 0 ? "-" : ""}${Math.floor(Math.abs(cents) / 100)}.${String(Math.abs(cents) % 100).padStart(2, "0")}`;
const half = (exact: number): number => Math.sign(exact) * Math.floor(Math.abs(exact) + 0.5 + 1e-9);

interface Spec {
  measure: string;
  counted?: string;
  cuts: { key: string; values: string[]; not: boolean }[];
  from: string;
  to: string;
  by?: string;
  best?: { of: string; least: boolean; top: number };
  /** The whole, or each row, is held against it: "is:over/5000". */
  is?: { key: string; bound: number };
  /** In percent, what these make of the whole: "share:s=curb". */
  share?: { key: string; value: string };
  agg?: string;
  sides?: string[];
}

function specOf(text: string): Spec {
  const spec: Spec = { measure: "", cuts: [], from: "0000", to: "9999" };
  const tokens = text.match(/"[^"]*"|\S+?:"[^"]*"|\S+/g) ?? [];
  for (const raw of tokens) {
    const token = raw.replaceAll('"', "");
    const [head = "", ...rest] = token.split(":");
    const value = rest.join(":");
    if (value === "") spec.measure = head;
    else if (head === "p")
      [spec.from = "0000", spec.to = "9999"] = value
        .split("..")
        .map((day, index) => day || (index ? "9999" : "0000"));
    else if (head === "by") spec.by = value;
    else if (head === "agg") spec.agg = value;
    else if (head === "is") {
      const [key = "", bound = "0"] = value.split("/");
      spec.is = { key, bound: Number(bound) };
    } else if (head === "share") {
      const [key = "", part = ""] = value.split("=");
      spec.share = { key, value: part };
    } else if (head === "count") Object.assign(spec, { measure: "count", counted: value });
    else if (head === "best" || head === "worst") {
      const [of = "", top = "0"] = value.split("/");
      spec.best = { of, least: head === "worst", top: Number(top) };
    } else
      spec.cuts.push({ key: head.replace("!", ""), values: value.split("|"), not: head.startsWith("!") });
  }
  return spec;
}

const kind = (name: string): string =>
  name
    .replace(/ of .*/, "")
    .split(" ")
    .at(-1)!;

function isCut(move: Move, key: string, value: string, measure: string): boolean {
  const { piece } = move;
  switch (key) {
    case "k":
      return piece !== undefined && (piece.name === value || kind(piece.name) === value);
    case "t":
      return (
        piece !== undefined &&
        (piece.traits.includes(value) || piece.name.split(" ").slice(0, -1).includes(value))
      );
    case "n":
      return piece?.number === Number(value);
    case "s":
      return piece?.source === value;
    case "b":
      if (measure === "received") return move.payer === value;
      return piece !== undefined && (piece.gone === "sold" ? piece.buyer : piece.holder) === value;
    case "m":
      return methodOf(move, measure) === value;
    case "pl":
      return piece?.place === value;
    case "w":
      return move.what !== undefined && (move.what === value || move.what.endsWith(` ${value}`));
    case "c":
      return move.category === value;
    case "st":
      return move.stream === value;
    case "known":
      return (piece?.gone === "sold" ? piece.buyer : piece?.holder) !== undefined;
    case "un":
      return piece !== undefined && labelOf(value, move, measure) === "unknown";
    case "bought":
    case "started":
    case "finished":
    case "listed": {
      const [from = "", to = ""] = value.split("..");
      const day = piece?.[key];
      return day !== undefined && day !== null && day >= from && (to === "" || day <= to);
    }
    case "free":
      return piece?.price === 0;
    case "wd":
      return value === "weekend" ? /^s/.test(weekday(move.day)) : weekday(move.day) === value;
    case "l":
      return move.loan === value;
    case "state":
      return piece !== undefined && (value === "unsold" ? !piece.gone : piece.gone === value);
    default:
      throw new Error(`no cut ${key}`);
  }
}

const WEEKDAYS = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];
const weekday = (day: string): string => WEEKDAYS[new Date(`${day}T12:00:00Z`).getUTCDay()]!;

function methodOf(move: Move, measure: string): string | undefined {
  if (measure === "price" || move.buy) return (move.piece as unknown as { buyMethod?: string })?.buyMethod;
  if (measure === "spent" || measure === "income") return move.method;
  return move.piece?.method;
}

const profit = (piece: Piece): number =>
  piece.sales +
  piece.kept -
  piece.refunds -
  (piece.gone === "kept" ? 0 : piece.price + piece.spent) -
  piece.fees;

/** What a measure is made of, with the day that decides. */
function movesOf(world: World, { measure, counted, agg, best }: Spec, today: string): Move[] {
  const all = [...world.pieces.values()];
  const of = (pick: (piece: Piece) => [string | undefined, number] | null): Move[] =>
    all.flatMap((piece) => {
      const found = pick(piece);
      return found?.[0] ? [{ day: found[0], units: found[1], piece }] : [];
    });
  const single = agg !== undefined || best?.of === "piece";
  const lapse = /^lapse-(\w+)-(\w+)$/.exec(measure);
  if (lapse) {
    const dayOf = (piece: Piece, end: string): string | undefined =>
      end === "listed" ? piece.since : (piece[end as "bought"] as string | undefined);
    return of((piece) => {
      const [from, to] = [dayOf(piece, lapse[1]!), dayOf(piece, lapse[2]!)];
      return from && to && to >= from ? [to, days(from, to)] : null;
    });
  }
  switch (measure) {
    case "profit":
      return of((piece) => [piece.goneOn, profit(piece)]);
    case "netall":
      return [...world.net, ...world.income];
    case "proceeds":
      return single ? of((piece) => [piece.sold, piece.lastSale]) : world.proceeds;
    case "sale":
      return of((piece) => [piece.sold, piece.lastSale]);
    case "price":
      return of((piece) => [piece.bought, piece.price]).map((move) => ({ ...move, buy: true }));
    case "cost":
      return of((piece) => [piece.bought, piece.price + piece.spent]);
    case "tiedup":
      return of((piece) => (piece.gone ? null : [piece.bought, piece.price + piece.spent]));
    case "asking":
      return of((piece) => (piece.gone || !piece.listed ? null : [piece.listed, piece.ask ?? 0]));
    case "dayshere":
      return of((piece) => (piece.gone ? null : [piece.bought, days(piece.bought, today)]));
    case "refunds":
      return world.proceeds.filter(({ units }) => units < 0).map((move) => ({ ...move, units: -move.units }));
    case "deposits":
      return of((piece) => (piece.deposit > 0 ? [piece.held, piece.deposit] : null));
    case "daystosell":
      return of((piece) => (piece.sold ? [piece.sold, days(piece.bought, piece.sold)] : null));
    case "dayslisted":
      return of((piece) =>
        piece.since && (piece.sold || piece.listed) && (!piece.gone || piece.sold)
          ? [piece.sold ?? today, days(piece.since, piece.sold ?? today)]
          : null,
      );
    case "margin":
    case "roi":
      return of((piece) => (piece.gone === "sold" ? [piece.goneOn, profit(piece)] : null));
    case "hourly":
      return of((piece) =>
        piece.gone === "sold" && piece.minutes > 0 ? [piece.goneOn, profit(piece)] : null,
      );
    case "reached":
      return of((piece) =>
        piece.sold && piece.first ? [piece.sold, (piece.lastSale * 100) / piece.first] : null,
      );
    case "count":
      return countOf(world, counted!, of);
    default:
      return world[measure as keyof Omit<World, "pieces">];
  }
}

function countOf(
  world: World,
  counted: string,
  of: (pick: (piece: Piece) => [string | undefined, number] | null) => Move[],
): Move[] {
  const state: Record<string, (piece: Piece) => boolean> = {
    unsold: (piece) => !piece.gone,
    held: (piece) => !piece.gone && piece.held !== undefined,
    unlisted: (piece) => !piece.gone && !piece.held && !piece.listed && piece.finished !== undefined,
    market: (piece) => !piece.gone && piece.listed !== undefined,
  };
  const holds = state[counted];
  if (holds) return of((piece) => (holds(piece) ? [piece.bought, 1] : null));
  switch (counted) {
    case "sold":
      return world.sold;
    case "returned":
      return world.returned;
    case "bought":
      return of((piece) => [piece.bought, 1]).map((move) => ({ ...move, buy: true }));
    case "gone":
      return of((piece) => [piece.goneOn, 1]);
    case "finished":
      return of((piece) => [piece.finished, 1]);
    case "started":
      return of((piece) => [piece.started, 1]);
    case "listed":
      return [...new Map(world.lists.map((move) => [move.piece!.number, move])).values()];
    default:
      return of((piece) => [piece.gone === counted ? piece.goneOn : undefined, 1]);
  }
}

const MEAN = new Set(["daystosell", "dayshere", "dayslisted", "reached"]);
const STOCK = new Set(["tiedup", "asking", "deposits", "dayshere", "unsold", "held", "unlisted", "market"]);

function figureOf(spec: Spec, moves: Move[]): string | null {
  const isMoney = MONEY.has(spec.measure);
  const show = (units: number): string =>
    isMoney
      ? money(half(units))
      : spec.measure === "miles"
        ? String(Math.round(units * 1e6) / 1e6)
        : String(half(units));
  const sum = moves.reduce((total, { units }) => total + units, 0);
  if (spec.measure === "hourly") {
    const minutes = moves.reduce((total, { piece }) => total + piece!.minutes, 0);
    return minutes === 0 ? null : show((sum * 60) / minutes);
  }
  if (spec.measure === "margin" || spec.measure === "roi") {
    const of = moves.reduce((total, { piece }) => total + partedBy(spec.measure, piece!), 0);
    return of > 0 ? show((sum * 100) / of) : null;
  }
  if (spec.agg === "median") return moves.length === 0 ? null : show(median(moves.map(({ units }) => units)));
  if (MEAN.has(spec.measure) || spec.measure.startsWith("lapse-") || spec.agg === "avg")
    return moves.length === 0 ? null : show(sum / moves.length);
  if (spec.measure === "comedown") return null;
  return show(sum);
}

/** What a profit is held against: what came in, or what it cost. */
const partedBy = (measure: string, piece: Piece): number =>
  measure === "margin" ? piece.sales + piece.kept - piece.refunds : piece.price + piece.spent;

function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = sorted.length / 2;
  return sorted.length % 2 ? sorted[Math.floor(at)]! : (sorted[at - 1]! + sorted[at]!) / 2;
}

/** Single pieces where the spec goes by the piece; an average of what was made is over sold ones. */
function singled(spec: Spec, moves: Move[]): Move[] {
  if (!spec.agg && spec.best?.of !== "piece" && spec.by !== "piece") return moves;
  const sold =
    spec.agg && spec.measure === "profit" ? moves.filter(({ piece }) => piece?.gone === "sold") : moves;
  if (sold.some(({ piece }) => !piece) && !sold.some(({ piece }) => piece)) return sold;
  const whole = new Map<number, Move>();
  for (const move of sold) {
    if (!move.piece) continue;
    const before = whole.get(move.piece.number);
    whole.set(move.piece.number, before ? { ...before, units: before.units + move.units } : { ...move });
  }
  return [...whole.values()];
}

function labelOf(by: string, move: Move, measure: string): string {
  const found: Record<string, string | undefined> = {
    day: move.day,
    weekday: weekday(move.day),
    month: move.day.slice(0, 7),
    year: move.day.slice(0, 4),
    kind: move.piece && kind(move.piece.name),
    source: move.piece?.source,
    buyer: move.piece && (move.piece.gone === "sold" ? move.piece.buyer : move.piece.holder),
    method: methodOf(move, measure),
    place: move.piece?.place,
    what: move.what,
    category: move.category,
    stream: move.stream,
    loan: move.loan,
    piece: move.piece && String(move.piece.number),
  };
  return found[by] ?? "unknown";
}

function selected(world: World, spec: Spec, today: string): Move[] {
  const isStock = STOCK.has(spec.counted ?? spec.measure);
  const moves = movesOf(world, spec, today).filter(
    ({ day }) => isStock || (day >= spec.from && day <= spec.to),
  );
  const isLimit = ({ key }: { key: string }) => /^(?:over|under|exactly)(?:@|$)/.test(key);
  const limits = spec.cuts.filter(isLimit);
  const cuts = spec.cuts.filter((each) => !isLimit(each));
  const cut = moves.filter((move) =>
    cuts.every(
      ({ key, values, not }) => values.some((value) => isCut(move, key, value, spec.measure)) !== not,
    ),
  );
  return singled(spec, cut).filter((move) =>
    limits.every(({ key, values }) => isWithin(spec, move, { key, bound: Number(values[0]), today })),
  );
}

function isWithin(
  spec: Spec,
  { units, piece }: Move,
  { key, bound, today }: { key: string; bound: number; today: string },
): boolean {
  const [side, of] = key.split("@");
  const held = of
    ? ofPiece(piece!, of, today)
    : spec.measure !== "count"
      ? units
      : spec.counted === "sold"
        ? piece!.lastSale
        : piece!.price;
  if (side === "exactly") return held === bound;
  return held !== null && (side === "over" ? held > bound : held < bound);
}

function ofPiece(piece: Piece, of: string, today: string): number | null {
  if (of === "profit") return piece.gone ? profit(piece) : null;
  if (of === "hourly")
    return piece.gone === "sold" && piece.minutes > 0 ? half((profit(piece) * 60) / piece.minutes) : null;
  if (of === "minutes") return piece.minutes;
  if (of === "price") return piece.price;
  if (of === "sale") return piece.gone === "sold" ? piece.lastSale : null;
  if (of === "cost") return piece.price + piece.spent;
  return piece.sold ? days(piece.bought, piece.sold) : piece.gone ? null : days(piece.bought, today);
}

/** What a line of meaning comes to on these facts, on a day. */
export function wantedOf(facts: readonly Fact[], meaning: string, today: string): Wanted {
  const world = worldOf(facts);
  if (meaning.startsWith("fact ")) return { value: factOf(world, meaning.slice(5)) };
  if (meaning.includes(" vs ")) return besideOf(world, meaning, today);
  const spec = specOf(meaning);
  const moves = selected(world, spec, today);
  if (spec.counted && /^list /.test(meaning)) return {};
  if (spec.share) {
    const { share, ...whole } = spec;
    const part = { ...whole, cuts: [...whole.cuts, { key: share.key, values: [share.value], not: false }] };
    const sum = (all: Move[]): number => all.reduce((total, { units }) => total + units, 0);
    return { value: String(half((sum(selected(world, part, today)) * 100) / sum(moves))) };
  }
  const by = spec.best?.of ?? spec.by;
  if (spec.is && !by) {
    const sum = moves.reduce((total, { units }) => total + units, 0);
    return { value: (spec.is.key === "over" ? sum > spec.is.bound : sum < spec.is.bound) ? "yes" : "no" };
  }
  const ofOne = spec.cuts.some(({ key, not }) => key === "n" && !not);
  if (ofOne && spec.measure === "profit" && moves.length === 0) return { value: null };
  if (!by) return { value: figureOf(spec, moves) };
  const parts = new Map<string, Move[]>();
  for (const move of moves) {
    const label = labelOf(by, move, spec.measure);
    parts.set(label, [...(parts.get(label) ?? []), move]);
  }
  const rows = [...parts].map(([label, part]): [string, string | null] => [label, figureOf(spec, part)]);
  const sign = spec.best?.least ? -1 : 1;
  if (by === "month" || by === "year") rows.sort((a, b) => (a[0] < b[0] ? -1 : 1));
  if (spec.best || !(by === "month" || by === "year"))
    rows.sort((a, b) => sign * (Number(b[1]) - Number(a[1])));
  if (!spec.best) return { value: figureOf(spec, moves), rows, ordered: true };
  return {
    rows: spec.best.top ? rows.slice(0, spec.best.top) : rows,
    value: rows[0]?.[1] ?? null,
    ordered: false,
  };
}

function besideOf(world: World, meaning: string, today: string): Wanted {
  const [first = "", second = "", shared = ""] = meaning.split(/ vs | with /);
  const values = [first, second].map((side) => {
    const spec = specOf(`${shared} ${side}`);
    return {
      label: side,
      value: figureOf(spec, selected(world, spec, today)),
      isMoney: MONEY.has(spec.measure),
    };
  });
  const [a, b] = values as [(typeof values)[number], (typeof values)[number]];
  if (a.value === null || b.value === null) return { value: null };
  const difference = Number(a.value) - Number(b.value);
  return {
    value: a.isMoney ? money(Math.round(difference * 100)) : String(Math.round(difference * 1e6) / 1e6),
  };
}

function factOf(world: World, meaning: string): string | null {
  const [what = "", number = ""] = meaning.split(" ");
  const piece = world.pieces.get(Number(number));
  if (!piece) return null;
  const found: Record<string, string | null | undefined> = {
    bought: piece.bought,
    sold: piece.sold,
    listed: piece.listed,
    finished: piece.finished,
    started: piece.started,
    source: piece.source,
    buyer: piece.gone === "sold" ? piece.buyer : piece.holder,
    place: piece.place,
    method: piece.method,
    had: String(days(piece.bought, piece.goneOn ?? "2026-10-15")),
    "sold?": piece.gone === "sold" ? "yes" : "no",
    "listed?": piece.listed && !piece.gone ? "yes" : "no",
    "held?": piece.held ? "yes" : "no",
    "finished?": piece.finished ? "yes" : "no",
    "here?": piece.gone ? "no" : "yes",
    "gone?": piece.gone ? "yes" : "no",
  };
  return found[what] ?? null;
}
