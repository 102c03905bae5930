import type { Tok } from "../clause.ts";
import { isAmount, isPiece } from "../clause.ts";
import { isLight } from "../heads.ts";
import type { Kind, Mention } from "../reading.ts";
import { language } from "../verbs.ts";
import { AND, ARTICLES_WIDE } from "../words/links.ts";
import { BEING } from "../words/pieces.ts";

/**
 * "sold the lamp and mirror, 25 for the lamp and 40 for the mirror": what is named once more with a price of its own was
 * only announced. The line without its announcement, each piece as it was first said.
 */
export function withoutAnnounced(tokens: Tok[]): Tok[] {
  const places: number[] = [];
  for (let at = 0; at < tokens.length; at += 1) if (isPiece(tokens[at]!)) places.push(at);
  if (places.length < 4) return tokens;
  const count = places.length / 2;
  const [first, last] = [places[0]!, places[count - 1]!];
  const isNamedAgain = places
    .slice(0, count)
    .every((at) =>
      places.slice(count).some((again) => isAgain(tokens[at]!.mention!, tokens[again]!.mention!)),
    );
  if (!isNamedAgain || !isList(tokens.slice(first, last + 1)) || !isOneVerb(tokens.slice(0, first)))
    return tokens;
  const rest = tokens.slice(last + 1);
  if (tokens.slice(0, first).some(isAmount) || rest.filter(isAmount).length !== count) return tokens;
  const said = rest.filter(({ text }, at) => !(BEING.has(text) && isPiece(rest[at - 1] ?? rest[at]!)));
  return [
    ...tokens.slice(0, first),
    ...said.map((token) => asAnnounced(token, tokens.slice(first, last + 1))),
  ];
}

const isAgain = (a: Mention, b: Mention): boolean => a.name !== undefined && a.name === b.name;

const isList = (between: readonly Tok[]): boolean =>
  between.every(
    (token) => isPiece(token) || token.text === "," || AND.has(token.text) || ARTICLES_WIDE.has(token.text),
  );

/** One verb, and one that takes a price: "finished the desk and the bench, desk is up at 70" tells of both that they are done. */
function isOneVerb(before: readonly Tok[]): boolean {
  const [verb, ...others] = before.filter((token) => token.roles.heads !== undefined && !isLight(token));
  return others.length === 0 && verb?.roles.heads?.some(({ kind }) => takesMoney(kind)) === true;
}

const takesMoney = (kind: Kind): boolean =>
  language()
    .grammars.get(kind)
    ?.fields.some(({ name }) => name === "price" || name === "amount" || name === "deposit") === true;

/** "2 chairs and a desk, chairs 10 each": two of them, as was said at first. */
function asAnnounced(token: Tok, announced: readonly Tok[]): Tok {
  const first = announced.find(({ mention }) => mention && token.mention && isAgain(mention, token.mention));
  if (!first) return token;
  const { plural: _, ...named } = token.mention!;
  return { ...token, mention: { ...named, ...first.mention! } };
}
