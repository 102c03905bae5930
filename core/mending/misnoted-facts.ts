import type { Piece } from "../books/books.ts";
import type { Fact } from "../books/facts.ts";
import type { Looking } from "../decide/decision.ts";
import type { Cents } from "../money.ts";
import { HOURS_MAX, inMeasure, nameOf } from "../notes/mends/mended.ts";
import type { Misnoted } from "../notes/misnoted/misnoted-said.ts";
import type { Mention, Reading } from "../notes/reading.ts";
import { bears } from "../notes/verbs.ts";
import { canMend, type MendTo } from "./fields.ts";
import { isMeant, isOfWhat, likeliest, newestFirst, ofItsOwn } from "./meant.ts";
import type { Past } from "./past.ts";

/* Which note on the books a message corrects, and what becomes of it. */

/** The desk as it is while a note is looked for. */

/** The same, where there are notes to look back at. */
export type LookingBack = Looking & { past: Past };

/** A note that a message may be about, and what becomes of it; without that, it goes. */
export interface Found {
  fact: Fact;
  to?: MendTo;
}

/** The notes that a message may be about, the newest first, with what becomes of each. */
export function correctedBy(said: Misnoted, desk: Looking, past: Past, isWhole: boolean): Found[] {
  const { books } = desk;
  const touched = past.touched();
  const isAnyNamed = isNamed(said);
  const isInPool = (fact: Fact): boolean =>
    (past.replied === null || fact.root === past.replied) &&
    (isAnyNamed || (fact.root === touched && past.isToday(fact)));
  const becomes = (fact: Fact): MendTo | null => {
    const to = becoming(fact, said, desk, isWhole);
    return to && canMend(fact.kind, to) && !isSo(fact, to) ? to : null;
  };
  const fitting = newestFirst(books, (fact) => isInPool(fact) && becomes(fact) !== null);
  const found = fitting.map((fact): Found => ({ fact, to: becomes(fact)! }));
  if (found.length < 2) return found;
  // "not the dresser, the desk": the note that was just made, whatever else is noted of the dresser.
  const latest = found.filter(({ fact }) => fact.root === touched && past.isToday(fact));
  if (said.old.pieces.length > 0 && !hasValue(said.now) && latest.length > 0) return latest;
  const exact =
    said.old.amount === undefined ? found : found.filter(({ fact }) => fact.amount === said.old.amount);
  const own = ofItsOwn(
    exact.map(({ fact }) => fact),
    ofNothing(said),
    said.now.amount,
    past,
  );
  // "make that 3 on the wardrobe" behind hours on it: so many, as likely as its price.
  const isMeasure = ({ kind, root }: Fact): boolean =>
    root === touched && (kind === "work" || kind === "drive") && (said.now.amount ?? HOURS_MAX) < HOURS_MAX;
  const isOwn = ({ fact, to }: Found): boolean =>
    (own.includes(fact) || isMeasure(fact)) && !(to!.pieces && exact.some((one) => !one.to!.pieces));
  const kept = withMethod(exact.filter(isOwn));
  const likely = likeliest(
    kept.map(({ fact }) => fact),
    said.now.amount,
    past,
  );
  if (said.now.pieces.length > 0) return kept.filter(({ fact }) => likely.includes(fact));
  const last = kept.filter(({ fact }) => fact.root === touched);
  return last.length === 1 ? last : kept;
}

/** "the bench was paid by card": the note that says how it was paid, where one of them does. */
function withMethod(found: Found[]): Found[] {
  const said = found.filter(({ fact, to }) => to!.method !== undefined && "method" in fact.data);
  return said.length > 0 ? said : found;
}

const ofNothing = ({ kinds, what, old }: Misnoted) => ({
  ...(kinds[0] ? { kind: kinds[0] } : {}),
  ...(what === undefined ? {} : { what }),
  ...(old.amount === undefined ? {} : { amount: old.amount }),
});

/** Something by which a note is known. */
function isNamed({ kinds, what, now, old, isThen, isOurs }: Misnoted): boolean {
  const isOfPiece = now.pieces.length > 0 && hasValue(now);
  const hasOld = [old.amount, old.minutes, old.miles, old.date, old.method, old.who].some(
    (each) => each !== undefined,
  );
  return (
    kinds.length > 0 ||
    what !== undefined ||
    now.who !== undefined ||
    isOfPiece ||
    hasOld ||
    old.pieces.length > 0 ||
    old.traits.length > 0 ||
    old.how !== undefined ||
    old.place !== undefined ||
    (isThen && isOurs)
  );
}

/** Its kind or its thing is told, or it is pointed at. */
const isNamedBut = ({ kinds, what, points }: Misnoted): boolean =>
  kinds.length > 0 || what !== undefined || points;

