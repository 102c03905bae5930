import type { Fact } from "../books/facts.ts";
import type { Desk } from "../decide/decision.ts";
import { type Cents, show } from "../money.ts";
import { inMeasure, nameOf } from "../notes/mended.ts";
import { type Misnoted, misnotedIn } from "../notes/misnoted.ts";
import { readMessage } from "../notes/read.ts";
import type { Mention, Reading, ReadingOf } from "../notes/reading.ts";
import { whyOf } from "../notes/unclear.ts";
import { bears } from "../notes/verbs.ts";
import { canMend, type MendTo } from "./fields.ts";
import { isMeant, isOfWhat, ofItsOwn } from "./meant.ts";
import type { Past } from "./past.ts";

/*
 * A message that corrects what is noted, in whatever words: the note that it is about is the one on the books that has all
 * that is told of it.
 */

type Mend = ReadingOf<"mend">;
type Looking = Omit<Desk, "confirmed">;

/** A note that a message may be about, and what becomes of it; without that, it goes. */
interface Found {
  fact: Fact;
  to?: MendTo;
}

/** So many notes fit on buttons, with one more for none of them. */
const OFFERED_MAX = 3;

/** The readings of a message that corrects a note on the books; null where it corrects none. */
export function ofMisnoted(text: string, readings: readonly Reading[], desk: Looking): Corrected | null {
  const { past, today } = desk;
  if (!past || GOOD_FOR.test(text)) return null;
  const said = misnotedIn(text, namesOn(desk), today);
  if (!said) return null;
  const isWhole = readings.length > 0 && readings.every(isWholeNote);
  const at = { text, line: 0 };
  if (said.out || said.undoes || said.isAgain) {
    const out = isWhole ? null : takenOut(said, desk, past, at);
    return out && { readings: out, isSure: true };
  }
  const found = correctedBy(said, desk, past, isWhole).filter((one) => mayBe(one, said, readings, isWhole));
  const [only, ...others] = found;
  if (!only) return said.old.amount === undefined ? null : withoutOld(text, said.old.amount, desk);
  const asMend = ({ fact, to = {} }: Found): Mend => ({ kind: "mend", of: { fact: fact.id }, to, ...at });
  const isAllTaken = said.left.length === 0 && (said.now.name === undefined || only.to!.buyer !== undefined);
  // "would you take 65 for it? nope": asked, whatever it may correct.
  const isPlain = !said.isTurned || said.sense === "sure";
  if (isAllTaken && isPlain && others.length === 0 && isSaid(only, said, isWhole, readings))
    return {
      readings: [asMend(only)],
      isSure: said.sense === "sure" || isOnce(only, said) || isCalled(said),
    };
  // "drawer was broken so i sent dana 25 back": money that went back, and no other price.
  if (said.sense !== "sure" && readings.some(({ kind }) => kind === "refund")) return null;
  const mends = found.map(
    (one): Mend => ({
      ...asMend(one),
      label: `${past.echo(one.fact)}: now ${saidOf(one.to!, desk)}`,
    }),
  );
  const could = [...mends, ...(said.sense === "sure" && !isWhole ? [] : readings.flatMap(notesIn))].slice(
    0,
    OFFERED_MAX,
  );
  const why = whyOf({ kind: others.length > 0 ? "eitherOf" : "newOrOld" });
  return { readings: [{ kind: "unclear", why, could, ...at }], isSure: false };
}

/** "dana is good for the 30": she will pay it. */
const GOOD_FOR = /\bgood for\b/i;

const NOT_OLD = /,?\s+(?:and\s+)?not\s+(?:for\s+)?\$?[\d.,]*\d(?:\s+bucks)?/i;

/** "sold the desk for 140 not 150", which it was listed at: a note of its own. */
function withoutOld(text: string, old: Cents, { books, today }: Looking): Corrected | null {
  const rest = text.replace(NOT_OLD, "");
  const [note, ...others] = rest === text ? [] : readMessage(rest, today);
  const [mention] = note?.kind === "sell" ? (note.pieces ?? []) : [];
  if (!note || others.length > 0 || !isWholeNote(note) || !mention) return null;
  const isAsked = [...books.pieces.values()].some(
    (piece) => piece.gone === null && piece.listPrice === old && isMeant(mention, piece),
  );
  return isAsked ? { readings: [{ ...note, text }], isSure: true } : null;
}

