import { goingPrice } from "../../books/agreed.ts";
import type { Piece } from "../../books/books.ts";
import { costOf } from "../../books/piece.ts";
import { depositOf, listPriceOf } from "../../books/shares.ts";
import type { Cents } from "../../money.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { type Summed, type SumSaid, summedIn } from "../../notes/second-look/known-sums.ts";
import { pieceCount } from "../../notes/slots/money.ts";
import { anyOf, couldOf, eitherOf, isRefused, isWholeNote } from "../../notes/unclear.ts";
import { IN_A_ROW, type Known, PART_OF_ONE } from "../../notes/words/known-sums.ts";
import type { Desk } from "../decision.ts";
import { recordedPieces } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";
import { inTotals, toldOf } from "./equations.ts";
import type { Deciding } from "./whole.ts";

/*
 * Several sums in a message, and the books know all but one of them: "two wanted it so it went for 95, had it at 80" of a
 * chair at 80. Words that tell what a sum is, and that sum in the books, are enough together; neither is alone.
 */

/** How the rest of a message is read, and decided. */
export interface Reader {
  read(rest: string): readonly Reading[];
  /** A reading as the books and the talk leave it. */
  meant(reading: Reading): Reading;
  deciding: Deciding;
}

/**
 * What a message says once the sums that the books know are left out: recorded where the rest is whole, asked about where
 * it is not. Null where that settles nothing.
 */
export function besideKnownSums(
  text: string,
  readings: readonly Reading[],
  desk: Omit<Desk, "confirmed">,
  reader: Reader,
): readonly Reading[] | null {
  // Nearly every message is read as it stands, and is spared the rest.
  if (readings.every(isWholeNote) || text.includes("?") || /[\n\r]/.test(text)) return null;
  const summed = summedIn(text);
  if (!summed || readings.every((reading) => isWholeNote(reader.meant(reading)))) return null;
  const asked: { read: Reading[]; doubt: number }[] = [];
  const found: Reading[][] = [];
  const choices = choicesOf(summed.sums, knownHere(desk));
  const may = new Set(choices.flat());
  let size = 0;
  for (const out of choices) {
    // What leaves the fewest sums out holds, where it is one.
    if (found.length > 0 && out.length > size) break;
    size = out.length;
    const kept = summed.sums.filter((sum) => !out.includes(sum)).map(({ cents }) => cents);
    for (const rest of summed.without(out)) {
      const read = reader.read(rest);
      const settled = settledBy(read, { kept, out, desk, reader });
      const told = read.map((reading) => ({ ...reading, ...saidBeside(reading, out), text }) as Reading);
      if (settled === "asked")
        asked.push({
          read: told,
          doubt: summed.sums.filter((sum) => !out.includes(sum) && may.has(sum)).length,
        });
      if (settled !== "whole") continue;
      found.push(eachInOrder(told, { kept, out, desk, reader }) ?? told);
      break;
    }
  }
  const [first] = found;
  if (first && found.some((other) => !isSame(other, first))) return eitherSum(found, text) ?? first;
  const parted =
    first ?? inParts(text, summed, { kept: [], out: [], desk, reader }) ?? asTotal(text, summed, reader);
  // What is asked is asked with the sum that is likeliest none of the others.
  return parted ?? asked.sort((one, other) => one.doubt - other.doubt)[0]?.read ?? null;
}

/** "two came, 14 and 6, 20 in all": as many parts as pieces are the price of each. */
function eachInOrder(told: Reading[], of: Case): Reading[] | null {
  const [reading, ...others] = told;
  const parts = of.out.filter((sum) => toldOf(sum, of.kept, of.out) === "part");
  if (!reading || others.length > 0 || parts.length < 2 || !isPriced(reading, of.kept[0]!)) return null;
  const isOfOne = parts.some(({ said, isOwed }) => isOwed || PART_OF_ONE.test(said));
  return isOfOne ? null : priced(reading, parts, of);
}

/** A note of each piece at its own price, where there are as many of both; null where there are not. */
function priced(reading: Reading, prices: readonly SumSaid[], of: Case): Reading[] | null {
  const mentions = mentionsOf(reading);
  const [only, ...others] = mentions;
  const alone = (): Mention[] =>
    reading.kind === "buy" && only?.count === prices.length && others.length === 0
      ? prices.map(() => ({ ...only, count: 1 }))
      : byNumbers(piecesOf(reading, of).map(({ number }) => number));
  const each =
    mentions.length === prices.length && mentions.every(({ count }) => count === 1) ? mentions : alone();
  if (each.length !== prices.length || each.length < 2) return null;
  return each.map((piece, at) => ({ ...reading, pieces: [piece], price: prices[at]!.cents }) as Reading);
}

