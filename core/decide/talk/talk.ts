import type { Books, Piece } from "../../books/books.ts";
import type { Day } from "../../calendar.ts";
import type { Cents } from "../../money.ts";
import { isHeadNoun, isSetName } from "../../notes/mentions/furniture.ts";
import type { Mention, Reading, ReadingOf } from "../../notes/reading.ts";
import { bears } from "../../notes/verbs.ts";
import { ALSO_SAID, ONE_TOO } from "../../notes/words/again.ts";
import { PIECE_PARTS } from "../../notes/words/parts.ts";
import { SEVERAL_SAID } from "../../notes/words/pieces.ts";
import { OF_NO_PIECE } from "../../notes/words/supplies.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Ask, Choice, Decision, Looking } from "../decision.ts";
import { cannotBe } from "../decision.ts";
import { namesOf } from "../echo.ts";
import { pricedFor } from "../pieces/each.ts";
import { ever } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { nameWith } from "../pieces/mention-words.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";
import { ofAwaited } from "./of-awaited.ts";
import {
  allHere,
  allOfThem,
  areAllOfIt,
  eachHere,
  groupOfOne,
  hereOf,
  likelySold,
  paidAndOwed,
  theOther,
  wholeGroup,
} from "./unnamed.ts";

/*
 * What a note leaves to the talk around it: "it" is the piece of the message replied to, else the one spoken of
 * last. A verb that does not fit that piece is asked about; another piece is never taken instead.
 */

interface Deciding {
  decide(reading: Reading, desk: Looking): Decision;
}

/** The reading with the pieces that the talk gives it; the same reading where it gives none. */
export function talkedOf(said: Reading, desk: Looking, deciding: Deciding): Reading {
  const reading = paidAndOwed(said, desk);
  const awaited = ofAwaited(reading, desk);
  if (awaited) return awaited;
  const pointed = pointedOut(reading, desk);
  if (pointed && !cannotBe(deciding.decide(pointed, desk))) return pointed;
  if (pointed && !mentionsOf(reading).some(({ alike }) => alike)) return reading;
  // Of nothing that was spoken of, what is bought is still to say.
  if (mentionsOf(reading).some(({ alike }) => alike)) return withoutPieces(reading);
  const numbers = toldAlike(reading, desk) ?? piecesMeant(reading, desk);
  if (!numbers || numbers.length === 0) return reading;
  if (reading.one && !isOnePiece(numbers, desk.books)) return reading;
  // "hold that too" behind a hold is of another.
  const isAlso = !bears(reading.kind, "at work") && !desk.talk?.replied && saysAny(reading.text, ALSO_SAID);
  if (isAlso && numbers.every((number) => isToldOf({ number }, reading, desk.books))) return reading;
  if (reading.missing && ONE_TOO.test(reading.text)) return reading;
  // "sold them together 90" after one piece means others too.
  if (numbers.length === 1 && (reading.each || saysSeveral(reading))) return reading;
  const pieces = byNumbers(numbers);
  const { follows: _, one: __, missing, ...rest } = reading;
  const left = missing?.filter((field) => field !== "pieces") ?? [];
  const priced = pricedFor(reading, pieces);
  const given = { ...rest, pieces, ...priced, ...(left.length > 0 ? { missing: left } : {}) } as Reading;
  const decision = deciding.decide(given, desk);
  if (cannotBe(decision)) return reading;
  return given;
}

function withoutPieces(reading: Reading): Reading {
  const { pieces: _, missing = [], ...rest } = reading as Reading & { pieces?: Mention[] };
  return { ...rest, missing: ["pieces", ...missing] } as Reading;
}

const saysSeveral = (reading: Reading): boolean =>
  areAllOfIt(reading) ||
  (reading.follows === true &&
    !reading.one &&
    bears(reading.kind, "counted later") &&
    SEVERAL_SAID.test(reading.text));

/** "posted them together, 480 for the lot", "both are up as a set": of all that the notes before told alike; null where one did. */
function toldAlike(reading: Reading, { talk }: Looking): number[] | null {
  const run = !talk?.replied && areAllOfIt(reading) ? talk?.run : undefined;
  const count = mentionsOf(reading)[0]?.count;
  const isPair = run !== undefined && (run.flat().length === 2 || !/\bpair\b/i.test(reading.text));
  // "put both up for 165" behind the purchase of a pair is of that pair.
  if (count !== undefined && talk?.latest?.length === count) return null;
  return isPair && (count === undefined || count === run.length) ? run.flat() : null;
}

