import type { Piece } from "../../books/books.ts";
import { pluralOf } from "../../notes/mentions/plural.ts";
import type { Mention } from "../../notes/reading.ts";

/*
 * Pieces in the words of a note: on a button, and in a question about them.
 */

/** A mention as said: "2 stools", "#4 desk", "small dresser". */
export function mentionLabel(mention: Mention): string {
  const { count = 1, number, name } = mention;
  if (number !== undefined) return name ? `#${number} ${nameWith(mention)}` : `#${number}`;
  return count > 1 ? `${count} ${pluralOf(nameWith(mention))}` : wordsOf(mention);
}

export function wordsOf(mention: Mention): string {
  const words = nameWith(mention);
  return isOne(mention) ? words : pluralOf(words);
}

/** "tall white dresser": the traits, then the name, or the number where there is no name. */
export function nameWith({ traits = [], name, number }: Readonly<Piece> | Mention): string {
  return [...traits, name ?? (number === undefined ? "one" : `#${number}`)].join(" ");
}

export function isOne(mention: Mention): boolean {
  return !mention.plural && (mention.count ?? 1) === 1;
}

export function aPiece(name: string): string {
  return `${/^[aeiou]/.test(name) ? "an" : "a"} ${name}`;
}