/** What a message corrects, and whether it can be nothing else. */
interface Corrected {
  readings: Reading[];
  isSure: boolean;
}

const isWholeNote = (reading: Reading): boolean =>
  reading.kind === "unclear"
    ? isForBooks(reading)
    : reading.kind !== "ask" && !reading.missing && !bears(reading.kind, "corrects");

/** "the last two stools went, 35": a sale, if they are ours. */
const isForBooks = ({ byBooks, could }: ReadingOf<"unclear">): boolean =>
  byBooks === true && could?.length === 1 && could[0]!.kind === "sell" && !could[0]!.missing;

/** The notes that a reading may be, and no corrections. */
function notesIn(reading: Reading): Reading[] {
  if (reading.kind === "unclear") return reading.could ?? [];
  return reading.kind === "ask" || bears(reading.kind, "corrects") ? [] : [reading];
}

/** Whether a message that says little of a correction may be about that note. */
function mayBe(one: Found, said: Misnoted, readings: readonly Reading[], isWhole: boolean): boolean {
  if (isOnce(one, said)) return true;
  if (said.isLate) return false;
  const isOfKind = readings.some(({ kind }) => kind === one.fact.kind);
  // "it had a scratch when i bought it, gave 10 back"
  if (said.isThen && isWhole && !isOfKind) return false;
  if ((said.sense === "sure" && (said.isProven || !isWhole || isOfKind)) || isCalled(said)) return true;
  const isNamed = said.now.who !== undefined || said.isNoun;
  if (readings.some(({ kind }) => kind === "ask")) return said.now.who !== undefined && said.isTold;
  if (said.sense === "none") return !isWhole && isNamed && (said.isTold || said.points);
  return !isWhole || isOfKind;
}

/** Whether that is said well enough to be done. */
function isSaid(one: Found, said: Misnoted, isWhole: boolean, readings: readonly Reading[]): boolean {
  // A whole purchase may be one more, whatever is said beside it.
  const isPurchase = isWhole && readings.some(({ kind }) => kind === "buy");
  if (isPurchase && said.old.amount === undefined && !said.isThen) return false;
  if (said.sense === "sure" || isOnce(one, said) || isCalled(said)) return true;
  if (isWhole) return false;
  const isNamed = said.now.who !== undefined || said.isNoun;
  return (
    said.sense === "likely" ||
    (isNamed && said.isTold) ||
    (said.sense === "weak" && (said.now.who ?? said.now.method) !== undefined)
  );
}

/** What a piece is only once: sold, finished. A second time it is told of the first. */
function isOnce({ fact, to }: Found, { kinds }: Misnoted): boolean {
  return (
    (fact.kind === "sell" || fact.kind === "finish") && kinds.includes(fact.kind) && to!.date !== undefined
  );
}

function saidOf(to: MendTo, { books }: Looking): string {
  if (to.amount !== undefined) return show(to.amount);
  if (to.miles !== undefined) return `${to.miles} miles`;
  if (to.minutes !== undefined) return `${to.minutes} min`;
  if (to.pieces)
    return to.pieces
      .map(({ name, number }) => name ?? books.pieces.get(number ?? 0)?.name ?? "")
      .join(" and ");
  const [value] = Object.values(to);
  return String(value);
}

function namesOn({ books }: Looking): ReadonlySet<string> {
  const names = new Set<string>();
  for (const { data } of books.facts) {
    const { buyer } = data as { buyer?: string };
    if (buyer !== undefined) names.add(buyer);
  }
  return names;
}

