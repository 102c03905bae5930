import { isSetName } from "../notes/mentions/furniture.ts";
import { pluralOf } from "../notes/mentions/plural.ts";
import type { Books, Piece } from "./books.ts";
import { pieceLabel } from "./piece.ts";

/** Several pieces in few words: "#4 desk, #5 chair", or alike ones together: "6 chairs (#3–#8)". */
export function labelOf(books: Books, numbers: readonly number[]): string {
  const groups: Piece[][] = [];
  for (const number of numbers) {
    const piece = books.pieces.get(number);
    if (!piece) continue;
    const last = groups.at(-1);
    if (last && sameWords(last[0]!, piece)) last.push(piece);
    else groups.push([piece]);
  }
  return groups.map(groupLabel).join(", ");
}

function sameWords(a: Piece, b: Piece): boolean {
  return a.name === b.name && a.traits.join(" ") === b.traits.join(" ");
}

function groupLabel(group: readonly Piece[]): string {
  const [first] = group as [Piece];
  if (group.length === 1) return pieceLabel(first);
  const numbers = numbersLabel(group.map((piece) => piece.number));
  // A dining set of five pieces is one set, not five.
  const isOneSet = isSetName(first.name) && group.every((piece) => piece.set && piece.lot === first.lot);
  if (isOneSet) return `${[...first.traits, first.name].join(" ")} (${numbers})`;
  return `${group.length} ${[...first.traits, pluralOf(first.name)].join(" ")} (${numbers})`;
}

/** "#3–#8" for a run of numbers, else "#3, #5, #9". */
export function numbersLabel(numbers: readonly number[]): string {
  const run = numbers.every((number, index) => index === 0 || number === numbers[index - 1]! + 1);
  if (run && numbers.length > 2) return `#${numbers[0]}–#${numbers.at(-1)}`;
  return numbers.map((number) => `#${number}`).join(", ");
}
