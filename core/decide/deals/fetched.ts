import { goingPrice } from "../../books/agreed.ts";
import type { Books, Piece } from "../../books/books.ts";
import type { Fact } from "../../books/facts.ts";
import { depositOf, owedByBuyers } from "../../books/shares.ts";
import type { Cents } from "../../money.ts";
import type { Mention, Reading, ReadingOf } from "../../notes/reading.ts";
import { besideName } from "../../notes/settling.ts";
import { eitherOf } from "../../notes/unclear.ts";
import { BESIDE_DEPOSIT, IS_FETCHED, PIECE_LEFT } from "../../notes/words/settling.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Desk, Looking } from "../decision.ts";
import { piecesOf } from "../echo.ts";
import { held, here } from "../pieces/fits.ts";
import { foundBy, matchMention } from "../pieces/match.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";
import { isNearAsking } from "./near-asking.ts";
import { offeredOther } from "./offered.ts";
import { owingPieces, salesOwing } from "./owing.ts";
import { isAnother, toldApart } from "./whom.ts";

/** A held piece was fetched: the sale that this makes, with what needs no asking any more. */
export interface Fetched {
  reading: ReadingOf<"sell">;
  confirmed: string[];
}

/**
 * "Picked up", "he paid the rest": of a piece on hold it is the sale. Deposit and amount that make the price agreed on
 * (the list price where none was), or no amount at all, are the whole price; anything else is asked with both totals. Null where no held piece is meant.
 */
export function fetchedOf(read: Reading, desk: Looking): Fetched | null {
  const reading = withoutPiece(read);
  if (reading.kind !== "sell" && reading.kind !== "collect") return null;
  if (
    reading.kind === "collect" &&
    salesOwing(desk.books).some((sale) => isAbout(reading, sale.pieces, desk))
  )
    return null;
  const pieces = heldMeant(reading, desk);
  const deposit = depositOf(pieces);
  if (pieces.length === 0 || (deposit === 0 && pieces.some(({ hold }) => hold!.agreed === null))) return null;
  // Another buyer than the one who left the deposit: what becomes of that is asked like of any sale.
  if (pieces.some(({ hold }) => isAnother(reading.buyer, hold?.buyer))) return null;
  const going = goingPrice(desk.books, pieces);
  const said = reading.kind === "sell" ? reading.price : reading.amount;
  if (said === undefined && going === null) return null;
  const offered = offeredOther(desk.talk?.offers, pieces, going);
  if (said === undefined && offered !== null) return { reading: unpriced(reading, pieces), confirmed: [] };
  const total = said === undefined ? going! : said + deposit;
  // Of what nobody has put a price on.
  const isBeside =
    going === null && deposit > 0 && BESIDE_DEPOSIT.test(read.text) && saysAny(read.text, PIECE_LEFT);
  const isWhole = isBeside || total === going || total === offered;
  const whole = isWhole ? total : said!;
  // Another sum is asked about, with both totals.
  if (reading.kind === "collect" && !isWhole) return null;
  const { missing, ...kept } = unpriced(reading, pieces);
  const left = missing?.filter((field) => field !== "price") ?? [];
  const sale: ReadingOf<"sell"> = {
    ...kept,
    price: whole,
    ...(left.length > 0 ? { missing: left } : {}),
    ...(isWhole ? {} : { fetched: true }),
  };
  return { reading: sale, confirmed: isWhole ? ["whole price"] : [] };
}

/** "the bookcase was collected at noon, 115 in cash" of one that is listed, and held for nobody: it was sold. */
export function soldFetched(reading: Reading, { books }: Pick<Desk, "books">): Reading | null {
  if (reading.kind !== "collect" || !reading.pieces || reading.amount === undefined) return null;
  if (!IS_FETCHED.test(reading.text)) return null;
  const pieces = (foundBy(reading.pieces, books, here) ?? []).map((number) => books.pieces.get(number)!);
  const isOffered = pieces.every(({ hold, listed, gone }) => !hold && listed !== null && gone === null);
  const going = goingPrice(books, pieces);
  const { kind: _, amount: price, ...rest } = reading;
  const isPrice = going !== null && isNearAsking(price, going);
  return pieces.length > 0 && isOffered && isPrice ? { ...rest, kind: "sell", price } : null;
}

