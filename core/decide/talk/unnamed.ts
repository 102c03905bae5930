import { goingPrice } from "../../books/agreed.ts";
import type { Books, Piece } from "../../books/books.ts";
import { proceedsOf, statusOf } from "../../books/piece.ts";
import { agreedPriceOf, listPriceOf } from "../../books/shares.ts";
import { type Cents, percentOf, show } from "../../money.ts";
import { lexed } from "../../notes/lexed.ts";
import { isSetName } from "../../notes/mentions/furniture.ts";
import type { Mention, Reading, ReadingFields } from "../../notes/reading.ts";
import { ONE_TOO } from "../../notes/words/again.ts";
import { CAME_OF_IT } from "../../notes/words/known-sums.ts";
import { ALL_AS_ONE } from "../../notes/words/links.ts";
import { THE_SET } from "../../notes/words/pieces.ts";
import { saysAny, wordsIn } from "../../notes/words/words.ts";
import type { Verb } from "../../verbs/verb.ts";
import { isNearAsking, NEAR_LEAST } from "../deals/near-asking.ts";
import { offerFor } from "../deals/offered.ts";
import type { Ask, Choice, Looking } from "../decision.ts";
import { listed, paidFor } from "../pieces/fits.ts";
import { foundBy, matchMention } from "../pieces/match.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";

/*
 * Pieces that a note leaves to the books: the price of a sale alone, "the set", "both", "the dresser" of two.
 */

type Sale = ReadingFields["sell"];

type Pieces = readonly Readonly<Piece>[];

/** "sold 165 card": the only piece that is listed, where it was spoken of last or nothing else is here; null else. */
export function soldUnnamed(reading: Reading, desk: Looking): Reading | null {
  if (reading.kind !== "sell" || !reading.missing?.includes("pieces") || reading.follows) return null;
  if (ONE_TOO.test(reading.text)) return null;
  if (desk.talk?.replied) return null;
  const pieces =
    ofItsBuyer(reading.buyer, desk.books) ??
    theSet(reading.text, desk.books) ??
    onlyListed(reading.price, desk);
  if (!pieces) return null;
  const missing = reading.missing.filter((field) => field !== "pieces");
  return { ...reading, pieces: byNumbers(pieces), missing };
}

/** "the desk lady paid full price": the desk. */
function ofItsBuyer(buyer: string | undefined, books: Books): number[] | null {
  const [token, who, ...others] = buyer === undefined ? [] : lexed(buyer);
  if (token?.kind !== "piece" || !who || others.length > 0) return null;
  const found = foundBy([token.mention!], books, listed);
  return found?.length === 1 ? found : null;
}

/** "sold it at asking", "full price, cash": what the pieces are listed at. */
export function soldAtAsking(reading: Reading, desk: Looking): Reading | null {
  if (reading.kind !== "sell" || !reading.missing?.includes("price") || !reading.atAsking) return null;
  const asked = askingPriceOf(reading, desk, listPriceOf);
  if (!asked) return null;
  const price = reading.beside ? besideAsking(asked.price, reading.beside) : asked.price;
  if (price === null) return null;
  const { missing: _, follows: __, one: ___, ...rest } = reading;
  return { ...rest, price, pieces: byNumbers(asked.numbers) };
}

/** "for 20 under asking", "10 percent off"; null where the amount may as well be the price. */
function besideAsking(asked: Cents, { is, cents, percent }: NonNullable<Sale["beside"]>): Cents | null {
  const part = cents ?? percentOf(percent ?? "0", asked);
  if (is === "of") return part;
  if (cents !== undefined && cents >= asked * NEAR_LEAST) return null;
  return is === "off" ? asked - part : asked + part;
}

/** "paid 90, still owes 20" of what is listed at 110: what was paid is no price. */
export function paidAndOwed(reading: Reading, desk: Looking): Reading {
  if (reading.kind !== "sell" || !reading.owed || !CAME_OF_IT.test(reading.text)) return reading;
  const asked = askingPriceOf(reading, desk, listPriceOf);
  const isBoth = asked !== null && asked.price === (reading.price ?? 0) + reading.owed;
  return isBoth ? { ...reading, price: asked.price } : reading;
}

