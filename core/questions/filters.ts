import type { Piece } from "../books/books.ts";
import type { Fact } from "../books/facts.ts";
import { statusOf } from "../books/piece.ts";
import { type Day, weekdayOf } from "../calendar.ts";
import type { Desk, Subject } from "./desk.ts";
import { kindOf, singularOf } from "./lexicon.ts";
import { measures } from "./measures.ts";
import type { Limit } from "./phrases.ts";
import type { Dimension, Filter, MeasureName } from "./query.ts";
import { UNKNOWN } from "./words/plain.ts";
import { SORTS_OF_SUPPLIES } from "./words/sorts.ts";

/** Whether a piece is of a kind as said: "chair" takes in dining chairs, "dining chair" only those. */
export function isOfKind({ name, traits }: Readonly<Piece>, said: string): boolean {
  if (name === said || kindOf(name) === said) return true;
  if (!said.includes(" ") || said.includes(" of ")) return false;
  const [head, ...before] = said.split(" ").reverse() as [string, ...string[]];
  const described = new Set([...name.split(" ").slice(0, -1), ...traits]);
  return kindOf(name) === head && before.every((word) => described.has(word));
}

/** Whether what was recorded is, or goes by, what was said: "uncle" finds "uncle in town". */
export function namesSame(recorded: string | null | undefined, said: string): boolean {
  if (!recorded) return said === UNKNOWN;
  const a = plainName(recorded);
  const b = plainName(said);
  return a === b || ` ${a} `.includes(` ${b} `);
}

function plainName(name: string): string {
  return name
    .toLowerCase()
    .split(/[\s-]+/)
    .map((word) => singularOf(word))
    .join(" ");
}

/** Whether something bought is what was said: its last word tells ("chalk paint" is paint). */
function isWhat(recorded: string, said: string): boolean {
  const a = plainName(recorded);
  const b = plainName(said);
  // "The booth" costs a booth fee.
  const isCharge = (one: string, other: string): boolean =>
    one.startsWith(`${other} `) && CHARGES.test(one.slice(other.length + 1));
  return (
    isCharge(a, b) ||
    isCharge(b, a) ||
    (SORTS_OF_SUPPLIES[b]?.has(a.slice(a.lastIndexOf(" ") + 1)) ?? false) ||
    a === b ||
    a.endsWith(` ${b}`) ||
    a.replaceAll(" ", "") === b.replaceAll(" ", "")
  );
}
const CHARGES = /^(?:fee|rent|rental|cost|bill|charge|money)$/;

/** The sale that something about a piece belongs to: its own, the one it goes back on, else the piece's last; or none. */
function saleOf(desk: Desk, { piece, fact }: Pick<Subject, "piece" | "fact">): Fact | null {
  if (fact?.kind === "sell") return fact;
  if (piece === null) return null;
  if (fact?.kind === "refund") return desk.index.undone.get(`${fact.id} ${piece.number}`) ?? null;
  return piece.gone === "sold" ? desk.index.of(piece.number).sell : null;
}

/** Who bought a piece: its sale's buyer, else its hold's; null where nobody is named. */
export function buyerOf(desk: Desk, subject: Pick<Subject, "piece" | "fact" | "payer">): string | null {
  if (subject.payer !== undefined) return subject.payer;
  const sale = saleOf(desk, subject);
  if (!sale) return subject.piece?.hold?.buyer ?? null;
  const named = sale.kind === "sell" ? sale.data.buyer : undefined;
  return named ?? desk.index.heldFor.get(`${sale.id} ${subject.piece?.number}`) ?? null;
}

/** Where a piece was last listed; null where no place was said. */
export function placeOf(desk: Desk, piece: Readonly<Piece>): string | null {
  const { list } = desk.index.of(piece.number);
  return list?.kind === "list" ? (list.data.place ?? null) : null;
}

export function methodOf(desk: Desk, measure: MeasureName, subject: Subject): string | null {
  const { fact } = subject;
  const isOfSale = measures[measure].bySale || (measure === "count" && fact?.kind !== "buy");
  const noted = isOfSale || fact?.kind === "sell" ? saleOf(desk, subject) : fact;
  return (noted?.data as { method?: string } | undefined)?.method ?? null;
}

/** Whom a fact is put down to: the person of the household it names, else the member who noted it. */
export function personOf(desk: Desk, fact: Fact | null): string | null {
  if (!fact) return null;
  return fact.by ?? desk.people.find(({ id }) => id === fact.author)?.name ?? null;
}

/** The states of a piece that a question may ask for. */
export function hasStatus({ index }: Pick<Desk, "index">, piece: Readonly<Piece>, status: string): boolean {
  switch (status) {
    case "unsold":
      return !piece.gone;
    case "gone":
      return piece.gone !== null;
    case "sold":
    case "kept":
    case "given":
    case "scrapped":
      return piece.gone === status;
    case "held":
      return !piece.gone && piece.hold !== null;
    case "listed":
      return !piece.gone && piece.listed !== null;
    case "unlisted":
      return statusOf(piece) === "finished";
    case "unstarted":
      return statusOf(piece) === "bought";
    case "not listed":
      return !piece.gone && piece.listed === null;
    case "bought together":
      return piece.lot !== null;
    case "unfinished":
      return !piece.gone && piece.finished === null;
    case "finished":
      return piece.finished !== null;
    case "started":
      return !piece.gone && piece.started !== null && piece.finished === null;
    case "returned":
      return index.of(piece.number).returned !== null;
    default:
      return piece.price === 0;
  }
}

type Holds = (subject: Subject, value: string, desk: Desk, measure: MeasureName) => boolean;

