import { type Tok, textOf } from "../clause.ts";
import { ARTICLES } from "../words/filler.ts";
import { BEFORE_NAME, FIELDS, IS_NAMED, NOT_US, OLD, WHO, WRONG_PEOPLE } from "../words/mending.ts";
import { THEM } from "../words/pieces.ts";
import { isOpening } from "./left-out.ts";
import { isSkipped, type To } from "./mended.ts";

/* The names by which the newest note is corrected. */

/** "wrong guy, it was ines": who it was; null where that is not said, or more is. */
export function rightPerson(said: readonly Tok[]): string | null {
  const [wrong, who, ...rest] = said.slice(
    said.findIndex((token) => !isOpening(token) || token.text === "wrong"),
  );
  if (wrong?.text !== "wrong" || !WRONG_PEOPLE.has(who?.text ?? "")) return null;
  const name = rest.filter((token) => !isSkipped(token) && !isOpening(token) && !FIELDS[token.text]);
  const isName = name.length > 0 && name.length <= NAME_WORDS_MAX && name.every(isWordOfName);
  return isName ? textOf(name) : null;
}

/** "lena not ana", "yard sale not thrift store": one name for another; of what, the note tells. */
export function nameForName(tokens: readonly Tok[]): { now: string; then: string } | null {
  const said = tokens.slice(
    Math.max(
      0,
      tokens.findIndex((token) => !isOpening(token)),
    ),
  );
  const not = said.findIndex(({ text }) => OLD.has(text));
  // "the hold is for nell not rosa": the name stands behind its preposition.
  const [now, then] = [said.slice(0, not), said.slice(not + 1)].map((part) =>
    textOf(
      part
        .slice(part.findLastIndex(({ text }) => BEFORE_NAME.has(text)) + 1)
        .filter(({ text }) => !ARTICLES.has(text) && !FIELDS[text] && !IS_NAMED.has(text)),
    ),
  );
  const isWords = said.every(({ kind, roles }) => kind === "word" && roles.method === undefined);
  // "nell bought it not dana" says more than a name.
  if (said.slice(0, not).some((token) => THEM.has(token.text) || WHO.has(token.text))) return null;
  // "that was mom not me": who did it.
  if (NOT_US.has(then ?? "")) return null;
  return not > 0 && isWords && now && then ? { now, then } : null;
}

/** "the buyer was iris", "customer's name is bo": the name in a field of the newest note; null where it says more. */
export function fieldNamed(tokens: readonly Tok[]): To | null {
  const said = tokens.filter(({ text }, at) => !(at === 0 && ARTICLES.has(text)));
  const field = FIELDS[said[0]?.text ?? ""];
  const from = said.findIndex(({ text }, at) => at > 0 && !IS_NAMED.has(text));
  const name = from > 1 ? said.slice(from) : [];
  const isName = name.length > 0 && name.length <= NAME_WORDS_MAX && name.every(isWordOfName);
  return field && isName ? { [field]: textOf(name) } : null;
}

const NAME_WORDS_MAX = 2;

const isWordOfName = ({ kind, unknown, roles }: Tok): boolean =>
  kind === "word" && (unknown === true || roles.person === true);