/** What the pieces of a sale are to bring together, named or spoken of; null where they are not, or are not sure. */
function askingPriceOf(
  reading: Reading,
  { books, talk }: Looking,
  priceOf: (pieces: Pieces) => Cents | null,
): { price: Cents; numbers: number[]; isAgreed: boolean } | null {
  const mentions = mentionsOf(reading).filter(({ it }) => !it);
  const spoken = talk?.replied ?? talk?.latest ?? [];
  const numbers = mentions.length > 0 ? [...new Set(foundBy(mentions, books, listed))] : spoken;
  const pieces = numbers.map((number) => books.pieces.get(number)!);
  const price = priceOf(pieces);
  if (pieces.length === 0 || pieces.some(({ gone }) => gone !== null) || price === null) return null;
  return { price, numbers, isAgreed: price === agreedPriceOf(pieces) };
}

/** Sold pieces that a refund names, or that were spoken of last; none where that is not sure. */
function refundedPieces(reading: Reading, { books, talk }: Looking): Readonly<Piece>[] {
  const [mention, ...more] = mentionsOf(reading).filter(({ it }) => !it);
  const match = mention && matchMention(mention, books, paidFor, new Set());
  const spoken = talk?.replied ?? talk?.latest ?? [];
  const numbers = match ? (match.kind === "found" ? match.pieces : []) : spoken;
  const pieces = numbers.map((number) => books.pieces.get(number)!);
  return more.length > 0 || pieces.some(({ gone }) => gone !== "sold") ? [] : pieces;
}

const broughtInBy = (pieces: Pieces): Cents =>
  pieces.reduce((sum, piece) => sum + proceedsOf(piece) - piece.owed, 0);

/** "took it back and gave a full refund": all that it brought in. */
export function refundedInFull(reading: Reading, desk: Looking): Reading | null {
  if (reading.kind !== "refund" || !reading.missing?.includes("amount") || !reading.inFull) return null;
  const pieces = refundedPieces(reading, desk);
  if (pieces.length === 0) return null;
  const { missing: _, follows: __, one: ___, ...rest } = reading;
  return { ...rest, amount: broughtInBy(pieces), pieces: byNumbers(numbersOf(pieces)) };
}

/** The question for what was given back, with all that it brought in on a button. */
export function withAllOfIt(ask: Ask, reading: Reading, desk: Looking): Ask {
  const pieces = ask.wants === "amount" && reading.kind === "refund" ? refundedPieces(reading, desk) : [];
  if (pieces.length === 0) return ask;
  const amount = broughtInBy(pieces);
  const missing = reading.missing?.filter((field) => field !== "amount") ?? [];
  const choice: Choice = {
    label: `All of it, ${show(amount)}`,
    words: ["all", "everything", "all of it"],
    effect: { kind: "settle", change: { amount, missing } as Partial<Reading> },
  };
  return { ...ask, choices: [choice, ...ask.choices] };
}

const AS_AGREED: readonly string[] = [
  "as agreed",
  "agreed",
  "agreed price",
  "what we agreed",
  "as we agreed",
];
const AS_LISTED: readonly string[] = ["as listed", "asking", "at asking", "full price", "list price"];

const AS_OFFERED: readonly string[] = ["as offered", "his offer", "her offer", "their offer", "the offer"];

const AS_BEFORE: readonly string[] = [
  "as before",
  "same",
  "same price",
  "same as before",
  "the same",
  "as it was",
];

/**
 * The question for a sale's price, with what was offered or agreed on for its pieces, or what they are listed at, on a button;
 * for that of a listing, with what they were listed at: "put the dresser back up".
 */
export function withAskingPrice(ask: Ask, reading: Reading, desk: Looking): Ask {
  const isSale = reading.kind === "sell";
  if (ask.wants !== "price" || !(isSale || reading.kind === "list")) return ask;
  const asked = askingPriceOf(
    reading,
    desk,
    isSale ? (pieces) => goingPrice(desk.books, pieces) : listPriceOf,
  );
  if (!asked) return ask;
  const missing = reading.missing?.filter((field) => field !== "price") ?? [];
  const at = (price: Cents, as: string, words: readonly string[]): Choice => ({
    label: `${show(price)}, as ${as}`,
    words: [...words],
    effect: { kind: "settle", change: { price, missing } as Partial<Reading> },
  });
  if (!isSale) return { ...ask, choices: [at(asked.price, "before", AS_BEFORE), ...ask.choices] };
  const offer = offerFor(desk.talk?.offers, asked.numbers);
  const offered = offer && (offer.isTold || !asked.isAgreed) && offer.price !== asked.price;
  const going = asked.isAgreed ? at(asked.price, "agreed", AS_AGREED) : at(asked.price, "listed", AS_LISTED);
  const before = offered ? [at(offer.price, offer.isTold ? "told" : "offered", AS_OFFERED)] : [];
  return { ...ask, choices: [...before, going, ...ask.choices] };
}