/** "Register said 52.30, thats 46.70 for hinges and 5.60 tax": the first of the parts says what it was, and the total how much. */
function asTotal(text: string, summed: Summed, reader: Reader): Reading[] | null {
  for (const total of summed.sums) {
    const parts = summed.sums.filter((sum) => sum !== total);
    if (
      parts.length < 2 ||
      parts.some((part) => toldOf(part, [total.cents], parts) !== "part" || part.isOwed)
    )
      continue;
    for (const rest of summed.without([total, ...parts.slice(1)])) {
      const read = reader.read(rest).map((reading) => reader.meant(reading));
      const [reading, ...others] = read;
      if (!reading || others.length > 0 || reading.kind !== "spend" || reading.amount !== parts[0]!.cents)
        continue;
      if (isWholeNote(reading)) return [{ ...reading, amount: total.cents, text }];
    }
  }
  return null;
}

const isSame = (one: readonly Reading[], other: readonly Reading[]): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** Which of the sums it was, where each may be; null where it is no one note. */
function eitherSum(found: readonly (readonly Reading[])[], text: string): Reading[] | null {
  const notes = found.flatMap(([reading, ...more]) => (more.length === 0 ? (reading ?? []) : []));
  return notes.length === found.length ? [eitherOf(notes, { text, line: 0 }, "twoNumbers")] : null;
}

/** What was said beside the price: what it cost, so that it needs no asking that it is less, and what is still owed. */
function saidBeside({ kind }: Reading, out: readonly SumSaid[]): { costSaid?: true; owed?: Cents } {
  if (kind !== "sell") return {};
  const owed = out.find(({ isOwed }) => isOwed);
  return {
    ...(out.some(({ known }) => known.has("cost")) ? { costSaid: true } : {}),
    ...(owed ? { owed: owed.cents } : {}),
  };
}

/**
 * Several sums side by side of which none is the whole: one price in parts ("65 cash and the other 100 by transfer"), or
 * the prices of several pieces in their order ("lamp and bench sold for 25 and 60").
 */
function inParts(text: string, summed: Summed, of: Case): Reading[] | null {
  const { sums } = summed;
  const total = sums.reduce((sum, { cents }) => sum + cents, 0);
  if (!summed.isRow) return null;
  const isRow = sums.slice(1).every(({ said, isOwed }) => !isOwed && IN_A_ROW.test(said));
  const isOfOne = sums.slice(1).every(({ said, isOwed }) => isOwed || PART_OF_ONE.test(said));
  if (!isRow && !isOfOne) return null;
  for (const rest of summed.asOne(total)) {
    const [reading, ...others] = of.reader.read(rest).map((each) => of.reader.meant(each));
    if (!reading || others.length > 0 || !isWholeNote(reading) || !isPriced(reading, total)) continue;
    const each = isRow ? priced({ ...reading, text }, sums, of) : null;
    if (each) return each;
    const pieces = piecesOf(reading, of);
    if (!isOfOne || mentionsOf(reading).length !== 1) continue;
    const owed = sums.find(({ isOwed }) => isOwed);
    const whole = { ...reading, ...saidBeside(reading, sums), text } as Reading;
    const isPaidInWays = sums.every(({ said }) => PAID_BY.test(said));
    if (isPaidInWays || figuresOf(pieces, of.desk).listed?.includes(total))
      return owed && reading.kind !== "sell" ? null : [whole];
  }
  return null;
}

const PAID_BY = /\b(?:cash|check|cheque|card|transfer)\b/;

const isPriced = (reading: Reading, price: Cents): boolean =>
  (reading.kind === "sell" || reading.kind === "list" || reading.kind === "buy") && reading.price === price;

type Figures = Partial<Record<Known, readonly Cents[]>>;

/** What the books have of some pieces together, by what it is. */
function figuresOf(pieces: readonly Readonly<Piece>[], { books, past }: Omit<Desk, "confirmed">): Figures {
  const deposit = depositOf(pieces);
  const going = goingPrice(books, pieces);
  const paid = pieces.reduce((sum, piece) => sum + piece.price, 0);
  const cost = pieces.reduce((sum, piece) => sum + costOf(piece), 0);
  return {
    listed: [going, listPriceOf(pieces)].filter((sum) => sum !== null),
    cost: [paid, cost],
    down: deposit > 0 ? [deposit] : [],
    rest: deposit > 0 && going !== null ? [going - deposit] : [],
    wrote: [past?.newest()?.amount].filter((sum) => typeof sum === "number"),
  };
}

const isFigure = ({ cents, known }: SumSaid, figures: Figures): boolean =>
  [...known].some((each) => figures[each]?.includes(cents) === true);

/** What the books have of each piece that is here. */
const knownHere = (desk: Omit<Desk, "confirmed">): Figures[] =>
  [...desk.books.pieces.values()]
    .filter(({ gone }) => gone === null || desk.past !== undefined)
    .map((piece) => figuresOf([piece], desk));

