import type { Books, Piece } from "../books/books.ts";
import { depositOf, listPriceOf, owedByBuyers } from "../books/shares.ts";
import type { Day } from "../calendar.ts";
import type { Mention, Reading, ReadingOf } from "../notes/reading.ts";
import { type Settling, settlingIn, type Told } from "../notes/settling.ts";
import { whyOf } from "../notes/unclear.ts";
import {
  ALL_OF_IT,
  BACKS_OUT,
  FETCHED,
  FROM_THEM,
  GIVES_BACK,
  KEEPS_IT,
  MORE_OF_IT,
  NEVER_PAYS,
  PAID_IN,
} from "../notes/words/settling.ts";
import { matchMention } from "./match.ts";
import { byNumbers, mentionsOf } from "./mentioned.ts";
import { owingPieces, salesOwing } from "./owing.ts";

/*
 * Messages about somebody who is on the books already, as one who owes or who holds a piece: "got 25 from gus", "priya
 * picked it up, paid the other 300", "sol is out".
 */

interface Said {
  books: Books;
  today: Day;
  /** The pieces of the newest note. */
  recent: readonly number[];
}

/** Pieces that one person owes on, or holds. */
interface Dealing {
  of: "owed" | "held";
  pieces: readonly Readonly<Piece>[];
}

/** The readings of a message about a buyer on the books; null where it may say anything else. */
export function ofKnownBuyer(text: string, readings: readonly Reading[], said: Said): Reading[] | null {
  const { books, today } = said;
  if (!readings.some((reading) => isOpen(reading) || isOfName(reading, books))) return null;
  const settling = settlingIn(text, namesOn(books), today);
  const read = settling && readFrom(settling, said);
  return read ?? (readings.some(tellsOfLoss) ? null : asksAtLast(text, said));
}

/** "vera can't make the stairs work, gave her 60 back": what is told at the end, asked, since nobody knows the rest. */
function asksAtLast(text: string, said: Said): Reading[] | null {
  const names = namesOn(said.books);
  const who = names.find((name) => text.toLowerCase().startsWith(name));
  const [first, ...rest] = text.split(/[,.;] /);
  const last = rest.at(-1);
  const settling = who && last ? settlingIn(`${who} ${last}`, names, said.today) : null;
  const could = settling && readFrom(settling, said);
  if (!who || !could || could.some(({ kind }) => kind !== "fallthrough")) return null;
  const left = first!.slice(who.length).trim();
  return [{ kind: "unclear", why: whyOf({ kind: "left" }), could, left: [left], text, line: 0 }];
}

const tellsOfLoss = (reading: Reading): boolean =>
  reading.kind === "fallthrough" ||
  (reading.kind === "unclear" && reading.could?.some(({ kind }) => kind === "fallthrough") === true);

/** It is not read as a whole note of its own, or names no piece. */
const isOpen = (reading: Reading): boolean =>
  (reading.kind === "unclear" && !isForBooks(reading)) ||
  reading.missing !== undefined ||
  reading.follows === true ||
  (reading.kind === "collect" && !reading.pieces);

/** "denise came and got the trunk": the books settle what the piece makes of it. */
const isForBooks = ({ byBooks, could = [] }: ReadingOf<"unclear">): boolean =>
  byBooks === true && could.some((each) => mentionsOf(each).length > 0);

/** "gave sol his 25 back": somebody on the books was taken for a piece. */
const isOfName = (reading: Reading, books: Books): boolean =>
  mentionsOf(reading).some(
    ({ name }) => name !== undefined && !isPiece(name, books) && namesOn(books).includes(name),
  );

function isPiece(name: string, { pieces }: Books): boolean {
  for (const piece of pieces.values()) if (piece.name === name) return true;
  return false;
}

function readFrom({ told, text, after }: Settling, { books, recent }: Said): Reading[] | null {
  const dealings = dealingsOf(told, books);
  const latest = dealings.filter(({ pieces }) => pieces.some(({ number }) => recent.includes(number)));
  const meant = told.who === undefined && latest.length === 1 ? latest : dealings;
  const could = meant.flatMap((dealing) => readingsOf(told, dealing, text));
  const [only, ...others] = could;
  if (!only) return null;
  if (others.length > 0)
    return after.length > 0
      ? null
      : [{ kind: "unclear", why: whyOf({ kind: "eitherOf" }), could, text, line: 0 }];
  return after.length > 0 && only.kind !== "fallthrough" ? null : [only, ...after];
}

/** Who owes something or holds a piece, longest names first. */
function namesOn(books: Books): string[] {
  const holders = [...books.pieces.values()].flatMap(({ hold }) => hold?.buyer ?? []);
  const owing = salesOwing(books).flatMap(({ data }) => data.buyer ?? []);
  return [...new Set([...holders, ...owing])].sort((a, b) => b.length - a.length);
}