/** "it" is a piece, or pieces that came together under one name. */
export function isOneThing(numbers: readonly number[], books: Books): boolean {
  return new Set(numbers.map((number) => books.pieces.get(number)?.name)).size === 1;
}

/** "it" of several that go by one name is one of them, unless they are a set. */
const isOnePiece = (numbers: readonly number[], books: Books): boolean =>
  numbers.length < 2 ||
  books.facts.some(
    (fact) =>
      fact.kind === "buy" &&
      fact.data.set === true &&
      numbers.every((number) => fact.pieces.includes(number)),
  );

/** Whether a cost goes to a piece that it did not name: said in the reply, with a way out. */
export function isGuessedCost(said: Reading, given: Reading): boolean {
  return said.kind === "spend" && given.kind === "spend" && !said.pieces && !said.follows && !!given.pieces;
}

/** "4 of them", "both", "the other one": settled by the pieces spoken of; null where nothing is, or where they do not say. */
function pointedOut(reading: Reading, desk: Looking): Reading | null {
  const said = mentionsOf(reading);
  if (!said.some(isPointed) || toldAlike(reading, desk)) return null;
  const pieces = said.map((mention) => (isPointed(mention) ? settledBy(mention, reading, desk) : [mention]));
  if (pieces.some((each) => each === null)) return null;
  const { follows: _, ...rest } = reading as Reading & { follows?: true; price?: Cents };
  const settled = pieces.flatMap((each) => each ?? []);
  // "the others, 20 each" are counted now.
  const isCounted = reading.each && said.some(({ plural }) => plural) && rest.price !== undefined;
  const price = isCounted ? { price: rest.price! * settled.length } : {};
  // "1h on each": as long as all of them took.
  const isTimed = reading.kind === "work" && reading.minutes !== undefined && said.some(({ each }) => each);
  const minutes = isTimed ? { minutes: reading.minutes! * settled.length } : {};
  return { ...rest, pieces: settled, ...price, ...minutes } as Reading;
}

const isPointed = ({
  it,
  other,
  besides,
  allBut,
  alike,
  count,
  half,
  place,
  each,
  plural,
}: Mention): boolean =>
  place !== undefined ||
  each === true ||
  other === true ||
  besides === true ||
  allBut === true ||
  alike === true ||
  (it === true && (count !== undefined || half === true || plural === true));

function settledBy(mention: Mention, reading: Reading, { talk, books, today }: Looking): Mention[] | null {
  // "the other two are done" the day after one of three was given away.
  const last =
    mention.other || mention.place
      ? books.facts.findLast(({ pieces }) => pieces.length > 0)?.pieces
      : undefined;
  const latest = talk?.replied ?? talk?.latest ?? last ?? [];
  const lot = withItsLot([...latest], books) ?? [];
  // "both done" behind the work on one of two that came together.
  const isOfLot = mention.it === true && (mention.count ?? 0) > 1 && lot.length === mention.count;
  const spoken = isOfLot ? lot : latest;
  if (mention.place) return atPlace(mention, reading, spoken, books, today);
  if (mention.each) {
    const all = eachMeant(spoken, books, today);
    return all && byNumbers(all);
  }
  if (mention.allBut) return allButThat(mention, reading, books);
  if (mention.besides) {
    const others = theOther(mention, spoken, books);
    const isAll = others.length > 0 && others.length === (mention.count ?? others.length);
    return isAll ? byNumbers(others) : null;
  }
  const [name, ...names] = new Set(spoken.map((number) => books.pieces.get(number)?.name));
  const { other } = mention;
  // Half of an odd number is none.
  const count = mention.half ? (spoken.length % 2 === 0 ? spoken.length / 2 : undefined) : mention.count;
  if (mention.half && !count) return null;
  if (mention.alike) return ofSameKind(spoken, count ?? 1, books);
  if (mention.it && mention.plural) {
    const all = wholeGroup(reading.text, spoken, books);
    return all && byNumbers(all);
  }
  if (!other && bears(reading.kind, "behind a sale")) return ofSold(name, count!, books);
  if (!other) {
    if (spoken.length === count && count > 1) return byNumbers(spoken);
    const isOfOneName = name !== undefined && names.length === 0 && spoken.length > (count ?? 0);
    if (isOfOneName) return someOf(name, count!);
    const all = allOfThem(count!, reading, books);
    if (all && all.length > 1) return byNumbers(all);
    // "sold one 15" behind a single piece is hardly that one, but one of those that it came with, or of the only ones for sale.
    const group = groupOfOne(spoken, books);
    // "sold one 15", and no more than that one of them is left.
    const left = count === 1 && group.length === 0 ? lastOf(spoken, books) : [];
    if (left.length === 1) return byNumbers(left);
    return group.length >= count! && group.length > 1 ? someOf(group[0]!.name, count!) : null;
  }
  if (name === undefined || names.length > 0) return null;
  const alike = [...books.pieces.values()].filter((piece) => piece.name === name && piece.gone === null);
  const left = alike.filter((piece) => !spoken.includes(piece.number));
  // "the last one, 15": of several, those that it was not told of yet.
  const untold = left.length > (count ?? 0) ? left.filter((piece) => !isToldOf(piece, reading, books)) : [];
  const besides = untold.length > 0 ? untold : left;
  if (besides.length === 0 && spoken.length === 1 && !mention.last)
    return onlyOther(spoken[0]!, count, books);
  // "the last one went for 120" beside a note of the only dresser there ever was, or of one that brought just that: an earlier one.
  if (mention.last && besides.length === 0 && isOfEarlier(name, reading, books)) return null;
  // "sold another", with all of them spoken of just now: one of those.
  const others = besides.length > 0 ? besides : alike;
  const isAll = others.length > 0 && (count === undefined || count === others.length);
  if (isAll) return byNumbers(others.map(({ number }) => number));
  return count !== undefined && others.length > count ? [{ name, count }] : null;
}

