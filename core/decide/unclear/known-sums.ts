import type { FactOf } from "../../books/facts.ts";
import type { Reading } from "../../notes/reading.ts";
import { type Summed, type SumSaid, summedIn } from "../../notes/second-look/known-sums.ts";
import { pieceCount } from "../../notes/slots/money.ts";
import { anyOf, couldOf, eitherOf, isFor, isRefused, isWholeNote } from "../../notes/unclear.ts";
import { GIVES_CHANGE, type Known, MET_AT_LAST, OF_THE_SUM, OWES } from "../../notes/words/known-sums.ts";
import { owingPieces, salesOwing } from "../deals/owing.ts";
import type { Looking } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import { inTotals, toldOf } from "./equations.ts";
import { eachInOrder, inParts, withBeside } from "./in-parts.ts";
import { type Case, type Figures, figuresOf, piecesOf, type Reader, type Telling } from "./sums-on-books.ts";

/*
 * Several sums in a message, and the books know all but one of them: "two wanted it so it went for 95, had it at 80" of a
 * chair at 80. Words that tell what a sum is, and that sum in the books, are enough together; neither is alone.
 */

/**
 * What a message says once the sums that the books know are left out: recorded where the rest is whole, asked about where
 * it is not. Null where that settles nothing.
 */
export function besideKnownSums(
  text: string,
  readings: readonly Reading[],
  desk: Looking,
  reader: Reader,
): readonly Reading[] | null {
  // Nearly every message is read as it stands, and is spared the rest.
  if (readings.every(isWholeNote) || text.includes("?") || /[\n\r]/.test(text)) return null;
  // "she gave me 100 and i gave 15 back" adds up as well; "hutch 240: 100 now and 140 friday" has no verb of its own.
  const isNoSum = readings.some((reading) => isFor(reading, "part paid") && couldOf(reading).length === 0);
  if (isNoSum || GIVES_CHANGE.test(text)) return null;
  const summed = summedIn(text);
  if (!summed || readings.every((reading) => isWholeNote(reader.meant(reading)))) return null;
  const { found, asked } = waysOf(text, summed, { desk, reader });
  const [first] = found;
  if (first && found.some((other) => !isSame(other, first))) return eitherSum(found, text) ?? first;
  return first ?? inParts(text, summed, { desk, reader }) ?? asked;
}

/** What the message says in each way in which it is whole with the fewest sums left out, else what is asked in the likeliest. */
function waysOf(text: string, summed: Summed, { desk, reader }: Telling) {
  const choices = choicesOf(summed.sums, knownHere(desk));
  const may = new Set(choices.flat());
  const found: Reading[][] = [];
  const asked: { read: Reading[]; doubt: number }[] = [];
  for (const [at, out] of choices.entries()) {
    if (found.length > 0 && out.length > choices[at - 1]!.length) break;
    const kept = summed.sums.filter((sum) => !out.includes(sum));
    const of: Case = { kept, out, desk, reader };
    for (const rest of [...summed.without(out), ...asSales(summed, of), ...asGot(summed, of)]) {
      const read = reader.read(rest);
      const settled = settledBy(read, of);
      const told = read.map((reading) => withBeside(reading, out, text));
      // What is asked is asked with the sum that is likeliest none of the others.
      if (settled === "asked") asked.push({ read: told, doubt: kept.filter((sum) => may.has(sum)).length });
      if (settled !== "whole") continue;
      found.push(eachInOrder(told, of) ?? told);
      break;
    }
  }
  asked.sort((one, other) => one.doubt - other.doubt);
  return { found, asked: asked[0]?.read ?? null };
}

/** "desk was listed 150 and i got 140": no verb is needed beside the price that the books have; of little else is it told so. */
function asSales(summed: Summed, { kept, out }: Case): string[] {
  const [price, ...others] = kept;
  const isOfListed =
    price !== undefined &&
    others.length === 0 &&
    !price.isLess &&
    out.some(({ cents, known }) => (known.has("listed") || known.has("tried")) && price.cents * 2 >= cents);
  return isOfListed ? summed.asSale(out) : [];
}

/** "40 of the 70 arrived": a part of what is owed. */
const asGot = (summed: Summed, { out }: Case): string[] =>
  out.some(({ known }) => known.has("owing")) ? summed.asGot(out) : [];