/** The pieces of the only set that is here, where a note speaks of "the set". */
function theSet(text: string, books: Books): number[] | null {
  if (!saysSet(text)) return null;
  const sets = groupsOf(hereOf(books).filter(({ name }) => isSetName(name)));
  return sets.length === 1 ? numbersOf(sets[0]!) : null;
}

const saysSet = (text: string): boolean => saysAny(text, THE_SET) || wordsIn(text)[0] === "set";

/** "the set": the only one here; where nothing goes by such a name, those spoken of, or the only ones that came together. */
export function wholeGroup(text: string, spoken: readonly number[], books: Books): number[] | null {
  const here = hereOf(books);
  if (saysSet(text) && here.some(({ name }) => isSetName(name))) return theSet(text, books);
  const told = here.filter(({ number }) => spoken.includes(number));
  const groups = groupsOf(told.length > 1 ? told : here).filter(({ length }) => length > 1);
  return groups.length === 1 ? numbersOf(groups[0]!) : null;
}

/** "sold one 15" behind what is no group: one of the only ones that came together, where only they are for sale or were just spoken of. */
export function groupOfOne(spoken: readonly number[], books: Books): Pieces {
  const lots = groupsOf(hereOf(books)).filter(({ length }) => length > 1);
  const told = lots.filter(([one]) => spoken.some((number) => isAlike(books.pieces.get(number)!, one!)));
  const listed = lots.filter((pieces) => pieces.every((piece) => piece.listed !== null));
  const isOnly = hereOf(books).every((piece) => piece.listed === null || listed[0]?.includes(piece));
  return told.length === 1 ? told[0]! : listed.length === 1 && isOnly ? listed[0]! : [];
}

const isAlike = (a: Readonly<Piece>, b: Readonly<Piece>): boolean => a.lot === b.lot && a.name === b.name;

function onlyListed(price: Cents | undefined, { books, talk }: Looking): number[] | null {
  const all = hereOf(books);
  const [pieces, ...others] = groupsOf(all.filter(({ listed }) => listed !== null));
  if (!pieces || others.length > 0 || price === undefined) return null;
  const asked = listPriceOf(pieces) ?? 0;
  if (!isNearAsking(price, asked)) return null;
  const numbers = numbersOf(pieces);
  const isSpokenOf = talk?.latest?.every((number) => numbers.includes(number)) === true;
  return isSpokenOf || pieces.length === all.length ? numbers : null;
}

const OFFERED_MAX = 3;

/** The pieces that a sale without one may be of, likeliest first: those spoken of, and those listed near its price. */
export function likelySold(price: Cents, latest: readonly number[], books: Books): number[][] {
  const all = hereOf(books);
  const spoken = all.filter(({ number }) => latest.includes(number));
  const listed = groupsOf(all.filter((piece) => piece.listed !== null && !latest.includes(piece.number)));
  const groups = spoken.length > 0 ? [spoken, ...listed] : listed;
  const far = (pieces: Pieces): number => {
    const beside = listPriceOf(pieces) ?? pieces.reduce((sum, piece) => sum + piece.price, 0);
    return price > 0 && beside > 0 ? Math.abs(Math.log(price / beside)) : 1;
  };
  return groups
    .sort((a, b) => far(a) - far(b))
    .slice(0, OFFERED_MAX)
    .map(numbersOf);
}

/** "sold both 58" of pieces not spoken of together: just so many that are listed, or here; null where there are others. */
export function allOfThem(count: number, reading: Reading, books: Books): number[] | null {
  const all = hereOf(books);
  const listed = all.filter((piece) => piece.listed !== null);
  const groups =
    reading.kind === "list" ? [all.filter((piece) => piece.listed === null), all] : [listed, all];
  const found = groups.find((pieces) => pieces.length === count);
  return found ? numbersOf(found) : null;
}

/** "started the other bookcase": those of the name that are here and were not spoken of last. */
export function theOther(mention: Mention, spoken: readonly number[], books: Books): number[] {
  const isOfName = (number: number) => books.pieces.get(number)?.name === mention.name;
  const before = spoken.some(isOfName)
    ? spoken
    : (books.facts.findLast(({ pieces }) => pieces.some(isOfName))?.pieces ?? []);
  const others = hereOf(books).filter((piece) => isOfName(piece.number) && !before.includes(piece.number));
  return numbersOf(others);
}

