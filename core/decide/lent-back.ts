import type { Books } from "../books/books.ts";
import type { FactOf } from "../books/facts.ts";
import type { Day } from "../calendar.ts";
import { pluralOf } from "../notes/plural.ts";
import { readMessage } from "../notes/read.ts";
import type { Reading } from "../notes/reading.ts";
import { BESIDE_HOME, COMES_HOME } from "../notes/words/settling.ts";
import { byNumbers } from "./mentioned.ts";

const NEXT_FACT = /^(.+?)(?:,? and|,|[.;])(?: then)? (.+)$/i;

/** "got the sander back", and a whole note behind it; null where nothing was lent, or anything else is said. */
export function lentBack(text: string, { books, today }: { books: Books; today: Day }): Reading[] | null {
  // Nearly every message says none of these.
  if (
    !text
      .toLowerCase()
      .split(/[^a-z]+/)
      .some((word) => COMES_HOME.has(word))
  )
    return null;
  const whole = homeOf(text, books);
  const [, first, next] = NEXT_FACT.exec(text) ?? [];
  if (whole || !first || !next) return whole;
  const home = homeOf(first, books);
  const after = home ? readMessage(next, today) : [];
  const isWhole = after.length > 0 && after.every(({ kind, missing }) => kind !== "unclear" && !missing);
  return home && isWhole ? [...home, ...after] : null;
}

function homeOf(text: string, books: Books): Reading[] | null {
  const said = ` ${text
    .toLowerCase()
    .replace(/['’]s\b/g, "")
    .replace(/[.!,]+(?= |$)/g, "")
    .replace(/\s+/g, " ")} `;
  for (const lent of standing(books)) {
    const thing = namesOf(lent, books).find((name) => said.includes(` ${name} `));
    if (thing === undefined) continue;
    const rest = withoutName(said.replace(` ${thing} `, " "), lent.data.to);
    const words = rest.trim().split(" ");
    const isHome = words.some((word) => COMES_HOME.has(word));
    if (!isHome || !words.every((word) => COMES_HOME.has(word) || BESIDE_HOME.has(word))) continue;
    const { what } = lent.data;
    const of = what === undefined ? { pieces: byNumbers(lent.pieces) } : { what };
    return [{ kind: "lent", ...of, returned: true, text, line: 0 }];
  }
  return null;
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

/** Who had it, by all of the name or its last word: "uncle ray", "ray". */
function withoutName(said: string, to: string | undefined): string {
  if (to === undefined) return said;
  const name = [to, to.split(" ").at(-1)!].find((each) => said.includes(` ${each} `));
  return name === undefined ? said : said.replace(` ${name} `, " ");
}