/** A value other than a name or a piece. */
export const hasValue = ({ amount, minutes, miles, date, method, place, how }: Misnoted["now"]): boolean =>
  [amount, minutes, miles, date, method, place, how].some((each) => each !== undefined);

/** What becomes of a fact by what is told; null where it is of another one, or nothing is. */
function becoming(fact: Fact, said: Misnoted, desk: Looking, isWhole: boolean): MendTo | null {
  const { now, old } = said;
  if (!isOfKind(fact, said) || !isOfThing(fact, said) || !hasOld(fact, said)) return null;
  const { buyer } = fact.data as { buyer?: string };
  const { loan } = fact.data as { loan?: string };
  if (said.loan !== undefined && loan !== undefined && loan !== said.loan) return null;
  const isOther = old.who !== undefined;
  if (isOther ? buyer !== old.who : now.who !== undefined && buyer !== now.who && hasValue(now)) return null;
  const of = (mention: Mention) =>
    fact.pieces.some((number) => isMeant(mention, desk.books.pieces.get(number)!));
  if (old.pieces.length > 0 && !old.pieces.every(of)) return null;
  if (said.isOfShop) return fact.kind === "spend" && fact.pieces.length > 0 ? { pieces: [] } : null;
  const to = valuesOf(fact, said);
  const isOfPieces = now.pieces.every(of);
  const isSame = to !== null && isSo(fact, to);
  const person = now.who ?? now.name;
  // "sold the desk to mara not nell, 120": what else is told is what it is known by.
  if (isOther && person !== undefined && isOfPieces && (to === null || isSo(fact, to)))
    return { buyer: person };
  if (to && !isSame) return isOfPieces && Object.keys(to).length === 1 ? to : null;
  // "its the desk thats listed for 140": what is told of another piece.
  if (hasValue(now) && !isSame) return null;
  if (now.traits.length > 0 && isOfPieces) {
    const other = otherByTraits(fact, said, desk);
    if (other !== null || fact.kind === "buy")
      return fact.kind === "buy" ? (other ? null : traitsOf(fact, said)) : { pieces: [other!] };
  }
  if (now.pieces.length > 0)
    return isOfPieces && old.pieces.length === 0 && !isCounted(now.pieces)
      ? null
      : ofPieces(fact, said, desk, isWhole);
  if (
    person !== undefined &&
    (said.isWho || (now.who !== undefined && buyer !== now.who) || buyer !== undefined)
  )
    return person === buyer ? null : { buyer: person };
  return null;
}

/** "that hour was on the lamp, rewiring": of a time that nobody said what was done in, too. */
const isOfThing = (fact: Fact, { what, labor }: Misnoted): boolean =>
  isOfWhat(fact, what) || (labor !== undefined && fact.kind === "work" && fact.data.what === undefined);

const isIncome = ({ kind }: Fact): boolean => kind === "sell" || kind === "hold" || kind === "collect";

function isOfKind(fact: Fact, { kinds, isThen, isOurs, isTheirs, isWho, now, old, what }: Misnoted): boolean {
  if (isThen) return fact.kind === "buy";
  // "nell bought it, not dana": to whom it went.
  if (old.who !== undefined || isWho) return "buyer" in fact.data;
  if (kinds.length > 0) return kinds.some((kind) => kind === fact.kind);
  const isPaid = now.amount !== undefined;
  // "he paid the rug by transfer": what came in.
  if (now.method !== undefined && isTheirs && !isPaid) return isIncome(fact);
  // "paid dana 5 for the wrong lamp": what we paid is no price that came in.
  if (isPaid && isOurs && !isTheirs && isIncome(fact)) return false;
  if (isPaid && isOurs && !isTheirs && now.who === undefined && what === undefined && now.pieces.length > 0)
    return fact.kind === "buy";
  if (isPaid && what === undefined && (isTheirs || now.who !== undefined))
    return isIncome(fact) || (isTheirs && fact.kind === "buy");
  return true;
}

/** It has the values that it is said to have had. */
export function hasOld(fact: Fact, { old, now, isOwed }: Misnoted): boolean {
  const { minutes, miles, method } = fact.data as { minutes?: number; miles?: string; method?: string };
  const { source, how, owed } = fact.data as { source?: string; how?: string; owed?: Cents };
  if (old.place !== undefined && source !== old.place) return false;
  if (old.how !== undefined && how !== old.how) return false;
  if (isOwed) return owed !== undefined && (old.amount === undefined || owed === old.amount);
  if (old.amount !== undefined) {
    const cents = old.amount;
    const isMeasure =
      (miles !== undefined && Number(miles) * 100 === cents) ||
      (minutes !== undefined && (minutes * 100 === cents || (minutes / 60) * 100 === cents)) ||
      (isCounted(now.pieces) && fact.pieces.length * 100 === cents);
    if (fact.amount !== cents && !isMeasure) return false;
  }
  if (old.minutes !== undefined && minutes !== old.minutes) return false;
  if (old.miles !== undefined && miles !== old.miles) return false;
  if (old.method !== undefined && method !== old.method) return false;
  return old.date === undefined || now.date === undefined || fact.day === old.date;
}

