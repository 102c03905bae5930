import type { Books } from "../books/books.ts";
import type { Day } from "../calendar.ts";
import { showDay } from "../calendar.ts";
import { verbOf } from "../decide/decide.ts";

/** What happened to a piece, in the order of the books: a day and a few words each, sums its own share. */
export function storyOf(books: Books, number: number, today: Day): string[] {
  const ids = new Set(books.story.get(number) ?? []);
  return books.facts
    .filter((fact) => ids.has(fact.id))
    .map((fact) => {
      const told = verbOf(fact.kind)?.story?.({ fact, books, number } as never) ?? fact.kind;
      return `${showDay(fact.day, today)}: ${told}`;
    });
}