/** The sums that may be left out together, fewest first: what their words or the books may know of each. */
function choicesOf(sums: readonly SumSaid[], figures: readonly Figures[]): SumSaid[][] {
  const totals = inTotals(sums);
  const may = sums.filter(
    (sum) =>
      totals.has(sum) ||
      BY_WORDS.some((word) => sum.known.has(word)) ||
      figures.some((each) => isFigure(sum, each)),
  );
  const all: SumSaid[][] = [[]];
  for (const sum of may) all.push(...all.map((some) => [...some, sum]));
  return all.filter(({ length }) => length > 0 && length < sums.length).sort((a, b) => a.length - b.length);
}

/** What no books need to know. */
const BY_WORDS: readonly Known[] = ["was", "between", "share", "thought", "usual"];

interface Case {
  kept: readonly Cents[];
  out: readonly SumSaid[];
  desk: Omit<Desk, "confirmed">;
  reader: Reader;
}

/** Whether the rest of a message settles it, or leaves a question in which what the books know has no part. */
function settledBy(rest: readonly Reading[], of: Case): "whole" | "asked" | null {
  const { out, reader } = of;
  const said = rest.map((reading) => reader.meant(reading));
  // "left with it" is only called not recorded, as it would be beside any other note.
  const noted = said.filter((reading) => !isRefused(reading) || /\d/.test(reading.text));
  const could = noted.map(anyOf);
  const isKnown = out.every((sum) => could.some((each) => each.some((one) => isKnownTo(sum, one, of))));
  if (noted.length === 0 || !isKnown || said.some((reading) => isOwedBeside(reading, out))) return null;
  if (noted.every(isWholeNote)) return "whole";
  const isOfAll = out.length === 1 && toldOf(out[0]!, of.kept, out) === "total";
  const isAsked = noted.every((reading) => reading.kind === "unclear" && couldOf(reading).length > 0);
  return isAsked && (noted.length === 1 || isOfAll) ? "asked" : null;
}

/** "sold at 200, 150 came through, 50 outstanding": the whole of it is no sum beside. */
const isOwedBeside = (reading: Reading, out: readonly SumSaid[]): boolean =>
  reading.kind === "sell" &&
  reading.owed !== undefined &&
  out.some(({ cents }) => cents === (reading.price ?? 0) + reading.owed!);

/** Whether a sum is just what its words say, of the pieces of a reading. */
function isKnownTo(sum: SumSaid, reading: Reading, of: Case): boolean {
  const { cents, known, isHaggled } = sum;
  const { kept, desk, out } = of;
  if (!NOTED.has(reading.kind)) return false;
  const told = reading.kind === "mend" ? null : toldOf(sum, kept, out);
  if (sum.isOwed) return told === "part" && reading.kind === "sell";
  if (told !== null) return true;
  const price = kept.length === 1 ? kept[0]! : null;
  if (known.has("thought") && !isHaggled && price !== null) return THOUGHT_OF.has(reading.kind);
  if (reading.kind === "pay")
    return known.has("usual") && known.has("between") && price !== null && cents < price;
  if (known.has("share") && price !== null) {
    const mentions = mentionsOf(reading);
    const count = reading.kind === "buy" ? (pieceCount(mentions) ?? 0) : piecesOf(reading, of).length;
    if (count > 1 && count * cents === price) return true;
  }
  if (reading.kind === "buy" || reading.kind === "spend") {
    const isLess = price !== null && price < cents && price > 0;
    // What is here already was not haggled over with whoever sells it to us.
    const isNew = reading.kind === "buy" && foundBy(mentionsOf(reading), desk.books, here) === null;
    return known.has("was") && isLess && (isNew || !isHaggled);
  }
  if (isHaggled && reading.kind !== "sell") return false;
  if (reading.kind === "mend") return known.has("wrote") && desk.past?.newest()?.amount === cents;
  if (!PRICED.has(reading.kind)) return false;
  const pieces = piecesOf(reading, of);
  if (pieces.length === 0) return false;
  const figures = { ...figuresOf(pieces, desk), wrote: [] };
  // "36, 4 off" of a lamp that is listed at 40
  const isOff =
    known.has("between") && figures.listed?.some((listed) => Math.abs(listed - (price ?? 0)) === cents);
  return isOff || isFigure(sum, figures);
}

/** The pieces that a reading would be recorded of. */
function piecesOf(reading: Reading, { desk, reader }: Case): Readonly<Piece>[] {
  const decision = reader.deciding.decide(reading, desk);
  const numbers =
    decision.kind === "record" ? recordedPieces(decision) : foundBy(mentionsOf(reading), desk.books, here);
  return (numbers ?? []).flatMap((number) => desk.books.pieces.get(number) ?? []);
}

/** Notes that say a price of a piece. */
const PRICED: ReadonlySet<Reading["kind"]> = new Set(["sell", "list", "reprice", "hold"]);

/** Notes of which somebody may have thought something else. */
const THOUGHT_OF: ReadonlySet<Reading["kind"]> = new Set(["sell", "list", "buy", "spend"]);

/** Notes of money. */
const NOTED: ReadonlySet<Reading["kind"]> = new Set([...PRICED, "buy", "spend", "pay", "income", "mend"]);