/** "2 stools", where there were more or fewer. */
const isCounted = ([piece, ...others]: readonly Mention[]): boolean =>
  piece?.count !== undefined && piece.name !== undefined && others.length === 0;

/** The values that it should have, in the measure of its kind; null where none are told. */
function valuesOf(fact: Fact, { now, isOwed }: Misnoted): MendTo | null {
  const { amount, minutes, miles, date, method, place, how } = now;
  if (isOwed) return amount === undefined ? null : { owed: amount };
  const to: MendTo = {
    ...(amount === undefined ? {} : { amount }),
    ...(minutes === undefined ? {} : { minutes }),
    ...(miles === undefined ? {} : { miles }),
    ...(date === undefined ? {} : { date }),
    ...(method === undefined ? {} : { method }),
    ...(place === undefined ? {} : { source: place }),
    ...(how === undefined ? {} : { how }),
  };
  if (Object.keys(to).length === 0) return null;
  if (fact.kind === "drive" || fact.kind === "work") inMeasure({ of: { kind: fact.kind }, to });
  return to;
}

/** That is what stands there already. */
function isSo(fact: Fact, to: MendTo): boolean {
  const data = fact.data as Record<string, unknown>;
  return Object.entries(to).every(([field, value]) =>
    field === "amount"
      ? fact.amount === value
      : field === "date"
        ? fact.day === value
        : field === "pieces"
          ? false
          : data[field] === value,
  );
}

/** The pieces that a note is of, or what its piece is called. */
function ofPieces(fact: Fact, said: Misnoted, desk: Looking, isWhole: boolean): MendTo | null {
  const { now, old } = said;
  const isOnBooks = now.pieces.every((mention) =>
    [...desk.books.pieces.values()].some((piece) => isMeant(mention, piece)),
  );
  if (fact.kind === "buy") {
    const [piece, ...others] = now.pieces;
    const [first] = fact.data.made;
    const isRecount =
      isCounted(now.pieces) &&
      (old.amount === fact.pieces.length * 100 || old.pieces[0]?.count === fact.pieces.length) &&
      fact.data.made.every(({ name }) => name === first?.name) &&
      first!.name === piece!.name;
    if (isRecount) return { pieces: [{ ...first!, count: piece!.count! }] };
    return piece &&
      others.length === 0 &&
      (said.isName || old.pieces.length > 0 || said.sense === "sure") &&
      !isOnBooks
      ? nameOf(piece)
      : null;
  }
  if (!isOnBooks || said.isName || now.pieces.some(({ plural }) => plural)) return null;
  // "wait, bench was sold to dana" of a bench that is sold: of no other sale.
  const isGone = ({ gone }: Piece): boolean => gone !== null;
  const meant = [...desk.books.pieces.values()].filter((piece) =>
    now.pieces.some((mention) => isMeant(mention, piece)),
  );
  if (fact.kind === "sell" && meant.every(isGone)) return null;
  // "desk and dresser mixed up": which of them, of a note that nothing else names?
  if (!isNamedBut(said) && now.pieces.length > 1 && old.pieces.length === 0) return null;
  // "the paint went on the dresser" alone is no correction.
  const isMoved =
    old.pieces.length > 0 || said.points || said.sense === "sure" || (said.sense === "likely" && !isWhole);
  return isMoved && (bears(fact.kind as Reading["kind"], "piece or none") || fact.pieces.length > 0)
    ? { pieces: now.pieces }
    : null;
}

/** "not the oval, the round": the other piece of that name that is so; null where there is none. */
function otherByTraits(
  { pieces: [only, ...others] }: Fact,
  { now, old }: Misnoted,
  { books }: Looking,
): Mention | null {
  const piece = books.pieces.get(only ?? 0);
  if (!piece || others.length > 0 || !old.traits.every((trait) => piece.traits.includes(trait))) return null;
  const mention = { name: piece.name, traits: now.traits };
  const so = [...books.pieces.values()].filter(
    (each) => each !== piece && each.name === piece.name && isMeant(mention, each),
  );
  return so.length > 0 ? mention : null;
}

function traitsOf(fact: Extract<Fact, { kind: "buy" }>, { now, old }: Misnoted): MendTo | null {
  const [made, ...others] = fact.data.made;
  if (!made || others.length > 0) return null;
  if (!old.traits.every((trait) => made.traits.includes(trait))) return null;
  return { traits: [...now.traits, ...made.traits.filter((trait) => !old.traits.includes(trait))] };
}