const isOwing = (sale: FactOf<"sell">, { cents }: SumSaid, { desk }: Case): boolean =>
  owingPieces(desk.books, sale).reduce((sum, { owed }) => sum + owed, 0) === cents;

const isSame = (one: readonly Reading[], other: readonly Reading[]): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** Which of the sums it was, where each may be; null where it is no one note. */
function eitherSum(found: readonly (readonly Reading[])[], text: string): Reading[] | null {
  const notes = found.flatMap(([reading, ...more]) => (more.length === 0 ? (reading ?? []) : []));
  return notes.length === found.length ? [eitherOf(notes, { text, line: 0 }, "twoNumbers")] : null;
}

const isFigure = ({ cents, known }: SumSaid, figures: Figures): boolean =>
  [...known].some((each) => figures[each]?.includes(cents) === true);

/** What the books have of each piece that is here. */
const knownHere = (desk: Looking): Figures[] =>
  [...desk.books.pieces.values()]
    .filter(({ gone }) => gone === null || desk.past !== undefined)
    .map((piece) => figuresOf([piece], desk));

/** The sums that may be left out together, fewest first: what their words or the books may know of each. */
function choicesOf(sums: readonly SumSaid[], figures: readonly Figures[]): SumSaid[][] {
  const totals = inTotals(sums);
  const may = sums.filter(
    (sum) =>
      totals.has(sum) ||
      (sum.isOwed && OWES.test(sum.said)) ||
      BY_WORDS.some((word) => sum.known.has(word)) ||
      figures.some((each) => isFigure(sum, each)),
  );
  const all: SumSaid[][] = [[]];
  for (const sum of may) all.push(...all.map((some) => [...some, sum]));
  return all.filter(({ length }) => length > 0 && length < sums.length).sort((a, b) => a.length - b.length);
}

/** What no books need to know. */
const BY_WORDS: readonly Known[] = ["was", "between", "share", "thought", "tried", "named", "owing", "usual"];

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
  if (reading.kind === "collect")
    return known.has("owing") && salesOwing(desk.books).some((sale) => isOwing(sale, sum, of));
  const price = kept.length === 1 ? kept[0]!.cents : null;
  if (sum.isOwed)
    return (
      reading.kind === "sell" && (told === "part" || (OWES.test(sum.said) && price !== null && cents < price))
    );
  if (told !== null) return true;
  if (known.has("tried") && price !== null && MET_AT_LAST.test(kept[0]!.said)) return DEALT.has(reading.kind);
  if (known.has("thought") && !isHaggled && price !== null) return THOUGHT_OF.has(reading.kind);
  if (reading.kind === "pay")
    return known.has("usual") && known.has("between") && price !== null && cents < price;
  if (known.has("share") && price !== null) {
    const mentions = mentionsOf(reading);
    const count = reading.kind === "buy" ? (pieceCount(mentions) ?? 0) : piecesOf(reading, of).length;
    if (count > 1 && count * cents === price) return true;
  }
  if (reading.kind === "buy" || reading.kind === "spend") {
    // "23.40, 13.40 of that groceries": a part, and no lower price.
    const isLess = price !== null && price < cents && price > 0 && !OF_THE_SUM.test(kept[0]!.said);
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
  if (known.has("named") && reading.kind === "reprice") return figures.listed?.includes(cents) === true;
  const isOff =
    known.has("between") && figures.listed?.some((listed) => Math.abs(listed - (price ?? 0)) === cents);
  return isOff || isFigure(sum, figures);
}

/** Notes that say a price of a piece. */
const PRICED: ReadonlySet<Reading["kind"]> = new Set(["sell", "list", "reprice", "hold"]);

/** Notes of what was haggled over. */
const DEALT: ReadonlySet<Reading["kind"]> = new Set(["sell", "hold", "buy"]);

/** Notes of which somebody may have thought something else. */
const THOUGHT_OF: ReadonlySet<Reading["kind"]> = new Set(["sell", "list", "buy", "spend"]);

/** Notes of money. */
const NOTED: ReadonlySet<Reading["kind"]> = new Set([
  ...PRICED,
  "buy",
  "spend",
  "pay",
  "income",
  "collect",
  "mend",
]);
