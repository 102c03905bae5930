import { type Fact, newPiecesOf } from "../../core/books/facts.ts";
import type { Matter } from "../../core/decide/decision.ts";

type Named = { name?: string; traits?: readonly string[] };

/** The numbers of the pieces that a message made before, to be given again to those it makes now. */
export interface NumbersKept {
  /** Whether any of these pieces has not been given again yet. */
  hasAny(pieces: readonly number[]): boolean;
  /** The old number of each piece, in order; null for one that is new. No number is given twice. */
  take(made: readonly Named[]): (number | null)[];
}

/**
 * A piece called the same keeps its number, wherever in the message it now stands. Another one takes the number
 * of a piece that is not named any more only where it is plain which of them was renamed: else what was
 * recorded of one piece later would pass to another without a word.
 */
export function numbersKept(standing: readonly Fact[], matters: readonly Matter[]): NumbersKept {
  const left = standing.flatMap((fact) =>
    fact.kind === "buy" || fact.kind === "trade"
      ? newPiecesOf(fact).map((number, index) => ({ number, ...called(fact.data.made[index]) }))
      : [],
  );
  const said = matters.flatMap(({ reading }) => mentionsMade(reading));
  const names = said.flatMap((mention) =>
    Array.from({ length: mention.count ?? 1 }, () => called(mention).name),
  );
  const namedAgain = new Set<number>();
  for (const name of names) {
    const same = left.find((piece) => piece.name === name && !namedAgain.has(piece.number));
    if (same) namedAgain.add(same.number);
  }
  const isRenaming = namedAgain.size === 0 || left.length === names.length;

  function takeOne(name: string): number | null {
    const same = left.findIndex((piece) => piece.name === name);
    const other = isRenaming ? left.findIndex(({ number }) => !namedAgain.has(number)) : -1;
    const index = same >= 0 ? same : other;
    return index < 0 ? null : left.splice(index, 1)[0]!.number;
  }

  return {
    hasAny: (pieces) => left.some(({ number }) => pieces.includes(number)),
    take: (made) => made.map((piece) => takeOne(called(piece).name)),
  };
}

/** The pieces that a note brings onto the books, as said. */
function mentionsMade(reading: Matter["reading"]) {
  if (reading.kind === "buy") return reading.pieces ?? [];
  return reading.kind === "trade" ? (reading.got ?? []) : [];
}

function called(piece: Named | undefined): { name: string } {
  return { name: [...(piece?.traits ?? []), piece?.name].join(" ") };
}