/** What money was given back on: so many of those of the name that were sold. */
function ofSold(name: string | undefined, count: number, books: Books): Mention[] | null {
  const sold = [...books.pieces.values()].filter((piece) => piece.name === name && piece.gone === "sold");
  if (sold.length === count) return byNumbers(sold.map(({ number }) => number));
  return name !== undefined && sold.length > count ? someOf(name, count) : null;
}

/** What is still here of the names spoken of, of which there were several. */
function lastOf(spoken: readonly number[], books: Books): number[] {
  const names = new Set(spoken.map((number) => books.pieces.get(number)!.name));
  const alike = [...books.pieces.values()].filter(({ name }) => names.has(name));
  return alike.length < 2 ? [] : alike.filter(({ gone }) => gone === null).map(({ number }) => number);
}

/** It may be said of one that is gone: there was no second one, or one of them was sold for just that. */
function isOfEarlier(name: string, reading: Reading, books: Books): boolean {
  const all = [...books.pieces.values()].filter((piece) => piece.name === name);
  const price = reading.kind === "sell" ? reading.price : undefined;
  return all.length === 1 || all.some((piece) => piece.gone === "sold" && piece.sales === price);
}

/** So many of a name; which one of a set it is only the person can say. */
const someOf = (name: string, count: number): Mention[] | null =>
  count === 1 && isSetName(name) ? null : [{ name, count }];

const isToldOf = ({ number }: Pick<Piece, "number">, { kind }: Reading, { facts }: Books): boolean =>
  facts.some((fact) => fact.kind === kind && fact.pieces.includes(number));

/** "everything but the dresser": what else is here, first what is not done or listed yet; null where there is nothing, or no dresser. */
function allButThat(
  { allBut: _, plural, ...but }: Mention,
  { kind }: Reading,
  books: Books,
): Mention[] | null {
  const named = foundBy([but.count === undefined && plural ? { ...but, plural } : but], books, ever);
  const others = hereOf(books).filter(({ number }) => !named?.includes(number));
  const open = others.filter(({ finished, listed }) =>
    kind === "finish" ? finished === null : kind !== "list" || listed === null,
  );
  const meant = open.length > 0 ? open : others;
  return named && meant.length > 0 ? byNumbers(meant.map(({ number }) => number)) : null;
}

/** "the other one" beside a single piece: the only other piece here, whatever it is. */
function onlyOther(spoken: number, count: number | undefined, books: Books): Mention[] | null {
  const others = [...books.pieces.values()].filter(({ number, gone }) => gone === null && number !== spoken);
  return others.length === 1 && count === 1 ? byNumbers([others[0]!.number]) : null;
}

