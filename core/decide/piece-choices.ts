import type { Cents } from "../money.ts";
import type { Mention, Reading } from "../notes/reading.ts";
import type { Choice, Desk } from "./decision.ts";
import type { Fit } from "./match.ts";
import { byNumbers } from "./mentioned.ts";

/*
 * What a button about a piece stands for: the reading with the piece settled, with one added first, or without any.
 */

/** What a verb needs of its pieces. */
export interface PieceNeed {
  fit: Fit;
  /** As in "Which dresser did you sell?" */
  question: string;
  /** What to offer for a piece that is not on the books: to add it first, or to record without one. */
  unknown: "add" | "add or leave out" | "refuse";
  /** Of a piece that is here and does not fit, as in "#4 desk is listed, not on hold". */
  lacks?: string;
}

/** A reading whose pieces may have to be found. */
export type WithPieces = Extract<Reading, { pieces?: Mention[] }>;

/** A button: the mention at `index` is these pieces. */
export function meaning(
  reading: WithPieces,
  index: number,
  numbers: readonly number[],
  label: string,
): Choice {
  return {
    label,
    effect: { kind: "settle", change: changeOf(reading, withNumbers(reading, index, numbers)) },
  };
}

function changeOf(before: WithPieces, after: WithPieces): Partial<Reading> {
  const price =
    "price" in after && after.price !== (before as { price?: Cents }).price ? { price: after.price } : {};
  return { pieces: after.pieces!, ...price } as Partial<Reading>;
}

/** The reading with one of its mentions settled to these pieces. */
function withNumbers<R extends WithPieces>(reading: R, index: number, numbers: readonly number[]): R {
  const mentions = byNumbers(numbers);
  const pieces = [...(reading.pieces ?? [])];
  pieces.splice(index, 1, ...mentions);
  // A price of each waited for their count.
  const price = reading.pieces?.[index]?.plural ? wholePrice(reading, numbers) : undefined;
  return { ...reading, pieces, ...(price === undefined ? {} : { price }) };
}

/**
 * What the pieces come to together, in cents: a price said of each is that of one until the books have counted
 * them. Undefined where no price was said.
 */
export function wholePrice(
  reading: { pieces?: readonly Mention[]; price?: Cents; each?: true },
  pieces: readonly number[],
): Cents | undefined {
  const isCounted = !reading.each || !reading.pieces?.some(({ plural }) => plural);
  return reading.price === undefined || isCounted ? reading.price : reading.price * pieces.length;
}

/** A button: the note is of no piece. */
export function withoutPiece(reading: WithPieces): Choice {
  return {
    label: reading.kind === "drive" ? "No piece: just the miles" : "No piece: shop cost",
    words: ["shop", "no piece"],
    effect: { kind: "instead", readings: [{ ...reading, pieces: [] }] },
  };
}

/** The purchase that a note takes for granted, on the note's own day, and the note itself after it. */
export function buyFirst(reading: WithPieces, index: number, desk: Desk): Reading[] {
  const mention = reading.pieces![index]!;
  const bought: Mention = { ...mention, count: mention.count ?? 1 };
  delete bought.plural;
  const buy: Reading = {
    kind: "buy",
    pieces: [bought],
    date: reading.date ?? desk.today,
    missing: mention.plural ? ["count", "price"] : ["price"],
    text: reading.text,
    line: reading.line,
  };
  if (mention.plural) delete bought.count;
  // Alone, the note goes on with the very piece just added; beside others, its name now finds the new one.
  const after = reading.pieces!.length === 1 ? { ...reading, follows: true as const } : reading;
  return [buy, { ...after, date: reading.date ?? desk.today }];
}

/** A button: one more of that name, bought first. */
export function anotherOne(reading: WithPieces, index: number, desk: Desk, label: string): Choice {
  const readings = buyFirst(reading, index, desk);
  const words = [
    "another",
    "another one",
    "others",
    "add it",
    "add them",
    "add",
    `another ${reading.pieces![index]!.name}`,
  ];
  return { label, words, effect: { kind: "instead", readings } };
}
