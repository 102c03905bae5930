import { goingPrice } from "../../books/agreed.ts";
import type { Piece } from "../../books/books.ts";
import { costOf } from "../../books/piece.ts";
import { depositOf, listPriceOf } from "../../books/shares.ts";
import type { Cents } from "../../money.ts";
import type { Reading } from "../../notes/reading.ts";
import { type SumSaid, summedIn } from "../../notes/second-look/known-sums.ts";
import { anyOf, isRefused, isWholeNote } from "../../notes/unclear.ts";
import type { Known } from "../../notes/words/known-sums.ts";
import type { Desk } from "../decision.ts";
import { recordedPieces } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { foundBy } from "../pieces/match.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
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
  const asked: Reading[][] = [];
  for (const out of choicesOf(summed.sums, knownHere(desk)))
    for (const rest of summed.without(out)) {
      const read = reader
        .read(rest)
        .map((reading) => ({ ...reading, ...saidBeside(reading, out) }) as Reading);
      const kept = summed.sums.filter((sum) => !out.includes(sum)).map(({ cents }) => cents);
      const found = settledBy(read, { kept, out, desk, reader });
      if (found === "whole") return read.map((reading) => ({ ...reading, text }));
      if (found === "asked") asked.push(read);
    }
  return asked[0] ?? null;
}

/** What it cost was said with the price: that it is less needs no asking. */
const saidBeside = ({ kind }: Reading, out: readonly SumSaid[]): { costSaid?: true } =>
  kind === "sell" && out.some(({ known }) => known.has("cost")) ? { costSaid: true } : {};

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
  const may = sums.filter(
    (sum) => sum.known.has("was") || sum.known.has("between") || figures.some((each) => isFigure(sum, each)),
  );
  const all: SumSaid[][] = [[]];
  for (const sum of may) all.push(...all.map((some) => [...some, sum]));
  return all.filter(({ length }) => length > 0 && length < sums.length).sort((a, b) => a.length - b.length);
}

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
  if (noted.length === 0 || !isKnown) return null;
  if (noted.every(isWholeNote)) return "whole";
  return noted.length === 1 && could[0]!.length > 0 ? "asked" : null;
}

/** Whether a sum is just what its words say, of the pieces of a reading. */
function isKnownTo(sum: SumSaid, reading: Reading, of: Case): boolean {
  const { cents, known, isHaggled } = sum;
  const { kept, desk, reader } = of;
  if (known.has("between") && isBetween(sum, of)) return true;
  if (reading.kind === "buy" || reading.kind === "spend") {
    const isLess = kept.length === 1 && kept[0]! < cents && kept[0]! > 0;
    // What is here already was not haggled over with whoever sells it to us.
    const isNew = reading.kind === "buy" && foundBy(mentionsOf(reading), desk.books, here) === null;
    return known.has("was") && isLess && (isNew || !isHaggled);
  }
  if (isHaggled && reading.kind !== "sell") return false;
  if (reading.kind === "mend") return known.has("wrote") && desk.past?.newest()?.amount === cents;
  if (!PRICED.has(reading.kind)) return false;
  const decision = reader.deciding.decide(reading, desk);
  const numbers =
    decision.kind === "record" ? recordedPieces(decision) : foundBy(mentionsOf(reading), desk.books, here);
  const pieces = (numbers ?? []).flatMap((number) => desk.books.pieces.get(number) ?? []);
  return pieces.length > 0 && isFigure(sum, { ...figuresOf(pieces, desk), wrote: [] });
}

/** "15 over the 180": what lies between two of them. */
const isBetween = (sum: SumSaid, { kept, out }: Case): boolean =>
  out.some((other) => other !== sum && kept.some((price) => Math.abs(price - other.cents) === sum.cents));

/** Notes that say a price of a piece. */
const PRICED: ReadonlySet<Reading["kind"]> = new Set(["sell", "list", "reprice", "hold"]);