/** "the second one" of what was spoken of together, else of what came today; "the second chair" of the chairs here. */
function atPlace(
  { place = 0, name }: Mention,
  reading: Reading,
  spoken: readonly number[],
  books: Books,
  today: Day,
): Mention[] | null {
  const isSold = bears(reading.kind, "behind a sale");
  const isHere = (number: number): boolean => books.pieces.get(number)?.gone === (isSold ? "sold" : null);
  const named = [...books.pieces.values()].filter((piece) => piece.name === name).map(({ number }) => number);
  const came = lotOf(spoken, books);
  const together = spoken.length > 1 ? spoken : came.length >= place ? came : boughtOn(today, books);
  const all = name === undefined ? together : named;
  // "the second one" of two, the first of which is sold.
  const meant = all.length > 1 ? all[place - 1] : undefined;
  return meant !== undefined && isHere(meant) ? byNumbers([meant]) : null;
}

/** What "each" means: the pieces spoken of together, else the two that came today. */
function eachMeant(spoken: readonly number[], books: Books, today: Day): readonly number[] | null {
  if (spoken.length > 1) return spoken;
  const here = allHere(books);
  const all = boughtOn(today, books).filter((number) => here.includes(number));
  return all.length === 2 && here.length === 2 ? all : null;
}

const boughtOn = (day: Day, books: Books): number[] =>
  books.facts.flatMap((fact) => (fact.kind === "buy" && fact.day === day ? fact.pieces : []));

/** So many of the name of what was spoken of; null where that has several. */
function ofSameKind(spoken: readonly number[], count: number, books: Books): Mention[] | null {
  const [first, ...others] = spoken.map((number) => books.pieces.get(number)!);
  if (!first || others.some((piece) => nameWith(piece) !== nameWith(first))) return null;
  const { name, traits } = first;
  return [{ name, count, ...(traits.length > 0 ? { traits: [...traits] } : {}) }];
}

function piecesMeant(reading: Reading, { talk, today, books }: Looking): readonly number[] | undefined {
  if (!talk) return undefined;
  const isMissing = reading.missing?.includes("pieces") === true;
  const isOpen = bears(reading.kind, "piece or none") && !("pieces" in reading && reading.pieces);
  const isIt =
    "pieces" in reading &&
    Array.isArray(reading.pieces) &&
    reading.pieces.some(
      ({ it, count, half, plural, each }) => it && count === undefined && !half && (!plural || each),
    );
  if (!isMissing && !isOpen && !isIt) return undefined;
  // A purchase makes its own pieces.
  if (reading.kind === "buy") return undefined;
  if (talk.replied) return talk.replied;
  const isOfSeveral = (reading.follows || isIt) && SEVERAL_SAID.test(reading.text);
  if (talk.several && (isOfSeveral || (reading.follows && reading.each))) return talk.several;
  // "listed 60 each" behind the purchase of two of a kind
  const isEach = reading.each === true && (talk.latest?.length ?? 0) > 1 && isOneThing(talk.latest!, books);
  if (reading.follows || isIt || isEach)
    return SEVERAL_SAID.test(reading.text) ? withItsLot(talk.latest, books) : talk.latest;
  // "gave back 15, it had a scratch": of the sale just told.
  const isSold = talk.latest?.every((number) => books.pieces.get(number)?.gone === "sold") === true;
  if (isMissing && isSold && bears(reading.kind, "behind a sale")) return talk.latest;
  // "she paid a 50 deposit, collects it saturday": of what was put on hold just now.
  const isHeld = talk.latest?.every((number) => isOnHold(books.pieces.get(number))) === true;
  if (isMissing && isHeld && reading.kind === "hold" && reading.deposit !== undefined && !reading.buyer)
    return talk.latest;
  const isDone = bears(reading.kind, "standing pieces");
  if (
    !bears(reading.kind, "at work") ||
    isDone ||
    (reading.kind === "spend" && reading.category !== "materials")
  )
    return undefined;
  if (reading.kind === "spend" && (reading.forShop || OF_NO_PIECE.test(reading.text))) return undefined;
  const isThatDay = reading.date === undefined || reading.date === today;
  const named = reading.kind === "spend" ? piecesInWhat(reading, books) : [];
  if (named.length > 0)
    return named.length === 1 ? named : talk.latest?.filter((each) => named.includes(each));
  if (reading.kind === "spend" && furnitureIn(reading).length > 0) return undefined;
  const isHere = talk.latest?.every((number) => books.pieces.get(number)?.gone === null);
  if (!isThatDay || !isHere) return undefined;
  return reading.kind !== "work" || isInHand(talk.latest!, reading, books) ? talk.latest : undefined;
}