/** The sale of what was fetched, its price still to say. */
function unpriced(
  reading: ReadingOf<"sell"> | ReadingOf<"collect">,
  pieces: readonly Readonly<Piece>[],
): ReadingOf<"sell"> {
  const { kind: _, missing = [], follows: __, ...rest } = reading as ReadingOf<"sell"> & { amount?: number };
  const { amount: ___, price: ____, ...kept } = rest;
  const left = missing.filter((field) => !["pieces", "price", "amount"].includes(field));
  const numbers = pieces.map(({ number }) => number);
  return { ...kept, kind: "sell", pieces: byNumbers(numbers), missing: [...left, "price"] };
}

/**
 * "ann paid 25" of somebody who still owes that much, for nothing named: what is owed comes in. Null where no one sale
 * of theirs is meant.
 */
export function collectedOf(reading: Reading, { books }: Pick<Desk, "books">): Reading | null {
  if (reading.kind !== "sell" || !reading.missing?.includes("pieces")) return null;
  const { buyer, price } = reading;
  if (buyer === undefined || price === undefined) return null;
  const [sale, ...others] = salesOwing(books, { buyer, amount: price });
  if (!sale || others.length > 0 || owedByBuyers(piecesOf(books, sale)) < price) return null;
  return cameIn(reading, price, owingPieces(books, sale));
}

/** What is read as a sale, as money that came in for pieces sold before. */
function cameIn(
  { kind: _, price: __, missing: ___, fee: ____, owed: _____, ...rest }: ReadingOf<"sell">,
  amount: Cents,
  pieces: readonly Readonly<Piece>[],
): Reading {
  return { ...rest, kind: "collect", amount, pieces: byNumbers(pieces.map(({ number }) => number)) };
}

/**
 * "got the 30 for the trunk" of just what is owed on a trunk: it came in. With another trunk here, "the 30" may be its
 * price as well: which of the two, only the person knows.
 */
export function owedCameIn(reading: Reading, { books }: Pick<Desk, "books">): Reading | null {
  if (reading.kind !== "sell" || !reading.isKnownSum) return null;
  const { pieces: [said, ...others] = [], price } = reading;
  if (said?.name === undefined || others.length > 0 || price === undefined) return null;
  const { name } = said;
  const isHere = [...books.pieces.values()].some((piece) => piece.name === name && piece.gone === null);
  const owing = salesOwing(books, { amount: price }).map((sale) => owingPieces(books, sale));
  const fitting = owing.filter(
    (pieces) => owedByBuyers(pieces) === price && pieces.some((piece) => piece.name === name),
  );
  if (fitting.length !== 1) return null;
  const came = cameIn(reading, price, fitting[0]!);
  const { isKnownSum: _, ...sale } = reading;
  return isHere ? eitherOf([came, sale], reading) : came;
}

/** "greg changed his mind": the only piece on hold, of those held for whoever is named. */
export function backedOutOf(reading: Reading, { books }: Pick<Desk, "books">): Reading | null {
  if (reading.kind !== "fallthrough" || !reading.missing?.includes("pieces")) return null;
  const buyer = toldApart(("buyer" in reading ? reading.buyer : undefined) as string | undefined);
  const all = [...books.pieces.values()].filter((piece) => held.allows(piece) && piece.gone === null);
  const theirs = all.filter(({ hold }) => buyer === undefined || hold?.buyer === buyer);
  const [first] = theirs;
  if (!first || theirs.some(({ lot }) => theirs.length > 1 && (lot === null || lot !== first.lot)))
    return null;
  const missing = reading.missing.filter((field) => field !== "pieces");
  return { ...reading, pieces: byNumbers(theirs.map(({ number }) => number)), missing } as Reading;
}

/** "gave her 40 back on the hutch": of a hutch that is held for just that deposit its buyer is out; null else. */
export function depositBack(reading: Reading, { books }: Pick<Desk, "books">): Reading | null {
  if (reading.kind !== "refund" || !reading.pieces || reading.returned || reading.unpaid) return null;
  const numbers = foundBy(reading.pieces, books, held);
  if (!numbers) return null;
  const deposit = depositOf(numbersHeld(numbers, books));
  const isAll = reading.inFull === true || reading.amount === deposit;
  if (deposit === 0 || !isAll) return null;
  const { amount: _, missing: __, inFull: ___, ...rest } = reading;
  return { ...rest, kind: "fallthrough", pieces: byNumbers(numbers), refunded: deposit } as Reading;
}

/** "bought" with nobody told of who did is what we did, and the name of it is missing. */
export const isOurPurchase = ({ kind, text }: Reading): boolean => kind === "buy" && /\bbought\b/i.test(text);