/** The notes that a message may be about, the newest first, with what becomes of each. */
function correctedBy(said: Misnoted, desk: Looking, past: Past, isWhole: boolean): Found[] {
  const { books } = desk;
  const all = books.facts.filter(({ kind }) => kind !== "sent").sort((a, b) => b.place - a.place);
  const replied = past.replied === null ? all : all.filter(({ root }) => root === past.replied);
  const touched = past.touched();
  const latest = replied.filter((fact) => fact.root === touched && past.isToday(fact));
  const isAnyNamed = isNamed(said);
  const pool = isAnyNamed ? replied : latest;
  const found = pool.flatMap((fact) => {
    const to = becoming(fact, said, desk, isWhole);
    return to && canMend(fact.kind, to) && !isSo(fact, to) ? [{ fact, to }] : [];
  });
  if (found.length < 2) return found;
  const exact =
    said.old.amount === undefined ? found : found.filter(({ fact }) => fact.amount === said.old.amount);
  const own = ofItsOwn(
    exact.map(({ fact }) => fact),
    ofNothing(said),
  );
  const kept = exact.filter(({ fact }) => own.includes(fact));
  if (said.now.pieces.length > 0) return kept;
  const last = kept.filter(({ fact }) => fact.root === touched);
  return last.length === 1 ? last : kept;
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
    (isThen && isOurs)
  );
}

const hasValue = ({ amount, minutes, miles, date, method, place }: Misnoted["now"]): boolean =>
  [amount, minutes, miles, date, method, place].some((each) => each !== undefined);

/** What becomes of a fact by what is told; null where it is of another one, or nothing is. */
function becoming(fact: Fact, said: Misnoted, desk: Looking, isWhole: boolean): MendTo | null {
  const { now, old } = said;
  if (!isOfKind(fact, said) || !isOfWhat(fact, said.what) || !hasOld(fact, said)) return null;
  const { buyer } = fact.data as { buyer?: string };
  const isOther = old.who !== undefined;
  if (isOther ? buyer !== old.who : now.who !== undefined && buyer !== now.who && hasValue(now)) return null;
  const of = (mention: Mention) =>
    fact.pieces.some((number) => isMeant(mention, desk.books.pieces.get(number)!));
  if (old.pieces.length > 0 && !old.pieces.every(of)) return null;
  const to = valuesOf(fact, said);
  const isOfPieces = now.pieces.every(of);
  const sameAmount = now.amount !== undefined && to !== null && isSo(fact, to);
  if (to && !sameAmount) return isOfPieces && Object.keys(to).length === 1 ? to : null;
  // "its the desk thats listed for 140": what is told of another piece.
  if (hasValue(now) && !sameAmount) return null;
  if (now.traits.length > 0 && isOfPieces && fact.kind === "buy") return traitsOf(fact, said);
  if (now.pieces.length > 0)
    return isOfPieces && old.pieces.length === 0 ? null : ofPieces(fact, said, desk, isWhole);
  const person = now.who ?? now.name;
  if (
    person !== undefined &&
    (isOther || said.isWho || (now.who !== undefined && buyer !== now.who) || buyer !== undefined)
  )
    return person === buyer ? null : { buyer: person };
  return null;
}

function isOfKind(fact: Fact, { kinds, isThen, isOurs, isTheirs, isWho, now, old, what }: Misnoted): boolean {
  if (isThen) return fact.kind === "buy";
  // "nell bought it, not dana": to whom it went.
  if (old.who !== undefined || isWho) return "buyer" in fact.data;
  if (kinds.length > 0) return kinds.some((kind) => kind === fact.kind);
  const isPaid = now.amount !== undefined;
  if (isPaid && isOurs && !isTheirs && now.who === undefined && what === undefined && now.pieces.length > 0)
    return fact.kind === "buy";
  if (isPaid && what === undefined && (isTheirs || now.who !== undefined))
    return (
      fact.kind === "sell" ||
      fact.kind === "hold" ||
      fact.kind === "collect" ||
      (isTheirs && fact.kind === "buy")
    );
  return true;
}

function hasOld(fact: Fact, { old, now }: Misnoted): boolean {
  const { minutes, miles, method } = fact.data as { minutes?: number; miles?: string; method?: string };
  if (old.amount !== undefined) {
    const cents = old.amount;
    const isMeasure =
      (miles !== undefined && Number(miles) * 100 === cents) ||
      (minutes !== undefined && (minutes * 100 === cents || (minutes / 60) * 100 === cents));
    if (fact.amount !== cents && !isMeasure) return false;
  }
  if (old.minutes !== undefined && minutes !== old.minutes) return false;
  if (old.miles !== undefined && miles !== old.miles) return false;
  if (old.method !== undefined && method !== old.method) return false;
  return old.date === undefined || now.date === undefined || fact.day === old.date;
}

