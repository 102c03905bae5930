import { agreedTogether, goingPrice } from "../../books/agreed.ts";
import type { Books, Piece } from "../../books/books.ts";
import { depositOf, owedByBuyers } from "../../books/shares.ts";
import { addDays, type Day, weekdayOf } from "../../calendar.ts";
import type { Reading } from "../../notes/reading.ts";
import { type Settling, settlingsIn, type Told } from "../../notes/settling.ts";
import { couldOf, eitherOf, isFor } from "../../notes/unclear.ts";
import { OPENS_ASKING, PIECE_LEFT, TELLS_VISIT } from "../../notes/words/settling.ts";
import { saysAny } from "../../notes/words/words.ts";
import { backsOut, type Pieces, type Place, paidOtherwise, paysForHeld } from "../deals/held-settled.ts";
import { owingPieces, salesOwing } from "../deals/owing.ts";
import { paidByAll, paidForEach } from "../deals/paid-by-all.ts";
import { isPromised } from "../deals/promised.ts";
import type { Talk } from "../decision.ts";
import { matchMention } from "../pieces/match.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";

/*
 * Messages about somebody who is on the books already, as one who owes or who holds a piece: "got 25 from gus", "priya
 * picked it up, paid the other 300", "sol is out".
 */

interface Said {
  books: Books;
  today: Day;
  /** The pieces of the newest note. */
  recent: readonly number[];
  /** What was offered for pieces and is still open. */
  talk?: Pick<Talk, "offers">;
}

/** Pieces that one person owes on, or holds. */
interface Dealing {
  of: "owed" | "held";
  pieces: readonly Readonly<Piece>[];
}

/** The readings of a message about a buyer on the books; null where it may say anything else. */
export function ofKnownBuyer(text: string, readings: readonly Reading[], said: Said): Reading[] | null {
  const { books, today } = said;
  // "teo paid 40 to his dentist" is no money for us.
  if (readings.every((reading) => isFor(reading, "other"))) return null;
  // "she'll take it friday", "nell takes it friday": it is not theirs yet.
  if (isPromised(text)) return null;
  const names = namesOn(books);
  const all = readings.length === 1 && !text.includes("?") ? paidByAll(text, said) : null;
  if (all) return all;
  const each = text.includes("?") ? null : paidForEach(text, names, said);
  if (each) return each;
  // "amy came" tells of nothing by itself.
  const isOpen =
    readings.some((reading) => isOpenTo(reading, text)) || (readings.length === 0 && TELLS_VISIT.test(text));
  if (!isOpen && !readings.some((reading) => isOfName(reading, books, names))) return null;
  for (const settling of settlingsIn(text, names, today)) {
    if (settling.told.who === undefined && readings.length > 0 && readings.every(isForBooks)) continue;
    const read = readFrom(settling, said, readings);
    if (read) return read;
  }
  return paidOtherwise(text, readings, books);
}

/** It is not read as a whole note of its own, or the piece left, of which it tells another thing. */
function isOpenTo(reading: Reading, text: string): boolean {
  if (reading.kind === "unclear" || saysLittle(reading)) return true;
  if (reading.kind === "ask") return !OPENS_ASKING.test(text);
  return IS_OF_HELD.has(reading.kind) && mentionsOf(reading).length > 0 && saysAny(text, PIECE_LEFT);
}

/** Notes as which it may be read that a held piece left. */
const IS_OF_HELD: ReadonlySet<Reading["kind"]> = new Set(["hold", "reprice", "collect"]);

const tellsOfLoss = (reading: Reading): boolean =>
  [reading, ...couldOf(reading)].some(({ kind }) => kind === "fallthrough");

/** It is not read as a whole note of its own, or names no piece. */
const saysLittle = (reading: Reading): boolean =>
  reading.missing !== undefined ||
  reading.follows === true ||
  (reading.kind === "collect" && !reading.pieces);

/** "denise came and got the trunk": the books settle what the piece makes of it. */
const isForBooks = (reading: Reading): boolean =>
  reading.kind === "unclear" &&
  reading.byBooks === true &&
  couldOf(reading).some((each) => mentionsOf(each).length > 0);

/** "gave sol his 25 back", "got dana's last 100": somebody on the books was taken for a piece, or for a part of a name. */
function isOfName(reading: Reading, books: Books, names: readonly string[]): boolean {
  const isNamed = (words: string): boolean =>
    words
      .split(" ")
      .some((word) => names.includes(word) || (word.endsWith("s") && names.includes(word.slice(0, -1))));
  const all = [reading, ...couldOf(reading)];
  return all.some((each) => {
    const { buyer } = each as { buyer?: string };
    if (buyer !== undefined && !names.includes(buyer) && isNamed(buyer)) return true;
    return mentionsOf(each).some(
      ({ name, traits = [] }) =>
        name !== undefined && !isPiece(name, books) && isNamed([...traits, name].join(" ")),
    );
  });
}