/** "picked up, 120 cash" names nothing bought: of a held piece it is the sale. */
function withoutPiece(reading: Reading): Reading {
  if (reading.kind !== "buy" || !reading.missing?.includes("pieces") || isOurPurchase(reading))
    return reading;
  const { source: _, ...rest } = reading;
  return { ...rest, kind: "sell" };
}

/** Whether words that nobody knows are just whoever bought what comes back ("gwen"). */
export function isPastBuyer(
  left: readonly string[],
  could: readonly Reading[],
  { books, talk }: Looking,
): boolean {
  const isBack = could.every((each) => each.kind === "refund");
  // "rita brought it back": what was spoken of was sold to her.
  const isOfIt = could.some((each) => mentionsOf(each).length === 0);
  const spoken = talk?.replied ?? talk?.latest ?? [];
  const sales = isOfIt ? salesOf(spoken, books) : books.facts;
  const buyers = new Set(sales.map((fact) => (fact.kind === "sell" ? fact.data.buyer : undefined)));
  return isBack && left.length > 0 && left.every((word) => buyers.has(word));
}

const salesOf = (numbers: readonly number[], { facts }: Books): Fact[] =>
  facts.filter(({ kind, pieces }) => kind === "sell" && pieces.join() === numbers.join());

/** "had to give rita 25 back": of the one sale to somebody who was taken for a piece; null where there is no one such sale. */
export function refundedTo(reading: Reading, { books }: Pick<Desk, "books">): Reading | null {
  if (reading.kind !== "refund") return null;
  const [said, ...others] = reading.pieces ?? [];
  if (said?.traits || said?.number !== undefined || others.length > 0) return null;
  const isOpen = !said && !reading.follows;
  const name = isOpen ? besideName(reading.text, buyersOf(books)).who : said?.name;
  if (name === undefined || [...books.pieces.values()].some((piece) => piece.name === name)) return null;
  const sales = books.facts.filter(
    (fact) =>
      fact.kind === "sell" &&
      fact.data.buyer === name &&
      fact.pieces.every((each) => books.pieces.get(each)!.gone === "sold"),
  );
  if (sales.length !== 1) return null;
  const missing = reading.missing?.filter((field) => field !== "pieces") ?? [];
  return { ...reading, pieces: byNumbers(sales[0]!.pieces), missing };
}

/** Who has bought something, longest names first. */
const buyersOf = ({ facts }: Books): string[] =>
  facts
    .flatMap((fact) => (fact.kind === "sell" && fact.data.buyer ? [fact.data.buyer] : []))
    .sort((a, b) => b.length - a.length);

/** Whether words that nobody knows are just who left a deposit ("nell"), who never buys for us. */
export function isHolder(
  left: readonly string[],
  could: readonly Reading[],
  { books }: Pick<Desk, "books">,
): boolean {
  if (could.some(({ kind }) => kind === "buy")) return false;
  const holders = new Set([...books.pieces.values()].map(({ hold }) => hold?.buyer));
  return left.length > 0 && left.every((word) => holders.has(word));
}

function isAbout(
  { pieces }: ReadingOf<"collect">,
  sold: readonly number[],
  { books }: Pick<Desk, "books">,
): boolean {
  if (!pieces || pieces.length === 0) return true;
  return pieces.some(({ number, name }) =>
    sold.some((piece) => number === piece || books.pieces.get(piece)?.name === name),
  );
}

/** The held pieces that a reading names, or that the talk leaves: the last one spoken of, else the only one on hold. */
function heldMeant(reading: ReadingOf<"sell"> | ReadingOf<"collect">, desk: Looking): Readonly<Piece>[] {
  const { books, talk } = desk;
  const mentions: Mention[] = (reading.pieces ?? []).filter(({ it }) => !it);
  if (mentions.length > 0) {
    const matches = mentions.map((mention) => matchMention(mention, books, held, new Set()));
    return matches.every((match) => match.kind === "found")
      ? numbersHeld(
          matches.flatMap(({ pieces }) => pieces),
          books,
        )
      : [];
  }
  for (const spoken of [talk?.replied, talk?.latest])
    if (spoken && numbersHeld(spoken, books).length === spoken.length) return numbersHeld(spoken, books);
  const all = [...books.pieces.values()].filter((piece) => held.allows(piece) && piece.gone === null);
  const isOne = all.every((piece) => piece.lot !== null && piece.lot === all[0]!.lot) || all.length === 1;
  return isOne ? all : [];
}

function numbersHeld(numbers: readonly number[], books: Books): Readonly<Piece>[] {
  return numbers.flatMap((number) => {
    const piece = books.pieces.get(number);
    return piece && held.allows(piece) && piece.gone === null ? [piece] : [];
  });
}
