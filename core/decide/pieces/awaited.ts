import type { Books, Piece } from "../../books/books.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { couldOf } from "../../notes/unclear.ts";
import type { Ask, Matter } from "../decision.ts";
import { ever } from "./fits.ts";
import { type Match, matchMention } from "./match.ts";
import { mentionsOf } from "./mentioned.ts";

/*
 * Pieces that are not on the books yet, and will be once what was asked about them is answered. What is told of them
 * until then waits behind that.
 */

/** A question, as far as it tells which pieces come with its answer. */
interface Asked {
  matter: Pick<Matter, "reading">;
  ask: Ask;
}

/** The pieces that come onto the books with the answer to a question. */
export function awaitedIn({ matter, ask }: Asked): Mention[] {
  const of = ask.first ?? [matter.reading];
  const bought = [...of, ...couldOf(matter.reading)].find(({ kind }) => kind === "buy");
  const traded = of.flatMap((each) => (each.kind === "trade" ? (each.got ?? []) : []));
  const come = [...(bought ? mentionsOf(bought) : []), ...traded];
  return come.filter(({ it, name }) => !it && name !== undefined);
}

/** Whether all these are awaited; `isSurely`: and by a name that is just theirs. */
export function areAwaited(
  mentions: readonly Mention[],
  awaited: readonly Mention[],
  { isSurely = false } = {},
): boolean {
  const pieces = awaited.flatMap(({ name = "piece", traits = [], count = 1 }) =>
    Array.from({ length: count }, () => ({ name, traits })),
  );
  const isFound = (match: Match): boolean =>
    match.kind !== "none" &&
    !(match.kind === "several" && (match.trust === "odd" || (isSurely && match.trust === "likely")));
  return mentions.length > 0 && mentions.every((mention) => isFound(matchIn(mention, pieces)));
}

/** What a mention means of pieces of which only the names are known, by their places from 1. */
function matchIn(
  { awaited: _, ...mention }: Mention,
  named: readonly Pick<Piece, "name" | "traits">[],
): Match {
  const pieces = named.map((each, at) => [
    at + 1,
    { ...each, number: at + 1, gone: null, hold: null, lot: null } as unknown as Piece,
  ]) as [number, Piece][];
  return matchMention(mention, { pieces: new Map(pieces) } as unknown as Books, ever, new Set());
}

/** A reading that waited, now that it is known which pieces came; as it was said where none of them did. */
export function withAwaited(reading: Reading, came: readonly number[], books: Books): Reading {
  if (!mentionsOf(reading).some(({ awaited }) => awaited)) return reading;
  const made = came.map((number) => books.pieces.get(number)!);
  const pieces = mentionsOf(reading).flatMap(({ awaited, ...mention }): Mention[] => {
    const match = awaited ? matchIn(mention, made) : null;
    return match?.kind === "found"
      ? match.pieces.map((place) => ({ number: came[place - 1]!, count: 1 }))
      : [mention];
  });
  return { ...reading, pieces } as Reading;
}