/** "swapped it for a dresser": what was spoken of is given. */
export function tradedIt(reading: Reading, { books, talk }: Looking): Reading | null {
  if (reading.kind !== "trade" || !reading.gave?.some(({ it }) => it)) return null;
  const spoken = talk?.replied ?? talk?.latest ?? [];
  const isHere = spoken.length > 0 && spoken.every((number) => books.pieces.get(number)?.gone === null);
  return isHere ? { ...reading, gave: byNumbers(spoken) } : null;
}

/**
 * "finished the dresser" of two: the one spoken of last, where it stands just before what the verb says and no other
 * of the name does.
 */
export function nextOfTwo(
  reading: Reading,
  { books, talk }: Looking,
  verb: Verb | undefined,
): Reading | null {
  const [mention, ...more] = mentionsOf(reading);
  const [latest, ...others] = talk?.replied ?? talk?.latest ?? [];
  if (!verb?.upon || !mention || more.length > 0 || latest === undefined || others.length > 0) return null;
  const { name, number, traits, plural, besides, count } = mention;
  if (number !== undefined || traits || plural || besides || (count ?? 1) > 1) return null;
  const alike = hereOf(books).filter((piece) => piece.name === name);
  const next = alike.filter((piece) => statusOf(piece) === verb.upon);
  if (alike.length < 2 || next.length !== 1 || next[0]!.number !== latest) return null;
  return { ...reading, pieces: byNumbers([latest]) } as Reading;
}

/** "listed 110" behind what was just finished, "took 10 off" behind a listing: what stands just before it, spoken of last. */
export function nextSpokenOf(
  reading: Reading,
  { books, talk }: Looking,
  verb: Verb | undefined,
): Reading | null {
  const { missing, follows } = reading;
  // "sold!" behind a listing: its price is asked, with the one listed on a button.
  const isSale = reading.kind === "sell" && missing?.join() === "pieces,price";
  const upon = isSale ? "listed" : verb?.upon;
  const isOpen = isSale || missing?.join() === "pieces";
  if (!upon || !isOpen || follows || talk?.replied) return null;
  const pieces = (talk?.latest ?? []).map((number) => books.pieces.get(number)!);
  if (areAllOfIt(reading) && (pieces.length < 2 || talk?.run)) return null;
  // "done" behind the wax for it: it was in hand, though nobody said that it was begun.
  const isInHand = ({ number, finished }: Readonly<Piece>): boolean =>
    reading.kind === "finish" && finished === null && lastOf(number, books) !== "buy";
  const isNext = (piece: Readonly<Piece>): boolean => statusOf(piece) === upon || isInHand(piece);
  if (pieces.length === 0 || !pieces.every(isNext) || groupsOf(pieces).length > 1) return null;
  const left = missing!.filter((field) => field !== "pieces");
  return { ...reading, pieces: byNumbers(numbersOf(pieces)), missing: left } as Reading;
}

/** "listed both together, 300 for the pair": pieces that it does not name, at one price. */
export function areAllOfIt(reading: Reading): boolean {
  if ((reading.kind !== "list" && reading.kind !== "sell") || reading.price === undefined) return false;
  const said = mentionsOf(reading);
  const isBoth = said.some(({ count }) => count !== undefined && count > 1);
  return said.every(({ it, half }) => it && !half) && (isBoth || saysAny(reading.text, ALL_AS_ONE));
}

/** What was told last of a piece. */
const lastOf = (number: number, { facts }: Books): string | undefined =>
  facts.findLast(({ pieces }) => pieces.includes(number))?.kind;

/** Each piece here by itself, where they are few. */
export function eachHere(books: Books): number[][] {
  return allHere(books).map((number) => [number]);
}

/** A few pieces are all meant together; more hardly ever. */
const TOGETHER_MAX = 4;

/** All pieces here, where they are few. */
export function allHere(books: Books): number[] {
  const all = numbersOf(hereOf(books));
  return all.length <= TOGETHER_MAX ? all : [];
}

/** The pieces that have not gone. */
export const hereOf = (books: Books): Readonly<Piece>[] =>
  [...books.pieces.values()].filter((piece) => piece.gone === null);

const numbersOf = (pieces: Pieces): number[] => pieces.map(({ number }) => number);

/** Pieces of one lot and name stand together, any other alone. */
function groupsOf(pieces: Pieces): Readonly<Piece>[][] {
  const groups = new Map<string, Readonly<Piece>[]>();
  for (const piece of pieces) {
    const key = piece.lot === null ? `${piece.number}` : `${piece.lot} ${piece.name}`;
    groups.set(key, [...(groups.get(key) ?? []), piece]);
  }
  return [...groups.values()];
}