/** The values that it should have, in the measure of its kind; null where none are told. */
function valuesOf(fact: Fact, { now }: Misnoted): MendTo | null {
  const { amount, minutes, miles, date, method, place } = now;
  const to: MendTo = {
    ...(amount === undefined ? {} : { amount }),
    ...(minutes === undefined ? {} : { minutes }),
    ...(miles === undefined ? {} : { miles }),
    ...(date === undefined ? {} : { date }),
    ...(method === undefined ? {} : { method }),
    ...(place === undefined ? {} : { source: place }),
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
    return piece &&
      others.length === 0 &&
      (said.isName || old.pieces.length > 0 || said.sense === "sure") &&
      !isOnBooks
      ? nameOf(piece)
      : null;
  }
  if (!isOnBooks || said.isName) return null;
  // "the paint went on the dresser" alone is no correction.
  const isMoved =
    old.pieces.length > 0 || said.points || said.sense === "sure" || (said.sense === "likely" && !isWhole);
  return isMoved && (bears(fact.kind as Reading["kind"], "piece or none") || fact.pieces.length > 0)
    ? { pieces: now.pieces }
    : null;
}

function traitsOf(fact: Extract<Fact, { kind: "buy" }>, { now, old }: Misnoted): MendTo | null {
  const [made, ...others] = fact.data.made;
  if (!made || others.length > 0) return null;
  if (!old.traits.every((trait) => made.traits.includes(trait))) return null;
  return { traits: [...now.traits, ...made.traits.filter((trait) => !old.traits.includes(trait))] };
}

/** What is to go: what was said last, or the note that has all that is told. */
function takenOut(
  said: Misnoted,
  desk: Looking,
  past: Past,
  at: { text: string; line: number },
): Reading[] | null {
  const { books } = desk;
  const { now, old, kinds, what } = said;
  const isAnyNamed =
    kinds.length > 0 ||
    what !== undefined ||
    now.who !== undefined ||
    [...now.pieces, ...old.pieces].length > 0 ||
    hasValue(now) ||
    hasValue(old);
  // "remove b" is of a list.
  const isOther = said.out === "maybe" || now.name !== undefined;
  if (!isAnyNamed && !said.isAgain) return isOther ? null : [{ kind: "undo", ...at }];
  const touched = past.touched();
  const pieces = [...now.pieces, ...old.pieces];
  const facts = books.facts
    .filter(({ kind }) => kind !== "sent")
    .sort((a, b) => b.place - a.place)
    .filter((fact) => {
      const { buyer } = fact.data as { buyer?: string };
      return (
        (past.replied === null || fact.root === past.replied) &&
        (isAnyNamed || fact.root === touched) &&
        (kinds.length === 0 || kinds.some((kind) => kind === fact.kind)) &&
        isOfWhat(fact, what) &&
        (now.who === undefined || buyer === now.who) &&
        hasOld(fact, { ...said, old: { ...now, ...old } }) &&
        pieces.every((mention) => fact.pieces.some((number) => isMeant(mention, books.pieces.get(number)!)))
      );
    });
  const own =
    kinds.length === 0 && what === undefined && pieces.length > 0 && !hasValue(now)
      ? facts.filter(({ kind }) => kind === "buy")
      : facts;
  const [only, ...others] = own;
  if (!only) return null;
  const twins =
    others.length > 0 &&
    others.every((fact) => fact.kind === only.kind && fact.amount === only.amount && fact.day === only.day);
  const asOut = (fact: Fact): Mend => ({
    kind: "mend",
    of: { fact: fact.id },
    removed: true,
    ...at,
    label: `Take out: ${past.echo(fact)}`,
  });
  if ((others.length === 0 || twins) && said.out === "sure" && !said.isTurned) return [asOut(only)];
  return [
    { kind: "unclear", why: whyOf({ kind: "eitherOf" }), could: own.slice(0, OFFERED_MAX).map(asOut), ...at },
  ];
}

/** "that hold is for dana", "the deposit from nell was 15", "those knobs came to 21.60 with tax": a note is called by its name, and told what it was. */
const isCalled = ({ isNoun, isTold, points, now, what, sense }: Misnoted): boolean =>
  isNoun ? isTold && (points || now.who !== undefined) : points && what !== undefined && sense !== "none";
