import type { Tok } from "../clause.ts";
import { DEAL_WORDS, NOBODY, TAKES_IN } from "../words/deals.ts";
import { ARTICLES } from "../words/filler.ts";
import { PREPOSITIONS } from "../words/links.ts";
import { BEFORE_SOMEBODY, PLACING } from "../words/names.ts";
import { HOUSEHOLD, isOwner, PAYING } from "../words/people.ts";

/** Who is named in a deal, and whether they are the one who acts. */
export interface Who {
  /** "dad", "cousin teo", "lady with the truck". */
  name?: string;
  isHousehold: boolean;
  /** Nothing but filler stands before the name. */
  leads: boolean;
  /** A verb of taking in follows the name: they took it in for the shop. */
  takesIn: boolean;
}

/** A person, or a word from no list where only a person can stand. */
export function isSomebody(tokens: readonly Tok[], at: number): boolean {
  const { text, kind } = tokens[at]!;
  if (kind !== "word") return false;
  return isPerson(tokens[at]!) || NOBODY.has(text) || isUnlisted(tokens, at) || isOfBuyer(tokens, at);
}

const isPerson = ({ text, roles }: Tok): boolean =>
  roles.person === true || HOUSEHOLD.has(text) || isOwner(text);

const isNameWord = (token: Tok | undefined): boolean =>
  token?.unknown === true && !DEAL_WORDS.has(token.text);

const isUnlisted = (tokens: readonly Tok[], at: number): boolean => {
  const before = tokens[at - 1]?.text ?? "";
  if (isNameWord(tokens[at]) && at === 0 && PAYING.has(tokens[1]?.text ?? "")) return true;
  // "got the 40 bob owed on the desk"
  if (
    isNameWord(tokens[at]) &&
    /^(?:owed|owes|never|disappeared|vanished|ghosted|skipped)$/.test(tokens[at + 1]?.text ?? "")
  )
    return true;
  return isNameWord(tokens[at]) && (BEFORE_SOMEBODY.has(before) || HOUSEHOLD.has(before));
};

/** "lady with the truck", "guy from church": what tells somebody who is nobody by one word. */
function isOfBuyer(tokens: readonly Tok[], at: number): boolean {
  // "cut my brother in for 25%"
  if (PREPOSITIONS.has(tokens[at]!.text) && !PLACING.has(tokens[at]!.text)) return false;
  for (let place = at; place > Math.max(0, at - 4); place -= 1) {
    const { text } = tokens[place]!;
    if (PLACING.has(text)) return isPerson(tokens[place - 1]!);
    if (place < at && !ARTICLES.has(text)) return false;
  }
  return false;
}

/** The first of a run's words who is somebody. */
export function whoIn(run: readonly Tok[]): Who {
  for (let at = 0; at < run.length; at += 1) {
    const to = nameEnd(run, at);
    if (to <= at) continue;
    const words = run.slice(at, to).map(({ text }) => text);
    const name = words.map((word) => (isOwner(word) ? word.slice(0, -1) : word)).join(" ");
    return {
      name,
      isHousehold: HOUSEHOLD.has(name.split(" ")[0]!),
      leads: run.slice(0, at).every(({ text, roles }) => ARTICLES.has(text) || roles.filler === true),
      takesIn: TAKES_IN.has(run[to]?.text ?? ""),
    };
  }
  return { isHousehold: false, leads: false, takesIn: TAKES_IN.has(run[0]?.text ?? "") };
}

/** Where a name that begins at `at` ends; `at` itself where none does. */
function nameEnd(run: readonly Tok[], at: number): number {
  const token = run[at]!;
  if (token.kind !== "word") return at;
  let to = at + 1;
  while (to < run.length && run[to]!.kind === "word" && !isPerson(run[to]!) && isOfBuyer(run, to)) to += 1;
  const isTold = to > at + 1 && isPerson(token);
  if (isTold && !PLACING.has(run[to - 1]!.text) && !ARTICLES.has(run[to - 1]!.text)) return to;
  if (NOBODY.has(token.text)) return at;
  if (HOUSEHOLD.has(token.text) && isNameWord(run[at + 1])) return at + 2;
  return isPerson(token) || isUnlisted(run, at) ? at + 1 : at;
}
