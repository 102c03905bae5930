import type { Mention, Reading } from "../notes/reading.ts";
import type { Ask, Decision, Desk } from "./decision.ts";
import { cannotBe } from "./decision.ts";
import { namesOf } from "./echo.ts";

/*
 * What a note leaves to the talk around it: "it" is the piece of the message replied to, else the one spoken of
 * last. A verb that does not fit that piece is asked about; another piece is never taken instead.
 */

interface Deciding {
  decide(reading: Reading, desk: Omit<Desk, "confirmed">): Decision;
}

/** Kinds that may be about a piece and need not. */
const OPTIONAL: ReadonlySet<Reading["kind"]> = new Set(["spend", "drive"]);

/** The reading with the pieces that the talk gives it; the same reading where it gives none. */
export function talkedOf(reading: Reading, desk: Omit<Desk, "confirmed">, deciding: Deciding): Reading {
  const numbers = piecesMeant(reading, desk);
  if (!numbers || numbers.length === 0) return reading;
  const pieces: Mention[] = numbers.map((number) => ({ number, count: 1 }));
  const { follows: _, missing, ...rest } = reading;
  const left = missing?.filter((field) => field !== "pieces") ?? [];
  const given = { ...rest, pieces, ...(left.length > 0 ? { missing: left } : {}) } as Reading;
  const decision = deciding.decide(given, desk);
  if (cannotBe(decision)) return reading;
  return given;
}

/** Whether a cost goes to a piece that it did not name: said in the reply, with a way out. */
export function isGuessedCost(said: Reading, given: Reading): boolean {
  return said.kind === "spend" && given.kind === "spend" && !said.pieces && !said.follows && !!given.pieces;
}

function piecesMeant(
  reading: Reading,
  { talk, today, books }: Omit<Desk, "confirmed">,
): number[] | undefined {
  if (!talk) return undefined;
  const isMissing = reading.missing?.includes("pieces") === true;
  const isOpen = OPTIONAL.has(reading.kind) && !("pieces" in reading && reading.pieces);
  const isIt = "pieces" in reading && Array.isArray(reading.pieces) && reading.pieces.some(({ it }) => it);
  if (!isMissing && !isOpen && !isIt) return undefined;
  // A purchase makes its own pieces.
  if (reading.kind === "buy") return undefined;
  if (talk.replied) return talk.replied;
  if (reading.follows || isIt) return talk.latest;
  if (reading.kind !== "spend" || reading.category !== "materials") return undefined;
  const isThatDay = reading.date === undefined || reading.date === today;
  const isHere = talk.latest?.every((number) => books.pieces.get(number)?.gone === null);
  return isThatDay && isHere ? talk.latest : undefined;
}

/** The question for the piece, with the one spoken of last on a button where the note may be about it. */
export function withSpokenOf(
  ask: Ask,
  reading: Reading,
  desk: Omit<Desk, "confirmed">,
  deciding: Deciding,
): Ask {
  const latest = desk.talk?.latest ?? [];
  if (ask.wants !== "pieces" || reading.kind === "buy" || latest.length === 0) return ask;
  const pieces: Mention[] = latest.map((number) => ({ number, count: 1 }));
  const change = { pieces, missing: reading.missing?.filter((field) => field !== "pieces") ?? [] };
  const decision = deciding.decide({ ...reading, ...change } as Reading, desk);
  if (cannotBe(decision)) return ask;
  const label = namesOf(desk.books, { pieces: [...latest] });
  return { ...ask, choices: [{ label, effect: { kind: "settle", change } }, ...ask.choices] };
}
