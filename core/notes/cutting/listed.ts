import type { Tok } from "../clause.ts";
import { isAmount, isPiece, placeBefore } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { meaning } from "../rows/joined.ts";
import { centsIn } from "../slots/money.ts";
import { ARTICLES } from "../words/filler.ts";
import { HEADING_VERBS } from "../words/headings.ts";
import { AND, BEFORE_EACH, BEFORE_ROW, BEHIND_ROW, IS } from "../words/links.ts";
import { isSupply } from "./shape.ts";
import { isMeasure, opensThing } from "./things.ts";

/* Several things and as many prices, told apart: which of them each price is of is told by their order or behind a mark. */

/** A line's tokens with every price behind its own thing, and without how many things there are. */
export function pricedApart(tokens: readonly Tok[]): readonly Tok[] {
  let amounts = 0;
  for (let at = 0; at < tokens.length; at += 1) {
    if (isAmount(tokens[at]!)) amounts += 1;
    if (isPriceBehind(tokens, at, amounts > 1)) return pricedApart(tokens.toSpliced(at - 1, 1));
  }
  return amounts < 2 ? tokens : pricedInOrder(withoutCount(tokens));
}

/** "bought a chair 10 and a lamp, free", "a chest 45 and a pair of lamps, 20 for the two": behind the comma the price of the last. */
function isPriceBehind(tokens: readonly Tok[], at: number, isSecond: boolean): boolean {
  const [piece, comma, price, next] = [tokens[at - 2], tokens[at - 1], tokens[at]!, tokens[at + 1]];
  if (comma?.text !== "," || !piece || !isPiece(piece)) return false;
  if (price.text === "free") return !next || next.kind === "mark";
  const isEnd = !next || next.kind === "mark" || next.kind === "grain" || next.roles.method !== undefined;
  if (!isSecond || !isAmount(price) || !isNamed(piece) || !isEnd) return false;
  return AND.has(tokens[placeBefore(tokens, at - 3, ARTICLES)]?.text ?? "");
}

const isSaid = (token: Tok): boolean => opensThing(token) || isAmount(token);

/** "both are up, bench 75 and mirror 40", "two sales today, the bench 70 …", "desk 90 lamp 20 both sold": how many, where as many are told each with its price. */
function withoutCount(tokens: readonly Tok[]): readonly Tok[] {
  const first = tokens.findIndex((token) => isSaid(token) || isManyOf(token));
  const isAhead = first >= 0 && !isNamed(tokens[first]!);
  const at = isAhead ? first : tokens.findLastIndex((token) => isPiece(token) && !isNamed(token));
  if (at < 0) return tokens;
  const told = tokens.flatMap((token, place) =>
    place !== at && (isSaid(token) || isMeasure(token)) ? [place] : [],
  );
  const isEach = told.every((place, order) =>
    order % 2 === 0 ? isNamed(tokens[place]!) : isAmount(tokens[place]!),
  );
  const isApart = isAhead
    ? isManyOf(tokens[at]!) || tokens.slice(at + 1, told[0]).some(isOpener)
    : told.at(-1) === at - 1;
  if (!isEach || !isApart || told.length < 4 || told.length % 2 > 0) return tokens;
  const doing = tokens.some((token) => headsOf(token).length > 0) ? null : doneWith(tokens, at);
  if (doing) return tokens.toSpliced(at, doing.places, doing.token);
  return told.length === 2 * countSaid(tokens[at]!) ? tokens.toSpliced(at, 1) : tokens;
}

const isOpener = ({ kind, text }: Tok): boolean => kind === "mark" && /^[,.:!-]$/.test(text);

/** "two sales" */
const isManyOf = ({ kind }: Tok): boolean => kind === "grain";

/** What "two sales", "3 finds" say was done with what is listed behind; null where they say no such thing. */
function doneWith(tokens: readonly Tok[], at: number): { places: number; token: Tok } | null {
  const places = isManyOf(tokens[at]!) ? 1 : 2;
  const verb = HEADING_VERBS[tokens[at + places - 1]?.text.split(" ").at(-1) ?? ""];
  if (!verb || verb === "finished") return null;
  return { places, token: meaning(verb, tokens, { from: at, to: at + places }) };
}

/** How many a word says that names none of them; 0 where it says no such thing. */
function countSaid({ mention, amount }: Tok): number {
  if (mention) return mention.name ? 0 : (mention.count ?? 0);
  return !amount || amount.money ? 0 : (wholeOf(amount.exact) ?? 0);
}

