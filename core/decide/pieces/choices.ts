import type { Mention, Reading } from "../../notes/reading.ts";
import type { Choice, Desk } from "../decision.ts";
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
  const [was, is] = [before, after] as Partial<Record<PerPiece, number>>[];
  const counted = PER_PIECE.filter((field) => is![field] !== was![field]).map((field) => [field, is![field]]);
  return { pieces: after.pieces!, ...Object.fromEntries(counted) } as Partial<Reading>;
}

/** What may be said of each piece. */
const PER_PIECE = ["price", "cut", "minutes", "deposit", "amount", "refunded", "kept"] as const;
type PerPiece = (typeof PER_PIECE)[number];

/** The reading with one of its mentions settled to these pieces. */
function withNumbers<R extends WithPieces>(reading: R, index: number, numbers: readonly number[]): R {
  const mentions = byNumbers(numbers);
  const pieces = [...(reading.pieces ?? [])];
  pieces.splice(index, 1, ...mentions);
  // What was said of each waited for their count.
  const waits = reading.pieces?.[index]?.plural ? inAll(reading, numbers) : reading;
  return { ...waits, pieces };
}

/** The reading with what was said of each of its pieces as that of all, now that the books have counted them. */
export function inAll<R extends { pieces?: readonly Mention[]; each?: true }>(
  reading: R,
  pieces: readonly number[],
): R {
  if (!reading.each || !reading.pieces?.some(({ plural }) => plural)) return reading;
  const said = reading as Partial<Record<PerPiece, number>>;
  const counted = PER_PIECE.flatMap((field) =>
    said[field] === undefined ? [] : [[field, said[field] * pieces.length]],
  );
  return { ...reading, ...Object.fromEntries(counted) };
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
  delete bought.awaited;
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
