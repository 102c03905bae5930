import { type NewFact, newPiecesOf } from "../books/facts.ts";
import type { Made } from "../books/made.ts";
import type { Desk } from "../decide/decision.ts";
import type { Mention } from "../notes/reading.ts";
import type { Changed } from "./fields.ts";

interface Kept {
  number: number;
  name: string;
  traits: string[];
}

/**
 * A purchase of other pieces than were noted. Those called the same keep their numbers; more get the next free ones;
 * where they are fewer, the last ones go that nothing else was noted of; as many others are the same ones renamed.
 */
export function recounted(fact: NewFact, mentions: readonly Mention[], desk: Desk): Changed {
  if (fact.kind !== "buy" && fact.kind !== "trade") return { why: "Only a purchase makes pieces." };
  if (mentions.some((mention) => mention.name === undefined || mention.plural))
    return { why: "Say what was bought and how many, like: 4 chairs." };
  const numbers = newPiecesOf(fact);
  const left: Kept[] = fact.data.made.map((piece, index) => ({ ...piece, number: numbers[index]! }));
  const wanted = mentions.flatMap(({ name = "", traits = [], count = 1 }) =>
    Array.from({ length: count }, () => ({ name, traits })),
  );
  const surplus = Math.max(0, left.length - wanted.length);
  const gone = droppable(left, wanted, surplus, desk);
  if (gone.length < surplus)
    return { why: "Other notes speak of those pieces. Say which one to take out, like: #8 was a mistake" };
  const stays = left.filter((piece) => !gone.includes(piece.number));
  const pieces = assigned(stays, wanted, desk.nextPiece);
  const given = fact.pieces.slice(0, fact.pieces.length - numbers.length);
  const made: Made = pieces.map(({ name, traits }) => ({ name, traits }));
  return {
    fact: {
      ...fact,
      pieces: [...given, ...pieces.map(({ number }) => number)],
      data: { ...fact.data, made },
    } as NewFact,
  };
}

/** Which pieces go: those not named any more before those named, the last first, and none with notes of its own. */
function droppable(left: readonly Kept[], wanted: Made, count: number, { books }: Desk): number[] {
  const named = (piece: Kept) => wanted.some(({ name }) => name === piece.name);
  const free = [...left].reverse().filter(({ number }) => (books.story.get(number) ?? []).length <= 1);
  const ordered = [...free.filter((piece) => !named(piece)), ...free.filter(named)];
  return ordered.slice(0, count).map(({ number }) => number);
}

function assigned(stays: Kept[], wanted: Made, next: number): Kept[] {
  const rest = [...stays];
  const take = (matches: (piece: Kept) => boolean) => {
    const index = rest.findIndex(matches);
    return index < 0 ? undefined : rest.splice(index, 1)[0]!;
  };
  let free = next;
  const same = wanted.map((piece) => take(({ name }) => name === piece.name));
  return wanted.map((piece, index) => {
    const kept = same[index];
    // Said without its traits, a piece keeps those it has.
    if (kept) return { ...kept, traits: piece.traits.length > 0 ? piece.traits : kept.traits };
    return { ...piece, number: take(() => true)?.number ?? free++ };
  });
}