const isNamed = (token: Tok): boolean => isSupply(token) || token.mention?.name !== undefined;

const isJoint = ({ kind, text }: Tok): boolean => (kind === "mark" && text === ",") || AND.has(text);

/** "paint and knobs for the dresser, 18 and 12", "bench and mirror are up at 75 and 40": as many prices side by side as things. */
function pricedInOrder(tokens: readonly Tok[]): readonly Tok[] {
  for (let from = 1; from < tokens.length; from += 1) {
    if (!isAmount(tokens[from]!)) continue;
    const row = rowFrom(tokens, from, isAmount, isJoint);
    const to = row.at(-1)! + 1;
    const first = row.length < 2 ? -1 : tokens.findLastIndex((token, at) => at < from && isAmount(token)) + 1;
    const things = first < 0 ? [] : thingsBetween(tokens, first, from);
    if (things.length === row.length && isRowOfPrices(tokens, row, from, to))
      return inOrder(tokens, things, row);
    from = to;
  }
  return tokens;
}

/** The places of all that stand side by side from one on. */
function rowFrom(
  tokens: readonly Tok[],
  from: number,
  isOne: (token: Tok) => boolean,
  isBetween: (token: Tok) => boolean,
): number[] {
  const row = [from];
  for (let at = from + 1; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (isOne(token) && isBetween(tokens[at - 1]!)) row.push(at);
    else if (!isBetween(token)) break;
  }
  return row;
}

/** The things named side by side in a part of a line that names no others but what they are for. */
function thingsBetween(tokens: readonly Tok[], from: number, to: number): number[] {
  const first = tokens.findIndex((token, at) => at >= from && at < to && opensThing(token));
  if (first < 0) return [];
  const isAlike = isPiece(tokens[first]!) ? isPiece : isSupply;
  const things = rowFrom(
    tokens.slice(0, to),
    first,
    (token) => isAlike(token) && isNamed(token),
    (token) => isJoint(token) || ARTICLES.has(token.text),
  );
  const rest = tokens.slice(things.at(-1)! + 1, to);
  // "rocker and lamp are both up, 75 and 30"
  const others = rest.filter(
    (token) => opensThing(token) && (isNamed(token) || countSaid(token) !== things.length),
  );
  const isOf = isAlike === isSupply && others.length < 2 && others.every(isPiece);
  return (others.length > 0 && !isOf) || rest.filter((token) => headsOf(token).length > 0).length > 1
    ? []
    : things;
}

/** No part of a price, and nothing that was paid, owed or taken off besides. */
function isRowOfPrices(tokens: readonly Tok[], row: readonly number[], from: number, to: number): boolean {
  const next = tokens[to];
  const isEnd =
    !next || next.kind === "mark" || next.kind === "day" || next.roles.method || BEHIND_ROW.has(next.text);
  if (!isEnd || BEFORE_ROW.has(tokens[from - 1]!.text)) return false;
  return row.every((at) => !tokens[at]!.each && centsIn(tokens[at]!) !== null);
}

/** Each thing with its price right behind it, and what is said of all of them before the first, as one says it of several. */
function inOrder(tokens: readonly Tok[], things: readonly number[], row: readonly number[]): Tok[] {
  const [first, last] = [things[0]!, things.at(-1)! + 1];
  let end = row[0]!;
  const by = BEFORE_EACH.has(tokens[end - 1]!.text) ? tokens[end - 1] : undefined;
  if (by) end -= 1;
  while (end > last && tokens[end - 1]!.kind === "mark") end -= 1;
  // Ahead of them "are listed" would ask.
  const said = tokens
    .slice(last, end)
    .filter((token, at) => (!isPiece(token) || isNamed(token)) && !(at === 0 && IS.has(token.text)));
  const priced = tokens.slice(first, last).flatMap((token, at): Tok[] => {
    const place = things.indexOf(first + at);
    const { from, to } = token;
    if (place < 0) return [token];
    return [token, ...(by ? [{ ...by, from, to }] : []), { ...tokens[row[place]!]!, from, to }];
  });
  const isVerbFirst = said.every((token) => headsOf(token).length === 0);
  const around = isVerbFirst ? [...priced, ...said] : [...said, ...priced];
  const rest = tokens.slice(row.at(-1)! + 1);
  return [...tokens.slice(0, first), ...around, ...(rest[0]?.text === "respectively" ? rest.slice(1) : rest)];
}
