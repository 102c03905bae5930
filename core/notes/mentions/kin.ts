import { placeBefore, type Tok } from "../clause.ts";
import { AND } from "../words/links.ts";
import { DETERMINERS, WITH } from "../words/names.ts";
import { BEFORE_KIN, HE_KIN, HOUSEHOLD, MANY_KIN, NOBODY_IN_PARTICULAR, SHE_KIN } from "../words/people.ts";
import { isDone } from "../words/tenses.ts";
import { COMES_HERE } from "../words/visits.ts";

/*
 * "mom called, she bought a bench for 20": of the household is who was told of first, so long as nobody else is spoken of
 * in between. The pronoun is read as the kin it stands for.
 */

/** Which kin each pronoun may stand for. */
const STANDS_FOR: ReadonlyMap<string, (kin: string) => boolean> = new Map([
  ["she", (kin: string) => !HE_KIN.has(kin) && !MANY_KIN.has(kin)],
  ["he", (kin: string) => !SHE_KIN.has(kin) && !MANY_KIN.has(kin)],
  ["they", (kin: string) => MANY_KIN.has(kin)],
]);

/** A line's tokens, with he and she as the kin they stand for; the same ones where none does. */
export function withKinMeant(tokens: Tok[]): Tok[] {
  const at = tokens.findIndex(isKin);
  if (at < 0 || !tokens.some(({ text }) => STANDS_FOR.has(text)) || !isSubject(tokens, at)) return tokens;
  const kin = tokens[at]!;
  const told = kinAt(tokens, at);
  const end = at + told.length;
  const others = tokens.findIndex((token, place) => place >= end && isSomebody(token));
  const until = others < 0 ? tokens.length : others;
  return tokens.flatMap((token, place) => {
    const isThem = place >= end && place < until && STANDS_FOR.get(token.text)?.(kin.text) === true;
    if (!isThem || !acts(tokens, place)) return token;
    return told.map((each) => ({ ...each, from: token.from, to: token.to }));
  });
}

/** "she paid", and not "she thinks": a verb of a note follows. */
function acts(tokens: readonly Tok[], at: number): boolean {
  const next = tokens.slice(at + 1).find(({ roles }) => !roles.filler || roles.heads);
  return next !== undefined && (next.roles.heads !== undefined || next.roles.labor === true);
}

export const isKin = ({ kind, text }: Tok): boolean => kind === "word" && HOUSEHOLD.has(text);

/** The words that name kin who stand at a place: "cousin teo". */
export const kinAt = (tokens: readonly Tok[], at: number): Tok[] =>
  tokens.slice(at, isName(tokens[at + 1]) ? at + 2 : at + 1);

/** A given name, which the lexicon does not hold; "dad pulled over" and "mom swung by" tell of what they did. */
const isName = (token: Tok | undefined): boolean =>
  token?.kind === "word" && token.unknown === true && !isDone(token.text) && !COMES_HERE.has(token.text);

/** Somebody else, of whom a pronoun behind may be. */
const isSomebody = (token: Tok): boolean =>
  isName(token) ||
  (token.roles.person === true && !(STANDS_FOR.has(token.text) || NOBODY_IN_PARTICULAR.has(token.text)));

/** Told of as who acts, or who was along: nobody that something is given or sold to. */
export function isSubject(tokens: readonly Tok[], at: number): boolean {
  const before = tokens[placeBefore(tokens, at - 1, DETERMINERS)];
  return (
    before === undefined ||
    before.kind === "mark" ||
    before.kind === "piece" ||
    AND.has(before.text) ||
    WITH.has(before.text) ||
    BEFORE_KIN.has(before.text)
  );
}
