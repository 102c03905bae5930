import type { Books } from "../../books/books.ts";
import type { FactOf } from "../../books/facts.ts";
import type { Day } from "../../calendar.ts";
import { pluralOf } from "../../notes/mentions/plural.ts";
import type { Reading } from "../../notes/reading.ts";
import { homeIn } from "../../notes/settling.ts";
import { byNumbers } from "../pieces/mentioned.ts";

/** "got the sander back", and a whole note behind it; null where nothing was lent, or anything else is said. */
export function lentBack(text: string, { books, today }: { books: Books; today: Day }): Reading[] | null {
  const things = () =>
    standing(books).map((fact) => ({
      fact,
      names: namesOf(fact, books),
      to: fact.data.to,
      isNewest: fact === books.facts.at(-1),
    }));
  const home = homeIn(text, things, today);
  if (!home) return null;
  const { data, pieces } = home.back.fact;
  const of = data.what === undefined ? { pieces: byNumbers(pieces) } : { what: data.what };
  return [{ kind: "lent", ...of, returned: true, text: home.text, line: 0 }, ...home.after];
}

/** What was lent and has not come back since, the newest first. */
function standing({ facts }: Books): FactOf<"lent">[] {
  const lent = facts.filter((fact): fact is FactOf<"lent"> => fact.kind === "lent");
  const isSame = (one: FactOf<"lent">, other: FactOf<"lent">) =>
    one.data.what === other.data.what && one.pieces.join() === other.pieces.join();
  return lent
    .filter((fact, at) => !fact.data.returned && !lent.slice(at + 1).some((later) => isSame(fact, later)))
    .reverse();
}

function namesOf({ data, pieces }: FactOf<"lent">, books: Books): string[] {
  if (data.what !== undefined) return [data.what];
  return pieces.flatMap((number) => {
    const { name } = books.pieces.get(number)!;
    return [`#${number}`, name, pluralOf(name)];
  });
}