function isPiece(name: string, { pieces }: Books): boolean {
  for (const piece of pieces.values()) if (piece.name === name) return true;
  return false;
}

function readFrom(
  { told, text, after }: Settling,
  { books, recent, today, talk = {} }: Said,
  readings: readonly Reading[],
): Reading[] | null {
  const dealings = dealingsOf(told, books);
  const latest = dealings.filter(({ pieces }) => pieces.some(({ number }) => recent.includes(number)));
  const meant = told.who === undefined && latest.length === 1 ? latest : dealings;
  // "she passed" of the one hold that was spoken of last, "dude ghosted on the desk, his 30 is mine now" of the one on it.
  const isSettled = told.mention !== undefined && (told.says.has("back") || told.says.has("kept"));
  const isOne = latest.length === 1 || (isSettled && meant.length === 1);
  const isOfOne = told.who !== undefined || ((told.says.has("payer") || told.isTheirs) && isOne);
  const even = meant.length === 1 && after.length === 0 ? calledEven(told, meant[0]!, text) : null;
  if (even) return even;
  const could = meant.flatMap((dealing) => readingsOf(told, dealing, text, isOfOne, { books, talk, today }));
  const [only, ...others] = could;
  if (!only) return null;
  const left = told.left.filter(
    (word) => !meant.some(({ pieces }) => pieces.some(({ name }) => name === word)),
  );
  // "vera can't make the stairs work, gave her 60 back": the rest of it is told by no word of these.
  if (left.length > 0) {
    const isSure = others.length === 0 && after.length === 0 && saysMuch(only, told);
    return isSure && !readings.some(tellsOfLoss)
      ? [{ ...eitherOf(could, { text, line: 0 }, "left"), left }]
      : null;
  }
  // Only of a piece that is free again something more can be told; other notes stand by themselves.
  const goesOn = after.some(({ follows, kind }) => follows === true || !STANDS_ALONE.has(kind));
  if (others.length > 0) return goesOn ? null : [eitherOf(could, { text, line: 0 }), ...after];
  return goesOn && only.kind !== "fallthrough" ? null : [only, ...after];
}

/** Notes that say nothing of a piece spoken of before them. */
const STANDS_ALONE: ReadonlySet<Reading["kind"]> = new Set(["spend", "pay", "drive", "income"]);

/** Whether it would be told by what it says, whatever the other words mean. */
const saysMuch = (reading: Reading, { amounts, says, isDoubtful }: Told): boolean =>
  reading.kind === "fallthrough"
    ? says.has("back") || says.has("kept")
    : amounts.length === 1 && !reading.missing && !isDoubtful;

/** Who owes something or holds a piece, longest names first. */
function namesOn(books: Books): string[] {
  const names = new Set<string>();
  for (const { hold } of books.pieces.values()) if (hold?.buyer) names.add(hold.buyer);
  for (const { data } of salesOwing(books)) if (data.buyer) names.add(data.buyer);
  return [...names].sort((a, b) => b.length - a.length);
}

function dealingsOf({ who, mention, isTheirs, left }: Told, books: Books): Dealing[] {
  const all: (Dealing & { buyer?: string | null | undefined })[] = salesOwing(books).map((sale) => ({
    of: "owed",
    pieces: owingPieces(books, sale),
    buyer: sale.data.buyer,
  }));
  for (const piece of books.pieces.values()) {
    if (!piece.hold || piece.gone !== null) continue;
    const beside = all.find(({ of, pieces }) => of === "held" && isOneHold(pieces[0]!, piece, books));
    if (beside) beside.pieces = [...beside.pieces, piece];
    else all.push({ of: "held", pieces: [piece], buyer: piece.hold.buyer });
  }
  // A piece may go by a word that nobody listed.
  const named = all.filter(({ pieces }) => pieces.some(({ name }) => left.includes(name)));
  const theirs = all.filter(({ buyer }) => who === undefined || buyer === who);
  if (!mention) return theirs.filter((each) => isTheirs && (named.length === 0 || named.includes(each)));
  return theirs.flatMap((dealing) => {
    const { of, pieces } = dealing;
    const fit = { allows: (piece: Readonly<Piece>) => pieces.includes(piece) };
    const match = matchMention(mention, books, fit, new Set());
    if (match.kind !== "found") return [];
    // "kim picked up one of the chairs" of two that are held for her.
    return of === "owed"
      ? [dealing]
      : [{ of, pieces: pieces.filter(({ number }) => match.pieces.includes(number)) }];
  });
}

const isOneHold = (one: Readonly<Piece>, other: Readonly<Piece>, books: Books): boolean =>
  one.hold?.buyer === other.hold?.buyer &&
  ((one.lot !== null && one.lot === other.lot) || agreedTogether(books, one).includes(other.number));