const spendOf = ({ fact }: Subject) => (fact?.kind === "spend" ? fact.data : null);

/** What was bought or lent. */
const whatOf = ({ fact }: Subject) =>
  fact?.kind === "spend" || fact?.kind === "lent" ? fact.data.what : undefined;

/** Whether a day lies between the two of `value`, which may be open: "2026-06-01..". */
function isWithinDays(day: string | null | undefined, value: string): boolean {
  const [from = "", to = ""] = value.split("..");
  return Boolean(day) && day! >= from && (to === "" || day! <= to);
}

/** What a piece may be without, as an answer names it, and the word that the ways of asking put for it. */
export const LACKS: Readonly<Record<string, { said: string; lacks: (piece: Readonly<Piece>) => boolean }>> = {
  "no hours": { said: "untimed", lacks: ({ minutes }) => minutes === 0 },
  "no fee": { said: "feeless", lacks: ({ fees }) => fees === 0 },
  "nothing spent": { said: "spentless", lacks: ({ materials }) => materials === 0 },
  "no list price": { said: "unpriced", lacks: ({ listPrice }) => listPrice === null },
};

/** One entry for each thing that can narrow a question. */
export const filters: Readonly<Record<Exclude<Dimension, Limit>, Holds>> = {
  piece: ({ piece }, value) => piece?.number === Number(value),
  kind: ({ piece }, value) => piece !== null && isOfKind(piece, value),
  trait: ({ piece }, value) =>
    piece !== null &&
    (LACKS[value]?.lacks(piece) ||
      piece.traits.includes(value) ||
      piece.name.split(" ").slice(0, -1).includes(value)),
  lot: ({ piece }, value) => piece?.lot === Number(value),
  source: ({ piece }, value) => piece !== null && namesSame(piece.source, value),
  buyer: (subject, value, desk) => subject.piece !== null && namesSame(buyerOf(desk, subject), value),
  method: (subject, value, desk, measure) => (methodOf(desk, measure, subject) ?? UNKNOWN) === value,
  place: ({ piece }, value, desk) => piece !== null && namesSame(placeOf(desk, piece), value),
  person: ({ fact }, value, desk) => isOf(fact, value, desk),
  // A sort of spending may stand among things bought: "tools and gas".
  what: (subject, value) => isWhat(whatOf(subject) ?? "", value) || spendOf(subject)?.category === value,
  category: (subject, value) => spendOf(subject)?.category === value,
  stream: ({ fact }, value) => fact?.kind === "income" && namesSame(fact.data.stream, value),
  loan: ({ loan }, value) => loan === value,
  shop: ({ piece }) => piece === null,
  "bought on": ({ piece }, value) => isWithinDays(piece?.bought, value),
  "bought by": ({ piece }, value, desk) =>
    piece !== null && isOf(desk.index.of(piece.number).buy, value, desk),
  "sold on": ({ piece }, value) => isWithinDays(piece?.sold, value),
  "finished on": ({ piece }, value) => isWithinDays(piece?.finished, value),
  "started on": ({ piece }, value) => isWithinDays(piece?.started, value),
  "listed on": ({ piece }, value, desk) =>
    piece !== null &&
    desk.index
      .of(piece.number)
      .prices.some(({ day, fact }) => fact.kind === "list" && isWithinDays(day, value)),
  weekday: ({ day }, value) => isOnWeekday(day, value),
  status: ({ piece }, value, desk) => piece !== null && hasStatus(desk, piece, value),
};

const WEEKDAY_NAMES = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"] as const;

/** The name of a day's weekday: "saturday". */
export function dayName(day: Day): string {
  return WEEKDAY_NAMES[weekdayOf(day)]!;
}

/** Whether a day is of a name, or of the weekend or the working week. */
function isOnWeekday(day: Day, said: string): boolean {
  const isWeekend = weekdayOf(day) === 0 || weekdayOf(day) === 6;
  if (said === "weekend") return isWeekend;
  return said === "workday" ? !isWeekend : dayName(day) === said;
}

/** Put down to a person: by name, or whoever asks by number ("#1"). */
function isOf(fact: Fact | null, value: string, desk: Desk): boolean {
  return value.startsWith("#") ? isBy(fact, Number(value.slice(1))) : namesSame(personOf(desk, fact), value);
}

/** Noted by a member, and put down to nobody else. */
function isBy(fact: Fact | null, member: number): boolean {
  return fact !== null && fact.author === member && fact.by === undefined;
}

/** Filters that hold an amount against the measure. */
export function isLimit(dimension: Dimension): dimension is Limit {
  return Object.hasOwn(LIMITS, dimension);
}

const LIMITS: Readonly<Record<Limit, (units: number, bound: number) => boolean>> = {
  over: (units, bound) => units > bound,
  under: (units, bound) => units < bound,
  least: (units, bound) => units >= bound,
  most: (units, bound) => units <= bound,
  exactly: (units, bound) => units === bound,
};

/** Whether an amount is over, under, at least, at most or just another. */
export function isWithin(dimension: Dimension, units: number, bound: number): boolean {
  return isLimit(dimension) && LIMITS[dimension](units, bound);
}

/** Whether a subject passes every filter. An amount is held against `units`. */
export function passes(
  subject: Subject,
  all: readonly Filter[],
  { desk, measure, units }: { desk: Desk; measure: MeasureName; units: number | null },
): boolean {
  for (const { dimension, values, not } of all) {
    if (isLimit(dimension)) {
      if (units === null || !isWithin(dimension, units, Number(values[0]))) return false;
    } else {
      const holds = filters[dimension];
      if (values.some((value) => holds(subject, value, desk, measure)) === Boolean(not)) return false;
    }
  }
  return true;
}