const isOnHold = (piece: Readonly<Piece> | undefined): boolean =>
  piece !== undefined && piece.hold !== null && piece.gone === null;

/** "theyre done" behind the one of two end tables: both, as they came together. */
function withItsLot(latest: number[] | undefined, books: Books): number[] | undefined {
  const together = lotOf(latest ?? [], books).filter((number) => books.pieces.get(number)!.gone === null);
  return together.includes(latest?.[0] ?? 0) ? together : latest;
}

/** All that came with a single piece under its name; none where it came alone. */
function lotOf([only, ...others]: readonly number[], { pieces }: Books): number[] {
  const piece = only === undefined || others.length > 0 ? undefined : pieces.get(only);
  if (!piece || piece.lot === null) return [];
  return [...pieces.values()]
    .filter(({ lot, name }) => lot === piece.lot && name === piece.name)
    .map(({ number }) => number);
}

/** "lamp shade 6": the lamps here, whatever else was spoken of last. */
function piecesInWhat(reading: ReadingOf<"spend">, books: Books): number[] {
  const heads = furnitureIn(reading);
  return allHere(books).filter((number) => heads.includes(books.pieces.get(number)!.name.split(" ").at(-1)!));
}

/** The furniture that a supply is for by its name or its part: the table of "table legs", of "wood for the table legs". */
function furnitureIn({ what = "", text }: ReadingOf<"spend">): string[] {
  const said = text.toLowerCase().split(/[^a-z]+/);
  const ofParts = said.filter((_, at) => PIECE_PARTS.has(said[at + 1]?.replace(/s$/, "") ?? ""));
  return [...what.split(" ").slice(0, -1), ...ofParts].filter(
    (word) => isHeadNoun(word) && !PIECE_PARTS.has(word),
  );
}

/** Whether these were worked on last, or are all that is here; behind a cost of theirs it is said what was done. */
function isInHand(numbers: readonly number[], { what }: ReadingOf<"work">, books: Books): boolean {
  const last = books.facts.findLast(({ pieces }) => pieces.some((number) => numbers.includes(number)));
  const isAtWork = last !== undefined && bears(last.kind as Reading["kind"], "at work");
  if (isAtWork && (last.kind !== "spend" || what !== undefined)) return true;
  return last?.kind !== "spend" && allHere(books).length === numbers.length;
}

/** The question for the piece, with the one spoken of last on a button where the note may be about it. */
export function withSpokenOf(ask: Ask, reading: Reading, desk: Looking, deciding: Deciding): Ask {
  const latest = desk.talk?.latest ?? [];
  const isUnknown = latest.length === 0 && reading.kind !== "sell" && !reading.follows;
  if (ask.wants !== "pieces" || reading.kind === "buy" || isUnknown) return ask;
  // "it" of several things is one of them.
  const isOneOf = reading.one && (latest.length === 0 || !isOnePiece(latest, desk.books));
  const isOfPrice = reading.kind === "sell" && reading.price !== undefined && !reading.follows;
  const all = saysSeveral(reading) || reading.each ? allHere(desk.books) : [];
  const groups = isOneOf
    ? isOneThing(latest, desk.books)
      ? [latest.slice(0, 1), [...latest]]
      : latest.map((number) => [number])
    : isOfPrice
      ? likelySold(reading.price!, latest, desk.books)
      : [latest];
  if (all.length > latest.length) groups.unshift(all);
  const offered = (numbers: number[]): Choice[] => {
    const pieces = byNumbers(numbers);
    const missing = reading.missing?.filter((field) => field !== "pieces") ?? [];
    const change = { pieces, ...pricedFor(reading, pieces), missing };
    const decision = deciding.decide({ ...reading, ...change } as Reading, desk);
    const label = namesOf(desk.books, { pieces: numbers });
    return cannotBe(decision) ? [] : [{ label, effect: { kind: "settle", change } }];
  };
  const fitting = groups.filter(({ length }) => length > 0).flatMap(offered);
  // "it" cannot be what was spoken of: those that it can be, where they are few.
  const choices = fitting.length > 0 || !reading.follows ? fitting : eachHere(desk.books).flatMap(offered);
  return { ...ask, choices: [...choices, ...ask.choices] };
}