function dealingsOf({ who, mention, isTheirs }: Told, books: Books): Dealing[] {
  const all: (Dealing & { buyer?: string | null | undefined })[] = salesOwing(books).map((sale) => ({
    of: "owed",
    pieces: owingPieces(books, sale),
    buyer: sale.data.buyer,
  }));
  for (const piece of books.pieces.values()) {
    if (!piece.hold || piece.gone !== null) continue;
    const beside = all.find(({ of, pieces }) => of === "held" && isOneHold(pieces[0]!, piece));
    if (beside) beside.pieces = [...beside.pieces, piece];
    else all.push({ of: "held", pieces: [piece], buyer: piece.hold.buyer });
  }
  const isMeant = ({ pieces }: Dealing): boolean => {
    if (!mention) return isTheirs;
    const fit = { allows: (piece: Readonly<Piece>) => pieces.includes(piece) };
    return matchMention(mention, books, fit, new Set()).kind === "found";
  };
  return all.filter((dealing) => (who === undefined || dealing.buyer === who) && isMeant(dealing));
}

const isOneHold = (one: Readonly<Piece>, other: Readonly<Piece>): boolean =>
  one.lot !== null && one.lot === other.lot && one.hold?.buyer === other.hold?.buyer;

function readingsOf(told: Told, { of, pieces }: Dealing, text: string): Reading[] {
  const { says, method, date } = told;
  const place = { pieces: byNumbers(pieces.map(({ number }) => number)), text, line: 0 };
  const at = { ...place, ...(date ? { date } : {}) };
  const paid = { ...at, ...(method ? { method } : {}) };
  const isLost = [BACKS_OUT, GIVES_BACK, KEEPS_IT].some((words) => says.has(words));
  if (of === "held") {
    if (isLost) return says.has(NEVER_PAYS) ? [] : backsOut(told, pieces, at);
    return says.has(NEVER_PAYS) ? [] : paysForHeld(told, pieces, paid);
  }
  if (isLost || says.has(FETCHED)) return [];
  return says.has(NEVER_PAYS) ? neverPays(told, pieces, at) : paysWhatIsOwed(told, pieces, paid);
}

type Place = Pick<Reading, "text" | "line" | "date"> & { pieces: Mention[]; method?: string };
type Pieces = Dealing["pieces"];

/** "sol is out, gave him his 25 back", "kept her deposit" */
function backsOut({ who, says, amounts }: Told, pieces: Pieces, at: Place): Reading[] {
  const [amount, ...others] = amounts;
  if (who === undefined || others.length > 0) return [];
  const isBack = says.has(GIVES_BACK);
  if (isBack === says.has(KEEPS_IT) && (isBack || amount !== undefined)) return [];
  const sum = amount ?? depositOf(pieces);
  const told = isBack ? { refunded: sum } : says.has(KEEPS_IT) ? { kept: sum } : {};
  return [{ kind: "fallthrough", ...told, ...at }];
}

/** "priya picked it up, paid the other 300": sold; "another 35 from the neighbor": more of a deposit. */
function paysForHeld({ says, amounts }: Told, pieces: Pieces, paid: Place): Reading[] {
  const [amount, ...others] = amounts;
  const isFetched = says.has(FETCHED);
  if (others.length > 0 || !(isFetched || says.has(PAID_IN) || says.has(FROM_THEM))) return [];
  const listed = listPriceOf(pieces);
  const isRest = says.has(ALL_OF_IT);
  const isWhole = listed !== null && (amount === undefined || amount + depositOf(pieces) === listed);
  if (isWhole && (isFetched || isRest)) return [{ kind: "sell", price: listed, ...paid }];
  if (amount === undefined) return [];
  const sale: Reading = { kind: "sell", price: amount, fetched: true, ...paid };
  if (isFetched || isRest) return [sale];
  const more: Reading = { kind: "hold", deposit: amount, ...paid };
  return says.has(MORE_OF_IT) ? [more] : [more, sale];
}

/** "got 25 from gus", "the cafe paid up" */
function paysWhatIsOwed({ says, amounts }: Told, pieces: Pieces, paid: Place): Reading[] {
  const owed = owedByBuyers(pieces);
  const [amount, of, ...others] = amounts;
  if (others.length > 0 || (of !== undefined && of !== owed)) return [];
  if (!says.has(PAID_IN) && (amount === undefined || !says.has(FROM_THEM))) return [];
  const sum = amount ?? (says.has(ALL_OF_IT) ? owed : undefined);
  return [{ kind: "collect", ...(sum === undefined ? {} : { amount: sum }), ...paid }];
}

function neverPays({ says, amounts }: Told, pieces: Pieces, at: Place): Reading[] {
  const [amount, ...others] = amounts;
  if (amount === undefined && !says.has(PAID_IN)) return [];
  if (others.length > 0 || (amount !== undefined && amount > owedByBuyers(pieces))) return [];
  return [{ kind: "refund", unpaid: true, ...(amount === undefined ? {} : { amount }), ...at }];
}