function readingsOf(
  told: Told,
  { of, pieces }: Dealing,
  text: string,
  isOfOne: boolean,
  desk: Pick<Said, "books" | "talk" | "today">,
): Reading[] {
  const { says, method, date } = told;
  const place = { pieces: byNumbers(pieces.map(({ number }) => number)), text, line: 0 };
  const at = { ...place, ...(date ? { date } : {}) };
  const paid = { ...at, ...(method ? { method } : {}) };
  const isLost = says.has("out") || says.has("back") || says.has("kept");
  if (says.has("week")) return of === "held" ? nextWeek(told, place, desk.today) : [];
  if (says.has("comes") || says.has("moved"))
    return of === "held" ? keptUntil(told, pieces, place, isOfOne, desk.books) : [];
  if (of === "held") {
    if (isLost) return says.has("never") ? [] : isOfOne ? backsOut(told, pieces, at) : [];
    return says.has("never") ? [] : paysForHeld(told, pieces, paid, desk);
  }
  if (isLost || says.has("fetched")) return [];
  return says.has("never") ? neverPays(told, pieces, at) : paysWhatIsOwed(told, pieces, paid);
}

/** "can't come till next week": its first day, or its last. */
function nextWeek({ who, amounts }: Told, place: Place, today: Day): Reading[] {
  if (amounts.length > 0) return [];
  const whom = who === undefined ? {} : { buyer: who };
  const monday = addDays(today, 7 - ((weekdayOf(today) + 6) % 7));
  return [addDays(monday, 6), monday].map((until) => ({ kind: "hold", until, ...whom, ...place }));
}

/** Until when they have it kept; "paid 60, the rest sunday": with that put down. */
function keptUntil(told: Told, pieces: Pieces, place: Place, isOfOne: boolean, books: Books): Reading[] {
  const { says, amounts, until, who, method } = told;
  const [deposit, ...others] = amounts;
  const left = (goingPrice(books, pieces) ?? Number.POSITIVE_INFINITY) - depositOf(pieces);
  const isSum = deposit !== undefined && others.length === 0 && deposit < left;
  const isPaid = isSum && isOfOne && (says.has("paid") || says.has("down"));
  if (deposit === undefined ? !isOtherDay(told, pieces) : !isPaid || until === undefined) return [];
  const whom = who === undefined ? {} : { buyer: who };
  const paid = deposit === undefined ? {} : { deposit, ...(method ? { method } : {}) };
  return [{ kind: "hold", ...paid, until: until!, ...whom, ...place }];
}

/** "nell now comes saturday", "nell comes saturday" where she had said another day: kept for her until then. */
const isOtherDay = ({ says, until }: Told, pieces: Pieces): boolean =>
  until !== undefined &&
  (says.has("moved") || pieces.some(({ hold }) => hold?.until && hold.until !== until));

/** "got 25 from gus", "the cafe paid up" */
function paysWhatIsOwed({ says, amounts }: Told, pieces: Pieces, paid: Place): Reading[] {
  if (says.has("later")) return [];
  const owed = owedByBuyers(pieces);
  const [amount, of, ...others] = amounts;
  // "20 of the 60", "another 20 from dana, 40 to go"
  const isOfOwed = of === undefined || of === owed || (amount !== undefined && amount + of === owed);
  if (others.length > 0 || !isOfOwed) return [];
  if (!says.has("paid") && (amount === undefined || !(says.has("from") || says.has("all")))) return [];
  const sum = amount ?? (says.has("half") ? Math.round(owed / 2) : says.has("all") ? owed : undefined);
  return [{ kind: "collect", ...(sum === undefined ? {} : { amount: sum }), ...paid }];
}

/** "only had 50, called it even", "paid 50, forget the rest": that came in of what is owed, and the rest never will. */
function calledEven(
  { says, amounts, left, method, date }: Told,
  { of, pieces }: Dealing,
  text: string,
): Reading[] | null {
  const [amount, ...others] = amounts;
  const owed = of === "owed" ? owedByBuyers(pieces) : 0;
  const isLetGo = says.has("never") || says.has("forgiven");
  const isPart = says.has("had") || says.has("short") || says.has("paid");
  if (!isLetGo || !isPart || amount === undefined || amount >= owed || others.length + left.length > 0)
    return null;
  const came = says.has("short") ? owed - amount : amount;
  const place = { pieces: byNumbers(pieces.map(({ number }) => number)), text, line: 0 };
  const at = { ...place, ...(date ? { date } : {}) };
  return [
    { kind: "collect", amount: came, ...at, ...(method ? { method } : {}) },
    { kind: "refund", unpaid: true, amount: owed - came, ...at },
  ];
}

function neverPays({ says, amounts }: Told, pieces: Pieces, at: Place): Reading[] {
  const [amount, ...others] = amounts;
  if (amount === undefined && !says.has("paid")) return [];
  // "isnt paying the 30 today": another day, maybe.
  if (others.length > 0 || at.date || (amount !== undefined && amount > owedByBuyers(pieces))) return [];
  return [{ kind: "refund", unpaid: true, ...(amount === undefined ? {} : { amount }), ...at }];
}
